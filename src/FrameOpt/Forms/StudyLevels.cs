using FrameOpt.Analysis;
using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Forms;

/// <summary>What of a study can be built, for the factors of a table of runs.</summary>
public static class StudyLevels
{
    private const double SameMetres = 1e-6;

    /// <summary>The steps and values of the study for every factor of the table with the name and unit of one of its; holes are kept
    /// together where the table has both spacing and lateral offset.</summary>
    /// <param name="study">Which says what can be built.</param>
    /// <param name="table">The runs.</param>
    public static BuildableSettings Of(Study study, RunTable table)
    {
        List<StudyFactor?> own = [.. table.Factors.Select(column => study.Factors.FirstOrDefault(factor =>
            factor.Name.Equals(column.Name, StringComparison.OrdinalIgnoreCase) && factor.Unit.Symbol == column.Unit))];
        List<IReadOnlyList<double>?> levels = [.. own.Select(factor => factor is null || factor.IsContinuous ? null
            : (IReadOnlyList<double>)[.. factor.LevelsSi.Select(factor.Unit.FromSi)])];
        var (spacing, offset) = (own.FindIndex(factor => factor?.Input == GeometryInput.HangPointSpacing),
            own.FindIndex(factor => factor?.Input == GeometryInput.LateralOffset));
        if (study.Holes is not { } holes || spacing < 0 || offset < 0)
            return new BuildableSettings(levels);
        bool IsThere(IReadOnlyList<double> settings)
        {
            var (across, aside) = (own[spacing]!.Unit.ToSi(settings[spacing]), own[offset]!.Unit.ToSi(settings[offset]));
            return holes.Left.Places.Any(hole => Math.Abs(hole - ((across / 2) - aside)) < SameMetres)
                && holes.Right.Places.Any(hole => Math.Abs(hole - ((across / 2) + aside)) < SameMetres);
        }

        return new BuildableSettings(levels, IsThere);
    }
}
