using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Drafting;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Reports.Drafting;

/// <summary>Designs to draw, on the machine of the worked balance.</summary>
internal static class DrawnDesigns
{
    /// <summary>Hang points 440 mm apart, both moved 25 mm to the right, 150 mm above the datum: 195 mm left, 245 mm right.</summary>
    public static DrawnDesign Worked { get; } = Of(ReportFixture.WorkedGeometry);

    /// <summary>A design on the worked machine or another one.</summary>
    public static DrawnDesign Of(FrameGeometry geometry, Machine? machine = null, string title = "One frame for one engine")
    {
        var report = ReportFixture.Report(1, ReportFixture.Study(title));
        machine ??= WorkedMachine.Machine;
        return new DrawnDesign(report with
        {
            Result = report.Result with
            {
                Study = report.Result.Study with { Machine = machine },
                Mission = new MissionModel(machine, WorkedMachine.Wing, WorkedMachine.Phases, ResponseReferences.None),
            },
        }, geometry);
    }

    /// <summary>The same seen in a mirror: every side swapped, the propeller turning the other way.</summary>
    public static DrawnDesign Mirrored(FrameGeometry geometry)
    {
        var machine = WorkedMachine.Machine;
        var mirrored = machine.With([.. machine.Masses.Select(item => item with
        {
            At = item.At with { RightMetres = -item.At.RightMetres },
        })]) with
        {
            Propeller = machine.Propeller with { Rotation = Rotation.Clockwise },
        };
        return Of(FactorCatalogue.All.Where(input => input.IsSided)
            .Aggregate(geometry, (design, input) => design.With(input, -design[input])), mirrored);
    }

    /// <summary>The bytes that a writer makes.</summary>
    public static byte[] Bytes(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.ToArray();
    }
}
