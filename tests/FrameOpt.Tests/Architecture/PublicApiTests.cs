namespace FrameOpt.Tests.Architecture;

/// <summary>A change of the library's public surface is seen in review, because it changes a file.</summary>
public class PublicApiTests
{
    private const string WriteVariable = "FRAMEOPT_WRITE_API";

    private const string Head = """
        The public types and members of the assembly FrameOpt, sorted. This file pins the surface, names and signatures, not what they do.
        PublicApiTests compares it with the build and writes it again when the environment variable FRAMEOPT_WRITE_API is 1.
        """;

    [Fact]
    public void The_public_surface_of_the_library_is_the_one_on_file()
    {
        var path = Path.Combine(Repository.Root, "tests", "FrameOpt.Tests", "Architecture", "FrameOpt.api.txt");
        string[] built = [.. Head.Split('\n'), "", .. PublicApi.Lines(Shipped.Library)];
        if (Environment.GetEnvironmentVariable(WriteVariable) == "1")
            File.WriteAllText(path, string.Join('\n', built) + '\n');
        var filed = File.ReadAllLines(path);
        var changes = filed.Except(built).Select(line => $"- {line}").Concat(built.Except(filed).Select(line => $"+ {line}"));
        Assert.True(filed.SequenceEqual(built),
            $"the public surface changed; if meant, run once with {WriteVariable}=1:\n{string.Join('\n', changes)}");
    }
}
