using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Reflection;
using System.Text;

namespace Refinish.Tests.House;

/// <summary>The public surface of an assembly as sorted lines of text, one type or member a line.</summary>
internal static class PublicApi
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    public static string Of(Assembly assembly)
    {
        StringBuilder text = new();
        // What is only forwarded to the framework is not ours.
        foreach (Type type in assembly.GetExportedTypes().Where(type => type.Assembly == assembly).OrderBy(type => type.FullName, StringComparer.Ordinal))
        {
            text.Append(Kind(type)).Append(' ').Append(type.FullName).Append('\n');
            foreach (string member in Members(type).Order(StringComparer.Ordinal))
            {
                text.Append("    ").Append(member).Append('\n');
            }
        }

        return text.ToString();
    }

    private static string Kind(Type type) =>
        type.IsEnum ? "enum"
        : type.IsInterface ? "interface"
        : type.IsValueType ? "struct"
        : type.IsAbstract && type.IsSealed ? "static class"
        : type.IsAbstract ? "abstract class"
        : type.IsSealed ? "sealed class"
        : "class";

    private static IEnumerable<string> Members(Type type)
    {
        if (type.IsEnum)
        {
            return Enum.GetNames(type).Select(name => name + " = " + Convert.ToInt64(Enum.Parse(type, name), CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture));
        }

        // What every record has by itself says nothing about the design.
        static bool IsRecordNoise(MethodInfo method) => method.Name is "Equals" or "GetHashCode" or "<Clone>$" or "op_Equality" or "op_Inequality" or "Deconstruct";
        IEnumerable<string> constructors = type.GetConstructors(Declared).Select(constructor => "new(" + Parameters(constructor) + ")");
        IEnumerable<string> fields = type.GetFields(Declared).Select(field => "field " + Name(field.FieldType) + " " + field.Name);
        IEnumerable<string> properties = type.GetProperties(Declared).Select(Property);
        IEnumerable<string> methods = type.GetMethods(Declared)
            .Where(method => (!method.IsSpecialName || method.Name.StartsWith("op_", StringComparison.Ordinal)) && !IsRecordNoise(method))
            .Select(method => (method.IsStatic ? "static " : string.Empty) + Name(method.ReturnType) + " " + method.Name + Generics(method) + "(" + Parameters(method) + ")");
        return constructors.Concat(fields).Concat(properties).Concat(methods);
    }

    private static string Property(PropertyInfo property)
    {
        bool required = property.CustomAttributes.Any(attribute => attribute.AttributeType.Name == "RequiredMemberAttribute");
        bool writable = property.SetMethod is { IsPublic: true };
        bool isStatic = property.GetMethod?.IsStatic == true;
        string index = property.GetIndexParameters().Length == 0 ? string.Empty : "[" + string.Join(", ", property.GetIndexParameters().Select(parameter => Name(parameter.ParameterType))) + "]";
        return (isStatic ? "static " : string.Empty) + (required ? "required " : string.Empty) + Name(property.PropertyType) + " " + property.Name + index + (writable ? " { get; init; }" : " { get; }");
    }

    private static string Parameters(MethodBase method) =>
        string.Join(", ", method.GetParameters().Select(parameter => Name(parameter.ParameterType) + " " + parameter.Name + (parameter.HasDefaultValue ? " = default" : string.Empty)));

    private static string Generics(MethodInfo method) =>
        method.IsGenericMethod ? "<" + string.Join(", ", method.GetGenericArguments().Select(Name)) + ">" : string.Empty;

    private static string Name(Type type)
    {
        if (Nullable.GetUnderlyingType(type) is Type underlying)
        {
            return Name(underlying) + "?";
        }

        if (type.IsArray)
        {
            return Name(type.GetElementType()!) + "[]";
        }

        string name = type.Name.Split('`')[0];
        return type.IsGenericType ? name + "<" + string.Join(", ", type.GetGenericArguments().Select(Name)) + ">" : name;
    }
}
