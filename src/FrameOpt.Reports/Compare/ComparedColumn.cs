using FrameOpt.Model;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Compare;

/// <summary>One design of a comparison.</summary>
/// <param name="Letter">A, B and so on: how sentences call it.</param>
/// <param name="Run">Where it comes from.</param>
/// <param name="Position">In the order of the run's ranking, from 1.</param>
/// <param name="Rank">In the run; designs of equal score share one.</param>
/// <param name="Geometry">The design.</param>
/// <param name="Phases">In mission order.</param>
/// <param name="Mission">Each response at its index; NaN where there is none.</param>
public sealed record ComparedColumn(
    string Letter, ComparedRun Run, int Position, int Rank, FrameGeometry Geometry, IReadOnlyList<ComparedPhase> Phases,
        IReadOnlyList<double> Mission)
{
    private const int MaxNameLength = 28;

    /// <summary>Heads a column: the letter, the variant or the title, the rank where it is not the best.</summary>
    public string Name =>
        $"{Letter}: {TextTruncation.Truncate(Run.Variant.Length > 0 ? Run.Variant : Run.Title, MaxNameLength)}{(Position > 1 ? FormattableString.Invariant($", rank {Rank}") : "")}";

    /// <summary>Title, variant, rank, folder.</summary>
    public string Source => $"{Run.Title}{(Run.Variant.Length > 0 ? $" - {Run.Variant}" : "")}, "
        + $"{(Position == 1 ? "best compromise" : FormattableString.Invariant($"rank {Rank}"))} of {NumberFormat.Count(Run.FrontCount)} ({Run.Folder})";
}

/// <summary>What a compared design leaves in one phase.</summary>
/// <param name="Name">Of the phase.</param>
/// <param name="ResidualNewtonMetres">Turns right, +.</param>
/// <param name="LeanMillimetres">That cancels it, to the right +.</param>
/// <param name="Effort">Lean over the largest lean.</param>
public sealed record ComparedPhase(string Name, double ResidualNewtonMetres, double LeanMillimetres, double Effort);
