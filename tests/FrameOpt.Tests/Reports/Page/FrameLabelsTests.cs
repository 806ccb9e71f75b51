using System.Xml.Linq;
using CsCheck;
using FrameOpt.Model;
using FrameOpt.Reports.Graphics;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Reports.Page;

/// <summary>Labels of the three views of the frame, over random designs.</summary>
public class FrameLabelsTests
{
    private static readonly Gen<FrameGeometry> designs = Gen.Select(
        Gen.Double[250, 700], Gen.Double[-80, 80], Gen.Double[-100, 600], Gen.Double[-8, 8], Gen.Double[-0.7, 0.1], Gen.Double[-0.2, 0.5])
        .Select((spacing, offset, height, angle, hubForward, hubUp) => WorkedMachine.Geometry(spacing, offset, height, angle)
            .With(GeometryInput.HubForward, hubForward).With(GeometryInput.HubUp, hubUp));

    // Widths are estimated from the number of letters, as everywhere where text is drawn without a font at hand.
    [Fact]
    public void Labels_never_touch() => designs.Sample(
        design =>
        {
            var (study, scale) = (ReportFixture.Study(), FrameScale.Of(WorkedMachine.Machine, [design]));
            foreach (var view in (XElement[])[FrameRearView.Of(study, design, scale), FrameTopView.Of(study, design, scale),
                FrameSideView.Of(study, design, scale)])
            {
                var labels = view.Elements("text").ToList();
                Assert.True(labels.Count >= 6);
                var boxes = labels.Select(label => (label.Value, Box: LabelLayout.LabelBox.Of(label))).ToList();
                var touching = boxes.SelectMany((one, i) => boxes.Skip(i + 1).Where(other => one.Box.Touches(other.Box))
                    .Select(other => $"{one.Value} and {other.Value}"));
                Assert.Empty(touching);
            }
        },
        iter: 300);
}
