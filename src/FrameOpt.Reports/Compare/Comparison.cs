using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Compare;

/// <summary>Two designs or more, side by side; studies are compared with that of the first.</summary>
/// <param name="Columns">Two to six.</param>
/// <param name="IsSameDesign">True when every column is the design of the first, each under a study of its own.</param>
public sealed record Comparison(IReadOnlyList<ComparedColumn> Columns, bool IsSameDesign = false)
{
    /// <summary>How the study of each column differs from that of the first; empty for the first.</summary>
    public IReadOnlyList<IReadOnlyList<StudyDifference>> Differences { get; } =
    [
        .. Columns.Select(column => (IReadOnlyList<StudyDifference>)[.. StudyDifferences.Of(Columns[0].Run.Study, column.Run.Study)
            // Under another study nothing is searched: the design is the same.
            .Where(difference => !IsSameDesign || difference.Group is not ("factors" or "search"))]),
    ];

    /// <summary>The title, one line.</summary>
    public string Title =>
        $"{(Columns.All(column => column.Run.Title == Columns[0].Run.Title) ? $"{Columns[0].Run.Title}: " : "")}"
        + $"{(IsSameDesign ? $"one design under {Columns.Count} studies" : $"{Columns.Count} designs side by side")}";

    /// <summary>Why figures are not comparable, and what else to know before reading them.</summary>
    public IReadOnlyList<string> Warnings =>
    [
        .. Columns.Select((column, c) => (column, c)).Skip(1)
            .SelectMany(item => Comparability.Reasons(Differences[item.c], Columns[0], item.column)),
        .. Columns.Where(column => !column.Run.IsComplete)
            .Select(column =>
            $"{column.Letter} comes from a run that was stopped early ({column.Run.StopReason}): a better design may be missing from it."),
    ];
}

/// <summary>One design of a comparison.</summary>
/// <param name="Letter">A, B and so on: its name in sentences.</param>
/// <param name="Run">The run it comes from.</param>
/// <param name="Position">In the order of the run's ranking, from 1.</param>
/// <param name="Rank">Rank in the run; designs of equal score share one.</param>
/// <param name="Geometry">The design.</param>
/// <param name="Phases">In mission order.</param>
/// <param name="Mission">By <see cref="MissionQuantity"/>; NaN where there is none.</param>
public sealed record ComparedColumn(
    string Letter, ComparedRun Run, int Position, int Rank, FrameGeometry Geometry, IReadOnlyList<ComparedPhase> Phases,
        IReadOnlyList<double> Mission)
{
    private const int MaxNameLength = 28;

    /// <summary>True for the design of the first column under a study of this column's own.</summary>
    public bool IsDesignOfFirst { get; init; }

    /// <summary>The limits of this column's study that the design of the first violates; empty when it meets them, and for the choice of
    /// a run, which does.</summary>
    public string LimitWarning { get; init; } = "";

    /// <summary>Heading of a column: the letter, the variant or the title, the rank where it is not the best.</summary>
    public string Name =>
        $"{Letter}: {TextTruncation.Truncate(Run.Variant.Length > 0 ? Run.Variant : Run.Title, MaxNameLength)}"
        + (Position > 1 ? FormattableString.Invariant($", rank {Rank}") : "");

    /// <summary>Title, variant, rank, folder.</summary>
    public string Source => $"{Run.Title}{(Run.Variant.Length > 0 ? $" - {Run.Variant}" : "")}, "
        + (IsDesignOfFirst ? $"the design of A ({Run.Folder})"
            : Run.Evaluated == 1 ? $"one frame as given ({Run.Folder})"
            : $"{(Position == 1 ? "best compromise" : FormattableString.Invariant($"rank {Rank}"))} of "
                + $"{NumberFormat.Count(Run.FrontCount)} ({Run.Folder})");
}

/// <summary>What a compared design leaves to the pilot in one phase.</summary>
/// <param name="Name">Of the phase.</param>
/// <param name="IsSettled">False for the first seconds of a launch, in which no effort is judged.</param>
/// <param name="Values">Of <see cref="FrontTable.PhaseQuantities"/>, each in its unit; infinite where no lean cures the turn.</param>
public sealed record ComparedPhase(string Name, bool IsSettled, IReadOnlyList<double> Values)
{
    /// <summary>One of its values, in its unit.</summary>
    public double this[PhaseQuantity quantity] => Values[FrontTable.PhaseQuantities.Index().First(item => item.Item == quantity).Index];

    /// <summary>True when the phase lasts and the pilot's largest lean is not enough for it.</summary>
    public bool CannotBeHeld => IsSettled && this[PhaseQuantity.Effort] > 1;
}

/// <summary>A run read back from its folder.</summary>
/// <param name="Folder">As the user wrote it.</param>
/// <param name="StudyFile">Name of the study file.</param>
/// <param name="Hash">SHA-256 of it.</param>
/// <param name="Version">Of the program that made the run.</param>
/// <param name="Title">Of the study.</param>
/// <param name="Variant">Of the study; may be empty.</param>
/// <param name="StopReason">Why the search ended.</param>
/// <param name="IsComplete">False when it was stopped early.</param>
/// <param name="Evaluated">Designs evaluated.</param>
/// <param name="FrontCount">Designs on the front.</param>
/// <param name="Machine">The machine as understood.</param>
/// <param name="Factors">With the user's units; their levels are in <paramref name="Study"/>.</param>
/// <param name="Study">The whole study as understood.</param>
/// <param name="Warnings">Of the study.</param>
public sealed record ComparedRun(
    string Folder,
    string StudyFile,
    string Hash,
    string Version,
    string Title,
    string Variant,
    string StopReason,
    bool IsComplete,
    long Evaluated,
    int FrontCount,
    Machine Machine,
    IReadOnlyList<StudyFactor> Factors,
    StudyNode Study,
    IReadOnlyList<string> Warnings);
