using System.Text.Json;
using FrameOpt.Model;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Files;

/// <summary>Machine and wing as understood, in SI.</summary>
internal static class MachineJson
{
    public static void Write(Utf8JsonWriter json, Machine machine, Wing wing)
    {
        Machine(json, machine);
        Wing(json, wing);
    }

    private static void Machine(Utf8JsonWriter json, Machine machine)
    {
        json.WriteStartObject("machine");
        json.WriteObjects("masses", machine.Masses, item =>
        {
            json.WriteString("name", item.Name);
            json.WriteQuantity("mass", item.MassKilograms, "kg");
            Point(json, "at", item.At);
            json.WriteBoolean("body", item.IsBody);
        });
        json.WriteQuantity("hang_line_forward", machine.HangLineForwardMetres, "m");
        json.WriteString("datum", machine.Datum);
        json.WriteString("hang_point", machine.HangPoint);
        json.WriteString("arms", machine.Arms == RiserArms.Moving ? "moving" : "rigid");
        Propeller(json, machine.Propeller);
        json.WriteOptional("engine", machine.Engine, engine => Engine(json, engine));
        json.WriteStartObject("pilot");
        json.WriteQuantity("lean", machine.Pilot.LeanMetres, "m");
        json.WriteQuantity("drag_area", machine.Pilot.DragAreaSquareMetres, "m²");
        Point(json, "drag_centre", machine.Pilot.DragCentre);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Propeller(Utf8JsonWriter json, Propeller propeller)
    {
        json.WriteStartObject("propeller");
        json.WriteQuantity("diameter", propeller.DiameterMetres, "m");
        json.WriteString("turns", StudyText.RotationName(propeller.Rotation));
        Point(json, "hub", propeller.Hub);
        json.WriteQuantity("tilt", propeller.TiltRadians, "rad");
        json.WriteQuantity("polar_inertia", propeller.PolarInertia, "kg·m²");
        switch (propeller.Curve)
        {
            case PropellerTable table:
                json.WriteStartArray("coefficients");
                foreach (var row in table.Rows)
                {
                    double[] numbers = [row.AdvanceRatio, row.ThrustCoefficient, row.PowerCoefficient];
                    json.WriteRawValue($"[{string.Join(',', numbers.Select(PlainNumber.Text))}]");
                }

                json.WriteEndArray();
                break;
            case BenchPropeller bench:
                json.WriteStartObject("bench");
                json.WriteDecimal("static_thrust_coefficient", bench.StaticThrustCoefficient);
                json.WriteDecimal("static_power_coefficient", bench.StaticPowerCoefficient);
                json.WriteDecimal("zero_thrust_advance_ratio", bench.ZeroThrustAdvanceRatio);
                json.WriteEndObject();
                break;
        }

        json.WriteEndObject();
    }

    private static void Engine(Utf8JsonWriter json, Engine engine)
    {
        json.WriteStartObject();
        json.WriteDecimal("reduction", engine.Reduction);
        json.WriteDecimal("efficiency", engine.Efficiency);
        json.WriteObjects("crank_torque", engine.CrankTorque.Arguments.Zip(engine.CrankTorque.Values), row =>
        {
            json.WriteQuantity("speed", row.First, "rpm");
            json.WriteQuantity("torque", row.Second, "N·m");
        });
        json.WriteEndObject();
    }

    private static void Point(Utf8JsonWriter json, string name, FramePoint point)
    {
        json.WriteStartObject(name);
        json.WriteQuantity("forward", point.ForwardMetres, "m");
        json.WriteQuantity("right", point.RightMetres, "m");
        json.WriteQuantity("up", point.UpMetres, "m");
        json.WriteEndObject();
    }

    private static void Wing(Utf8JsonWriter json, Wing wing)
    {
        json.WriteStartObject("wing");
        json.WriteQuantity("mass", wing.MassKilograms, "kg");
        json.WriteQuantity("area", wing.AreaSquareMetres, "m²");
        json.WriteQuantity("span", wing.SpanMetres, "m");
        json.WriteQuantity("lines", wing.LineLengthMetres, "m");
        json.WriteQuantity("line_spread", wing.LineSpreadMetres, "m");
        json.WriteStartObject("polar");
        json.WriteQuantity("mass", wing.Polar.ReferenceMassKilograms, "kg");
        json.WriteQuantity("density", wing.Polar.ReferenceDensity, "kg/m³");
        json.WriteObjects("rows", wing.Polar.Points, point =>
        {
            json.WriteDecimal("fraction", point.Fraction);
            json.WriteQuantity("airspeed", point.AirspeedMetresPerSecond, "m/s");
            json.WriteDecimal("glide_ratio", point.GlideRatio);
        });
        json.WriteEndObject();
        Coupling(json, wing.RiserCoupling);
        json.WriteDecimal("roll_restoring", wing.RollRestoring);
        Leverage(json, wing.YawLeverage);
        json.WriteEndObject();
    }

    private static void Coupling(Utf8JsonWriter json, RiserCoupling coupling)
    {
        json.WriteStartObject("riser_coupling");
        switch (coupling)
        {
            case RiserCoupling.Measured measured:
                json.WriteString("from", "measurement");
                json.WriteQuantity("length", measured.LengthMetres, "m");
                json.WriteQuantity("at_spacing", measured.AtSpacingMetres, "m");
                break;
            case RiserCoupling.Constant constant:
                json.WriteString("from", "assumption");
                json.WriteQuantity("length", constant.LengthMetres, "m");
                break;
            default:
                json.WriteString("from", "lines");
                break;
        }

        json.WriteEndObject();
    }

    private static void Leverage(Utf8JsonWriter json, YawLeverage leverage)
    {
        json.WriteStartObject("yaw_leverage");
        switch (leverage)
        {
            case YawLeverage.Constant constant:
                json.WriteDecimal("value", constant.Value);
                break;
            case YawLeverage.FromSpeed speed:
                json.WriteQuantity("speed_factor", speed.SpeedFactor, "s/m");
                json.WriteDecimal("twist_share", speed.TwistShare);
                break;
            case YawLeverage.FromSideslip sideslip:
                json.WriteDecimal("roll", sideslip.Roll);
                json.WriteDecimal("yaw", sideslip.Yaw);
                json.WriteDecimal("twist_share", sideslip.TwistShare);
                break;
        }

        json.WriteEndObject();
    }
}
