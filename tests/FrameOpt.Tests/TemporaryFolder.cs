namespace FrameOpt.Tests;

/// <summary>A folder of a test's own, gone when the test is over.</summary>
public sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("frameopt-test-");

    public string this[string name] => Path.Combine(folder.FullName, name);

    public void Dispose() => folder.Delete(recursive: true);
}
