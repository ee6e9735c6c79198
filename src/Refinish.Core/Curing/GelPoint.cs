using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// The conversion at which a mix stops flowing because one molecule reaches through all of it: p_c = 1 / √(r (f − 1)(g − 1)) by Flory and Stockmayer,
/// 2 / f_avg by Carothers.
/// </summary>
/// <remarks>
/// <para>f and g are the functionalities of the two parts (a diamine has four amine hydrogens, a diepoxide two epoxides), r the reactive groups of the part that runs
/// out first per group of the other. P. J. Flory, Principles of Polymer Chemistry (1953), chapter IX; W. H. Carothers (1936); both from memory, the algebra is elementary.</para>
/// <para>Flory and Stockmayer neglect rings and come out early, Carothers counts averages and comes out late; real mixes gel in between. Solvent delays it in time,
/// not in conversion.</para>
/// </remarks>
/// <example><code>
/// GelPoint amineEpoxy = new(4, 2);
/// Ratio? early = amineEpoxy.FloryStockmayer;      // 57.7 %
/// Ratio? late = amineEpoxy.Carothers;             // 75 %
/// </code></example>
public sealed record GelPoint
{
    private static readonly Bounds Functionalities = Bounds.Between(2, 20, Measure.Number);
    private static readonly Source Flory = Source.Published("P. J. Flory, Principles of Polymer Chemistry (1953)", "chapter IX (from memory)");
    private static readonly Source ByAverages = Source.FromMemory("W. H. Carothers, Transactions of the Faraday Society 32 (1936) 39");

    /// <summary>Two parts that react with each other.</summary>
    /// <param name="scarce">Functionality f of the part that runs out first, 2 to 20; an average need not be whole.</param>
    /// <param name="other">Functionality g of the other part, 2 to 20.</param>
    /// <param name="ratio">r: groups of the first part per group of the other, more than 0 and at most 1; 1 is the stoichiometric mix.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public GelPoint(double scarce, double other, double ratio = 1)
        : this(
            Guard.Within(scarce, Functionalities, nameof(scarce)),
            (double?)Guard.Within(other, Functionalities, nameof(other)),
            Guard.Within(ratio, Bounds.Positive(Measure.Number, 1), nameof(ratio)))
    {
    }

    private GelPoint(double scarce, double? other, double ratio)
    {
        Scarce = scarce;
        Other = other;
        Ratio = ratio;
    }

    /// <summary>Functionality of the part that runs out first, or of the only one.</summary>
    public double Scarce { get; }

    /// <summary>Functionality of the other part; <see langword="null"/> where one part reacts with itself.</summary>
    public double? Other { get; }

    /// <summary>Groups of the first part per group of the other.</summary>
    public double Ratio { get; }

    /// <summary>Conversion of the scarce groups at the gel point by Flory and Stockmayer; <see langword="null"/> when the mix never gels.</summary>
    public Ratio? FloryStockmayer => Conversion(Branching > 1 ? Early : 1);

    /// <summary>Conversion of the scarce groups at the gel point by Carothers; <see langword="null"/> when the mix never gels by it.</summary>
    public Ratio? Carothers => Conversion(Late);

    private double Branching => Other is double g ? Ratio * (Scarce - 1) * (g - 1) : Scarce - 1;

    private double Early => Other is null ? 1 / Branching : 1 / Math.Sqrt(Branching);

    private double Average => Other is double g ? 2 * Ratio / ((Ratio / Scarce) + (1 / g)) : Scarce;

    private double Late => 2 / Average;

    /// <summary>One kind of molecule that reacts with itself.</summary>
    /// <param name="functionality">Groups a molecule, 2 to 20.</param>
    /// <returns>p_c = 1 / (f − 1) by Flory and Stockmayer, 2 / f by Carothers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static GelPoint Homopolymer(double functionality) => new(Guard.Within(functionality, Functionalities, nameof(functionality)), null, 1);

    /// <summary>How both conversions follow; one that never comes is left out.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression f = Expression.Quantity("f", Scarce, Measure.Number);
        Expression r = Expression.Quantity("r", Ratio, Measure.Number);
        Expression g = Expression.Quantity("g", Other ?? 1, Measure.Number);
        WorkingStep average = new(
            "average functionality", "f_avg", Other is null ? f : 2 * r / ((r / f) + (1 / g)), Average, Measure.Number, ByAverages);
        List<WorkingStep> steps = [average];
        if (FloryStockmayer is not null)
        {
            steps.Add(new(
                "gel point, Flory and Stockmayer", "p_c", Other is null ? 1 / (f - 1) : 1 / Expression.Sqrt(r * (f - 1) * (g - 1)), Early, Measure.Percent, Flory));
        }

        if (Carothers is not null)
        {
            steps.Add(new("gel point, Carothers", "p_c,avg", 2 / average.Result(), Late, Measure.Percent, ByAverages));
        }

        return new Workings("Gel point", steps);
    }

    /// <summary>Both conversions in one line.</summary>
    /// <returns>Text such as <c>gels between 57.7 % and 75 %</c>.</returns>
    public override string ToString() => FloryStockmayer is UnitsNet.Ratio early
        ? "gels between " + Measure.Percent.Format(early.DecimalFractions, DisplayUnits.Si, 3) + " and "
            + (Carothers is UnitsNet.Ratio late ? Measure.Percent.Format(late.DecimalFractions, DisplayUnits.Si, 3) : "100 %")
        : "does not gel";

    private static Ratio? Conversion(double p) => p < 1 ? UnitsNet.Ratio.FromDecimalFractions(p) : null;
}
