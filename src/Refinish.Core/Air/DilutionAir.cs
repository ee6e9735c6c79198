using System;
using System.Collections.Generic;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// Air that a volume of liquid solvent needs, once evaporated, to stay at a share s of its lower flammable limit, a quarter unless given:
/// V (1 − s·LEL)/(s·LEL), and the form of 29 CFR 1910.94(c)(6)(ii) for a quarter, 4 (100 − LEL) V / LEL.
/// </summary>
/// <remarks>
/// The exact form asks for more air: it puts the mixture, air and vapour together, at exactly the share, which is the form to design by.
/// The other is smaller by 3/(400 − LEL) · LEL, 0.8 % at a limit of 1 % and 5.6 % at 7.3 %. It is from memory, not checked against the text of
/// the regulation. Vapour by the ideal gas at 70 °F and 1 atm (24.14 L/mol), as that table's first column has it. The airflow supposes that
/// the liquid evaporates at a steady rate; a coat does not, its first minutes are the richest: see <see cref="AirStudy.AirflowToHold"/>.
/// </remarks>
/// <example><code>
/// DilutionAir toluene = new(Volume.FromUsGallons(1), Solvents.Toluene)
/// {
///     OfLimit = Ratio.FromPercent(10),
///     EvaporationTime = TimeSpan.FromHours(1),
/// };
/// double? cubicFeet = toluene.Exact?.CubicFeet;                    // 27582
/// double? flow = toluene.Airflow?.CubicFeetPerMinute;              // 459.7
/// </code></example>
public sealed record DilutionAir
{
    /// <summary>R · 294.26 K / 101 325 Pa.</summary>
    private const double MolarVolumeAt70F = AirKernel.GasConstant * (21.111111111111111 + 273.15) / 101325;

    private static readonly Source Gas = Source.Derived("ideal gas at 70 °F and 1 atm, the condition of 29 CFR 1910.94 Table G-11");
    private static readonly Source Form = Source.FromMemory("29 CFR 1910.94(c)(6)(ii): 4 (100 − LEL) (vapour per volume) / LEL, LEL in per cent");
    private static readonly Source Balance = Source.Derived("vapour over vapour and air is the share of the limit");
    private static readonly Source Steady = Source.Derived("air over the time of evaporation, times the mixing factor");

    private readonly double liquid;
    private readonly double share = AirStudy.QuarterOfLimit;
    private readonly double? evaporation;
    private readonly double mixing = 1;

    /// <summary>Calculates the air for a volume of liquid.</summary>
    /// <param name="liquid">Liquid solvent that evaporates, more than 0 and at most 1 m³.</param>
    /// <param name="solvent">The solvent.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="liquid"/> is outside its range.</exception>
    public DilutionAir(Volume liquid, Solvent solvent)
    {
        this.liquid = Guard.Within(liquid, Bounds.Positive(Measure.Capacity, 1), nameof(liquid));
        Solvent = Guard.NotNull(solvent, nameof(solvent));
    }

    /// <summary>The liquid.</summary>
    public Volume Liquid => Volume.FromCubicMeters(liquid);

    /// <summary>The solvent.</summary>
    public Solvent Solvent { get; }

    /// <summary>The share of the lower flammable limit to stay at, 0.1 to 100 %; a quarter unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio OfLimit
    {
        get => Ratio.FromDecimalFractions(share);
        init => share = Guard.Within(value, Bounds.Between(1e-3, 1, Measure.Percent), nameof(OfLimit));
    }

    /// <summary>Over which time the liquid evaporates, 1 s to 30 days, for the airflow; <see langword="null"/> unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan? EvaporationTime
    {
        get => evaporation is double seconds ? Durations.FromSeconds(seconds) : null;
        init => evaporation = value is TimeSpan time ? Guard.Within(time, Bounds.Between(1, 30 * 86400, Measure.Minutes), nameof(EvaporationTime)) : null;
    }

    /// <summary>The mixing factor of the airflow, 1 (perfect) to 10 (poor); 1 unless given, which no real room reaches.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double MixingFactor
    {
        get => mixing;
        init => mixing = Guard.Within(value, Bounds.Between(1, 10, Measure.Number), nameof(MixingFactor));
    }

    /// <summary>The vapour it makes at 70 °F and 1 atm.</summary>
    public Volume Vapour => Volume.FromCubicMeters(VapourVolume());

    /// <summary>
    /// Air by the form of the regulation; <see langword="null"/> when the limit is not known or <see cref="OfLimit"/> is not a quarter.
    /// </summary>
    public Volume? Printed => Limit is double lel && share == AirStudy.QuarterOfLimit ? Volume.FromCubicMeters(4 * (1 - lel) * VapourVolume() / lel) : null;

    /// <summary>Air by the exact form, which is never less; <see langword="null"/> when the limit is not known.</summary>
    public Volume? Exact => Limit is double lel ? Volume.FromCubicMeters(ExactVolume(lel)) : null;

    /// <summary>
    /// Flow of fresh air, mixing factor included, while the liquid evaporates steadily over <see cref="EvaporationTime"/>;
    /// <see langword="null"/> without that time or when the limit is not known.
    /// </summary>
    public VolumeFlow? Airflow => Limit is double lel && evaporation is double time ? VolumeFlow.FromCubicMetersPerSecond(Flow(lel, time)) : null;

    /// <summary>What to warn of.</summary>
    public IReadOnlyList<Caution> Cautions => new ValueList<Caution>(
        Limit is null
            ? [Refinish.Cautions.LimitUnknown, Refinish.Cautions.IgnitionSources, Refinish.Cautions.MakeUpAir]
            : [Refinish.Cautions.IgnitionSources, Refinish.Cautions.MakeUpAir]);

    private double? Limit => Solvent.LowerFlammableLimit?.DecimalFractions;

    /// <summary>How the vapour and the air follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        WorkingStep vapour = new(
            "vapour",
            "V_v",
            Expression.Quantity("V_l", liquid, Measure.Capacity) * Expression.Quantity("ρ", Solvent.Density.KilogramsPerCubicMeter, Measure.Density)
                * Expression.Quantity("V_m", MolarVolumeAt70F, Measure.MolarVolume) / Expression.Quantity("M", Solvent.MolarMass.KilogramsPerMole, Measure.MolarMass),
            VapourVolume(),
            Measure.RoomVolume,
            Gas);
        if (Limit is not double limit)
        {
            return new Workings("Dilution air", [vapour]);
        }

        Expression lel = Expression.Quantity("LEL", limit, Measure.Percent);
        List<WorkingStep> steps = [vapour];
        if (Printed is Volume printed)
        {
            steps.Add(new("air by the regulation's form", "V_r", 4 * (1 - lel) * vapour.Result() / lel, printed.CubicMeters, Measure.RoomVolume, Form));
        }

        Expression part = Expression.Quantity("s", share, Measure.Percent) * lel;
        WorkingStep air = new("air, exactly", "V_a", vapour.Result() * (1 - part) / part, ExactVolume(limit), Measure.RoomVolume, Balance);
        steps.Add(air);
        if (evaporation is double time)
        {
            Expression flow = air.Result() / Expression.Quantity("t", time, Measure.Minutes) * Expression.Quantity("K", mixing, Measure.Number);
            steps.Add(new("airflow", "Q", flow, Flow(limit, time), Measure.Airflow, Steady));
        }

        return new Workings("Dilution air", steps);
    }

    /// <summary>The liquid and its air.</summary>
    /// <returns>Text such as <c>3.7854 L of toluene: 311.89 m³ of air to 25 % of its flammable limit</c>.</returns>
    public override string ToString() =>
        Measure.Capacity.Format(liquid) + " of " + Solvent.Name + ": "
        + (Exact is Volume air ? Measure.RoomVolume.Format(air.CubicMeters) + " of air to " + Measure.Percent.Format(share) + " of its flammable limit" : "flammable limit not known");

    private double ExactVolume(double limit) => VapourVolume() * (1 - (share * limit)) / (share * limit);

    private double Flow(double limit, double time) => ExactVolume(limit) / time * mixing;

    private double VapourVolume() => liquid * Solvent.Density.KilogramsPerCubicMeter * MolarVolumeAt70F / Solvent.MolarMass.KilogramsPerMole;
}
