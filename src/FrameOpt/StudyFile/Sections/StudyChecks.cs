using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using static System.FormattableString;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Checks the grid of all factors: not more designs than can be computed.</summary>
internal static class GridChecks
{
    public static void Check(
        Section study, IReadOnlyList<StudyFactor> factors, HolePattern? holes, SearchSetting? search, Wing? wing, int phases)
    {
        if (factors.Count == 0)
            return;
        var at = study.KeyAt("factors");
        var count = Study.DesignCount(factors, holes);
        if (count < 2 && search is SearchSetting.Evolutionary && !study.DiagnosticBag.HasErrors)
            study.DiagnosticBag.Add(at, "Every factor is fixed: there is nothing to search.",
                $"Sweep one or more, for example `{StudyKeys.Factors.Find(GeometryInput.LateralOffset.Name)!.Example}`, or leave `search` "
                    + "out.");
        if (search is SearchSetting.Exhaustive && count > RunLimits.MaxGrid)
            study.DiagnosticBag.Add(at, TooMany(count, phases), Coarser(count, factors));
        foreach (var factor in factors.Where(factor => factor.IsContinuous && search is SearchSetting.Exhaustive))
        {
            study.DiagnosticBag.Add(
                at, $"factors.{factor.Name} has no step: an exhaustive search computes levels, not everything between two ends.",
                $"Add `step: {Step(factor)}` to it, or write `search: {{ method: NSGA-II }}`, which takes any value.");
        }

        CheckSpacing(study, factors, wing);
    }

    /// <summary>A likely step that fits the range; else the whole range.</summary>
    private static string Step(StudyFactor factor)
    {
        var range = factor.Unit.FromSi(factor.LevelsSi[1] - factor.LevelsSi[0]);
        var steps = Math.Max(1, Math.Round((factor.LevelsSi[1] - factor.LevelsSi[0]) / factor.Input.Kind.LikelyStepSi));
        var step = Math.Round(range / steps, 6);
        return Invariant($"{(Math.Abs(step * steps - range) < 1e-9 ? step : Math.Round(range, 9))} {factor.Unit.Symbol}");
    }

    private static string TooMany(double count, int phases)
    {
        var time = RunEstimate.InWords(RunEstimate.Seconds(count, Math.Max(1, phases), Environment.ProcessorCount));
        return FormattableString.Invariant($"The factors make {count:0} designs, {time}; {RunLimits.MaxGrid} is the most.");
    }

    private static string Coarser(double count, IReadOnlyList<StudyFactor> factors)
    {
        var longest = factors.MaxBy(factor => factor.LevelsSi.Count)!;
        var others = count / longest.LevelsSi.Count;
        var fitting = (long)(RunLimits.MaxGrid / others);
        return fitting >= 2
            ? FormattableString.Invariant(
                $"Take coarser steps: {longest.Name} has {longest.LevelsSi.Count} levels, and {fitting} or fewer would do.")
            : "Take coarser steps in several factors, or fix some: "
                + $"the levels multiply ({string.Join(" x ", factors.Select(factor => factor.LevelsSi.Count))}).";
    }

    private static void CheckSpacing(Section study, IReadOnlyList<StudyFactor> factors, Wing? wing)
    {
        var spacing = factors.FirstOrDefault(factor => factor.Input == GeometryInput.HangPointSpacing);
        if (spacing is null || wing is not { RiserCoupling: RiserCoupling.FromLines } || !(spacing.LevelsSi[^1] >= wing.LineSpreadMetres))
            return;
        study.DiagnosticBag.Add(
            study.KeyAt("factors"),
            "hang_point_spacing reaches wing.line_spread, where the riser coupling cannot be computed from the lines.",
            "Write a smaller spacing, or give `wing.riser_coupling`.");
    }
}

/// <summary>Checks the airspeeds of phases that need no glide ratio, which the polar does not check, to catch typing and unit
/// errors.</summary>
internal static class AirspeedWarnings
{
    /// <summary>Below this share of trim no wing is flown steadily (common practice, no source); a launch run is not far below
    /// trim.</summary>
    private const double SlowestShareOfTrim = 0.6;

    /// <summary>Warns of each airspeed above the polar's top or far below trim, both at the phase's own mass, load factor and
    /// density.</summary>
    /// <param name="study">Without errors.</param>
    /// <param name="phases">Those of its mission, in order; one may have been added at the end.</param>
    /// <param name="machine">For the mass.</param>
    /// <param name="wing">For the polar.</param>
    public static void Check(Section study, IReadOnlyList<Phase> phases, Machine machine, Wing wing)
    {
        foreach (var (entry, phase) in study.Entries("mission").Zip(phases))
        {
            if (phase is not
                {
                    Speed: FlightSpeed.AtAirspeed { MetresPerSecond: var given },
                    Power: PhasePower.FullThrottle or PhasePower.AtRpm or PhasePower.EngineOff
                })
                continue;
            var at = ((Node.Map)entry.Value).Entries.First(key => key.Key.Text == "airspeed").Value;
            var top = SpeedAt(wing.Polar.AirspeedAtFraction.Largest);
            var trim = SpeedAt(wing.Polar.AirspeedAtFraction.Smallest);
            if (given > top)
                study.DiagnosticBag.AddWarning(
                    at, Invariant($"the airspeed of {phase.Name}, {given:0.0} m/s, lies above the wing's top speed there, {top:0.0} m/s."));
            else if (given < SlowestShareOfTrim * trim)
                study.DiagnosticBag.AddWarning(
                    at, Invariant($"the airspeed of {phase.Name}, {given:0.0} m/s, lies below ")
                        + Invariant($"{SlowestShareOfTrim} of the wing's trim speed there, {trim:0.0} m/s."));

            double SpeedAt(double fraction) =>
                PhaseConditions.Of(phase with { Speed = new FlightSpeed.AtFraction(fraction) }, machine, wing).AirspeedMetresPerSecond;
        }
    }
}
