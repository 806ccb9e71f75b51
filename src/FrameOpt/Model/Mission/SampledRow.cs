namespace FrameOpt.Model.Mission;

/// <summary>Responses over many cases for rows of designs that differ in lateral offset only. Each case keeps a row of its own, so that
/// what its designs share is computed once. For one thread at a time.</summary>
public sealed class SampledRow
{
    private const int MostOffsets = 64;
    private readonly IReadOnlyList<SampledCase> cases;
    private readonly IReadOnlyList<BoundedResponse> limits;
    private readonly IReadOnlyList<Response> responses;
    private readonly MissionRow[] rows;
    private readonly double[] offsetsOfCase = new double[MostOffsets];
    private readonly double[] valuesOfCase = new double[MostOffsets];
    private readonly ushort[] failures = new ushort[MostOffsets];

    /// <summary>For each response the values of every case of the first design, then of the second and so on.</summary>
    private readonly double[][] values;

    /// <summary>Nothing computed yet.</summary>
    /// <param name="model">With its cases.</param>
    /// <param name="responses">Over cases, all of them.</param>
    /// <param name="mostOffsets">The most of one <see cref="Prepare"/>, at most <see cref="LongestRow"/>.</param>
    public SampledRow(MissionModel model, IReadOnlyList<Response> responses, int mostOffsets = MostOffsets)
    {
        (cases, limits, this.responses) = (model.Cases, model.Sampling.Limits, responses);
        rows = [.. cases.Select(one => new MissionRow(one.Model))];
        values = [.. responses.Select(_ => new double[mostOffsets * cases.Count])];
    }

    /// <summary>One response of one design.</summary>
    public static double Of(MissionModel model, in FrameGeometry design, Response response)
    {
        Span<double> value = stackalloc double[1];
        var row = new SampledRow(model, [response], mostOffsets: 1);
        row.Prepare(design, [design.OffsetMetres]);
        row.Fill(0, value);
        return value[0];
    }

    /// <summary>The most offsets of one <see cref="Prepare"/>.</summary>
    public static int LongestRow => MostOffsets;

    /// <summary>Computes every case of some designs.</summary>
    /// <param name="geometry">Of the row; its offset is not read.</param>
    /// <param name="offsets">Lateral offsets in m, increasing; at most <see cref="LongestRow"/>.</param>
    public void Prepare(in FrameGeometry geometry, ReadOnlySpan<double> offsets)
    {
        for (var c = 0; c < rows.Length; c++)
        {
            var built = geometry + cases[c].BuiltOff;
            var here = offsetsOfCase.AsSpan(0, offsets.Length);
            var codes = failures.AsSpan(0, offsets.Length);
            for (var i = 0; i < here.Length; i++)
                here[i] = offsets[i] + cases[c].BuiltOff.OffsetMetres;
            var flies = built.SpacingMetres > 0 && rows[c].Prepare(built).Kind == FailureKind.None;
            if (flies)
                rows[c].FindFailures(here, codes);
            for (var r = 0; r < responses.Count; r++)
                FillCase(c, r, flies, here, codes);
        }
    }

    /// <summary>The values of one response in each case; 1 or 0 for whether every limit is met. Valid until <see cref="Fill"/> puts them in
    /// another order.</summary>
    /// <param name="response">Its place among the responses.</param>
    /// <param name="design">Its place among the offsets.</param>
    public ReadOnlySpan<double> Values(int response, int design) => values[response].AsSpan(design * cases.Count, cases.Count);

    /// <summary>One response of the designs that were prepared.</summary>
    /// <param name="response">Its place among the responses.</param>
    /// <param name="result">As many as there were offsets.</param>
    public void Fill(int response, Span<double> result)
    {
        for (var i = 0; i < result.Length; i++)
        {
            var ofDesign = values[response].AsSpan(i * cases.Count, cases.Count);
            result[i] = responses[response] is Response.OverCases over
                ? over.Statistic.Of(ofDesign, over.Single.Entry.IsHigherBetter)
                : Mean(ofDesign);
        }
    }

    private static double Mean(ReadOnlySpan<double> met)
    {
        var sum = 0.0;
        foreach (var one in met)
            sum += one;
        return sum / met.Length;
    }

    private void FillCase(int c, int r, bool flies, ReadOnlySpan<double> offsets, ReadOnlySpan<ushort> codes)
    {
        var ofCase = valuesOfCase.AsSpan(0, offsets.Length);
        var over = responses[r] as Response.OverCases;
        if (flies && over is null)
            FillMet(c, offsets, ofCase);
        else if (flies)
            over!.Single.Fill(rows[c], over.Magnitude, offsets, ofCase);
        for (var i = 0; i < ofCase.Length; i++)
            values[r][i * cases.Count + c] = flies && codes[i] == 0 ? ofCase[i] : over is null ? 0 : double.NaN;
    }

    /// <summary>1 where every limit is met.</summary>
    private void FillMet(int c, ReadOnlySpan<double> offsets, Span<double> met)
    {
        Span<double> one = stackalloc double[MostOffsets];
        one = one[..met.Length];
        met.Fill(1);
        foreach (var limit in limits)
        {
            limit.Response.Fill(rows[c], limit.Magnitude, offsets, one);
            for (var i = 0; i < met.Length; i++)
                met[i] = limit.IsMetBy(one[i]) ? met[i] : 0;
        }
    }
}
