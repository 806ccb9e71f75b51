using System.Xml.Linq;

namespace FrameOpt.Reports.Page;

/// <summary>The bar that chooses the design shown; there only where the page's script runs.</summary>
internal static class DesignSelectorPart
{
    public static XElement Of(DesignBinder binder) => new(
        "aside",
        new XAttribute("id", "chooser"),
        new XAttribute("aria-label", "Design shown"),
        new XAttribute("hidden", "hidden"),
        new XElement("label", new XAttribute("for", "design"), "Design shown"),
        new XElement("select", new XAttribute("id", "design"), new XElement(
            "option", new XAttribute("value", "0"), DesignRow.Label(binder.Views[0]))),
        new XElement("button", new XAttribute("type", "button"), new XAttribute("id", "best"), "best compromise"),
        new XElement("p", new XAttribute("id", "status"), new XAttribute("role", "status"), new XAttribute("class", "unseen")));
}
