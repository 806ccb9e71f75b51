using System.Text.Json;
using FrameOpt.Model;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Files.Json;

/// <summary>The machine as understood, in SI.</summary>
internal static class MachineJson
{
    public static void Write(Utf8JsonWriter json, Machine machine)
    {
        json.WriteStartObject("machine");
        json.Objects("masses", machine.Masses, item =>
        {
            json.WriteString("name", item.Name);
            json.Quantity("mass", item.MassKilograms, "kg");
            Point(json, "at", item.At);
            json.WriteBoolean("body", item.IsBody);
        });
        json.Quantity("hang_line_forward", machine.HangLineForwardMetres, "m");
        Propeller(json, machine.Propeller);
        json.Maybe("engine", machine.Engine, engine => Engine(json, engine));
        json.WriteStartObject("pilot");
        json.Quantity("lean", machine.Pilot.LeanMetres, "m");
        json.Quantity("drag_area", machine.Pilot.DragAreaSquareMetres, "m²");
        Point(json, "drag_centre", machine.Pilot.DragCentre);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Propeller(Utf8JsonWriter json, Propeller propeller)
    {
        json.WriteStartObject("propeller");
        json.Quantity("diameter", propeller.DiameterMetres, "m");
        json.WriteString("turns", propeller.Rotation == Rotation.Clockwise ? "clockwise" : "counter-clockwise");
        Point(json, "hub", propeller.Hub);
        json.Quantity("tilt", propeller.TiltRadians, "rad");
        json.Quantity("polar_inertia", propeller.PolarInertia, "kg·m²");
        switch (propeller.Curve)
        {
            case PropellerTable table:
                json.WriteStartArray("coefficients");
                foreach (var row in table.Rows)
                    json.WriteRawValue($"[{PlainNumber.Text(row.AdvanceRatio)},{PlainNumber.Text(row.ThrustCoefficient)},{PlainNumber.Text(row.PowerCoefficient)}]");
                json.WriteEndArray();
                break;
            case BenchPropeller bench:
                json.WriteStartObject("bench");
                json.Plain("static_thrust_coefficient", bench.StaticThrustCoefficient);
                json.Plain("static_power_coefficient", bench.StaticPowerCoefficient);
                json.Plain("zero_thrust_advance_ratio", bench.ZeroThrustAdvanceRatio);
                json.WriteEndObject();
                break;
        }

        json.WriteEndObject();
    }

    private static void Engine(Utf8JsonWriter json, Engine engine)
    {
        json.WriteStartObject();
        json.Plain("reduction", engine.Reduction);
        json.Plain("efficiency", engine.Efficiency);
        json.Objects("crank_torque", engine.CrankTorque.Arguments.Zip(engine.CrankTorque.Values), row =>
        {
            json.Quantity("speed", row.First, "rpm");
            json.Quantity("torque", row.Second, "N·m");
        });
        json.WriteEndObject();
    }

    private static void Point(Utf8JsonWriter json, string name, FramePoint point)
    {
        json.WriteStartObject(name);
        json.Quantity("forward", point.ForwardMetres, "m");
        json.Quantity("right", point.RightMetres, "m");
        json.Quantity("up", point.UpMetres, "m");
        json.WriteEndObject();
    }
}
