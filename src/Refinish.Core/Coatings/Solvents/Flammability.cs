using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// Whether the vapour of a liquid burns in air, in one of three forms: between limits, not at all, or not known. Not known is the default
/// of nothing and never taken for "does not burn".
/// </summary>
/// <remarks>
/// That a sheet gives no flash point does not mean that the vapour does not burn: methylene chloride has none and burns from 12 to 19 % in
/// air (62 FR 1494). Exempt from a rule on volatile organic compounds does not mean it either. Vapour that does not burn breaks down in a
/// flame, mostly into something worse, and may be as harmful to breathe as any other.
/// </remarks>
/// <example><code>
/// Flammability toluene = Flammability.Between(Ratio.FromPercent(1.1), Ratio.FromPercent(7.1), Temperature.FromDegreesFahrenheit(40));
/// Flammability inert = Flammability.NonBurning(Source.Supplied("safety data sheet, section 9: no flammable limits in air"));
/// double? lower = toluene.Lower?.Percent;   // 1.1
/// bool burns = inert.IsNonBurning;   // true
/// </code></example>
public sealed record Flammability
{
    private static readonly Bounds Limits = Bounds.Between(1e-9, 1, Measure.Percent);

    private readonly double? lower;
    private readonly double? upper;
    private readonly double? flashPoint;

    private Flammability(double? lower, double? upper, double? flashPoint, Source? basis)
    {
        this.lower = lower;
        this.upper = upper;
        this.flashPoint = flashPoint;
        Basis = basis;
    }

    /// <summary>Nothing is known: a comparison with the flammable limit cannot be judged.</summary>
    public static Flammability Unknown { get; } = new(null, null, null, null);

    /// <summary>
    /// Lower flammable limit as a volume fraction of vapour in air; <see langword="null"/> when not known or when it does not burn.
    /// </summary>
    public Ratio? Lower => Fraction(lower);

    /// <summary>Upper flammable limit as a volume fraction; <see langword="null"/> when not known or when it does not burn.</summary>
    public Ratio? Upper => Fraction(upper);

    /// <summary>
    /// Flash point; <see langword="null"/> when not known or when it does not burn. Below it the pure liquid does not give off enough to
    /// be lit; its mist and a cloth soaked with it burn all the same.
    /// </summary>
    public Temperature? FlashPoint => flashPoint is double kelvins ? Temperature.FromKelvins(kelvins) : null;

    /// <summary>What it rests on that the vapour does not burn; <see langword="null"/> for the other forms.</summary>
    public Source? Basis { get; }

    /// <summary>Whether the vapour is said not to burn in air.</summary>
    public bool IsNonBurning => Basis is not null;

    /// <summary>Whether one of the two is said: a lower limit, or that it does not burn.</summary>
    public bool IsKnown => lower is not null || IsNonBurning;

    /// <summary>The vapour burns from a limit on; the upper one is not known.</summary>
    /// <param name="lowerFlammableLimit">Lower flammable limit, a volume fraction of 1 ppb to 100 %.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The argument is outside its range.</exception>
    public static Flammability Between(Ratio lowerFlammableLimit) => Between(lowerFlammableLimit, null, null);

    /// <summary>The vapour burns between limits; the flash point is not known.</summary>
    /// <inheritdoc cref="Between(Ratio, Ratio?, Temperature?)"/>
    public static Flammability Between(Ratio lowerFlammableLimit, Ratio? upperFlammableLimit) =>
        Between(lowerFlammableLimit, upperFlammableLimit, null);

    /// <summary>The vapour burns between limits.</summary>
    /// <param name="lowerFlammableLimit">Lower flammable limit, a volume fraction of 1 ppb to 100 %.</param>
    /// <param name="upperFlammableLimit">
    /// Upper flammable limit, a volume fraction more than the lower and at most 100 %; <see langword="null"/> when not known.
    /// </param>
    /// <param name="flashPoint">Flash point, −60 to 300 °C; <see langword="null"/> when not known.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Flammability Between(Ratio lowerFlammableLimit, Ratio? upperFlammableLimit, Temperature? flashPoint)
    {
        double low = Guard.Within(lowerFlammableLimit, Limits);
        return new(
            low,
            upperFlammableLimit is Ratio high
                ? Guard.Within(high, Bounds.Above(low, 1, Measure.Percent), nameof(upperFlammableLimit))
                : null,
            flashPoint is Temperature flash
                ? Guard.Within(flash, Bounds.Between(213.15, 573.15, Measure.Temperature), nameof(flashPoint))
                : null,
            null);
    }

    /// <summary>The vapour does not burn in air at the pressure of a room, whatever part of it it is.</summary>
    /// <param name="basis">
    /// Who says so: a test for flammable limits, such as section 9 of a safety data sheet. No flash point is not enough.
    /// </param>
    /// <returns>A vapour that is left out of the flammable limit of a mixture.</returns>
    /// <exception cref="System.ArgumentNullException"><paramref name="basis"/> is missing.</exception>
    public static Flammability NonBurning(Source basis) => new(null, null, null, Guard.NotNull(basis));

    /// <summary>The limits, or which of the other forms it is.</summary>
    /// <returns>Text such as <c>1.1 % to 7.1 %</c>, <c>from 1.7 %</c>, <c>does not burn</c> or <c>not known</c>.</returns>
    public override string ToString() =>
        IsNonBurning ? "does not burn"
        : lower is not double low ? "not known"
        : upper is double high ? Measure.Percent.Format(low) + " to " + Measure.Percent.Format(high)
        : "from " + Measure.Percent.Format(low);

    /// <summary>
    /// The limit with which a vapour enters the sum of fractions: none that is reached, infinity, where it does not burn.
    /// </summary>
    internal double? InMixture => IsNonBurning ? double.PositiveInfinity : lower;

    private static Ratio? Fraction(double? value) => value is double fraction ? Ratio.FromDecimalFractions(fraction) : null;
}
