using System.Reflection;

namespace FrameOpt.Tests.Architecture;

/// <summary>The assemblies of this project that the tests refer to, directly or through one another: what is shipped.</summary>
internal static class Shipped
{
    public static IReadOnlyList<Assembly> Assemblies { get; } =
        [.. Referenced(typeof(Shipped).Assembly).Distinct().OrderBy(assembly => assembly.GetName().Name)];

    public static Assembly Library { get; } = Assemblies.Single(assembly => assembly.GetName().Name == "FrameOpt");

    public static Assembly CommandLine { get; } = Assemblies.Single(assembly => assembly.EntryPoint is not null);

    /// <summary>The types of these assemblies, less what source generators put into namespaces of others.</summary>
    public static IReadOnlyList<Type> Types { get; } = [.. Assemblies.SelectMany(assembly => assembly.GetTypes()).Where(Contains)];

    public static bool Contains(Type type) =>
        Assemblies.Contains(type.Assembly) && (type.Namespace ?? "FrameOpt").Split('.')[0] == "FrameOpt";

    /// <summary>The type without its type arguments.</summary>
    public static Type Definition(Type type) => type.IsGenericType ? type.GetGenericTypeDefinition() : type;

    /// <summary>The type around nested types: closures, iterators and async methods count as the type they are written in.</summary>
    public static Type Outermost(Type type)
    {
        while (type.DeclaringType is { } outer)
            type = outer;
        return type;
    }

    private static IEnumerable<Assembly> Referenced(Assembly assembly) =>
        assembly.GetReferencedAssemblies().Where(name => name.Name!.Split('.')[0] == "FrameOpt").Select(Assembly.Load)
            .SelectMany(used => Referenced(used).Append(used));
}
