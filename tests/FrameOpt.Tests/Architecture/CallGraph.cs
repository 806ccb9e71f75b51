using System.Reflection;

namespace FrameOpt.Tests.Architecture;

/// <summary>
/// Who uses whom, read from the built assemblies: declarations and the IL of every method body. Nested types, closures, iterators and
/// async methods count as the type they are written in. Constants and enum members leave no trace in IL, see <see cref="Instructions"/>.
/// </summary>
internal static class CallGraph
{
    /// <summary>All uses between two types that are shipped, one for each pair. Program, which has no namespace, is left out.</summary>
    public static IReadOnlyList<TypeUse> Uses { get; } = [.. Shipped.Types.SelectMany(Of)
        .Where(use => use.User != use.Used && Shipped.Contains(use.Used))
        .Where(use => use.User.Namespace is not null && use.Used.Namespace is not null)
        .DistinctBy(use => (use.User, use.Used))];

    /// <summary>All namespaces that hold a type.</summary>
    public static IReadOnlyList<string> Namespaces { get; } =
        [.. Shipped.Types.Select(type => type.Namespace).OfType<string>().Distinct().Order(StringComparer.Ordinal)];

    /// <summary>All uses by one type. Bodies come first: a call shows more than a type in a signature.</summary>
    public static IEnumerable<TypeUse> Of(Type type)
    {
        var user = Shipped.Outermost(type);
        var members = type.GetMembers(Touched.Declared).Where(member => member is not Type).OrderBy(member => member is MethodBase ? 0 : 1);
        var byMembers = from member in members
                        from named in Touched.By(member)
                        from used in Touched.Types(named)
                        select new TypeUse(user, Source(member), Shipped.Outermost(Shipped.Definition(used)), Target(named, used));
        var byHead = from named in Touched.By(type)
                     from used in Touched.Types(named)
                     select new TypeUse(user, "", Shipped.Outermost(Shipped.Definition(used)), "");
        return byMembers.Concat(byHead);
    }

    private static string Target(MemberInfo named, Type used) =>
        named is not Type && named.DeclaringType == used ? Written(named.Name) : "";

    /// <summary>
    /// The name of the method as written: the compiler names the closures of Run &lt;Run&gt;b__0 and its state machine &lt;Run&gt;d__1.
    /// </summary>
    private static string Source(MemberInfo member)
    {
        var own = Written(member.Name);
        return member.DeclaringType is { IsNested: true } nested && Written(nested.Name) is { } outer && outer != nested.Name && outer != ""
            ? outer
            : own;
    }

    private static string Written(string name) => name.StartsWith('<') ? name[1..name.LastIndexOf('>')] : name.TrimStart('.');
}

/// <summary>One type uses another.</summary>
/// <param name="Member">The member of the user, empty for its head (base type, interfaces).</param>
/// <param name="UsedMember">What it names in the other, empty for the type itself.</param>
internal sealed record TypeUse(Type User, string Member, Type Used, string UsedMember)
{
    public override string ToString() => $"{Name(User, Member)} -> {Name(Used, UsedMember)}";

    private static string Name(Type type, string member) => member == "" ? type.FullName! : $"{type.FullName}.{member}";
}
