namespace FrameOpt.Studies;

/// <summary>An evolutionary search a study may ask for.</summary>
public enum SearchMethod
{
    /// <summary>Non-dominated sorting with crowding, for two objectives, good enough for three.</summary>
    NsgaII,

    /// <summary>By reference directions, for three objectives and more.</summary>
    NsgaIII,
}
