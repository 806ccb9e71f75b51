using System.Reflection;

namespace FrameOpt.Tests.Architecture;

/// <summary>What is shipped can be got to from the command line.</summary>
public class ReachableTypesTests
{
    private const string Browser = "the application in the browser says quantities with it";

    /// <summary>Public types that no command reaches, by name, each with what needs it.</summary>
    private static readonly Dictionary<string, string> notReached = new()
    {
        ["OtherUnit"] = Browser,
        ["ModelSharesPictures"] = "the application in the browser draws them",
    };

    [Fact]
    public void Every_public_type_is_reached_from_the_command_line_or_listed_here_with_its_reason()
    {
        var reached = Reachability.Types(Shipped.CommandLine.EntryPoint!);
        var unreached = Shipped.Types.Where(type => type.IsVisible && type.Assembly != Shipped.CommandLine)
            .Where(type => !reached.Contains(type) && !HoldsConstantsOnly(type)).Select(CSharpNames.Short).ToHashSet();
        var unlisted = unreached.Except(notReached.Keys).Order(StringComparer.Ordinal).ToArray();
        var stale = notReached.Keys.Except(unreached).ToArray();
        Assert.True(unlisted.Length == 0, $"{unlisted.Length} public types that nothing reaches:\n{string.Join('\n', unlisted)}");
        Assert.True(stale.Length == 0, $"listed as not reached, but reached or gone:\n{string.Join('\n', stale)}");
    }

    /// <summary>Constants are copied into the code that uses them; their type leaves no trace there.</summary>
    private static bool HoldsConstantsOnly(Type type) =>
        type is { IsAbstract: true, IsSealed: true }
        && type.GetMembers(Touched.Declared).All(member => member is FieldInfo { IsLiteral: true });
}
