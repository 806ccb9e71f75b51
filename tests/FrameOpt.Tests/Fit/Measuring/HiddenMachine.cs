using System.Globalization;
using FrameOpt.Fit;
using FrameOpt.Model;
using FrameOpt.Numerics;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Fit.Measuring;

/// <summary>A machine that differs from its study in every uncertain number, and that a script measures with the errors that such
/// readings have.</summary>
internal sealed class HiddenMachine
{
    private readonly Pcg32 random;

    public HiddenMachine(Study study, uint seed)
    {
        (Study, random) = (study, new Pcg32(seed));
        Numbers = MeasuredNumber.Of(study);
        Off = [.. Numbers.Select(number => Math.Clamp(
            number.Before.Start + Normal(number.Before.StandardDeviation), number.Before.Low, number.Before.High))];
    }

    public Study Study { get; }

    public IReadOnlyList<MeasuredNumber> Numbers { get; }

    /// <summary>The true deviations, known to nobody who measures.</summary>
    public double[] Off { get; }

    public MeasuredState State => MeasuredNumber.State(Study, Numbers, Off);

    public double Normal(double deviation) => deviation * Quantile.Normal(Math.Max(1e-12, random.NextDouble()));

    /// <summary>A run as it would be read.</summary>
    public MeasuredRun Read(MeasuredRun run)
    {
        IReadOnlyList<ReadingKind> kinds = [.. run.Readings.Select(reading => reading.Kind)];
        var truth = MeasurementModel.Predict(run, kinds, State);
        return run with
        {
            Readings = [.. kinds.Select((kind, k) => (kind, truth[k] + Normal(kind.Read(truth[k]).StandardDeviation)))],
        };
    }

    /// <summary>A form as text with its empty cells filled in.</summary>
    public string Fill(string csv, FrameGeometry frame) =>
        string.Join('\n', csv.Split('\n').Select(line => line.Split(',') is [{ Length: 6 } name, ..] cells && name[3] == '-'
            ? string.Join(',', Filled(cells, frame)) : line));

    private string[] Filled(string[] cells, FrameGeometry frame)
    {
        var hole = frame with { OffsetMetres = Offset(cells[2]) };
        void Put(int column, double value) => cells[column] = value.ToString("0.00", CultureInfo.InvariantCulture);
        void PutSided(int column, double value, string plus, string minus)
        {
            Put(column, Math.Abs(value));
            cells[column + 1] = value < 0 ? minus : plus;
        }

        var (reduction, kgf) = (Study.Machine.Engine!.Reduction, Constants.NewtonsPerKilogramForce);
        Dictionary<ReadingKind, double> Readings(MeasuredRun run) =>
            Read(run with { Readings = [.. run.Kinds.Select(kind => (kind, 0.0))] }).Readings
                .ToDictionary(pair => pair.Kind, pair => pair.Value);
        switch (cells[0][0])
        {
            case 'B':
                var rpm = Number(cells[2]);
                var bench = Readings(new MeasuredRun.Bench("", rpm / reduction, Atmosphere.DensityKgPerM3(250, 5)));
                Put(3, rpm);
                Put(4, bench[ReadingKind.Thrust] / kgf);
                Put(5, bench[ReadingKind.Torque]);
                Put(7, Atmosphere.TemperatureKelvin(250, 5) - 273.15);
                Put(8, 250);
                break;
            case 'H':
                var scales = Readings(new MeasuredRun.Hang("", hole, cells[3] == "changed over"));
                Put(4, scales[ReadingKind.LeftScale] / kgf);
                Put(5, scales[ReadingKind.RightScale] / kgf);
                break;
            case 'A':
                PutSided(4, Readings(new MeasuredRun.Angle("", hole, Number(cells[3]) * kgf))[ReadingKind.HangAngle], "back", "forward");
                break;
            default:
                var power = cells[3] == "off" ? (PhasePower)new PhasePower.EngineOff()
                    : new PhasePower.AtRpm(Number(cells[3].Split(' ')[0]) / reduction);
                var lead = Number(cells[5]) * (cells[6] == "left" ? -1 : 1);
                var phase = new Phase("", 0, new FlightSpeed.AtFraction(Number(cells[4]) / 100), power, 500);
                var read = Readings(new MeasuredRun.Flight("", hole, phase, lead));
                if (power is PhasePower.AtRpm)
                    Put(7, Number(cells[3].Split(' ')[0]));
                Put(8, 3.6 * read[ReadingKind.Airspeed]);
                Put(9, 500);
                PutSided(10, read[ReadingKind.Climb], "up", "down");
                if (lead == 0)
                {
                    PutSided(13, read[ReadingKind.Lean], "right", "left");
                    break;
                }

                var seconds = 360 / Math.Abs(read[ReadingKind.Turn]);
                cells[15] = seconds > 1200 ? "straight" : read[ReadingKind.Turn] < 0 ? "left" : "right";
                if (seconds <= 1200)
                    Put(16, seconds);
                PutSided(17, read[ReadingKind.BarTilt], "right", "left");
                break;
        }

        return cells;
    }

    private static double Offset(string text) => text.Contains("mm", StringComparison.Ordinal)
        ? Number(text.Split(' ')[0]) / 1000 * (text.EndsWith("left", StringComparison.Ordinal) ? -1 : 1) : 0;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
