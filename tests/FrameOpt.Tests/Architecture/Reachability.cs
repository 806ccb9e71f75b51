using System.Reflection;

namespace FrameOpt.Tests.Architecture;

/// <summary>
/// What a program can get to from its entry point: follows every method that a reached body names. An override or implementation is
/// reached once an object of its type can exist (a constructor is reached, or it is a value type) and the method it stands in for is
/// called or belongs to another library, which may call it at any time. Type initialisers run as soon as the type is named.
/// </summary>
internal sealed class Reachability
{
    private readonly Stack<MethodBase> open = new();
    private readonly HashSet<MethodBase> methods = [];
    private readonly HashSet<MethodBase> called = [];
    private readonly HashSet<Type> created = [];
    private readonly List<(MethodBase BoundValue, MethodBase Target)> waiting = [];
    private readonly HashSet<Type> types = [];

    /// <summary>Every shipped type that is reached, type arguments taken away.</summary>
    public static IReadOnlySet<Type> Types(MethodBase entry)
    {
        var walk = new Reachability();
        walk.Reach(entry);
        while (walk.open.TryPop(out var method))
            foreach (var named in Touched.By(method))
                walk.Name(named);
        return walk.types;
    }

    private void Name(MemberInfo named)
    {
        foreach (var type in Touched.Types(named))
            Touch(type);
        if (named is FieldInfo field)
            Name(field.FieldType);
        else if (named is MethodBase { DeclaringType: { HasElementType: false } owner } method && Shipped.Contains(owner))
            Call(Definition(method));
    }

    private void Call(MethodBase method)
    {
        Reach(method);
        if (!method.IsVirtual || !called.Add(BoundValue(method)))
            return;
        foreach (var (_, target) in waiting.Where(entry => entry.BoundValue == BoundValue(method)).ToArray())
            Reach(target);
    }

    private void Reach(MethodBase method)
    {
        if (!methods.Add(method))
            return;
        open.Push(method);
        Touch(method.DeclaringType!);
        if (method is ConstructorInfo { IsStatic: false })
            Create(method.DeclaringType!);
    }

    private void Touch(Type type)
    {
        type = Shipped.Definition(type);
        if (!Shipped.Contains(type) || !types.Add(type))
            return;
        if (type.DeclaringType is { } outer)
            Touch(outer);
        foreach (var named in Touched.By(type))
            Name(named);
        if (type.TypeInitializer is { } initializer)
            Reach(initializer);
        if (type.IsValueType)
            Create(type);
    }

    private void Create(Type type)
    {
        if (!created.Add(type))
            return;
        foreach (var (slot, target) in Overrides(type).Concat(Implementations(type)))
            if (!Shipped.Contains(slot.DeclaringType!) || called.Contains(slot))
                Reach(target);
            else
                waiting.Add((slot, target));
    }

    private static IEnumerable<(MethodBase BoundValue, MethodBase Target)> Overrides(Type type) =>
        type.GetMethods(Touched.Declared).Where(method => method.IsVirtual).Select(method => (BoundValue(method), (MethodBase)method));

    private static IEnumerable<(MethodBase BoundValue, MethodBase Target)> Implementations(Type type) =>
        from contract in type.GetInterfaces()
        let map = type.GetInterfaceMap(contract)
        from pair in map.InterfaceMethods.Zip(map.TargetMethods)
        where pair.Second is not null && Shipped.Contains(pair.Second.DeclaringType!)
        select (Definition(pair.First), Definition(pair.Second));

    /// <summary>The method of the base type that a virtual method overrides, or itself.</summary>
    private static MethodBase BoundValue(MethodBase method) => method is MethodInfo info ? Definition(info.GetBaseDefinition()) : method;

    /// <summary>The method without type arguments, of its type or its own.</summary>
    private static MethodBase Definition(MethodBase method) => method.Module.ResolveMethod(method.MetadataToken)!;
}
