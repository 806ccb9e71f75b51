namespace FrameOpt.Model.Mission;

/// <summary>One number the model gives for a design.</summary>
public abstract record Response
{
    private Response()
    {
    }

    /// <summary>A quantity of one phase, written <c>quantity[phase]</c>.</summary>
    /// <param name="Quantity">Which.</param>
    /// <param name="PhaseIndex">Of the mission, from 0.</param>
    /// <param name="PhaseName">The study's word for the phase.</param>
    public sealed record OfPhase(PhaseQuantity Quantity, int PhaseIndex, string PhaseName) : Response;

    /// <summary>A response of the whole mission.</summary>
    /// <param name="Quantity">Which.</param>
    public sealed record OfMission(MissionQuantity Quantity) : Response;

    /// <summary>The name as a study writes it.</summary>
    public string Name => this switch
    {
        OfPhase phase => $"{phase.Quantity.Name}[{phase.PhaseName}]",
        OfMission mission => mission.Quantity.Name,
        _ => throw new InvalidOperationException(),
    };

    /// <summary>The unit it is shown in, empty for a plain number.</summary>
    public string Unit => Entry.Unit;

    /// <summary>Its row of the catalogue.</summary>
    public ResponseEntry Entry => this switch
    {
        OfPhase phase => phase.Quantity,
        OfMission mission => mission.Quantity,
        _ => throw new InvalidOperationException(),
    };
}
