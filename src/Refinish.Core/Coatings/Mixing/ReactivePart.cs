using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>One ingredient of a resin or hardener blend: its mass and, if it reacts, its equivalent weight.</summary>
public sealed record ReactivePart
{
    private readonly double mass;
    private readonly double? equivalentWeight;

    /// <summary>Makes an ingredient.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="mass">How much, more than 0 and at most 1000 kg; parts by weight do as grams.</param>
    /// <param name="equivalentWeight">
    /// Grams per mole of reactive groups, 5 to 20 000; <see langword="null"/> for filler, pigment and solvent.
    /// </param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ReactivePart(string name, Mass mass, MolarMass? equivalentWeight)
    {
        Name = Guard.Named(name);
        this.mass = Guard.Within(mass, Bounds.Positive(Measure.Mass, 1000));
        this.equivalentWeight = equivalentWeight is MolarMass grams ? Guard.Within(grams, EquivalentWeights.Grams, nameof(equivalentWeight)) : null;
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>How much.</summary>
    public Mass Mass => Mass.FromKilograms(mass);

    /// <summary>Grams per mole of reactive groups; <see langword="null"/> when it does not react.</summary>
    public MolarMass? EquivalentWeight => equivalentWeight is double grams ? MolarMass.FromKilogramsPerMole(grams) : null;

    internal Num MassIn(Trace? t) => t.Given("m", mass, Measure.Mass);

    internal Num Equivalents(Trace? t) => equivalentWeight is double grams ? MassIn(t) / t.Given("EW", grams, Measure.EquivalentWeight) : 0;

    /// <summary>Name, mass and equivalent weight in one line.</summary>
    /// <returns>Text such as <c>80 g liquid resin, 189 g/eq</c>.</returns>
    public override string ToString() =>
        Measure.Mass.Format(mass) + " " + Name + (equivalentWeight is double grams ? ", " + Measure.EquivalentWeight.Format(grams) : ", does not react");
}
