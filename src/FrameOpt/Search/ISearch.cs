namespace FrameOpt.Search;

/// <summary>A way of choosing which designs to evaluate.</summary>
public interface ISearch
{
    /// <summary>Evaluates designs batch by batch, lazily, in the same order for any number of threads.</summary>
    /// <param name="problem">What to search.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    IEnumerable<EvaluatedBatch> Run(Problem problem, int threads);
}
