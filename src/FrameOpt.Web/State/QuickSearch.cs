using System.Diagnostics;
using FrameOpt.Model.Mission;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Web.State;

/// <summary>The search of the study that is open, in slices short enough that the page never stops.</summary>
/// <param name="session">The study.</param>
/// <param name="device">Lets the page work in between.</param>
public sealed class QuickSearch(Session session, Device device)
{
    private const int SliceMilliseconds = 20;

    /// <summary>Larger searches wait until they are asked for.</summary>
    private const long MostUnasked = 200_000;

    private CancellationTokenSource? running;
    private MissionModel? model;
    private int edition = -1;
    private bool isReweighed;
    private (IReadOnlyList<FrontDesign>? Front, double[] Weights, IReadOnlyList<FrontDesign> Order) ranked = (null, [], []);

    /// <summary>Something changed: draw again.</summary>
    public event Action? Changed;

    /// <summary>The front in rank order by the study's weights; empty when nothing is feasible.</summary>
    public IReadOnlyList<FrontDesign> Front { get; private set; } = [];

    /// <summary>The study that the front belongs to; null before the first search ended.</summary>
    public Study? Study { get; private set; }

    /// <summary>Share done, 0 to 1.</summary>
    public double Share { get; private set; }

    /// <summary>True while it searches.</summary>
    public bool IsRunning => running is not null;

    /// <summary>True when the front is that of the text as it stands.</summary>
    public bool IsCurrent => edition == session.Edition && Study is not null && !IsRunning;

    /// <summary>How long the last search took, ms.</summary>
    public double Milliseconds { get; private set; }

    /// <summary>Designs looked at.</summary>
    public long Evaluated { get; private set; }

    /// <summary>A design of the front in full.</summary>
    public DesignEvaluation? Evaluate(FrontDesign design) => model?.Evaluate(design.Geometry);

    /// <summary>Writes other weights into the study. The front is the same for any, so nothing is searched again.</summary>
    /// <param name="text">The study with the weights.</param>
    public void Reweigh(string text)
    {
        isReweighed = IsCurrent;
        session.Write(text);
        isReweighed = false;
    }

    /// <summary>Searches unless the front is already that of the text, or the search is long and was not asked for.</summary>
    /// <param name="isAsked">True when the user asked.</param>
    public async Task Start(bool isAsked)
    {
        if (session.Study is not { } study || edition == session.Edition && !isAsked)
            return;
        if (isReweighed)
        {
            (Study, edition) = (study, session.Edition);
            Front = RankedBy(study.Ranking.Weights);
            Changed?.Invoke();
            return;
        }

        var planned = study.GridSize ?? (study.Search as SearchSetting.Evolutionary)?.Stop.Evaluations ?? long.MaxValue;
        if (!isAsked && planned > MostUnasked)
            return;
        Stop();
        var stop = running = new CancellationTokenSource();
        edition = session.Edition;
        await device.Pause();
        var clock = Stopwatch.StartNew();
        var search = new SearchRun(study, StudyProblem.Model(study), 1);
        var slice = Stopwatch.StartNew();
        foreach (var _ in search.Batches())
        {
            if (slice.ElapsedMilliseconds < SliceMilliseconds)
                continue;
            Share = search.Counts.Evaluated / (double)Math.Max(1, search.Planned);
            Changed?.Invoke();
            await device.Pause();
            if (stop.IsCancellationRequested)
                return;
            slice.Restart();
        }

        (Front, Study, model) = (search.RankedFront(), study, search.Mission);
        (Milliseconds, Evaluated, running) = (clock.Elapsed.TotalMilliseconds, search.Counts.Evaluated, null);
        Changed?.Invoke();
    }

    /// <summary>Stops it; the last front stays.</summary>
    public void Stop()
    {
        if (running is null)
            return;
        running.Cancel();
        running = null;
        edition = -1;
        Changed?.Invoke();
    }

    /// <summary>The front in another order.</summary>
    /// <param name="weights">One for each objective.</param>
    public IReadOnlyList<FrontDesign> RankedBy(IReadOnlyList<double> weights)
    {
        if (Study is not { } study || Front.Count == 0 || weights.All(weight => weight == 0))
            return Front;
        if (ranked.Front == Front && ranked.Weights.SequenceEqual(weights))
            return ranked.Order;
        double[][] objectives = [.. Front.Select(design =>
            design.Objectives.Select((value, o) => study.Objectives[o].Oriented(value)).ToArray())];
        ranked = (Front, [.. weights], [.. (study.Ranking with { Weights = weights }).Rank(objectives)
            .Select(place => Front[place.Index] with
            {
                Rank = place.Rank,
                Score = place.Score,
            })]);
        return ranked.Order;
    }
}
