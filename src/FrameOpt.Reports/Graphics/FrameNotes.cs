using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Graphics;

/// <summary>The two lines under a view of the frame that say between which points it is measured.</summary>
internal static class FrameNotes
{
    /// <summary>Room for both lines.</summary>
    public const double Height = 28;

    /// <summary>The lines.</summary>
    /// <param name="machine">Names the points.</param>
    /// <param name="top">Where their room begins.</param>
    public static IEnumerable<XElement> Of(Machine machine, double top) =>
    [
        Svg.Text("small", 6, top + 11, "start", DatumText.Datum(machine)),
        Svg.Text("small", 6, top + 23, "start", DatumText.HangPoint(machine)),
    ];
}
