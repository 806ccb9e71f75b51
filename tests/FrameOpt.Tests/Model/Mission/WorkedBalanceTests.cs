using FrameOpt.Model;
using FrameOpt.Model.Mission;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>Every printed figure of the worked balance; source and tolerance in References/README.md.</summary>
public class WorkedBalanceTests
{
    private const string Because = "the tolerance the worked figures name: relative 1e-5, absolute 1e-4 where small by cancellation";

    [Theory]
    [InlineData("worked-balance-440-25-150-0.csv", 440, 25, 150, 0)]
    [InlineData("worked-balance-420-22-230-1.5.csv", 420, 22, 230, 1.5)]
    public void Every_figure_of_the_worked_balance_is_met(string file, double spacing, double offset, double height, double angle)
    {
        var design = WorkedMachine.Mission.Evaluate(WorkedMachine.Geometry(spacing, offset, height, angle));
        Assert.Null(design.Failure);
        var rows = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "References", file)).Skip(1).ToList();
        Assert.Equal(25, rows.Count);
        foreach (var row in rows.Select(line => line.Split(',')))
        {
            var quantity = IndexOf(row[0]);
            Assert.Equal(row[1].Replace("N.m", "N·m").TrimStart('-'), ResponseCatalogue.OfPhases[quantity].Unit);
            for (var p = 0; p < 5; p++)
            {
                Check.Close(
                    double.Parse(row[p + 2]),
                    design.Phases[p].Values[quantity],
                    relative: 1e-5,
                    absolute: 1e-4,
                    because: $"{row[0]}[{design.Phases[p].Phase.Name}]: {Because}");
            }
        }
    }

    // Source: the foot of the worked balance.
    [Fact]
    public void Mass_centre_of_gravity_and_density_are_met()
    {
        Check.Close(113, WorkedMachine.Machine.MassKilograms, absolute: 1e-9, because: "a sum of four printed masses");
        var centre = WorkedMachine.Machine.CentreOfGravity;
        Check.Close(-56.72566, centre.ForwardMetres * 1000, absolute: 1e-5, because: "printed digits");
        Check.Close(1.19469, centre.RightMetres * 1000, absolute: 1e-5, because: "printed digits");
        Check.Close(8.40708, centre.UpMetres * 1000, absolute: 1e-5, because: "printed digits");
        Check.Close(1.190106, Atmosphere.DensityKgPerM3(300, 0), absolute: 1e-6, because: "printed digits");
    }

    private static int IndexOf(string name) => ResponseCatalogue.OfPhases.Select(e => e.Name).ToList().IndexOf(name);
}
