namespace FrameOpt.Studies;

/// <summary>One customer of a line, or several alike.</summary>
/// <param name="Name">To know it by.</param>
/// <param name="PilotMassKilograms">Of the pilot's body, above 0.</param>
/// <param name="Outfit">Which of the outfits of <see cref="LineSetting"/>.</param>
/// <param name="Share">How much it counts, above 0: a share or a number of pieces.</param>
public sealed record LineCustomer(string Name, double PilotMassKilograms, int Outfit, double Share);
