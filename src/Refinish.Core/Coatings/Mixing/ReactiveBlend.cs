using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>A blend of resins, diluents and fillers, or of amines, or of polyols: total mass over total equivalents.</summary>
/// <remarks>
/// EW = Σm / Σ(m/EW), filler and solvent counting as mass only. Source: calculation sheet for the equivalent weight of epoxy mixtures,
/// equation 1.
/// </remarks>
/// <example><code>
/// ReactiveBlend resin = new([
///     new("liquid resin", Mass.FromGrams(80), MolarMass.FromGramsPerMole(189)),
///     new("diluent", Mass.FromGrams(10), MolarMass.FromGramsPerMole(183)),
///     new("filler", Mass.FromGrams(10), null),
/// ]);
/// double grams = resin.EquivalentWeight.GramsPerMole;   // 209
/// </code></example>
public sealed record ReactiveBlend
{
    private static readonly Source Mixing = Source.Published("calculation sheet for the equivalent weight of epoxy mixtures (public copy)", "equation 1");

    /// <summary>Makes a blend.</summary>
    /// <param name="parts">The ingredients, at least one of which reacts.</param>
    /// <exception cref="ArgumentException">The list is empty, has an empty entry, or nothing in it reacts.</exception>
    public ReactiveBlend(IEnumerable<ReactivePart> parts)
    {
        Parts = Guard.List(parts, 1);
        if (Groups().Value == 0)
        {
            throw new ArgumentException("parts holds nothing that reacts; at least one needs an equivalent weight.", nameof(parts));
        }
    }

    /// <summary>The ingredients.</summary>
    public IReadOnlyList<ReactivePart> Parts { get; }

    /// <summary>Mass of all of them.</summary>
    public Mass Mass => Mass.FromKilograms(Total().Value);

    /// <summary>Moles of reactive groups.</summary>
    public AmountOfSubstance Equivalents => AmountOfSubstance.FromMoles(Groups().Value);

    /// <summary>Grams of the blend per mole of reactive groups.</summary>
    public MolarMass EquivalentWeight => MolarMass.FromKilogramsPerMole(Weight().Value);

    /// <summary>How the equivalent weight follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Blend", Weight);

    /// <summary>Mass and equivalent weight in one line.</summary>
    /// <returns>Text such as <c>100 g, 209.24 g/eq</c>.</returns>
    public override string ToString() => Measure.Mass.Format(Total().Value) + ", " + Measure.EquivalentWeight.Format(Weight().Value);

    private Num Total(Trace? t = null) =>
        t.Step("mass of the blend", "Σm", Measure.Mass, Mixing, Num.Sum(Parts, t, static (part, _, t) => part.MassIn(t)));

    private Num Groups(Trace? t = null) =>
        t.Step("reactive groups", "n", Measure.Equivalents, Mixing, Num.Sum(Parts, t, static (part, _, t) => part.Equivalents(t)));

    private Num Weight(Trace? t = null) =>
        t.Step("equivalent weight of the blend", "EW", Measure.EquivalentWeight, Mixing, Total(t) / Groups(t));
}
