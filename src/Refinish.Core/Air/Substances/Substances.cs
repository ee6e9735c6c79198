using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>
/// The solvents and hazards of the trade with the limits, vapour pressures and law known about each; the liquids themselves stand in
/// <see cref="Solvents"/>. A caller adds others by making a <see cref="Substance"/> from the product's safety data sheet and handing its
/// limits and vapour pressures to a study.
/// </summary>
public static class Substances
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Substance> All { get; } = new ValueList<Substance>(
    [
        Of(Solvents.Acetone, "Cleaning and gun wash. Very volatile, very flammable; a narcotic in high concentration."),
        Of(Solvents.Butanone, "Primers, strippers and cleaning. Irritates; flammable."),
        Of(Solvents.EthylAcetate, "Fast solvent of lacquers. Irritates; flammable."),
        Of(Solvents.ButylAcetate, "The usual solvent of acrylic urethanes. Irritates; flammable."),
        Of(Solvents.Xylene, "Primers and topcoats. A narcotic; flammable; usually holds some ethylbenzene."),
        Of(Solvents.Ethylbenzene, "Comes with technical xylene."),
        Of(Solvents.Toluene, "Primers, thinners. A narcotic, absorbed through the skin; flammable."),
        Of(Solvents.MethoxypropylAcetate, "Slow solvent of urethanes. Irritates; absorbed through the skin."),
        Of(Solvents.MethylAmylKetone, "Slow solvent of high-solids coatings."),
        Of(Solvents.Isopropanol, "Wiping, adhesion promoters. Flammable."),
        Of(Solvents.Trimethylbenzene, "Largest single part of aromatic naphtha. A narcotic; irritates."),
        Of(Solvents.Ethyltoluene, "Part of aromatic naphtha; no limit is known here, so it cannot be judged."),
        Of(Solvents.Water, "Waterborne products and cleaners. Makes the air humid, which slows drying; no solvent, and no limit applies."),
        Of(Solvents.MethyleneChloride, "Strippers. Has killed bathtub refinishers; the body makes carbon monoxide of it."),
        Hazardous("822-06-0", "hexamethylene diisocyanate (monomer)", "Hardeners hold a little of it, usually below 0.5 % by weight, from memory. Sensitises: asthma for life."),
        Hazardous("28182-81-2", "hexamethylene diisocyanate polymers", "The hardener itself, in the mist while spraying. No federal limit; some states have one. Screened as mist by IsocyanateScreen, not as vapour."),
        Hazardous("7664-39-3", "hydrogen fluoride", "Etchants with hydrofluoric acid or bifluoride. Burns deep, without pain at first; its vapour harms the lungs."),
        Hazardous("14808-60-7", "respirable crystalline silica, quartz", "Dust of tile, grout, enamel and fillers when dry-sanded or ground. Scars the lungs."),
        Hazardous("7439-92-1", "lead", "Dust of old enamel, glaze and paint. Harms the nerves, children's most."),
    ]);

    /// <summary>The substance with a registry number.</summary>
    /// <param name="casNumber">Chemical Abstracts Service registry number.</param>
    /// <returns>The substance; <see langword="null"/> when it is not known here, which is not a finding of no harm.</returns>
    /// <exception cref="ArgumentException"><paramref name="casNumber"/> is empty.</exception>
    public static Substance? Find(string casNumber)
    {
        Guard.Named(casNumber);
        return All.FirstOrDefault(substance => string.Equals(substance.CasNumber, casNumber, StringComparison.Ordinal));
    }

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
