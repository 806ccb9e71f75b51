using FrameOpt.Model;

namespace FrameOpt.Studies.Reading;

/// <summary>Reads an amount of a response, in the unit the response is held in.</summary>
internal static class ResponseAmount
{
    /// <summary>NaN when wrong, null when the key is absent.</summary>
    public static double? Read(Section section, string key, Response response, Bound bound)
    {
        if (!section.Has(key))
            return null;
        return section.Value(key) is { } node ? Of(node, $"{section.Path}.{key} of {response.Name}", response, bound, section.Findings, key) ?? double.NaN : double.NaN;
    }

    /// <summary>The amount in a node, or null after a mistake.</summary>
    public static double? Of(Node node, string name, Response response, Bound bound, Findings findings, string? key = null)
    {
        var dimension = Dimension.OfUnit(response.Unit);
        var example = $"{key ?? response.Name}: {(response.Unit.Length > 0 ? $"5 {response.Unit}" : "0.6")}";
        if (Quantity.Read(node, name, example, dimension, bound, findings) is not { } amount)
            return null;
        return amount.Unit.Text == response.Unit ? amount.Value : amount.Base / dimension.Spelled(response.Unit)!.ToBase(1);
    }
}
