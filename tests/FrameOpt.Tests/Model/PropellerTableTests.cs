using FrameOpt.Model;

namespace FrameOpt.Tests.Model;

public class PropellerTableTests
{
    private static readonly PropellerRow[] Rows = [new(0.1, 0.10, 0.05), new(0.2, 0.08, 0.06), new(0.6, 0.00, 0.02)];

    private static readonly PropellerTable Table = new(Rows);

    [Theory]
    [InlineData(0.15, 0.09, 0.055)]
    [InlineData(0.3, 0.06, 0.05)]
    [InlineData(0.5, 0.02, 0.03)]
    public void Values_between_rows_lie_on_the_straight_line(double j, double ct, double cp)
    {
        Check.Close(ct, Table.ThrustCoefficient(j), absolute: 1e-15, because: "worked by hand, arithmetic only");
        Check.Close(cp, Table.PowerCoefficient(j), absolute: 1e-15, because: "worked by hand, arithmetic only");
    }

    [Fact]
    public void Rows_are_given_back_as_they_are()
    {
        foreach (var row in Rows)
        {
            Check.Close(row.ThrustCoefficient, Table.ThrustCoefficient(row.AdvanceRatio), absolute: 1e-15, because: "arithmetic only");
            Check.Close(row.PowerCoefficient, Table.PowerCoefficient(row.AdvanceRatio), absolute: 1e-15, because: "arithmetic only");
        }
    }

    [Theory]
    [InlineData(0.0999)]
    [InlineData(0.6001)]
    [InlineData(double.NaN)]
    public void Outside_the_rows_there_is_no_value(double j)
    {
        Assert.Equal((0.1, 0.6), (Table.SmallestAdvanceRatio, Table.LargestAdvanceRatio));
        Assert.Throws<ArgumentOutOfRangeException>(() => Table.ThrustCoefficient(j));
        Assert.Throws<ArgumentOutOfRangeException>(() => Table.PowerCoefficient(j));
    }

    [Fact]
    public void Table_of_bad_rows_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new PropellerTable([Rows[0]]));
        Assert.Throws<ArgumentException>(() => new PropellerTable([Rows[1], Rows[0]]));
        Assert.Throws<ArgumentException>(() => new PropellerTable([Rows[0], Rows[0]]));
        Assert.Throws<ArgumentException>(() => new PropellerTable([new(-0.1, 0.1, 0.05), Rows[0]]));
        Assert.Throws<ArgumentException>(() => new PropellerTable([Rows[0], new(0.5, double.NaN, 0.05)]));
    }

    [Fact]
    public void Lookup_allocates_nothing()
    {
        Table.ThrustCoefficient(0.3);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++)
            Table.ThrustCoefficient(0.3);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }
}
