using FrameOpt.Numerics;

namespace FrameOpt.Model;

/// <summary>Everything below the risers that is not the design.</summary>
/// <param name="Masses">One or more, at least one of them <see cref="MassItem.IsBody"/>.</param>
/// <param name="HangLineForwardMetres">Fore-aft position of the hang points.</param>
/// <param name="Propeller">The propeller and its hub.</param>
/// <param name="Engine">The engine, or null when the mission never asks what it can give.</param>
/// <param name="Pilot">Lean and drag.</param>
public sealed record Machine(
    IReadOnlyList<MassItem> Masses,
    double HangLineForwardMetres,
    Propeller Propeller,
    Engine? Engine,
    Pilot Pilot)
{
    /// <summary>Whether the risers hang from points of the frame or from arms that move; it changes no number.</summary>
    public RiserArms Arms { get; init; }

    /// <summary>The point that every position is measured from, in the builder's words; empty when not given.</summary>
    public string Datum { get; init; } = "";

    /// <summary>Which point of the hook or hole is the hang point, in the builder's words; empty when not given.</summary>
    public string HangPoint { get; init; } = "";

    /// <summary>Suspended mass in kg.</summary>
    public double MassKilograms { get; } = Masses.Sum(item => item.MassKilograms);

    /// <summary>Mass in kg of what leans with the pilot.</summary>
    public double BodyMassKilograms { get; } = Masses.Where(item => item.IsBody).Sum(item => item.MassKilograms);

    /// <summary>Centre of gravity of all that is suspended.</summary>
    public FramePoint CentreOfGravity { get; } = Centre(Masses);

    /// <summary>The same machine with other masses: its mass and its centre of gravity follow, which a copy would keep.</summary>
    public Machine With(IReadOnlyList<MassItem> masses) => new(masses, HangLineForwardMetres, Propeller, Engine, Pilot)
    {
        Arms = Arms,
        Datum = Datum,
        HangPoint = HangPoint,
    };

    private static FramePoint Centre(IReadOnlyList<MassItem> masses)
    {
        double total = 0, forward = 0, right = 0, up = 0;
        foreach (var item in masses)
        {
            total += item.MassKilograms;
            forward += item.MassKilograms * item.At.ForwardMetres;
            right += item.MassKilograms * item.At.RightMetres;
            up += item.MassKilograms * item.At.UpMetres;
        }

        return new FramePoint(forward / total, right / total, up / total);
    }
}

/// <summary>What the risers hang from.</summary>
public enum RiserArms
{
    /// <summary>Points fixed to the frame, or arms that do not move: those points are the hang points.</summary>
    Rigid,

    /// <summary>Arms that swing freely: the load runs through the pivot, wherever the riser is hooked in, so the pivots are the hang
    /// points.</summary>
    Moving,
}

/// <summary>One mass hung below the hang points.</summary>
/// <param name="Name">The study's own word for it.</param>
/// <param name="MassKilograms">Above zero, in kg.</param>
/// <param name="At">Its centre of gravity.</param>
/// <param name="IsBody">True for what leans with the pilot when weight is shifted.</param>
public sealed record MassItem(string Name, double MassKilograms, FramePoint At, bool IsBody)
{
    /// <summary>True for what the engine burns, by its name; a tank of it may be empty.</summary>
    public bool IsFuel => !IsBody
        && (Name.Contains("fuel", StringComparison.OrdinalIgnoreCase) || Name.Contains("petrol", StringComparison.OrdinalIgnoreCase));
}

/// <summary>What the pilot's body can do and the air holds against it.</summary>
/// <param name="LeanMetres">Largest sideways shift of the body's centre of gravity by weight shift.</param>
/// <param name="DragAreaSquareMetres">Drag area (drag over dynamic pressure) of pilot and frame.</param>
/// <param name="DragCentre">Where that drag acts.</param>
public sealed record Pilot(double LeanMetres, double DragAreaSquareMetres, FramePoint DragCentre);

/// <summary>The engine and its reduction drive.</summary>
/// <param name="CrankTorque">Full-throttle torque at the crank in N·m against crank speed in rpm, at sea-level standard density.</param>
/// <param name="Reduction">Crank speed over propeller speed, above zero.</param>
/// <param name="Efficiency">Of the drive, above 0 to 1.</param>
public sealed record Engine(LinearTable CrankTorque, double Reduction, double Efficiency)
{
    /// <summary>A crank torque at the propeller, N·m: through the drive, and in proportion to the density.</summary>
    /// <param name="crankTorque">At sea-level standard density, N·m.</param>
    /// <param name="density">Of the air, kg/m³.</param>
    public double AtPropeller(double crankTorque, double density) =>
        Reduction * Efficiency * crankTorque * density / Atmosphere.SeaLevelDensityKgPerM3;
}

/// <summary>A point on the frame, in metres from a datum the builder chooses. Only differences of position matter.</summary>
/// <param name="ForwardMetres">Towards where the pilot looks.</param>
/// <param name="RightMetres">Towards the pilot's right.</param>
/// <param name="UpMetres">Upward with the pilot standing.</param>
public readonly record struct FramePoint(double ForwardMetres, double RightMetres, double UpMetres);
