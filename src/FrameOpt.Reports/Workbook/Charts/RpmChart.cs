using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.Charts;

/// <summary>Torque and residual against propeller speed, with the balanced band and the phases.</summary>
internal static class RpmChart
{
    public static XElement Of(StudyResult result, ChartBlock curve, ChartBlock band, ChartBlock marks)
    {
        var phase = result.Chosen!.Phases[result.Study.Band.PhaseIndex];
        var speeds = curve.Column(0).Values.Concat(marks.Column(1).Values).OfType<double>();
        return ChartXml.Scatter(
            $"Best compromise at the airspeed of {TextTruncation.Truncate(phase.Phase.Name, 30)} ({NumberFormat.Text(phase[PhaseQuantity.Airspeed], "m/s")}); each phase marked at its own",
            ChartAxis.Spanning("propeller speed [rpm]", "0", speeds),
            new ChartAxis("torque [N·m]; residual turns right +", "General"),
            [.. Series(result, curve, band, marks)]);
    }

    private static IEnumerable<ChartSeries> Series(StudyResult result, ChartBlock curve, ChartBlock band, ChartBlock marks)
    {
        if (curve.Rows.Count > 0)
        {
            yield return new("residual torque", curve.Column(0), curve.Column(1), new SeriesStyle(SeriesStyle.Blue, LinePoints: 2.25));
            yield return new("propeller torque", curve.Column(0), curve.Column(2),
                new SeriesStyle(SeriesStyle.Orange, LinePoints: 2.25, Dash: "dash"));
        }

        if (band.Rows.Count > 0)
            yield return new($"balanced within {NumberFormat.Text(result.Study.Band.WithinNewtonMetres, "N·m")}", band.Column(0),
                band.Column(1), new SeriesStyle(SeriesStyle.Green, LinePoints: 1.5, Dash: "sysDot"));
        if (marks.Rows.Count > 0)
        {
            yield return new ChartSeries("phases under power", marks.Column(1), marks.Column(2),
                new SeriesStyle(SeriesStyle.Vermillion, "diamond", 9))
                with
            { Labels = [.. marks.Column(0).Values.Cast<string>().Select(name => TextTruncation.Truncate(name, 24))] };
        }
    }
}
