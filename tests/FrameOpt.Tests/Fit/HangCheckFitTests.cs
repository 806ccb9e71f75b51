using FrameOpt.Fit;
using FrameOpt.Model;
using FrameOpt.Numerics;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.StudyFile;

namespace FrameOpt.Tests.Fit;

public sealed class HangCheckFitTests
{
    private const double Newtons = Constants.NewtonsPerKilogramForce;
    private static readonly Study study = StudyReader.Read(Repository.Study("custom-match")).Study!;
    private static readonly FrameGeometry hung = FrameGeometry.On(study.Machine, 0.440, -0.020, 0.200, 0);

    [Fact]
    public void Two_readings_give_the_centre_of_gravity_by_hand_arithmetic()
    {
        // Statics by hand: 65.2 - 46.1 = 19.1 kgf over 111.3 kgf and 440 mm is an arm of 19.1 x 440 / (2 x 111.3) = 37.75 mm to the right
        // of the middle between the hang points, which is 20 mm left of the plane of symmetry.
        var fit = HangCheckFit.Of(study, hung, new ScaleReading(46.1 * Newtons, 65.2 * Newtons));
        Check.Close(0.01775, fit.CentreRight.Value, relative: 1e-3, because: "the arithmetic above is to four digits");
    }

    [Fact]
    public void A_pilot_who_sits_to_one_side_is_found_when_nothing_else_is_uncertain()
    {
        var sure = study with { Noise = new NoiseSetting([(NoiseSource.SeatRight, new Spread.Normal(0.05))], []) };
        var fit = HangCheckFit.Of(sure, hung, Read(study, seat: 0.012) with { ScaleErrorNewtons = 0.01, StrapErrorMetres = 1e-6 });
        Check.Close(0.012, fit.Deviation(NoiseSource.SeatRight), relative: 1e-4, because: "scales of 1 g leave a few micrometres");
        Assert.Equal(NoiseSource.SeatRight, fit.Causes[0].Source);
        Check.Close(0.012, fit.Causes[0].Alone, relative: 1e-4, because: "it is the only cause");
    }

    [Fact]
    public void A_stranger_number_is_the_less_likely_cause()
    {
        var causes = HangCheckFit.Of(study, hung, Read(study, seat: 0.012)).Causes;
        Assert.Equal(NoiseSource.SeatRight, causes[0].Source);
        Assert.True(causes.Select(cause => cause.Unlikely).Order().SequenceEqual(causes.Select(cause => cause.Unlikely)));
    }

    [Fact]
    public void What_is_known_after_the_readings_holds_in_95_of_100_cases()
    {
        // Frames and pilots as uncertain as the study says, hung from straps and scales as uncertain as the reading says.
        var random = new Pcg32(19);
        double Normal(double deviation) => deviation * Quantile.Normal(Math.Max(1e-12, random.NextDouble()));
        var covered = 0;
        for (var repeat = 0; repeat < 500; repeat++)
        {
            var (seat, frame) = (Normal(0.010), Normal(0.005));
            var read = Read(study, seat, frame, Normal(0.002), Normal(0.003), built: Normal(0.001));
            var fit = HangCheckFit.Of(study, hung, new ScaleReading(
                read.LeftNewtons + Normal(read.ScaleErrorNewtons), read.RightNewtons + Normal(read.ScaleErrorNewtons)));
            var known = fit.Causes.First(cause => cause.Source == NoiseSource.SeatRight).After;
            covered += Math.Abs(known.Value - seat) < 1.96 * known.StandardDeviation ? 1 : 0;
        }

        // Binomial with 500 draws of 0.95: 475 with a standard deviation of 4.9.
        Assert.InRange(covered, 460, 490);
    }

    /// <summary>What the scales read, from the moments of the masses about the left strap, written out here once more.</summary>
    private static ScaleReading Read(
        Study study, double seat, double frame = 0, double ownStraps = 0, double straps = 0, double built = 0)
    {
        double weight = 0, moment = 0, lifted = 0;
        foreach (var item in study.Machine.Masses)
        {
            var pull = item.MassKilograms * 9.80665;
            weight += pull;
            moment += pull * (item.At.RightMetres + (item.IsBody ? seat : frame));
            lifted += pull * (hung.HeightMetres - item.At.UpMetres);
        }

        var spacing = hung.SpacingMetres;
        var arm = (moment - lifted * (ownStraps + straps) / spacing) / weight - hung.OffsetMetres - built;
        return new ScaleReading(weight * (0.5 - arm / spacing), weight * (0.5 + arm / spacing));
    }
}
