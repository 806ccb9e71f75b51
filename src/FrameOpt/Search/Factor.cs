namespace FrameOpt.Search;

/// <summary>Something a search may choose, and the values it may take.</summary>
/// <param name="Name">As the study writes it.</param>
public abstract record Factor(string Name)
{
    /// <summary>All values the factor may take, or null when there are infinitely many.</summary>
    public abstract IReadOnlyList<double>? Values { get; }

    /// <summary>Values in order: neighbours are alike.</summary>
    /// <param name="Name">As the study writes it.</param>
    /// <param name="Levels">One or more, increasing.</param>
    public sealed record Stepped(string Name, IReadOnlyList<double> Levels) : Factor(Name)
    {
        /// <inheritdoc/>
        public override IReadOnlyList<double> Values => Levels;
    }

    /// <summary>Any value of an interval.</summary>
    /// <param name="Name">As the study writes it.</param>
    /// <param name="From">The least value allowed.</param>
    /// <param name="To">The greatest value allowed, above <paramref name="From"/>.</param>
    public sealed record Continuous(string Name, double From, double To) : Factor(Name)
    {
        /// <inheritdoc/>
        public override IReadOnlyList<double>? Values => null;
    }

    /// <summary>Values without order: one is as near to a second as to a third.</summary>
    /// <param name="Name">As the study writes it.</param>
    /// <param name="Options">One or more, all different.</param>
    public sealed record Choice(string Name, IReadOnlyList<double> Options) : Factor(Name)
    {
        /// <inheritdoc/>
        public override IReadOnlyList<double> Values => Options;
    }
}
