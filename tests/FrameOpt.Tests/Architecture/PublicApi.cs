using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace FrameOpt.Tests.Architecture;

/// <summary>The public surface of an assembly as text: types and members, sorted, one a line.</summary>
internal static class PublicApi
{
    public static IEnumerable<string> Lines(Assembly assembly) =>
        from type in assembly.GetExportedTypes().OrderBy(CSharpNames.Full, StringComparer.Ordinal)
        from line in Members(type).Order(StringComparer.Ordinal).Select(member => "    " + member).Prepend(Head(type))
        select line;

    private static string Head(Type type)
    {
        var bases = type.GetInterfaces().Where(contract => Shipped.Contains(contract) || !type.IsValueType && !IsRecord(type))
            .Where(contract => contract.IsVisible).Select(CSharpNames.Of).Order(StringComparer.Ordinal).ToList();
        if (type.BaseType is { } parent && parent != typeof(object) && !type.IsValueType && !IsDelegate(type))
            bases.Insert(0, CSharpNames.Of(parent));
        return $"{Kind(type)} {CSharpNames.Full(type)}{(bases.Count == 0 || IsDelegate(type) ? "" : " : " + string.Join(", ", bases))}";
    }

    private static string Kind(Type type) => type switch
    {
        { IsEnum: true } => "enum",
        { IsInterface: true } => "interface",
        { IsValueType: true } =>
            (type.IsDefined(typeof(IsReadOnlyAttribute)) ? "readonly " : "") + (IsRecord(type) ? "record struct" : "struct"),
        _ when IsDelegate(type) => "delegate",
        { IsAbstract: true, IsSealed: true } => "static class",
        _ => (type.IsAbstract ? "abstract " : type.IsSealed ? "sealed " : "") + (IsRecord(type) ? "record" : "class"),
    };

    private static IEnumerable<string> Members(Type type)
    {
        if (type.IsEnum)
            return Enum.GetNames(type).Select(name => $"{name} = {Value(Convert.ToInt64(Enum.Parse(type, name)))}");
        if (IsDelegate(type))
            return [Method(type.GetMethod("Invoke")!)];
        return type.GetMembers(Touched.Declared).Where(member => member.Name is not "EqualityContract").Select(member => member switch
        {
            ConstructorInfo constructor when IsVisible(constructor) =>
                $"{Access(constructor)}{type.Name.Split('`')[0]}({Parameters(constructor)})",
            MethodInfo method when IsVisible(method) && (!method.IsSpecialName || method.Name.StartsWith("op_")) => Method(method),
            PropertyInfo property => Property(property),
            FieldInfo { IsPublic: true } field => Field(field),
            EventInfo { AddMethod.IsPublic: true } raised => $"event {CSharpNames.Of(raised.EventHandlerType!)} {raised.Name}",
            _ => "",
        }).Where(line => line != "");
    }

    private static string Method(MethodInfo method)
    {
        var generic = method.IsGenericMethod ? $"<{string.Join(", ", method.GetGenericArguments().Select(CSharpNames.Of))}>" : "";
        var reference = method.ReturnType.IsByRef ? "ref " : "";
        return $"{Access(method)}{reference}{CSharpNames.Of(method.ReturnParameter)} {method.Name}{generic}({Parameters(method)})";
    }

    private static string Property(PropertyInfo property)
    {
        var first = property.GetAccessors(nonPublic: true).FirstOrDefault(Shown);
        if (first is null)
            return "";
        var set = property.SetMethod is not { } setter || !Shown(setter) ? ""
            : setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)) ? " init;" : " set;";
        var get = property.GetMethod is { } getter && Shown(getter) ? " get;" : "";
        var required = property.IsDefined(typeof(RequiredMemberAttribute)) ? "required " : "";
        var index = property.GetIndexParameters() is { Length: > 0 } indexes ? $"[{string.Join(", ", indexes.Select(Parameter))}]" : "";
        return $"{Access(first)}{required}{CSharpNames.Of(property)} {property.Name}{index} {{{get}{set} }}";
    }

    private static string Field(FieldInfo field)
    {
        var kind = field.IsLiteral ? "const " : (field.IsStatic ? "static " : "") + (field.IsInitOnly ? "readonly " : "");
        return $"{kind}{CSharpNames.Of(field)} {field.Name}{(field.IsLiteral ? " = " + Value(field.GetRawConstantValue()) : "")}";
    }

    private static string Parameters(MethodBase method) => string.Join(", ", method.GetParameters().Select(Parameter));

    private static string Parameter(ParameterInfo parameter)
    {
        var way = parameter.IsDefined(typeof(ParamArrayAttribute)) || parameter.IsDefined(typeof(ParamCollectionAttribute)) ? "params "
            : !parameter.ParameterType.IsByRef ? "" : parameter.IsOut ? "out " : parameter.IsIn ? "in " : "ref ";
        var otherwise = parameter.HasDefaultValue ? " = " + Value(parameter.RawDefaultValue) : "";
        return $"{way}{CSharpNames.Of(parameter)} {parameter.Name}{otherwise}";
    }

    private static string Value(object? value) => value switch
    {
        null => "default",
        string text => $"\"{text}\"",
        bool truth => truth ? "true" : "false",
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };

    private static string Access(MethodBase method) => (method.IsPublic ? "" : "protected ") + (method.IsStatic ? "static "
        : method.DeclaringType!.IsInterface || !method.IsVirtual || method.IsFinal ? ""
        : method.IsAbstract ? "abstract " : method is MethodInfo info && info.GetBaseDefinition() != info ? "override " : "virtual ");

    /// <summary>Members that the compiler writes for records go without saying.</summary>
    private static bool IsVisible(MethodBase method) => Shown(method) && !method.IsDefined(typeof(CompilerGeneratedAttribute));

    private static bool Shown(MethodBase method) =>
        method.IsPublic || (method.IsFamily || method.IsFamilyOrAssembly) && !method.DeclaringType!.IsSealed;

    private static bool IsDelegate(Type type) => type.IsSubclassOf(typeof(Delegate));

    private static bool IsRecord(Type type) =>
        type.GetMethod("<Clone>$") is not null || type.IsValueType && type.GetMethod("PrintMembers", Touched.Declared) is not null;
}
