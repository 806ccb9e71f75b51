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
    /// <summary>Suspended mass in kg.</summary>
    public double MassKilograms { get; } = Masses.Sum(item => item.MassKilograms);

    /// <summary>Mass in kg of what leans with the pilot.</summary>
    public double BodyMassKilograms { get; } = Masses.Where(item => item.IsBody).Sum(item => item.MassKilograms);

    /// <summary>Centre of gravity of all that is suspended.</summary>
    public FramePoint CentreOfGravity { get; } = Centre(Masses);

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
