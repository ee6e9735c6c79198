using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>A published limit for a substance in the air that people breathe: whose, over which time, how much, of which date.</summary>
/// <remarks>
/// Vapours have a limit by volume, dusts by mass. Where a source prints both, they differ by its rounding; the one by volume counts here.
/// Between the two: ppm = mg/m³ · 24.45 / M, at 25 °C and 760 mmHg (29 CFR 1910.1000, Table Z-1, footnotes); the European Union prints
/// mg/m³ at 20 °C. A limit is one jurisdiction's at one date. Being within it is not a finding of no harm.
/// </remarks>
/// <example><code>
/// ExposureLimit limit = new()
/// {
///     CasNumber = "108-65-6", Substance = "1-methoxy-2-propyl acetate", Authority = "EU indicative limit", Jurisdiction = "European Union",
///     Kind = ExposureLimitKind.Twa8h, VolumeFraction = Ratio.FromPartsPerMillion(50), MassConcentration = null,
///     AsOf = "2000", Standing = Standing.Supplied, Source = Source.Supplied("safety data sheet, section 8"),
/// };
/// </code></example>
public sealed record ExposureLimit
{
    private readonly double? volumeFraction;
    private readonly double? massConcentration;

    /// <summary>Chemical Abstracts Service registry number of the substance.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string CasNumber { get; init => field = Guard.Registry(value); }

    /// <summary>The substance's name.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Substance { get; init => field = Guard.Named(value); }

    /// <summary>Whose limit it is, such as "OSHA PEL".</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Authority { get; init => field = Guard.Named(value); }

    /// <summary>Where it applies.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Jurisdiction { get; init => field = Guard.Named(value); }

    /// <summary>Over which time.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required ExposureLimitKind Kind { get; init => field = Guard.Defined(value); }

    /// <summary>
    /// Over how many minutes the source averages a ceiling, or for how long it lets a brief peak last; up to 8 h, <see langword="null"/>
    /// when the kind says it all. The comparison stays with the peak, which is the stricter reading.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 s to 8 h.</exception>
    public TimeSpan? Period { get; init => field = Guard.Time(value, Bounds.Between(1, 8 * 3600, Measure.Minutes)); }

    /// <summary>The limit by volume, 1e-9 ppm to 100 %; <see langword="null"/> for dusts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio? VolumeFraction
    {
        get => volumeFraction is double fraction ? Ratio.FromDecimalFractions(fraction) : null;
        init => volumeFraction = value is Ratio fraction
            ? Guard.Within(fraction, Bounds.Between(1e-15, 1, Measure.PartsPerMillion), nameof(VolumeFraction))
            : null;
    }

    /// <summary>The limit by mass as the source prints it, 1 pg/m³ to 1 kg/m³; <see langword="null"/> when it prints none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required MassConcentration? MassConcentration
    {
        get => massConcentration is double mass ? UnitsNet.MassConcentration.FromKilogramsPerCubicMeter(mass) : null;
        init => massConcentration = value is MassConcentration mass
            ? Guard.Within(mass, Bounds.Between(1e-15, 1, Measure.MassConcentration), nameof(MassConcentration))
            : null;
    }

    /// <summary>Date or edition of the figure, as text.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string AsOf { get; init => field = Guard.Named(value); }

    /// <summary>How well the figure has been looked up.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required Standing Standing { get; init => field = Guard.Defined(value); }

    /// <summary>Where the figure stands.</summary>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>The limit by volume for a vapour of the given molar mass.</summary>
    /// <param name="molarMass">More than 0 and at most 1000 g/mol.</param>
    /// <returns>
    /// The printed one, or the one by mass converted at 25 °C and 760 mmHg; <see langword="null"/> when neither is given.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="molarMass"/> is outside its range.</exception>
    public Ratio? VolumeFractionOf(MolarMass molarMass)
    {
        double molar = Guard.Within(molarMass, Bounds.Positive(Measure.MolarMass, 1));
        return VolumeFraction
            ?? (massConcentration is double mass
                ? Ratio.FromDecimalFractions(AirKernel.VolumeFraction(mass, AirKernel.MolarVolume, molar).Value)
                : null);
    }

    /// <summary>The limit by mass for a vapour of the given molar mass.</summary>
    /// <param name="molarMass">More than 0 and at most 1000 g/mol.</param>
    /// <returns>
    /// The one by volume converted at 25 °C and 760 mmHg, or the printed one when there is none by volume; <see langword="null"/> when
    /// neither is given.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="molarMass"/> is outside its range.</exception>
    public MassConcentration? MassConcentrationOf(MolarMass molarMass)
    {
        double molar = Guard.Within(molarMass, Bounds.Positive(Measure.MolarMass, 1));
        return volumeFraction is double fraction
            ? UnitsNet.MassConcentration.FromKilogramsPerCubicMeter(fraction * molar / AirKernel.MolarVolume)
            : MassConcentration;
    }

    internal static ExposureLimit Listed(
        Registered of, string authority, string jurisdiction, ExposureLimitKind kind, double? ppm, double? milligrams, string asOf,
        Standing standing, Source source) => new()
    {
        CasNumber = of.CasNumber,
        Substance = of.Name,
        Authority = authority,
        Jurisdiction = jurisdiction,
        Kind = kind,
        VolumeFraction = ppm is double fraction ? Ratio.FromPartsPerMillion(fraction) : null,
        MassConcentration = milligrams is double mass ? UnitsNet.MassConcentration.FromMilligramsPerCubicMeter(mass) : null,
        AsOf = asOf,
        Standing = standing,
        Source = source,
    };

    internal string Whose => Whom.Of(Authority, Jurisdiction, AsOf);

    /// <summary>The limit in one line.</summary>
    /// <returns>Text such as <c>n-butyl acetate, OSHA PEL: 150 ppm</c>.</returns>
    public override string ToString() =>
        Substance + ", " + Authority + ": "
        + (volumeFraction is double fraction ? Measure.PartsPerMillion.Format(fraction)
            : massConcentration is double mass ? Measure.MassConcentration.Format(mass)
            : "no figure");
}
