using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// The solvents and hazards of the trade as data, with what is known about each. A caller adds others by making a <see cref="Substance"/> from the
/// product's safety data sheet and handing its limits and vapour pressures to a study.
/// </summary>
public static class Substances
{
    /// <summary>Ethylbenzene, which comes with xylene. Density from memory.</summary>
    public static Solvent Ethylbenzene { get; } = Liquid("ethylbenzene", "100-41-4", 106.17, 0.867, 0.8, "NIOSH IDLH documentation", "100-41-4: its immediately dangerous 800 ppm is 10 % of this limit; density from memory");

    /// <summary>Methyl n-amyl ketone. Density from memory.</summary>
    public static Solvent MethylAmylKetone { get; } = Liquid("methyl n-amyl ketone", "110-43-0", 114.19, 0.815, 1.1, "NIOSH IDLH documentation", "110-43-0: 1.1 % at 66 °C; density from memory");

    /// <summary>Isopropanol, the same as <see cref="GenericSolvents.Isopropanol"/>.</summary>
    public static Solvent Isopropanol => GenericSolvents.Isopropanol;

    /// <summary>1,2,4-Trimethylbenzene, the largest single part of aromatic naphtha.</summary>
    public static Solvent Trimethylbenzene { get; } = Liquid("1,2,4-trimethylbenzene", "95-63-6", 120.19, 0.876, 0.8, "two chemical data pages", "density 0.876 g/mL at 20 °C; lower limit printed as 0.8 and 0.9 %, the lower taken");

    /// <summary>Ethyltoluene, mixed isomers. Density and lower flammable limit not looked up: the limit is left unknown.</summary>
    public static Solvent Ethyltoluene { get; } = new()
    {
        Name = "ethyltoluene, mixed isomers",
        CasNumber = "25550-14-5",
        MolarMass = MolarMass.FromGramsPerMole(120.19),
        Density = Density.FromGramsPerMilliliter(0.87),
        LowerFlammableLimit = null,
        Source = Source.FromMemory("density; molar mass by its formula; flammable limit not known here"),
    };

    /// <summary>Methylene chloride (dichloromethane). Its limit of 13 % and its density are from memory. For strippers that should not be used; see <see cref="AirCautions.MethyleneChloride"/>.</summary>
    public static Solvent MethyleneChloride { get; } = new()
    {
        Name = "methylene chloride",
        CasNumber = "75-09-2",
        MolarMass = MolarMass.FromGramsPerMole(84.93),
        Density = Density.FromGramsPerMilliliter(1.326),
        LowerFlammableLimit = Ratio.FromPercent(13),
        Source = Source.FromMemory("lower flammable limit 13 % and density 1.326 g/mL"),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Substance> All { get; } = new ValueList<Substance>(
    [
        Of(GenericSolvents.Acetone, "Cleaning and gun wash. Very volatile, very flammable; a narcotic in high concentration."),
        Of(GenericSolvents.Butanone, "Primers, strippers and cleaning. Irritates; flammable."),
        Of(GenericSolvents.EthylAcetate, "Fast solvent of lacquers. Irritates; flammable."),
        Of(GenericSolvents.ButylAcetate, "The usual solvent of acrylic urethanes. Irritates; flammable."),
        Of(GenericSolvents.Xylene, "Primers and topcoats. A narcotic; flammable; usually holds some ethylbenzene."),
        Of(Ethylbenzene, "Comes with technical xylene."),
        Of(GenericSolvents.Toluene, "Primers, thinners. A narcotic, absorbed through the skin; flammable."),
        Of(GenericSolvents.MethoxypropylAcetate, "Slow solvent of urethanes. Irritates; absorbed through the skin."),
        Of(MethylAmylKetone, "Slow solvent of high-solids coatings."),
        Of(Isopropanol, "Wiping, adhesion promoters. Flammable."),
        Of(Trimethylbenzene, "Largest single part of aromatic naphtha. A narcotic; irritates."),
        Of(Ethyltoluene, "Part of aromatic naphtha; no limit is known here, so it cannot be judged."),
        Of(MethyleneChloride, "Strippers. Has killed bathtub refinishers; the body makes carbon monoxide of it."),
        Hazardous("822-06-0", "hexamethylene diisocyanate (monomer)", "Hardeners hold a little of it, usually below 0.5 % by weight, from memory. Sensitises: asthma for life."),
        Hazardous("28182-81-2", "hexamethylene diisocyanate polymers", "The hardener itself, in the mist while spraying. No federal limit; some states have one. Screened as mist by IsocyanateScreen, not as vapour."),
        Hazardous("7664-39-3", "hydrogen fluoride", "Etchants with hydrofluoric acid or bifluoride. Burns deep, without pain at first; its vapour harms the lungs."),
        Hazardous("14808-60-7", "respirable crystalline silica, quartz", "Dust of tile, grout, enamel and fillers when dry-sanded or ground. Scars the lungs."),
        Hazardous("7439-92-1", "lead", "Dust of old enamel, glaze and paint. Harms the nerves, children's most."),
    ]);

    /// <summary>
    /// Light aromatic naphtha as a blend of single substances, by mass: 55 % trimethylbenzene, 40 % ethyltoluene, 5 % xylene. The composition is from memory and
    /// differs from maker to maker; take the safety data sheet's where it gives one. As one of its parts has no limit here, a study with it cannot be judged as a whole.
    /// </summary>
    public static IReadOnlyList<SolventShare> AromaticNaphtha { get; } = new ValueList<SolventShare>(
    [
        new(Trimethylbenzene, Ratio.FromPercent(55)),
        new(Ethyltoluene, Ratio.FromPercent(40)),
        new(GenericSolvents.Xylene, Ratio.FromPercent(5)),
    ]);

    /// <summary>Where that composition comes from.</summary>
    public static Source AromaticNaphthaSource { get; } = Source.FromMemory("usual make-up of light aromatic solvent naphtha, 64742-95-6");

    /// <summary>The substance with a registry number.</summary>
    /// <param name="casNumber">Chemical Abstracts Service registry number.</param>
    /// <returns>The substance; <see langword="null"/> when it is not known here, which is not a finding of no harm.</returns>
    /// <exception cref="ArgumentException"><paramref name="casNumber"/> is empty.</exception>
    public static Substance? Find(string casNumber)
    {
        Guard.Named(casNumber, nameof(casNumber));
        return All.FirstOrDefault(substance => string.Equals(substance.CasNumber, casNumber, StringComparison.Ordinal));
    }

    /// <summary>A blend as part of a larger one: each of its shares times the part.</summary>
    /// <param name="blend">The blend's shares.</param>
    /// <param name="part">The blend's part of the larger one, more than 0 and at most 100 %.</param>
    /// <returns>The shares of the larger one; a solvent that is in both has to be added up by the caller.</returns>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="part"/> is outside its range.</exception>
    public static IReadOnlyList<SolventShare> PartOf(IReadOnlyList<SolventShare> blend, Ratio part)
    {
        double fraction = Guard.Within(part, Bounds.Positive(Measure.Percent, 1), nameof(part));
        return new ValueList<SolventShare>(Guard.List(blend, nameof(blend), 1).Select(share =>
            new SolventShare(share.Solvent, Ratio.FromDecimalFractions(share.MassFraction.DecimalFractions * fraction))));
    }

    private static Solvent Liquid(string name, string cas, double gramsPerMole, double gramsPerMilliliter, double lflPercent, string document, string section) => new()
    {
        Name = name,
        CasNumber = cas,
        MolarMass = MolarMass.FromGramsPerMole(gramsPerMole),
        Density = Density.FromGramsPerMilliliter(gramsPerMilliliter),
        LowerFlammableLimit = Ratio.FromPercent(lflPercent),
        Source = Source.Published(document, section),
    };

    private static Substance Of(Solvent liquid, string note) => Hazardous(liquid.CasNumber, liquid.Name, note) with { Liquid = liquid };

    private static Substance Hazardous(string cas, string name, string note) => new()
    {
        CasNumber = cas,
        Name = name,
        Note = note,
        Liquid = null,
        VapourPressures = Air.VapourPressures.For(cas),
        Limits = PublishedLimits.For(cas),
        Law = new ValueList<LegalFact>(LegalFacts.All.Where(fact => Concerns(fact, cas))),
    };

    private static bool Concerns(LegalFact fact, string cas) => cas switch
    {
        "75-09-2" => fact.Subject == "methylene chloride",
        "822-06-0" or "28182-81-2" => fact.Subject is "diisocyanates" or "isocyanates" or "respirators",
        "14808-60-7" => fact.Subject == "silica",
        "7439-92-1" => fact.Subject == "lead",
        _ => false,
    };
}
