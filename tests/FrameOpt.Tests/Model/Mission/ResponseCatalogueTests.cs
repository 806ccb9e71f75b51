using FrameOpt.Model.Mission;

namespace FrameOpt.Tests.Model.Mission;

public class ResponseCatalogueTests
{
    private static readonly ResponseEntry[] all = [.. ResponseCatalogue.All];

    [Fact]
    public void Every_quantity_has_its_entry_under_its_own_name()
    {
        Assert.Equal(Catalogue.MembersInOrder<PhaseQuantity>(), ResponseCatalogue.OfPhases.Select(entry => entry.Name));
        Assert.Equal(Catalogue.MembersInOrder<MissionQuantity>(), ResponseCatalogue.OfMissions.Select(entry => entry.Name));
        Assert.Equal(Enumerable.Range(0, ResponseCatalogue.OfPhases.Count), ResponseCatalogue.OfPhases.Select(entry => entry.Index));
        Assert.Equal(Enumerable.Range(0, ResponseCatalogue.OfMissions.Count), ResponseCatalogue.OfMissions.Select(entry => entry.Index));
    }

    [Fact]
    public void Names_are_unique_and_every_entry_says_what_it_means()
    {
        Assert.Equal(all.Length, all.Select(entry => entry.Name).Distinct().Count());
        Assert.All(all, entry => Assert.False(string.IsNullOrWhiteSpace(entry.Meaning)));
    }

    [Fact]
    public void Units_are_those_a_builder_reads()
    {
        string[] known = ["", "rpm", "m/s", "N", "N·m", "deg", "mm", "deg/s"];
        Assert.All(all, entry => Assert.Contains(entry.Unit, known));
    }
}
