using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace Refinish.Tests.House;

/// <summary>
/// What the static fields of the library hold of one kind, however deep in their tables, each with the fields that hold it. What a field
/// of its own holds belongs to that field and not to the tables that mention it.
/// </summary>
internal static class Held
{
    private const BindingFlags Static = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.DeclaredOnly;
    private const BindingFlags Instance = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    /// <summary>
    /// Every object that is held, with the object in which it was found and the field that holds it; no field where another one has it.
    /// </summary>
    public static IEnumerable<(object Value, FieldInfo? Field, object? Within)> In(Assembly library)
    {
        Type[] types = [.. library.GetTypes().Where(type => !type.ContainsGenericParameters)];

        // Lists that are filled when they are first read are read here.
        foreach (PropertyInfo property in types.SelectMany(type => type.GetProperties(Static)))
        {
            _ = property.GetMethod is { } get && get.GetParameters().Length == 0 ? property.GetValue(null) : null;
        }

        (FieldInfo Field, object Value)[] roots = [.. types.SelectMany(type => type.GetFields(Static))
            .Where(field => !field.IsLiteral && !field.FieldType.IsPointer).Select(field => (field, field.GetValue(null)))
            .Where(each => each.Item2 is not null).Select(each => (each.field, each.Item2!))];
        HashSet<object> owned = new(roots.Where(root => !root.Field.FieldType.IsValueType).Select(root => root.Value), new Identity());
        return roots.SelectMany(root => Below(root.Field, root.Value, owned, library));
    }

    private static IEnumerable<(object Value, FieldInfo? Field, object? Within)> Below(
        FieldInfo field, object root, HashSet<object> owned, Assembly library)
    {
        HashSet<object> seen = new(new Identity());
        Stack<(object Value, object? Within)> open = new([(root, (object?)null)]);
        while (open.Count > 0)
        {
            (object value, object? within) = open.Pop();
            bool elsewhere = within is not null && owned.Contains(value);
            if (!elsewhere && !seen.Add(value))
            {
                continue;
            }

            yield return (value, elsewhere ? null : field, within);
            if (elsewhere)
            {
                continue;
            }

            foreach (object part in Parts(value, library))
            {
                open.Push((part, value));
            }
        }
    }

    private static IEnumerable<object> Parts(object value, Assembly library) => value switch
    {
        string or Type or MemberInfo => [],
        Delegate { Target: object closure } => [closure],
        Array { Length: > 0 } array when array.GetType().GetElementType()!.IsPrimitive => [],
        IEnumerable list when list is Array || value.GetType().Assembly != library => list.Cast<object?>().OfType<object>(),
        _ => Fields(value, library),
    };

    private static IEnumerable<object> Fields(object value, Assembly library)
    {
        for (Type? type = value.GetType(); type is not null; type = type.BaseType)
        {
            if (type.Assembly == library || (type.IsGenericType && type.IsValueType))
            {
                foreach (FieldInfo field in type.GetFields(Instance).Where(field => !field.FieldType.IsPrimitive && !field.FieldType.IsPointer))
                {
                    if (field.GetValue(value) is object part)
                    {
                        yield return part;
                    }
                }
            }
        }
    }

    private sealed class Identity : IEqualityComparer<object>
    {
        bool IEqualityComparer<object>.Equals(object? x, object? y) => ReferenceEquals(x, y);

#if NET
        int IEqualityComparer<object>.GetHashCode(object obj) => RuntimeHelpers.GetHashCode(obj);
#else
        // The old framework only compiles this: the pages are held on one host.
        int IEqualityComparer<object>.GetHashCode(object obj) => obj.GetType().GetHashCode();
#endif
    }
}
