using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>What the answer rests on: the study as understood, what was assumed, and what the model leaves out.</summary>
internal static class StudyPart
{
    public static IEnumerable<XElement> Of(PageContent content)
    {
        yield return CautionsOf(CautionsSection.Of(content.Result).Lines);
        yield return Html.Section("study", "The study as understood",
            [.. StudyDescription.Of(content.Study).GroupBy(row => row.Group).SelectMany(group => (XElement[])
        [
            Html.Heading(group.Key),
            new XElement("dl", new XAttribute("class", "facts"), group.Select(
                row => new XElement("div", new XElement("dt", row.Label), new XElement("dd", row.Value)))),
        ])]);
        yield return Assumptions(content.Study);
    }

    /// <summary>Cautions, limits of the model, standards.</summary>
    /// <param name="ofAnswer">Cautions that the answer already gives, which come first.</param>
    public static XElement CautionsOf(IReadOnlyList<string> ofAnswer) => Html.Section(
        "cautions",
        "Cautions and limits of the model",
        Html.Heading("Cautions"),
        Html.List([.. ofAnswer, .. Cautions.Safety.Except([Cautions.Danger, Cautions.GroundTestFirst])]),
        Html.Heading("What the model leaves out"),
        Html.List(Cautions.ModelLimits.Except(Cautions.FirstPage)),
        Html.Heading("Standards"),
        Html.List(Cautions.Standards));

    /// <summary>What the study does not give, and what the model takes for granted.</summary>
    public static XElement Assumptions(Study study) => Html.Section(
        "assumptions",
        "Assumptions and sources",
        Html.Heading("What this study does not give"),
        study.Assumptions.Count == 0 ? Html.Paragraph("Nothing: the study gives every value.")
            : Table("Assumed for this study", study.Assumptions),
        Html.Heading("What the model takes for granted in every study"),
        Table("Taken for granted", ModelAssumptions.All));

    private static XElement Table(string name, IEnumerable<Assumption> assumptions) =>
        Html.Table(name, ["what", "value", "source"], assumptions.Select(row => (IReadOnlyList<string>)[row.What, row.Value, row.Source]));
}
