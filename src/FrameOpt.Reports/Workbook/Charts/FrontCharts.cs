using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.Charts;

/// <summary>The front seen from two sides.</summary>
internal static class FrontCharts
{
    private const int MaxObjectives = 3;
    private const int Baseline = 0;
    private const int Chosen = 1;
    private const int FirstRanked = 2;
    private const int Ranked = 9;

    /// <summary>Baseline first (blank when there is none), then the front by rank: rank, and up to three objectives.</summary>
    public static Table Table(RunReport report)
    {
        var front = report.Result.Front;
        return new(
            [
                Column.OfTexts("front: rank", row => row == Baseline ? "baseline" : FormattableString.Invariant($"{front[row - 1].Rank}"))
                    with
                { WidthCharacters = 10 },
                .. report.Result.Study.Objectives.Take(MaxObjectives).Select((objective, o) => Column.OfNumbers(
                    PlanLabels.WithUnit(objective), NumberFormat.FormatCode(objective.Response.Unit),
                    row => row == Baseline ? BaselineValue(report.Result, objective) : front[row - 1].Objectives[o])),
            ],
            1 + Math.Min(front.Count, DisplayedDesigns.Most(report.Result.Study)));
    }

    /// <summary>The first objective against the second, and against the third when there is one.</summary>
    /// <param name="report">The run.</param>
    /// <param name="front">Its <see cref="Table"/>.</param>
    public static IEnumerable<(string Name, XElement Xml)> Of(RunReport report, PlacedTable front)
    {
        var columns = front.Table.Columns;
        for (var up = 2; up < columns.Count; up++)
        {
            var name = $"The front: {DataSheet.Header(columns[up])} against {DataSheet.Header(columns[1])}";
            yield return (name, ChartXml.Scatter(Title(report), Axis(report, front, 1), Axis(report, front, up),
                [.. Series(report, front, up)]));
        }
    }

    private static double BaselineValue(StudyResult result, StudyObjective objective) =>
        result.Baseline is not { Failure: null } baseline ? double.NaN : objective.ValueOf(baseline);

    private static string Title(RunReport report)
    {
        var (all, most) = (report.Result.Front.Count, DisplayedDesigns.Most(report.Result.Study));
        return all > most ? $"The front: best {NumberFormat.Count(most)} of {NumberFormat.Count(all, "design")}"
            : $"The front: {NumberFormat.Count(all, "design")}";
    }

    private static ChartAxis Axis(RunReport report, PlacedTable front, int column)
    {
        var objective = report.Result.Study.Objectives[column - 1];
        return ChartAxis.Spanning($"{StudyText.AxisLabel(objective)}, {(objective.Maximise ? "higher" : "lower")} is better", "General",
            front.Column(column).Numbers);
    }

    private static IEnumerable<ChartSeries> Series(RunReport report, PlacedTable front, int up)
    {
        ChartSeries Of(string name, int first, int count, SeriesStyle style, params IReadOnlyList<string> labels) =>
            new(name, front.Column(1, first, count), front.Column(up, first, count), style) { Labels = labels };
        var others = front.Table.RowCount - FirstRanked - Ranked;
        if (others > 0)
            yield return Of("front", FirstRanked + Ranked, others, new SeriesStyle(Palette.SkyBlue, "circle", 5));
        var ranked = Math.Min(Ranked, front.Table.RowCount - FirstRanked);
        if (ranked > 0)
            yield return Of("ranked 2 to 10", FirstRanked, ranked, new SeriesStyle(Palette.Vermillion, "diamond", 8),
                [.. front.Column(0, FirstRanked, ranked).Values.Cast<string>()]);
        if (report.Result.Baseline is { Failure: null })
            yield return Of("baseline", Baseline, 1, new SeriesStyle(Palette.Black, "x", 9), "baseline");
        yield return Of("best compromise", Chosen, 1, new SeriesStyle(Palette.Blue, "square", 10), "best");
    }
}
