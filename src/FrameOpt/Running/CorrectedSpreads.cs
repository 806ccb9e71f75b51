using System.Globalization;
using FrameOpt.Model;
using FrameOpt.Model.Balance;
using FrameOpt.Numerics;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Running;

/// <summary>How far the corrected numbers of a study may still be off.</summary>
internal static class CorrectedSpreads
{
    /// <summary>Correlations are written a little smaller than they are, so that rounding leaves them possible together.</summary>
    private const double FirstShare = 0.99;
    private const double NextShare = 0.95;
    private const int MostShares = 20;

    /// <summary>A smaller correlation is not written.</summary>
    private const double LeastRank = 0.05;

    /// <summary>Narrows the spreads, and says which numbers are off together.</summary>
    public static void Change(
        StudySheet sheet, Study study, IReadOnlyList<LearntNumber> learnt, IReadOnlyList<RankCorrelation> correlations,
        double spacingMetres)
    {
        var changed = learnt.Where(number => Write(sheet, study, number, Deviation(study, learnt, number, spacingMetres))).ToList();
        if (changed.Any(number => number.Source == MeasurableSource.SpeedFactor || number.Source == MeasurableSource.TwistShare))
            sheet.Change("noise.yaw_leverage", "spread of the yaw leverage, now that of its two factors", "none");
        bool IsLearnt(RankCorrelation pair) =>
            changed.Any(number => number.Source == pair.First) && changed.Any(number => number.Source == pair.Second);
        if (changed.Count < 2)
            return;
        var old = study.Noise.Correlations.Where(pair => !IsLearnt(pair)).ToList();
        var now = correlations.Where(pair => IsLearnt(pair) && Math.Abs(pair.Rank) >= LeastRank).ToList();
        if (old.Count + now.Count == 0)
            return;
        var share = FirstShare;
        for (var i = 0; i < MostShares && !Setting(changed, now, share).IsPossible; i++)
            share *= NextShare;
        sheet.Change("noise.correlations", "which of them are off together", $"[{string.Join(", ", old.Select(pair => (pair, Share: 1.0))
            .Concat(now.Select(pair => (pair, Share: share))).Select(item => string.Create(CultureInfo.InvariantCulture,
                $"[{item.pair.First.Name}, {item.pair.Second.Name}, {item.Share * item.pair.Rank:0.000}]")))}]", asList: true);
    }

    private static NoiseSetting Setting(IEnumerable<LearntNumber> numbers, IEnumerable<RankCorrelation> correlations, double share) =>
        new([.. numbers.Select(number => (number.Source, number.Source.Usual))],
            [.. correlations.Select(pair => pair with { Rank = share * pair.Rank })]);

    /// <summary>The deviation that is left, seen from the corrected number.</summary>
    private static double Deviation(Study study, IReadOnlyList<LearntNumber> learnt, LearntNumber number, double spacingMetres)
    {
        var (off, size) = (number.After.Value, number.After.StandardDeviation);
        if (number.Source.Unit == NoiseUnit.Share)
            return size / (1 + off);
        if (number.Source.Unit != NoiseUnit.Range)
            return size;
        var wing = CorrectedFigures.Corrected(study, learnt);
        if (number.Source == NoiseSource.RiserCouplingOfWing)
        {
            // In equal ratios from soft to stiff: a ratio is so much of the way, half of which lies on either side on average.
            var before = RiserStiffness.RollMetres(study.Wing, spacingMetres);
            var ratio = off < 0 ? before / RiserCoupling.Soft.LengthMetres : RiserCoupling.Stiff.LengthMetres / before;
            var now = Elementary.Log(RiserCoupling.Stiff.LengthMetres / RiserCoupling.Soft.LengthMetres) / 2;
            return size * Elementary.Log(ratio) / now;
        }

        return (study.Wing.YawLeverage, wing.YawLeverage) switch
        {
            (YawLeverage.Constant before, YawLeverage.Constant now) => size * before.Value / now.Value,
            (YawLeverage.FromSpeed before, _) => 2 * size * (off < 0 ? before.TwistShare : 1 - before.TwistShare),
            (YawLeverage.FromSideslip before, _) => 2 * size * (off < 0 ? before.TwistShare : 1 - before.TwistShare),
            _ => size,
        };
    }

    /// <summary>Writes a spread in the kind the file has, normal where it has none; false where it has a table of deviations.</summary>
    private static bool Write(StudySheet sheet, Study study, LearntNumber number, double size)
    {
        var (path, name) = ($"noise.{number.Source.Name}", $"spread of {number.Source.Title}");
        var most = number.Source.Unit == NoiseUnit.Range ? 1 : double.PositiveInfinity;
        string Ends(double factor) => Text(number.Source, Math.Min(most, factor * size));
        if (sheet.Count($"{path}.triangle") > 0)
            return sheet.Change($"{path}.triangle", name,
                $"[-{Ends(Math.Sqrt(6))}, 0{Unit(number.Source)}, {Ends(Math.Sqrt(6))}]", asList: true);
        if (sheet.Count($"{path}.uniform") > 0)
            return sheet.Change($"{path}.uniform", name, $"[-{Ends(Math.Sqrt(3))}, {Ends(Math.Sqrt(3))}]", asList: true);
        return sheet.Count($"{path}.table") == 0 && !study.Noise.Exact.Contains(number.Source)
            && sheet.Change($"{path}.normal", name, Text(number.Source, size));
    }

    private static string Text(NoiseSource source, double size) => source.Unit switch
    {
        NoiseUnit.Share => string.Create(CultureInfo.InvariantCulture, $"{100 * size:0.00} %"),
        NoiseUnit.Range => string.Create(CultureInfo.InvariantCulture, $"{size:0.000}"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{1000 * size:0.0} mm"),
    };

    private static string Unit(NoiseSource source) => source.Unit switch
    {
        NoiseUnit.Share => " %",
        NoiseUnit.Range => "",
        _ => " mm",
    };
}
