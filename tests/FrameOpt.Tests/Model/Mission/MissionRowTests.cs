using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>Law: a design has the same values, to the last bit, alone, in a row, and whatever was computed before it.</summary>
public class MissionRowTests
{
    private static readonly MissionModel mission = new(
        WorkedMachine.Machine,
        WorkedMachine.Wing,
        WorkedMachine.Phases,
        new ResponseReferences(
            4.5,
            0.12,
            WorkedMachine.Geometry(440, 0, 150, 0),
            [new(GeometryInput.LateralOffset, 0.06), new(GeometryInput.HangPointSpacing, 0.1), new(GeometryInput.ThrustLineAngle, 0.1)]));

    private static readonly double[] offsets = [.. Enumerable.Range(0, 61).Select(i => i * 0.001)];

    /// <summary>Geometries with few values of each input, so that rows often share some of them; a few cannot fly.</summary>
    private static readonly Gen<FrameGeometry> geometries = Gen.Select(
            Gen.Int[0, 2], Gen.Int[0, 3], Gen.Int[0, 2], Gen.Int[0, 1], Gen.Int[0, 1], Gen.Int[0, 3])
        .Select((spacing, height, angle, tilt, hub, hang) => WorkedMachine.Geometry(
            new[] { 380, 440, 480 }[spacing], 25, new[] { -50, 100, 150, 400 }[height], new[] { -3, 0, 1.5 }[angle]) with
        {
            TiltRadians = new[] { 0.0, 0.087 }[tilt],
            HubUpMetres = new[] { 0.12, 0.2 }[hub],
            HangLineForwardMetres = new[] { -0.06, -0.03 }[hang / 2],
            HangHeightDifferenceMetres = new[] { 0, 0.01 }[hang % 2],
        });

    [Fact]
    public void Design_has_the_same_values_alone_and_in_a_row_of_61_offsets() => geometries.Sample(
        geometry =>
        {
            var row = new MissionRow(mission);
            if (row.Prepare(geometry).Kind != FailureKind.None)
                return;
            var together = Values(row, offsets);
            for (var i = 0; i < offsets.Length; i++)
            {
                var alone = Values(row, [offsets[i]]);
                for (var q = 0; q < alone.Length; q++)
                    AssertSameBits(alone[q][0], together[q][i], $"response {q} at {offsets[i]} m");
            }
        },
        iter: 40);

    [Fact]
    public void Design_evaluated_alone_has_the_values_of_its_row() => geometries.Sample(
        geometry =>
        {
            var design = mission.Evaluate(geometry);
            var row = new MissionRow(mission);
            if (row.Prepare(geometry).Kind != FailureKind.None || design.Failure is not null)
                return;
            var values = Values(row, offsets);
            var at = Array.IndexOf(offsets, geometry.OffsetMetres);
            var expected = design.Phases.SelectMany(phase => phase.Values).Concat(design.Mission).ToList();
            for (var q = 0; q < expected.Count; q++)
                AssertSameBits(expected[q], values[q][at], $"response {q}");
        },
        iter: 40);

    [Fact]
    public void Rows_prepared_before_leave_no_trace() => geometries.Array[2, 12].Sample(
        sequence =>
        {
            var used = new MissionRow(mission);
            foreach (var geometry in sequence)
            {
                var fresh = new MissionRow(mission);
                var failure = fresh.Prepare(geometry);
                Assert.Equal(failure, used.Prepare(geometry));
                if (failure.Kind != FailureKind.None)
                {
                    Assert.Equal(
                        FailureText.Describe(DesignFailure.Of(fresh, failure)), FailureText.Describe(DesignFailure.Of(used, failure)));
                    continue;
                }

                var (expected, actual) = (Values(fresh, offsets), Values(used, offsets));
                for (var q = 0; q < expected.Length; q++)
                {
                    for (var i = 0; i < offsets.Length; i++)
                        AssertSameBits(expected[q][i], actual[q][i], $"response {q}");
                }

                Assert.Equal(Failures(fresh, offsets), Failures(used, offsets));
            }
        },
        iter: 40);

    // Offsets far out on both sides, so that a riser twists or goes slack in some.
    [Fact]
    public void Failures_in_a_row_are_those_found_one_by_one()
    {
        double[] wide = [.. Enumerable.Range(-40, 81).Select(i => i * 0.02)];
        var worked = new MissionRow(mission);
        worked.Prepare(WorkedMachine.Geometry(440, 25, 150, 0));
        Assert.InRange(Failures(worked, wide).Count(code => code == 0), 1, wide.Length - 2);
        geometries.Sample(
            geometry =>
            {
                var row = new MissionRow(mission);
                if (row.Prepare(geometry).Kind != FailureKind.None)
                    return;
                var together = Failures(row, wide);
                for (var i = 0; i < wide.Length; i++)
                {
                    Assert.Equal(Failures(row, [wide[i]])[0], together[i]);
                    var alone = mission.Evaluate(geometry with { OffsetMetres = wide[i] });
                    Assert.Equal(together[i] == 0, alone.Failure is null);
                    if (together[i] != 0)
                        Assert.Equal(FlightFailure.FromCode(together[i]), alone.Failure!.Cause);
                }
            },
            iter: 15);
    }

    [Fact]
    public void Row_that_was_not_prepared_has_no_geometry() =>
        Assert.Throws<InvalidOperationException>(() => new MissionRow(mission).Geometry);

    private static double[][] Values(MissionRow row, double[] at)
    {
        var values = new List<double[]>();
        for (var p = 0; p < row.Mission.Phases.Count; p++)
        {
            foreach (var quantity in ResponseCatalogue.OfPhases)
            {
                values.Add(new double[at.Length]);
                quantity.Fill(row, p, at, values[^1]);
            }
        }

        foreach (var quantity in ResponseCatalogue.OfMissions)
        {
            values.Add(new double[at.Length]);
            quantity.Fill(row, at, values[^1]);
        }

        return [.. values];
    }

    private static ushort[] Failures(MissionRow row, double[] at)
    {
        var codes = new ushort[at.Length];
        row.FindFailures(at, codes);
        return codes;
    }

    private static void AssertSameBits(double expected, double actual, string what) =>
        Assert.True(BitConverter.DoubleToInt64Bits(expected) == BitConverter.DoubleToInt64Bits(actual),
            $"{what}: {expected:R} and {actual:R}");
}
