using FrameOpt.Model;
using FrameOpt.Numerics;

namespace FrameOpt.Reports.Compare;

/// <summary>The machine read back from a run.json.</summary>
internal static class MachineJsonReader
{
    public static Machine Of(RunJsonElement machine)
    {
        IReadOnlyList<MassItem> masses = [.. machine["masses"].Items
            .Select(item => new MassItem(item["name"].Text, item["mass"].Quantity("kg"), Point(item["at"]), item["body"].Boolean))];
        if (masses.Count == 0 || masses.Any(item => item.MassKilograms <= 0))
            throw new InvalidRunFileException(machine["masses"].Path, "the masses must be above 0");
        var pilot = machine["pilot"];
        return new Machine(
            masses,
            machine["hang_line_forward"].Quantity("m"),
            Propeller(machine["propeller"]),
            machine.Has("engine") ? Engine(machine["engine"]) : null,
            new Pilot(pilot["lean"].Quantity("m"), pilot["drag_area"].Quantity("m²"), Point(pilot["drag_centre"])))
        {
            Datum = machine["datum"].Text,
            HangPoint = machine["hang_point"].Text,
            Arms = machine["arms"].Text == "moving" ? RiserArms.Moving : RiserArms.Rigid,
        };
    }

    private static Propeller Propeller(RunJsonElement propeller) => new(
        propeller["diameter"].Quantity("m") is var diameter and > 0 ? diameter
            : throw new InvalidRunFileException(propeller.Path, "the diameter must be above 0"),
        propeller["turns"].Text switch
        {
            "clockwise" => Rotation.Clockwise,
            "counter-clockwise" => Rotation.CounterClockwise,
            var other => throw new InvalidRunFileException(propeller.Path, $"turns must be clockwise or counter-clockwise, not {other}"),
        },
        Point(propeller["hub"]),
        propeller["tilt"].Quantity("rad"),
        propeller["polar_inertia"].Quantity("kg·m²"),
        propeller.Has("bench") ? Bench(propeller["bench"]) : Table(propeller["coefficients"]));

    private static PropellerCurve Bench(RunJsonElement bench) => Create<PropellerCurve>(bench, () => new BenchPropeller(
        bench["static_thrust_coefficient"].Number, bench["static_power_coefficient"].Number, bench["zero_thrust_advance_ratio"].Number));

    private static PropellerCurve Table(RunJsonElement rows) =>
        Create<PropellerCurve>(rows, () => new PropellerTable([.. rows.Items.Select(row => row.Items is [var ratio, var thrust, var power]
        ? new PropellerRow(ratio.Number, thrust.Number, power.Number)
        : throw new InvalidRunFileException(row.Path, "three numbers are expected"))]));

    private static Engine Engine(RunJsonElement engine)
    {
        var rows = engine["crank_torque"];
        return new Engine(
            Create(rows, () => new LinearTable([.. rows.Items.Select(row => row["speed"].Quantity("rpm"))],
                [.. rows.Items.Select(row => row["torque"].Quantity("N·m"))])),
            engine["reduction"].Number,
            engine["efficiency"].Number);
    }

    private static FramePoint Point(RunJsonElement point) =>
        new(point["forward"].Quantity("m"), point["right"].Quantity("m"), point["up"].Quantity("m"));

    /// <summary>Makes a part of the machine; figures that the model refuses mean that the file is damaged.</summary>
    private static T Create<T>(RunJsonElement part, Func<T> make)
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused)
        {
            throw new InvalidRunFileException(part.Path, refused.Message);
        }
    }
}
