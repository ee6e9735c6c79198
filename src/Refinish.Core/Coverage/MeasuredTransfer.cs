using System;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// The transfer efficiency that a coat had, back from the dry film that was found on an area and the volume that went through the gun.
/// </summary>
/// <remarks>
/// <para>TE = A · WFT / (V_gun (1 − o)), WFT = DFT (1 + R) / VS: volume that is film over volume aimed at the piece. With o = 0 it counts
/// what passes the edges as lost, as the rule of thumb of coverage tables does; with the share o that passes them it is the gun's own, the
/// <see cref="SprayGun.TransferEfficiency"/> that <see cref="CoatDemand"/> takes beside
/// <see cref="ApplicationLosses.EdgeOverspray"/>.</para>
/// <para>Take the mean of many readings over the whole area, and the volume from before and after the coat, hose and cup as full as before.
/// Coating that a dry film does not show (roughness filled, runs wiped off) makes the efficiency look smaller than it was.</para>
/// </remarks>
/// <example><code>
/// MeasuredTransfer coat = new(
///     Area.FromSquareMeters(2.5), Length.FromMicrometers(30), Ratio.FromPercent(45), Volume.FromMilliliters(330),
///     Ratio.FromPercent(10), Ratio.Zero);
/// double efficiency = coat.Efficiency.Percent;      // 55.6 = 2.5 m² × 30 µm × 1.1 / 0.45 / 330 mL
/// </code></example>
public sealed record MeasuredTransfer
{
    private static readonly Source Definition =
        Source.Published("South Coast air district, Spray equipment transfer efficiency", "definition");

    private static readonly Source Balance = Source.Derived("volume balance from film to gun, volumes additive");

    /// <summary>Takes what was measured of a coating without reducer that did not pass the edges.</summary>
    /// <param name="area">Area coated, more than 0 and at most 1000 m².</param>
    /// <param name="dryFilm">Mean dry film of this coat found on it, more than 0 and at most 5 mm.</param>
    /// <param name="volumeSolids">Volume solids of the mixed, unreduced coating, 1 to 100 %.</param>
    /// <param name="sprayed">Reduced coating through the gun, more than 0 and at most 1 m³.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or less was sprayed at the piece than lies on it: then one of the measurements is wrong.
    /// </exception>
    public MeasuredTransfer(Area area, Length dryFilm, Ratio volumeSolids, Volume sprayed)
        : this(area, dryFilm, volumeSolids, sprayed, Ratio.Zero, Ratio.Zero)
    {
    }

    /// <summary>Takes what was measured.</summary>
    /// <param name="area">Area coated, more than 0 and at most 1000 m².</param>
    /// <param name="dryFilm">Mean dry film of this coat found on it, more than 0 and at most 5 mm.</param>
    /// <param name="volumeSolids">Volume solids of the mixed, unreduced coating, 1 to 100 %.</param>
    /// <param name="sprayed">Reduced coating through the gun, more than 0 and at most 1 m³.</param>
    /// <param name="reducer">Reducer per volume of mixed coating, 0 to 100 %.</param>
    /// <param name="edgeOverspray">Part of it that passed the edges, 0 to 50 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or less was sprayed at the piece than lies on it: then one of the measurements is wrong.
    /// </exception>
    public MeasuredTransfer(Area area, Length dryFilm, Ratio volumeSolids, Volume sprayed, Ratio reducer, Ratio edgeOverspray)
    {
        Area = Guard.Checked(area, Bounds.Positive(Measure.Area, 1000));
        DryFilm = Guard.Checked(dryFilm, Bounds.Positive(Measure.Film, 5e-3));
        VolumeSolids = Guard.Checked(volumeSolids, Bounds.Between(0.01, 1, Measure.Percent));
        Sprayed = Guard.Checked(sprayed, Bounds.Positive(Measure.Liquid, 1));
        Reducer = Guard.Checked(reducer, Bounds.NotNegative(Measure.Percent, 1));
        EdgeOverspray = Guard.Checked(edgeOverspray, Bounds.NotNegative(Measure.Percent, 0.5));

        // Up to the last digits, so that a coat of which all landed is one.
        Guard.Rule(
            Share().Value <= 1 + 1e-12, nameof(sprayed), Sprayed.CubicMeters, Measure.Liquid,
                "at least what lies on the area and passed its edges, ",
            Landed().Value / (1 - EdgeOverspray.DecimalFractions));
    }

    /// <summary>Area coated.</summary>
    public Area Area { get; }

    /// <summary>Mean dry film found.</summary>
    public Length DryFilm { get; }

    /// <summary>Volume solids of the mixed, unreduced coating.</summary>
    public Ratio VolumeSolids { get; }

    /// <summary>Reduced coating through the gun.</summary>
    public Volume Sprayed { get; }

    /// <summary>Reducer per volume of mixed coating.</summary>
    public Ratio Reducer { get; }

    /// <summary>Part of what was sprayed that passed the edges.</summary>
    public Ratio EdgeOverspray { get; }

    /// <summary>Reduced coating that became film.</summary>
    public Volume Film => Volume.FromCubicMeters(Landed().Value);

    /// <summary>Reduced coating that was aimed at the piece and blown off it.</summary>
    public Volume Overspray => Volume.FromCubicMeters(BlownOff().Value);

    /// <summary>The transfer efficiency of the gun: film over what was aimed at the piece.</summary>
    public Ratio Efficiency => Ratio.FromDecimalFractions(Share().Value);

    /// <summary>How the efficiency follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Transfer efficiency from film and volume", Wet, Landed, Aimed, BlownOff, Share);

    /// <summary>The efficiency with the volumes, in metric units.</summary>
    /// <returns>Text such as <c>55.6 %: 183 mL of 330 mL became film</c>.</returns>
    public override string ToString() =>
        Measure.Percent.Format(Share().Value, DisplayUnits.Si, 3) + ": " + Measure.Liquid.Format(Landed().Value, DisplayUnits.Si, 3)
            + " of " + Measure.Liquid.Format(Sprayed.CubicMeters, DisplayUnits.Si, 3) + " became film";

    private Num Wet(Trace? t) => t.Step("wet film", "WFT", Measure.Film, Balance, FilmKernel.WetFilm(
        t.Given("DFT", DryFilm.Meters, Measure.Film), t.Given("VS", VolumeSolids.DecimalFractions, Measure.Percent),
            t.Given("R", Reducer.DecimalFractions, Measure.Percent)));

    private Num Landed(Trace? t = null) =>
        t.Step("became film", "V_film", Measure.Liquid, Balance, t.Given("A", Area.SquareMeters, Measure.Area) * Wet(t));

    private Num Aimed(Trace? t) => t.Step("aimed at the piece", "V_aim", Measure.Liquid, Balance,
        t.Given("V_gun", Sprayed.CubicMeters, Measure.Liquid) * (1 - t.Given("o", EdgeOverspray.DecimalFractions, Measure.Percent)));

    private Num BlownOff(Trace? t = null) => t.Step("blown off", "V_over", Measure.Liquid, Balance, Aimed(t) - Landed(t));

    private Num Share(Trace? t = null) => t.Step("transfer efficiency", "TE", Measure.Percent, Definition, Landed(t) / Aimed(t));
}
