namespace FrameOpt.Search;

/// <summary>Finds the exact front of designs that arrive in batches, all objectives to be minimised.</summary>
/// <remarks>
/// Most designs are recognised as dominated on arrival and not kept; the rest are held until there are so many that their front is worth
/// taking. Memory is that of the front and of some 260,000 designs, however many are added. The front is a property of the designs:
/// neither the batches nor the threads change it. Designs equal in all objectives are all kept. Not to be called from several
/// threads at once; it uses its own.
/// </remarks>
public sealed class FrontBuilder
{
    private const int SlicePerThread = 1 << 15;
    private const int HeldBeforeFront = 1 << 18;

    private readonly int _objectives;
    private readonly int _threads;
    private readonly PointColumns _held;
    private readonly DominanceSieve _sieve;
    private byte[] _usable = [];
    private byte[] _allUsable = [];
    private int[] _positions = [];
    private int _heldWhenSieved;
    private int _heldWhenFront;

    /// <summary>Begins with no designs.</summary>
    /// <param name="objectives">How many objectives, 2 to 5.</param>
    /// <param name="threads">How many threads share the work, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Either number is out of range.</exception>
    public FrontBuilder(int objectives, int threads)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(objectives, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(objectives, RankRow.RowRanks.Length + 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        _objectives = objectives;
        _threads = threads;
        _held = new PointColumns(objectives);
        _sieve = new DominanceSieve(objectives);
    }

    /// <summary>Adds a batch of designs with the ids firstId, firstId + 1, ...</summary>
    /// <param name="columns">One array for each objective; the first <paramref name="count"/> values count.</param>
    /// <param name="usable">For each design, 0 to leave it out (infeasible or failed).</param>
    /// <param name="count">How many designs.</param>
    /// <param name="firstId">The first design's id, not negative. An id must be given to one design only.</param>
    /// <exception cref="ArgumentException">The shapes do not agree, or an objective of a usable design is not a number.</exception>
    public void Add(double[][] columns, ReadOnlySpan<byte> usable, int count, long firstId)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfNegative(firstId);
        if (columns.Length != _objectives || Array.Exists(columns, column => column.Length < count))
            throw new ArgumentException($"expected {_objectives} columns of {count} values", nameof(columns));
        if (usable.Length < count)
            throw new ArgumentException($"expected {count} flags", nameof(usable));
        Grow(ref _usable, count);
        usable[..count].CopyTo(_usable);
        var slice = SlicePerThread * _threads;
        for (var start = 0; start < count; start += slice)
        {
            var kept = Survivors(columns, _usable, start, Math.Min(count, start + slice));
            _held.Append(columns, kept, firstId);
            if (_held.Count - _heldWhenSieved > Math.Max(_sieve.Corners / 4, _heldWhenSieved / 2))
                Tighten();
            if (_held.Count > Math.Max(HeldBeforeFront, 2 * _heldWhenFront))
                KeepFront();
        }
    }

    /// <summary>The front of all designs added so far. More may be added afterwards.</summary>
    public FrontPoints Result()
    {
        KeepFront();
        return _held.ById();
    }

    /// <summary>Makes the sieve anew from what is held, and passes what is held through it.</summary>
    private void Tighten()
    {
        _sieve.Rebuild(_held.Columns, _held.Count);
        Grow(ref _allUsable, _held.Count);
        Array.Fill(_allUsable, (byte)1);
        _held.Keep(Survivors(_held.Columns, _allUsable, 0, _held.Count));
        _heldWhenSieved = _held.Count;
    }

    private void KeepFront()
    {
        Grow(ref _positions, _held.Count);
        using var ranked = new RankedPoints(_held.Columns, _held.Count, _threads);
        var front = FrontDivision.Keep(ranked.Rows, _objectives - 1, _threads);
        var kept = ranked.PositionsOf(ranked.Rows.Span[..front], _positions);
        _held.Keep(_positions.AsSpan(0, kept));
        _heldWhenFront = _heldWhenSieved = _held.Count;
    }

    private ReadOnlySpan<int> Survivors(double[][] columns, byte[] usable, int start, int end)
    {
        Grow(ref _positions, end - start);
        return _positions.AsSpan(0, _sieve.Survivors(columns, usable, start, end, _positions, _threads));
    }

    private static void Grow<T>(ref T[] array, int length)
    {
        if (array.Length < length)
            array = new T[length];
    }
}
