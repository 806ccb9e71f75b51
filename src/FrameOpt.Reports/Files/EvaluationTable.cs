using System.Buffers.Text;
using System.Globalization;
using System.Text;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Search;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Files;

/// <summary>evaluations.csv: every design a run evaluated, written batch by batch while it runs.</summary>
public sealed class EvaluationTable : IDisposable
{
    private const int MaxNumberLength = 32;

    private readonly Study study;
    private readonly StudyProblem problem;
    private readonly BufferedStream stream;
    private readonly Dictionary<ushort, byte[]> reasons = [];

    /// <summary>Begins a table with its header: number, factors in the user's units, objectives, limits' values, outcome.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="stream">Closed with the table.</param>
    public EvaluationTable(Study study, Stream stream)
    {
        this.study = study;
        this.stream = new BufferedStream(stream, 1 << 16);
        problem = new StudyProblem(study, StudyProblem.Model(study));
        var headers = study.Factors.Select(factor => $"{factor.Name} [{factor.Unit.Symbol}]")
            .Concat(study.Objectives.Select(objective => WithUnit(objective.Response, objective.Magnitude)))
            .Concat(study.Limits.Select(limit => WithUnit(limit.Response, limit.Magnitude)));
        Text(string.Join(',', headers.Select(Quoted).Prepend("number").Append("outcome")) + "\n");
    }

    /// <summary>Adds a batch. A design that cannot fly has its reason for an outcome and no values.</summary>
    public void Append(EvaluatedBatch batch)
    {
        var values = new double[batch.Problem.Factors.Count];
        for (var i = 0; i < batch.Designs.Count; i++)
        {
            batch.Designs.CopyDesign(i, batch.Problem, values);
            Row(batch, i, problem.Geometry(values));
        }
    }

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();

    private void Row(EvaluatedBatch batch, int i, FrameGeometry geometry)
    {
        Span<byte> number = stackalloc byte[MaxNumberLength];
        Utf8Formatter.TryFormat(batch.Designs.FirstNumber + i, number, out var length);
        stream.Write(number[..length]);
        foreach (var factor in study.Factors)
            Number(factor.Unit.FromSi(geometry[factor.Input]));
        var failed = batch.Failures[i] != 0;
        for (var o = 0; o < batch.Objectives.Length; o++)
            Number(failed ? double.NaN : batch.Problem.Objectives[o].Oriented(batch.Objectives[o][i]));
        foreach (var bounded in batch.ConstraintValues)
            Number(failed ? double.NaN : bounded[i]);
        stream.WriteByte((byte)',');
        stream.Write(failed ? Reason(batch.Failures[i]) : batch.Feasible[i] != 0 ? "feasible"u8 : "outside limits"u8);
        stream.WriteByte((byte)'\n');
    }

    private void Number(double value)
    {
        stream.WriteByte((byte)',');
        if (!double.IsFinite(value))
            return;
        Span<byte> text = stackalloc byte[MaxNumberLength];
        if (value.TryFormat(text, out var length, default, CultureInfo.InvariantCulture) && !text[..length].Contains((byte)'E'))
            stream.Write(text[..length]);
        else
            Text(PlainNumber.Text(value));
    }

    private byte[] Reason(ushort code)
    {
        if (!reasons.TryGetValue(code, out var reason))
            reasons[code] = reason = Encoding.UTF8.GetBytes(Quoted(FailureText.Kind(study.Mission, FlightFailure.FromCode(code))));
        return reason;
    }

    private void Text(string text) => stream.Write(Encoding.UTF8.GetBytes(text));

    private static string WithUnit(Response response, bool magnitude)
    {
        var name = StudyText.Name(response, magnitude);
        return response.Unit.Length == 0 ? name : $"{name} [{response.Unit}]";
    }

    /// <summary>A text cell that no spreadsheet takes for a formula, in quotes.</summary>
    private static string Quoted(string text) => $"\"{TextSanitizer.ForCsv(text).Replace("\"", "\"\"")}\"";
}
