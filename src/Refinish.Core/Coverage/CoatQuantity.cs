using System;
using Refinish.Coatings;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// How much of a layer's product one coat takes over an area: on the surface, through the gun, and poured with what stays in cup and hose.
/// </summary>
/// <remarks>
/// V_film = A·WFT; V_gun = V_film/TE; V_pour = V_gun/(1 − w); mixed product V_mix = V_pour/(1 + R), the rest is reducer. Volumes additive.
/// The residue w of cup, hose and filter is commonly 5 to 15 % (common practice, no source).
/// </remarks>
/// <example><code>
/// CoatingLayer layer = new(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(30), coats: 1, Ratio.FromPercent(10));
/// SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(160), TransferEfficiency = Ratio.FromPercent(60) };
/// CoatQuantity coat = new(Area.FromSquareMeters(2.57), layer, gun, residue: Ratio.FromPercent(8));
/// Volume poured = coat.PouredVolume;      // 341.43 mL = 2.57 m² × 30 µm × 1.1 / 0.45 / 0.60 / 0.92
/// </code></example>
public sealed record CoatQuantity
{
    private static readonly Source Balance = Source.Derived("volume balance from film to cup, volumes additive");
    private static readonly Source Efficiency = Source.Published("South Coast air district, Spray equipment transfer efficiency", "definition");

    private readonly double area;
    private readonly double residue;

    /// <summary>Calculates the quantity of one coat.</summary>
    /// <param name="area">Area to coat, more than 0 and at most 1000 m².</param>
    /// <param name="layer">Product, dry film and reducer.</param>
    /// <param name="gun">The gun, with its transfer efficiency.</param>
    /// <param name="residue">Part of the poured mix that stays in cup, hose and filter; 0 to 50 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public CoatQuantity(Area area, CoatingLayer layer, SprayGun gun, Ratio residue)
    {
        this.area = Guard.Within(area, Bounds.Positive(Measure.Area, 1000), nameof(area));
        Layer = Guard.NotNull(layer, nameof(layer));
        Gun = Guard.NotNull(gun, nameof(gun));
        this.residue = Guard.Within(residue, Bounds.NotNegative(Measure.Percent, 0.5), nameof(residue));
    }

    /// <summary>Area to coat.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>Product, dry film and reducer.</summary>
    public CoatingLayer Layer { get; }

    /// <summary>The gun.</summary>
    public SprayGun Gun { get; }

    /// <summary>Part of the poured mix that stays in cup, hose and filter.</summary>
    public Ratio Residue => Ratio.FromDecimalFractions(residue);

    /// <summary>The wet film of the coat.</summary>
    public WetFilm WetFilm => new(Layer.DryFilmPerCoat, Layer.Product.VolumeSolids, Layer.Reducer);

    /// <summary>Reduced coating that ends up on the surface.</summary>
    public Volume FilmVolume => Volume.FromCubicMeters(Film);

    /// <summary>Reduced coating through the gun.</summary>
    public Volume SprayedVolume => Volume.FromCubicMeters(Sprayed);

    /// <summary>Reduced coating to pour, residue included.</summary>
    public Volume PouredVolume => Volume.FromCubicMeters(Poured);

    /// <summary>Base and hardener in <see cref="PouredVolume"/>, without reducer.</summary>
    public Volume MixedVolume => Volume.FromCubicMeters(CoverageKernel.MixedVolume(Poured, Layer.Reducer.DecimalFractions));

    /// <summary>Area covered per volume of reduced coating poured, all losses in.</summary>
    public SpreadingRate PracticalSpreadingRate => SpreadingRate.FromSquareMetersPerCubicMeter(area / Poured);

    /// <summary>Clock time to spray the coat.</summary>
    public TimeSpan SprayTime => Gun.TimeToSpray(SprayedVolume);

    private double Film => CoverageKernel.FilmVolume(area, WetFilm.Thickness.Meters);

    private double Sprayed => CoverageKernel.SprayedVolume(Film, Gun.TransferEfficiency.DecimalFractions);

    private double Poured => CoverageKernel.PouredVolume(Sprayed, residue);

    /// <summary>How the quantities follow from the area and the film.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression a = Expression.Quantity("A", area, Measure.Area);
        Expression wft = Expression.Quantity("WFT", WetFilm.Thickness.Meters, Measure.Film);
        Expression te = Expression.Quantity("TE", Gun.TransferEfficiency.DecimalFractions, Measure.Percent);
        Expression w = Expression.Quantity("w", residue, Measure.Percent);
        Expression r = Expression.Quantity("R", Layer.Reducer.DecimalFractions, Measure.Percent);
        Expression rate = Expression.Quantity("Q_gun", Gun.FluidRate.CubicMetersPerSecond, Measure.FluidRate);
        Expression duty = Expression.Quantity("d", Gun.TriggerFraction.DecimalFractions, Measure.Percent);
        WorkingStep film = new("coating on the surface", "V_film", a * wft, Film, Measure.Liquid, Balance);
        WorkingStep sprayed = new("coating through the gun", "V_gun", film.Result() / te, Sprayed, Measure.Liquid, Efficiency);
        WorkingStep poured = new("coating to pour", "V_pour", sprayed.Result() / (1 - w), Poured, Measure.Liquid, Balance);
        WorkingStep mixed = new("base and hardener in it", "V_mix", poured.Result() / (1 + r), MixedVolume.CubicMeters, Measure.Liquid, Balance);
        WorkingStep practical = new("practical spreading rate", "SR_p", a / poured.Result(), PracticalSpreadingRate.SquareMetersPerCubicMeter, Measure.SpreadingRate, Balance);
        WorkingStep time = new("spraying time", "t_spray", sprayed.Result() / (rate * duty), Sprayed / (Gun.FluidRate.CubicMetersPerSecond * Gun.TriggerFraction.DecimalFractions), Measure.Minutes, Balance);
        return new Workings("One coat of " + Layer.Product.Name, [film, sprayed, poured, mixed, practical, time], [WetFilm.Workings()]);
    }

    /// <summary>The quantity in one line, in metric units.</summary>
    /// <returns>Text such as <c>359 mL of two-part epoxy primer for 2.57 m²</c>.</returns>
    public override string ToString() =>
        Measure.Liquid.Format(Poured, DisplayUnits.Si, 3) + " of " + Layer.Product.Name + " for " + Measure.Area.Format(area, DisplayUnits.Si, 3);
}
