using FrameOpt.Model;

namespace FrameOpt.Studies.Reading;

/// <summary>Reads a propeller's rows of coefficients.</summary>
internal static class CoefficientReader
{
    public static PropellerCurve? Read(Section propeller)
    {
        var rows = Row.Table(propeller, "coefficients",
            [
                new("advance ratio J", "0.1", Dimension.Number, Bound.From0(5, "5")),
                new("thrust coefficient CT", "0.0959", Dimension.Number, Bound.Within(1, "1")),
                new("power coefficient CP", "0.05245", Dimension.Number, Bound.Within(1, "1")),
            ], rising: 1);
        if (rows is null)
            return null;
        var nodes = propeller.List("coefficients");
        for (var i = 0; i < rows.Length; i++)
        {
            if (BeatsMomentum(rows[i][0], rows[i][1], rows[i][2]))
                propeller.Findings.Mistake(nodes[i], "This row gives more thrust than any propeller can for that power.", "Check the order of the columns: J, CT, CP.");
        }

        return new PropellerTable([.. rows.Select(row => new PropellerRow(row[0], row[1], row[2]))]);
    }

    /// <summary>True when the power is below the ideal one by more than the printed digits of a table round.</summary>
    private static bool BeatsMomentum(double advanceRatio, double thrust, double power) =>
        thrust > 0 && power < 0.999 * Momentum.IdealPowerCoefficient(thrust, advanceRatio);
}
