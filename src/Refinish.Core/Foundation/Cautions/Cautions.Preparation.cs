using System.Collections.Generic;

namespace Refinish;

/// <content>What hurts while an old surface is stripped, etched and abraded.</content>
public static partial class Cautions
{
    /// <summary>Strippers; methylene chloride has killed people at this very work.</summary>
    public static Caution Strippers { get; } = new(
        "stripper-vapour",
        Hazard.Stripper,
        "Do not strip with methylene chloride. Its vapour has killed at least fourteen bathtub refinishers in the United States since 2000, each in a bathroom without enough air. Treat its use as prohibited there (40 CFR 751 subpart B) unless counsel has found an exception; elsewhere ask the local law. Any other stripper needs its own exhaust, gloves and goggles too.",
        "40 CFR 751 subpart B, the local law and " + SafetyDataSheet,
        Source.Published("OSHA/NIOSH hazard alert, January 2013; MMWR 61(7):119-122, 24 February 2012; 89 FR 39254, 8 May 2024", "deaths; final rule, in force from 8 July 2024, which bars most commercial uses (the final rule of 27 March 2019, 84 FR 11420, barred consumers only). That no exception covers this use is from memory. Where it is still used at all: 29 CFR 1910.1052, whose paragraph (a) covers construction (2007 edition), and 29 CFR 1926.1152"),
        Audience.Crew);

    /// <summary>Etchants, hydrofluoric acid above all.</summary>
    public static Caution Etchants { get; } = new(
        "etchant-burns",
        Hazard.Acid,
        "Etchants for enamel, glaze and tile burn skin, eyes and lungs: face shield, acid-proof gloves, and never on plastics. Those with hydrofluoric acid or bifluoride poison through the skin and burn without pain at first, below 20 % for up to a day, and small burns can kill. Abrade instead where the system allows; otherwise have calcium gluconate gel open at hand. After any contact, painless too: off with what is soaked, rinse at once with much water, then work the gel in with gloved hands until help comes, and call an ambulance. How long to rinse before the gel is for the safety data sheet to say; the gel is not for eyes, which are rinsed on and on.",
        "the safety data sheet, first-aid training, poison control and emergency medicine: a physician at once after any contact with hydrofluoric acid",
        Source.Published("ATSDR Medical Management Guidelines, hydrogen fluoride", "onset of pain; rinsing and the gel are quoted second-hand"),
        Audience.Crew);

    /// <summary>Acid and bleach make chlorine.</summary>
    public static Caution AcidAndBleach { get; } = new(
        "acid-and-bleach",
        Hazard.Acid,
        "Never let an acid cleaner or etchant meet bleach or a bleach-based cleaner: chlorine gas comes off at once. Rinse one away before the other is opened, with the fan on.",
        "the safety data sheets of both",
        Source.CommonPractice("acid on hypochlorite frees chlorine"),
        Audience.Crew | Audience.Occupant);

    /// <summary>Lead was found.</summary>
    public static Caution LeadFound { get; } = new(
        "lead-found",
        Hazard.Lead,
        "Lead was found: dust and rinse water carry it, and children are hurt by very little.",
        "the law on lead work, carried out by a certified firm",
        Source.Published("29 CFR 1926.62; 40 CFR 745 subpart E", "lead in construction; renovation rule, final, 73 FR 21692 (22 April 2008). That rinse water carries it and little hurts children: common practice"),
        Audience.Crew | Audience.Customer | Audience.Occupant);

    /// <summary>Nobody knows yet whether there is lead.</summary>
    public static Caution LeadUntested { get; } = new(
        "lead-untested",
        Hazard.Lead,
        "Have the old enamel, glaze, coating or paint tested for lead before it is scraped, sanded, ground, etched or stripped. In the United States homes built before 1978 fall under the renovation rule when painted surfaces are disturbed; whether a glazed fixture does is a question for the local programme, so take the careful answer.",
        "the local lead programme; in the United States 40 CFR 745 subpart E and 29 CFR 1926.62",
        Source.Published("40 CFR 745.83; 29 CFR 1926.62; 73 FR 21692", "definitions; (c)(1), construction, with 29 CFR 1910.1025 for general industry, from memory; final rule of 22 April 2008, summary: target housing is housing built before 1978, with exceptions (the proposal was 71 FR 1588, 10 January 2006)"),
        Audience.Crew | Audience.Customer | Audience.Occupant);

    /// <summary>Dust of old surfaces.</summary>
    public static Caution Dust { get; } = new(
        "preparation-dust",
        Hazard.Dust,
        "Abrade wet or with suction through a HEPA filter, and never dry-sweep: dust of enamel, glaze, tile, grout, filler and old coats can hold crystalline silica and lead. Test for lead first, and wear the respirator that the exposure asks for.",
        "29 CFR 1926.1153 and 40 CFR 745 subpart E or the local equivalents; the employer's respiratory protection programme and the safety data sheet",
        Source.Published("29 CFR 1926.1153", "(a), (b): action level 25 µg/m³; HEPA as 99.97 % at 0.3 µm; general industry: 29 CFR 1910.1053"),
        Audience.Crew);

    /// <summary>A coat that is sanded before it has cured.</summary>
    public static Caution UncuredDust { get; } = new(
        "uncured-dust",
        Hazard.Dust,
        "Sanding a coating that is not fully cured sets free dust with unreacted hardener: sand wet and wear the respirator that the exposure asks for.",
        "the product's safety data sheet and the employer's respiratory protection programme",
        Source.CommonPractice("wet sanding of two-component coatings"),
        Audience.Crew);

    /// <summary>Acid cleaners.</summary>
    public static Caution AcidCleaner { get; } = new(
        "acid-cleaner",
        Hazard.Acid,
        "An acid descaler gives off no solvent and is no less dangerous: it burns eyes and skin, and eats joints, metal trim and acrylic. Goggles, long gloves, the fan on, and much water after it.",
        "the safety data sheet",
        Source.CommonPractice("acid cleaners in bathrooms"),
        Audience.Crew);

    /// <summary>Alkaline degreasers.</summary>
    public static Caution CausticCleaner { get; } = new(
        "caustic-cleaner",
        Hazard.SkinAndEyes,
        "Alkaline degreasers burn eyes and skin: goggles and long gloves, splashes rinsed off at once and for long.",
        "the safety data sheet",
        Source.CommonPractice("strong alkali in cleaners"),
        Audience.Crew);

    private static IEnumerable<Caution> Preparing => [Strippers, Etchants, AcidAndBleach, AcidCleaner, CausticCleaner, LeadFound, LeadUntested, Dust, UncuredDust];
}
