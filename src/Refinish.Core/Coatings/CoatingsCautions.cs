using System.Collections.Generic;

namespace Refinish.Coatings;

/// <summary>What can hurt in the steps of a system, apart from spraying.</summary>
internal static class CoatingsCautions
{
    /// <summary>A floor with grains is not a floor on which nobody slips.</summary>
    public static readonly Caution Slip = new(
        "slip-grains",
        Hazard.Slip,
        "Grains change how a wet floor grips; no number here says by how much, and no floor stops every slip. What counts is a measurement on this surface, wet and soapy, with the method and the criterion named, at handover and again as it wears.",
        "the standard and criterion agreed with the owner, and the local building code",
        Source.Published("ANSI A326.3-2021", "wet dynamic coefficient of friction, at least 0.42 for level interior wet floors, second-hand; it is written for floors, and the bathtub method, ASTM F462, was withdrawn in 2016"));

    /// <summary>Etchants burn.</summary>
    public static readonly Caution Etch = new(
        "acid-etch",
        Hazard.Acid,
        "Etchants for enamel and tile burn skin, eyes and lungs, and those with hydrofluoric acid poison through the skin without hurting at first: face shield, acid-proof gloves, the gel that the safety data sheet names within reach, and never on plastics.",
        "the product's safety data sheet and the employer's chemical-hygiene rules; a physician at once after any contact with hydrofluoric acid",
        Source.CommonPractice("acid etching of glassy surfaces"));

    /// <summary>Sanding makes dust, and old glaze and paint may hold lead.</summary>
    public static readonly Caution Dust = new(
        "abrading-dust",
        Hazard.Dust,
        "Abrade wet or with extraction, after the surface has been tested for lead; respirable dust of glaze, tile and old coatings harms.",
        "29 CFR 1926.1153 and 40 CFR 745 or the local equivalent",
        Source.Published("29 CFR 1926.1153", "respirable crystalline silica in construction"));

    /// <summary>A content of the can is not a concentration in the room.</summary>
    public static readonly Caution Content = new(
        "content-is-not-air",
        Hazard.SolventVapour,
        "A content within a limit says what a coating may hold, not what the air in the room holds: in a small bathroom a coating within every limit can still fill the air with more vapour than a person or a flame may meet.",
        "the safety data sheet, air sampling, and the local fire code; the air district for the limit",
        Source.Derived("content of a coating against concentration in air"));

    /// <summary>Isocyanates sensitise.</summary>
    public static readonly Caution Isocyanate = new(
        "isocyanate-hardener",
        Hazard.Isocyanate,
        "The hardener holds isocyanates, which sensitise skin and lungs: no skin contact while mixing, and supplied air when it is sprayed.",
        "the safety data sheet and the employer's respiratory protection programme",
        Source.Published("NIOSH Alert 96-111 (1996)", "isocyanates; that skin contact sensitises too is from memory"));

    /// <summary>Epoxies and their hardeners burn and sensitise.</summary>
    public static readonly Caution Epoxy = new(
        "epoxy-hardener",
        Hazard.SkinAndEyes,
        "Epoxy resins and amine hardeners burn skin and eyes and can make skin and lungs allergic for life: gloves and closed goggles while mixing, and nobody breathes the mist when it is sprayed.",
        "the product's safety data sheet and the employer's respiratory protection programme",
        Source.CommonPractice("epoxies cured with amines"));

    /// <summary>A can of isocyanate that took up water is under pressure.</summary>
    public static readonly Caution SwollenCan = new(
        "swollen-can",
        Hazard.Isocyanate,
        "An opened can of isocyanate takes up moisture and makes gas: do not open one that bulges, and do not use what is cloudy, thick or has a skin, whatever its age.",
        "the product's safety data sheet",
        Source.CommonPractice("opened isocyanate hardeners"));

    /// <summary>What the hardener of a two-part product can do to who mixes it; one without isocyanate is taken for an epoxy's, the careful reading.</summary>
    public static IEnumerable<Caution> OfMixing(CoatingProduct product) =>
        product.IsocyanateFraction.DecimalFractions > 0 ? [Isocyanate] : product.Hardener is null ? [] : [Epoxy];

    public static IEnumerable<Caution> Of(SystemStep step)
    {
        switch (step.Kind)
        {
            case SystemStepKind.Etch:
                yield return Etch;
                break;
            case SystemStepKind.Abrade:
                yield return Dust;
                break;
            case SystemStepKind.SlipResistantBroadcast or SystemStepKind.SlipResistantAdditive:
                yield return Slip;
                break;
        }
    }
}
