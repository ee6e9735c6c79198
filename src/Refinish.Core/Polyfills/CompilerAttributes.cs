// The compiler looks these types up by name; netstandard2.0 does not ship them. They stay internal to the package.
#if NETSTANDARD2_0
#pragma warning disable IDE0130 // They must live where the compiler looks.
#pragma warning disable CA1018

namespace System.Runtime.CompilerServices
{
    internal static class IsExternalInit
    {
    }

    [AttributeUsage(AttributeTargets.Class | AttributeTargets.Struct | AttributeTargets.Field | AttributeTargets.Property, Inherited = false)]
    internal sealed class RequiredMemberAttribute : Attribute
    {
    }

    [AttributeUsage(AttributeTargets.All, AllowMultiple = true, Inherited = false)]
    internal sealed class CompilerFeatureRequiredAttribute(string featureName) : Attribute
    {
        public string FeatureName { get; } = featureName;

        public bool IsOptional { get; init; }
    }

    // Without these four the compiler writes its own into the assembly, in a namespace that carries its name.
    [AttributeUsage(AttributeTargets.All, Inherited = false)]
    internal sealed class IsReadOnlyAttribute : Attribute
    {
    }

    [AttributeUsage(AttributeTargets.Module, Inherited = false)]
    internal sealed class RefSafetyRulesAttribute(int version) : Attribute
    {
        public readonly int Version = version;
    }

    [AttributeUsage(AttributeTargets.All, Inherited = false)]
    internal sealed class NullableContextAttribute(byte flag) : Attribute
    {
        public readonly byte Flag = flag;
    }

    [AttributeUsage(AttributeTargets.All, Inherited = false)]
    internal sealed class NullableAttribute : Attribute
    {
        public readonly byte[] NullableFlags;

        public NullableAttribute(byte flag) => NullableFlags = [flag];

        public NullableAttribute(byte[] flags) => NullableFlags = flags;
    }

    [AttributeUsage(AttributeTargets.Parameter)]
    internal sealed class CallerArgumentExpressionAttribute(string parameterName) : Attribute
    {
        public string ParameterName { get; } = parameterName;
    }
}

namespace System.Diagnostics.CodeAnalysis
{
    [AttributeUsage(AttributeTargets.Constructor)]
    internal sealed class SetsRequiredMembersAttribute : Attribute
    {
    }

    [AttributeUsage(AttributeTargets.Property | AttributeTargets.Field | AttributeTargets.Parameter | AttributeTargets.ReturnValue)]
    internal sealed class NotNullAttribute : Attribute
    {
    }
}
#endif
