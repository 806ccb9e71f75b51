namespace FrameOpt.Analysis;

/// <summary>Thins what is shown of a front: of designs closer than a resolution in every objective only the best ranked is shown.</summary>
public static class Thinning
{
    /// <summary>Which designs to show.</summary>
    /// <param name="designs">In rank order.</param>
    /// <param name="resolutions">One for each objective; 0 where no thinning is asked.</param>
    /// <returns>Indices, in rank order. With no resolution at all, every design.</returns>
    public static IReadOnlyList<int> Shown(IReadOnlyList<IReadOnlyList<double>> designs, IReadOnlyList<double> resolutions)
    {
        if (resolutions.All(resolution => resolution <= 0))
            return [.. Enumerable.Range(0, designs.Count)];
        var taken = new HashSet<string>();
        var shown = new List<int>();
        for (var i = 0; i < designs.Count; i++)
        {
            // Designs in one box of the given resolutions; an objective without one is told apart exactly.
            var box = string.Join('|', designs[i].Select((value, o) => resolutions[o] > 0
                ? Math.Floor(value / resolutions[o]).ToString("R", System.Globalization.CultureInfo.InvariantCulture)
                : value.ToString("R", System.Globalization.CultureInfo.InvariantCulture)));
            if (taken.Add(box))
                shown.Add(i);
        }

        return shown;
    }
}
