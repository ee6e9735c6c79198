using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>What all coats of one product take together, by component.</summary>
public sealed record TakeoffLine
{
    private static readonly Source Balance = Source.Derived("sum over the coats, parts by volume and densities of the data sheet");

    internal TakeoffLine(CoatingProduct product, IReadOnlyList<CoatDemand> coats)
    {
        Product = product;
        Coats = coats;
        Mixed = Volume.FromCubicMeters(coats.Sum(coat => coat.Mixed.CubicMeters));
        Reducer = Volume.FromCubicMeters(coats.Sum(coat => coat.Total.CubicMeters - coat.Mixed.CubicMeters));
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Its coats in order.</summary>
    public IReadOnlyList<CoatDemand> Coats { get; }

    /// <summary>All parts together: what kits are bought for.</summary>
    public Volume Mixed { get; }

    /// <summary>Each part, in the order of the product's parts.</summary>
    public IReadOnlyList<PartVolume> Parts =>
        new ValueList<PartVolume>(Product.Parts.Select((part, i) =>
            new PartVolume(part.Component.Id, Volume.FromCubicMeters(Mixed.CubicMeters * Product.ShareOf(i)))));

    /// <summary>Reducer.</summary>
    public Volume Reducer { get; }

    /// <summary>All parts and the reducer by weight.</summary>
    public Mass Weight => Mass.FromKilograms(Weighed().Value);

    /// <summary>What is there against what is needed; the margin is what is left over, and negative when it is short.</summary>
    /// <param name="available">All parts together, bought and left from earlier jobs; 0 to 1000 L.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public LimitComparison Compare(Volume available)
    {
        double there = Guard.Within(available, Bounds.NotNegative(Measure.Capacity, 1));
        return new(
            Product.Name + " there against needed", there, Mixed.CubicMeters, LimitSense.AtLeast, Measure.Liquid, Balance,
            there < Mixed.CubicMeters ? "Get " + Measure.Liquid.Format(Mixed.CubicMeters - there, DisplayUnits.Si, 3) + " more." : null);
    }

    /// <summary>Product and volume in one line.</summary>
    /// <returns>Text such as <c>1.27 L of two-part acrylic urethane topcoat in 3 coats</c>.</returns>
    public override string ToString() =>
        Measure.Capacity.Format(Mixed.CubicMeters, DisplayUnits.Si, 3) + " of " + Product.Name + " in " + Figures.Fixed(Coats.Count, 0)
            + (Coats.Count == 1 ? " coat" : " coats");

    internal Workings Workings()
    {
        Trace t = new();
        foreach (CoatDemand coat in Coats.Distinct())
        {
            t.Part(coat.Workings());
        }

        Num all = AllParts(t);
        Num parts = Num.Sum(Product.Parts.Count, (Line: this, t), static (of, i) => of.Line.PartsOf(of.t, i));
        for (int i = 0; i < Product.Parts.Count; i++)
        {
            t.Step(Product.Parts[i].Component.Name, "V_" + ReactiveGroups.Letter(i), Measure.Liquid, Balance, all * PartsOf(t, i) / parts);
        }

        Weighed(t);
        return t.Workings(Product.Name);
    }

    private Num AllParts(Trace? t) => t is null ? Mixed.CubicMeters : t.Step("all parts", "V_mix", Measure.Liquid, Balance,
        Num.Sum(Coats.Count, (Coats, t), static (of, i) => of.t.Given("V", of.Coats[i].Mixed.CubicMeters, Measure.Liquid)));

    private Num Thinner(Trace? t) => t is null ? Reducer.CubicMeters : t.Step("reducer", "V_R", Measure.Liquid, Balance,
        Num.Sum(Coats.Count, (Coats, t), static (of, i) =>
            of.t.Given("V_all", of.Coats[i].Total.CubicMeters, Measure.Liquid)
            - of.t.Given("V", of.Coats[i].Mixed.CubicMeters, Measure.Liquid)));

    private Num Weighed(Trace? t = null) => t.Step("weight", "m", Measure.Mass, Balance,
        (AllParts(t) * t.Given("ρ_mix", Product.MixedDensity.KilogramsPerCubicMeter, Measure.Density))
        + (Thinner(t) * t.Given("ρ_R", Product.Reducer?.Density.KilogramsPerCubicMeter ?? 0, Measure.Density)));

    private Num PartsOf(Trace t, int part) => t.Given("p_" + ReactiveGroups.Letter(part), Product.Parts[part].Parts, Measure.Number);
}
