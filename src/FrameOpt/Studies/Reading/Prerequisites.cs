using FrameOpt.Model;

namespace FrameOpt.Studies.Reading;

/// <summary>What else a study must give before a response has a value.</summary>
internal sealed class Prerequisites(bool hasEngine, bool hasStrength, bool hasBaseline, Findings findings)
{
    public void Check(Response response, Node at)
    {
        var (missing, mend) = response switch
        {
            Response.OfMission { Quantity: MissionQuantity.HangPointLoad or MissionQuantity.ArmMoment } when !hasStrength => ("strength", StudyKeys.File.Find("strength")!.Example),
            Response.OfMission { Quantity: MissionQuantity.DistanceFromBaseline } when !hasBaseline => ("baseline", StudyKeys.File.Find("baseline")!.Example),
            Response.OfMission { Quantity: MissionQuantity.TorqueMarginWorst } when !hasEngine => ("machine.engine", "engine: { reduction: 2.9, efficiency: 0.96, torque: [...] }"),
            Response.OfPhase { Quantity: PhaseQuantity.TorqueMargin } when !hasEngine => ("machine.engine", "engine: { reduction: 2.9, efficiency: 0.96, torque: [...] }"),
            _ => ("", ""),
        };
        if (missing.Length > 0)
            findings.Mistake(at, $"{response.Name} needs {missing}, which the study does not give.", $"Add `{mend}`, or leave this response out.");
    }
}
