using FrameOpt.Studies.Noise;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads what of a study is uncertain; a study that says nothing gets the usual spreads.</summary>
internal static class NoiseReader
{
    private const string None = "none";
    private const string Correlations = "correlations";
    private const int MaxDeviations = 1_000;

    /// <summary>The keys of the section: every source, and the correlations.</summary>
    public static SectionKeys Keys { get; } = new("noise",
    [
        .. NoiseSource.All.Concat(MeasurableSource.All).Select(source => Key.Optional(source.Name, $"{{ normal: {Example(source)} }}",
            "none, or one of normal, uniform, triangle and table")),
        Key.Optional("cases", "256", "cases of a response over cases, a power of two"), Key.Optional("seed", "1"),
        Key.Optional(Correlations, "[[seat_right, frame_right, 0.5]]", "a list of pairs, each with its rank correlation"),
    ]);

    /// <summary>The keys of one source.</summary>
    public static SectionKeys SpreadKeys { get; } = new("noise.<source>",
        Key.Optional("normal", "10 mm"), Key.Optional("from", "-20 mm"), Key.Optional("to", "20 mm"),
        Key.Optional("uniform", "[-3 mm, 3 mm]", "the smallest and the largest deviation"),
        Key.Optional("triangle", "[-1, 0, 1]", "the smallest, the most frequent and the largest deviation"),
        Key.Optional("table", "[-2 %, 0 %, 3 %]", "measured deviations"));

    /// <summary>The setting; the usual one when the study has none.</summary>
    public static NoiseSetting Read(Section study)
    {
        if (!study.Has("noise"))
        {
            study.DiagnosticBag.AddAssumption("noise", "the usual spreads (docs/noise.md)",
                "assumption; `noise: none` takes every number as exact");
            return NoiseSetting.Usual;
        }

        if (study.Value("noise") is Node.Scalar { Text: None })
            return NoiseSetting.None;
        if (study.Child("noise", Keys) is not { } noise)
            return NoiseSetting.None;
        var known = NoiseSource.All.Concat(MeasurableSource.All.Where(source => noise.Has(source.Name))).ToList();
        var sources = known.Select(source => (source, Spread: SpreadOf(noise, source)))
            .Where(pair => pair.Spread is not null).Select(pair => (pair.source, pair.Spread!)).ToList();
        var setting = new NoiseSetting(sources, [.. noise.List(Correlations).Select(item => Correlation(noise, item, sources))
            .OfType<RankCorrelation>()])
        {
            Cases = Cases(noise),
            Seed = (uint)noise.Integer("seed", 1, 0, int.MaxValue),
            Exact = [.. known.Except(sources.Select(pair => pair.source))],
        };
        CheckTogether(noise, setting);
        return setting;
    }

    /// <summary>Each pair stands once, and there are numbers that have all the correlations.</summary>
    private static void CheckTogether(Section noise, NoiseSetting setting)
    {
        var pairs = setting.Correlations.Select(pair => string.Join(" and ", new[] { pair.First.Name, pair.Second.Name }.Order())).ToList();
        if (pairs.GroupBy(pair => pair).FirstOrDefault(group => group.Count() > 1) is { } twice)
            noise.DiagnosticBag.Add(noise.At(Correlations), $"{noise.PathOf(Correlations)} has {twice.Key} twice.", "Keep one of them.");
        else if (!setting.IsPossible)
            noise.DiagnosticBag.Add(noise.At(Correlations), $"No numbers can have all of {noise.PathOf(Correlations)} at once.",
                "Bring one of them nearer to 0, or leave it out.");
    }

    /// <summary>A power of two keeps the sample even.</summary>
    private static int Cases(Section noise)
    {
        var cases = noise.Integer("cases", 256, 16, 65_536);
        if (cases >= 16 && (cases & (cases - 1)) != 0)
            noise.DiagnosticBag.Add(noise.At("cases"), $"{noise.PathOf("cases")} must be a power of two.", "Write 256 or 1024.");
        return cases;
    }

    /// <summary>The dimension of a source's deviations.</summary>
    public static Dimension DimensionOf(NoiseSource source) => source.Unit switch
    {
        NoiseUnit.Length => Dimension.Length,
        NoiseUnit.Angle => Dimension.Angle,
        NoiseUnit.Share => Dimension.Share,
        NoiseUnit.Temperature => Dimension.TemperatureDifference,
        NoiseUnit.Range => Dimension.Number,
        _ => throw new ArgumentOutOfRangeException(nameof(source)),
    };

    private static string Example(NoiseSource source) => source.Unit switch
    {
        NoiseUnit.Length => "10 mm",
        NoiseUnit.Angle => "0.5 deg",
        NoiseUnit.Share => "5 %",
        NoiseUnit.Temperature => "8 K",
        _ => "0.5",
    };

    /// <summary>Largest deviation of each kind: beyond it the model would be asked of another machine.</summary>
    private static AllowedRange Allowed(NoiseSource source) => source.Unit switch
    {
        NoiseUnit.Length => AllowedRange.Within(0.3, "300 mm"),
        NoiseUnit.Angle => AllowedRange.Within(0.35, "20 deg"),
        NoiseUnit.Share => AllowedRange.Within(0.5, "50 %"),
        NoiseUnit.Temperature => AllowedRange.Within(40, "40 K"),
        _ => AllowedRange.Within(1, "1"),
    };

    private static Spread? SpreadOf(Section noise, NoiseSource source)
    {
        if (!noise.Has(source.Name))
            return source.Usual;
        if (noise.Value(source.Name) is Node.Scalar { Text: None } || noise.Child(source.Name, SpreadKeys) is not { } spread)
            return null;
        string[] kinds = [.. new[] { "normal", "uniform", "triangle", "table" }.Where(spread.Has)];
        if (kinds.Length != 1)
        {
            spread.DiagnosticBag.Add(spread.Owner, $"{spread.Path} wants one kind of spread.",
                "Keep one of normal, uniform, triangle and table.");
            return null;
        }

        foreach (var end in new[] { "from", "to" }.Where(end => kinds[0] != "normal" && spread.Has(end)))
            spread.DiagnosticBag.Add(spread.At(end), $"{spread.PathOf(end)} is for a normal spread only.", $"Remove `{end}`.");
        return kinds[0] == "normal" ? Normal(spread, source) : Listed(spread, source, kinds[0]);
    }

    private static Spread.Normal? Normal(Section spread, NoiseSource source)
    {
        var (dimension, allowed) = (DimensionOf(source), Allowed(source));
        var size = spread.Number("normal", dimension, allowed with { Low = 0, LowAllowed = false, Description = "above 0" });
        double from = spread.OptionalNumber("from", dimension, allowed) ?? -allowed.High;
        double to = spread.OptionalNumber("to", dimension, allowed) ?? allowed.High;
        if (from >= to)
            spread.DiagnosticBag.Add(spread.At("to"), $"{spread.PathOf("to")} must be more than from.", "Put the smaller deviation first.");
        return double.IsFinite(size) && from < to ? new Spread.Normal(size, from, to) : null;
    }

    private static Spread? Listed(Section spread, NoiseSource source, string kind)
    {
        var items = spread.List(kind).Take(MaxDeviations + 1).Select((item, i) => Quantity.Read(
            item, $"{spread.PathOf(kind)}[{i + 1}]", DimensionOf(source), Allowed(source), spread.DiagnosticBag)).ToList();
        var wanted = kind switch { "uniform" => 2, "triangle" => 3, _ => 0 };
        if (items.Exists(item => item is null))
            return null;
        var values = items.ConvertAll(item => item!.Base);
        var isRight = wanted == 0 ? values.Count is > 0 and <= MaxDeviations
            : values.Count == wanted && values[0] < values[^1] && values.Order().SequenceEqual(values);
        if (!isRight)
        {
            spread.DiagnosticBag.Add(spread.At(kind), $"{spread.PathOf(kind)} is not such a list.", kind switch
            {
                "uniform" => "Write the smallest and the largest deviation, for example [-3 mm, 3 mm].",
                "triangle" => "Write the smallest, the most frequent and the largest deviation.",
                _ => FormattableString.Invariant($"Write one to {MaxDeviations} measured deviations."),
            });
            return null;
        }

        return kind switch
        {
            "uniform" => new Spread.Uniform(values[0], values[1]),
            "triangle" => new Spread.Triangle(values[0], values[1], values[2]),
            _ => new Spread.Table([.. values.Order()]),
        };
    }

    private static RankCorrelation? Correlation(Section noise, Node item, IReadOnlyList<(NoiseSource Source, Spread Spread)> sources)
    {
        var cells = item is Node.List { Items: [Node.Scalar a, Node.Scalar b, Node.Scalar r] } ? new[] { a, b, r } : [];
        if (cells.Length == 3 && Find(cells[0]) is { } first && Find(cells[1]) is { } second && first != second
            && NumberText.Parse(cells[2].Text) is { Message: null, Unit: "", Value: > -1 and < 1 and var rank })
        {
            return new RankCorrelation(first, second, rank);
        }

        noise.DiagnosticBag.Add(item, $"An item of {noise.PathOf(Correlations)} is two different sources that are not none and a number "
            + "between -1 and 1.", "Write for example [seat_right, frame_right, 0.5].");
        return null;

        NoiseSource? Find(Node.Scalar cell) =>
            sources.Select(pair => pair.Source).FirstOrDefault(source => source.Name == cell.Text.Trim());
    }
}
