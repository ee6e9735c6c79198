using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// Air that a volume of liquid solvent needs, once evaporated, to stay at a quarter of its lower flammable limit:
/// the form of 29 CFR 1910.94(c)(6)(ii), 4 (100 − LEL) V / LEL, and the exact one, V (400 − LEL) / LEL.
/// </summary>
/// <remarks>
/// The exact form asks for more air: it puts the mixture, air and vapour together, at exactly a quarter of the limit, which is the form to design by.
/// The other is smaller by 3/(400 − LEL) · LEL, 0.8 % at a limit of 1 % and 5.6 % at 7.3 %. It is from memory, not checked against the text of
/// the regulation. Vapour by the ideal gas at 70 °F and 1 atm (24.14 L/mol), as that table's first column has it.
/// </remarks>
/// <example><code>
/// DilutionAir toluene = new(Volume.FromUsGallons(1), Solvents.Toluene);
/// double? cubicFeet = toluene.Exact?.CubicFeet;
/// </code></example>
public sealed record DilutionAir
{
    /// <summary>R · 294.26 K / 101 325 Pa.</summary>
    private const double MolarVolumeAt70F = AirKernel.GasConstant * (21.111111111111111 + 273.15) / 101325;

    private static readonly Source Gas = Source.Derived("ideal gas at 70 °F and 1 atm, the condition of 29 CFR 1910.94 Table G-11");
    private static readonly Source Form = Source.FromMemory("29 CFR 1910.94(c)(6)(ii): 4 (100 − LEL) (vapour per volume) / LEL, LEL in per cent");
    private static readonly Source Balance = Source.Derived("vapour over vapour and air is a quarter of the limit");

    private readonly double liquid;

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

    /// <summary>The vapour it makes at 70 °F and 1 atm.</summary>
    public Volume Vapour => Volume.FromCubicMeters(VapourVolume());

    /// <summary>Air by the form of the regulation; <see langword="null"/> when the limit is not known.</summary>
    public Volume? Printed => Limit is double lel ? Volume.FromCubicMeters(4 * (1 - lel) * VapourVolume() / lel) : null;

    /// <summary>Air by the exact form, which is never less; <see langword="null"/> when the limit is not known.</summary>
    public Volume? Exact => Limit is double lel ? Volume.FromCubicMeters(VapourVolume() * (4 - lel) / lel) : null;

    private double? Limit => Solvent.Flammability.Lower?.DecimalFractions;

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
        return new Workings("Dilution air",
        [
            vapour,
            new("air by the regulation's form", "V_r", 4 * (1 - lel) * vapour.Result() / lel, Printed!.Value.CubicMeters, Measure.RoomVolume, Form),
            new("air, exactly", "V_a", vapour.Result() * (4 - lel) / lel, Exact!.Value.CubicMeters, Measure.RoomVolume, Balance),
        ]);
    }

    /// <summary>The liquid and its air.</summary>
    /// <returns>Text such as <c>3.7854 L of toluene: 311 m³ of air to a quarter of its flammable limit</c>.</returns>
    public override string ToString() =>
        Measure.Capacity.Format(liquid) + " of " + Solvent.Name + ": "
        + (Exact is Volume air ? Measure.RoomVolume.Format(air.CubicMeters) + " of air to a quarter of its flammable limit" : "flammable limit not known");

    private double VapourVolume() => liquid * Solvent.Density.KilogramsPerCubicMeter * MolarVolumeAt70F / Solvent.MolarMass.KilogramsPerMole;
}
