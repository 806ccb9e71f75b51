using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Fit;

/// <summary>One more measurement, and what it would teach.</summary>
/// <param name="Run">How to set it, and what to read.</param>
/// <param name="Gain">By how much the logarithm of the volume of what the deciding numbers may be falls; D-optimal is the largest.</param>
/// <param name="OffsetDeviation">How well the best offset would be known then, m.</param>
public sealed record NextMeasurement(MeasuredRun Run, double Gain, double OffsetDeviation);

/// <summary>What to measure next for the sake of the hole.</summary>
/// <param name="Deciding">Indices of the numbers that move the best offset most, by what they may still be off.</param>
/// <param name="OffsetMetres">The offset of least residual torque over the mission's settled phases.</param>
/// <param name="DeviationBefore">How well it was known before the readings, m.</param>
/// <param name="DeviationNow">How well it is known now, m.</param>
/// <param name="Best">The best candidates, the first one first.</param>
/// <remarks>Source: D-optimality for some of the numbers, A. C. Atkinson, A. N. Donev, R. D. Tobias, Optimum Experimental Designs, with
/// SAS, 2007, section 10.3; from memory.</remarks>
public sealed record NextMeasurements(
    IReadOnlyList<int> Deciding, double OffsetMetres, double DeviationBefore, double DeviationNow, IReadOnlyList<NextMeasurement> Best)
{
    /// <summary>The deciding numbers make so much of the variance of the offset.</summary>
    private const double DecidingShare = 0.9;
    private const int MostDeciding = 5;
    private const int MostShown = 3;

    /// <summary>Of the largest lean: a flight that asks for more is never proposed.</summary>
    public const double MaxEffort = 0.5;

    /// <summary>A flight with less is never proposed.</summary>
    public const double MinTwistMargin = 3;

    /// <summary>Ranks candidates.</summary>
    /// <param name="fit">Of the readings so far.</param>
    /// <param name="frame">The frame to choose the offset for.</param>
    /// <param name="candidates">Those outside the safe limits are left out here.</param>
    public static NextMeasurements Of(MeasuredFit fit, FrameGeometry frame, IEnumerable<MeasuredRun> candidates)
    {
        double Offset(double[] off) => BestOffset(MeasuredNumber.State(fit.Study, fit.Numbers, off), frame);
        double[] now = [.. fit.Least.Unknowns.Select(unknown => unknown.Value)];
        var slope = Vector<double>.Build.Dense(now.Length, i =>
        {
            var step = 1e-2 * fit.Least.Unknowns[i].StandardDeviation;
            double[] above = [.. now], below = [.. now];
            above[i] = Math.Min(now[i] + step, fit.Numbers[i].Before.High);
            below[i] = Math.Max(now[i] - step, fit.Numbers[i].Before.Low);
            return above[i] > below[i] ? (Offset(above) - Offset(below)) / (above[i] - below[i]) : 0;
        });
        var covariance = Matrix<double>.Build.DenseOfArray(fit.Least.Covariance);
        double Deviation(Matrix<double> known) => Math.Sqrt(slope * known * slope);
        var before = Math.Sqrt(slope.Select((by, i) => Math.Pow(by * fit.Numbers[i].Before.StandardDeviation, 2)).Sum());
        var deciding = DecidingNumbers(slope, covariance);
        double Volume(Matrix<double> known) => Elementary.Log(Matrix<double>.Build.Dense(deciding.Count, deciding.Count,
            (i, j) => known[deciding[i], deciding[j]]).Determinant());
        var best = candidates.Where(run => IsSafe(run, fit.State, fit.Study.Machine.Pilot.LeanMetres)).Select(run =>
        {
            var after = With(fit, run);
            return new NextMeasurement(run, (Volume(covariance) - Volume(after)) / 2, Deviation(after));
        }).OrderByDescending(next => next.Gain).Take(MostShown);
        return new NextMeasurements(deciding, Offset(now), before, Deviation(covariance), [.. best]);
    }

    /// <summary>What is known of the numbers after one more run: its readings are expected where the fit predicts them.</summary>
    public static Matrix<double> With(MeasuredFit fit, MeasuredRun run)
    {
        var covariance = Matrix<double>.Build.DenseOfArray(fit.Least.Covariance);
        IReadOnlyList<ReadingKind> kinds = [.. run.Readings.Select(reading => reading.Kind)];
        double[] Predict(Vector<double> off) =>
            MeasurementModel.Predict(run, kinds, MeasuredNumber.State(fit.Study, fit.Numbers, [.. off]));
        var now = Vector<double>.Build.DenseOfEnumerable(fit.Least.Unknowns.Select(unknown => unknown.Value));
        var expected = Predict(now);
        var problem = new LeastSquaresProblem([.. fit.Numbers.Select((number, i) => number.Before with
        {
            StandardDeviation = fit.Least.Unknowns[i].StandardDeviation,
        })], null, off => Predict(Vector<double>.Build.Dense(off)), [.. kinds.Select((kind, k) => kind.Read(expected[k]))]);
        var slope = problem.Slope(now);
        var error = Matrix<double>.Build.DenseDiagonal(kinds.Count, kinds.Count,
            k => problem.Measured[k].StandardDeviation * problem.Measured[k].StandardDeviation);
        var gain = covariance * slope.Transpose() * (slope * covariance * slope.Transpose() + error).Inverse();
        return covariance - gain * slope * covariance;
    }

    /// <summary>True for a bench or hook run, and for a flight well within what pilot and risers hold by the corrected model.</summary>
    public static bool IsSafe(MeasuredRun run, in MeasuredState state, double leanMetres) => run is not MeasuredRun.Flight flight
        || FlownState.Of(flight, state.Case.Machine.With(state.Case.Masses), state) is { } flown
            && Math.Abs(flown.LeanMetres) <= MaxEffort * leanMetres && flown.TwistMargin >= MinTwistMargin
            && flown.Balance.PendulumShare >= PhaseResponses.LeastPendulumShare;

    /// <summary>The least squares of residual torque over the settled phases, by their weights: R = a + b e in each.</summary>
    private static double BestOffset(in MeasuredState state, FrameGeometry frame)
    {
        var machine = state.Case.Machine.With(state.Case.Masses);
        double up = 0, down = 0;
        foreach (var phase in state.Case.Mission.Where(phase => phase.IsSettled && phase.Power is not PhasePower.FullThrottle))
        {
            if (FlownState.Of(new MeasuredRun.Flight("", frame, phase, 0), machine, state) is not { } flown)
                continue;
            var (a, b) = (flown.Balance.Residual.AtZero + state.OwnTurnNewtonMetres, flown.Balance.Residual.PerMetre);
            (up, down) = (up - phase.Weight * a * b, down + phase.Weight * b * b);
        }

        return down > 0 ? up / down - state.Case.BuiltOff.OffsetMetres : double.NaN;
    }

    private static List<int> DecidingNumbers(Vector<double> slope, Matrix<double> covariance)
    {
        var share = slope.Select((by, i) => by * by * covariance[i, i]).ToArray();
        var (total, sum) = (share.Sum(), 0.0);
        var deciding = new List<int>();
        foreach (var i in Enumerable.Range(0, share.Length).OrderByDescending(i => share[i]).Take(MostDeciding))
        {
            deciding.Add(i);
            sum += share[i];
            if (sum >= DecidingShare * total)
                break;
        }

        return deciding;
    }
}
