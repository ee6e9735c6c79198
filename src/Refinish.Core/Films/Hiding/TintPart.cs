using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>One part of a tinted film: its optics and how much of the dry film it makes up.</summary>
public sealed record TintPart
{
    /// <summary>Makes a part.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="optics">Absorption and scattering of a film of this part alone.</param>
    /// <param name="share">
    /// Parts by volume of dry film, more than 0 and at most 100 000 %; only the proportion between the parts counts.
    /// </param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public TintPart(string name, PaintOptics optics, Ratio share)
    {
        Name = Guard.Named(name);
        Optics = Guard.NotNull(optics);
        Parts = Guard.Within(share, Bounds.Positive(Measure.Percent, 1000));
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Absorption and scattering of a film of this part alone.</summary>
    public PaintOptics Optics { get; }

    /// <summary>Parts by volume of dry film.</summary>
    public Ratio Share => Ratio.FromDecimalFractions(Parts);

    internal double Parts { get; }

    /// <summary>The part in one line.</summary>
    /// <returns>Text such as <c>white base: 98 %</c>.</returns>
    public override string ToString() => Name + ": " + Measure.Percent.Format(Parts);
}
