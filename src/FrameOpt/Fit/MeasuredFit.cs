using FrameOpt.Studies;

namespace FrameOpt.Fit;

/// <summary>One reading beside what the model said before and says now.</summary>
/// <param name="Run">The run it belongs to.</param>
/// <param name="Kind">What was read.</param>
/// <param name="Measured">As read.</param>
/// <param name="Before">Predicted by the study as written.</param>
/// <param name="After">Predicted by the corrected numbers.</param>
/// <param name="Strangeness">How far it lies from what all other readings predict, in standard deviations.</param>
public sealed record ReadingComparison(
    MeasuredRun Run, ReadingKind Kind, Belief Measured, double Before, double After, double Strangeness)
{
    /// <summary>Beyond so many standard deviations a reading is an outlier: of 100 good ones one in twenty tries has one.</summary>
    private const double OutlierFrom = 3.5;

    /// <summary>True for one to look at again before believing the rest.</summary>
    public bool IsOutlier => Math.Abs(Strangeness) > OutlierFrom;
}

/// <summary>What measurements on the bench, on the hook and in flight say of a study.</summary>
/// <param name="Study">As written.</param>
/// <param name="Runs">What was measured.</param>
/// <param name="Numbers">All that may be off.</param>
/// <param name="Least">The fit, numbers in that order.</param>
/// <param name="Readings">In the order of the runs.</param>
public sealed record MeasuredFit(
    Study Study, IReadOnlyList<MeasuredRun> Runs, IReadOnlyList<MeasuredNumber> Numbers, LeastSquaresFit Least,
    IReadOnlyList<ReadingComparison> Readings)
{
    /// <summary>Fits a study to runs.</summary>
    /// <param name="study">Not one that takes every number as exact.</param>
    /// <param name="runs">With one reading or more.</param>
    public static MeasuredFit Of(Study study, IReadOnlyList<MeasuredRun> runs)
    {
        var numbers = MeasuredNumber.Of(study);
        double[] Predict(double[] off)
        {
            var state = MeasuredNumber.State(study, numbers, off);
            return [.. runs.SelectMany(run => MeasurementModel.Predict(run, [.. run.Readings.Select(reading => reading.Kind)], state))];
        }

        var read = runs.SelectMany(run => run.Readings.Select(reading => (Run: run, reading.Kind, Read: reading.Kind.Read(reading.Value))))
            .ToList();
        var least = LeastSquares.Of([.. numbers.Select(number => number.Before)],
            NoiseBeliefs.Correlations(study.Noise, [.. numbers.Select(number => number.Source)]), Predict,
            [.. read.Select(reading => reading.Read)]);
        var before = Predict([.. numbers.Select(number => number.Before.Start)]);
        return new MeasuredFit(study, runs, numbers, least, [.. read.Select((reading, r) => new ReadingComparison(
            reading.Run, reading.Kind, reading.Read, before[r], least.Readings[r].Predicted, least.Readings[r].Strangeness))]);
    }

    /// <summary>Machine, wing and measuring as the readings make them likely.</summary>
    public MeasuredState State => MeasuredNumber.State(Study, Numbers, [.. Least.Unknowns.Select(unknown => unknown.Value)]);

    /// <summary>How much of a number's spread is left, 1 when the readings said nothing of it.</summary>
    public double SpreadLeft(int number) => Least.Unknowns[number].StandardDeviation / Numbers[number].Before.StandardDeviation;

    /// <summary>Root mean square of the residuals over the errors of the readings; 1 when the model explains what it should.</summary>
    /// <param name="predicted">Before or after.</param>
    public double Misfit(Func<ReadingComparison, double> predicted) => Math.Sqrt(Readings.Average(reading =>
        Math.Pow((reading.Measured.Value - predicted(reading)) / reading.Measured.StandardDeviation, 2)));
}
