using FrameOpt.Model;
using FrameOpt.ProductLine;

namespace FrameOpt.Studies;

/// <summary>What a study asks of a product line: how many fixed geometries, for whom, out of which.</summary>
/// <param name="Count">How many geometries to make, 1 to <see cref="MaxGeometries"/>.</param>
/// <param name="Objective">Objective to minimise.</param>
/// <param name="CostResponse">The response that is a customer's cost; the cost of one to maximise is its shortfall from the best any
/// candidate gives that customer.</param>
/// <param name="Options">What customers choose; may be none.</param>
/// <param name="Configurations">Every combination of choices, the last option changing first; one when there are no options.</param>
/// <param name="Customers">One or more.</param>
public sealed record ProductLineSetting(
    int Count, ProductLineObjective Objective, StudyObjective CostResponse, IReadOnlyList<ProductLineOption> Options,
        IReadOnlyList<ProductLineConfiguration> Configurations, IReadOnlyList<ProductLineCustomer> Customers)
{
    /// <summary>Largest number of geometries: each has a letter.</summary>
    public const int MaxGeometries = 26;

    /// <summary>Largest number of geometries for which the gain of each further one is computed.</summary>
    public int UpTo { get; init; } = Count;

    /// <summary>The geometries that are in the line whatever is chosen; they count among <see cref="Count"/>.</summary>
    public IReadOnlyList<FixedGeometry> Fixed { get; init; } = [];

    /// <summary>The letters for geometries that are chosen: those that no fixed one is named.</summary>
    public IEnumerable<string> FreeLetters => Enumerable.Range('A', MaxGeometries).Select(letter => ((char)letter).ToString())
        .Where(letter => !Fixed.Any(one => string.Equals(one.Name, letter, StringComparison.OrdinalIgnoreCase)));

    /// <summary>The least number of geometries: the fixed ones, or one.</summary>
    public int LeastCount => Math.Max(1, Fixed.Count);

    /// <summary>True when every design of the grid may be chosen, false for the front of the study's own customer.</summary>
    public bool FromGrid { get; init; }

    /// <summary>What all geometries have in common.</summary>
    public ProductLineCommon Common { get; init; }

    /// <summary>Share of the customers, by weight, that must be served where a geometry that suits them exists: above 0, 1 for
    /// all.</summary>
    public double Serve { get; init; } = 1;

    /// <summary>Lateral offsets are multiples of this, in m; null when any level may be taken.</summary>
    public double? HolePitchMetres { get; init; }

    /// <summary>Time limit for each number of geometries; null for none.</summary>
    public TimeSpan? Time { get; init; }

    /// <summary>True when one geometry may serve engines that turn either way.</summary>
    public bool AllowBothRotations { get; init; }

    /// <summary>The ways in which the propellers of all outfits turn, seen from behind: one or two.</summary>
    public IReadOnlyList<Rotation> Rotations { get; } =
        [.. Configurations.Select(configuration => configuration.Rotation).Distinct().Order()];

    /// <summary>True when engines turn both ways and each geometry serves those of one way only.</summary>
    public bool SeparateRotations => Rotations.Count > 1 && !AllowBothRotations;

    /// <summary>True when the weights of the customers are numbers of pieces, false when they are shares.</summary>
    public bool InPieces { get; init; } = true;

    /// <summary>Indices of the outfits that some customer has, ascending.</summary>
    public IReadOnlyList<int> Sold => [.. Customers.Select(customer => customer.Configuration).Distinct().Order()];

    /// <summary>Where the customers are from, in words.</summary>
    public string CustomersDescription { get; init; } = "";
}

/// <summary>A geometry of a line that is not to be chosen: one that is made already.</summary>
/// <param name="Name">As the study writes it; it stays through every run and variant.</param>
/// <param name="Design">As built on the study's own machine.</param>
/// <param name="Turns">How the propellers turn that it is for, seen from behind; null for all of the line.</param>
public sealed record FixedGeometry(string Name, FrameGeometry Design, Rotation? Turns)
{
    /// <summary>Longest name: it stands in every cell of the fitting chart.</summary>
    public const int MaxName = 6;
}

/// <summary>What all geometries of a line must have in common.</summary>
public enum ProductLineCommon
{
    /// <summary>Nothing: any may go together.</summary>
    Nothing,

    /// <summary>One hang-point spacing.</summary>
    Spacing,

    /// <summary>One frame: everything but the lateral offset, so that only the holes differ.</summary>
    Frame,
}

/// <summary>Something the customers of a line choose: an engine, a wing.</summary>
/// <param name="Name">As the study writes it.</param>
/// <param name="Choices">Their names, one or more.</param>
public sealed record ProductLineOption(string Name, IReadOnlyList<string> Choices);

/// <summary>One choice of every option of a line: a machine and a wing, whatever the pilot weighs.</summary>
/// <param name="Choices">Names, in the order of the options.</param>
/// <param name="Study">The study with those choices.</param>
/// <param name="Pilot">The mass that is the pilot's.</param>
public sealed record ProductLineConfiguration(IReadOnlyList<string> Choices, Study Study, string Pilot)
{
    /// <summary>How its propeller turns, seen from behind.</summary>
    public Rotation Rotation => Study.Machine.Propeller.Rotation;

    /// <summary>The choices in one line; "as in the study" where there is nothing to choose.</summary>
    public string Description => Choices.Count == 0 ? "as in the study" : string.Join(", ", Choices);

    /// <summary>The study of a customer with this outfit.</summary>
    /// <param name="pilotKilograms">Above 0.</param>
    public Study For(double pilotKilograms)
    {
        var machine = Study.Machine;
        return Study with
        {
            Machine = machine.With(
                [.. machine.Masses.Select(item => item.Name == Pilot ? item with { MassKilograms = pilotKilograms } : item)]),
        };
    }
}

/// <summary>One customer of a line, or several identical ones.</summary>
/// <param name="Name">Name of the customer.</param>
/// <param name="PilotMassKilograms">Of the pilot's body, above 0.</param>
/// <param name="Configuration">Index of the outfit in <see cref="ProductLineSetting"/>.</param>
/// <param name="Share">Weight, above 0: a share or a number of pieces.</param>
public sealed record ProductLineCustomer(string Name, double PilotMassKilograms, int Configuration, double Share);

/// <summary>A study whose lateral offsets are all multiples of one pitch.</summary>
public static class OffsetPitch
{
    private const double Rounding = 1e-6;

    /// <summary>The study with only the offsets that are multiples of a pitch.</summary>
    /// <param name="study">Unchanged when there is no pitch.</param>
    /// <param name="pitchMetres">Above 0, or null.</param>
    /// <returns>Null when no offset within the factor's range is a multiple.</returns>
    public static Study? On(Study study, double? pitchMetres)
    {
        if (pitchMetres is not { } pitch)
            return study;
        var factor = study.Factor(GeometryInput.LateralOffset);
        var levels = factor.IsContinuous ? Between(factor.LevelsSi[0], factor.LevelsSi[^1], pitch)
            : [.. factor.LevelsSi.Where(level => IsMultiple(level, pitch))];
        if (levels.Count == 0)
            return null;
        return study with
        {
            Factors = [.. study.Factors.Select(f => f == factor ? f with { LevelsSi = levels, IsContinuous = false } : f)],
            // Designs to start from need not lie on the pattern.
            Search = study.Search is SearchSetting.Evolutionary search ? search with { Start = null } : study.Search,
        };
    }

    private static bool IsMultiple(double level, double pitch) => Math.Abs(level / pitch - Math.Round(level / pitch)) < Rounding;

    private static List<double> Between(double from, double to, double pitch)
    {
        var first = (int)Math.Ceiling(from / pitch - Rounding);
        var last = (int)Math.Floor(to / pitch + Rounding);
        return [.. Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(multiple => multiple * pitch)];
    }
}
