using FrameOpt.StudyFile.Editing;
using FrameOpt.Web.Language;

namespace FrameOpt.Web.Parts;

/// <summary>One box of the machine: where its value stands in the study, and what people call it.</summary>
/// <param name="Path">As in <see cref="StudyEdit"/>.</param>
/// <param name="Label">In words; a letter in brackets is that of the picture.</param>
/// <param name="Hint">How it is measured.</param>
/// <param name="Unit">Taken when none is typed.</param>
public sealed record MachineField(string Path, string Label, string Hint, string Unit);

/// <summary>The boxes, the few that every frame needs first.</summary>
public static class MachineFields
{
    private const string Propeller = "machine.propeller", Bench = "machine.propeller.bench";

    /// <summary>Of the wing.</summary>
    public static IReadOnlyList<MachineField> Wing { get; } =
    [
        new("wing.area", Words.Machine.Area, Words.Machine.Flat, "m²"),
        new("wing.span", Words.Machine.Span, Words.Machine.Flat, "m"),
        new("wing.mass", Words.Machine.WingMass, "", "kg"),
        new("wing.lines", Words.Machine.Lines, Words.Machine.LinesHint, "m"),
    ];

    /// <summary>Of engine and propeller.</summary>
    /// <param name="study">To see whether the bench run gave a torque or a power.</param>
    public static IReadOnlyList<MachineField> Few(StudyEdit study) =>
    [
        new($"{Propeller}.diameter", Words.Machine.Diameter, "", "m"),
        new($"{Bench}.rpm", Words.Machine.Rpm, Words.Machine.RpmHint, "rpm"),
        new($"{Bench}.thrust", Words.Machine.Thrust, Words.Machine.ThrustHint, "kgf"),
        study.Value($"{Bench}.power") is null ? new($"{Bench}.torque", Words.Machine.Torque, Words.Machine.TorqueHint, "N·m")
            : new($"{Bench}.power", Words.Machine.Power, Words.Machine.TorqueHint, "kW"),
        new("machine.engine.reduction", Words.Machine.Reduction, Words.Machine.ReductionHint, ""),
    ];

    /// <summary>Of everything else that has a box.</summary>
    /// <param name="study">To see which parts hang from the frame.</param>
    public static IReadOnlyList<MachineField> More(StudyEdit study) =>
    [
        .. Enumerable.Range(0, study.Count("machine.masses")).SelectMany(i => Position($"machine.masses.{i}",
            study.Value($"machine.masses.{i}.name") ?? Words.Machine.Part(i), ["forward", "right", "up"])),
        .. Position($"{Propeller}.hub", Words.Machine.Hub, ["forward", "right", "up"]),
        .. Position("machine.hang_line", Words.Machine.HangLine, ["forward"]),
        new($"{Propeller}.tilt", Words.Machine.Tilt, Words.Machine.TiltHint, "deg"),
        new($"{Bench}.pitch", Words.Machine.Pitch, "", "m"),
        new($"{Bench}.density", Words.Machine.Density, "", "kg/m³"),
        new("machine.engine.efficiency", Words.Machine.Efficiency, "", ""),
        new("machine.pilot.drag_area", Words.Machine.Drag, "", "m²"),
        new("wing.line_spread", Words.Machine.Spread, Words.Machine.SpreadHint, "m"),
    ];

    private static IEnumerable<MachineField> Position(string path, string name, string[] axes) =>
        axes.Select(axis => new MachineField($"{path}.{axis}", Words.Machine.Position(name, axis), Words.Machine.AxisHint(axis), "mm"));
}
