using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// Reactive groups of the parts of a product against each other: amine hydrogen to epoxide, or isocyanate to hydroxyl, each summed over the
/// parts that state it.
/// </summary>
internal static class ReactiveGroups
{
    private static readonly Source Equivalents = Source.Derived("ratio of equivalents, all cans as supplied");

    /// <summary>Groups that harden per group of the resin; <see langword="null"/> where one side is not stated.</summary>
    /// <param name="product">The product.</param>
    /// <param name="volumes">Volume of each part, in the order of the parts.</param>
    public static double? Index(CoatingProduct product, IReadOnlyList<double> volumes) =>
        Sides(product) is null ? null : Index(product, volumes, "index", "I", null).Value;

    /// <summary>The index at the stated ratio, reducer left out.</summary>
    public static double? Stated(CoatingProduct product) => Index(product, Shares(product));

    /// <summary>Volume shares at the stated ratio.</summary>
    public static double[] Shares(CoatingProduct product) => [.. Enumerable.Range(0, product.Parts.Count).Select(product.ShareOf)];

    /// <summary>The index as a step; only where <see cref="Index(CoatingProduct, IReadOnlyList{double})"/> gives one.</summary>
    public static Num Index(CoatingProduct product, IReadOnlyList<double> volumes, string name, string symbol, Trace? trace)
    {
        (double?[] resin, double?[] hardener) = Sides(product)!.Value;
        return trace.Step(
            name, symbol, Measure.Number, Equivalents, Sum(product, volumes, hardener, trace) / Sum(product, volumes, resin, trace));
    }

    /// <summary>Whether a part states groups that harden.</summary>
    public static bool Hardens(CoatingComponent can) => can.AmineHydrogenEquivalent is not null || can.IsocyanateContent is not null;

    /// <summary>Letter of a part: A, B, C and so on.</summary>
    public static string Letter(int part) => ((char)('A' + part)).ToString();

    private static (double?[] Resin, double?[] Hardener)? Sides(CoatingProduct product)
    {
        double?[] epoxide = [.. product.Parts.Select(part => part.Component.EpoxideEquivalent?.KilogramsPerMole)];
        double?[] hydrogen = [.. product.Parts.Select(part => part.Component.AmineHydrogenEquivalent?.KilogramsPerMole)];
        if (epoxide.Any(one => one is not null) && hydrogen.Any(one => one is not null))
        {
            return (epoxide, hydrogen);
        }

        double?[] hydroxyl = [.. product.Parts.Select(part =>
            part.Component.HydroxylNumber is double number ? EquivalentWeights.OfHydroxyl(number).KilogramsPerMole : (double?)null)];
        double?[] isocyanate = [.. product.Parts.Select(part =>
            part.Component.IsocyanateContent is Ratio content ? EquivalentWeights.OfIsocyanate(content).KilogramsPerMole : (double?)null)];
        return hydroxyl.Any(one => one is not null) && isocyanate.Any(one => one is not null) ? (hydroxyl, isocyanate) : null;
    }

    private static Num Sum(CoatingProduct product, IReadOnlyList<double> volumes, double?[] weights, Trace? trace)
    {
        Num sum = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            if (weights[i] is double weight)
            {
                sum += trace.Given(Of("v", i), volumes[i], Measure.Number)
                    * trace.Given(Of("ρ", i), product.Parts[i].Component.Density.KilogramsPerCubicMeter, Measure.Density)
                    / trace.Given(Of("EW", i), weight, Measure.EquivalentWeight);
            }
        }

        return sum;

        string Of(string symbol, int part) => trace is null ? symbol : symbol + "_" + Letter(part);
    }
}
