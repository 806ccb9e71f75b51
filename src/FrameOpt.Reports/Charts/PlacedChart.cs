using System.Xml.Linq;

namespace FrameOpt.Reports;

/// <summary>A chart and where it stands.</summary>
/// <param name="SheetName">On this sheet.</param>
/// <param name="Row">Of its upper left corner, from 1.</param>
/// <param name="Column">Of its upper left corner, from 1.</param>
/// <param name="Name">What it shows, for programs that read aloud.</param>
/// <param name="Xml">The chart part.</param>
internal sealed record PlacedChart(string SheetName, int Row, int Column, string Name, XElement Xml);
