using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>What the answer rests on: the study as understood, what was assumed, what the model leaves out, and how to reproduce
/// it.</summary>
internal static class StudyPart
{
    public static IEnumerable<XElement> Of(PageContent content)
    {
        yield return CautionsOf(CautionsSection.Of(content.Result).Lines);
        yield return Html.Section("study", "The study as understood",
            [.. StudyDescription.Of(content.Study).GroupBy(row => row.Group).SelectMany(group => (XElement[])
        [
            Html.Heading(group.Key),
            Html.Facts("facts", group.Select(row => (row.Label, row.Value))),
        ])]);
        yield return Assumptions(content.Study);
    }

    /// <summary>Cautions, limits of the model, standards.</summary>
    /// <param name="ofAnswer">Cautions that the answer already gives, which come first.</param>
    public static XElement CautionsOf(IReadOnlyList<string> ofAnswer) => Html.Section(
        "cautions",
        "Cautions and limits of the model",
        CautionsSection.Full(ofAnswer).SelectMany(group => (XElement[])[Html.Heading(group.Title), Html.List(group.Lines)]));

    /// <summary>What the study does not give, and what the model assumes.</summary>
    public static XElement Assumptions(Study study) => Html.Section(
        "assumptions",
        "Assumptions and sources",
        Html.Heading("Values not given in this study"),
        study.Assumptions.Count == 0 ? Html.Paragraph("None: the study gives every value.")
            : Table("Assumed for this study", study.Assumptions),
        Html.Heading("Assumptions of the model in every study"),
        Table("Assumptions of the model", ModelAssumptions.All));

    /// <summary>How to get the same figures again, and how the search went.</summary>
    public static XElement Reproduce(PageContent content)
    {
        var (study, info) = (content.Study, content.Report.Info);
        return Html.Section(
            "reproduce",
            "How to reproduce it",
            Html.Paragraph("The same study file, the same version and the same seed give the same figures:"),
            new XElement("pre", new XElement("code", Command(study, info))),
            Html.Facts("facts", Facts(study, info)),
            study.IsOneFrame ? null : Html.Heading(SearchSection.Counts(content.Result).Title),
            study.IsOneFrame ? null : Html.SectionBody(SearchSection.Counts(content.Result)));
    }

    private static string Command(Study study, RunInfo info) => info.Settings is not { } settings
        ? Command(info.StudyFileName, study.Variant)
        : Command(info.StudyFileName, study.Variant, "evaluate")
            + string.Concat(info.Customer.Select(option => $" {option.Option} {Quoted(option.Value)}"))
            + string.Concat(settings.Select(setting => $" --set {Quoted(setting)}"))
            + " --out frame";

    /// <summary>The command line that runs a study.</summary>
    public static string Command(string studyFile, string variant, string command = "run") => $"frameopt {command} {Quoted(studyFile)}"
        + string.Concat(variant.Split(Study.VariantSeparator, StringSplitOptions.RemoveEmptyEntries)
            .Select(name => $" --variant {Quoted(name)}"));

    private static IEnumerable<(string What, string Value)> Facts(Study study, RunInfo info)
    {
        yield return ("study file", info.StudyFileName);
        yield return ("SHA-256", study.Hash);
        foreach (var file in study.Files)
            yield return ($"{file.Name}, SHA-256", file.Hash);
        yield return ("version", $"FrameOpt {info.ToolVersion}");
        yield return ("seed", study.Search is SearchSetting.Evolutionary ? FormattableString.Invariant($"{info.Seed}")
            : study.IsOneFrame ? "none needed: nothing is searched" : "none needed: every design of the grid is computed");
        if (!study.IsOneFrame)
            yield return ("search", StudyText.Search(study.Search));
        yield return (
            "in the same folder",
            study.IsOneFrame ? "results.xlsx (all figures, live What if), designs.csv (this frame), run.json (everything, for programs)"
                : "results.xlsx (live ranking, all figures), designs.csv (the whole front), run.json (everything, for programs)");
    }

    /// <summary>The text quoted as one word: in double quotes, which every shell takes, or, with a letter special inside them, as a Unix
    /// shell wants it.</summary>
    public static string Quoted(string text) =>
        text.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '.' or '-' or '_') ? text
            : text.IndexOfAny(['"', '$', '`', '\\', '!', '%']) < 0 ? $"\"{text}\""
            : $"'{text.Replace("'", "'\\''", StringComparison.Ordinal)}'";

    private static XElement Table(string name, IEnumerable<Assumption> assumptions) =>
        Html.Table(name, ["what", "value", "source"], assumptions.Select(row => (IReadOnlyList<string>)[row.What, row.Value, row.Source]));
}
