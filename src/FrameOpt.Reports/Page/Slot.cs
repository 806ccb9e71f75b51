namespace FrameOpt.Reports;

/// <summary>A text or an attribute that differs from design to design.</summary>
/// <param name="Before">What all designs have before it.</param>
/// <param name="After">What all have after it.</param>
/// <param name="Values">Of each design, what lies between; null for an attribute it has not.</param>
internal sealed record Slot(string Before, string After, IReadOnlyList<string?> Values)
{
    /// <summary>Parts what is common from what is not.</summary>
    public static Slot Of(IReadOnlyList<string?> texts)
    {
        if (texts.Any(text => text is null))
            return new Slot("", "", texts);
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
        return new Slot(first[..before], first[^after..], [.. texts.Select(text => text![before..^after])]);
    }
}
