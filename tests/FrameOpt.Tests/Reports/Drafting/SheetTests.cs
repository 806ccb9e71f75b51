using CsCheck;
using FrameOpt.Model;
using FrameOpt.Reports.Drafting;
using FrameOpt.Reports.Drafting.Template;
using FrameOpt.Reports.Files;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Reports.Drafting;

/// <summary>Sheets of any design can be read: no text covers another or leaves the paper, and sides are those of the design.</summary>
public class SheetTests
{
    private static readonly Gen<FrameGeometry> designs = Gen.Select(
        Gen.Select(Gen.Double[0.2, 0.8], Gen.Double[-0.1, 0.1], Gen.Double[-0.2, 0.7], Gen.Double[-0.15, 0.15]),
        Gen.Select(Gen.Double[-0.8, 0], Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.05, 0.05]), Gen.Double[-0.3, 0.6], Gen.Double[-0.3, 0.3]),
        Gen.Select(Gen.Double[-0.2, 0.2], Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.03, 0.03]), Gen.Double[-0.02, 0.02]),
        (frame, hub, sides) => new FrameGeometry(
            frame.Item1, frame.Item2, frame.Item3, frame.Item4, hub.Item4, hub.Item1, hub.Item2, hub.Item3,
            sides.Item1, sides.Item2, sides.Item3));

    [Fact]
    public void No_text_covers_another_or_leaves_the_paper_over_500_random_designs() =>
        Gen.Select(designs, Gen.Double[0.9, 1.6], Gen.Enum<Rotation>(), Gen.Int[0, 14], Gen.Bool).Sample(
            (geometry, diameter, rotation, holes, isLong) =>
            {
                var machine = WorkedMachine.Machine with
                {
                    Propeller = WorkedMachine.Machine.Propeller with { DiameterMetres = diameter, Rotation = rotation },
                    Datum = isLong ? string.Join(' ', Enumerable.Repeat("the rear edge of the seat board", 9)) : "",
                };
                IReadOnlyList<double> places = [.. Enumerable.Range(0, holes).Select(i => 0.12 + 0.02 * i)];
                var bar = new HoleRow(places, [.. places.Where((_, i) => i % 2 == 0)]);
                var design = DrawnDesigns.Of(geometry, machine, isLong ? new string('W', 300) : "Frame") with
                {
                    Holes = holes == 0 ? null : new HolePattern(bar, bar, new DisplayUnit("mm", 0.001)),
                };
                AssertReadable(FrameSheet.Of(design));
                // A template has ten sheets and more: those of every fifth design are enough.
                if (holes % 5 == 0)
                    Assert.All(TemplateSheets.Of(design, Paper.Letter), AssertReadable);
            },
            iter: 500, threads: 2);

    [Fact]
    public void Mirrored_machine_gives_the_mirrored_drawing_template_and_outline()
    {
        var geometry = ReportFixture.WorkedGeometry with { AngleRadians = 0.03, HubRightMetres = 0.01, HangHeightDifferenceMetres = 0.012 };
        var (here, there) = (DrawnDesigns.Of(geometry), DrawnDesigns.Mirrored(geometry));
        Assert.Equal(Circles(HoleOutline.Of(here), 1), Circles(HoleOutline.Of(there), -1));
        var (template, mirrored) = (TemplateSheets.Of(here, Paper.A4), TemplateSheets.Of(there, Paper.A4));
        // What is seen from behind of one is what is seen from the front of the other: the same places, the other words.
        Assert.Equal(template.Count, mirrored.Count);
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(Circles(template[1 + i], 1), Circles(mirrored[^(3 - i)], 1));
            Assert.Equal(Words(template[1 + i]).Where(IsSide).Order(), Words(mirrored[^(3 - i)]).Where(IsSide).Select(Swapped).Order());
        }

        var (drawing, other) = (FrameSheet.Of(here), FrameSheet.Of(there));
        Assert.Equal(
            Words(drawing).Where(IsDimension).Order(StringComparer.Ordinal),
            Words(other).Where(IsDimension).Select(Swapped).Order(StringComparer.Ordinal));
        Assert.Contains("pulls right without offset (cruise)", Words(drawing));
        Assert.Contains("pulls left without offset (cruise)", Words(other));
    }

    [Fact]
    public void Same_design_gives_the_same_bytes()
    {
        var files = DrawingFiles.Of(ReportFixture.Report(3)).ToList();
        Assert.Equal(
            ["drawing.svg", "drawing.pdf", "template-a4.pdf", "template-letter.pdf", "holes.dxf"], files.Select(file => file.Name));
        foreach (var (name, write) in DrawingFiles.Of(ReportFixture.Report(3)))
            Assert.Equal(DrawnDesigns.Bytes(write), DrawnDesigns.Bytes(files.First(file => file.Name == name).Write));
    }

    [Fact]
    public void Run_without_a_design_has_nothing_to_drill() =>
        Assert.Empty(DrawingFiles.Of(ReportFixture.Report(1) with { Result = ReportFixture.NothingFeasible(null) }));

    [Fact]
    public void Holes_of_a_bar_say_which_are_there_and_which_are_used()
    {
        // The right hang point lies on the drilled hole at 245 mm, the left one on a planned one at 195 mm.
        var design = DrawnDesigns.Worked with
        {
            Holes = new HolePattern(
                new HoleRow([0.175, 0.195], [0.175]), new HoleRow([0.225, 0.245], [0.245]), new DisplayUnit("mm", 0.001)),
        };
        var words = string.Join('\n', Words(FrameSheet.Of(design)));
        Assert.Contains("(a new hole).", words.ReplaceLineEndings(" "));
        Assert.Contains("already).", words);
        Assert.Contains("Not used, there already: 175 mm left.", words);
        Assert.Contains("Not used, not drilled: 225 mm right.", words);
        var template = TemplateSheets.Of(design, Paper.A4).SelectMany(Words).ToList();
        Assert.Contains("the hole is there already", template);
        Assert.Contains("drill centre, a new hole", template);
    }

    [Fact]
    public void Text_of_the_study_in_any_script_makes_a_drawing_that_opens()
    {
        var sheet = FrameSheet.Of(DrawnDesigns.Of(ReportFixture.WorkedGeometry, title: "<&> Größe ø Рама 架 \U0001F680 \u0007"));
        Assert.Contains("<&> Größe ø Рама", SheetReader.Svg(DrawnDesigns.Bytes(stream => SheetSvg.Write(sheet, stream))).Words);
        // A word too long for its line is cut, never through a letter of two code units.
        var cut = FrameSheet.Of(DrawnDesigns.Of(
            ReportFixture.WorkedGeometry, title: string.Concat(Enumerable.Repeat("\U0001F680a", 50))));
        Assert.Contains("…", SheetReader.Svg(DrawnDesigns.Bytes(stream => SheetSvg.Write(cut, stream))).Words);
        Assert.Contains("<&> Größe ø Рама", SheetReader.Pdf(DrawnDesigns.Bytes(stream => SheetPdf.Write("", [sheet], stream)))[0].Words);
    }

    private static void AssertReadable(Sheet sheet)
    {
        var texts = sheet.Marks.OfType<Mark.Text>().Select(text => (Text: text, Box: Box(text))).ToList();
        for (var i = 0; i < texts.Count; i++)
        {
            var (text, (left, bottom, right, top)) = texts[i];
            if (!(left >= 5 && bottom >= 5 && right <= sheet.Width - 5 && top <= sheet.Height - 5))
                Assert.Fail($"off the paper: {text}");
            for (var k = 0; k < i; k++)
            {
                var (other, box) = texts[k];
                if (left < box.Right && box.Left < right && bottom < box.Top && box.Bottom < top)
                    Assert.Fail($"{text} covers {other}");
            }
        }
    }

    /// <summary>Letters reach from a fifth of their height below the base line to their height.</summary>
    private static (double Left, double Bottom, double Right, double Top) Box(Mark.Text text) => text.IsUpright
        ? (text.X - text.Height, text.Y, text.X + text.Height / 5, text.Y + text.Length)
        : (text.X, text.Y - text.Height / 5, text.X + text.Length, text.Y + text.Height);

    private static IEnumerable<string> Words(Sheet sheet) => sheet.Marks.OfType<Mark.Text>().Select(text => text.Words);

    private static bool IsSide(string words) => words is "LEFT" or "RIGHT";

    private static bool IsDimension(string words) => words.EndsWith(" mm", StringComparison.Ordinal) || IsSide(words);

    private static string Swapped(string words) => words.StartsWith("LEFT", StringComparison.Ordinal) ? $"RIGHT{words[4..]}"
        : words.StartsWith("RIGHT", StringComparison.Ordinal) ? $"LEFT{words[5..]}" : words;

    private static IEnumerable<(double X, double Y, double Radius)> Circles(Sheet sheet, int side) => sheet.Marks.OfType<Mark.Circle>()
        .Select(circle => (Math.Round(side * circle.X, 6) + 0.0, Math.Round(circle.Y, 6) + 0.0, circle.Radius)).Order();
}
