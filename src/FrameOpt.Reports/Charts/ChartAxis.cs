namespace FrameOpt.Reports;

/// <summary>An axis of a chart.</summary>
/// <param name="Title">With its unit.</param>
/// <param name="NumberFormat">Of its figures.</param>
/// <param name="Range">Its ends, or null to leave them to the program.</param>
internal sealed record ChartAxis(string Title, string NumberFormat, (double From, double To)? Range = null)
{
    /// <summary>An axis whose ends lie a little beyond the values, at round figures.</summary>
    public static ChartAxis Around(string title, string numberFormat, IEnumerable<double> values)
    {
        var finite = values.Where(double.IsFinite).ToList();
        if (finite.Count == 0 || finite.Max() == finite.Min())
            return new ChartAxis(title, numberFormat);
        var step = Math.Pow(10, Math.Floor(Math.Log10(finite.Max() - finite.Min())));
        step = (finite.Max() - finite.Min()) / step < 2 ? step / 5 : (finite.Max() - finite.Min()) / step < 5 ? step / 2 : step;
        double Round(double steps) => (double)((decimal)steps * (decimal)step);
        return new ChartAxis(title, numberFormat, (Round(Math.Floor(finite.Min() / step)), Round(Math.Ceiling(finite.Max() / step))));
    }
}
