namespace FrameOpt.Numerics;

/// <summary>Independent pieces of work on several threads.</summary>
public static class InParallel
{
    /// <summary>One result for each of the numbers from 0. Each has its own place, so any number of threads gives the same.</summary>
    /// <param name="count">How many, 0 or more.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    /// <param name="work">Called once for each number, in no particular order.</param>
    public static T[] Select<T>(int count, int threads, Func<int, T> work)
    {
        var results = new T[count];
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => results[i] = work(i));
        return results;
    }
}
