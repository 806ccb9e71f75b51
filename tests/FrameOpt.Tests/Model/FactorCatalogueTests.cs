using FrameOpt.Model;
using FrameOpt.Model.Mission;

namespace FrameOpt.Tests.Model;

/// <summary>Every row of the catalogue of factors says the truth about the model.</summary>
public class FactorCatalogueTests
{
    public static TheoryData<string> Names => [.. FactorCatalogue.All.Select(input => input.Name)];

    [Fact]
    public void Every_input_has_its_row_under_its_own_name()
    {
        Assert.Equal(Catalogue.MembersInOrder<GeometryInput>(), FactorCatalogue.All.Select(input => input.Name));
        Assert.Equal(Enumerable.Range(0, FactorCatalogue.All.Count), FactorCatalogue.All.Select(input => input.Index));
    }

    [Fact]
    public void Every_number_of_a_geometry_is_an_input() =>
        Assert.Equal(
            typeof(FrameGeometry).GetConstructors().Max(constructor => constructor.GetParameters().Length), FactorCatalogue.All.Count);

    [Theory]
    [MemberData(nameof(Names))]
    public void Row_reads_and_writes_its_own_number_and_no_other(string name)
    {
        var input = FactorCatalogue.Find(name)!;
        var before = WorkedMachine.Geometry(440, 25, 150, 1.5);
        var after = before.With(input, 0.3);
        foreach (var any in FactorCatalogue.All)
            Assert.Equal(any == input ? 0.3 : before[any], after[any]);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Number_the_machine_gives_is_in_the_machine_as_built(string name)
    {
        var input = FactorCatalogue.Find(name)!;
        var asBuilt = FrameGeometry.AsBuilt(WorkedMachine.Machine);
        Assert.Equal(input.IsRequired ? 0 : input.AsBuilt(WorkedMachine.Machine), asBuilt[input]);
        // The worked machine has nothing to the right: its hub lies in the plane of symmetry, and its sides are alike.
        Assert.Equal(input.IsRequired || input.IsSided, asBuilt[input] == 0);
    }

    // A stage that is too late would leave something of the last design in the next.
    [Theory]
    [MemberData(nameof(Names))]
    public void Change_of_an_input_computes_anew_all_that_depends_on_it(string name)
    {
        var input = FactorCatalogue.Find(name)!;
        var design = WorkedMachine.Geometry(440, 25, 150, 1.5);
        var changed = design.With(input, design[input] + 0.01);
        var row = new MissionRow(WorkedMachine.Mission);
        row.Prepare(design);
        row.Prepare(changed);
        var fresh = new MissionRow(WorkedMachine.Mission);
        fresh.Prepare(changed);
        Span<double> found = stackalloc double[1], expected = stackalloc double[1];
        foreach (var quantity in ResponseCatalogue.OfPhases)
        {
            quantity.Fill(row, 1, [changed.OffsetMetres], found);
            quantity.Fill(fresh, 1, [changed.OffsetMetres], expected);
            Assert.True(expected[0].Equals(found[0]), $"{quantity} after a change of {name}: {found[0]}, and alone {expected[0]}");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Value_of_either_sign_reads_with_its_magnitude_in_words_that_tell_the_sign(string name)
    {
        var input = FactorCatalogue.Find(name)!;
        Assert.Contains("12 mm", input.Words.Text(1, "12 mm"));
        Assert.Equal(input.IsPositive, input.Words.Text(1, "12 mm") == input.Words.Text(-1, "12 mm"));
        Assert.Equal(input.IsSided, input.Words.Text(1, "12 mm").Contains("right"));
        Assert.Equal(input.IsSided, input.Words.Text(-1, "12 mm").Contains("left"));
    }
}
