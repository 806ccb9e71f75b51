using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>How to get the same figures again, and how the search went.</summary>
internal static class ReproducePart
{
    public static XElement Of(PageContent content)
    {
        var (study, info) = (content.Study, content.Report.Info);
        return Html.Section(
            "reproduce",
            "How to reproduce it",
            Html.Paragraph("The same study file, the same version and the same seed give the same figures:"),
            new XElement("pre", new XElement("code", Command(study, info))),
            new XElement("dl", new XAttribute("class", "facts"), Facts(study, info)
                .Select(fact => new XElement("div", new XElement("dt", fact.What), new XElement("dd", fact.Value)))),
            Html.Heading(CountsSection.Of(content.Result).Title),
            Html.SectionBody(CountsSection.Of(content.Result)));
    }

    private static string Command(Study study, RunInfo info) => Command(info.StudyFileName, study.Variant);

    /// <summary>The line of the shell that runs a study.</summary>
    public static string Command(string studyFile, string variant) =>
        $"frameopt run {Quoted(studyFile)}{(variant.Length > 0 ? $" --variant {Quoted(variant)}" : "")}";

    private static IEnumerable<(string What, string Value)> Facts(Study study, RunInfo info)
    {
        yield return ("study file", info.StudyFileName);
        yield return ("its SHA-256", study.Hash);
        foreach (var file in study.Files)
            yield return ($"{file.Name}, SHA-256", file.Hash);
        yield return ("version", $"FrameOpt {info.ToolVersion}");
        yield return ("seed", study.Search is SearchSetting.Evolutionary ? FormattableString.Invariant($"{info.Seed}")
            : "none needed: every design of the grid is computed");
        yield return ("search", StudyText.Search(study.Search));
        yield return (
            "in the same folder",
            "results.xlsx (live ranking, all figures), designs.csv (the whole front), run.json (everything, for programs)");
    }

    /// <summary>As one word of a shell.</summary>
    public static string Quoted(string text) =>
        text.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '.' or '-' or '_') ? text
            : $"'{text.Replace("'", "'\\''", StringComparison.Ordinal)}'";
}
