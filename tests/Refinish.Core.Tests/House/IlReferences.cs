using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Reflection.Emit;

namespace Refinish.Tests.House;

/// <summary>The types that a type of the compiled assembly uses: in signatures, fields and locals, and in the instructions of its methods.</summary>
internal static class IlReferences
{
    private const BindingFlags Everything = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<short, OpCode> OpCodesByValue = typeof(OpCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(field => (OpCode)field.GetValue(null)!)
        .ToDictionary(code => code.Value);

    public static IEnumerable<Type> Of(Type type)
    {
        HashSet<Type> found = [];
        Add(found, type.BaseType);
        foreach (Type contract in type.GetInterfaces())
        {
            Add(found, contract);
        }

        foreach (FieldInfo field in type.GetFields(Everything))
        {
            Add(found, field.FieldType);
        }

        foreach (MethodBase method in type.GetMethods(Everything).Cast<MethodBase>().Concat(type.GetConstructors(Everything)))
        {
            foreach (ParameterInfo parameter in method.GetParameters())
            {
                Add(found, parameter.ParameterType);
            }

            Add(found, (method as MethodInfo)?.ReturnType);
            AddBody(found, method);
        }

        return found;
    }

    /// <summary>What the methods of a type call, each with the method that calls it.</summary>
    public static IEnumerable<(MethodBase By, MethodBase Called)> Calls(Type type) => Members(type)
        .Where(item => item.Member is MethodBase).Select(item => (item.By, (MethodBase)item.Member));

    /// <summary>The instructions of a type's methods that name a member, in order, each with its method and that member.</summary>
    public static IEnumerable<(MethodBase By, OpCode Code, MemberInfo Member)> Members(Type type) =>
        from method in type.GetMethods(Everything).Cast<MethodBase>().Concat(type.GetConstructors(Everything))
        where method.GetMethodBody() is not null
        from item in Members(method, method.GetMethodBody()!)
        select (method, item.Code, item.Member);

    private static void AddBody(HashSet<Type> found, MethodBase method)
    {
        MethodBody? body = method.GetMethodBody();
        if (body is null)
        {
            return;
        }

        foreach (LocalVariableInfo local in body.LocalVariables)
        {
            Add(found, local.LocalType);
        }

        foreach ((OpCode _, MemberInfo member) in Members(method, body))
        {
            Add(found, member as Type ?? member.DeclaringType);
            if (member is MethodInfo { IsGenericMethod: true } called)
            {
                foreach (Type argument in called.GetGenericArguments())
                {
                    Add(found, argument);
                }
            }
        }
    }

    // The instructions of a body that name a member, with that member.
    private static IEnumerable<(OpCode Code, MemberInfo Member)> Members(MethodBase method, MethodBody body)
    {
        byte[] il = body.GetILAsByteArray()!;
        Type[] typeArguments = method.DeclaringType is { IsGenericType: true } generic ? generic.GetGenericArguments() : [];
        Type[] methodArguments = method.IsGenericMethod ? method.GetGenericArguments() : [];
        int at = 0;
        while (at < il.Length)
        {
            short value = il[at] == 0xFE ? (short)(0xFE00 | il[at + 1]) : il[at];
            at += il[at] == 0xFE ? 2 : 1;
            OpCode code = OpCodesByValue[value];
            if (code.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineType or OperandType.InlineTok)
            {
                yield return (code, method.Module.ResolveMember(BitConverter.ToInt32(il, at), typeArguments, methodArguments)!);
            }

            at += code.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(il, at)),
                _ => 4,
            };
        }
    }

    private static void Add(HashSet<Type> found, Type? type)
    {
        if (type is null || type.IsGenericParameter)
        {
            return;
        }

        if (type.HasElementType)
        {
            Add(found, type.GetElementType());
            return;
        }

        if (!found.Add(type))
        {
            return;
        }

        if (type.IsGenericType)
        {
            foreach (Type argument in type.GetGenericArguments())
            {
                Add(found, argument);
            }
        }
    }
}
