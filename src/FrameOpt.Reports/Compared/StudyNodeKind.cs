namespace FrameOpt.Reports;

/// <summary>What a node of a study holds.</summary>
public enum StudyNodeKind
{
    /// <summary>One value.</summary>
    Value,

    /// <summary>Parts with names.</summary>
    Group,

    /// <summary>Rows with numbers.</summary>
    Table,
}
