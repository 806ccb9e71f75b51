using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Workbook.Charts;

/// <summary>The front seen from two sides.</summary>
internal static class FrontCharts
{
    private const int Baseline = 0;
    private const int Chosen = 1;
    private const int FirstRanked = 2;
    private const int Ranked = 9;

    /// <summary>The first objective against the second, and against the third when there is one.</summary>
    public static IEnumerable<(string Name, XElement Xml)> Of(RunReport report, ChartBlock front)
    {
        for (var up = 2; up < front.Columns.Count; up++)
        {
            var title = $"The front: {front.Columns[up].Header} against {front.Columns[1].Header}";
            var view = up;
            ChartAxis Axis(int column) => ChartAxis.Spanning(
                AxisTitle(report, column), "General", front.Column(column).Values.OfType<double>());
            yield return (title, ChartXml.Scatter(ChartTitle(report), Axis(1), Axis(view), [.. Series(report, front, view)]));
        }
    }

    private static string ChartTitle(RunReport report) => report.Result.Front.Count > DisplayedDesigns.MaxDesigns
        ? $"The front: best {NumberFormat.Count(DisplayedDesigns.MaxDesigns)} of {NumberFormat.Count(report.Result.Front.Count)} designs"
        : $"The front: {NumberFormat.Count(report.Result.Front.Count)} designs";

    private static string AxisTitle(RunReport report, int column)
    {
        var objective = report.Result.Study.Objectives[column - 1];
        return $"{StudyText.AxisLabel(objective)}, {(objective.Maximise ? "more" : "less")} is better";
    }

    private static IEnumerable<ChartSeries> Series(RunReport report, ChartBlock front, int up)
    {
        ChartSeries Of(string name, int first, int count, SeriesStyle style) =>
            new(name, front.Column(1, first, count), front.Column(up, first, count), style);
        var others = front.Rows.Count - FirstRanked - Ranked;
        if (others > 0)
            yield return Of("front", FirstRanked + Ranked, others, new SeriesStyle(SeriesStyle.SkyBlue, "circle", 5));
        var ranked = Math.Min(Ranked, front.Rows.Count - FirstRanked);
        if (ranked > 0)
        {
            yield return Of("ranked 2 to 10", FirstRanked, ranked, new SeriesStyle(SeriesStyle.Vermillion, "diamond", 8))
                with
            { Labels = [.. front.Column(0, FirstRanked, ranked).Values.Cast<string>()] };
        }

        if (report.Result.Baseline is { Failure: null })
            yield return Of("baseline", Baseline, 1, new SeriesStyle(SeriesStyle.Black, "x", 9)) with { Labels = ["baseline"] };
        yield return Of("best compromise", Chosen, 1, new SeriesStyle(SeriesStyle.Blue, "square", 10)) with { Labels = ["best"] };
    }
}
