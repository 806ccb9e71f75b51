using System.Xml.Linq;

namespace FrameOpt.Reports.Page;

/// <summary>
/// Makes a part of the page follow the design shown. A part is made ready for every design; it is put on the page as it is for the first,
/// and where
/// another differs the element is marked with the number of a slot. The page's script then needs no formula and no words: it puts what a
/// slot holds into place.
/// </summary>
/// <param name="views">The designs, best first; one or more.</param>
internal sealed class DesignBinder(IReadOnlyList<DesignView> views)
{
    private readonly List<BoundValue> slots = [];

    public IReadOnlyList<DesignView> Views => views;

    public IReadOnlyList<BoundValue> Slots => slots;

    /// <summary>The part for the first design, marked where it differs for others.</summary>
    /// <param name="part">Of one design. Elements stand in the same order for all; a list may be longer for some.</param>
    public XElement Bind(Func<DesignView, XElement> part)
    {
        var variants = new XElement[views.Count];
        Parallel.For(0, variants.Length, i => variants[i] = part(views[i]));
        return Merge(variants);
    }

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

    /// <summary>The names that any variant has, in the order they are met.</summary>
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

    /// <summary>Stands where another design has one more: hidden, and of the same shape.</summary>
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
/// <param name="Prefix">What all designs have before it.</param>
/// <param name="Suffix">What all have after it.</param>
/// <param name="Values">Of each design, what lies between; null for an attribute it has not.</param>
internal sealed record BoundValue(string Prefix, string Suffix, IReadOnlyList<string?> Values)
{
    /// <summary>Parts what is common from what is not.</summary>
    public static BoundValue Of(IReadOnlyList<string?> texts)
    {
        if (texts.Any(text => text is null))
            return new BoundValue("", "", texts);
        var first = texts[0]!;
        var shortest = texts.Min(text => text!.Length);
        var before = 0;
        while (before < shortest && texts.All(text => text![before] == first[before]))
            before++;
        var after = 0;
        while (after < shortest - before && texts.All(text => text![^(after + 1)] == first[^(after + 1)]))
            after++;
        // Never through a surrogate pair: JSON may hold whole letters only.
        if (before > 0 && char.IsHighSurrogate(first[before - 1]))
            before--;
        if (after > 0 && char.IsLowSurrogate(first[^after]))
            after--;
        return new BoundValue(first[..before], first[^after..], [.. texts.Select(text => text![before..^after])]);
    }
}
