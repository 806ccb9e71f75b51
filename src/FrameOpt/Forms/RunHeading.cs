namespace FrameOpt.Forms;

/// <summary>The header of a column of a table of runs.</summary>
/// <param name="Text">As the file has it.</param>
/// <param name="Name">Without the unit.</param>
/// <param name="Unit">May be empty.</param>
/// <param name="Column">From 0.</param>
public sealed record RunHeading(string Text, string Name, string Unit, int Column)
{
    /// <summary>Before the name of a response: the column with what a study's model says of it.</summary>
    public const string ModelPrefix = "model ";

    /// <summary>The number of the run.</summary>
    public const string Run = "run";

    /// <summary>The number of the block.</summary>
    public const string Block = "block";

    /// <summary>The number of the whole plot: runs between which the factors that are hard to change stay as they are.</summary>
    public const string WholePlot = "whole plot";

    /// <summary>The kind of run.</summary>
    public const string Kind = "kind";

    /// <summary>The order in which runs are made.</summary>
    public const string Order = "order";

    /// <summary>True for what a plan writes beside factors and responses.</summary>
    public bool IsOfPlan => Name.StartsWith(ModelPrefix, StringComparison.OrdinalIgnoreCase)
        || Array.Exists([Run, Block, WholePlot, Kind, Order], word => word.Equals(Name, StringComparison.OrdinalIgnoreCase));

    /// <summary>A unit stands in brackets after a blank: effort[cruise] has none.</summary>
    internal static RunHeading Of(string text, int column) =>
        text.EndsWith(']') && text.LastIndexOf(" [", StringComparison.Ordinal) is > 0 and var at
            ? new RunHeading(text, text[..at].Trim(), text[(at + 2)..^1].Trim(), column) : new RunHeading(text, text, "", column);
}
