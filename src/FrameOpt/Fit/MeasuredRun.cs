using FrameOpt.Model;

namespace FrameOpt.Fit;

/// <summary>One measurement on the bench, on the hook or in flight: how it was set, and what was read.</summary>
/// <param name="Name">As on the form: "F07".</param>
public abstract record MeasuredRun(string Name)
{
    /// <summary>What was read, each in the unit of its kind; sides are right +, up +, reclining +.</summary>
    public IReadOnlyList<(ReadingKind Kind, double Value)> Readings { get; init; } = [];

    /// <summary>What can be read there.</summary>
    public abstract IReadOnlyList<ReadingKind> Kinds { get; }

    /// <summary>A static run of engine and propeller on the bench.</summary>
    /// <param name="Name">As on the form.</param>
    /// <param name="PropellerRpm">Of the propeller.</param>
    /// <param name="Density">Of the air, kg/m³.</param>
    public sealed record Bench(string Name, double PropellerRpm, double Density) : MeasuredRun(Name)
    {
        /// <inheritdoc/>
        public override IReadOnlyList<ReadingKind> Kinds { get; } = [ReadingKind.Thrust, ReadingKind.Torque];
    }

    /// <summary>Frame and pilot on two scales.</summary>
    /// <param name="Name">As on the form.</param>
    /// <param name="Hung">The frame.</param>
    /// <param name="IsChangedOver">True with the two straps of the check changed left for right.</param>
    public sealed record Hang(string Name, FrameGeometry Hung, bool IsChangedOver) : MeasuredRun(Name)
    {
        /// <inheritdoc/>
        public override IReadOnlyList<ReadingKind> Kinds { get; } = [ReadingKind.LeftScale, ReadingKind.RightScale];
    }

    /// <summary>Frame and pilot hung and seen from the side, with a cord that pulls at the hub or without.</summary>
    /// <param name="Name">As on the form.</param>
    /// <param name="Hung">The frame.</param>
    /// <param name="PullNewtons">Along the thrust line; 0 for none.</param>
    public sealed record Angle(string Name, FrameGeometry Hung, double PullNewtons) : MeasuredRun(Name)
    {
        /// <inheritdoc/>
        public override IReadOnlyList<ReadingKind> Kinds { get; } = [ReadingKind.HangAngle];
    }

    /// <summary>A steady stretch of flight.</summary>
    /// <param name="Name">As on the form.</param>
    /// <param name="Flown">The frame.</param>
    /// <param name="Phase">Power and speed as flown.</param>
    /// <param name="LeadKilograms">Lead hung at one hang point, on the right +.</param>
    public sealed record Flight(string Name, FrameGeometry Flown, Phase Phase, double LeadKilograms) : MeasuredRun(Name)
    {
        /// <summary>Of the pilot's body on that day, kg; null for the study's.</summary>
        public double? PilotKilograms { get; init; }

        /// <inheritdoc/>
        public override IReadOnlyList<ReadingKind> Kinds { get; } =
            [ReadingKind.Airspeed, ReadingKind.Climb, ReadingKind.Lean, ReadingKind.Turn, ReadingKind.BarTilt];
    }
}
