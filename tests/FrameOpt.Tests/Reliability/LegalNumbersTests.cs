using CsCheck;
using FrameOpt.Model.Mission;
using Xunit.Abstractions;

namespace FrameOpt.Tests.Reliability;

/// <summary>Laws of the model over all that a study file may hold.</summary>
public class LegalNumbersTests(ITestOutputHelper output)
{
    private int flown, tried;

    [Fact]
    public void Every_response_is_finite_or_documented_as_unbounded_or_the_design_says_why_it_cannot_fly() => Try(legal =>
    {
        var design = legal.Model.Evaluate(legal.Geometry);
        Sound.Check(design, legal.Model.References);
        return design.Failure is null;
    });

    // Law: a force that is twice as large everywhere, with its arms as they were, turns nothing (Scaled).
    [Fact]
    public void Everything_twice_as_heavy_turns_nothing() => Try(legal => IsSame(legal, Scaled.Heavier(legal, 2), force: 2, length: 1));

    // Law: the same forces on arms twice as long, held by lines twice as long, turn nothing (Scaled).
    [Fact]
    public void Everything_twice_as_long_turns_nothing() => Try(legal => IsSame(legal, Scaled.Longer(legal, 2), force: 1, length: 2));

    // Law: what is seen in a mirror flies as in a mirror, to the last bit.
    [Fact]
    public void Any_machine_in_a_mirror_flies_as_in_a_mirror() => Try(legal =>
    {
        var mirrored = Scaled.Mirrored(legal);
        var (here, there) = (legal.Model.Evaluate(legal.Geometry), mirrored.Model.Evaluate(mirrored.Geometry));
        Assert.Equal(here.Failure?.Cause, there.Failure?.Cause);
        foreach (var (one, other) in here.Phases.Zip(there.Phases))
        {
            foreach (var quantity in ResponseCatalogue.OfPhases)
            {
                var seen = quantity == PhaseQuantity.LoadRight ? one[PhaseQuantity.LoadLeft]
                    : quantity == PhaseQuantity.LoadLeft ? one[PhaseQuantity.LoadRight]
                    : quantity.Sign == ResponseSign.Side && double.IsFinite(one[quantity]) ? -one[quantity] : one[quantity];
                Assert.True(seen == other[quantity] || seen.Equals(other[quantity]), $"{quantity}: {seen:R}, {other[quantity]:R}");
            }
        }

        return here.Failure is null;
    });

    /// <summary>Both fly or neither; then every response of the second is that of the first times what its unit grows by.</summary>
    private static bool IsSame(LegalCase first, LegalCase second, double force, double length)
    {
        var (one, two) = (first.Model.Evaluate(first.Geometry), second.Model.Evaluate(second.Geometry));
        Assert.Equal(one.Failure?.Cause, two.Failure?.Cause);
        if (one.Failure is not null)
            return false;
        double Grows(ResponseEntry entry) => entry.Unit switch
        {
            "N" => force,
            "N·m" => force * length,
            "mm" => length,
            "rpm" => 1 / length,
            _ => 1,
        };
        foreach (var (before, after) in one.Phases.Zip(two.Phases))
        {
            foreach (var quantity in ResponseCatalogue.OfPhases)
                Close(Grows(quantity) * before[quantity], after[quantity], $"{quantity} in {before.Phase.Name}");
        }

        foreach (var quantity in ResponseCatalogue.OfMissions)
            Close(Grows(quantity) * one[quantity], two[quantity], quantity.Name);
        return true;
    }

    /// <summary>Twice a number is exact, so the same arithmetic gives the same bits; only sums in squares may round.</summary>
    private static void Close(double expected, double actual, string what)
    {
        var isSame = expected.Equals(actual) || Math.Abs(expected - actual) <= 1e-9 * Math.Max(1, Math.Abs(expected));
        Assert.True(isSame, $"{what}: {expected:R} expected, {actual:R} found");
    }

    private void Try(Func<LegalCase, bool> flies)
    {
        LegalCase.Any.Sample(legal =>
        {
            Interlocked.Increment(ref tried);
            if (flies(legal))
                Interlocked.Increment(ref flown);
        }, iter: Cases.OfNumbers, print: legal => legal.ToString());
        output.WriteLine($"{tried} cases, {flown} fly");
        Assert.True(flown > tried / 100, $"only {flown} of {tried} designs fly");
    }
}
