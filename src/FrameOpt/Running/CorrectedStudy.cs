using System.Globalization;
using FrameOpt.Fit;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.StudyFile.Editing;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Running;

/// <summary>One number of a study that a measurement changed.</summary>
/// <param name="Path">As in machine.masses.0.right.</param>
/// <param name="Name">What it is, for a reader.</param>
/// <param name="Before">As written; empty for a number that was not there.</param>
/// <param name="After">As written now.</param>
public sealed record StudyChange(string Path, string Name, string Before, string After)
{
    /// <summary>True for a number of the machine, false for how far one may be off.</summary>
    public bool IsOfMachine => !Path.StartsWith("noise.", StringComparison.Ordinal);

    /// <summary>True for a list, which is long to read.</summary>
    public bool IsList => After.StartsWith('[');
}

/// <summary>A user's study with what a hang check taught it: only numbers change, every comment stays.</summary>
/// <param name="Text">Of the corrected file.</param>
/// <param name="Changes">In the order of the file.</param>
public sealed record CorrectedStudy(string Text, IReadOnlyList<StudyChange> Changes)
{
    private const double LengthResolution = 1e-4;
    private const double MassResolution = 0.05;

    /// <summary>Correlations are written a little smaller than they are, so that rounding leaves them possible together.</summary>
    private const double CorrelationShare = 0.99;

    /// <summary>Moves the masses sideways and corrects their size as far as the readings make likely, and narrows their spreads.</summary>
    /// <param name="text">Of the study file.</param>
    /// <param name="study">As read from it, without a variant.</param>
    /// <param name="fit">Of the readings.</param>
    /// <param name="origin">Where the numbers come from, for the head of the file: "hang check of 2026-05-01, left 46.1 kgf, ...".</param>
    public static CorrectedStudy Of(string text, Study study, HangCheckFit fit, string origin)
    {
        var changes = new List<StudyChange>();
        void Change(string path, string name, string after, bool asList = false)
        {
            var edit = StudyEdit.Of(text);
            var before = edit.Value(path) ?? "";
            var changed = asList ? edit.WithList(path, after) : edit.With(path, after);
            if (before == after || changed == text)
                return;
            text = changed;
            changes.Add(new StudyChange(path, name, before, after));
        }

        foreach (var (i, item) in study.Machine.Masses.Index())
        {
            var (shift, share) = item.IsBody ? (fit.Deviation(NoiseSource.SeatRight), fit.Deviation(NoiseSource.PilotMass))
                : (fit.Deviation(NoiseSource.FrameRight), fit.Deviation(NoiseSource.LoadMass));
            var old = StudyEdit.Of(text);
            string Path(string key) => $"machine.masses.{i.ToString(CultureInfo.InvariantCulture)}.{key}";
            foreach (var (key, dimension, resolution) in (ReadOnlySpan<(string, Dimension, double)>)
                [("mass", Dimension.Mass, MassResolution), ("volume", Dimension.Volume, MassResolution / 1000)])
            {
                if (old.Value(Path(key)) is { } size && Scaled(size, dimension, resolution, value => value * (1 + share)) is { } corrected)
                    Change(Path(key), $"{key} of {item.Name}", corrected);
            }

            if (old.Value(Path("right")) is { } right
                && Scaled(right, Dimension.Length, LengthResolution, value => value + shift) is { } moved)
            {
                Change(Path("right"), $"{item.Name}, to the pilot's right", moved);
            }
        }

        Spreads(study, fit, Change);
        return new CorrectedStudy(changes.Count == 0 ? text : Headed(text, origin, changes), changes);
    }

    private static void Spreads(Study study, HangCheckFit fit, Action<string, string, string, bool> change)
    {
        var learnt = fit.Causes.Where(cause => cause.Source is { } source && IsOfMachine(source)
            && study.Noise.Sources.Any(pair => pair.Source == source && pair.Spread is Spread.Normal)).ToList();
        foreach (var cause in learnt)
        {
            var size = cause.After.StandardDeviation;
            change($"noise.{cause.Source!.Name}.normal", $"spread of {cause.Source.Title}", cause.Source.Unit == NoiseUnit.Share
                ? string.Create(CultureInfo.InvariantCulture, $"{100 * size:0.00} %")
                : string.Create(CultureInfo.InvariantCulture, $"{1000 * size:0.0} mm"), false);
        }

        bool IsLearnt(RankCorrelation pair) =>
            learnt.Any(cause => cause.Source == pair.First) && learnt.Any(cause => cause.Source == pair.Second);
        if (learnt.Count < 2)
            return;
        var pairs = study.Noise.Correlations.Where(pair => !IsLearnt(pair)).Select(pair => (pair, Share: 1.0))
            .Concat(fit.Correlations.Where(IsLearnt).Select(pair => (pair, Share: CorrelationShare)));
        change("noise.correlations", "which of them are off together", $"[{string.Join(", ", pairs.Select(item => string.Create(
            CultureInfo.InvariantCulture,
            $"[{item.pair.First.Name}, {item.pair.Second.Name}, {item.Share * item.pair.Rank:0.000}]")))}]", true);
    }

    private static bool IsOfMachine(NoiseSource source) => source == NoiseSource.SeatRight || source == NoiseSource.FrameRight
        || source == NoiseSource.PilotMass || source == NoiseSource.LoadMass;

    /// <summary>A quantity as written, changed and written in the same unit; null where it stays the same.</summary>
    private static string? Scaled(string written, Dimension dimension, double resolution, Func<double, double> change)
    {
        var parsed = NumberText.Parse(written);
        if (parsed.Message is not null || dimension.FindUnit(parsed.Unit) is not { } unit)
            return null;
        var (before, after) = (unit.ToBase(parsed.Value), change(unit.ToBase(parsed.Value)));
        if (Math.Abs(after - before) < resolution / 2)
            return null;
        var decimals = Math.Clamp((int)Math.Ceiling(Math.Log10(unit.ToBase(1) / resolution)), 0, 6);
        return $"{Math.Round(after / unit.ToBase(1), decimals).ToString(CultureInfo.InvariantCulture)} {parsed.Unit}";
    }

    private static string Headed(string text, string origin, IReadOnlyList<StudyChange> changes)
    {
        var first = text.StartsWith("# yaml-language-server", StringComparison.Ordinal) ? text.IndexOf('\n') + 1 : 0;
        var lines = changes.Where(change => change.IsOfMachine).Select(change =>
            $"#   {change.Name} ({change.Path}): {(change.Before.Length == 0 ? "not given" : change.Before)} -> {change.After}\n");
        return $"{text[..first]}# Corrected by frameopt from a {origin}:\n{string.Concat(lines)}"
            + $"#   and how far they may still be off, under noise\n{text[first..]}";
    }
}
