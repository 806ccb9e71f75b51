using System.Reflection;

namespace FrameOpt.Tests.Model;

/// <summary>Reads a catalogue whose rows are the static members of their type.</summary>
internal static class Catalogue
{
    /// <summary>The names of the rows as a study file would write them, in the order of the source: HubUp is hub_up.</summary>
    public static IEnumerable<string> MembersInOrder<TRow>() => typeof(TRow)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .OrderBy(field => field.MetadataToken)
        .Select(field => Underscored(field.Name));

    private static string Underscored(string name) =>
        string.Concat(name.Select((letter, i) => char.IsUpper(letter) ? (i > 0 ? "_" : "") + char.ToLowerInvariant(letter)
            : letter.ToString()));
}
