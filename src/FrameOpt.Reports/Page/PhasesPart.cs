using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;

namespace FrameOpt.Reports.Page;

/// <summary>What the design leaves to the pilot in each phase, in words and beside other designs.</summary>
internal static class PhasesPart
{
    public static XElement? Of(PageContent content)
    {
        if (content.Binder is not { } binder)
            return null;
        var others = content.IsFeasible ? ComparedDesign.Of(content.Report).Skip(1).ToList()
            : content.Result.Baseline is { Failure: null } baseline ? [new ComparedDesign("baseline", baseline)]
            : new List<ComparedDesign>();
        var largest = binder.Views.Select(view => view.Evaluation).Concat(others.Select(other => other.Evaluation))
            .SelectMany(design => design.Phases).Max(phase => Math.Abs(phase[PhaseQuantity.Residual]));
        return Html.Section(
            "phases",
            content.IsFeasible ? PhasesSection.Of(content.Result, content.Result.Chosen!).Title
                : "What the nearest miss leaves in each phase",
            binder.Bind(view => Html.Block("words", new XElement("ul", PhasesSection.Of(view.Result, view.Evaluation).Lines
                .Select(line => new XElement("li", line))))),
            binder.Bind(view => Html.Figure(
                PhasesBarChart.Of([new ComparedDesign(view.Name, view.Evaluation), .. others], largest),
                "Residual torque is what is left for the pilot to hold by leaning or braking: the roll moment that alone would turn the wing as much as roll and yaw together.")));
    }
}
