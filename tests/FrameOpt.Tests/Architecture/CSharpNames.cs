using System.Reflection;

namespace FrameOpt.Tests.Architecture;

/// <summary>Types as C# writes them, without namespaces.</summary>
internal static class CSharpNames
{
    private static readonly Dictionary<Type, string> keywords = new()
    {
        [typeof(void)] = "void",
        [typeof(bool)] = "bool",
        [typeof(byte)] = "byte",
        [typeof(char)] = "char",
        [typeof(double)] = "double",
        [typeof(float)] = "float",
        [typeof(int)] = "int",
        [typeof(uint)] = "uint",
        [typeof(long)] = "long",
        [typeof(ulong)] = "ulong",
        [typeof(short)] = "short",
        [typeof(ushort)] = "ushort",
        [typeof(object)] = "object",
        [typeof(string)] = "string",
    };

    private static readonly NullabilityInfoContext nullability = new();

    public static string Of(ParameterInfo parameter) => Of(parameter.ParameterType, nullability.Create(parameter));

    public static string Of(PropertyInfo property) => Of(property.PropertyType, nullability.Create(property));

    public static string Of(FieldInfo field) => Of(field.FieldType, nullability.Create(field));

    public static string Of(Type type) => Of(type, null);

    /// <summary>A nested type after the types it lies in.</summary>
    public static string Short(Type type) => type.DeclaringType is { } outer ? $"{Short(outer)}.{Of(type)}" : Of(type);

    /// <summary>With the namespace.</summary>
    public static string Full(Type type) => $"{type.Namespace}.{Short(type)}";

    private static string Of(Type type, NullabilityInfo? info) =>
        Bare(type, info) + (info?.ReadState == NullabilityState.Nullable && !type.IsValueType ? "?" : "");

    private static string Bare(Type type, NullabilityInfo? info)
    {
        if (Nullable.GetUnderlyingType(type) is { } value)
            return Of(value) + "?";
        if (type.IsByRef)
            return Bare(type.GetElementType()!, info);
        if (type.IsArray)
            return $"{Of(type.GetElementType()!, info?.ElementType)}[{new string(',', type.GetArrayRank() - 1)}]";
        if (type.IsPointer)
            return Of(type.GetElementType()!) + "*";
        if (!type.IsGenericType)
            return keywords.GetValueOrDefault(type, type.Name);
        var all = type.GetGenericArguments().Select((argument, i) => Of(argument, info?.GenericTypeArguments.ElementAtOrDefault(i)));
        var own = string.Join(", ", all.Skip(type.DeclaringType?.GetGenericArguments().Length ?? 0));
        if (type.FullName?.StartsWith("System.ValueTuple`") ?? false)
            return $"({own})";
        return own == "" ? type.Name : $"{type.Name.Split('`')[0]}<{own}>";
    }
}
