namespace FrameOpt.Tests.Architecture;

/// <summary>Files are small, folders are few files, and the folder says the namespace.</summary>
public class TreeTests
{
    private const int MostFiles = 25;
    private const int MostLines = 200;
    private const int MostColumns = 140;
    private const int FewestCodeLines = 6;

    /// <summary>Files that may be longer or shorter than the rest, each with its reason.</summary>
    private static readonly Dictionary<string, string> exceptions = new()
    {
        ["src/FrameOpt.Cli/Program.cs"] = "the entry point only hands over",
    };

    private static readonly string[] files = [.. SourceFiles.Under([".cs"], "src", "tests")];

    [Fact]
    public void The_namespace_of_a_file_is_its_folder()
    {
        var wrong = from file in files
                    let folder = string.Join('.', file.Split('/')[1..^1])
                    from line in SourceFiles.Lines(file)
                    where line.StartsWith("namespace ") && line != $"namespace {folder};"
                    select $"{file}: {line} should be {folder}";
        None("namespaces that are not their folder", wrong);
    }

    [Fact]
    public void No_folder_holds_more_files_than_a_reader_can_take_in() =>
        None($"folders of more than {MostFiles} files", files.GroupBy(Path.GetDirectoryName).Where(folder => folder.Count() > MostFiles)
            .Select(folder => $"{folder.Key}: {folder.Count()} files"));

    [Fact]
    public void No_file_is_long() => None($"files of more than {MostLines} lines", files.Where(IsLong).Where(NotExcepted)
        .Select(file => $"{file}: {SourceFiles.Lines(file).Length} lines"));

    [Fact]
    public void No_file_of_the_source_holds_next_to_nothing() =>
        None($"files of fewer than {FewestCodeLines} lines of code; each belongs beside what it serves",
            files.Where(IsShort).Where(NotExcepted));

    [Fact]
    public void No_line_is_wide()
    {
        var wide = from file in files
                   from line in SourceFiles.Lines(file).Index()
                   where line.Item.Length > MostColumns
                   select $"{file}:{line.Index + 1}: {line.Item.Length} columns";
        None($"lines of more than {MostColumns} columns", wide);
    }

    [Fact]
    public void Every_exception_is_still_needed() =>
        None("exceptions without need", exceptions.Keys.Where(file => !files.Contains(file) || !IsLong(file) && !IsShort(file)));

    private static bool NotExcepted(string file) => !exceptions.ContainsKey(file);

    private static bool IsLong(string file) => SourceFiles.Lines(file).Length > MostLines;

    private static bool IsShort(string file) => file.StartsWith("src/") && SourceFiles.Lines(file).Count(IsCode) < FewestCodeLines;

    private static bool IsCode(string line) => line.Trim() is not "" and var code
        && !code.StartsWith("//") && !code.StartsWith("namespace ") && !(code.StartsWith("using ") && !line.StartsWith(' '));

    private static void None(string what, IEnumerable<string> found)
    {
        var all = found.ToArray();
        Assert.True(all.Length == 0, $"{all.Length} {what}:\n{string.Join('\n', all)}");
    }
}
