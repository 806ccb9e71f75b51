using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>The designs that can be shown, as the page's script reads them.</summary>
internal static class PageData
{
    /// <summary>JSON that is safe in a script element: it contains no less-than sign.</summary>
    public static string Of(PageContent content, DesignBinder binder)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteBoolean("topsis", content.Study.Ranking.Method == Studies.RankingMethod.Topsis);
            Objectives(json, content);
            Slots(json, binder);
            Designs(json, binder);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length).Replace("<", "\\u003c", StringComparison.Ordinal);
    }

    private static void Objectives(Utf8JsonWriter json, PageContent content)
    {
        json.WriteStartArray("objectives");
        for (var o = 0; o < content.Study.Objectives.Count; o++)
        {
            var (values, maximise) = (content.Result.Front.Select(design => design.Objectives[o]).ToList(),
                content.Study.Objectives[o].Maximise);
            json.WriteStartObject();
            json.WriteNumber("weight", content.Study.Ranking.Weights[o]);
            json.WriteNumber("best", maximise ? values.Max() : values.Min());
            json.WriteNumber("worst", maximise ? values.Min() : values.Max());
            json.WriteNumber("norm", Math.Sqrt(values.Sum(value => value * value)));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Slots(Utf8JsonWriter json, DesignBinder binder)
    {
        json.WriteStartArray("slots");
        foreach (var slot in binder.Slots)
        {
            json.WriteStartArray();
            json.WriteStringValue(TextSanitizer.Clean(slot.Prefix));
            json.WriteStringValue(TextSanitizer.Clean(slot.Suffix));
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    private static void Designs(Utf8JsonWriter json, DesignBinder binder)
    {
        json.WriteStartArray("designs");
        for (var d = 0; d < binder.Views.Count; d++)
        {
            var view = binder.Views[d];
            json.WriteStartObject();
            json.WriteNumber("number", view.FrontDesign!.Number);
            json.WriteString("label", TextSanitizer.Clean(DesignRow.Label(view)));
            Array(json, "cells", DesignRow.Of(view));
            json.WriteStartArray("objectives");
            foreach (var value in view.FrontDesign.Objectives)
                json.WriteNumberValue(value);
            json.WriteEndArray();
            Array(json, "values", binder.Slots.Select(slot => slot.Values[d]));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Array(Utf8JsonWriter json, string name, IEnumerable<string?> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text is null ? null : TextSanitizer.Clean(text));
        json.WriteEndArray();
    }
}
