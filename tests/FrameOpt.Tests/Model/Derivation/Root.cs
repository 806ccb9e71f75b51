namespace FrameOpt.Tests.Model.Derivation;

/// <summary>Where a function changes its sign, found by halving.</summary>
public static class Root
{
    public static double Between(double low, double high, Func<double, double> function)
    {
        var positiveAtLow = function(low) > 0;
        Assert.NotEqual(positiveAtLow, function(high) > 0);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            if (function(middle) > 0 == positiveAtLow)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }
}
