using FrameOpt.Fit;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using FrameOpt.Uncertainty;

namespace FrameOpt.Running;

/// <summary>One customer of a line on the own machine, and how each geometry of the line does there.</summary>
/// <param name="Customer">Who; need not be one of the line's.</param>
/// <param name="Study">With the customer's machine, wing and pilot.</param>
/// <param name="Frames">Every geometry of the line, the best allowed one first, those not allowed last.</param>
public sealed record CustomerFit(ProductLineCustomer Customer, Study Study, IReadOnlyList<FittedFrame> Frames)
{
    /// <summary>The frame to use; null when none is allowed.</summary>
    public FittedFrame? Own => Frames.FirstOrDefault(frame => frame.IsAllowed);

    /// <summary>The second-best frame; null where the line has only one.</summary>
    public FittedFrame? Second => Frames.Where(frame => frame != Own).Cast<FittedFrame?>().FirstOrDefault();

    /// <summary>Tries every geometry of a line for a customer.</summary>
    /// <param name="line">With its geometries.</param>
    /// <param name="customer">Any pilot mass and outfit of the line.</param>
    public static CustomerFit Of(ProductLineResult line, ProductLineCustomer customer)
    {
        var study = line.Setting.Configurations[customer.Configuration].For(customer.PilotMassKilograms);
        var model = StudyProblem.Model(study);
        return new CustomerFit(customer, study, Ranked(line, study, geometry => model.Evaluate(geometry.On(study))));
    }

    /// <summary>What the readings of a hang check make of it.</summary>
    /// <param name="line">As before.</param>
    /// <param name="hung">The frame that hung.</param>
    /// <param name="reading">Of the two scales.</param>
    public ScalesOnCustomer Hung(ProductLineResult line, FittedFrame hung, ScaleReading reading)
    {
        var fit = HangCheckFit.Of(Study, hung.Design.Geometry, reading);
        var there = NoiseSample.Case(StudyProblem.Model(Study), fit.Causes.Where(cause => cause.Source is not null)
            .Select(cause => (cause.Source!, cause.After.Value)));
        // How this one frame was built says nothing of the others.
        return new ScalesOnCustomer(fit, hung, Ranked(line, Study, geometry => there.Model.Evaluate(
            geometry == hung.Geometry ? geometry.On(Study) + there.BuiltOff : geometry.On(Study))));
    }

    private static bool IsFor(ProductLineSetting setting, ProductLineGeometry geometry, Rotation rotation) =>
        setting.Fixed.FirstOrDefault(one => geometry.IsFixed && one.Name == geometry.Name)?.Turns is { } turns ? turns == rotation
            : setting.AllowBothRotations || geometry.Rotations.Contains(rotation);

    private static IReadOnlyList<FittedFrame> Ranked(
        ProductLineResult line, Study study, Func<ProductLineGeometry, DesignEvaluation> evaluate) =>
    [
        .. line.Geometries.Select(geometry => new FittedFrame(geometry, evaluate(geometry), study.Limits, line.Setting.CostResponse,
                IsFor(line.Setting, geometry, study.Machine.Propeller.Rotation)))
            .OrderBy(frame => frame.IsAllowed ? 0 : 1).ThenBy(frame => frame.Cost).ThenBy(frame => frame.Geometry.Candidate),
    ];
}

/// <summary>A geometry of a line on a customer's machine.</summary>
/// <param name="Geometry">The geometry.</param>
/// <param name="Design">Evaluated there.</param>
/// <param name="Limits">Of the customer.</param>
/// <param name="Response">That is the cost.</param>
/// <param name="IsForRotation">False for one that is made for engines that turn the other way.</param>
public sealed record FittedFrame(
    ProductLineGeometry Geometry, DesignEvaluation Design, IReadOnlyList<StudyLimit> Limits, StudyObjective Response, bool IsForRotation)
{
    /// <summary>The limits it breaks; none where it cannot fly.</summary>
    public IReadOnlyList<StudyLimit> Broken { get; } = Design.Failure is not null ? []
        : [.. Limits.Where(limit => !limit.Response.IsOverCases && !limit.IsMetBy(Design))];

    /// <summary>True when the customer may have it.</summary>
    public bool IsAllowed => IsForRotation && Design.Failure is null && Broken.Count == 0;

    /// <summary>Less is better; infinite where it cannot fly.</summary>
    public double Cost => Design.Failure is not null ? double.PositiveInfinity : Response.Oriented(Response.ValueOf(Design));
}

/// <summary>What two scales say of a customer under a frame of the line.</summary>
/// <param name="Fit">Where the centre of gravity is, and why.</param>
/// <param name="Hung">The frame that hung.</param>
/// <param name="Frames">Every geometry of the line on the machine as the scales make it likely, the best allowed one first.</param>
public sealed record ScalesOnCustomer(HangCheckFit Fit, FittedFrame Hung, IReadOnlyList<FittedFrame> Frames);
