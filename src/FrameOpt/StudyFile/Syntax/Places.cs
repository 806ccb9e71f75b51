namespace FrameOpt.StudyFile.Syntax;

/// <summary>Finds where a file gives something.</summary>
internal static class Places
{
    /// <summary>The value of a key by its path, wing.polar.rows.0 with the places of list items from 0; where there is no such key,
    /// the last one on the way to it.</summary>
    public static Node Of(Node root, string path)
    {
        var (place, at) = (root, root);
        foreach (var step in path.Split('.'))
        {
            switch (at)
            {
                case Node.Map map when map.Entries.FirstOrDefault(entry => entry.Key.Text == step) is { } entry:
                    (place, at) = (entry.Value is Node.Scalar ? entry.Value : entry.Key, entry.Value);
                    break;
                case Node.List list when int.TryParse(step, out var index) && index < list.Items.Count:
                    (place, at) = (list.Items[index], list.Items[index]);
                    break;
                default:
                    return place;
            }
        }

        return place;
    }
}
