using System.Xml.Linq;

namespace FrameOpt.Reports;

/// <summary>One step of the test card.</summary>
/// <param name="Title">A few words.</param>
/// <param name="Do">What to do.</param>
/// <param name="Expect">What the model says will be seen.</param>
/// <param name="StopIf">When to go no further.</param>
/// <param name="Fields">What to write down.</param>
internal sealed record CardStep(string Title, string Do, string Expect, string StopIf, IReadOnlyList<string> Fields)
{
    /// <summary>The step as it is printed.</summary>
    public XElement Block() => Html.Block(
        "step",
        Html.Heading(Title),
        Line("Do", Do),
        Line("Expect", Expect),
        Line("Stop", StopIf, "stop"),
        Html.Block("blanks", Fields.Select(Blank)));

    /// <summary>A name and a line to write on.</summary>
    public static XElement Blank(string name) => new("p", new XAttribute("class", "blank"), new XElement("span", name));

    private static XElement Line(string head, string text, string look = "line") => new(
        "p", new XAttribute("class", look), new XElement("b", $"{head}:"), new XElement("span", $" {text}"));
}
