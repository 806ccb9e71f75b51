using System.Xml.Linq;

namespace FrameOpt.Reports;

/// <summary>
/// Makes a part of the page follow the design shown. A part is made ready for every design; it is put on the page as it is for the first, and where
/// another differs the element is marked with the number of a slot. The page's script then needs no formula and no words: it puts what a slot holds into place.
/// </summary>
/// <param name="views">The designs, best first; one or more.</param>
internal sealed class Follow(IReadOnlyList<DesignView> views)
{
    private readonly List<Slot> slots = [];

    public IReadOnlyList<DesignView> Views => views;

    public IReadOnlyList<Slot> Slots => slots;

    /// <summary>The part for the first design, marked where it differs for others.</summary>
    /// <param name="part">Of one design. Elements stand in the same order for all; a list may be longer for some.</param>
    public XElement Part(Func<DesignView, XElement> part) => Merge([.. views.Select(part)]);

    private XElement Merge(IReadOnlyList<XElement> variants)
    {
        var first = variants[0];
        if (variants.Any(variant => variant.Name != first.Name))
            throw new InvalidOperationException($"a part of the page is a {first.Name} for one design and not for another");
        var merged = new XElement(first.Name);
        var marks = new List<string>();
        foreach (var name in variants.SelectMany(variant => variant.Attributes()).Select(attribute => attribute.Name).Distinct())
        {
            IReadOnlyList<string?> values = [.. variants.Select(variant => variant.Attribute(name)?.Value)];
            if (values[0] is { } value)
                merged.SetAttributeValue(name, value);
            if (values.Any(other => other != values[0]))
                marks.Add($"{name.LocalName}:{Add(values)}");
        }

        if (marks.Count > 0)
            merged.SetAttributeValue("data-a", string.Join(' ', marks));
        if (variants.All(variant => !variant.HasElements))
            Words(merged, [.. variants.Select(variant => variant.Value)]);
        else
            merged.Add(Children(variants));
        return merged;
    }

    private void Words(XElement merged, IReadOnlyList<string> texts)
    {
        if (texts[0].Length > 0)
            merged.Add(texts[0]);
        if (texts.Any(text => text != texts[0]))
            merged.SetAttributeValue("data-t", Add(texts));
    }

    private IEnumerable<XElement> Children(IReadOnlyList<XElement> variants)
    {
        if (variants.Any(variant => variant.Nodes().OfType<XText>().Any()))
            throw new InvalidOperationException("a part of the page that follows the design mixes words and elements");
        var children = variants.Select(variant => variant.Elements().ToList()).ToList();
        var longest = children.MaxBy(list => list.Count)!;
        for (var c = 0; c < longest.Count; c++)
            yield return Merge([.. children.Select(list => c < list.Count ? list[c] : Absent(longest[c]))]);
    }

    /// <summary>Stands where another design has one more: hidden, and of the same shape.</summary>
    private static XElement Absent(XElement like)
    {
        var absent = new XElement(like);
        absent.SetAttributeValue("hidden", "hidden");
        return absent;
    }

    private int Add(IReadOnlyList<string?> values)
    {
        slots.Add(Slot.Of(values));
        return slots.Count - 1;
    }
}
