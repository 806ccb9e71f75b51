using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.Uncertainty;

namespace FrameOpt.Reports.Drafting;

/// <summary>Where the centre of gravity may be: between which two corners 8 of 10 cases lie along each axis.</summary>
/// <param name="Low">Rear, left, lower corner.</param>
/// <param name="High">Front, right, upper corner.</param>
internal sealed record CentreRange(FramePoint Low, FramePoint High)
{
    private const int Cases = 128;

    /// <summary>Over the pilots, seats and masses that the study calls uncertain, each with its fuel and without.</summary>
    public static CentreRange Of(StudyResult result)
    {
        var study = result.Study;
        var start = NoiseCase.Of(result.Mission);
        // What leaves the masses alone does not move the centre.
        List<(NoiseSource Source, Spread Spread)> sources = [.. study.Noise.Sources.Where(pair => !ReferenceEquals(
            pair.Source.Apply(start, pair.Spread.Quantile(0.9)).Masses, start.Masses))];
        bool Moves(NoiseSource source) => sources.Exists(pair => pair.Source == source);
        var sample = new NoiseSample(study.Noise with
        {
            Sources = sources,
            Correlations = [.. study.Noise.Correlations.Where(pair => Moves(pair.First) && Moves(pair.Second))],
        }, Cases, study.Noise.Seed);
        var centres = Enumerable.Range(0, sample.Count).SelectMany(i =>
        {
            var deviations = sample.Deviations(i);
            var masses = sources.Index()
                .Aggregate(start, (state, pair) => pair.Item.Source.Apply(state, deviations[pair.Index])).Masses;
            return new[] { masses, [.. masses.Where(item => !item.IsFuel)] };
        }).Select(masses => study.Machine.With(masses).CentreOfGravity).ToList();
        FramePoint At(double share)
        {
            double Along(Func<FramePoint, double> axis)
            {
                var sorted = centres.Select(axis).Order().ToArray();
                return sorted[(int)Math.Round(share * (sorted.Length - 1))];
            }

            return new FramePoint(Along(point => point.ForwardMetres), Along(point => point.RightMetres), Along(point => point.UpMetres));
        }

        return new CentreRange(At(0.1), At(0.9));
    }
}
