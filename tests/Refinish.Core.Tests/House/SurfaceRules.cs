using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;

namespace Refinish.Tests.House;

/// <summary>
/// The rules of the public surface: no optional parameter, no tuple, and no type that takes some of its inputs in a constructor and others
/// in init properties beside it. A table of inputs is the exception: a record made from <c>InputValues</c> has a property for each of them.
/// </summary>
internal static class SurfaceRules
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>What breaks a rule, one a line: the rule, the member, and what of it.</summary>
    public static IEnumerable<string> Offences(Assembly assembly) => assembly.GetExportedTypes()
        .Where(type => type.Assembly == assembly && !type.IsEnum)
        .SelectMany(type => Optional(type).Concat(Tuples(type)).Concat(Mixed(type)))
        .Distinct()
        .OrderBy(offence => offence, StringComparer.Ordinal);

    private static IEnumerable<string> Optional(Type type) =>
        from method in Methods(type)
        from parameter in method.GetParameters()
        where parameter.IsOptional
        select "optional: " + Name(type, method) + "(" + parameter.Name + ")";

    private static IEnumerable<string> Tuples(Type type) => Methods(type)
        .Where(method => method.GetParameters().Any(parameter => HasTuple(parameter.ParameterType)) || (method is MethodInfo { ReturnType: Type result } && HasTuple(result)))
        .Select(method => "tuple: " + Name(type, method))
        .Concat(type.GetFields(Declared).Where(field => HasTuple(field.FieldType)).Select(field => "tuple: " + type.FullName + "." + field.Name));

    private static IEnumerable<string> Mixed(Type type)
    {
        ParameterInfo[] parameters = [.. type.GetConstructors(Declared).Where(constructor => !constructor.IsStatic).SelectMany(constructor => constructor.GetParameters())];
        return parameters.Length == 0 || Array.Exists(parameters, parameter => parameter.ParameterType == typeof(InputValues))
            ? []
            : type.GetProperties(Declared)
                .Where(property => property.SetMethod is { IsPublic: true }
                    && !Array.Exists(parameters, parameter => string.Equals(parameter.Name, property.Name, StringComparison.OrdinalIgnoreCase)))
                .Select(property => "beside a constructor: " + type.FullName + "." + property.Name);
    }

    // Properties by what reads and writes them.
    private static IEnumerable<MethodBase> Methods(Type type) => type.GetMethods(Declared).Cast<MethodBase>()
        .Concat(type.GetConstructors(Declared).Where(constructor => !constructor.IsStatic));

    private static bool HasTuple(Type type) =>
        (type.FullName ?? type.Name).StartsWith("System.ValueTuple", StringComparison.Ordinal)
        || (type.GetElementType() is Type element && HasTuple(element))
        || Array.Exists(type.GetGenericArguments(), HasTuple);

    private static string Name(Type type, MethodBase method) =>
        method.IsConstructor ? "new " + type.FullName : type.FullName + "." + method.Name.Replace("get_", string.Empty).Replace("set_", string.Empty);
}
