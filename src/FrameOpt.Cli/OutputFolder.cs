using FrameOpt.Reports.Files;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>The folder of results of a command: made ready before the work, so that a place that cannot be written to is noticed then, and
/// filled after it.</summary>
internal static class OutputFolder
{
    /// <summary>Makes the folder ready, or says why that cannot be and gives null.</summary>
    /// <param name="path">Where the results should go.</param>
    /// <param name="replace">True to replace results that are there.</param>
    /// <param name="terminal">For the refusal, and for what was found of runs that were killed.</param>
    public static ResultsFolder? Begin(string path, bool replace, Terminal terminal)
    {
        if (ResultsFolder.WriteObstacle(path, replace) is { } refusal)
        {
            terminal.Error.WriteLine(refusal);
            return null;
        }

        ResultsFolder? folder = null;
        if (!OutputOptions.TryWrite(terminal, $"Nothing was computed, because no results could be written to {path}",
            () => folder = ResultsFolder.Begin(path, replace)))
        {
            return null;
        }

        foreach (var leftover in folder!.Leftovers)
            terminal.Error.WriteLine(leftover);
        return folder;
    }

    /// <summary>Fills the folder and puts it in its place; when the disk refuses, saves the results in the system's folder for temporary
    /// files.</summary>
    /// <param name="folder">Made ready.</param>
    /// <param name="write">Writes the files.</param>
    /// <param name="terminal">For what went wrong.</param>
    /// <returns>Where the results are, or null when they could be written nowhere.</returns>
    public static string? Fill(ResultsFolder folder, Action<ResultsFolder> write, Terminal terminal)
    {
        string? place = null;
        void Save(ResultsFolder into)
        {
            write(into);
            place = into.Complete();
        }

        if (OutputOptions.TryWrite(terminal, $"The results could not be written to {folder.Target}", () => Save(folder)))
        {
            if (place != folder.Target)
                terminal.Error.WriteLine($"{folder.Target} was taken in the meantime: the results are in {place}.");
            return place;
        }

        var elsewhere = RunFolder.FirstFreePath(Path.Combine(Path.GetTempPath(), $"frameopt-{Path.GetFileName(folder.Target)}"));
        OutputOptions.TryWrite(terminal, $"They could not be saved in {elsewhere} either", () =>
        {
            using var other = ResultsFolder.Begin(elsewhere, replace: false);
            Save(other);
            terminal.Error.WriteLine($"They are saved in {place}. Move them before the system deletes them.");
        });
        return place;
    }
}
