using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Studies;

/// <summary>A study as understood: everything in SI, every default made explicit.</summary>
/// <param name="Title">One line.</param>
/// <param name="Question">What it should answer; empty when not given.</param>
/// <param name="Machine">Frame, engine, propeller, pilot.</param>
/// <param name="Wing">The wing.</param>
/// <param name="Mission">Phases in the study's order, a power-off one among them.</param>
/// <param name="Factors">The four design factors first, then any further ones.</param>
/// <param name="Objectives">Two to five.</param>
/// <param name="Limits">Any number.</param>
/// <param name="Ranking">How the front is ordered.</param>
/// <param name="Baseline">The geometry to compare with, or null.</param>
/// <param name="Strength">For hang-point load and arm moment, or null when not asked.</param>
/// <param name="Band">For the balanced band.</param>
/// <param name="Assumptions">Every default taken, with its source.</param>
/// <param name="Warnings">What looks odd but is allowed, in words with line numbers.</param>
/// <param name="Hash">SHA-256 of the study file's bytes, lower-case hexadecimal.</param>
public sealed record Study(
    string Title,
    string Question,
    Machine Machine,
    Wing Wing,
    IReadOnlyList<Phase> Mission,
    IReadOnlyList<StudyFactor> Factors,
    IReadOnlyList<StudyObjective> Objectives,
    IReadOnlyList<StudyLimit> Limits,
    RankingSetting Ranking,
    FrameGeometry? Baseline,
    StrengthSetting? Strength,
    BandSetting Band,
    IReadOnlyList<Assumption> Assumptions,
    IReadOnlyList<string> Warnings,
    string Hash)
{
    /// <summary>A plan to find out which factors matter, or null.</summary>
    public PlanSetting? Plan { get; init; }

    /// <summary>What is uncertain, and how much.</summary>
    public NoiseSetting Noise { get; init; } = NoiseSetting.Usual;

    /// <summary>The holes that decide spacing and lateral offset, or null where these are factors of their own.</summary>
    public HolePattern? Holes { get; init; }

    /// <summary>Where figures come from, as far as the study says.</summary>
    public IReadOnlyList<FigureOrigin> Origins { get; init; } = [];

    /// <summary>Why figures are as they are, and where they are from, as far as the study says.</summary>
    public IReadOnlyList<FigureReason> Reasons { get; init; } = [];

    /// <summary>The product line asked for, or null.</summary>
    public ProductLineSetting? Line { get; init; }

    /// <summary>What was decided on before, or null.</summary>
    public Decision? Decision { get; init; }

    /// <summary>Stands between the names of variants that were combined.</summary>
    public const string VariantSeparator = " + ";

    /// <summary>Name of the variant this is, or of those combined in order; empty for the file as it stands.</summary>
    public string Variant { get; init; } = "";

    /// <summary>Names of all variants of the file.</summary>
    public IReadOnlyList<string> Variants { get; init; } = [];

    /// <summary>What looks odd in a variant of the file and not in the file without it, each with the name of the variant.</summary>
    public IReadOnlyList<string> VariantWarnings { get; init; } = [];

    /// <summary>The unit in which lengths without one of their own are shown: that of the hang-point spacing.</summary>
    public DisplayUnit LengthUnit => Factor(GeometryInput.HangPointSpacing).Unit;

    /// <summary>What a builder may get wrong: every factor, and what compares the two sides, which every frame has: a hang point and a
    /// strap on each.</summary>
    public IReadOnlyList<StudyFactor> BuildDimensions =>
    [
        .. Factors,
        .. FactorCatalogue.All.Where(input => input.ChangeWords is not null && Factors.All(factor => factor.Input != input))
            .Select(input => new StudyFactor(input, [input.AsBuilt(Machine)], LengthUnit)),
    ];

    /// <summary>The title, with the variant's name after it.</summary>
    public string FullTitle => Variant.Length > 0 ? $"{Title} - {Variant}" : Title;

    /// <summary>How the designs are chosen.</summary>
    public SearchSetting Search { get; init; } = new SearchSetting.Exhaustive();

    /// <summary>Other files the study reads, with the hashes of their contents.</summary>
    public IReadOnlyList<StudyInputFile> Files { get; init; } = [];

    /// <summary>True when every factor is fixed: there is one frame and nothing to choose.</summary>
    public bool IsOneFrame => Factors.All(factor => !factor.IsSwept);

    /// <summary>The study of one frame alone: every factor fixed, no plan and no product line.</summary>
    /// <param name="frame">The inputs of the frame: every factor of the study, and any other that was set.</param>
    public Study ForOneFrame(IEnumerable<StudyFactor> frame) => this with
    {
        Factors = [.. frame.OrderBy(factor => factor.Input.Index).Select(factor => factor with { IsContinuous = false })],
        Search = new SearchSetting.Exhaustive(),
        Holes = null,
        Plan = null,
        Line = null,
    };

    /// <summary>The factors whose levels can be combined freely: all but those that holes decide together.</summary>
    public IReadOnlyList<StudyFactor> FreeFactors =>
        Holes is null ? Factors : [.. Factors.Where(factor => !HolePattern.Decides(factor.Input))];

    /// <summary>Number of designs of the grid of all levels; null when a factor is continuous or there are more than 2⁶³.</summary>
    public long? GridSize => FreeFactors.Any(factor => factor.IsContinuous) || DesignCount(Factors, Holes) >= long.MaxValue ? null
        : FreeFactors.Aggregate((long)(Holes?.Pairs ?? 1), (product, factor) => product * factor.LevelsSi.Count);

    /// <summary>Index of the settled phase of most weight.</summary>
    public int HeaviestSettledPhase => Mission.Index().Where(phase => phase.Item.IsSettled).MaxBy(phase => phase.Item.Weight).Index;

    /// <summary>The objectives and limits that need many cases.</summary>
    public IReadOnlyList<Response> ResponsesOverCases => [.. Objectives.Select(objective => objective.Response)
        .Concat(Limits.Select(limit => limit.Response)).Where(response => response.IsOverCases).Distinct()];

    /// <summary>The limits that one evaluation of a design can tell, those over cases aside.</summary>
    public IReadOnlyList<StudyLimit> LimitsOfOneCase => [.. Limits.Where(limit => !limit.Response.IsOverCases)];

    /// <summary>How many designs some factors make; the two ends of a continuous one count.</summary>
    internal static double DesignCount(IEnumerable<StudyFactor> factors, HolePattern? holes) => factors
        .Where(factor => holes is null || !HolePattern.Decides(factor.Input))
        .Aggregate((double)(holes?.Pairs ?? 1), (product, factor) => product * factor.LevelsSi.Count);

    /// <summary>The factor that is a geometry input.</summary>
    /// <exception cref="InvalidOperationException">The study has no such factor.</exception>
    public StudyFactor Factor(GeometryInput input) => Factors.First(factor => factor.Input == input);
}

/// <summary>An assumption: a value the study did not state.</summary>
/// <param name="What">In words.</param>
/// <param name="Value">With its unit.</param>
/// <param name="Source">A published source, or the word assumption with its range.</param>
public sealed record Assumption(string What, string Value, string Source);

/// <summary>A file beside the study that it reads.</summary>
/// <param name="Name">As the study writes it.</param>
/// <param name="Hash">SHA-256 of its bytes, lower-case hexadecimal.</param>
public sealed record StudyInputFile(string Name, string Hash);

/// <summary>The band of propeller speed in which a design is called balanced.</summary>
/// <param name="PhaseIndex">Index of the phase whose airspeed is used.</param>
/// <param name="WithinNewtonMetres">Largest residual torque called balanced.</param>
public sealed record BandSetting(int PhaseIndex, double WithinNewtonMetres);

/// <summary>Load case of the hang-point load and arm moment. Figures only: strength is for certified tests.</summary>
/// <param name="LimitLoadFactor">Multiple of the steady load.</param>
/// <param name="OverhangMetres">From the frame to the hang point.</param>
public sealed record StrengthSetting(double LimitLoadFactor, double OverhangMetres);

/// <summary>What was decided on, by whom and why, as the study records it.</summary>
/// <param name="Design">The design that was chosen; null where geometries of a line were.</param>
/// <param name="Geometries">The names of the geometries of the line that were chosen; none where a design was.</param>
/// <param name="Date">As typed.</param>
/// <param name="By">Who decided.</param>
/// <param name="Reason">Why; may be empty.</param>
/// <param name="Rejected">What was considered and not taken, with why, as typed.</param>
public sealed record Decision(
    FrameGeometry? Design, IReadOnlyList<string> Geometries, string Date, string By, string Reason, IReadOnlyList<string> Rejected);
