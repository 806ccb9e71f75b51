namespace FrameOpt.Tests.Model.Derivation;

/// <summary>Pilot, frame and engine below the hang points: the sum of all forces but those of the risers, and of their moments about the
/// point H midway between the hang points, for any attitude of the body.</summary>
/// <param name="Flight">Speed, density, thrust and torque.</param>
/// <param name="Design">Where the hang points are and where the thrust points.</param>
/// <param name="Lean">How far the pilot has moved to the right, in metres.</param>
/// <param name="ExtraRollMoment">Put on the body by hand, in N·m.</param>
public sealed record SuspendedBody(WorkedFlight Flight, WorkedDesign Design, double Lean = 0, double ExtraRollMoment = 0)
{
    /// <summary>Nose up, in radians: the pitch at which nothing turns the body about the hang line any more.</summary>
    public double Pitch => Root.Between(-1, 1, pitch => At(pitch).Moment.Y);

    /// <summary>Force and moment with the body turned nose up, then right side down, then nose right.</summary>
    public (Vec Force, Vec Moment) At(double pitch, double roll = 0, double yaw = 0)
    {
        Vec Turned(Vec inBody) => inBody.AboutY(pitch).AboutX(roll).AboutZ(yaw);
        Vec Arm(Vec place) => Turned(place - Design.HangPoint);
        Vec force = new(0, 0, 0), moment = new(ExtraRollMoment, 0, 0);
        void Add(Vec arm, Vec acting)
        {
            force += acting;
            moment += Vec.Cross(arm, acting);
        }

        // Weight points down and drag straight back, however the body is turned. The legs carry what the risers do not.
        foreach (var (mass, place) in Masses)
            Add(Arm(place), new Vec(0, 0, Flight.Phase.CarriedShare * mass * WorkedNumbers.Gravity));
        Add(Arm(WorkedNumbers.DragCentre), new Vec(-Flight.Density * Flight.Airspeed * Flight.Airspeed / 2 * WorkedNumbers.DragArea, 0, 0));

        // Thrust, reaction and gyroscopic moment turn with the body. The propeller turns counter-clockwise seen from behind: the vector of
        // its spin points backwards and the frame feels the reaction about the forward direction. To carry a spin round at a pitch rate
        // takes the moment rate x spin, and the frame feels the opposite.
        var thrustLine = Turned(Design.ThrustLine);
        Add(Arm(WorkedNumbers.Hub), Flight.Thrust * thrustLine);
        moment += Flight.Torque * thrustLine;
        var spin = -WorkedNumbers.PolarInertia * 2 * Math.PI * Flight.Rpm / 60 * Design.ThrustLine;
        var pitchRate = new Vec(0, Flight.Phase.PitchRate, 0);
        moment += Turned(-Vec.Cross(pitchRate, spin));
        return (force, moment);
    }

    private IEnumerable<(double Mass, Vec Place)> Masses =>
        WorkedNumbers.OtherMasses.Append((WorkedNumbers.Pilot.Mass, WorkedNumbers.Pilot.Place + new Vec(0, Lean, 0)));
}
