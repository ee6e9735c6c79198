using System;
using UnitsNet;

namespace Refinish.Air;

/// <summary>A concentration that was measured in the air a person breathes, with the limit that it is held against.</summary>
/// <remarks>
/// The limit's kind says over which time the reading has to be taken: eight hours, fifteen minutes, a moment. A limit by mass takes a
/// reading by mass, a limit by volume one by volume; where a limit has both, either will do.
/// </remarks>
/// <example><code>
/// ExposureLimit limit = PublishedLimits.All.First(one =&gt; one.CasNumber == Solvents.Toluene.CasNumber
///     &amp;&amp; one.Authority == "OSHA PEL" &amp;&amp; one.Kind == ExposureLimitKind.Twa8h);
/// ExposureReading reading = new(limit, Ratio.FromPartsPerMillion(50));
/// double? part = reading.OfLimit;      // 0.25
/// </code></example>
public sealed record ExposureReading
{
    private readonly double measured;
    private readonly bool byMass;

    /// <summary>A reading by volume.</summary>
    /// <param name="limit">The limit, which has to have a figure by volume.</param>
    /// <param name="measured">The concentration, 0 to 100 % by volume.</param>
    /// <exception cref="ArgumentException"><paramref name="limit"/> has no figure by volume.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="measured"/> is outside its range.</exception>
    public ExposureReading(ExposureLimit limit, Ratio measured) : this(Guard.NotNull(limit).CasNumber, limit.Substance, measured)
    {
        Limit = limit.VolumeFraction is not null
            ? limit
            : throw new ArgumentException(limit + " has no figure by volume: measure by mass.", nameof(limit));
    }

    /// <summary>A reading by mass.</summary>
    /// <param name="limit">The limit, which has to have a figure by mass.</param>
    /// <param name="measured">The concentration, 0 to 1 kg/m³.</param>
    /// <exception cref="ArgumentException"><paramref name="limit"/> has no figure by mass.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="measured"/> is outside its range.</exception>
    public ExposureReading(ExposureLimit limit, MassConcentration measured)
    {
        Guard.NotNull(limit);
        this.measured = Guard.Within(measured, Bounds.NotNegative(Measure.MassConcentration, 1));
        byMass = true;
        CasNumber = limit.CasNumber;
        Substance = limit.Substance;
        Limit = limit.MassConcentration is not null
            ? limit
            : throw new ArgumentException(limit + " has no figure by mass: measure by volume.", nameof(limit));
    }

    private ExposureReading(string casNumber, string substance, Ratio measured)
    {
        CasNumber = Guard.Named(casNumber);
        Substance = Guard.Named(substance);
        this.measured = Guard.Within(measured, Bounds.NotNegative(Measure.PartsPerMillion, 1));
    }

    /// <summary>Registry number of the substance.</summary>
    public string CasNumber { get; }

    /// <summary>What was measured, by the name that its limit uses.</summary>
    public string Substance { get; }

    /// <summary>The limit; <see langword="null"/> when none is known, and then the reading cannot be judged.</summary>
    public ExposureLimit? Limit { get; }

    /// <summary>The reading by volume; <see langword="null"/> when it was taken by mass.</summary>
    public Ratio? VolumeFraction => byMass ? null : Ratio.FromDecimalFractions(measured);

    /// <summary>The reading by mass; <see langword="null"/> when it was taken by volume.</summary>
    public MassConcentration? MassConcentration => byMass ? UnitsNet.MassConcentration.FromKilogramsPerCubicMeter(measured) : null;

    /// <summary>Reading over limit, C/L; <see langword="null"/> without a limit.</summary>
    public double? OfLimit => LimitValue is null ? null : Part(0, null).Value;

    /// <summary>The reading against its limit; it cannot be judged without one.</summary>
    public LimitComparison Comparison => new(
        Substance + ", measured" + (Limit is null ? ", no limit known" : ", " + Limit.Authority), measured, LimitValue, LimitSense.AtMost,
        Unit, Limit?.Source ?? ExposureComparisons.Missing,
        Limit is null ? ExposureComparisons.LookUp : OfLimit > 1 ? AirStudy.BreatheProtected : null)
    {
        Whose = Limit?.Whose,
    };

    internal double? LimitValue => byMass ? Limit?.MassConcentration?.KilogramsPerCubicMeter : Limit?.VolumeFraction?.DecimalFractions;

    internal Num Part(int index, Trace? t) => t.Given("C_", index + 1, measured, Unit) / t.Given("L_", index + 1, LimitValue!.Value, Unit);

    internal Measure Unit => byMass ? Measure.MassConcentration : Measure.PartsPerMillion;

    /// <summary>A reading of a substance for which no limit is known.</summary>
    /// <param name="casNumber">Registry number of the substance.</param>
    /// <param name="substance">Its name.</param>
    /// <param name="measured">The concentration, 0 to 100 % by volume.</param>
    /// <returns>The reading, which cannot be judged.</returns>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="measured"/> is outside its range.</exception>
    public static ExposureReading WithoutLimit(string casNumber, string substance, Ratio measured) => new(casNumber, substance, measured);

    /// <summary>The reading against its limit.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Comparison.ToString();
}
