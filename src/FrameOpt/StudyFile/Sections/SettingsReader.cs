using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the smaller settings: baseline, strength, balanced band.</summary>
internal static class SettingsReader
{
    private const double AssumedBand = 5;

    public static FrameGeometry? Baseline(Section? baseline, Machine? machine, IReadOnlyList<StudyFactor> factors)
    {
        if (baseline is null)
            return null;
        foreach (var factor in factors.Where(factor => !factor.Input.IsRequired && !baseline.Has(factor.Name)))
            baseline.DiagnosticBag.Add(baseline.Owner, $"{baseline.PathOf(factor.Name)} is missing: it is a factor of this study.",
                StudyKeys.Baseline.Find(factor.Name)!.FixWhenMissing("under baseline"));
        var given = FactorCatalogue.All
            .Select(input => (input, value: baseline.OptionalNumber(input.Name, FactorReader.DimensionOf(input),
                FactorReader.AllowedRangeOf(input))))
            .Where(pair => pair.value is not null)
            .ToList();
        if (machine is null)
            return null;
        return given.Aggregate(FrameGeometry.AsBuilt(machine), (geometry, pair) => geometry.With(pair.input, pair.value!.Value));
    }

    public static StrengthSetting? Strength(Section? strength) => strength is null
        ? null
        : new StrengthSetting(
            strength.Number("limit_load_factor", Dimension.Number, AllowedRange.PositiveUpTo(20, "20")),
            strength.Number("overhang", Dimension.Length, AllowedRange.PositiveUpTo(2, "2 m")));

    public static BandSetting Band(Section study, IReadOnlyList<Phase> phases)
    {
        if (!study.Has("balanced_band"))
            return DefaultBand(study, phases);
        if (study.Child("balanced_band", StudyKeys.BalancedBand) is not { } band)
            return new BandSetting(0, AssumedBand);
        var within = band.Number("within", Dimension.Torque, AllowedRange.PositiveUpTo(500, "500 N·m"));
        var index = phases.Select(phase => phase.Name).ToList().IndexOf(band.Text("phase") ?? "");
        if (index < 0 && phases.Count > 0 && band.Value("phase") is Node.Scalar wrong)
            band.DiagnosticBag.Add(wrong, $"The mission has no phase `{wrong.Excerpt}`.",
                NearestName.Of(wrong.Text, phases.Select(p => p.Name)) is { } near
                ? $"Did you mean `{near}`?"
                : $"Its phases are {string.Join(", ", phases.Select(p => p.Name))}.");
        return new BandSetting(Math.Max(0, index), within);
    }

    private static BandSetting DefaultBand(Section study, IReadOnlyList<Phase> phases)
    {
        if (phases.Count == 0)
            return new BandSetting(0, AssumedBand);
        var powered = phases.Where(phase => phase.Power is not PhasePower.EngineOff).DefaultIfEmpty(phases[0]).MaxBy(
            phase => phase.Weight)!;
        study.DiagnosticBag.AddAssumption("balanced band", $"residual torque within 5 N·m at the airspeed of {powered.Name}",
            "assumption; range 2 to 10 N·m");
        return new BandSetting(phases.ToList().IndexOf(powered), AssumedBand);
    }
}
