using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.StudyFile.Plausibility;

/// <summary>Compares geometry inputs with their usual ranges: those of a study, and those set on the command line.</summary>
internal static class GeometryChecks
{
    private const double Millimetre = 0.001;
    private const double Degree = Math.PI / 180;

    private static readonly Dictionary<GeometryInput, (UsualRange Range, Func<Machine, double, double> Value)> rows = new()
    {
        [GeometryInput.HangPointSpacing] = (UsualRanges.Spacing, (_, si) => si / Millimetre),
        [GeometryInput.LateralOffset] = (UsualRanges.Offset, (_, si) => si / Millimetre),
        [GeometryInput.SuspensionHeight] =
            (UsualRanges.HeightAboveCentre, (machine, si) => (si - machine.CentreOfGravity.UpMetres) / Millimetre),
        [GeometryInput.ThrustLineAngle] = (UsualRanges.Angle, (_, si) => si / Degree),
        [GeometryInput.ThrustLineTilt] = (UsualRanges.Tilt, (_, si) => si / Degree),
        [GeometryInput.HubForward] = (UsualRanges.HubBehindBody, (machine, si) => (BodyForward(machine) - si) / Millimetre),
        [GeometryInput.HubRight] = (UsualRanges.HubRight, (_, si) => si / Millimetre),
        [GeometryInput.HubUp] = (UsualRanges.HubAboveCentre, (machine, si) => (si - machine.CentreOfGravity.UpMetres) / Millimetre),
        [GeometryInput.HangLineForward] =
            (UsualRanges.HangLineAheadOfCentre, (machine, si) => (si - machine.CentreOfGravity.ForwardMetres) / Millimetre),
        [GeometryInput.HangHeightDifference] = (UsualRanges.HangHeightDifference, (_, si) => si / Millimetre),
        [GeometryInput.StrapDifference] = (UsualRanges.StrapDifference, (_, si) => si / Millimetre),
    };

    /// <summary>Warns of an unusual value of one input.</summary>
    /// <param name="input">The input.</param>
    /// <param name="si">Its value in m or rad.</param>
    /// <param name="machine">What it is compared with.</param>
    /// <param name="at">Where it is given.</param>
    /// <param name="diagnostics">Takes the warning.</param>
    /// <param name="where">As for <see cref="UsualRange.Check"/>.</param>
    public static void Check(GeometryInput input, double si, Machine machine, Node at, DiagnosticBag diagnostics, string where = "")
    {
        var (range, value) = rows[input];
        range.Check(value(machine, si), at, diagnostics, where);
    }

    /// <summary>Warns of both ends of every factor, of the baseline, and of what the machine itself gives.</summary>
    public static void Check(
        IReadOnlyList<StudyFactor> factors, FrameGeometry? baseline, Machine machine, Func<string, Node> placeOf, DiagnosticBag diagnostics)
    {
        foreach (var factor in factors)
        {
            var at = placeOf($"factors.{factor.Name}");
            if (!factor.IsSwept)
                Check(factor.Input, factor.LevelsSi[0], machine, at, diagnostics);
            else
                foreach (var (end, word) in new[] { (factor.LevelsSi[0], "lower"), (factor.LevelsSi[^1], "upper") })
                    Check(factor.Input, end, machine, at, diagnostics, $" at the {word} end of its range");
        }

        foreach (var input in FactorCatalogue.All)
        {
            if (baseline is { } existing && (input.IsRequired || existing[input] != input.AsBuilt(machine)))
                Check(input, existing[input], machine, placeOf($"baseline.{input.Name}"), diagnostics, " of the baseline");
            if (!input.IsRequired && factors.All(factor => factor.Input != input))
                Check(input, input.AsBuilt(machine), machine, placeOf(rows[input].Range.Key), diagnostics);
        }
    }

    /// <summary>How far forward the foremost mass lies that is part of the pilot's body.</summary>
    public static double BodyForward(Machine machine) =>
        machine.Masses.Where(item => item.IsBody).Max(item => item.At.ForwardMetres);
}
