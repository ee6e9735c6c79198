using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// The volatile liquids of the trade as data: coatings, wipes, cleaners and strippers. A caller adds others from a product's safety data
/// sheet.
/// </summary>
/// <remarks>
/// Molar masses are IUPAC atomic weights added up. Lower flammable limits are those of the NIOSH documentation for immediately
/// dangerous concentrations and pocket guide, lowest isomer for xylene. Densities near 20 °C are from memory, unverified. Vapour pressures
/// at 20 °C: acetone 180 and isopropanol 33 mmHg read in federal documents; the others from memory (butanone is printed as 71 and 78 in two
/// public documents; xylene is the middle of 7 for the ortho isomer and 9 for meta and para; the acetate 4 mmHg on a chemical data page).
/// Where no vapour pressure stands here, none was looked up. Upper limits and flash points: toluene and isopropanol read in the NIOSH
/// pocket guide, ethylbenzene in OSHA's chemical data, acetone in the NTP chemical repository (1991), xylene in the occupational health
/// guideline (the widest of the isomers), benzyl alcohol in a Russian state standard, methylene chloride in 62 FR 1494; the flash points
/// of butanone and n-butyl acetate in the National Academies' summary and ICSC 0399; each source says which are from memory.
/// </remarks>
public static class Solvents
{
    private const string Documentation = "NIOSH IDLH documentation";
    private const string PocketGuide = "NIOSH Pocket Guide to Chemical Hazards";

    /// <summary>Acetone. Lower flammable limit 2.5 %.</summary>
    public static Solvent Acetone { get; } =
        Make("acetone", "67-64-1", 58.08, 0.791, Burns(2.5, 12.8, -18), 180,
            Source.Published(PocketGuide, "acetone; its immediately dangerous 2500 ppm is 10 % of this limit; density from memory; "
            + "upper limit and flash point: NTP, 1991"));

    /// <summary>2-Butanone (methyl ethyl ketone). Lower flammable limit 1.4 % (at 93 °C).</summary>
    public static Solvent Butanone { get; } =
        Make("2-butanone", "78-93-3", 72.11, 0.805, Burns(1.4, 11.4, -9), 78,
            Source.Published(Documentation, "78-93-3; density and upper limit from memory; flash point: National Academies, laboratory chemical safety summary"));

    /// <summary>Ethyl acetate. Lower flammable limit 2.0 %.</summary>
    public static Solvent EthylAcetate { get; } =
        Make("ethyl acetate", "141-78-6", 88.11, 0.900, Burns(2.0, 11.5, -4), 73,
            Source.Published(Documentation, "141-78-6; density, upper limit and flash point from memory"));

    /// <summary>n-Butyl acetate. Lower flammable limit 1.7 %.</summary>
    public static Solvent ButylAcetate { get; } =
        Make("n-butyl acetate", "123-86-4", 116.16, 0.882, Burns(1.7, 7.6, 22), 10,
            Source.Published(Documentation, "123-86-4; density and upper limit from memory; flash point: ICSC 0399"));

    /// <summary>Xylene, mixed isomers. Lower flammable limit 0.9 % (o-xylene, the lowest isomer).</summary>
    public static Solvent Xylene { get; } =
        Make("xylene, mixed isomers", "1330-20-7", 106.17, 0.864, Burns(0.9, 7.0, 27.2), 8,
            Source.Published(Documentation, "95-47-6, o-, m- and p-xylene; density from memory; upper limit and flash point: occupational health guideline, p-xylene"));

    /// <summary>Ethylbenzene, which comes with xylene. Lower flammable limit 0.8 %; density from memory.</summary>
    public static Solvent Ethylbenzene { get; } =
        Make("ethylbenzene", "100-41-4", 106.17, 0.867, Burns(0.8, 6.7, 12.8), null,
            Source.Published(Documentation, "100-41-4: its immediately dangerous 800 ppm is 10 % of this limit; density from memory; "
            + "upper limit and flash point: OSHA chemical data"));

    /// <summary>Toluene. Lower flammable limit 1.1 %.</summary>
    public static Solvent Toluene { get; } =
        Make("toluene", "108-88-3", 92.14, 0.867, Burns(1.1, 7.1, 4.4), 21,
            Source.Published(Documentation, "108-88-3; density from memory; upper limit and flash point: NIOSH Pocket Guide"));

    /// <summary>Methyl n-amyl ketone. Lower flammable limit 1.1 % (at 66 °C); density from memory.</summary>
    public static Solvent MethylAmylKetone { get; } =
        Make("methyl n-amyl ketone", "110-43-0", 114.19, 0.815, Burns(1.1, 7.9, 39), null,
            Source.Published(Documentation, "110-43-0: 1.1 % at 66 °C; density, upper limit (at 121 °C) and flash point from memory"));

    /// <summary>Isopropanol. Lower flammable limit 2.0 %; vapour pressure 33 mmHg.</summary>
    public static Solvent Isopropanol { get; } =
        Make("isopropanol", "67-63-0", 60.10, 0.785, Burns(2.0, 12.7, 11.7), 33,
            Source.Published(PocketGuide, "isopropyl alcohol; upper limit at 93 °C; density from memory"));

    /// <summary>1-Methoxy-2-propyl acetate. Lower flammable limit 1.5 %, from memory, unverified.</summary>
    public static Solvent MethoxypropylAcetate { get; } =
        Make("1-methoxy-2-propyl acetate", "108-65-6", 132.16, 0.968, Burns(1.5, 7, 42), 4,
            Source.FromMemory("flammable limits 1.5 and 7 % by volume, flash point; molar mass and density from a chemical data page"));

    /// <summary>1,2,4-Trimethylbenzene, the largest single part of aromatic naphtha. Lower flammable limit 0.8 %.</summary>
    public static Solvent Trimethylbenzene { get; } =
        Make("1,2,4-trimethylbenzene", "95-63-6", 120.19, 0.876, Burns(0.8, 6.4, 44), null,
            Source.Published("two chemical data pages", "density 0.876 g/mL at 20 °C; lower limit printed as 0.8 and 0.9 %, the lower taken; upper limit and flash point from memory"));

    /// <summary>Ethyltoluene, mixed isomers. Density and lower flammable limit were not looked up: the limit is left unknown.</summary>
    public static Solvent Ethyltoluene { get; } =
        Make("ethyltoluene, mixed isomers", "25550-14-5", 120.19, 0.87, Flammability.Unknown, null,
            Source.FromMemory("density; molar mass by its formula; flammable limit not known here"));

    /// <summary>
    /// Benzyl alcohol, of strippers without chlorinated solvents. Lower flammable limit 0.99 %, the lower of two figures; it evaporates
    /// very slowly.
    /// </summary>
    public static Solvent BenzylAlcohol { get; } =
        Make("benzyl alcohol", "100-51-6", 108.14, 1.045, Burns(0.99, 15.5, 90), 0.05,
            Source.FromMemory("density, vapour pressure at 20 °C and a limit of 1.3 %; a Russian state standard for the product "
            + "prints 0.99 to 15.5 % and a flash point of 90 °C, which are taken"));

    /// <summary>d-Limonene, of citrus cleaners. Lower flammable limit 0.7 %, from memory, unverified.</summary>
    public static Solvent Limonene { get; } =
        Make("d-limonene", "5989-27-5", 136.23, 0.842, Burns(0.7, 6.1, 48), 1.5,
            Source.FromMemory("flammable limits 0.7 and 6.1 %, density, vapour pressure at 20 °C; flash point of safety data sheets"));

    /// <summary>
    /// Methylene chloride (dichloromethane). It has no flash point and burns from 12 to 19 %; NIOSH prints 13 % for the lower limit. For
    /// strippers that should not be used: it has killed bathtub refinishers.
    /// </summary>
    public static Solvent MethyleneChloride { get; } =
        Make("methylene chloride", "75-09-2", 84.93, 1.326, Flammability.Between(Ratio.FromPercent(12), Ratio.FromPercent(19)), null,
            Source.Published(
            "62 FR 1494 (10 January 1997)", "IV: limits 12 and 19 %; density 1.326 g/mL: NTP chemical repository, 1991"));

    /// <summary>
    /// Water, which is no solvent: it evaporates and makes the air humid, does not burn, and has no limit of exposure. For the shares of a
    /// waterborne product or cleaner.
    /// </summary>
    public static Solvent Water { get; } = new()
    {
        Name = "water",
        CasNumber = Solvent.Water,
        MolarMass = MolarMass.FromGramsPerMole(18.015),
        Density = Density.FromGramsPerMilliliter(0.998),
        Flammability = Flammability.NonBurning(Source.Derived("water is burnt already")),
        Volatility = Volatility.At20Celsius(Pressure.FromPascals(2339)),
        Source = Source.FromMemory("density at 20 °C; vapour pressure of the steam tables, 2.339 kPa at 20 °C"),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Solvent> All { get; } = new ValueList<Solvent>(
    [
        Acetone, Butanone, EthylAcetate, ButylAcetate, Xylene, Ethylbenzene, Toluene, MethylAmylKetone, Isopropanol,
        MethoxypropylAcetate, Trimethylbenzene, Ethyltoluene, BenzylAlcohol, Limonene, MethyleneChloride, Water,
    ]);

    /// <summary>
    /// Light aromatic naphtha as a blend of single substances, by mass: 55 % trimethylbenzene, 40 % ethyltoluene, 5 % xylene. The
    /// composition is from memory and
    /// differs from maker to maker; take the safety data sheet's where it gives one. Ethyltoluene has no limit here, so the vapour of the
    /// blend cannot be judged as a whole.
    /// </summary>
    public static IReadOnlyList<SolventShare> AromaticNaphtha { get; } = new ValueList<SolventShare>(
    [
        new(Trimethylbenzene, Ratio.FromPercent(55)),
        new(Ethyltoluene, Ratio.FromPercent(40)),
        new(Xylene, Ratio.FromPercent(5)),
    ]);

    /// <summary>Where that composition comes from.</summary>
    public static Source AromaticNaphthaSource { get; } = Source.FromMemory("usual make-up of light aromatic solvent naphtha, 64742-95-6");

    /// <summary>A blend as part of a larger one: each of its shares times the part.</summary>
    /// <param name="blend">The blend's shares.</param>
    /// <param name="part">The blend's part of the larger one, more than 0 and at most 100 %.</param>
    /// <returns>The shares of the larger one; a solvent that is in both has to be added up by the caller.</returns>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="part"/> is outside its range.</exception>
    public static IReadOnlyList<SolventShare> PartOf(IReadOnlyList<SolventShare> blend, Ratio part)
    {
        double fraction = Guard.Within(part, Bounds.Positive(Measure.Percent, 1));
        return new ValueList<SolventShare>(Guard.List(blend, 1).Select(share =>
            new SolventShare(share.Solvent, Ratio.FromDecimalFractions(share.MassFraction.DecimalFractions * fraction))));
    }

    private static Solvent Make(
        string name, string cas, double gramsPerMole, double gramsPerMilliliter, Flammability flammability, double? millimetresOfMercury,
        Source source) => new()
    {
        Name = name,
        CasNumber = cas,
        MolarMass = MolarMass.FromGramsPerMole(gramsPerMole),
        Density = Density.FromGramsPerMilliliter(gramsPerMilliliter),
        Flammability = flammability,
        Volatility = millimetresOfMercury is double pressure
            ? Volatility.At20Celsius(Pressure.FromMillimetersOfMercury(pressure))
            : Volatility.Unknown,
        Source = source,
    };

    private static Flammability Burns(double lowerPercent, double upperPercent, double flashCelsius) => Flammability.Between(
        Ratio.FromPercent(lowerPercent), Ratio.FromPercent(upperPercent), Temperature.FromDegreesCelsius(flashCelsius));
}
