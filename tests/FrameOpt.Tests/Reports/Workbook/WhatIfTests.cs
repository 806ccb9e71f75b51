using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Workbook.WhatIf;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Reports.Workbook;

public class WhatIfTests
{
    private static readonly WhatIfTable table = new(LiveRun.Report.Result);

    public static TheoryData<WingCase> WingCasesToRead => [.. WingCases.All];

    [Theory]
    [MemberData(nameof(WingCasesToRead))]
    public void At_every_level_and_any_offset_the_table_is_the_model_with_every_wing(WingCase wingCase)
    {
        var mission = LiveRun.Report.Result.Mission;
        var model = mission.With(wingCase.Of(mission.Wing));
        double[] offsets = [-0.03, 0, 0.0125, 0.06];
        foreach (var offset in offsets)
        {
            foreach (var geometry in Levels(offset))
            {
                var design = model.Evaluate(geometry);
                var read = table.Interpolate(geometry);
                if (design.Failure is not null)
                    continue;
                for (var p = 0; p < design.Phases.Count; p++)
                {
                    var coefficients = read![p].Cases[(int)wingCase];
                    Check.Close(design.Phases[p][PhaseQuantity.Residual], coefficients.Residual.At(offset), absolute: 1e-9,
                        because: "rounding of the same straight line");
                    Check.Close(design.Phases[p][PhaseQuantity.WeightShiftAuthority], coefficients.Authority, absolute: 1e-9,
                        because: "the authority does not depend on the offset");
                }
            }
        }
    }

    [Fact]
    public void The_error_between_levels_is_measured_and_small_beside_the_residual_of_flying_straight()
    {
        // Within 3 N·m the wing's own trim decides.
        Assert.InRange(table.LargestErrorNewtonMetres, 0, PhaseResult.StraightWithinNewtonMetres / 3);
        var error = table.LargestErrorNewtonMetres.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains(new WorkbookReader(LiveRun.Report).AllTexts, text =>
            text.Contains($"off by at most {error} N·m", StringComparison.Ordinal));
    }

    [Fact]
    public void It_starts_as_the_best_compromise_with_its_figures_saved()
    {
        var chosen = LiveRun.Report.Result.Chosen!;
        var rows = new WorkbookReader(LiveRun.Report).Table("What if", "phase").Rows;
        for (var p = 0; p < chosen.Phases.Count; p++)
        {
            Check.Close(chosen.Phases[p][PhaseQuantity.Residual], (double)rows[p][7]!, absolute: 1e-9,
                because: "the chosen design's levels are in the table");
            if (chosen.Phases[p].Phase.IsSettled)
                Check.Close(chosen.Phases[p][PhaseQuantity.Lean], (double)rows[p][12]!, absolute: 1e-8,
                    because: "the chosen design's levels are in the table");
            else
                Assert.Equal("not settled", rows[p][12]);
            Assert.Equal(chosen.Phases[p].Steers, rows[p][11]);
        }
    }

    [Fact]
    public void The_table_stays_below_two_thousand_rows() =>
        Assert.InRange((WhatIfTable.MaxSpacings + 2) * (WhatIfTable.MaxHeights + 2) * (WhatIfTable.MaxAngles + 2), 1, 2_000);

    private static IEnumerable<FrameGeometry> Levels(double offset) =>
        from spacing in table.Spacings.Si
        from height in table.Heights.Si
        from angle in table.Angles.Si
        select LiveRun.Report.Result.Chosen!.Geometry with
        {
            SpacingMetres = spacing,
            OffsetMetres = offset,
            HeightMetres = height,
            AngleRadians = angle
        };
}
