using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Reliability;

/// <summary>A machine, a wing, a mission and a design drawn over all that a study file may hold (the bounds of docs/study-file.md), most
/// of them near what is built so that many fly.</summary>
internal sealed record LegalCase(MissionModel Model, FrameGeometry Geometry)
{
    private const int Draws = 400;

    /// <summary>Any legal case.</summary>
    public static Gen<LegalCase> Any { get; } = Gen.Double[0, 1].Array[Draws].Select(u => new Drawing(u).Case());

    /// <summary>Turns numbers between 0 and 1 into a case.</summary>
    private sealed class Drawing(double[] u)
    {
        private readonly bool isWild = u[^1] < 0.4;
        private int next;

        public LegalCase Case()
        {
            var machine = Machine();
            var model = new MissionModel(machine, Wing(), Mission(machine.Engine is not null), new ResponseReferences(
                Chance(0.5) ? Of(3, 6, 0.1, 20) : null, Of(0.1, 0.3, 0, 1), null, []));
            return new LegalCase(model, FrameGeometry.AsBuilt(machine) with
            {
                SpacingMetres = Of(0.35, 0.6, 0.001, 3),
                OffsetMetres = Of(-0.05, 0.05, -3, 3),
                HeightMetres = Of(0.05, 0.5, -3, 3),
                AngleRadians = Of(-0.06, 0.06, -Math.PI / 4, Math.PI / 4),
                HangHeightDifferenceMetres = Of(-0.01, 0.01, -3, 3),
                StrapDifferenceMetres = Of(-0.01, 0.01, -3, 3),
            });
        }

        private double Next() => u[next++];

        private bool Chance(double share) => Next() < share;

        /// <summary>Between what is built or, in a wild case, now and then anywhere between what is legal, its ends included.</summary>
        private double Of(double low, double high, double lowest, double highest)
        {
            var (draw, place) = (Next(), Next());
            return !isWild || draw < 0.97 ? low + (high - low) * place
                : draw < 0.98 ? lowest : draw < 0.99 ? highest : lowest + (highest - lowest) * place;
        }

        private FramePoint Point(double reach) => new(Of(-reach, reach, -3, 3), Of(-reach, reach, -3, 3), Of(-reach, reach, -3, 3));

        private Machine Machine()
        {
            MassItem[] masses =
                [new("pilot", Of(50, 110, 1e-3, 500), Point(0.1), true), new("frame", Of(15, 40, 1e-3, 500), Point(0.3), false)];
            var scale = Of(0.7, 1.3, 0.01, 2);
            double[] advance = [0, 0.2, 0.4, 0.6], thrust = [0.105, 0.086, 0.061, 0.032], power = [0.052, 0.0514, 0.0448, 0.0322];
            var curve = new PropellerTable([.. advance.Select((J, i) =>
                new PropellerRow(J, thrust[i] * scale, power[i] * scale * Of(1, 1.5, 1, 5)))]);
            var propeller = new Propeller(Of(1.1, 1.5, 0.05, 3), Chance(0.5) ? Rotation.Clockwise : Rotation.CounterClockwise, Point(0.4),
                Of(-0.1, 0.2, -Math.PI / 4, Math.PI / 4), Of(0, 0.2, 0, 5), curve);
            var engine = Chance(0.7)
                ? new Engine(new LinearTable([2000, 6000, 9000], [Of(20, 40, 0.1, 500), Of(25, 45, 0.1, 500), Of(10, 30, 0.1, 500)]),
                    Of(2.2, 3.2, 0.1, 20), Of(0.9, 1, 0.01, 1))
                : null;
            return new Machine(masses, Of(-0.1, 0.1, -3, 3), propeller, engine,
                new Pilot(Of(0.05, 0.12, 1e-3, 0.5), Of(0.2, 0.6, 0, 5), Point(0.2)));
        }

        private Wing Wing()
        {
            var span = Of(9, 13, 0.1, 50);
            var spread = Math.Min(Of(3, 4.5, 0.01, 50), 0.99 * span);
            double trim = Of(9, 12, 0.5, 25), fast = trim * Of(1.1, 1.5, 1.01, 2);
            RiserCoupling coupling = Chance(0.5) ? new RiserCoupling.FromLines()
                : new RiserCoupling.Measured(Of(0.1, 0.6, 0.001, 3), Of(0.4, 0.5, 0.1, 3));
            YawLeverage leverage = Chance(0.4) ? new YawLeverage.FromSpeed(Of(0.1, 0.27, 1e-3, 2), Of(0, 1, 0, 1))
                : Chance(0.5) ? new YawLeverage.Constant(Of(0, 3, 0, 10))
                : new YawLeverage.FromSideslip(Of(-0.8, -0.3, -10, 10), Of(0.1, 0.6, 1e-3, 10), Of(0, 1, 0, 1));
            var polar = new Polar(Of(80, 150, 1, 1000), Of(1, 1.3, 0.3, 1.6),
                [new PolarPoint(0, trim, Of(4, 9, 0.1, 30)), new PolarPoint(1, fast, Of(4, 9, 0.1, 30))]);
            return new Wing(Of(3, 8, 0, 50), Of(18, 35, 0.1, 200), span, Of(5, 9, 0.1, 50), spread, polar, coupling, Of(0.03, 0.1, 1e-3, 2),
                leverage);
        }

        private IReadOnlyList<Phase> Mission(bool hasEngine) =>
        [
            Phase("first", hasEngine && Chance(0.5) ? new PhasePower.FullThrottle() : new PhasePower.AtRpm(Of(1500, 2300, 1, 10_000))),
            Phase("climb", new PhasePower.Climb(Of(0.3, 1, 0.01, 15))),
            Phase("cruise", new PhasePower.Level()) with { Settled = true },
            Phase("glide", new PhasePower.EngineOff()),
        ];

        private Phase Phase(string name, PhasePower power) => new(
            name, name == "cruise" ? 0.5 : Of(0, 1, 0, 1e6),
            power is PhasePower.Level or PhasePower.Climb || Chance(0.5) ? new FlightSpeed.AtFraction(Of(0, 1, 0, 1))
                : new FlightSpeed.AtAirspeed(Of(9, 12, 0.1, 50)),
            power,
            Of(0, 2000, -500, 9000), Of(-20, 20, -60, 60), Of(0.9, 1.3, 0.01, 10), Of(0.8, 1, 0.01, 1), Of(-0.3, 0.3, -5, 5), Chance(0.7));
    }
}
