using System.Text;
using System.Text.Json;
using FrameOpt.Reports.Answer;
using FrameOpt.Web.State;

namespace FrameOpt.Web.Work;

/// <summary>The answer of a run on its way from the worker to the page.</summary>
public static class AnswerJson
{
    /// <summary>As text.</summary>
    public static string Write(RunOutcome outcome)
    {
        var answer = outcome.Answer;
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartArray();
            json.WriteStringValue(answer.Title);
            json.WriteStringValue(answer.Question);
            json.WriteStringValue(answer.Headline);
            json.WriteBooleanValue(answer.IsWarning);
            Texts(json, outcome.Pictures);
            Correction(json, outcome.Correction);
            Texts(json, outcome.Shares);
            foreach (var section in answer.Sections)
            {
                json.WriteStartArray();
                json.WriteStringValue(section.Title);
                Texts(json, section.Lines);
                if (section.Table is { } table)
                    foreach (var row in table.Rows.Prepend(table.Headers))
                        Texts(json, row);
                json.WriteEndArray();
            }

            json.WriteEndArray();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>Back from text.</summary>
    public static RunOutcome Read(string text)
    {
        using var json = JsonDocument.Parse(text);
        var parts = json.RootElement.EnumerateArray().ToList();
        return new RunOutcome(new RunAnswer(parts[0].GetString()!, parts[1].GetString()!, parts[2].GetString()!, parts[3].GetBoolean(),
            [.. parts.Skip(7).Select(Section)]), Texts(parts[4]), Correction([.. parts[5].EnumerateArray()]))
        { Shares = Texts(parts[6]) };
    }

    /// <summary>The text, whether it changes anything, and the numbers of the hole; nothing where nothing was corrected.</summary>
    private static void Correction(Utf8JsonWriter json, Correction? correction)
    {
        json.WriteStartArray();
        if (correction is not null)
        {
            json.WriteStringValue(correction.Text);
            json.WriteBooleanValue(correction.HasChanges);
            foreach (var number in correction.Hole is { } hole ? StoredStudy.Numbers(hole) : [])
                json.WriteNumberValue(number);
        }

        json.WriteEndArray();
    }

    private static Correction? Correction(List<JsonElement> parts) => parts.Count == 0 ? null
        : new(parts[0].GetString()!, parts[1].GetBoolean(), StoredStudy.Geometry([.. parts.Skip(2).Select(part => part.GetDouble())]));

    private static AnswerSection Section(JsonElement part)
    {
        var pieces = part.EnumerateArray().ToList();
        return new AnswerSection(pieces[0].GetString()!, Texts(pieces[1]),
            pieces.Count == 2 ? null : new AnswerTable(Texts(pieces[2]), [.. pieces.Skip(3).Select(Texts)]));
    }

    private static void Texts(Utf8JsonWriter json, IEnumerable<string> texts)
    {
        json.WriteStartArray();
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static IReadOnlyList<string> Texts(JsonElement part) => [.. part.EnumerateArray().Select(one => one.GetString()!)];
}
