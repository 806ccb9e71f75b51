using System.Text;

namespace FrameOpt.Tests.Architecture;

/// <summary>Namespaces as nodes, a parent and its sub-namespaces each their own, with one use as the example of each edge.</summary>
internal sealed class NamespaceGraph(IEnumerable<string> nodes, IEnumerable<TypeUse> uses)
{
    private readonly string[] nodes = [.. nodes];

    private readonly ILookup<string, TypeUse> edges = uses.Where(use => use.User.Namespace != use.Used.Namespace)
        .DistinctBy(use => (use.User.Namespace, use.Used.Namespace)).OrderBy(use => use.Used.Namespace, StringComparer.Ordinal)
        .ToLookup(use => use.User.Namespace!);

    /// <summary>Sets of namespaces each of which leads to all others of its set; a namespace in no cycle is in none.</summary>
    public IReadOnlyList<string[]> Cycles()
    {
        var reach = nodes.ToDictionary(node => node, Reached);
        return [.. nodes.Where(node => reach[node].Contains(node))
            .GroupBy(node => string.Join(' ', nodes.Where(other => reach[node].Contains(other) && reach[other].Contains(node))))
            .Select(group => group.ToArray())];
    }

    /// <summary>The table: each namespace and the namespaces it uses.</summary>
    public string Table() => string.Join('\n', nodes.Select(node =>
        $"{node} -> {string.Join(", ", edges[node].Select(use => use.Used.Namespace))}"));

    /// <summary>Each cycle with all edges inside it, one example an edge.</summary>
    public string Describe(IEnumerable<string[]> cycles)
    {
        var text = new StringBuilder();
        foreach (var cycle in cycles)
        {
            text.AppendLine($"{cycle.Length} namespaces use each other: {string.Join(", ", cycle)}");
            foreach (var use in cycle.SelectMany(node => edges[node]).Where(use => cycle.Contains(use.Used.Namespace)))
                text.AppendLine($"  {use.User.Namespace} -> {use.Used.Namespace}: {use}");
        }

        return text.ToString();
    }

    private HashSet<string> Reached(string from)
    {
        var reached = new HashSet<string>();
        var open = new Stack<string>([from]);
        while (open.TryPop(out var node))
            foreach (var next in edges[node].Select(use => use.Used.Namespace!).Where(reached.Add))
                open.Push(next);
        return reached;
    }
}
