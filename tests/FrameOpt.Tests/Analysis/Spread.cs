using CsCheck;

namespace FrameOpt.Tests.Analysis;

/// <summary>Numbers spread evenly: the usual generator prefers zeros and tiny numbers, of which few plans can tell ten terms
/// apart.</summary>
internal static class Spread
{
    public static Gen<double> Within(double size) => Gen.Int[-1_000_000, 1_000_000].Select(step => step * 1e-6 * size);
}
