using FrameOpt.Model.Mission;

namespace FrameOpt.Tests.Model.Mission;

public class ResponseCatalogueTests
{
    [Fact]
    public void Every_quantity_has_its_entry_under_its_own_name()
    {
        Assert.Equal(Enum.GetNames<PhaseQuantity>().Select(Underscored), ResponseCatalogue.OfPhases.Select(entry => entry.Name));
        Assert.Equal(Enum.GetNames<MissionQuantity>().Select(Underscored), ResponseCatalogue.OfMissions.Select(entry => entry.Name));
    }

    [Fact]
    public void Names_are_unique_and_every_entry_says_what_it_means()
    {
        var all = ResponseCatalogue.OfPhases.Concat(ResponseCatalogue.OfMissions).ToList();
        Assert.Equal(all.Count, all.Select(entry => entry.Name).Distinct().Count());
        Assert.All(all, entry => Assert.False(string.IsNullOrWhiteSpace(entry.Meaning)));
    }

    [Fact]
    public void Units_are_those_a_builder_reads()
    {
        string[] known = ["", "rpm", "m/s", "N", "N·m", "deg", "mm", "deg/s"];
        Assert.All(ResponseCatalogue.OfPhases.Concat(ResponseCatalogue.OfMissions), entry => Assert.Contains(entry.Unit, known));
    }

    private static string Underscored(string name) =>
        string.Concat(name.Select((letter, i) => char.IsUpper(letter) ? (i > 0 ? "_" : "") + char.ToLowerInvariant(letter)
            : letter.ToString()));
}
