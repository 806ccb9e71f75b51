using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.Charts;

/// <summary>Torque and residual of the best compromise against propeller speed, with the balanced band and the phases.</summary>
internal static class RpmChart
{
    private const int MaxNameLength = 40;

    /// <summary>Residual and torque over the propeller's speed.</summary>
    public static Table Curve(StudyResult result)
    {
        var points = new BalancedBands(result.Mission, result.Study.Band.PhaseIndex).Curve(result.Chosen!.Geometry);
        return new(
            [
                Column.OfNumbers("propeller speed [rpm]", "0", row => points[row].Rpm),
                Column.OfNumbers("residual [N·m], right +", "0.00", row => points[row].ResidualNewtonMetres),
                Column.OfNumbers("propeller torque [N·m]", "0.00", row => points[row].TorqueNewtonMetres),
            ],
            points.Count);
    }

    /// <summary>The outline of each balanced band, a blank row after each.</summary>
    public static Table Band(StudyResult result)
    {
        var within = result.Study.Band.WithinNewtonMetres;
        var corners = result.Bands.SelectMany(band => ((double Rpm, double Residual)[])
            [
                (band.FromRpm, -within), (band.FromRpm, within), (band.ToRpm, within), (band.ToRpm, -within), (band.FromRpm, -within),
                (double.NaN, double.NaN),
            ]).ToList();
        return new(
            [
                Column.OfNumbers("balanced band [rpm]", "0", row => corners[row].Rpm),
                Column.OfNumbers("balanced band [N·m]", "0.00", row => corners[row].Residual),
            ],
            corners.Count);
    }

    /// <summary>Where each phase under power lies: its own propeller speed, airspeed and weight.</summary>
    public static Table Marks(StudyResult result)
    {
        var phases = result.Chosen!.Phases.Where(phase => phase.Phase.Power is not PhasePower.EngineOff).ToList();
        return new(
            [
                Column.OfTexts("phase under power", row => TextTruncation.Truncate(phases[row].Phase.Name, MaxNameLength))
                    with
                { WidthCharacters = 18 },
                Column.OfNumbers("propeller speed [rpm]", "0", row => phases[row][PhaseQuantity.Rpm]),
                Column.OfNumbers("residual [N·m], right +", "0.00", row => phases[row][PhaseQuantity.Residual]),
            ],
            phases.Count);
    }

    /// <summary>The chart of those three tables.</summary>
    public static XElement Of(StudyResult result, PlacedTable curve, PlacedTable band, PlacedTable marks)
    {
        var phase = result.Chosen!.Phases[result.Study.Band.PhaseIndex];
        return ChartXml.Scatter(
            $"Best compromise at the airspeed of {TextTruncation.Truncate(phase.Phase.Name, 30)} "
                + $"({NumberFormat.Text(phase[PhaseQuantity.Airspeed], "m/s")}); each phase marked at its own airspeed",
            ChartAxis.Spanning(RpmText.Axis(result.Study.Machine), "0", curve.Column(0).Numbers.Concat(marks.Column(1).Numbers)),
            new ChartAxis("torque [N·m]; residual turns right +", "General"),
            [.. Series(result, curve, band, marks)]);
    }

    private static IEnumerable<ChartSeries> Series(StudyResult result, PlacedTable curve, PlacedTable band, PlacedTable marks)
    {
        if (curve.Table.RowCount > 0)
        {
            yield return new("residual torque", curve.Column(0), curve.Column(1), new SeriesStyle(Palette.Blue, LinePoints: 2.25));
            yield return new("propeller torque", curve.Column(0), curve.Column(2),
                new SeriesStyle(Palette.Orange, LinePoints: 2.25, Dash: "dash"));
        }

        if (band.Table.RowCount > 0)
            yield return new($"balanced within {NumberFormat.Text(result.Study.Band.WithinNewtonMetres, "N·m")}", band.Column(0),
                band.Column(1), new SeriesStyle(Palette.Green, LinePoints: 1.5, Dash: "sysDot"));
        if (marks.Table.RowCount > 0)
            yield return new("phases under power", marks.Column(1), marks.Column(2), new SeriesStyle(Palette.Vermillion, "diamond", 9))
            {
                Labels = [.. marks.Column(0).Values.Cast<string>().Select(name => TextTruncation.Truncate(name, 24))],
            };
    }
}
