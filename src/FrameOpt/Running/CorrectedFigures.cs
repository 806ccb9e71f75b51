using System.Globalization;
using FrameOpt.Model;
using FrameOpt.Model.Balance;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Running;

/// <summary>Where the uncertain numbers of a study stand in its file, and what they become.</summary>
internal static class CorrectedFigures
{
    private const double LengthResolution = 1e-4;
    private const double MassResolution = 0.05;

    /// <summary>Plain numbers are written to so many digits, and not for a smaller change.</summary>
    private const int Digits = 4;
    private const double LeastShare = 1e-3;

    /// <summary>Puts the corrected numbers in.</summary>
    public static void Change(StudySheet sheet, Study study, IReadOnlyList<LearntNumber> learnt, double spacingMetres)
    {
        double Off(NoiseSource source) => learnt.FirstOrDefault(number => number.Source == source)?.After.Value ?? 0;
        foreach (var (i, item) in study.Machine.Masses.Index())
        {
            var share = Off(item.IsBody ? NoiseSource.PilotMass : NoiseSource.LoadMass);
            string Path(string key) => $"machine.masses.{Text(i)}.{key}";
            Change(sheet, Path("mass"), $"mass of {item.Name}", Dimension.Mass, MassResolution, value => value * (1 + share));
            Change(sheet, Path("volume"), $"volume of {item.Name}", Dimension.Volume, MassResolution / 1000, value => value * (1 + share));
            Change(sheet, Path("right"), $"{item.Name}, to the pilot's right", Dimension.Length, LengthResolution,
                value => value + Off(item.IsBody ? NoiseSource.SeatRight : NoiseSource.FrameRight));
            if (!item.IsBody)
                continue;
            Change(sheet, Path("forward"), $"{item.Name}, forward", Dimension.Length, LengthResolution,
                value => value + Off(NoiseSource.SeatForward));
            Change(sheet, Path("up"), $"{item.Name}, up", Dimension.Length, LengthResolution,
                value => value + Off(MeasurableSource.SeatUp));
        }

        Propeller(sheet, 1 + Off(NoiseSource.PropellerThrust), 1 + Off(NoiseSource.PropellerTorque),
            1 + Off(MeasurableSource.PropellerPitch));
        Scale(sheet, "machine.pilot.drag_area", "drag area", Dimension.Area, 1 + Off(NoiseSource.DragArea));
        for (var i = 0; i < sheet.Count("wing.polar.rows"); i++)
            Scale(sheet, $"wing.polar.rows.{Text(i)}.2", "glide ratio", Dimension.Number, 1 + Off(NoiseSource.GlideRatio));
        Wing(sheet, study.Wing, Corrected(study, learnt), learnt, spacingMetres);
    }

    /// <summary>The wing with the learnt numbers.</summary>
    public static Wing Corrected(Study study, IReadOnlyList<LearntNumber> learnt) => learnt.Aggregate(
        NoiseCase.Of(study.Machine, study.Wing, study.Mission),
        (state, number) => number.Source.Apply(state, number.After.Value)).Wing;

    private static void Propeller(StudySheet sheet, double thrust, double torque, double pitch)
    {
        const string Bench = "machine.propeller.bench", Rows = "machine.propeller.coefficients";
        Scale(sheet, $"{Bench}.thrust", "static thrust of the propeller", Dimension.Force, thrust);
        Scale(sheet, $"{Bench}.torque", "static torque of the propeller", Dimension.Torque, torque);
        Scale(sheet, $"{Bench}.power", "static power of the propeller", Dimension.Power, torque);
        Scale(sheet, $"{Bench}.zero_thrust_advance_ratio", "advance ratio at which the thrust ends", Dimension.Number, pitch);
        if (sheet.Value($"{Bench}.zero_thrust_advance_ratio") is null)
            Scale(sheet, $"{Bench}.pitch", "pitch of the propeller, as it acts", Dimension.Length, pitch);
        for (var i = 0; i < sheet.Count(Rows); i++)
        {
            foreach (var (column, factor) in new[] { pitch, thrust, torque }.Index())
                Scale(sheet, $"{Rows}.{Text(i)}.{Text(column)}", "coefficient of the propeller", Dimension.Number, factor);
        }
    }

    private static void Wing(StudySheet sheet, Wing before, Wing after, IReadOnlyList<LearntNumber> learnt, double spacingMetres)
    {
        void Put(string path, string name, double value, double old, string unit)
        {
            if (Math.Abs(value - old) > LeastShare * Math.Abs(old))
                sheet.Change(path, name, unit.Length == 0 ? Rounded(value) : $"{Rounded(value)} {unit}");
        }

        if (learnt.Any(number => number.Source == NoiseSource.RiserCouplingOfWing))
        {
            var length = RiserStiffness.RollMetres(after, spacingMetres);
            Put("wing.riser_coupling.length", "riser coupling", 1000 * length,
                1000 * RiserStiffness.RollMetres(before, spacingMetres), "mm");
            Put("wing.riser_coupling.at_spacing", "spacing of the riser coupling", 1000 * spacingMetres,
                before.RiserCoupling is RiserCoupling.Measured measured ? 1000 * measured.AtSpacingMetres : 0, "mm");
        }

        Put("wing.roll_restoring", "roll restoring", after.RollRestoring, before.RollRestoring, "");
        switch (before.YawLeverage, after.YawLeverage)
        {
            case (YawLeverage.Constant old, YawLeverage.Constant now):
                Put("wing.yaw_leverage", "yaw leverage", now.Value, old.Value, "");
                break;
            case (YawLeverage.FromSpeed old, YawLeverage.FromSpeed now):
                Put("wing.yaw_leverage.speed_factor", "speed factor of the yaw leverage", now.SpeedFactor, old.SpeedFactor, "s/m");
                Put("wing.yaw_leverage.twist_share", "twist share of the yaw leverage", now.TwistShare, old.TwistShare, "");
                break;
            case (YawLeverage.FromSideslip old, YawLeverage.FromSideslip now):
                Put("wing.sideslip.roll", "roll slope of the sideslip", now.Roll, old.Roll, "");
                Put("wing.sideslip.twist_share", "twist share of the yaw leverage", now.TwistShare, old.TwistShare, "");
                break;
        }
    }

    private static void Scale(StudySheet sheet, string path, string name, Dimension dimension, double factor)
    {
        if (Math.Abs(factor - 1) < LeastShare || sheet.Value(path) is not { } written
            || Parsed(written, dimension) is not var (value, unit))
            return;
        var text = Rounded(factor * value);
        sheet.Change(path, name, unit.Length == 0 ? text : $"{text} {unit}");
    }

    private static void Change(
        StudySheet sheet, string path, string name, Dimension dimension, double resolution, Func<double, double> change)
    {
        if (sheet.Value(path) is not { } written || Parsed(written, dimension) is not var (value, unit))
            return;
        var spelling = dimension.FindUnit(unit)!;
        var (before, after) = (spelling.ToBase(value), change(spelling.ToBase(value)));
        if (Math.Abs(after - before) < resolution / 2)
            return;
        var decimals = Math.Clamp((int)Math.Ceiling(Math.Log10(spelling.ToBase(1) / resolution)), 0, 6);
        sheet.Change(path, name, $"{Math.Round(after / spelling.ToBase(1), decimals).ToString(CultureInfo.InvariantCulture)} {unit}");
    }

    /// <summary>A quantity as written; null where it is none of that dimension.</summary>
    private static (double Value, string Unit)? Parsed(string written, Dimension dimension) =>
        NumberText.Parse(written) is { Message: null } parsed && dimension.FindUnit(parsed.Unit) is not null
            ? (parsed.Value, parsed.Unit) : null;

    private static string Rounded(double value) => value == 0 ? "0" : Math.Round(value,
        Math.Clamp(Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9)).ToString(CultureInfo.InvariantCulture);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
