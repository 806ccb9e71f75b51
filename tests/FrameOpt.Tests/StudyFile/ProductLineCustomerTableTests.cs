using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.StudyFile;

public class ProductLineCustomerTableTests
{
    [Theory]
    [InlineData("name,pilot_mass [kg],engine,wing,count\n\"a, b\",80,light,small,3\n,95.5,Big,large,1\n", null)]
    [InlineData("pilot_mass [lb];engine;wing;share\n180;light;small;30 %\n", null)]
    [InlineData("engine,wing\nlight,small\n", "has no column for the pilot's mass")]
    [InlineData("pilot_mass,engine,wing\n80,light,small\n", "has no unit of mass")]
    [InlineData("pilot_mass [kg],wing\n80,small\n", "has no column for the option engine")]
    [InlineData("pilot_mass [kg],engine,wing,cuont\n80,light,small,3\n", "The column `cuont` of customers.csv means nothing here.")]
    [InlineData("pilot_mass [kg],engine,wing,count,share\n80,light,small,3,4\n", "Some customers have a share and others a count")]
    [InlineData("pilot_mass [kg],engine,wing\n80 kg,light,small\n", "Line 2 of customers.csv: `80 kg` is not a pilot's mass.")]
    [InlineData("pilot_mass [kg],engine,wing\n800,light,small\n", "the pilot's mass 800 is not between 20 kg and 250 kg")]
    [InlineData("pilot_mass [kg],engine,wing,count\n80,light,small,0\n", "`0` is not a count")]
    [InlineData("pilot_mass [kg],engine,wing,count\n80,light,small,2.5\n", "`2.5` is not a count")]
    [InlineData("pilot_mass [kg],engine,wing\n80,ligt,small\n", "Line 2 of customers.csv: engine has no choice `ligt`.")]
    [InlineData("pilot_mass [kg],engine,wing\n", "has no rows")]
    public void A_table_of_customers_is_read_or_its_slip_is_one_mistake(string csv, string? what)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["customers.csv"], csv);
        File.WriteAllText(folder["study.yaml"], ProductLineStudy.Text(customers: "  customers: customers.csv\n"));
        var reading = StudyReader.Read(folder["study.yaml"]);
        if (what is null)
        {
            Assert.Empty(reading.Diagnostics);
            Assert.Equal(csv.Split('\n').Length - 2, reading.Study!.Line!.Customers.Count);
            Assert.Equal("customers.csv", Assert.Single(reading.Study.Files).Name);
        }
        else
        {
            Assert.Contains(what, Assert.Single(reading.Diagnostics).Message);
        }
    }

    // As spreadsheets write a table with columns of its own: semicolons, columns and rows that were emptied.
    [Fact]
    public void Columns_of_a_makers_own_are_named_and_empty_rows_and_columns_passed_over()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["customers.csv"],
            "\uFEFFname;dealer;pilot_mass [kg];engine;wing;;\nAnna;north;80;light;small;;\n;;;;;;\nBeat;south;95.5;big;large;;\n;;;;;;\n");
        File.WriteAllText(folder["study.yaml"], ProductLineStudy.Text(customers: "  customers: customers.csv\n"));
        var reading = StudyReader.Read(folder["study.yaml"]);
        Assert.Equal(["Anna", "Beat"], reading.Study!.Line!.Customers.Select(customer => customer.Name));
        Assert.Contains(reading.Study.Warnings, warning => warning.Contains("not used: dealer."));
    }

    /// <summary>A name as an older program writes it (Latin-1), one from which a letter was lost, and one with a control
    /// character.</summary>
    [Theory]
    [InlineData(new byte[] { (byte)'J', 0xF6, (byte)'r', (byte)'g' }, "Line 3 of customers.csv has a character that is not in UTF-8")]
    [InlineData(new byte[] { (byte)'J', 0xEF, 0xBF, 0xBD, (byte)'r', (byte)'g' }, "Line 3 of customers.csv has a replacement character")]
    [InlineData(new byte[] { (byte)'J', 0x07, (byte)'r', (byte)'g' }, "Line 3 of customers.csv has an invisible control character")]
    public void A_table_that_is_no_whole_text_is_refused_with_its_line(byte[] name, string what)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder["customers.csv"],
            [.. "name,pilot_mass [kg],engine,wing\nAnna,80,light,small\n"u8, .. name, .. ",80,light,small\n"u8]);
        File.WriteAllText(folder["study.yaml"], ProductLineStudy.Text(customers: "  customers: customers.csv\n"));
        Assert.Contains(what, Assert.Single(StudyReader.Read(folder["study.yaml"]).Diagnostics).Message);
    }

    [Fact]
    public void Pounds_are_turned_into_tenths_of_kilograms_and_a_customer_without_a_name_gets_a_number()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["customers.csv"], "pilot_mass [lb],engine,wing,share\n180,light,small,30 %\n200,big,large,0.7\n");
        File.WriteAllText(folder["study.yaml"], ProductLineStudy.Text(customers: "  customers: customers.csv\n"));
        var customers = StudyReader.Read(folder["study.yaml"]).Study!.Line!.Customers;
        Check.Close(180 * 0.45359237, customers[0].PilotMassKilograms, absolute: 0.05,
            because: "the pound is 0.45359237 kg by definition (1959), and masses are taken to 0.1 kg");
        Assert.Equal(["customer 1", "customer 2"], customers.Select(customer => customer.Name));
        Assert.Equal([0.3, 0.7], customers.Select(customer => customer.Share));
    }
}
