namespace FrameOpt.Search.Evolution;

/// <summary>Who survives and who has children: what evolutionary searches differ in.</summary>
internal interface ISelection
{
    /// <summary>Leaves at most <paramref name="keep"/> members, in the order they stood in.</summary>
    void SelectSurvivors(Population population, int keep);

    /// <summary>Draws a survivor to be a parent.</summary>
    int SelectParent(Population population);
}
