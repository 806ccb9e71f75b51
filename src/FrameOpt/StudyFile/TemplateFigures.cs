using System.Collections.Concurrent;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using static System.FormattableString;

namespace FrameOpt.StudyFile;

/// <summary>Compares the figures of a study with those of the template it was begun from: an invented figure is easily left in.</summary>
internal static class TemplateFigures
{
    private const string Key = "template";

    /// <summary>What is measured or taken from papers, so that a template cannot know it.</summary>
    private static readonly string[] measured = ["machine", "wing", "baseline", "strength"];

    /// <summary>Templates never change, and in a browser a study is read after every change.</summary>
    private static readonly ConcurrentDictionary<string, IReadOnlyList<Figure>> read = new();

    /// <summary>Reports a name under `template` that no template has.</summary>
    public static void CheckName(Section study)
    {
        if (study.Text("template") is not { } name || Find(name) is not null)
            return;
        string[] names = [.. StudyTemplate.All.Select(known => known.Name)];
        study.DiagnosticBag.Add(study.At("template"), $"There is no template `{name}`.", NearestName.Of(name, names) is { } near
            ? $"Did you mean `{near}`?"
            : $"The templates are {string.Join(", ", names)}; in a study that began as none of them remove the line.");
    }

    /// <summary>Warns of the figures that are still those of the template that the file names.</summary>
    /// <returns>The same of each of them, where it stands.</returns>
    public static IReadOnlyList<Warning> Check(Node.Map root, DiagnosticBag diagnostics)
    {
        var key = root.Entries.FirstOrDefault(entry => entry.Key.Text == Key);
        if (key is not { Value: Node.Scalar named } || Find(named.Text) is not { } template)
            return [];
        var invented = read.GetOrAdd(template.Name, _ => FiguresOf(template));
        var own = Figures(root);
        var same = own.Where(figure => IsInvented(figure, invented)).ToList();
        var groups = measured.Where(key => root.Entries.Any(entry => entry.Key.Text == key)).ToList();
        if (same.Count > 0)
            diagnostics.AddWarning(named,
                Invariant($"{same.Count} of {own.Count} figures of {Values.Key.List(groups)} are the template's: {List(same)}. ")
                    + "They are invented: put your own in their place; one that is right as it stands may stay.");
        return [.. same.Select(figure => new Warning(diagnostics.File, figure.At.Line, figure.At.Column,
            "The template's figure, which is invented."))];
    }

    private static StudyTemplate? Find(string name) => StudyTemplate.All.FirstOrDefault(known => known.Name == name.Trim());

    private static bool IsInvented(Figure figure, IReadOnlyList<Figure> invented)
    {
        var other = invented.FirstOrDefault(one => one.Path == figure.Path) ?? invented.FirstOrDefault(one => one.Place == figure.Place);
        return other is not null && other.Dimension == figure.Dimension
            && Math.Abs(other.Base - figure.Base) <= 1e-9 * Math.Abs(other.Base);
    }

    private static IReadOnlyList<Figure> FiguresOf(StudyTemplate template)
    {
        using var copy = new MemoryStream();
        using var source = template.Open();
        source.CopyTo(copy);
        var diagnostics = new DiagnosticBag(template.Name);
        return Figures((Node.Map)YamlText.Read(StudySource.Text(copy.ToArray(), diagnostics)!, diagnostics)!);
    }

    private static List<Figure> Figures(Node.Map root)
    {
        var figures = new List<Figure>();
        foreach (var entry in root.Entries.Where(entry => measured.Contains(entry.Key.Text)))
            Add(entry.Value, entry.Key.Text, entry.Key.Text, entry.Key.Text, figures);
        return figures;
    }

    /// <summary>Adds every number under a node. A mass is found by its name, and under a new name by its place in the list.</summary>
    private static void Add(Node node, string path, string place, string shown, List<Figure> figures)
    {
        switch (node)
        {
            case Node.Map map:
                foreach (var entry in map.Entries)
                    Add(entry.Value, $"{path}.{entry.Key.Text}", $"{place}.{entry.Key.Text}", $"{shown}.{entry.Key.Text}", figures);
                break;
            case Node.List list:
                foreach (var (index, item) in list.Items.Index())
                {
                    var name = (item as Node.Map)?.Entries.FirstOrDefault(entry => entry.Key.Text == "name")?.Value;
                    var step = name is Node.Scalar scalar ? $".{scalar.Text}" : Invariant($".{index}");
                    var itemShown = name is null ? shown : $"{shown}{step}";
                    Add(item, $"{path}{step}", Invariant($"{place}.{index}"), itemShown, figures);
                }

                break;
            case Node.Scalar scalar when NumberText.Parse(scalar.Text) is { Message: null } number
                && Dimension.All.FirstOrDefault(dimension => dimension.FindUnit(number.Unit) is not null) is { } dimension:
                figures.Add(new Figure(scalar, path, place, shown, dimension, dimension.FindUnit(number.Unit)!.ToBase(number.Value)));
                break;
        }
    }

    /// <summary>The keys, those of one group together: "wing.mass, area and span".</summary>
    private static string List(IEnumerable<Figure> figures) => string.Join("; ", figures
        .GroupBy(figure => figure.Shown[..figure.Shown.LastIndexOf('.')])
        .Select(group => $"{group.Key} {Values.Key.List(Names(group, group.Key.Length + 1))}"));

    private static List<string> Names(IEnumerable<Figure> group, int start) => [.. group.GroupBy(figure => figure.Shown[start..])
        .Select(key => key.Count() > 1 ? Invariant($"{key.Key} ({key.Count()})") : key.Key)];

    private sealed record Figure(Node At, string Path, string Place, string Shown, Dimension Dimension, double Base);
}
