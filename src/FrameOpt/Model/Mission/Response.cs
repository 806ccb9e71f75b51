using FrameOpt.Numerics;

namespace FrameOpt.Model.Mission;

/// <summary>One number the model gives for a design.</summary>
public abstract record Response
{
    private Response()
    {
    }

    /// <summary>A quantity of one phase, written <c>quantity[phase]</c>.</summary>
    /// <param name="Quantity">Which.</param>
    /// <param name="PhaseIndex">Of the mission, from 0.</param>
    /// <param name="PhaseName">The study's word for the phase.</param>
    public sealed record OfPhase(PhaseQuantity Quantity, int PhaseIndex, string PhaseName) : Response;

    /// <summary>A response of the whole mission.</summary>
    /// <param name="Quantity">Which.</param>
    public sealed record OfMission(MissionQuantity Quantity) : Response;

    /// <summary>A response over many cases of what may really be, as one number.</summary>
    /// <param name="Single">The response of one case.</param>
    /// <param name="Statistic">What is made of its values.</param>
    public sealed record OverCases(Response Single, CaseStatistic Statistic) : Response
    {
        /// <summary>True when the magnitude of the response counts.</summary>
        public bool Magnitude => Single.Entry.Sign == ResponseSign.Side;
    }

    /// <summary>Share of the cases in which every limit of the study is met.</summary>
    public sealed record LimitsMet : Response
    {
        /// <summary>As a study file writes it.</summary>
        public const string Words = "share of cases with every limit met";
    }

    /// <summary>True for what needs many cases, not one.</summary>
    public bool IsOverCases => this is OverCases or LimitsMet;

    /// <summary>The name as a study writes it.</summary>
    public string Name => this switch
    {
        OfPhase phase => $"{phase.Quantity.Name}[{phase.PhaseName}]",
        OfMission mission => mission.Quantity.Name,
        OverCases cases => cases.Statistic.Of(cases.Single.Name),
        LimitsMet => LimitsMet.Words,
        _ => throw new InvalidOperationException(),
    };

    /// <summary>Its values over a row of designs, in its unit.</summary>
    /// <param name="row">Prepared, without failure.</param>
    /// <param name="magnitude">True for magnitudes.</param>
    /// <param name="offsets">Lateral offsets in m.</param>
    /// <param name="values">As many as offsets.</param>
    /// <exception cref="InvalidOperationException">It is a response over cases.</exception>
    public void Fill(MissionRow row, bool magnitude, ReadOnlySpan<double> offsets, Span<double> values)
    {
        switch (this)
        {
            case OfPhase phase: phase.Quantity.Fill(row, phase.PhaseIndex, offsets, values); break;
            case OfMission whole: whole.Quantity.Fill(row, offsets, values); break;
            default: throw new InvalidOperationException();
        }

        if (magnitude)
            RowVectors.Magnitudes(values);
    }

    /// <summary>Its value for the one design that was prepared, in its unit.</summary>
    /// <param name="row">That design flies.</param>
    /// <param name="magnitude">True for its magnitude.</param>
    public double Of(MissionRow row, bool magnitude)
    {
        Span<double> value = stackalloc double[1];
        Fill(row, magnitude, [row.Geometry.OffsetMetres], value);
        return value[0];
    }

    /// <summary>The unit it is shown in, empty for a plain number.</summary>
    public string Unit => Entry.Unit;

    /// <summary>Its row of the catalogue.</summary>
    public ResponseEntry Entry => this switch
    {
        OfPhase phase => phase.Quantity,
        OfMission mission => mission.Quantity,
        OverCases cases => new CaseQuantity(cases),
        LimitsMet => CaseQuantity.LimitsMet,
        _ => throw new InvalidOperationException(),
    };
}
