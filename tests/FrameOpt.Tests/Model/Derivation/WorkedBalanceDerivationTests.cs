namespace FrameOpt.Tests.Model.Derivation;

/// <summary>The printed figures of the worked balance, derived a second time by other means than the program's and without it.</summary>
public class WorkedBalanceDerivationTests
{
    [Theory]
    [InlineData("worked-balance-440-25-150-0.csv", 440, 25, 150, 0)]
    [InlineData("worked-balance-420-22-230-1.5.csv", 420, 22, 230, 1.5)]
    public void Every_printed_figure_follows_from_vectors_and_root_finding(
        string file, double spacing, double offset, double height, double angle)
    {
        var design = new WorkedDesign(spacing, offset, height, angle);
        var derived = WorkedNumbers.Phases.Select(phase => WorkedDerivation.Of(design, phase)).ToList();
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "References", file));
        Assert.Equal(["quantity", "unit", .. WorkedNumbers.Phases.Select(phase => phase.Name)], lines[0].Split(','));
        Assert.Equal(derived[0].Keys.Order(), lines.Skip(1).Select(line => line.Split(',')[0]).Order());
        foreach (var row in lines.Skip(1).Select(line => line.Split(',')))
        {
            for (var p = 0; p < derived.Count; p++)
            {
                Check.Close(
                    double.Parse(row[p + 2]),
                    derived[p][row[0]],
                    relative: 6e-7,
                    absolute: 1e-9,
                    because: $"{row[0]}[{WorkedNumbers.Phases[p].Name}]: seven digits are printed, half a unit of the last is up to 5e-7");
            }
        }
    }

    [Fact]
    public void Mass_centre_of_gravity_and_density_follow_from_the_masses_and_the_weight_of_the_air()
    {
        var masses = WorkedNumbers.OtherMasses.Append(WorkedNumbers.Pilot).ToList();
        var total = masses.Sum(item => item.Mass);
        var centre = 1000 / total * masses.Aggregate(new Vec(0, 0, 0), (sum, item) => sum + item.Mass * item.Place);
        Check.Close(113, total, absolute: 1e-9, because: "a sum of four printed masses");
        Check.Close(-56.72566, centre.X, absolute: 5e-6, because: "printed digits");
        Check.Close(1.19469, centre.Y, absolute: 5e-6, because: "printed digits");
        Check.Close(-8.40708, centre.Z, absolute: 5e-6, because: "printed digits; z points down");
        Check.Close(1.190106, WorkedFlight.DensityAt(WorkedNumbers.Altitude), absolute: 5e-7, because: "printed digits");
    }

    [Fact]
    public void Nothing_of_the_program_is_used()
    {
        var folder = Path.Combine(Repository.Root, "tests", "FrameOpt.Tests", "Model", "Derivation");
        foreach (var file in Directory.GetFiles(folder, "*.cs"))
            Assert.DoesNotMatch(@"\bFrameOpt\.(?!Tests)", File.ReadAllText(file));
    }
}
