using System;
using System.Collections.Generic;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace Refinish.Tests.Support;

/// <summary>What a test rests on. Only the first three count as evidence for a number.</summary>
public enum Basis
{
    /// <summary>A published number.</summary>
    Cited,

    /// <summary>Another route, method or tool, named.</summary>
    Independent,

    /// <summary>A law that holds whatever the number: conservation, round trip, limit, symmetry, monotonicity.</summary>
    Identity,

    /// <summary>How the code behaves towards its caller: errors, equality, text, cultures.</summary>
    Contract,

    /// <summary>Our own past output; no evidence, only a tripwire.</summary>
    Regression,
}

/// <summary>Marks a test with what it rests on; shows as the trait "Basis".</summary>
[TraitDiscoverer("Refinish.Tests.Support.EvidenceDiscoverer", "Refinish.Core.Tests")]
[AttributeUsage(AttributeTargets.Method)]
public sealed class EvidenceAttribute(Basis basis, string source) : Attribute, ITraitAttribute
{
    public Basis Basis { get; } = basis;

    public string Source { get; } = source;
}

public sealed class EvidenceDiscoverer : ITraitDiscoverer
{
    public IEnumerable<KeyValuePair<string, string>> GetTraits(IAttributeInfo traitAttribute)
    {
        ArgumentNullException.ThrowIfNull(traitAttribute);
        List<object> arguments = [.. traitAttribute.GetConstructorArguments()];
        yield return new("Basis", ((Basis)arguments[0]).ToString());
    }
}
