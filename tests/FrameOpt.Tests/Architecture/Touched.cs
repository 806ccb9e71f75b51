using System.Reflection;

namespace FrameOpt.Tests.Architecture;

/// <summary>The types, methods and fields that a declaration names.</summary>
internal static class Touched
{
    /// <summary>All members that a type declares itself.</summary>
    public const BindingFlags Declared = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance
        | BindingFlags.DeclaredOnly;

    /// <summary>What the head of a type names: base type, interfaces, constraints, attributes.</summary>
    public static IEnumerable<MemberInfo> By(Type type) =>
        type.GetInterfaces().Concat(type.BaseType is { } parent ? [parent] : [])
            .Concat(Constraints(type.GetGenericArguments())).Concat(Attributes(type));

    /// <summary>What a member names: signature, attributes and, for a method, locals, caught exceptions, every instruction.</summary>
    public static IEnumerable<MemberInfo> By(MemberInfo member) => Attributes(member).Concat(member switch
    {
        MethodBase method => Signature(method).Concat(Body(method)),
        FieldInfo field => [field.FieldType],
        PropertyInfo property => [property.PropertyType],
        _ => [],
    });

    /// <summary>The types in one named thing: itself or the type it belongs to, with element types and type arguments.</summary>
    public static IEnumerable<Type> Types(MemberInfo named) => named switch
    {
        Type type when type.HasElementType => Types(type.GetElementType()!),
        Type { IsFunctionPointer: true } type =>
            type.GetFunctionPointerParameterTypes().Append(type.GetFunctionPointerReturnType()).SelectMany(Types),
        Type { IsGenericParameter: true } => [],
        Type type => type.GetGenericArguments().SelectMany(Types).Append(type),
        MethodBase { IsGenericMethod: true } method => method.GetGenericArguments().SelectMany(Types).Concat(Types(method.DeclaringType!)),
        _ => named.DeclaringType is { } declaring ? Types(declaring) : [],
    };

    private static IEnumerable<MemberInfo> Signature(MethodBase method) =>
        method.GetParameters().SelectMany(parameter => Attributes(parameter.CustomAttributes).Append(parameter.ParameterType))
            .Concat(method is MethodInfo info ? [info.ReturnType] : [])
            .Concat(method.IsGenericMethod ? Constraints(method.GetGenericArguments()) : []);

    private static IEnumerable<MemberInfo> Body(MethodBase method) => method.GetMethodBody() is not { } body
        ? []
        : body.LocalVariables.Select(local => local.LocalType)
            .Concat(body.ExceptionHandlingClauses.Where(clause => clause.Flags == ExceptionHandlingClauseOptions.Clause)
                .Select(clause => clause.CatchType!))
            .Concat(Instructions.Operands(method));

    private static IEnumerable<MemberInfo> Attributes(MemberInfo member) => Attributes(member.CustomAttributes);

    private static IEnumerable<MemberInfo> Attributes(IEnumerable<CustomAttributeData> attributes) =>
        attributes.SelectMany(attribute =>
            attribute.ConstructorArguments.Select(argument => argument.Value).OfType<Type>().Append(attribute.AttributeType));

    private static IEnumerable<Type> Constraints(Type[] arguments) =>
        arguments.Where(argument => argument.IsGenericParameter).SelectMany(argument => argument.GetGenericParameterConstraints());
}
