using System.Text.RegularExpressions;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;
using Xunit.Abstractions;
using YamlDotNet.RepresentationModel;

namespace FrameOpt.Tests.StudyFile.Cures;

/// <summary>What a message tells to write is right for its place, or names no measure: every key of several studies is got wrong in
/// every way that people do, what the message prints is put there by machine, and the study is read again.</summary>
public class CureTests(ITestOutputHelper output)
{
    /// <summary>Kinds of messages, without the names and numbers in them, below which this test would not test much.</summary>
    private const int ManyKinds = 120;

    private static readonly string[] units =
    [
        "mm", "m", "cm", "in", "ft", "kg", "g", "lb", "N", "kN", "kgf", "lbf", "N·m", "Nm", "deg", "rpm", "m/s", "km/h", "m²", "kW", "hp",
        "l", "K",
    ];

    [Fact]
    public void Every_cure_works_or_names_no_measure()
    {
        var kinds = new HashSet<string>();
        var cured = new HashSet<string>();
        var failures = new List<string>();
        TryAll(File.ReadAllText(Repository.Template("custom-match")), kinds, cured, failures);
        foreach (var study in new[] { "fine-grid", "seven-factors" })
            TryAll(File.ReadAllText(Repository.Study(study)), kinds, cured, failures);
        output.WriteLine($"{kinds.Count} kinds of messages, {cured.Count} of them with a line to write");
        Assert.True(failures.Count == 0, string.Join("\n", failures.Distinct().Take(40)));
        Assert.True(kinds.Count >= ManyKinds, $"{kinds.Count} kinds of messages, {cured.Count} of them with a line to write:\n"
            + string.Join("\n", kinds.Order()));
    }

    private static void TryAll(string text, HashSet<string> kinds, HashSet<string> cured, List<string> failures)
    {
        foreach (var path in StudyTree.Parse(text).Paths().ToList())
        {
            foreach (var harm in Harm.All)
            {
                var tree = StudyTree.Parse(text);
                if (!harm.Apply(tree, path))
                    continue;
                var reading = WorkedStudyText.Read(tree.Write([]).Text);
                // Damage that makes several errors leaves it open which message is about which.
                if (reading.Study is not null || reading.Diagnostics.Count != 1)
                    continue;
                var kind = Kind(reading.Diagnostics[0]);
                kinds.Add(kind);
                if (Trouble(StudyTree.Parse(text), path, harm, reading.Diagnostics[0], out var wasCured) is { } trouble)
                    failures.Add($"{string.Join('.', path)}, {harm.Name}: {trouble}\n    {reading.Diagnostics[0].Text}");
                if (wasCured)
                    cured.Add(kind);
            }
        }
    }

    /// <summary>What is wrong with a cure; null when nothing is.</summary>
    private static string? Trouble(StudyTree tree, IReadOnlyList<string> path, Harm harm, Diagnostic diagnostic, out bool wasCured)
    {
        wasCured = false;
        harm.Apply(tree, path);
        if (Line(diagnostic.Fix) is { } line)
        {
            wasCured = true;
            var inside = diagnostic.Fix.StartsWith($"Add under {string.Join('.', path)}: ", StringComparison.Ordinal);
            var group = inside ? (YamlMappingNode)tree.Find(path) : tree.GroupOf(path)!;
            var written = (YamlMappingNode)StudyTree.Parse($"it: {{ {line} }}").Find(["it"]);
            var (key, value) = written.Children.Single();
            if (!inside)
                group.Children.Remove(new YamlScalarNode(path[^1]));
            group.Children.Remove(new YamlScalarNode("zzzzzzzz"));
            group.Children[key] = value;
            var (text, at) = tree.Write([.. inside ? path : path.SkipLast(1), ((YamlScalarNode)key).Value!]);
            var reading = WorkedStudyText.Read(text);
            if (reading.Study is not { } study)
                return "its line does not cure it: " + reading.Diagnostics[0].Text;
            return study.Warnings.FirstOrDefault(warning => warning.StartsWith($"study.yaml line {at}: ", StringComparison.Ordinal)
                && !warning.Contains("are the template's"));
        }

        // The user's own digits may come back with another point.
        var own = Regex.Replace(diagnostic.Excerpt, "[^0-9]", "");
        return Measures(diagnostic.Fix).FirstOrDefault(measure => !own.Contains(Regex.Replace(measure, "[^0-9]", ""))) is { } measure
            ? $"it names {measure} and is no line to write" : null;
    }

    /// <summary>The `key: value` that a fix tells to write, or null.</summary>
    private static string? Line(string fix) =>
        Regex.Match(fix, @"^(Add [^`]*|Write |Write for example )`(?<line>[a-z_]+: [^`]+)`") is { Success: true } match
            ? match.Groups["line"].Value : null;

    private static IEnumerable<string> Measures(string fix) => Regex.Matches(fix, @"[0-9]+(\.[0-9]+)? (?<unit>[^ ,.;`)\]}]+)")
        .Where(match => units.Contains(match.Groups["unit"].Value)).Select(match => match.Value);

    /// <summary>A message without what depends on the place.</summary>
    private static string Kind(Diagnostic diagnostic) => Regex.Replace(
        Regex.Replace(diagnostic.Message, "`[^`]*`", "`...`"),
        @"[A-Za-z_]+(\[[^\]]*\])?\.[A-Za-z_.\[\]0-9]*[A-Za-z_\]]|[0-9.]+|[a-z]+_[a-z_]+", "#");
}
