using System.Globalization;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads where figures come from: the study's own groups and keys again, each figure or group with a word.</summary>
internal static class OriginReader
{
    private const string Key = "origins";

    /// <summary>Every mark, in the order of the file.</summary>
    /// <param name="study">The whole file.</param>
    /// <param name="root">The same as nodes, to find the figures that are marked.</param>
    public static IReadOnlyList<FigureOrigin> Read(Section study, Node root)
    {
        var marks = new List<FigureOrigin>();
        foreach (var entry in study.Entries(Key))
            Read(entry, Child(root, entry.Key.Text), entry.Key.Text, study.DiagnosticBag, marks);
        return marks;
    }

    private static void Read(Node.Entry entry, Node? marked, string path, DiagnosticBag diagnostics, List<FigureOrigin> marks)
    {
        if (marked is null)
        {
            diagnostics.Add(entry.Key, $"{Key} marks {path}, which is no figure of this study.",
                "Use the same groups and keys as above; the items of a list are numbered from 0.");
            return;
        }

        switch (entry.Value)
        {
            case Node.Map map:
                foreach (var inner in map.Entries)
                    Read(inner, Child(marked, inner.Key.Text), $"{path}.{inner.Key.Text}", diagnostics, marks);
                break;
            case Node.Scalar { Text: var word } when FigureOrigin.Names.Contains(word):
                marks.Add(new FigureOrigin(path, word));
                break;
            default:
                diagnostics.Add(entry.Value, $"{Key}.{path} is none of {string.Join(", ", FigureOrigin.Names)}.", "Write one of them.");
                break;
        }
    }

    private static Node? Child(Node? node, string key) => node switch
    {
        Node.Map map => map.Entries.FirstOrDefault(entry => entry.Key.Text == key)?.Value,
        Node.List list when int.TryParse(key, NumberStyles.None, CultureInfo.InvariantCulture, out var index) =>
            index < list.Items.Count ? list.Items[index] : null,
        _ => null,
    };
}
