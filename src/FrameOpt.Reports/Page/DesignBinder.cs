using System.Xml.Linq;
using FrameOpt.Numerics;

namespace FrameOpt.Reports.Page;

/// <summary>
/// Makes a part of the page follow the design shown. The part is made for every design; the page shows it for the first, and an element
/// that differs for another design is marked with the number of a slot. The page's script then needs no formula and no words: it only
/// puts the content of the slot into the element.
/// </summary>
/// <param name="views">The designs, best first; one or more.</param>
/// <param name="threads">Worker threads, 1 or more.</param>
internal sealed class DesignBinder(IReadOnlyList<DesignView> views, int threads)
{
    private readonly List<BoundValue> slots = [];

    public IReadOnlyList<DesignView> Views => views;

    public IReadOnlyList<BoundValue> Slots => slots;

    /// <summary>The part for the first design, marked where it differs for others.</summary>
    /// <param name="part">Makes the part for one design. Elements have the same order for all; a list may be longer for some.</param>
    public XElement Bind(Func<DesignView, XElement> part) => Merge(InParallel.Select(views.Count, threads, i => part(views[i])));

    private XElement Merge(XElement[] variants)
    {
        var first = variants[0];
        if (Array.Exists(variants, variant => variant.Name != first.Name))
            throw new InvalidOperationException($"a part of the page is a {first.Name} for one design and not for another");
        var merged = new XElement(first.Name);
        var marks = new List<string>();
        foreach (var name in AttributeNames(variants))
        {
            var value = first.Attribute(name)?.Value;
            if (value is not null)
                merged.SetAttributeValue(name, value);
            if (Array.Exists(variants, variant => variant.Attribute(name)?.Value != value))
                marks.Add($"{name.LocalName}:{Add(Array.ConvertAll(variants, variant => variant.Attribute(name)?.Value))}");
        }

        if (marks.Count > 0)
            merged.SetAttributeValue("data-a", string.Join(' ', marks));
        if (Array.TrueForAll(variants, variant => !variant.HasElements))
            BindText(merged, Array.ConvertAll(variants, variant => variant.Value));
        else
            merged.Add(Children(variants));
        return merged;
    }

    /// <summary>The names that any variant has, in the order of their first appearance.</summary>
    private static List<XName> AttributeNames(XElement[] variants)
    {
        var names = new List<XName>();
        foreach (var variant in variants)
        {
            for (var attribute = variant.FirstAttribute; attribute is not null; attribute = attribute.NextAttribute)
            {
                if (!names.Contains(attribute.Name))
                    names.Add(attribute.Name);
            }
        }

        return names;
    }

    private void BindText(XElement merged, string[] texts)
    {
        if (texts[0].Length > 0)
            merged.Add(texts[0]);
        if (Array.Exists(texts, text => text != texts[0]))
            merged.SetAttributeValue("data-t", Add(texts));
    }

    private IEnumerable<XElement> Children(XElement[] variants)
    {
        if (Array.Exists(variants, HasText))
            throw new InvalidOperationException("a part of the page that follows the design mixes words and elements");
        var children = Array.ConvertAll(variants, variant => variant.Elements().ToArray());
        var longest = children.MaxBy(list => list.Length)!;
        for (var c = 0; c < longest.Length; c++)
            yield return Merge(Array.ConvertAll(children, list => c < list.Length ? list[c] : HiddenCopy(longest[c])));
    }

    private static bool HasText(XElement element)
    {
        for (var node = element.FirstNode; node is not null; node = node.NextNode)
        {
            if (node is XText)
                return true;
        }

        return false;
    }

    /// <summary>A hidden placeholder where another design has one element more.</summary>
    private static XElement HiddenCopy(XElement like)
    {
        var absent = new XElement(like);
        absent.SetAttributeValue("hidden", "hidden");
        return absent;
    }

    private int Add(IReadOnlyList<string?> values)
    {
        slots.Add(BoundValue.Of(values));
        return slots.Count - 1;
    }
}

/// <summary>A text or an attribute that differs from design to design.</summary>
/// <param name="Prefix">Common to all designs, before the value.</param>
/// <param name="Suffix">Common to all designs, after the value.</param>
/// <param name="Values">The part that differs, for each design; null where the attribute is absent.</param>
internal sealed record BoundValue(string Prefix, string Suffix, IReadOnlyList<string?> Values)
{
    /// <summary>Separates what is common from what differs.</summary>
    public static BoundValue Of(IReadOnlyList<string?> texts)
    {
        if (texts.Any(text => text is null))
            return new BoundValue("", "", texts);
        var first = texts[0]!;
        var before = texts.Min(text => first.AsSpan().CommonPrefixLength(text));
        var after = texts.Min(text => text!.Length) - before;
        foreach (var text in texts)
            while (!text.AsSpan().EndsWith(first.AsSpan(first.Length - after)))
                after--;
        // Never split a surrogate pair: JSON holds whole characters only.
        if (before > 0 && char.IsHighSurrogate(first[before - 1]))
            before--;
        if (after > 0 && char.IsLowSurrogate(first[^after]))
            after--;
        return new BoundValue(first[..before], first[^after..], [.. texts.Select(text => text![before..^after])]);
    }
}
