namespace FrameOpt.Plans;

/// <summary>A kind of plan with its settings, for any factors.</summary>
public abstract record PlanRequest
{
    private PlanRequest()
    {
    }

    /// <summary>Builds the plan.</summary>
    /// <param name="factors">The names of the factors.</param>
    /// <exception cref="ArgumentException">There is no such plan for this number of factors or runs; the message says why.</exception>
    public abstract BuiltPlan Build(IReadOnlyList<string> factors);

    /// <summary>Builds the plan where runs can be chosen by what can be made, what is allowed and what was made already; kinds whose runs
    /// are fixed take the factors only.</summary>
    /// <param name="room">The factors, and what is known of them.</param>
    /// <exception cref="ArgumentException">There is no such plan; the message says why.</exception>
    public virtual BuiltPlan Build(PlanRoom room) => Build(room.Factors);

    /// <summary>Number of runs the plan has, without a search for the best ones where there is one.</summary>
    /// <param name="room">As for the plan.</param>
    /// <exception cref="ArgumentException">There is no such plan for this number of factors or runs; the message says why.</exception>
    public virtual int CountRuns(PlanRoom room) => Build(room.Factors).Plan.Runs.Count;

    /// <summary>Every combination of levels.</summary>
    /// <param name="Levels">Number of levels of each factor, at least 2.</param>
    public sealed record FullFactorial(int Levels) : PlanRequest
    {
        /// <inheritdoc/>
        public override BuiltPlan Build(IReadOnlyList<string> factors) => Levels == 2
            ? new BuiltPlan(Plans.FullFactorial.TwoLevel(factors), SurfaceModel.Interactions)
            : new BuiltPlan(Plans.FullFactorial.Build(factors, [.. factors.Select(_ => Levels)]), SurfaceModel.Quadratic);
    }

    /// <summary>A two-level fraction of given generators, such as D=ABC.</summary>
    /// <param name="Generators">One for each factor beyond the basic ones.</param>
    public sealed record FractionWithGenerators(IReadOnlyList<string> Generators) : PlanRequest
    {
        /// <inheritdoc/>
        public override BuiltPlan Build(IReadOnlyList<string> factors) => Fractional(FractionalFactorial.Build(factors, Generators));
    }

    /// <summary>The two-level fraction of minimum aberration in a limited number of runs.</summary>
    /// <param name="Runs">Largest number of runs.</param>
    public sealed record FractionWithMaxRuns(int Runs) : PlanRequest
    {
        /// <inheritdoc/>
        public override BuiltPlan Build(IReadOnlyList<string> factors) => Fractional(FractionalFactorial.WithMaxRuns(factors, Runs));
    }

    /// <summary>A Plackett-Burman plan.</summary>
    /// <param name="Runs">Number of runs, or null for the smallest that holds the factors.</param>
    public sealed record PlackettBurman(int? Runs) : PlanRequest
    {
        /// <inheritdoc/>
        public override BuiltPlan Build(IReadOnlyList<string> factors) => new(
            Runs is { } runs ? Plans.PlackettBurman.Build(factors, runs) : Plans.PlackettBurman.Build(factors), SurfaceModel.Linear);
    }

    /// <summary>A central composite plan on a full cube.</summary>
    /// <param name="Axial">Rule for the distance of the axial runs.</param>
    /// <param name="CentrePoints">Number of centre points.</param>
    public sealed record CentralComposite(AxialRule Axial, int CentrePoints) : PlanRequest
    {
        /// <inheritdoc/>
        public override BuiltPlan Build(IReadOnlyList<string> factors) => new(
            Plans.CentralComposite.Build(factors, Axial, new CentrePoints(CentrePoints, 0)), SurfaceModel.Quadratic);
    }

    /// <summary>A Box-Behnken plan.</summary>
    /// <param name="CentrePoints">Number of centre points.</param>
    public sealed record BoxBehnken(int CentrePoints) : PlanRequest
    {
        /// <inheritdoc/>
        public override BuiltPlan Build(IReadOnlyList<string> factors) =>
            new(Plans.BoxBehnken.Build(factors, CentrePoints), SurfaceModel.Quadratic);
    }

    /// <summary>A definitive screening plan.</summary>
    public sealed record DefinitiveScreening : PlanRequest
    {
        /// <inheritdoc/>
        public override BuiltPlan Build(IReadOnlyList<string> factors) =>
            new(Plans.DefinitiveScreening.Build(factors), SurfaceModel.LinearAndSquares);
    }

    /// <summary>A plan that fills the cube.</summary>
    /// <param name="Kind">How.</param>
    /// <param name="Runs">Number of runs.</param>
    /// <param name="Seed">The same seed gives the same Latin hypercube.</param>
    public sealed record Filling(FillingKind Kind, int Runs, ulong Seed) : PlanRequest
    {
        /// <inheritdoc/>
        public override BuiltPlan Build(IReadOnlyList<string> factors) => new(
            Kind switch
            {
                FillingKind.LatinHypercube => SpaceFilling.MaximinLatinHypercube(factors, Runs, Seed),
                FillingKind.Sobol => SpaceFilling.Sobol(factors, Runs),
                _ => SpaceFilling.Halton(factors, Runs),
            },
            new[] { SurfaceModel.Quadratic, SurfaceModel.Interactions }
                .FirstOrDefault(model => Runs > ModelTerms.Of(model, factors.Count).Count, SurfaceModel.Linear));
    }

    /// <summary>A D- or I-optimal plan.</summary>
    /// <param name="Criterion">The criterion to optimise.</param>
    /// <param name="Model">Linear, interactions or quadratic.</param>
    /// <param name="Runs">Number of runs to choose.</param>
    /// <param name="Seed">The same seed gives the same plan.</param>
    /// <param name="Levels">Evenly spaced levels of each factor; null for those that can be made.</param>
    public sealed record Optimal(OptimalCriterion Criterion, SurfaceModel Model, int Runs, ulong Seed, int? Levels) : PlanRequest
    {
        private const double MaxWork = 1e9;
        private const int MaxStarts = 50;

        /// <summary>How often the factors that are hard to change are set; null when none is.</summary>
        public int? WholePlots { get; init; }

        /// <inheritdoc/>
        public override BuiltPlan Build(IReadOnlyList<string> factors) => Build(new PlanRoom(factors));

        /// <inheritdoc/>
        public override BuiltPlan Build(PlanRoom room) => new(OptimalPlan.Build(Request(room)), Model);

        /// <inheritdoc/>
        public override int CountRuns(PlanRoom room)
        {
            var request = Request(room);
            OptimalPlan.Refuse(request);
            return request.Runs + request.Given.Count;
        }

        private OptimalRequest Request(PlanRoom room)
        {
            var terms = ModelTerms.Of(Model, room.Factors.Count);
            var most = Math.Floor(Math.Sqrt(MaxWork / room.Factors.Count) / terms.Count);
            if (Runs > most)
                throw new ArgumentException($"the search for {Runs} runs that tell {terms.Count} terms apart would take minutes; at most "
                    + $"{most} runs are searched for, and fewer are enough for a computed model");
            return new OptimalRequest
            {
                Factors = room.Factors,
                Model = new PlanModel(terms),
                Runs = Runs,
                Levels = Levels is null && room.Levels is { } own ? own
                    : [.. room.Factors.Select(_ => CodedLevels.EvenlySpaced(Levels ?? PlanRoom.UsualLevels))],
                Criterion = Criterion,
                Seed = Seed,
                Allowed = room.Allowed,
                Given = [.. room.Made.Select((coded, i) => new PlanRun(i + 1, PointKind.Given, 1, coded))],
                InNewBlock = room.Made.Count > 0,
                HardToChange = WholePlots is null ? [] : room.HardToChange,
                WholePlots = WholePlots ?? 0,
                Starts = (int)Math.Clamp(MaxWork / Work(room.Factors.Count, terms.Count), 2, MaxStarts),
            };
        }

        /// <summary>What one start takes, up to a factor: every change of a run inverts the information matrix again.</summary>
        private double Work(int factors, int terms) => (WholePlots is null ? 1 : (double)terms / 3) * Runs * Runs * terms * terms * factors;
    }

    /// <summary>Interactions are fitted only where the fraction does not confound them with each other (resolution V or more).</summary>
    private static BuiltPlan Fractional(FractionalPlan built) =>
        new(built.Plan, built.Fraction.Resolution is < 5 ? SurfaceModel.Linear : SurfaceModel.Interactions, built.Fraction);
}

/// <summary>A plan with the surface that can be fitted to it.</summary>
/// <param name="Plan">The runs.</param>
/// <param name="Model">The terms of the surface.</param>
/// <param name="Fraction">What a two-level fraction confounds; null for other plans.</param>
public sealed record BuiltPlan(Plan Plan, SurfaceModel Model, Fraction? Fraction = null);

/// <summary>Ways to fill a cube.</summary>
public enum FillingKind
{
    /// <summary>Every level of every factor once, the closest runs far apart.</summary>
    LatinHypercube,

    /// <summary>The Sobol sequence.</summary>
    Sobol,

    /// <summary>The Halton sequence.</summary>
    Halton,
}
