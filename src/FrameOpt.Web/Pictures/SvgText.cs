using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace FrameOpt.Web.Pictures;

/// <summary>A line of text in a picture; the markup compiler takes the element's name for something of its own.</summary>
public sealed class SvgText : ComponentBase
{
    /// <summary>Where its base line begins, in picture units.</summary>
    [Parameter, EditorRequired]
    public double X { get; set; }

    /// <summary>Its base line, in picture units.</summary>
    [Parameter, EditorRequired]
    public double Y { get; set; }

    /// <summary>What it says.</summary>
    [Parameter, EditorRequired]
    public string Text { get; set; } = "";

    /// <summary>start, middle or end.</summary>
    [Parameter]
    public string Anchor { get; set; } = "start";

    /// <summary>Its class.</summary>
    [Parameter]
    public string Class { get; set; } = "small";

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "class", Class);
        builder.AddAttribute(2, "x", Unit.Text(X));
        builder.AddAttribute(3, "y", Unit.Text(Y));
        builder.AddAttribute(4, "text-anchor", Anchor);
        builder.AddContent(5, Text);
        builder.CloseElement();
    }
}

/// <summary>Coordinates of pictures.</summary>
public static class Unit
{
    /// <summary>To a tenth of a picture unit.</summary>
    public static string Text(double value) =>
        Math.Round(value, 1).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);
}
