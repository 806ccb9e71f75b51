using FrameOpt.Model;
using FrameOpt.Model.Propulsion;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the propeller.</summary>
internal static class PropellerReader
{
    public static Propeller? Read(Section? propeller)
    {
        if (propeller is null)
            return null;
        var diameter = propeller.Number("diameter", Dimension.Length, AllowedRange.PositiveUpTo(3, "3 m"));
        var rotation = ReadRotation(propeller);
        var hub = propeller.Child("hub", StudyKeys.Hub)?.Point() ?? default;
        var tilt = propeller.OptionalNumber("tilt", Dimension.Angle, AllowedRange.Within(Math.PI / 4, "45 deg"));
        var inertia = propeller.OptionalNumber("polar_inertia", Dimension.Inertia, AllowedRange.NonNegativeUpTo(5, "5 kg·m²"));
        var curve = ReadCurve(propeller, diameter);
        if (tilt is null)
            propeller.DiagnosticBag.AddAssumption("tilt of the thrust line", "0 deg",
                "assumption: thrust at a right angle to the frame; range -5 to 10 deg");
        if (inertia is null)
            propeller.DiagnosticBag.AddAssumption("polar inertia of the propeller", "0 kg·m²",
                "assumption: the gyroscopic moment of pitching is left out; range 0 to 0.15 kg·m²");
        return curve is null ? null : new Propeller(diameter, rotation, hub, tilt ?? 0, inertia ?? 0, curve);
    }

    private static Rotation ReadRotation(Section propeller)
    {
        var turns = propeller.Text("turns");
        switch (turns)
        {
            case null or "clockwise":
                return Rotation.Clockwise;
            case "counter-clockwise":
                return Rotation.CounterClockwise;
            default:
                propeller.DiagnosticBag.Add(propeller.At("turns"), "turns is clockwise or counter-clockwise, seen from behind.",
                    NearestName.Of(turns, ["clockwise", "counter-clockwise", "anticlockwise"]) switch
                    {
                        "clockwise" => "Did you mean `clockwise`?",
                        not null => "Did you mean `counter-clockwise`?",
                        null => "Write `turns: clockwise` or `turns: counter-clockwise`.",
                    });
                return Rotation.Clockwise;
        }
    }

    private static PropellerCurve? ReadCurve(Section propeller, double diameter)
    {
        if (propeller.Has("coefficients") == propeller.Has("bench"))
        {
            propeller.DiagnosticBag.Add(propeller.KeyAt("bench"), "machine.propeller needs either coefficients or a bench run.",
                propeller.Has("bench") ? "Remove one of the two." : $"Add `{StudyKeys.Propeller.Find("bench")!.Example}`.");
            return null;
        }

        return propeller.Has("coefficients") ? CoefficientReader.Read(propeller)
            : BenchReader.Read(propeller.Child("bench", StudyKeys.Bench), diameter);
    }
}

/// <summary>Reads a propeller's rows of coefficients.</summary>
internal static class CoefficientReader
{
    public static PropellerCurve? Read(Section propeller)
    {
        var rows = Row.Table(propeller, "coefficients",
            [
                new("advance ratio J", "0.1", Dimension.Number, AllowedRange.NonNegativeUpTo(5, "5")),
                new("thrust coefficient CT", "0.0959", Dimension.Number, AllowedRange.Within(1, "1")),
                new("power coefficient CP", "0.05245", Dimension.Number, AllowedRange.Within(1, "1")),
            ], rising: 1);
        if (rows is null)
            return null;
        var nodes = propeller.List("coefficients");
        for (var i = 0; i < rows.Length; i++)
        {
            if (ExceedsActuatorDiscLimit(rows[i][0], rows[i][1], rows[i][2]))
                propeller.DiagnosticBag.Add(nodes[i], "This row gives more thrust than any propeller can for that power.",
                    "Check the order of the columns: J, CT, CP.");
        }

        return new PropellerTable([.. rows.Select(row => new PropellerRow(row[0], row[1], row[2]))]);
    }

    /// <summary>True when the power is below the ideal one by more than the printed digits of a table round.</summary>
    private static bool ExceedsActuatorDiscLimit(double advanceRatio, double thrust, double power) =>
        thrust > 0 && power < 0.999 * ActuatorDisc.IdealPowerCoefficient(thrust, advanceRatio);
}
