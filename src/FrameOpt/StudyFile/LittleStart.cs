using System.Globalization;
using System.Text.RegularExpressions;
using FrameOpt.Model;
using FrameOpt.StudyFile.Editing;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using static System.FormattableString;

namespace FrameOpt.StudyFile;

/// <summary>A study from the eight figures that every builder knows: all else follows from relations (docs/measure.md) or is the
/// template's, and each such figure is marked as a guess and has a wider spread.</summary>
public static class LittleStart
{
    /// <summary>How the figures are typed.</summary>
    public const string Example =
        "power 15 kW, reduction 2.8, propeller 1.25 m, rpm 2550 rpm, thrust 60 kgf, frame 24 kg, pilot 76 kg, wing 24 m²";

    /// <summary>What is filled in: the rest stays as it is there.</summary>
    public static StudyTemplate Template { get; } = StudyTemplate.All.Single(template => template.Name == "custom-match");

    private const double DriveEfficiency = 0.97;
    private const double PitchOverDiameter = 0.62;
    private const double WingKilogramsPerSquareMetre = 0.23;
    private const double AspectRatio = 5;
    private const double LinesOverSpan = 0.645;
    private const double SpreadOverSpan = 0.355;
    private const double TrimLiftCoefficient = 0.65;
    private const double FastOverTrim = 1.4;
    private const double TrimGlide = 6.5;
    private const double FastGlide = 5;

    /// <summary>Clothing and fuel of the template, kg.</summary>
    private const double CarriedKilograms = 10;

    private static readonly (string Name, Dimension Dimension)[] figures =
    [
        ("power", Dimension.Power), ("reduction", Dimension.Number), ("propeller", Dimension.Length), ("rpm", Dimension.Revolutions),
        ("thrust", Dimension.Force), ("frame", Dimension.Mass), ("pilot", Dimension.Mass), ("wing", Dimension.Area),
    ];

    /// <summary>Shares of speed and torque at full power: the shape of the template's engine.</summary>
    private static readonly (double Speed, double Torque)[] engine = [(0.56, 0.62), (0.77, 0.86), (1, 1), (1.1, 0.98), (1.23, 0.67)];

    private const string Spreads = """

        # Spreads of the guesses, own estimates; each gets smaller with what you measure (frameopt form, frameopt fit).
        noise:
          propeller_torque: { normal: 10 % }
          propeller_pitch: { normal: 12 % }
          seat_forward: { normal: 25 mm }
          seat_up: { normal: 30 mm }
          frame_right: { normal: 10 mm }
          hub_up_built: { normal: 10 mm }
          hub_forward_built: { normal: 15 mm }
          glide_ratio: { normal: 10 % }
          drag_area: { normal: 25 % }

        # Where figures come from: measured, maker or guess. Change a word when you know better.
        origins:
          machine:
            masses:
              0: { mass: measured, forward: guess, right: guess, up: guess }
              1: guess
              2: { mass: measured, forward: guess, right: guess, up: guess }
              3: guess
            hang_line: guess
            propeller:
              { diameter: measured, hub: guess, tilt: guess, bench: { rpm: measured, thrust: measured, torque: guess, pitch: guess } }
            engine: { reduction: measured, efficiency: guess, torque: guess }
            pilot: guess
          wing: { mass: guess, area: measured, span: guess, lines: guess, line_spread: guess, polar: guess }

        """;

    /// <summary>The text of the study; null with everything to correct.</summary>
    /// <param name="text">As in <see cref="Example"/>, in any order.</param>
    /// <param name="source">What the errors call the place, for example --from.</param>
    /// <param name="errors">Empty when the study could be written.</param>
    public static string? Write(string text, string source, out IReadOnlyList<Diagnostic> errors)
    {
        var diagnostics = new DiagnosticBag(source);
        var given = new Dictionary<string, double>();
        foreach (var part in text.Split(',', ';').Select(part => part.Trim()))
        {
            var match = Regex.Match(part, @"^(?<name>[a-z]+)\s+(?<value>\S.*)$");
            var (name, dimension) = figures.FirstOrDefault(figure => figure.Name == match.Groups["name"].Value);
            if (name is null)
                diagnostics.Add(0, 0, part, $"This is none of {string.Join(", ", figures.Select(figure => figure.Name))}.",
                    $"Write {Example}.");
            else if (Quantity.Read(new Node.Scalar(match.Groups["value"].Value, false, 0, 0), name, dimension,
                AllowedRange.PositiveUpTo(1e6, "1000000"), diagnostics) is { } quantity && !given.TryAdd(name, quantity.Base))
                diagnostics.Add(0, 0, part, $"{name} is given twice.", "Keep one of the two.");
        }

        foreach (var (name, _) in figures.Where(figure => !given.ContainsKey(figure.Name) && !diagnostics.HasErrors))
            diagnostics.Add(0, 0, "", $"{name} is missing.", $"Write {Example}.");
        errors = diagnostics.Diagnostics();
        if (errors.Count > 0)
            return null;
        var study = Text(given);
        errors = StudyReader.Parse(System.Text.Encoding.UTF8.GetBytes(study), source).Diagnostics;
        return errors.Count > 0 ? null : study;
    }

    private static string Text(Dictionary<string, double> given)
    {
        using var reader = new StreamReader(Template.Open());
        var text = reader.ReadToEnd();
        void Put(string path, string value) => text = StudyEdit.Of(text).With(path, value);
        void Number(string path, double value, string unit, int decimals) =>
            Put(path, $"{Math.Round(value, decimals).ToString(CultureInfo.InvariantCulture)} {unit}".TrimEnd());
        var (power, reduction, diameter, rpm) = (given["power"], given["reduction"], given["propeller"], given["rpm"]);
        Put("title", "A frame from what is known so far");
        Number("machine.masses.0.mass", given["pilot"], "kg", 2);
        Number("machine.masses.2.mass", given["frame"], "kg", 2);
        Number("machine.propeller.diameter", diameter, "m", 4);
        Number("machine.propeller.bench.rpm", rpm, "rpm", 0);
        Number("machine.propeller.bench.thrust", given["thrust"], "N", 1);
        var omega = 2 * Math.PI * rpm / 60;
        Number("machine.propeller.bench.torque", DriveEfficiency * power / omega, "N·m", 2);
        Number("machine.propeller.bench.pitch", PitchOverDiameter * diameter, "m", 3);
        Number("machine.engine.reduction", reduction, "", 4);
        Number("machine.engine.efficiency", DriveEfficiency, "", 2);
        text = StudyEdit.Of(text).WithList("machine.engine.torque", $"[{string.Join(", ", engine.Select(point =>
            Invariant($"[{point.Speed * rpm * reduction:0} rpm, {point.Torque * power / (omega * reduction):0.00} N·m]")))}]");
        var (area, span) = (given["wing"], Math.Sqrt(AspectRatio * given["wing"]));
        Number("wing.mass", WingKilogramsPerSquareMetre * area, "kg", 1);
        Number("wing.area", area, "m²", 2);
        Number("wing.span", span, "m", 2);
        Number("wing.lines", LinesOverSpan * span, "m", 2);
        Number("wing.line_spread", SpreadOverSpan * span, "m", 2);
        var allUp = given["pilot"] + given["frame"] + CarriedKilograms + WingKilogramsPerSquareMetre * area;
        var trim = Math.Sqrt(2 * allUp * Constants.StandardGravity / (Atmosphere.SeaLevelDensityKgPerM3 * area * TrimLiftCoefficient));
        Number("wing.polar.at.mass", allUp, "kg", 1);
        Number("wing.polar.rows.0.1", trim, "m/s", 2);
        Number("wing.polar.rows.0.2", TrimGlide, "", 1);
        Number("wing.polar.rows.1.1", FastOverTrim * trim, "m/s", 2);
        Number("wing.polar.rows.1.2", FastGlide, "", 1);
        return text.TrimEnd('\n') + "\n" + Spreads;
    }
}
