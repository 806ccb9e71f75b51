using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Fit;

/// <summary>What two scales read in a hang check, and how good the readings are.</summary>
/// <param name="LeftNewtons">The scale on the pilot's left.</param>
/// <param name="RightNewtons">The scale on the pilot's right.</param>
public sealed record ScaleReading(double LeftNewtons, double RightNewtons)
{
    /// <summary>Standard deviation of each scale, N: a hanging scale of the trade shows 0.1 or 0.2 kgf; common practice, no
    /// source.</summary>
    public double ScaleErrorNewtons { get; init; } = 0.2 * Constants.NewtonsPerKilogramForce;

    /// <summary>Standard deviation of the difference in length of the two straps of the check, m; common practice, no source.</summary>
    public double StrapErrorMetres { get; init; } = 0.003;

    /// <summary>All that hangs.</summary>
    public double TotalNewtons => LeftNewtons + RightNewtons;

    /// <summary>Right less left.</summary>
    public double DifferenceNewtons => RightNewtons - LeftNewtons;
}

/// <summary>Something that may be why the scales read what they read.</summary>
/// <param name="Source">The uncertain number of the study; null for the two straps of the check itself.</param>
/// <param name="Before">What was believed of its deviation.</param>
/// <param name="After">What is believed after the readings.</param>
/// <param name="Alone">The deviation that would explain the difference between the two scales all by itself; infinite for one that has no
/// part in it.</param>
public sealed record HangCheckCause(NoiseSource? Source, Belief Before, Belief After, double Alone)
{
    /// <summary>How unlikely it is to be the only cause, in standard deviations.</summary>
    public double Unlikely => Math.Abs(Alone - Before.Value) / Before.StandardDeviation;
}

/// <summary>What two scale readings say of a frame and its pilot.</summary>
/// <param name="Reading">As read.</param>
/// <param name="Expected">What the study expected.</param>
/// <param name="CentreRight">Centre of gravity of all that hangs, from the readings and the drawing alone, m to the pilot's right.</param>
/// <param name="Surprise">How far the difference is from what was expected, in standard deviations of all that may be off.</param>
/// <param name="Causes">The likeliest single cause first.</param>
/// <param name="Correlations">Between what is believed of the numbers of the study after the readings.</param>
public sealed record HangCheckFit(
    ScaleReading Reading, HangCheck Expected, Belief CentreRight, double Surprise, IReadOnlyList<HangCheckCause> Causes,
    IReadOnlyList<RankCorrelation> Correlations)
{
    private static readonly NoiseSource[] ofHangCheck =
    [
        NoiseSource.SeatRight, NoiseSource.FrameRight, NoiseSource.PilotMass, NoiseSource.LoadMass, NoiseSource.OffsetBuilt,
        NoiseSource.SpacingBuilt, NoiseSource.HangHeightsBuilt, NoiseSource.Straps,
    ];

    /// <summary>Compares readings with a study.</summary>
    /// <param name="study">Its machine and how sure its numbers are; a number taken as exact stays as it is.</param>
    /// <param name="hung">The frame that hangs, as drawn.</param>
    /// <param name="reading">Of the two scales.</param>
    public static HangCheckFit Of(Study study, FrameGeometry hung, ScaleReading reading)
    {
        var sources = study.Noise.Sources.Where(pair => ofHangCheck.Contains(pair.Source)).ToList();
        Belief[] beliefs = [.. sources.Select(pair => NoiseBeliefs.Middle(pair.Spread)), new Belief(0, reading.StrapErrorMetres)];
        HangCheck Check(double[] off)
        {
            var state = NoiseCase.Of(study.Machine, study.Wing, study.Mission);
            for (var s = 0; s < sources.Count; s++)
                state = sources[s].Source.Apply(state, off[s]);
            state = state.Built(GeometryInput.StrapDifference, off[^1]);
            return HangCheck.Of(state.Machine.With(state.Masses), hung + state.BuiltOff);
        }

        double[] Read(double[] off)
        {
            var check = Check(off);
            return [check.LeftNewtons, check.RightNewtons];
        }

        var after = LeastSquares.Of([.. beliefs.Select(belief => new Unknown(belief.Value, belief.StandardDeviation))],
            NoiseBeliefs.Correlations(study.Noise, [.. sources.Select(pair => pair.Source), null]), Read,
        [
            new Belief(reading.LeftNewtons, reading.ScaleErrorNewtons), new Belief(reading.RightNewtons, reading.ScaleErrorNewtons),
        ]);
        var expected = Check([.. beliefs.Select(belief => belief.Value)]);
        var missing = reading.DifferenceNewtons - expected.DifferenceNewtons;
        var (covariance, slopes) = (after.ExpectedCovariance, after.ExpectedSlopes);
        var spread = Math.Sqrt(covariance[0, 0] + covariance[1, 1] - 2 * covariance[0, 1]);
        HangCheckCause Cause(int i)
        {
            var slope = slopes[1, i] - slopes[0, i];
            return new(i < sources.Count ? sources[i].Source : null, beliefs[i], after.Unknowns[i],
                slope == 0 ? double.PositiveInfinity : beliefs[i].Value + missing / slope);
        }

        return new HangCheckFit(reading, expected, Centre(study.Machine, hung, reading), missing / spread,
            [.. beliefs.Select((_, i) => Cause(i)).OrderBy(cause => cause.Unlikely)],
            NoiseBeliefs.Ranks([.. sources.Select(pair => pair.Source)], after.Correlation));
    }

    /// <summary>The deviation the readings make likely, in the unit of the source; 0 for one that is taken as exact.</summary>
    public double Deviation(NoiseSource source) => Causes.FirstOrDefault(cause => cause.Source == source)?.After.Value ?? 0;

    /// <summary>The moments about the middle of the hang points: r = e + h d/s + (right - left) s / (2 W).</summary>
    /// <remarks>Source: statics of a beam on two supports, as in <see cref="HangCheck.Of"/>.</remarks>
    private static Belief Centre(Machine machine, in FrameGeometry hung, ScaleReading reading)
    {
        var (s, total) = (hung.SpacingMetres, reading.TotalNewtons);
        var height = hung.HeightMetres - machine.CentreOfGravity.UpMetres;
        var roll = (hung.HangHeightDifferenceMetres + hung.StrapDifferenceMetres) / s;
        var ofStraps = height * reading.StrapErrorMetres / s;
        var ofScales = s * reading.ScaleErrorNewtons * Math.Sqrt(2) / (2 * total);
        return new Belief(hung.OffsetMetres + height * roll + reading.DifferenceNewtons * s / (2 * total),
            Math.Sqrt(ofStraps * ofStraps + ofScales * ofScales));
    }
}
