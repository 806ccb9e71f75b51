using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Compare;

/// <summary>A run read back from its folder.</summary>
/// <param name="Folder">As the user wrote it.</param>
/// <param name="StudyFile">Name of the study file.</param>
/// <param name="Hash">SHA-256 of it.</param>
/// <param name="Version">Of the program that made the run.</param>
/// <param name="Title">The study's.</param>
/// <param name="Variant">Of the study; may be empty.</param>
/// <param name="StopReason">Why the search ended.</param>
/// <param name="IsComplete">False when it was cut short.</param>
/// <param name="Evaluated">Designs.</param>
/// <param name="FrontCount">Designs on the front.</param>
/// <param name="Machine">As understood.</param>
/// <param name="Factors">With the user's units; their levels are in <paramref name="Study"/>.</param>
/// <param name="Study">The whole study as understood.</param>
/// <param name="Warnings">Of the study.</param>
public sealed record ComparedRun(
    string Folder,
    string StudyFile,
    string Hash,
    string Version,
    string Title,
    string Variant,
    string StopReason,
    bool IsComplete,
    long Evaluated,
    int FrontCount,
    Machine Machine,
    IReadOnlyList<StudyFactor> Factors,
    StudyNode Study,
    IReadOnlyList<string> Warnings);
