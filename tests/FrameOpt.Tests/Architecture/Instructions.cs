using System.Reflection;
using System.Reflection.Emit;

namespace FrameOpt.Tests.Architecture;

/// <summary>
/// Reads the IL of a method body. What the compiler resolves never reaches IL and is not seen: constants (their value is copied) and
/// enum members (they become integers). A call through a function pointer names no method; the instruction that took its address does.
/// </summary>
internal static class Instructions
{
    private static readonly Dictionary<int, OpCode> codes = typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(field => (OpCode)field.GetValue(null)!).ToDictionary(code => (int)(ushort)code.Value);

    /// <summary>The types, methods and fields that the instructions of a body name, in order; none for a method without a body.</summary>
    public static IEnumerable<MemberInfo> Operands(MethodBase method)
    {
        if (method.GetMethodBody()?.GetILAsByteArray() is not { } il)
            yield break;
        var ofType = method.DeclaringType!.GetGenericArguments();
        var ofMethod = method.IsGenericMethod ? method.GetGenericArguments() : [];
        for (var at = 0; at < il.Length;)
        {
            int value = il[at++];
            if (value == 0xFE)
                value = (value << 8) | il[at++];
            var operand = codes[value].OperandType;
            if (operand is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineType or OperandType.InlineTok)
                yield return method.Module.ResolveMember(BitConverter.ToInt32(il, at), ofType, ofMethod)!;
            at += Size(operand, il, at);
        }
    }

    private static int Size(OperandType operand, byte[] il, int at) => operand switch
    {
        OperandType.InlineNone => 0,
        OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
        OperandType.InlineVar => 2,
        OperandType.InlineI8 or OperandType.InlineR => 8,
        OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(il, at),
        _ => 4,
    };
}
