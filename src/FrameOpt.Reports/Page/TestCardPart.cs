using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>The first tests of a design in the order of their danger. Figures are the model's; what to do and when to stop is common
/// practice, no published source.</summary>
internal static class TestCardSteps
{
    public static IEnumerable<TestCardStep> Of(Study study, DesignEvaluation design) =>
        [Rotation(study), HangCheckStep(study, design.Geometry), TiedDown(study),
            .. InTestOrder(design).Select(phase => Flight(study, phase))];

    private static TestCardStep Rotation(Study study) => new(
        "Rotation",
        $"{GroundChecksSection.PropellerByHand} Turn it in the direction in which the starter turns it, hands clear of its path should it "
            + "kick, and look from behind.",
        $"It turns {StudyText.RotationText(study.Machine.Propeller.Rotation)}, seen from behind.",
        "Do not start the engine if it turns the other way: this design is then the wrong one.",
        ["turns, seen from behind", "checked by"]);

    private static TestCardStep HangCheckStep(Study study, FrameGeometry geometry)
    {
        var check = HangCheck.Of(study.Machine, geometry);
        var strap = NumberFormat.Load(Math.Abs(check.PerFiveMillimetresNewtons));
        return new TestCardStep(
            "Hang check",
            "Engine off. Frame, fuel and pilot as in the study hang from a rigid beam by two equal, parallel straps, "
                + $"{Spacing(study).Text(geometry.SpacingMetres)} apart, a scale in each."
                + string.Concat(GroundChecksSection.OwnStraps(geometry).Select(line => $" {line}")),
            $"Left {NumberFormat.Load(check.LeftNewtons)}, right {NumberFormat.Load(check.RightNewtons)}, "
                + $"together {NumberFormat.Load(check.TotalNewtons)}.",
            $"Go no further if the other side reads more, or if the difference is off by more than {strap}, which 5 mm of "
                + $"unequal strap would explain. Sit centred and read again first: {GroundChecksSection.Seat(check)}. Then measure holes "
                + "and straps again.",
            ["left scale", "right scale", "fuel"])
        {
            Rating = GroundChecksSection.Rating(check),
        };
    }

    private static TestCardStep TiedDown(Study study) => new(
        "Tied-down run",
        $"{GroundChecksSection.TiedDownPlaces} Helmet and ear protection on. Increase the power slowly to full and reduce it again.",
        GroundChecksSection.TiedDown(study),
        "Shut down if the other side is pulled down, if the frame bends, rubs or comes near the propeller, if anything comes loose, or "
            + "at any new vibration.",
        ["strap that tightens", "full-power rpm", "remarks"]);

    /// <summary>What leaves the ground first, then level flight, more power, the engine off; accelerated flight last.</summary>
    private static IEnumerable<PhaseResult> InTestOrder(DesignEvaluation design) => design.Phases.OrderBy(result => result.Phase switch
    {
        { CarriedShare: < 1 } => 0,
        { Power: PhasePower.Level, Speed: FlightSpeed.AtFraction { Fraction: 0 } } => 1,
        { Power: PhasePower.AtRpm } => 2,
        { Power: PhasePower.Climb } => 3,
        { Power: PhasePower.FullThrottle } => 4,
        { Power: PhasePower.EngineOff } => 5,
        _ => 6,
    });

    private static TestCardStep Flight(Study study, PhaseResult result)
    {
        var isOff = result.Phase.Power is PhasePower.EngineOff;
        var rpm = isOff ? "" : $"Propeller at {RpmText.Of(study.Machine, result[PhaseQuantity.Rpm])}; ";
        var effortWarning = result.CannotBeHeld ? "DO NOT FLY THIS PHASE: according to the model the pilot cannot hold it. "
            : "";
        return new TestCardStep(
            $"Flight: {result.Phase.Name}",
            $"{effortWarning}{Instruction(result.Phase)}",
            $"{rpm}{NumberFormat.Text(result[PhaseQuantity.Airspeed], "m/s")}. Hands up: {SideText.Residual(result)}. "
                + $"{HeldBy(study, result)}{LargeAngleCaution(result)}",
            isOff
                ? "Land if leaning alone does not hold it straight. Do not trim one side faster."
                : AbortText(result),
            [isOff ? "airspeed" : "rpm, of which", "turns to", "lean or brake needed", "remarks"]);
    }

    private static string HeldBy(Study study, PhaseResult result)
    {
        if (!result.Phase.IsSettled)
            return $"{StudyText.Capitalised(SideText.Twist(result))}; {SideText.LoadDifference(result[PhaseQuantity.LoadDifference])}. "
                + "Nothing is steady for the first ten seconds.";
        return result.IsBeyondLean
            ? "No lean cures it: hold it with the brake, and land."
            : $"Held straight by: {SideText.Lean(result[PhaseQuantity.Lean])} "
                + $"(effort {NumberFormat.Text(result[PhaseQuantity.Effort], "")} of "
                + $"{NumberFormat.Text(1000 * study.Machine.Pilot.LeanMetres, "mm")}).";
    }

    private static string AbortText(PhaseResult result)
    {
        var turns = result.Steers == "straight"
            ? "if it turns to either side by more than a gentle lean can hold"
            : "if it turns to the side opposite to that expected";
        return result.Phase.CarriedShare < 1
            ? $"Before lift-off: close the throttle and stop {turns} or does not run straight. After lift-off: reduce the power "
                + $"gradually, do not cut it, hold it straight and land ahead; as the power decreases, the turn changes to the other side."
            : $"Reduce the power and land {turns}, if leaning alone does not hold it straight, or if the risers begin to twist.";
    }

    /// <summary>A caution where the angles of the body are too large for the model.</summary>
    private static string LargeAngleCaution(PhaseResult result) => Math.Abs(result[PhaseQuantity.BodyYaw]) > Cautions.SmallAngleLimitDegrees
        ? $" CAUTION: the body yaws {NumberFormat.Text(Math.Abs(result[PhaseQuantity.BodyYaw]), "deg")} to the "
            + $"{SideText.Side(result[PhaseQuantity.BodyYaw])}; "
            + $"figures beyond {NumberFormat.Text(Cautions.SmallAngleLimitDegrees, "deg")} are only approximate."
        : "";

    private static string Instruction(Phase phase) => phase switch
    {
        { CarriedShare: < 1 } =>
            "Helmet and reserve on, buckles and risers checked with the pilot strapped in. Smooth, steady wind, wide open field. "
                + "Increase the power step by step while running; lift off with no more power than needed, and only when it runs "
                + "straight. The figures are for the power of this phase.",
        { Power: PhasePower.EngineOff } => "With plenty of height above a landing field, close the throttle slowly and stop the engine.",
        { Power: PhasePower.Level } => $"Smooth air, plenty of height. Fly level{SpeedSystemText(phase)}, hands up, and let it settle.",
        _ => "Smooth air, plenty of height, well after lift-off. Increase the power slowly, ready to close the throttle.",
    };

    private static string SpeedSystemText(Phase phase) => phase.Speed is FlightSpeed.AtFraction { Fraction: > 0 and var fraction }
        ? FormattableString.Invariant($" with the speed system at {100 * fraction:0.#} % of its travel, applied slowly")
        : "";

    private static DisplayUnit Spacing(Study study) => study.Factors.First(factor => factor.Input == GeometryInput.HangPointSpacing).Unit;
}

/// <summary>One step of the test card.</summary>
/// <param name="Title">A few words.</param>
/// <param name="Action">What to do.</param>
/// <param name="Expected">What the model says will be seen.</param>
/// <param name="AbortCriterion">When to stop.</param>
/// <param name="Fields">What to write down.</param>
internal sealed record TestCardStep(string Title, string Action, string Expected, string AbortCriterion, IReadOnlyList<string> Fields)
{
    /// <summary>What scales and beam must carry; empty where nothing hangs. The same for every design, so a line of its own.</summary>
    public string Rating { get; init; } = "";

    /// <summary>The step as it is printed.</summary>
    public XElement Block() => Html.Block(
        "step",
        [
            Html.Heading(Title),
            Line("Do", Action),
            .. Rating.Length > 0 ? [Line("Rating", Rating)] : Array.Empty<XElement>(),
            Line("Expect", Expected),
            Line("Stop", AbortCriterion, "stop"),
            Html.Block("blanks", Fields.Select(Blank)),
        ]);

    /// <summary>A name and a line to write on.</summary>
    public static XElement Blank(string name) => new("p", new XAttribute("class", "blank"), new XElement("span", name));

    private static XElement Line(string head, string text, string cssClass = "line") => new(
        "p", new XAttribute("class", cssClass), new XElement("b", $"{head}:"), new XElement("span", $" {text}"));
}

/// <summary>The test card, to print and fill in.</summary>
internal static class TestCardPart
{
    public static XElement? Of(PageContent content) => content.Binder is not { } binder || !content.IsFeasible
        ? null
        : Html.Section(
            "card",
            "Test card for the first flights",
            Html.Paragraph("danger", Cautions.FirstPage[0]),
            Html.Paragraph(
                "The expected figures are predictions of the model. Procedures and abort criteria are common practice, no published "
                    + "source. Continue only if the step went as expected; one step at a time, one change at a time."),
            binder.Bind(view => Html.Paragraph($"Built and tested: {GeometryText.Of(content.Study, view.Evaluation.Geometry)}.")),
            Html.Paragraph($"{DatumText.MovingArms(content.Study.Machine)}{DatumText.Sentence(content.Study.Machine)}"),
            Html.Block("blanks", ((string[])["date", "pilot", "frame and engine", "wing", "place and wind", "temperature", "fuel",
                "witness"]).Select(TestCardStep.Blank)),
            binder.Bind(view => Html.Block("steps", TestCardSteps.Of(content.Study, view.Evaluation).Select(step => step.Block()))),
            Html.Paragraph("Signed, with what to change before the next flight:"),
            Html.Block("blanks", TestCardStep.Blank("signed"), TestCardStep.Blank("to change")));
}
