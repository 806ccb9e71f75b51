using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Web.Language;

#pragma warning disable CS1591 // each says in its own words what it is
/// <summary>Texts of the holes.</summary>
public static partial class Words
{
    public static class Holes
    {
        public const string Title = "Holes";
        public const string Lead =
            "Drag the bar to move both holes, a hole to set how far they are apart, the arrow to turn the thrust line. Arrow keys and "
                + "sliders do the same. Everything snaps to what the study can build.";
        public const string Rear = "FROM BEHIND";
        public const string Top = "FROM ABOVE";
        public const string Side = "FROM THE RIGHT";
        public const string Threefold = "thrust angle drawn 3 times as large";
        public const string Centre = "centre of gravity";
        public const string ThrustLine = "thrust line";
        public const string Left = "◀ pilot's LEFT";
        public const string Right = "pilot's RIGHT ▶";
        public const string Back = "◀ rear";
        public const string Forward = "front ▶";
        public const string LeftHole = "Left hole: spacing";
        public const string RightHole = "Right hole: spacing";
        public const string Both = "Both holes: sideways and height";
        public const string Up = "Height of the hang points";
        public const string Thrust = "Thrust line angle";
        public const string Keep = "Keep to compare";
        public const string ToBaseline = "Back to the baseline";
        public const string WriteBaseline = "Make it the baseline";
        public const string CannotFly = "This design cannot fly.";
        public const string Key =
            "Bar: torque left to the pilot. Shaded: what leaning can hold. Triangles: the same with low (▲ outline) and high (▲ full) yaw "
                + "leverage of the wing.";
        public const string Rpm = "Propeller speed";
        public const string Balanced = "; balanced";
        public const string NoAnswer = "no answer: the propeller's figures do not go so far";
        public const string SteersLeft = "steers left";
        public const string SteersRight = "steers right";
        public const string NotCovered = "outside what the propeller's figures cover";
        public const string TryMachine = "Try another seat, pilot or load";
        public const string SeatSideways = "Seat, sideways";
        public const string Seat = "Seat, forward";
        public const string Pilot = "Pilot";
        public const string Carried = "A camera or a bag besides";
        public const string CarriedAt = "It hangs, sideways";
        public const string TryNote = "Only tried: the study keeps its own figures.";

        public static string Number(string name, string unit) => $"{name} in {unit}";

        public static string Throttle(string phase) => $"Throttle, at the speed of {phase}";

        public static string Within(double within) => FormattableString.Invariant($"balanced, within {within:0.#} N·m");

        public static string SeatBeside(double right) => right == 0 ? "as in the study"
            : FormattableString.Invariant($"{Math.Abs(1000 * right):0} mm further to the {SideText.Side(right)}");

        public static string Beside(double right) => right == 0 ? "in the middle"
            : FormattableString.Invariant($"{Math.Abs(1000 * right):0} mm to the {SideText.Side(right)} of the middle");

        public static string SeatBy(double forward) => forward == 0 ? "as in the study"
            : FormattableString.Invariant($"{Math.Abs(1000 * forward):0} mm further {(forward > 0 ? "forward" : "back")}");

        public static string Mass(double kilograms) =>
            FormattableString.Invariant($"{kilograms:0.0} kg ({OtherUnit.Of($"{kilograms:0.0} kg")})");

        public static string Bar(string residual, double hold) => $"{residual}; leaning can hold {NumberFormat.Text(hold, "N·m")}";

        public static string Loads(PhaseResult phase, double? low, double? high) =>
            $"{SideText.Moment(phase[PhaseQuantity.Residual])}"
                + (low is { } less && high is { } more ? $"; low leverage {SideText.Moment(less)}, high {SideText.Moment(more)}" : "")
                + $"; left riser {NumberFormat.Load(phase[PhaseQuantity.LoadLeft])}, "
                + $"right {NumberFormat.Load(phase[PhaseQuantity.LoadRight])}";
    }
}
