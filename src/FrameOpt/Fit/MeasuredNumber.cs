using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Fit;

/// <summary>A number that measurements may correct.</summary>
/// <param name="Source">The uncertain number of the study; null for one of the measuring itself.</param>
/// <param name="Title">In words.</param>
/// <param name="Before">What the study, or usual practice, says of it.</param>
public sealed record MeasuredNumber(NoiseSource? Source, string Title, Unknown Before)
{
    /// <summary>A wing's own trim turns it by so much, N·m: one millimetre of one-sided line trim is about 1.2 (own estimate).</summary>
    private const double OwnTurnNewtonMetres = 3;

    /// <summary>The straps of the hang check.</summary>
    private const string CheckStraps = "the two straps of the hang check";

    /// <summary>The wing's own trim.</summary>
    private const string OwnTurn = "the wing's own turn";

    /// <summary>All that the measurements of a study may correct: its uncertain numbers, further ones that only measuring tells, and two of
    /// the measuring itself. Nothing when the study takes every number as exact.</summary>
    public static IReadOnlyList<MeasuredNumber> Of(Study study)
    {
        if (study.Noise.Sources.Count == 0)
            return [];
        var isNumber = study.Wing.YawLeverage is YawLeverage.Constant;
        bool Counts(NoiseSource source) => source != NoiseSource.AirTemperature && (isNumber
            ? source != MeasurableSource.SpeedFactor && source != MeasurableSource.TwistShare : source != NoiseSource.YawLeverageOfWing);
        var named = study.Noise.Sources;
        var further = MeasurableSource.All.Except(named.Select(pair => pair.Source)).Except(study.Noise.Exact)
            .Select(source => (Source: source, Spread: source.Usual));
        return
        [
            .. named.Concat(further).Where(pair => Counts(pair.Source))
                .Select(pair => new MeasuredNumber(pair.Source, pair.Source.Title, Start(pair.Source, pair.Spread))),
            new MeasuredNumber(null, CheckStraps, new Unknown(0, new ScaleReading(0, 0).StrapErrorMetres)),
            new MeasuredNumber(null, OwnTurn, new Unknown(0, OwnTurnNewtonMetres)),
        ];
    }

    /// <summary>Machine, wing and measuring with the numbers off by some deviations.</summary>
    /// <param name="study">As written.</param>
    /// <param name="numbers">Those of <see cref="Of"/>.</param>
    /// <param name="off">As many.</param>
    public static MeasuredState State(Study study, IReadOnlyList<MeasuredNumber> numbers, IReadOnlyList<double> off)
    {
        var state = NoiseCase.Of(study.Machine, study.Wing, study.Mission);
        double straps = 0, turn = 0;
        foreach (var (i, number) in numbers.Index())
        {
            state = number.Source?.Apply(state, off[i]) ?? state;
            straps += number.Title == CheckStraps ? off[i] : 0;
            turn += number.Title == OwnTurn ? off[i] : 0;
        }

        return new MeasuredState(state, straps, turn);
    }

    /// <summary>True for one that belongs to the machine or the wing, and not to the frame that hung or flew or to the measuring.</summary>
    public bool IsOfStudy => Source is { IsOfFrame: false };

    private static Unknown Start(NoiseSource source, Spread spread)
    {
        var (middle, most) = (NoiseBeliefs.Middle(spread), source.Unit switch
        {
            NoiseUnit.Share => 0.5,
            NoiseUnit.Range => 1,
            _ => double.PositiveInfinity,
        });
        var (low, high) = spread is Spread.Normal normal ? (normal.From, normal.To) : (-most, most);
        return new Unknown(middle.Value, middle.StandardDeviation, Math.Max(low, -most), Math.Min(high, most));
    }
}
