using System;
using System.Collections.Generic;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// Air that a volume of liquid solvent needs, once evaporated, to stay at a share s of its lower flammable limit, a quarter unless given: V
/// (1 − s·LEL)/(s·LEL), and the form of 29 CFR 1910.94(c)(6)(ii) for a quarter, 4 (100 − LEL) V / LEL.
/// </summary>
/// <remarks>
/// The exact form asks for more air: it puts the mixture, air and vapour together, at exactly the share, which is the form to design by.
/// The other is smaller by 3/(400 − LEL) · LEL, 0.8 % at a limit of 1 % and 5.6 % at 7.3 %. It is from memory, not checked against the text
/// of the regulation. Vapour by the ideal gas at 70 °F and 1 atm (24.14 L/mol), as that table's first column has it. Table G-11 rounds the
/// vapour of a gallon to four tenths of a cubic foot and has its own limits: <see cref="Tabled"/> is what it gives, beside the figures
/// worked out. The airflow supposes that the liquid evaporates at a steady rate; a coat does not, its first minutes are the richest: see
/// <see cref="AirStudy.AirflowToHold"/>.
/// </remarks>
/// <example><code>
/// DilutionAir toluene = new(Volume.FromUsGallons(1), Solvents.Toluene, Ratio.FromPercent(10), TimeSpan.FromHours(1), 1);
/// double? cubicFeet = toluene.Exact?.CubicFeet;                    // 27582
/// double? flow = toluene.Airflow?.CubicFeetPerMinute;              // 459.7
/// double? byTheTable = new DilutionAir(Volume.FromUsGallons(1), Solvents.Toluene).Tabled?.CubicFeet;    // 8564.1
/// </code></example>
public sealed record DilutionAir
{
    private const double Quarter = 0.25;

    /// <summary>R · 294.26 K / 101 325 Pa.</summary>
    private const double MolarVolumeAt70F = AirKernel.GasConstant * (21.111111111111111 + 273.15) / 101325;

    private static readonly Source Gas = Source.Derived("ideal gas at 70 °F and 1 atm, the condition of 29 CFR 1910.94 Table G-11");
    private static readonly Source Form = Source.FromMemory("29 CFR 1910.94(c)(6)(ii): 4 (100 − LEL) (vapour per volume) / LEL, LEL in per cent");
    private static readonly Source Balance = Source.Derived("vapour over vapour and air is the share of the limit");
    private static readonly Source Steady = Source.Derived("air over the time of evaporation, times the mixing factor");

    private static readonly Source Table = Source.FromMemory(
        "29 CFR 1910.94 Table G-11, cubic feet of vapour per gallon at 70 °F and limits; the volumes agree with the ideal gas "
        + "within 1.5 %, isopropyl alcohol within 4.5 %");

    // Cubic feet of vapour per US gallon, and lower limit in per cent.
    private static readonly Dictionary<string, (double Vapour, double Limit)> Rows = new(StringComparer.Ordinal)
    {
        ["67-64-1"] = (44.0, 2.6), ["123-86-4"] = (24.8, 1.7), ["71-36-3"] = (35.2, 1.4), ["141-78-6"] = (32.8, 2.5),
        ["64-17-5"] = (55.2, 4.3), ["67-56-1"] = (80.8, 7.3), ["67-63-0"] = (44.0, 2.0), ["108-88-3"] = (30.4, 1.4),
        ["95-47-6"] = (26.4, 1.0), ["108-94-1"] = (31.2, 1.1),
    };

    private readonly double liquid;
    private readonly double share;
    private readonly double? evaporation;
    private readonly double mixing;

    /// <summary>Calculates the air that keeps the vapour of a volume of liquid at a quarter of its lower flammable limit.</summary>
    /// <param name="liquid">Liquid solvent that evaporates, more than 0 and at most 1 m³.</param>
    /// <param name="solvent">The solvent.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="liquid"/> is outside its range.</exception>
    public DilutionAir(Volume liquid, Solvent solvent) : this(liquid, solvent, Ratio.FromDecimalFractions(Quarter), null, 1)
    {
    }

    /// <summary>Calculates the air, and the airflow, for a volume of liquid.</summary>
    /// <param name="liquid">Liquid solvent that evaporates, more than 0 and at most 1 m³.</param>
    /// <param name="solvent">The solvent.</param>
    /// <param name="ofLimit">The share of the lower flammable limit to stay at, 0.1 to 100 %.</param>
    /// <param name="evaporationTime">
    /// Over which time the liquid evaporates, 1 s to 30 days, for the airflow; <see langword="null"/> for none.
    /// </param>
    /// <param name="mixingFactor">The mixing factor of the airflow, 1 (perfect, which no real room reaches) to 10 (poor).</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public DilutionAir(Volume liquid, Solvent solvent, Ratio ofLimit, TimeSpan? evaporationTime, double mixingFactor)
    {
        this.liquid = Guard.Within(liquid, Bounds.Positive(Measure.Capacity, 1));
        Solvent = Guard.NotNull(solvent);
        share = Guard.Within(ofLimit, Bounds.Between(1e-3, 1, Measure.Percent));
        evaporation = Guard.Time(evaporationTime, Bounds.Between(1, 30 * 86400, Measure.Minutes))?.TotalSeconds;
        mixing = Guard.Within(mixingFactor, Bounds.Between(1, 10, Measure.Number));
    }

    /// <summary>The liquid.</summary>
    public Volume Liquid => Volume.FromCubicMeters(liquid);

    /// <summary>The solvent.</summary>
    public Solvent Solvent { get; }

    /// <summary>The share of the lower flammable limit to stay at.</summary>
    public Ratio OfLimit => Ratio.FromDecimalFractions(share);

    /// <summary>Over which time the liquid evaporates; <see langword="null"/> unless given.</summary>
    public TimeSpan? EvaporationTime => evaporation is double seconds ? Durations.FromSeconds(seconds) : null;

    /// <summary>The mixing factor of the airflow.</summary>
    public double MixingFactor => mixing;

    /// <summary>The vapour it makes at 70 °F and 1 atm.</summary>
    public Volume Vapour => Volume.FromCubicMeters(Evaporated().Value);

    /// <summary>
    /// Air by the form of the regulation; 0 for what does not burn, <see langword="null"/> when the limit is not known or
    /// <see cref="OfLimit"/> is not a quarter.
    /// </summary>
    public Volume? Printed => share != Quarter ? null : Limit is null ? None : Volume.FromCubicMeters(ByForm().Value);

    /// <summary>
    /// Air by the exact form, which is never less; 0 for what does not burn, <see langword="null"/> when the limit is not known.
    /// </summary>
    public Volume? Exact => Limit is null ? None : Volume.FromCubicMeters(Exactly().Value);

    /// <summary>
    /// Air by the regulation's own rounded figures, Table G-11: vapour of a gallon and limit as printed there, put into its form;
    /// <see langword="null"/> for a solvent without a row, or when <see cref="OfLimit"/> is not a quarter. The rows are from memory.
    /// </summary>
    public Volume? Tabled => Row is null ? null : Volume.FromCubicMeters(ByTable().Value);

    /// <summary>
    /// How far the table is from the form worked out, <see cref="Tabled"/> over <see cref="Printed"/> less 1: rounding and another limit.
    /// Below 0 the table asks for less air. <see langword="null"/> where one of the two is missing or 0.
    /// </summary>
    public Ratio? TabledDifference => Row is not null && Printed > Volume.Zero ? Ratio.FromDecimalFractions(TableOverForm().Value) : null;

    /// <summary>
    /// Flow of fresh air, mixing factor included, while the liquid evaporates steadily over <see cref="EvaporationTime"/>; 0 for what does
    /// not burn, <see langword="null"/> without that time or when the limit is not known.
    /// </summary>
    public VolumeFlow? Airflow => evaporation is null ? null
        : Limit is not null ? VolumeFlow.FromCubicMetersPerSecond(Steadily().Value)
        : Solvent.Flammability.IsNonBurning ? VolumeFlow.Zero : null;

    /// <summary>What to warn of.</summary>
    public IReadOnlyList<Caution> Cautions => new ValueList<Caution>(
        Solvent.Flammability.IsNonBurning ? [Refinish.Cautions.NonBurningVapour]
            : Limit is null ? [Refinish.Cautions.LimitUnknown, Refinish.Cautions.IgnitionSources, Refinish.Cautions.MakeUpAir]
            : [Refinish.Cautions.IgnitionSources, Refinish.Cautions.MakeUpAir]);

    private (double Vapour, double Limit)? Row =>
        share == Quarter && Rows.TryGetValue(Solvent.CasNumber, out (double, double) row) ? row : null;

    private Volume? None => Solvent.Flammability.IsNonBurning ? Volume.Zero : null;

    private double? Limit => Solvent.Flammability.Lower?.DecimalFractions;

    /// <summary>How the vapour and the air follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Dilution air",
    [
        Evaporated,
        .. Trace.When(Printed is not null && Limit is not null, ByForm),
        .. Trace.When(Limit is not null, Exactly),
        .. Trace.When(Limit is not null && evaporation is not null, Steadily),
        .. Trace.When(Row is not null, ByTable),
        .. Trace.When(TabledDifference is not null, TableOverForm),
    ]);

    /// <summary>The liquid and its air.</summary>
    /// <returns>Text such as <c>3.7854 L of toluene: 311.89 m³ of air to 25 % of its flammable limit</c>.</returns>
    public override string ToString() =>
        Measure.Capacity.Format(liquid) + " of " + Solvent.Name + ": "
        + (Solvent.Flammability.IsNonBurning ? "does not burn, and asks for no air on that account"
            : Exact is Volume air
                ? Measure.RoomVolume.Format(air.CubicMeters) + " of air to " + Measure.Percent.Format(share) + " of its flammable limit"
            : "flammable limit not known");

    private Num Evaporated(Trace? t = null) => t.Step("vapour", "V_v", Measure.RoomVolume, Gas,
        t.Given("V_l", liquid, Measure.Capacity) * t.Given("ρ", Solvent.Density.KilogramsPerCubicMeter, Measure.Density)
            * t.Given("V_m", MolarVolumeAt70F, Measure.MolarVolume) / t.Given("M", Solvent.MolarMass.KilogramsPerMole, Measure.MolarMass));

    private Num ByForm(Trace? t = null)
    {
        Num lel = Lower(t);
        return t.Step("air by the regulation's form", "V_r", Measure.RoomVolume, Form, 4 * (1 - lel) * Evaporated(t) / lel);
    }

    private Num Exactly(Trace? t = null)
    {
        Num part = t.Given("s", share, Measure.Percent) * Lower(t);
        return t.Step("air, exactly", "V_a", Measure.RoomVolume, Balance, Evaporated(t) * (1 - part) / part);
    }

    private Num Steadily(Trace? t = null) => t.Step("airflow", "Q", Measure.Airflow, Steady,
        Exactly(t) / t.Given("t", evaporation!.Value, Measure.Minutes) * t.Given("K", mixing, Measure.Number));

    // The table has cubic feet of vapour per US gallon, and per cent.
    private Num ByTable(Trace? t = null)
    {
        Num lel = t.Given("LEL_G11", Row!.Value.Limit / 100, Measure.Percent);
        Num vapour = t.Given("v_G11", Row.Value.Vapour * 0.028316846592 / 0.003785411784, Measure.Number);
        return t.Step("air by the regulation's table", "V_G11", Measure.RoomVolume, Table,
            4 * (1 - lel) * t.Given("V_l", liquid, Measure.Capacity) * vapour / lel);
    }

    private Num TableOverForm(Trace? t = null) =>
        t.Step("table over form, less 1", "δ", Measure.Percent, Table, (ByTable(t) / ByForm(t)) - 1);

    private Num Lower(Trace? t) => t.Given("LEL", Limit!.Value, Measure.Percent);
}
