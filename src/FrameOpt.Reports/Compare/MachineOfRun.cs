using FrameOpt.Model;
using FrameOpt.Numerics;
using FrameOpt.Reports.Files.Json;

namespace FrameOpt.Reports.Compare;

/// <summary>The machine read back from a run.json, as <see cref="MachineJson"/> writes it.</summary>
internal static class MachineOfRun
{
    public static Machine Of(RunPart machine)
    {
        IReadOnlyList<MassItem> masses = [.. machine["masses"].Items.Select(item => new MassItem(item["name"].Text, item["mass"].In("kg"), Point(item["at"]), item["body"].Flag))];
        if (masses.Count == 0 || masses.Any(item => item.MassKilograms <= 0))
            throw new DamagedRunException(machine["masses"].Where, "masses above 0 are wanted");
        var pilot = machine["pilot"];
        return new Machine(
            masses,
            machine["hang_line_forward"].In("m"),
            Propeller(machine["propeller"]),
            machine.Holds("engine") ? Engine(machine["engine"]) : null,
            new Pilot(pilot["lean"].In("m"), pilot["drag_area"].In("m²"), Point(pilot["drag_centre"])));
    }

    private static Propeller Propeller(RunPart propeller) => new(
        propeller["diameter"].In("m") is var diameter and > 0 ? diameter : throw new DamagedRunException(propeller.Where, "a diameter above 0 is wanted"),
        propeller["turns"].Text switch
        {
            "clockwise" => Rotation.Clockwise,
            "counter-clockwise" => Rotation.CounterClockwise,
            var other => throw new DamagedRunException(propeller.Where, $"turns is clockwise or counter-clockwise, not {other}"),
        },
        Point(propeller["hub"]),
        propeller["tilt"].In("rad"),
        propeller["polar_inertia"].In("kg·m²"),
        propeller.Holds("bench") ? Bench(propeller["bench"]) : Table(propeller["coefficients"]));

    private static PropellerCurve Bench(RunPart bench) => Made<PropellerCurve>(bench, () => new BenchPropeller(
        bench["static_thrust_coefficient"].Number, bench["static_power_coefficient"].Number, bench["zero_thrust_advance_ratio"].Number));

    private static PropellerCurve Table(RunPart rows) => Made<PropellerCurve>(rows, () => new PropellerTable([.. rows.Items.Select(row => row.Items is [var ratio, var thrust, var power]
        ? new PropellerRow(ratio.Number, thrust.Number, power.Number)
        : throw new DamagedRunException(row.Where, "three numbers are wanted"))]));

    private static Engine Engine(RunPart engine)
    {
        var rows = engine["crank_torque"];
        return new Engine(
            Made(rows, () => new LinearTable([.. rows.Items.Select(row => row["speed"].In("rpm"))], [.. rows.Items.Select(row => row["torque"].In("N·m"))])),
            engine["reduction"].Number,
            engine["efficiency"].Number);
    }

    private static FramePoint Point(RunPart point) => new(point["forward"].In("m"), point["right"].In("m"), point["up"].In("m"));

    /// <summary>What the model refuses to be made of such figures is damage of the file.</summary>
    private static T Made<T>(RunPart part, Func<T> make)
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused)
        {
            throw new DamagedRunException(part.Where, refused.Message);
        }
    }
}
