using System.Globalization;
using FrameOpt.Model;

namespace FrameOpt.Tests.Model;

/// <summary>The three wind-tunnel propellers of References/README.md.</summary>
public sealed record PublishedPropeller(string File, double PitchOverDiameter)
{
    /// <summary>The propeller the built-in shape is fitted to.</summary>
    public static readonly PublishedPropeller Fitted = new("propeller-da4002-9x4.76-5038rpm.csv", 0.663);

    /// <summary>Same family, flat pitch.</summary>
    public static readonly PublishedPropeller FlatPitch = new("propeller-da4002-9x2.85-5036rpm.csv", 0.438);

    /// <summary>Another blade altogether.</summary>
    public static readonly PublishedPropeller Navy = new("propeller-nr640-5032rpm.csv", 0.692);

    /// <summary>All three, as test data.</summary>
    public static TheoryData<PublishedPropeller> All => [Fitted, FlatPitch, Navy];

    /// <summary>Measured rows; the first is the static test.</summary>
    public IReadOnlyList<PropellerRow> Rows { get; } = System.IO.File
        .ReadLines(Path.Combine(AppContext.BaseDirectory, "References", File))
        .Skip(1)
        .Select(line => Array.ConvertAll(line.Split(','), text => double.Parse(text, CultureInfo.InvariantCulture)))
        .Select(cells => new PropellerRow(cells[0], cells[1], cells[2]))
        .ToList();

    /// <summary>J at zero thrust on the straight line through the last two rows, between them or beyond.</summary>
    public double ZeroThrustAdvanceRatio
    {
        get
        {
            var (a, b) = (Rows[^2], Rows[^1]);
            return a.AdvanceRatio - a.ThrustCoefficient * (b.AdvanceRatio - a.AdvanceRatio) / (b.ThrustCoefficient - a.ThrustCoefficient);
        }
    }

    /// <summary>The built-in shape with this propeller's static figures and zero-thrust J.</summary>
    public BenchPropeller Rescaled => new(Rows[0].ThrustCoefficient, Rows[0].PowerCoefficient, ZeroThrustAdvanceRatio);
}
