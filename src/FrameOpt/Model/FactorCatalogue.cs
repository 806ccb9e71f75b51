namespace FrameOpt.Model;

/// <summary>The geometry inputs that a study may sweep. Each is one row, in <see cref="GeometryInput"/>.</summary>
public static class FactorCatalogue
{
    private static readonly GeometryInput[] slowestFirst = [.. GeometryInput.Rows.OrderBy(input => input.Stage)];

    /// <summary>All of them, in the order of a study; the required ones first.</summary>
    public static IReadOnlyList<GeometryInput> All => GeometryInput.Rows;

    /// <summary>All of them, those first that change most of the model's work.</summary>
    public static IReadOnlyList<GeometryInput> SlowestFirst => slowestFirst;

    /// <summary>The input of that name, or null.</summary>
    public static GeometryInput? Find(string name) => All.FirstOrDefault(input => input.Name == name);

    /// <summary>The first stage of the model at which two geometries differ; <see cref="EvaluationStage.Offset"/> when none before it
    /// does.</summary>
    internal static EvaluationStage FirstDifference(in FrameGeometry a, in FrameGeometry b)
    {
        foreach (var input in slowestFirst)
        {
            if (input.Of(a) != input.Of(b))
                return input.Stage;
        }

        return EvaluationStage.Offset;
    }
}

/// <summary>The stages of the model's work on one design, in their order: a change in one has the later ones done again.</summary>
public enum EvaluationStage
{
    /// <summary>The direction of the thrust, and with it the thrust needed, the propeller's speed and torque.</summary>
    OperatingPoint,

    /// <summary>Pitch, riser load and moments on the body.</summary>
    Frame,

    /// <summary>The same; on its own because a study sweeps the height more finely than the rest of the frame.</summary>
    Height,

    /// <summary>What the risers hold.</summary>
    Risers,

    /// <summary>Nothing but linear functions.</summary>
    Offset,
}

/// <summary>Length or angle: what the values of an input may be.</summary>
/// <param name="SiUnit">m or rad.</param>
/// <param name="LargestSi">Largest value either way.</param>
/// <param name="LargestText">The same, for messages.</param>
/// <param name="LikelyStepSi">A likely step, for messages.</param>
public sealed record InputKind(string SiUnit, double LargestSi, string LargestText, double LikelyStepSi)
{
    /// <summary>Metres.</summary>
    public static readonly InputKind Length = new("m", 3, "3 m", 0.005);

    /// <summary>Radians.</summary>
    public static readonly InputKind Angle = new("rad", Math.PI / 4, "45 deg", Math.PI / 360);
}

/// <summary>How a value reads without its sign; {} stands for its magnitude.</summary>
/// <param name="Positive">Above 0, and at 0 unless that has words of its own.</param>
/// <param name="Negative">Below 0.</param>
/// <param name="Zero">At 0, or null.</param>
public sealed record SignWords(string Positive, string Negative, string? Zero = null)
{
    /// <summary>The words of a value.</summary>
    /// <param name="value">Its sign chooses.</param>
    /// <param name="magnitude">As text with its unit.</param>
    public string Text(double value, string magnitude) =>
        (value < 0 ? Negative : value == 0 && Zero is not null ? Zero : Positive).Replace("{}", magnitude);
}
