using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Substrates;

/// <summary>A material with the signs that speak for it and against it.</summary>
public sealed record MaterialCandidate
{
    internal MaterialCandidate(FixtureMaterial material, IEnumerable<MaterialSign> observed)
    {
        Material = material;
        MaterialSign[] signs = [.. observed];
        For = new ValueList<MaterialSign>(signs.Where(sign => sign.SpeaksFor.Contains(material)));
        Against = new ValueList<MaterialSign>(signs.Where(sign => sign.SpeaksAgainst.Contains(material)));
    }

    /// <summary>The material.</summary>
    public FixtureMaterial Material { get; }

    /// <summary>Signs that speak for it.</summary>
    public IReadOnlyList<MaterialSign> For { get; }

    /// <summary>Signs that speak against it.</summary>
    public IReadOnlyList<MaterialSign> Against { get; }

    /// <summary>Whether something speaks for it and nothing against it. That is not yet to know that it is so.</summary>
    public bool IsConsistent => For.Count > 0 && Against.Count == 0;

    /// <summary>The material and what speaks for and against it.</summary>
    /// <returns>Text such as <c>enamelled cast iron: for it I-01, I-03; against it nothing</c>.</returns>
    public override string ToString() => Material.Name + ": for it " + Codes(For) + "; against it " + Codes(Against);

    private static string Codes(IReadOnlyList<MaterialSign> signs) => signs.Count == 0 ? "nothing" : string.Join(", ", signs.Select(sign => sign.Code));
}
