using FrameOpt.Numerics;

namespace FrameOpt.Model.Mission;

/// <summary>All responses the model gives. Each is one row, in <see cref="PhaseQuantity"/> or <see cref="MissionQuantity"/>.</summary>
public static class ResponseCatalogue
{
    /// <summary>All quantities of a phase, each at its <see cref="ResponseEntry.Index"/>.</summary>
    public static IReadOnlyList<PhaseQuantity> OfPhases => PhaseQuantity.Rows;

    /// <summary>All responses of a mission, each at its <see cref="ResponseEntry.Index"/>.</summary>
    public static IReadOnlyList<MissionQuantity> OfMissions => MissionQuantity.Rows;

    /// <summary>Those of a mission, then those of a phase.</summary>
    public static IEnumerable<ResponseEntry> All => [.. OfMissions, .. OfPhases];
}

/// <summary>One row of the catalogue of responses.</summary>
public abstract class ResponseEntry
{
    private protected ResponseEntry(string name, string unit, string meaning, string? title, int index) =>
        (Name, Unit, Meaning, Title, Index, UnitsPerSi) = (name, unit, meaning, title ?? name.Replace('_', ' '), index, unit switch
        {
            "deg" or "deg/s" => 180 / Math.PI,
            "mm" => 1000,
            _ => 1,
        });

    /// <summary>As a study file writes it.</summary>
    public string Name { get; }

    /// <summary>As people say it: "largest effort in any settled phase".</summary>
    public string Title { get; }

    /// <summary>The unit its value is held and shown in; empty for a plain number.</summary>
    public string Unit { get; }

    /// <summary>How many of that unit the SI unit of its formula is: 1000 for mm; 1 for rpm too.</summary>
    public double UnitsPerSi { get; }

    /// <summary>In words, for a table's header or a list of responses.</summary>
    public string Meaning { get; }

    /// <summary>Its place among the values of a phase or of a mission, from 0.</summary>
    public int Index { get; }

    /// <summary>What its sign says.</summary>
    public ResponseSign Sign { get; private protected init; }

    /// <summary>What a study must give before it has a value.</summary>
    public ResponseNeed Needs { get; private protected init; }

    /// <summary>True when more of it is better; of all others less is, as far as one of the two is.</summary>
    public bool IsHigherBetter { get; private protected init; }

    /// <summary>For a response that is infinite where no lean cures the turn: the largest value that a ranking still compares, in its unit;
    /// null for all others.</summary>
    public double? LargestRanked { get; private protected init; }

    /// <inheritdoc/>
    public override string ToString() => Name;

    /// <summary>Values of the formula, in SI, to the unit.</summary>
    private protected void ToUnit(Span<double> values)
    {
        if (UnitsPerSi != 1)
            RowVectors.Scale(UnitsPerSi, values);
    }
}

/// <summary>What the sign of a response says.</summary>
public enum ResponseSign
{
    /// <summary>Nothing: it is 0 or more.</summary>
    NeverNegative,

    /// <summary>It may be below 0, but is no side: a mirrored machine has the same value.</summary>
    Either,

    /// <summary>The side, right +: a mirrored machine has the opposite value, and a study ranks the magnitude.</summary>
    Side,
}

/// <summary>A part of a study that may be left out, and without which some responses have no value.</summary>
public enum ResponseNeed
{
    /// <summary>Every study gives it.</summary>
    Nothing,

    /// <summary>An engine of the machine.</summary>
    Engine,

    /// <summary>Limit load factor and overhang.</summary>
    Strength,

    /// <summary>A geometry to compare with.</summary>
    Baseline,
}
