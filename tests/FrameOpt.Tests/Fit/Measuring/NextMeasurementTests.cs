using FrameOpt.Fit;
using FrameOpt.Forms;
using FrameOpt.Model;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.StudyFile;

namespace FrameOpt.Tests.Fit.Measuring;

public sealed class NextMeasurementTests
{
    private static readonly Study study = StudyReader.Read(Repository.Study("custom-match")).Study!;
    private static readonly FrameGeometry built = FrameGeometry.On(study.Machine, 0.440, -0.020, 0.200, 0);
    private static readonly IReadOnlyList<MeasuredRun> candidates = MeasurementForm.Candidates(study, built);
    private static readonly HiddenMachine hidden = new(study, 7);

    private static readonly MeasuredFit fit = MeasuredFit.Of(study, [.. candidates
        .Where(run => run is not MeasuredRun.Flight { Flown.OffsetMetres: not -0.020 }).Select(hidden.Read)]);

    [Fact]
    public void The_measurement_proposed_first_teaches_as_much_as_was_told()
    {
        var next = NextMeasurements.Of(fit, built, candidates);
        var best = next.Best[0];
        var after = MeasuredFit.Of(study, [.. fit.Runs, hidden.Read(best.Run)]);
        var then = NextMeasurements.Of(after, built, candidates);
        Assert.True(best.OffsetDeviation < next.DeviationNow);
        Check.Close(best.OffsetDeviation, then.DeviationNow, relative: 0.2, because: "slopes change a little with what was learnt");
    }

    [Fact]
    public void The_second_best_teaches_less()
    {
        var best = NextMeasurements.Of(fit, built, candidates).Best;
        Assert.True(best.Zip(best.Skip(1)).All(pair => pair.First.Gain >= pair.Second.Gain));
        Assert.True(best[^1].Gain > 0);
    }

    [Fact]
    public void No_flight_beyond_the_safe_limits_is_proposed_or_planned()
    {
        // 45 mm to the right adds to the torque of this propeller instead of holding it: by hand, some 80 N·m on 37 N·m of reach.
        var unsafeFrame = built with { OffsetMetres = 0.045 };
        var state = fit.State;
        Assert.All(NextMeasurements.Of(fit, unsafeFrame, MeasurementForm.Candidates(study, unsafeFrame)).Best,
            next => Assert.True(NextMeasurements.IsSafe(next.Run, state, study.Machine.Pilot.LeanMetres)));
        var form = MeasurementForm.Of(study, unsafeFrame, 1);
        Assert.NotEmpty(form.LeftOut);
        Assert.True(form.Sheets[3].Rows.Count < MeasurementForm.Of(study, built, 1).Sheets[3].Rows.Count);
    }

    [Fact]
    public void Two_numbers_that_hang_on_the_same_scales_are_not_told_apart_by_scales()
    {
        var scales = MeasuredFit.Of(study, [.. candidates.Where(run => run is MeasuredRun.Hang).Select(hidden.Read)]);
        var pair = InseparablePair.Of(scales, []).First(pair =>
            scales.Numbers[pair.First].Source == NoiseSource.PilotMass && scales.Numbers[pair.Second].Source == NoiseSource.LoadMass);
        // By hand: the scales know the sum to 0.3 kg, and each part only to some 2 kg.
        Assert.True(pair.Correlation < -0.95);
        Assert.Null(pair.Cure);
    }

    [Fact]
    public void What_scales_cannot_tell_apart_a_flight_does()
    {
        // Bench runs alone leave pitch and glide open; two flights tell thrust at speed from glide.
        var flights = candidates.OfType<MeasuredRun.Flight>()
            .Where(run => run.LeadKilograms == 0 && run.Flown.OffsetMetres == -0.020).ToList();
        var powered = MeasuredFit.Of(study, [.. flights.Where(run => run.Phase.Power is not PhasePower.EngineOff).Select(hidden.Read)]);
        var glide = flights.Where(run => run.Phase.Power is PhasePower.EngineOff).ToList();
        var (i, j) = (Index(powered, MeasurableSource.PropellerPitch), Index(powered, NoiseSource.GlideRatio));
        var then = NextMeasurements.With(powered, glide[0]);
        Assert.True(Math.Abs(then[i, j] / Math.Sqrt(then[i, i] * then[j, j])) < Math.Abs(powered.Least.Correlation(i, j)));
    }

    [Fact]
    public void Another_seed_gives_the_same_runs_in_another_order_and_the_same_seed_the_same_form()
    {
        static IEnumerable<string> Runs(MeasurementForm form) =>
            form.Sheets.SelectMany(sheet => sheet.Rows.Select(row => $"{sheet.Name}|{string.Join('|', row.Skip(1))}"));
        var (one, again, other) =
            (MeasurementForm.Of(study, built, 1), MeasurementForm.Of(study, built, 1), MeasurementForm.Of(study, built, 2));
        Assert.Equal(Runs(one), Runs(again));
        Assert.NotEqual(Runs(one), Runs(other));
        static IEnumerable<string> WithoutBlocks(MeasurementForm form) => form.Sheets.Take(3)
            .SelectMany(sheet => sheet.Rows.Select(row => $"{sheet.Name}|{string.Join('|', row.Skip(2))}")).Order();
        Assert.Equal(WithoutBlocks(one), WithoutBlocks(other));
        Assert.All(one.Sheets.Take(3), sheet => Assert.All(sheet.Rows.GroupBy(row => string.Join('|', row.Skip(2))),
            runs => Assert.Equal(2, runs.Count())));
    }

    [Fact]
    public void A_corrected_study_predicts_what_the_fit_predicted()
    {
        var text = File.ReadAllText(Repository.Study("custom-match"));
        StudyFactor[] frame = [.. study.Factors.Select(factor => factor.At(built[factor.Input]))];
        var answer = MeasuredAnswer.Of(new MeasuredFrame(text, null, study, frame, built, 2), fit, "test", out _)!.Corrected;
        var corrected = StudyReader.Parse(System.Text.Encoding.UTF8.GetBytes(answer.Correction.Text), "corrected").Study!;
        var again = MeasuredFit.Of(corrected, fit.Runs);
        // What belongs to the frame as built and to the measuring is not written, so a little misfit is left.
        var (before, after) = (fit.Misfit(reading => reading.Before), fit.Misfit(reading => reading.After));
        Assert.True(again.Misfit(reading => reading.Before) < (before + after) / 2);
        var thrust = again.Readings.Zip(fit.Readings).Where(pair => pair.First.Kind == ReadingKind.Thrust);
        Assert.All(thrust, pair => Check.Close(pair.Second.After, pair.First.Before, relative: 1e-3, because: "written to four digits"));
        var spread = corrected.Noise.Sources.First(pair => pair.Source == NoiseSource.PropellerThrust).Spread;
        Assert.True(spread is Spread.Normal { StandardDeviation: < 0.02 });
    }

    private static int Index(MeasuredFit of, NoiseSource source) => of.Numbers.Index().First(number => number.Item.Source == source).Index;
}
