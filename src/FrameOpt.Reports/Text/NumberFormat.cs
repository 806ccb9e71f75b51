using System.Globalization;
using FrameOpt.Model;
using FrameOpt.Model.Mission;

namespace FrameOpt.Reports.Text;

/// <summary>Numbers for people: always with their unit, with no more digits than the model deserves.</summary>
public static class NumberFormat
{
    /// <summary>A value with its unit.</summary>
    /// <param name="value">In <paramref name="unit"/>; NaN is a value the study gives no basis for.</param>
    /// <param name="unit">A unit of <see cref="ResponseEntry"/>; empty for a plain number.</param>
    public static string Text(double value, string unit)
    {
        if (double.IsNaN(value))
            return "not available";
        if (double.IsInfinity(value))
            return "unbounded";
        var rounded = Math.Round(value, Decimals(unit)) + 0.0;
        var number = rounded.ToString("N" + Decimals(unit), CultureInfo.InvariantCulture);
        return unit.Length == 0 ? number : $"{number} {unit}";
    }

    /// <summary>A value rounded to what it means to a pilot: half a newton metre, a millimetre, a newton.</summary>
    public static string Meant(double value, string unit) => unit switch
    {
        _ when !double.IsFinite(value) => Text(value, unit),
        "N·m" => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(2 * value) / 2 + 0.0:0.#} {unit}"),
        "mm" => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(value) + 0.0:0} {unit}"),
        _ => Text(value, unit),
    };

    /// <summary>A value to a number of significant digits, never with an exponent, for figures to be checked by hand.</summary>
    /// <param name="value">NaN is a value the study gives no basis for, infinite one without bound.</param>
    /// <param name="digits">At least one.</param>
    public static string SignificantDigits(double value, int digits)
    {
        if (!double.IsFinite(value))
            return double.IsNaN(value) ? "not available" : "unbounded";
        var whole = value == 0 ? 1 : (int)Math.Floor(Math.Log10(Math.Abs(value))) + 1;
        return (Math.Round(value, Math.Clamp(digits - whole, 0, digits + 3)) + 0.0).ToString("0.#########", CultureInfo.InvariantCulture);
    }

    /// <summary>A value rounded to a number of significant digits, for files that people read too.</summary>
    /// <param name="value">As it is where it is not finite.</param>
    /// <param name="digits">At least one.</param>
    public static double RoundedTo(double value, int digits) => value == 0 || !double.IsFinite(value) ? value
        : Math.Round(value, Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 15));

    /// <summary>A response's value; a load also in kilograms-force, a share of the cases in per cent.</summary>
    public static string Text(double value, ResponseEntry entry) =>
        entry is CaseQuantity { IsShare: true } ? Share(value)
        : entry.Unit == "N" && double.IsFinite(value) ? Load(value) : Text(value, entry.Unit);

    /// <summary>A share of the cases: "61 %".</summary>
    public static string Share(double value) => double.IsNaN(value) ? Text(value, "")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(1000 * value) / 10 + 0.0:0.#} %");

    /// <summary>A load in newtons and in kilograms-force side by side.</summary>
    public static string Load(double newtons) =>
        string.Create(CultureInfo.InvariantCulture, $"{Text(newtons, "N")} ({newtons / Constants.NewtonsPerKilogramForce:0.0} kgf)");

    /// <summary>A whole number with thousands separators.</summary>
    public static string Count(long count) => count.ToString("N0", CultureInfo.InvariantCulture);

    /// <summary>A number of things: "1 design", "2,000 designs".</summary>
    /// <param name="count">How many.</param>
    /// <param name="one">The word for one of them; more take an s.</param>
    public static string Count(long count, string one) => $"{Count(count)} {one}{(count == 1 ? "" : "s")}";

    /// <summary>The number format of a spreadsheet column in that unit: one digit more than in words.</summary>
    public static string FormatCode(string unit) => "0." + new string('0', Decimals(unit) + 1);

    private static int Decimals(string unit) => unit switch
    {
        "N" or "rpm" => 0,
        "" => 2,
        _ => 1,
    };
}

/// <summary>Numbers as plain decimals, for files that other programs read.</summary>
public static class PlainNumber
{
    /// <summary>The shortest decimal text that reads back as the same number, never with an exponent.</summary>
    /// <param name="value">Any finite number.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not finite: it has no decimal text.</exception>
    public static string Text(double value)
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(nameof(value), value, "only a finite number has a decimal text");
        if (value == 0)
            return "0";
        var shortest = value.ToString("R", CultureInfo.InvariantCulture);
        var exponentAt = shortest.IndexOf('E');
        return exponentAt < 0
            ? shortest
            : Shift(shortest[..exponentAt], int.Parse(shortest[(exponentAt + 1)..], CultureInfo.InvariantCulture));
    }

    private static string Shift(string mantissa, int exponent)
    {
        var sign = mantissa[0] == '-' ? "-" : "";
        var digits = mantissa.Replace("-", "").Replace(".", "");
        return exponent < 0
            ? $"{sign}0.{new string('0', -exponent - 1)}{digits}"
            : sign + digits.PadRight(exponent + 1, '0');
    }
}
