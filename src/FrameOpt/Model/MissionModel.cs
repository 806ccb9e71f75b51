namespace FrameOpt.Model;

/// <summary>The model over a whole mission.</summary>
public sealed class MissionModel
{
    /// <summary>Everything the model says of one design.</summary>
    public DesignEvaluation Evaluate(FrameGeometry geometry) => throw new NotImplementedException();
}
