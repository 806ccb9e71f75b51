using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Page;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The card of one customer: which frame, what it feels like, what the scales must read, how to begin. One sheet of A4.</summary>
internal static class CustomerCard
{
    public static XElement Of(CustomerCards cards, CustomerFit fit)
    {
        var line = cards.Line;
        return new XElement("article",
            Html.Paragraph("kind", $"Card of a customer: {line.Study.FullTitle}"),
            new XElement("h2", fit.Customer.Name),
            Html.Paragraph("who", Who(line, fit)),
            fit.Own is { } own ? WithFrame(cards, fit, own) : WithoutFrame(fit),
            Html.Block("foot", Html.Paragraph($"{Cautions.Danger} {Cautions.GroundTestFirst} {Cautions.NotValidated} Certification, "
                    + "national "
                    + "regulations and the limits set by the makers of frame and wing take precedence; have it flown first by a qualified "
                    + "pilot."),
                line.Study.Decision is { } decision ? Html.Paragraph(DecisionSection.Sentence(line.Study, decision)) : null,
                Html.Paragraph("stamp", $"{cards.Info.StudyFileName}, SHA-256 {line.Study.Hash[..12]}, FrameOpt {cards.Info.ToolVersion}"),
                Html.Block("blanks", ((string[])["date", "pilot", "frame and engine number", "checked by"]).Select(TestCardStep.Blank))));
    }

    /// <summary>"Frame B. Second best: C, effort_worst 0.62 instead of 0.55; climb: a strong pull to the left." for the terminal
    /// too.</summary>
    public static string Summary(ProductLineResult line, CustomerFit fit) => fit.Own is { } own
        ? $"frame {own.Geometry.Name}, {Value(line, own)}. {Second(line, fit, own)}"
        : $"NO FRAME OF THE LINE IS ALLOWED, make a custom frame. {Nearest(line, fit)}";

    /// <summary>What the scales say, and which frame of the line to use then.</summary>
    public static IEnumerable<string> Scales(ProductLineResult line, CustomerFit fit, ScalesOnCustomer scales)
    {
        foreach (var sentence in HangCheckFitSections.Readings(scales.Fit, fit.Study.Machine).Lines)
            yield return sentence;
        yield return $"Likeliest single cause: {HangCheckFitSections.LikeliestCause(scales.Fit)}. Check it by hand first.";
        var best = scales.Frames[0];
        var hung = scales.Frames.First(frame => frame.Geometry == scales.Hung.Geometry);
        yield return !best.IsAllowed
            ? $"WITH WHAT THE SCALES SAY NO FRAME OF THE LINE IS ALLOWED ({hung.Geometry.Name}: {Why(hung)}). Find the cause "
                + "before anybody "
                + "flies it."
            : best.Geometry == hung.Geometry
                ? $"Frame to use: {best.Geometry.Name}, as before; {Value(line, best)} with what the scales say."
            : $"FRAME TO USE: {best.Geometry.Name} in place of {hung.Geometry.Name}: with what the scales say {Value(line, best)}, and "
                + $"{hung.Geometry.Name} {(hung.IsAllowed ? Value(line, hung) : Why(hung))}. Find the cause first: a crooked seat is "
                + "cheaper to correct than a frame.";
    }

    private static string Who(ProductLineResult line, CustomerFit fit)
    {
        var choices = line.Setting.Options.Zip(line.Setting.Configurations[fit.Customer.Configuration].Choices,
            (option, choice) => $"{option.Name} {choice}");
        return string.Join(", ", [FormattableString.Invariant($"Pilot {fit.Customer.PilotMassKilograms:0.#} kg without clothing"),
            .. choices,
            $"propeller turns {StudyText.RotationText(fit.Study.Machine.Propeller.Rotation)} seen from behind"]) + ".";
    }

    private static IEnumerable<XElement> WithFrame(CustomerCards cards, CustomerFit fit, FittedFrame own)
    {
        var (study, geometry) = (fit.Study, own.Design.Geometry);
        var check = HangCheck.Of(study.Machine, geometry);
        yield return Html.Block("frame", new XElement("p", new XAttribute("class", "letter"), own.Geometry.Name),
            Html.Block("words", Html.Paragraph("headline", $"Frame {own.Geometry.Name}. {DrillingSection.Of(study, geometry).Lines[0]}"),
                Html.Paragraph($"{StudyText.Capitalised(GeometryText.Of(study, geometry))}. {DatumText.MovingArms(study.Machine)}"
                    + DatumText.Sentence(study.Machine)),
                Html.Paragraph(Second(cards.Line, fit, own))));
        yield return Html.Block("two",
            Html.Block("feel", Html.Heading("What it will feel like"), Html.List(own.Design.Phases.Select(FeelText.Of))),
            Html.Block("hang", [Html.Heading("Hang check, before any flight"),
                Html.Table("What the scales must read", ["scale", "must read"],
                    GroundChecksSection.Scales(study, geometry).Table!.Rows.Append(["together", NumberFormat.Load(check.TotalNewtons)])
                        .ToList()),
                Html.Paragraph($"{StudyText.Capitalised(GroundChecksSection.Seat(check))}. {GroundChecksSection.Rating(check)}")]));
        if (cards.Scales is { } scales)
            yield return Html.Block("scales", [Html.Heading($"The scales were read with frame {scales.Hung.Geometry.Name}"),
                .. Scales(cards.Line, fit, scales).Select(Html.Paragraph)]);
        yield return Html.Heading("First tests, one step at a time; go on only if the step went as expected");
        yield return Html.Paragraph($"{GroundChecksSection.PropellerByHand} Tied-down run: {GroundChecksSection.TiedDownPlaces} Flights: "
            + "helmet and reserve on, smooth air, plenty of height, one change at a time.");
        yield return Html.Table("First tests", ["step", "expect", "stop", "read"],
            TestCardSteps.Of(study, own.Design).Select(step => (IReadOnlyList<string>)
                [step.Title, step.Expected, step.AbortCriterion, ""]));
    }

    private static IEnumerable<XElement> WithoutFrame(CustomerFit fit)
    {
        yield return Html.Paragraph("headline", "NO FRAME OF THE LINE IS ALLOWED FOR THIS CUSTOMER: make a custom frame.");
        yield return Html.List(fit.Frames.Select(frame => $"Frame {frame.Geometry.Name}: {Why(frame)}."));
    }

    private static string Second(ProductLineResult line, CustomerFit fit, FittedFrame own)
    {
        if (fit.Second is not { } second)
            return "The line has no other frame.";
        if (!second.IsAllowed)
            return $"No second choice: {second.Geometry.Name} {Why(second)}.";
        var hardest = second.Design.Phases.Where(phase => phase.Phase.IsSettled).MaxBy(phase => phase[PhaseQuantity.Effort])!;
        var there = own.Design.Phases.First(phase => phase.Phase == hardest.Phase);
        var (would, does) = (FeelText.Pull(hardest), FeelText.Pull(there));
        return $"Second best: {second.Geometry.Name}, {Value(line, second)} in place of {Amount(line, own)}"
            + (would == does ? "." : $"; in {hardest.Phase.Name} {would} in place of {does}.");
    }

    private static string Nearest(ProductLineResult line, CustomerFit fit) =>
        string.Join(" ", fit.Frames.Take(1).Select(frame => $"{frame.Geometry.Name} {Why(frame)}."));

    /// <summary>The response that is the cost, with a frame.</summary>
    public static string Value(ProductLineResult line, FittedFrame frame)
    {
        var response = line.Setting.CostResponse;
        return $"{StudyText.Title(response.Response, response.Magnitude)} {Amount(line, frame)}";
    }

    private static string Amount(ProductLineResult line, FittedFrame frame) => NumberFormat.Text(
        line.Setting.CostResponse.ValueOf(frame.Design), line.Setting.CostResponse.Response.Entry);

    /// <summary>Why a frame is not allowed.</summary>
    public static string Why(FittedFrame frame) => !frame.IsForRotation ? "is for engines that turn the other way"
        : frame.Design.Failure is { } failure ? $"cannot fly: {FailureText.Describe(failure)}"
        : "violates " + string.Join(" and ", frame.Broken.Select(limit => $"the limit {StudyText.LimitTitle(limit)} (it is "
            + $"{NumberFormat.Text(limit.ValueOf(frame.Design), limit.Response.Entry)})"));
}
