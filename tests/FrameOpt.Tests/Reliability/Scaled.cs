using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;

namespace FrameOpt.Tests.Reliability;

/// <summary>A legal case made heavier, longer or seen in a mirror.</summary>
internal static class Scaled
{
    /// <summary>Every force s times as large, every arm as it was.</summary>
    /// <remarks>Masses by s, so the air that carries them: area by s, the polar's mass by s, and every speed stays. Drag by s in drag area.
    /// Thrust and torque go with the propeller's coefficients, so the engine's torque by s; the gyroscopic
    /// moment by s in inertia.</remarks>
    public static LegalCase Heavier(LegalCase legal, double s)
    {
        var (machine, wing) = (legal.Model.Machine, legal.Model.Wing);
        var heavier = new Machine(
            [.. machine.Masses.Select(item => item with { MassKilograms = s * item.MassKilograms })],
            machine.HangLineForwardMetres,
            machine.Propeller with { Curve = Curve(machine, s), PolarInertia = s * machine.Propeller.PolarInertia },
            machine.Engine is { } engine ? engine with { CrankTorque = Table(engine.CrankTorque, 1, s) } : null,
            machine.Pilot with { DragAreaSquareMetres = s * machine.Pilot.DragAreaSquareMetres });
        return new LegalCase(
            new MissionModel(heavier, wing with
            {
                MassKilograms = s * wing.MassKilograms,
                AreaSquareMetres = s * wing.AreaSquareMetres,
                Polar = new Polar(s * wing.Polar.ReferenceMassKilograms, wing.Polar.ReferenceDensity, wing.Polar.Points),
            }, legal.Model.Phases, legal.Model.References),
            legal.Geometry);
    }

    /// <summary>Every arm s times as long, every force as it was.</summary>
    /// <remarks>Areas and masses stay, so do speeds. A propeller of s times the diameter at 1/s of the speed keeps its advance ratio; its
    /// thrust, n² D⁴, grows by s² and its torque, n² D⁵, by s³, so coefficients over s² leave the thrust and make the torque s times as
    /// large, as moments are. The spin, inertia times speed, is to grow by s: inertia by s².</remarks>
    public static LegalCase Longer(LegalCase legal, double s)
    {
        var (machine, wing) = (legal.Model.Machine, legal.Model.Wing);
        FramePoint Point(FramePoint p) => new(s * p.ForwardMetres, s * p.RightMetres, s * p.UpMetres);
        var longer = new Machine(
            [.. machine.Masses.Select(item => item with { At = Point(item.At) })],
            s * machine.HangLineForwardMetres,
            machine.Propeller with
            {
                DiameterMetres = s * machine.Propeller.DiameterMetres,
                Curve = Curve(machine, 1 / (s * s)),
                PolarInertia = s * s * machine.Propeller.PolarInertia,
                Hub = Point(machine.Propeller.Hub),
            },
            machine.Engine is { } engine ? engine with { CrankTorque = Table(engine.CrankTorque, 1 / s, s) } : null,
            new Pilot(s * machine.Pilot.LeanMetres, machine.Pilot.DragAreaSquareMetres, Point(machine.Pilot.DragCentre)));
        var coupling = wing.RiserCoupling is RiserCoupling.Measured measured
            ? new RiserCoupling.Measured(s * measured.LengthMetres, s * measured.AtSpacingMetres) : wing.RiserCoupling;
        var phases = legal.Model.Phases.Select(phase =>
            phase.Power is PhasePower.AtRpm { PropellerRpm: var rpm } ? phase with { Power = new PhasePower.AtRpm(rpm / s) } : phase);
        var references = legal.Model.References;
        return new LegalCase(
            new MissionModel(longer, wing with
            {
                SpanMetres = s * wing.SpanMetres,
                LineLengthMetres = s * wing.LineLengthMetres,
                LineSpreadMetres = s * wing.LineSpreadMetres,
                RiserCoupling = coupling,
            }, [.. phases], references with { OverhangMetres = s * references.OverhangMetres }),
            FactorCatalogue.All.Where(input => input.Kind == InputKind.Length).Aggregate(legal.Geometry,
                (geometry, input) => geometry.With(input, s * geometry[input])));
    }

    /// <summary>Left and right exchanged.</summary>
    public static LegalCase Mirrored(LegalCase legal)
    {
        var machine = legal.Model.Machine;
        static FramePoint Point(FramePoint p) => p with { RightMetres = -p.RightMetres };
        var mirrored = new Machine(
            [.. machine.Masses.Select(item => item with { At = Point(item.At) })],
            machine.HangLineForwardMetres,
            machine.Propeller with
            {
                Rotation = machine.Propeller.Rotation == Rotation.Clockwise ? Rotation.CounterClockwise : Rotation.Clockwise,
                Hub = Point(machine.Propeller.Hub),
            },
            machine.Engine,
            machine.Pilot with { DragCentre = Point(machine.Pilot.DragCentre) });
        return new LegalCase(
            new MissionModel(mirrored, legal.Model.Wing, legal.Model.Phases, legal.Model.References),
            FactorCatalogue.All.Where(input => input.IsSided).Aggregate(legal.Geometry,
                (geometry, input) => geometry.With(input, -geometry[input])));
    }

    private static PropellerTable Curve(Machine machine, double s) => new(
    [
        .. ((PropellerTable)machine.Propeller.Curve).Rows.Select(row =>
            new PropellerRow(row.AdvanceRatio, s * row.ThrustCoefficient, s * row.PowerCoefficient)),
    ]);

    private static LinearTable Table(LinearTable table, double arguments, double values) =>
        new([.. table.Arguments.Select(x => arguments * x)], [.. table.Values.Select(y => values * y)]);
}
