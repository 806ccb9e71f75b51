using FrameOpt.Model;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.StudyFile.Values;

/// <summary>Every accepted spelling of a unit. Sources of the factors: International Yard and Pound Agreement 1959 (in, ft, lb),
/// ISO 80000-3 and -4 (standard Gravity, nautical mile per hour); hp is 550 ft·lbf/s = 745.69987 W, of which the library keeps
/// 745.69.</summary>
public class UnitSpellingTests
{
    private const double Pound = 0.45359237;
    private const double Gravity = 9.80665;

    public static TheoryData<string, string, double> Spellings => new()
    {
        { "a length", "mm", 0.001 }, { "a length", "m", 1 }, { "a length", "cm", 0.01 }, { "a length", "in", 0.0254 },
            { "a length", "ft", 0.3048 },
        { "a mass", "kg", 1 }, { "a mass", "g", 0.001 }, { "a mass", "lb", Pound },
        { "a force", "N", 1 }, { "a force", "kN", 1000 }, { "a force", "kgf", Gravity }, { "a force", "lbf", Pound * Gravity },
        { "a torque", "N·m", 1 }, { "a torque", "N.m", 1 }, { "a torque", "Nm", 1 },
        { "an angle", "deg", Math.PI / 180 }, { "an angle", "rad", 1 }, { "an angle", "°", Math.PI / 180 },
        { "a rotational speed", "rpm", 1 },
        { "an angular rate", "rad/s", 1 }, { "an angular rate", "deg/s", Math.PI / 180 },
        { "a speed", "m/s", 1 }, { "a speed", "km/h", 1 / 3.6 }, { "a speed", "kt", 1852.0 / 3600 },
        { "a time per length", "s/m", 1 },
        { "an area", "m²", 1 }, { "an area", "m2", 1 },
        { "a density", "kg/m³", 1 }, { "a density", "kg/m3", 1 }, { "a density", "kg/l", 1000 },
        { "a moment of inertia", "kg·m²", 1 }, { "a moment of inertia", "kg m2", 1 }, { "a moment of inertia", "kg.m2", 1 },
        { "a power", "kW", 1000 }, { "a power", "hp", 745.69 },
        { "a volume", "l", 0.001 }, { "a volume", "litre", 0.001 }, { "a volume", "L", 0.001 },
        { "a temperature difference", "K", 1 }, { "a temperature difference", "°C", 1 }, { "a temperature difference", "degC", 1 },
        { "a share", "", 1 }, { "a share", "%", 0.01 },
        { "a plain number", "", 1 },
        { "a time", "s", 1 },
        { "a time", "min", 60 },
        { "a time", "h", 3600 },
    };

    [Theory]
    [MemberData(nameof(Spellings))]
    public void Spelling_is_converted(string dimension, string unit, double one)
    {
        var wanted = Dimension.All.Single(known => known.Name == dimension);
        foreach (var text in new[] { $"2.5{unit}", $"2.5 {unit}", $"  2.5   {unit} ", $"25e-1 {unit}" })
        {
            var diagnostics = new DiagnosticBag("study.yaml");
            var read = Quantity.Read(new Node.Scalar(text, false, 1, 1), "it", wanted, AllowedRange.None, diagnostics);
            Assert.False(diagnostics.HasErrors, text);
            Check.Close(2.5 * one, read!.Base, relative: 1e-14, because: "rounding of one conversion");
        }
    }

    [Fact]
    public void Table_has_no_spelling_that_is_not_tested() =>
        Assert.Equal(
            Spellings.Select(row => (row[0], row[1])).Order(),
            Dimension.All.SelectMany(dimension => dimension.Spellings.Select(
                spelling => ((object)dimension.Name, (object)spelling.Text))).Order());

    [Theory]
    [InlineData("2 metre")]
    [InlineData("2 MM")]
    [InlineData("2 millimeter")]
    [InlineData("2 mm mm")]
    [InlineData("2 µm")]
    [InlineData("2 nautical miles")]
    public void Other_spelling_is_refused_and_the_accepted_ones_are_named(string text)
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(WorkedStudyText.With("diameter: 1.30 m", $"diameter: {text}"));
        Assert.Contains("is not known", diagnostic.Message);
        Assert.Contains("mm, m, cm, in, ft", diagnostic.Fix);
    }

    [Fact]
    public void Wrong_dimension_is_called_by_its_name()
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(WorkedStudyText.With("hub: { forward: -420 mm", "hub: { forward: 60 kg"));
        Assert.Equal("60 kg is a mass; machine.propeller.hub.forward wants a length.", diagnostic.Message);
    }

    [Fact]
    public void Missing_unit_is_asked_for()
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(WorkedStudyText.With("hub: { forward: -420 mm", "hub: { forward: 62"));
        Assert.Equal("62 has no unit: machine.propeller.hub.forward wants a length.", diagnostic.Message);
        Assert.Contains("mm, m, cm, in, ft", diagnostic.Fix);
    }

    [Fact]
    public void Unit_on_a_plain_number_is_refused()
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(WorkedStudyText.With("reduction: 2.9", "reduction: 2.9 m"));
        Assert.Equal("machine.engine.reduction wants a plain number, without a unit.", diagnostic.Message);
        Assert.Equal("Write 2.9.", diagnostic.Fix);
    }

    [Fact]
    public void Efficiency_may_be_given_in_per_cent() =>
        Check.Close(0.96, WorkedStudyText.Right(WorkedStudyText.With("efficiency: 0.96", "efficiency: 96 %")).Machine.Engine!.Efficiency,
            relative: 1e-15, because: "rounding of one division");
}
