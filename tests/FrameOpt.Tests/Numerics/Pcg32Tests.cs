using FrameOpt.Numerics;

namespace FrameOpt.Tests.Numerics;

public class Pcg32Tests
{
    // M. E. O'Neill, pcg32-demo of the PCG library, seed 42, sequence 54, round 1 (from memory).
    [Fact]
    public void First_numbers_are_the_published_ones()
    {
        var random = new Pcg32(42, 54);
        Assert.Equal(
            [0xa15c02b7u, 0x7b47f409u, 0xba1d3330u, 0x83d2f293u, 0xbfa4784bu, 0xcbed606eu],
                Enumerable.Range(0, 6).Select(_ => random.NextUInt32()));
    }

    [Fact]
    public void Numbers_below_a_bound_and_fractions_are_even()
    {
        var random = new Pcg32(7);
        var counts = new int[6];
        var sum = 0.0;
        for (var i = 0; i < 60_000; i++)
        {
            counts[random.Next(6)]++;
            sum += random.NextDouble();
        }

        Assert.All(counts, count => Check.Close(10_000, count, absolute: 500, because: "five standard deviations of 91 each"));
        Check.Close(0.5, sum / 60_000, absolute: 0.006, because: "five standard deviations of 0.0012 each");
    }

    [Fact]
    public void Shuffled_items_are_the_same_items() =>
        Assert.Equal(Enumerable.Range(0, 50), new Pcg32(3).Shuffled([.. Enumerable.Range(0, 50)]).Order());
}
