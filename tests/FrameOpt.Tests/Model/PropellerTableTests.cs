using FrameOpt.Model;

namespace FrameOpt.Tests.Model;

public class PropellerTableTests
{
    private static readonly PropellerRow[] rows = [new(0.1, 0.10, 0.05), new(0.2, 0.08, 0.06), new(0.6, 0.00, 0.02)];

    private static readonly PropellerTable table = new(rows);

    [Theory]
    [InlineData(0.15, 0.09, 0.055)]
    [InlineData(0.3, 0.06, 0.05)]
    [InlineData(0.5, 0.02, 0.03)]
    public void Values_between_rows_lie_on_the_straight_line(double j, double ct, double cp)
    {
        Check.Close(ct, table.ThrustCoefficient(j), absolute: 1e-15, because: "worked by hand, arithmetic only");
        Check.Close(cp, table.PowerCoefficient(j), absolute: 1e-15, because: "worked by hand, arithmetic only");
    }

    [Fact]
    public void Rows_are_given_back_as_they_are()
    {
        foreach (var row in rows)
        {
            Check.Close(row.ThrustCoefficient, table.ThrustCoefficient(row.AdvanceRatio), absolute: 1e-15, because: "arithmetic only");
            Check.Close(row.PowerCoefficient, table.PowerCoefficient(row.AdvanceRatio), absolute: 1e-15, because: "arithmetic only");
        }
    }

    [Theory]
    [InlineData(0.0999)]
    [InlineData(0.6001)]
    [InlineData(double.NaN)]
    public void Outside_the_rows_there_is_no_value(double j)
    {
        Assert.Equal((0.1, 0.6), (table.SmallestAdvanceRatio, table.LargestAdvanceRatio));
        Assert.Throws<ArgumentOutOfRangeException>(() => table.ThrustCoefficient(j));
        Assert.Throws<ArgumentOutOfRangeException>(() => table.PowerCoefficient(j));
    }

    [Fact]
    public void Table_of_bad_rows_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new PropellerTable([rows[0]]));
        Assert.Throws<ArgumentException>(() => new PropellerTable([rows[1], rows[0]]));
        Assert.Throws<ArgumentException>(() => new PropellerTable([rows[0], rows[0]]));
        Assert.Throws<ArgumentException>(() => new PropellerTable([new(-0.1, 0.1, 0.05), rows[0]]));
        Assert.Throws<ArgumentException>(() => new PropellerTable([rows[0], new(0.5, double.NaN, 0.05)]));
    }

    [Fact]
    public void Lookup_allocates_nothing()
    {
        table.ThrustCoefficient(0.3);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++)
            table.ThrustCoefficient(0.3);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }
}
