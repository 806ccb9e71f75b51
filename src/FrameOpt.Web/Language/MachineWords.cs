namespace FrameOpt.Web.Language;

#pragma warning disable CS1591 // each says in its own words what it is
/// <summary>Texts of the machine and of its holes.</summary>
public static partial class Words
{
    public static class Machine
    {
        public const string Title = "Machine";
        public const string Lead =
            "What hangs from the wing. Type a number with or without its unit, with a point or a comma; kg or lb, mm or inch. Each box says "
                + "back what it understood.";
        public const string StudyTitle = "Name of this study";
        public const string Hanging = "What hangs from the hang points";
        public const string Engine = "Engine and propeller";
        public const string Wing = "Wing";
        public const string More = "More: where everything sits, and the rest";
        public const string Rest = "Speeds, mission, ranges, limits and tables stand in the study file.";
        public const string Understood = "The study can be computed.";
        public const string NotGiven = "not given";
        public const string Lean = "Largest lean of the pilot";
        public const string LeanHint = "how far the body's weight can be held to one side";
        public const string Turns = "Tap the propeller that turns the right way, seen from behind";
        public const string TurnsHow = "Stand behind the machine and look forward, as the pilot looks.";
        public const string Diameter = "Propeller diameter (A)";
        public const string Rpm = "Static run: propeller speed";
        public const string RpmHint = "of the propeller, not of the crank";
        public const string Thrust = "Static run: thrust";
        public const string ThrustHint = "on a scale, tied down";
        public const string Torque = "Static run: torque";
        public const string TorqueHint = "at the propeller";
        public const string Power = "Static run: power";
        public const string Reduction = "Reduction";
        public const string ReductionHint = "crank speed over propeller speed";
        public const string Area = "Wing area";
        public const string Span = "Wing span";
        public const string Flat = "laid out flat";
        public const string WingMass = "Wing mass";
        public const string Lines = "Line length";
        public const string LinesHint = "from the hang points to the wing";
        public const string Hub = "Hub";
        public const string HangLine = "Hang points (E)";
        public const string Tilt = "Thrust line tilt";
        public const string TiltHint = "upward +";
        public const string Pitch = "Propeller pitch";
        public const string Density = "Air density of the static run";
        public const string Efficiency = "Efficiency of the drive";
        public const string Drag = "Drag area of pilot and frame";
        public const string Spread = "Spread of the lines";
        public const string SpreadHint = "between the middles of the left and of the right lines, at the wing";
        public const string PictureTitle = "WHERE IT IS MEASURED, from the pilot's right";
        public const string PictureKey =
            "A diameter, B hub behind the datum (forward is negative), C hub above the datum, E hang points in front of the datum.";
        public const string PictureWords = "Side view of pilot, frame and propeller with the places that are measured.";
        public const string OriginHow = "Where the figure comes from: click to say measured, maker or guess";

        public static string Part(int number) => $"part {number + 1}";

        public static string Position(string name, string axis) => $"{name}, {axis}";

        public static string AxisHint(string axis) => axis switch
        {
            "forward" => "of the datum; behind it negative",
            "right" => "the pilot's right; left negative",
            _ => "above the datum; below it negative",
        };

        public static string Way(bool isClockwise) => isClockwise ? "clockwise" : "counter-clockwise";

        public static string OriginMark(string origin) => origin switch
        {
            "measured" => "● measured",
            "maker" => "◐ maker",
            "guess" => "○ guess",
            _ => "· from?",
        };

        public static string Origin(string label, string origin) =>
            $"{OriginMark(origin)[2..]}: {label} is {(origin.Length == 0 ? "from no source given" : $"said to be {origin}")}; change";
    }
}
