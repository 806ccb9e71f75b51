using System.Reflection;
using FrameOpt.Studies;

namespace FrameOpt.Tests;

/// <summary>Dependencies point one way: Studies, then Search and Analysis, then Model; Model and Search never see each other.</summary>
public class ArchitectureTests
{
    private static readonly Dictionary<string, string[]> mayUse = new()
    {
        ["FrameOpt.Model"] = [],
        ["FrameOpt.Plans"] = [],
        ["FrameOpt.Search"] = ["FrameOpt.Plans"],
        ["FrameOpt.Analysis"] = ["FrameOpt.Model", "FrameOpt.Plans"],
        ["FrameOpt.Line"] = ["FrameOpt.Model", "FrameOpt.Plans"],
        ["FrameOpt.Studies"] = ["FrameOpt.Model", "FrameOpt.Search", "FrameOpt.Analysis", "FrameOpt.Plans", "FrameOpt.Line"],
    };

    [Fact]
    public void Each_part_of_the_library_uses_only_the_parts_below_it()
    {
        foreach (var type in typeof(Study).Assembly.GetTypes().Where(type => type.Namespace is not null))
        {
            var part = Part(type);
            if (!mayUse.TryGetValue(part, out var allowed))
                continue;
            foreach (var used in Used(type).Select(Part).Where(used => used.StartsWith("FrameOpt.") && used != part))
                Assert.True(allowed.Contains(used), $"{type.FullName} uses {used}");
        }
    }

    [Fact]
    public void The_library_knows_nothing_of_reports_and_command_line() =>
        Assert.DoesNotContain(typeof(Study).Assembly.GetReferencedAssemblies(), name =>
            name.Name!.StartsWith("FrameOpt.") || name.Name is "ClosedXML" or "Spectre.Console" or "System.CommandLine");

    private static string Part(Type type) => string.Join('.', (type.Namespace ?? "").Split('.').Take(2));

    /// <summary>Every type in the fields, properties, signatures and local variables of a type.</summary>
    private static IEnumerable<Type> Used(Type type)
    {
        const BindingFlags all = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
        var used = type.GetFields(all).Select(field => field.FieldType)
            .Concat(type.GetProperties(all).Select(property => property.PropertyType))
            .Concat(type.GetInterfaces());
        foreach (var method in type.GetMethods(all).Cast<MethodBase>().Concat(type.GetConstructors(all)))
        {
            used = used.Concat(method.GetParameters().Select(parameter => parameter.ParameterType));
            if (method is MethodInfo info)
                used = used.Append(info.ReturnType);
            if (method.GetMethodBody() is { } body)
                used = used.Concat(body.LocalVariables.Select(local => local.LocalType));
        }

        return used.SelectMany(Parts);
    }

    private static IEnumerable<Type> Parts(Type type)
    {
        if (type.HasElementType)
            return Parts(type.GetElementType()!);
        return type.IsGenericType ? type.GetGenericArguments().SelectMany(Parts).Append(type) : [type];
    }
}
