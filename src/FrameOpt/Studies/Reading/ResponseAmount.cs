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
        var dimension = Dimension.OfUnit(response.Unit);
        var example = $"{key}: {(response.Unit.Length > 0 ? $"5 {response.Unit}" : "0.6")}";
        if (section.Value(key) is not { } node
            || Quantity.Read(node, $"{section.Path}.{key} of {response.Name}", example, dimension, bound, section.Findings) is not { } amount)
            return double.NaN;
        return amount.Unit.Text == response.Unit ? amount.Value : amount.Base / dimension.Spelled(response.Unit)!.ToBase(1);
    }
}
