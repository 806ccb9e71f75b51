using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Text;

/// <summary>The product line a study asks for, as the tool understood it.</summary>
internal static class ProductLineDescription
{
    public static IEnumerable<DescriptionRow> Of(Study study)
    {
        if (study.Line is not { } line)
            yield break;
        DescriptionRow Row(string what, string value) => new("Product line", what, value);
        yield return Row("geometries", Invariant($"{line.Count}; gains worked out up to {line.UpTo}"));
        yield return Row("to be small", ProductLineText.Value(line));
        yield return Row(
            "candidates",
                $"{(line.FromGrid ? "every design of the grid" : "the front of the study's own customer")}. {ProductLineText.CommonalityText(line)}".TrimEnd());
        yield return Row(
            "customers",
                Invariant($"{NumberFormat.Count(line.Customers.Count)} ({line.CustomersDescription}); pilot {line.Customers.Min(customer => customer.PilotMassKilograms):0.#} to {line.Customers.Max(customer => customer.PilotMassKilograms):0.#} kg, the mass named {line.Configurations[0].Pilot}"));
        foreach (var (option, o) in line.Options.Select((option, o) => (option, o)))
            yield return Row(option.Name, string.Join("; ", option.Choices
                .Select(choice => Invariant($"{choice}: {SharePercent(line, o, choice):0.#} % of the shares"))));
        yield return Row("time", line.Time is { } time ? $"at most {PlainNumber.Text(time.TotalSeconds)} s for each number of geometries"
            : "until the best is proven");
    }

    private static double SharePercent(ProductLineSetting line, int option, string choice) =>
        100 * line.Customers.Where(customer => line.Configurations[customer.Configuration].Choices[option] == choice).Sum(
            customer => customer.Share) / line.Customers.Sum(customer => customer.Share);
}
