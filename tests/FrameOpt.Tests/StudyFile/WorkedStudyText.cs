using System.Text;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Tests.StudyFile;

/// <summary>The study file of the worked balance, and what becomes of it when a piece is written differently.</summary>
internal static class WorkedStudyText
{
    public static string Path { get; } = System.IO.Path.Combine(AppContext.BaseDirectory, "References", "worked-balance.yaml");

    public static string Text { get; } = File.ReadAllText(Path).ReplaceLineEndings("\n");

    /// <summary>Reads text as study.yaml.</summary>
    public static StudyReadResult Read(string text) => StudyReader.Parse(Encoding.UTF8.GetBytes(text), "study.yaml");

    /// <summary>The study's text with one piece, which must be there, written differently.</summary>
    public static string With(string piece, string other)
    {
        Assert.Contains(piece, Text);
        return Text.Replace(piece, other);
    }

    /// <summary>The study, when it must be right.</summary>
    public static Study Right(string text)
    {
        var reading = Read(text);
        Assert.True(reading.Study is not null, string.Join("\n", reading.Diagnostics.Select(diagnostic => diagnostic.Text)));
        return reading.Study!;
    }

    /// <summary>The one mistake, when there must be exactly one.</summary>
    public static Diagnostic OneDiagnostic(string text)
    {
        var reading = Read(text);
        Assert.Null(reading.Study);
        Assert.True(reading.Diagnostics.Count == 1,
            "expected one mistake, got:\n" + string.Join("\n", reading.Diagnostics.Select(diagnostic => diagnostic.Text)));
        return reading.Diagnostics[0];
    }
}
