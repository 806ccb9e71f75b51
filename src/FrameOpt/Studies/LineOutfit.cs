using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>One choice of every option of a line: a machine and a wing, whatever the pilot weighs.</summary>
/// <param name="Choices">Names, in the order of the options.</param>
/// <param name="Study">The study with those choices.</param>
/// <param name="Pilot">The mass that is the pilot's.</param>
public sealed record LineOutfit(IReadOnlyList<string> Choices, Study Study, string Pilot)
{
    /// <summary>The choices in one line; "as in the study" where there is nothing to choose.</summary>
    public string Words => Choices.Count == 0 ? "as in the study" : string.Join(", ", Choices);

    /// <summary>The study of a customer with this outfit.</summary>
    /// <param name="pilotKilograms">Above 0.</param>
    public Study For(double pilotKilograms)
    {
        var machine = Study.Machine;
        return Study with
        {
            // A new machine, not a copy: its mass and centre of gravity are of these masses.
            Machine = new Machine(
                [.. machine.Masses.Select(item => item.Name == Pilot ? item with { MassKilograms = pilotKilograms } : item)],
                machine.HangLineForwardMetres,
                machine.Propeller,
                machine.Engine,
                machine.Pilot),
        };
    }
}
