using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// The conversion at which a mix stops flowing because one molecule reaches through all of it: p_c = 1 / √(r (f − 1)(g − 1)) by Flory
/// and Stockmayer, 2 / f_avg by Carothers.
/// </summary>
/// <remarks>
/// <para>f and g are the functionalities of the two parts (a diamine has four amine hydrogens, a diepoxide two epoxides), r the
/// reactive groups of the part that runs out first per group of the other. P. J. Flory, Principles of Polymer Chemistry (1953), chapter
/// IX; W. H. Carothers (1936); both from memory, the algebra is elementary.</para>
/// <para>Flory and Stockmayer neglect rings and come out early, Carothers counts averages and comes out late; real mixes gel in
/// between. Solvent delays it in time, not in conversion.</para>
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
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public GelPoint(double scarce, double other)
        : this(scarce, other, 1)
    {
    }

    /// <summary>Two parts that react with each other.</summary>
    /// <param name="scarce">Functionality f of the part that runs out first, 2 to 20; an average need not be whole.</param>
    /// <param name="other">Functionality g of the other part, 2 to 20.</param>
    /// <param name="ratio">
    /// r: groups of the first part per group of the other, more than 0 and at most 1; 1 is the stoichiometric mix.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public GelPoint(double scarce, double other, double ratio)
        : this(
            Guard.Within(scarce, Functionalities),
            (double?)Guard.Within(other, Functionalities),
            Guard.Within(ratio, Bounds.Positive(Measure.Number, 1)))
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

    /// <summary>
    /// Conversion of the scarce groups at the gel point by Flory and Stockmayer; <see langword="null"/> when the mix never gels.
    /// </summary>
    public Ratio? FloryStockmayer => Conversion(Gels ? Early().Value : 1);

    /// <summary>
    /// Conversion of the scarce groups at the gel point by Carothers; <see langword="null"/> when the mix never gels by it.
    /// </summary>
    public Ratio? Carothers => Conversion(Late().Value);

    private bool Gels => Branching(null).Value > 1;

    /// <summary>One kind of molecule that reacts with itself.</summary>
    /// <param name="functionality">Groups a molecule, 2 to 20.</param>
    /// <returns>p_c = 1 / (f − 1) by Flory and Stockmayer, 2 / f by Carothers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static GelPoint Homopolymer(double functionality) => new(Guard.Within(functionality, Functionalities), null, 1);

    /// <summary>How both conversions follow; one that never comes is left out.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Gel point", Average, t => FloryStockmayer is null ? default : Early(t), t => Carothers is null ? default : Late(t));

    /// <summary>Both conversions in one line.</summary>
    /// <returns>Text such as <c>gels between 57.7 % and 75 %</c>.</returns>
    public override string ToString() => FloryStockmayer is UnitsNet.Ratio early
        ? "gels between " + Measure.Percent.Format(early.DecimalFractions, DisplayUnits.Si, 3) + " and "
            + (Carothers is UnitsNet.Ratio late ? Measure.Percent.Format(late.DecimalFractions, DisplayUnits.Si, 3) : "100 %")
        : "does not gel";

    private static Ratio? Conversion(double p) => p < 1 ? UnitsNet.Ratio.FromDecimalFractions(p) : null;

    // New molecules that each branch of the growing one leads on to, for each conversion.
    private Num Branching(Trace? t)
    {
        Num f = t.Given("f", Scarce, Measure.Number);
        return Other is double g ? t.Given("r", Ratio, Measure.Number) * (f - 1) * (t.Given("g", g, Measure.Number) - 1) : f - 1;
    }

    private Num Early(Trace? t = null) => t.Step(
        "gel point, Flory and Stockmayer", "p_c", Measure.Percent, Flory, Other is null ? 1 / Branching(t) : 1 / Num.Sqrt(Branching(t)));

    private Num Average(Trace? t = null)
    {
        Num f = t.Given("f", Scarce, Measure.Number);
        Num r = t.Given("r", Ratio, Measure.Number);
        return t.Step(
            "average functionality", "f_avg", Measure.Number, ByAverages,
            Other is double g ? 2 * r / ((r / f) + (1 / t.Given("g", g, Measure.Number))) : f);
    }

    private Num Late(Trace? t = null) => t.Step("gel point, Carothers", "p_c,avg", Measure.Percent, ByAverages, 2 / Average(t));
}
