using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Substrates;

/// <summary>What can hurt while a surface is judged and prepared. Made from the survey, never from the verdict.</summary>
internal static class SubstrateCautions
{
    private const string SafetyDataSheet = "the product's safety data sheet and local rules";

    public static readonly Caution LeadFound = new(
        "lead-found",
        Hazard.Lead,
        "Lead was found: dust and rinse water carry it, and children are hurt by very little.",
        "the law on lead work, carried out by a certified firm",
        Source.Published("71 FR 1588", "target housing: built before 1978, TSCA section 401"));

    public static readonly Caution LeadOpen = new(
        "lead-untested",
        Hazard.Lead,
        "Old enamel, glaze and coatings may hold lead: test before anything is sanded, etched or stripped.",
        "a lead test and the law on lead work",
        Source.Published("71 FR 1588", "target housing: built before 1978, TSCA section 401"));

    public static readonly Caution AsbestosFound = new(
        "asbestos-found",
        Hazard.Dust,
        "Asbestos was found: nobody drills, breaks, scrapes, sands or sweeps it; only people trained and licensed for it may disturb it.",
        "the law on asbestos work and the authority that enforces it",
        AsbestosRules.Presumed);

    public static readonly Caution AsbestosUntested = new(
        "asbestos-untested",
        Hazard.Dust,
        "Old adhesive, backing board, flooring and pads or coatings under a steel tub may hold asbestos: leave them alone until they were "
            + "sampled; no look and no age tells.",
        "an accredited inspector's samples and the law on asbestos work",
        AsbestosRules.Presumed);

    public static readonly Caution Dust = new(
        "preparation-dust",
        Hazard.Dust,
        "Abrading enamel, glaze, grout, filler and old coats makes fine dust: work wet or with extraction, and wear the respirator that the exposure asks for.",
        "the employer's respiratory protection programme and " + SafetyDataSheet,
        Source.CommonPractice("29 CFR 1926.1153 limits respirable silica to 50 µg/m³ over eight hours (seen second-hand)"));

    public static readonly Caution Etching = new(
        "etchant-burns",
        Hazard.Acid,
        "Etchants for enamel and glaze may hold hydrofluoric acid, which burns deep and late and can kill: keep calcium gluconate gel at hand or abrade instead.",
        SafetyDataSheet + " and first-aid training",
        Source.CommonPractice("first aid with water and calcium gluconate gel (seen second-hand in medical guides)"));

    public static readonly Caution Strippers = new(
        "stripper-vapour",
        Hazard.Stripper,
        "Strippers with methylene chloride have killed refinishers in bathrooms and are to be taken as prohibited for this work; any other stripper needs its own exhaust and gloves.",
        "40 CFR 751 subpart B, local rules and " + SafetyDataSheet,
        Source.Published("MMWR 61(7):119-122 (24 February 2012)", "13 deaths of bathtub refinishers, 2000 to 2011"));

    public static readonly Caution Structure = new(
        "fixture-gives-way",
        Hazard.Structure,
        "The fixture or what carries it may give way, and a coating only hides that: repair first.",
        "a licensed contractor and the building code",
        Source.CommonPractice("a coating carries no load"));

    public static readonly Caution WaterBehind = new(
        "water-behind",
        Hazard.Structure,
        "Water behind the surface rots what carries it and lifts the coating: find its way first.",
        "a licensed plumber or contractor",
        Source.CommonPractice("a coating does not stop water from behind"));

    private static readonly Caution Peroxide = new(
        "peroxide-hardener",
        Hazard.SkinAndEyes,
        "Polyester filler is hardened with a peroxide that can blind: gloves and closed goggles while mixing.",
        SafetyDataSheet,
        Source.CommonPractice("peroxide hardeners"));

    private static readonly Caution Amine = new(
        "amine-hardener",
        Hazard.SkinAndEyes,
        "Epoxy resins and amine hardeners burn the skin and can make it allergic for life: gloves and closed goggles while mixing and sanding.",
        SafetyDataSheet,
        Source.CommonPractice("amine hardeners"));

    private static readonly Caution Styrene = new(
        "styrene-filler",
        Hazard.FireAndExplosion,
        "Polyester filler gives off styrene, which smells strongly and burns; leftovers in the cup get hot.",
        SafetyDataSheet,
        Source.CommonPractice("styrene in polyester filler"));

    /// <summary>What goes with a filler; every caution when nobody says what it is.</summary>
    public static IReadOnlyList<Caution> Filler(FillerChemistry chemistry) => new ValueList<Caution>(chemistry switch
    {
        FillerChemistry.Polyester => [Peroxide, Styrene, Dust],
        FillerChemistry.Epoxy => [Amine, Dust],
        _ => [Peroxide, Amine, Styrene, Dust],
    });

    public static IEnumerable<Caution> Of(Survey survey)
    {
        if (survey.LeadTest == LeadTest.Positive)
        {
            yield return LeadFound;
        }
        else if (SurveyRules.LeadIsOpen(survey))
        {
            yield return LeadOpen;
        }

        if (survey.AsbestosTest == AsbestosTest.Positive)
        {
            yield return AsbestosFound;
        }
        else if (AsbestosRules.IsOpen(survey))
        {
            yield return AsbestosUntested;
        }

        if (survey.Defects.Any(defect => defect is FlexingFloor or Perforation or Crack { MovesUnderLoad: true }))
        {
            yield return Structure;
        }

        if (survey.SubstrateWet || survey.LeakCannotBeStopped || survey.SwollenOrDelaminated || survey.Defects.Any(defect => defect is LooseTiles))
        {
            yield return WaterBehind;
        }

        yield return Dust;
        if (MayBeEtched(survey.Material))
        {
            yield return Etching;
        }

        if (survey.PreviouslyRefinished || survey.Defects.Any(defect => defect is PeelingCoat))
        {
            yield return Strippers;
        }
    }

    public static bool MayBeEtched(FixtureMaterial material) =>
        SurveyRules.IsEnamelled(material) || material is FixtureMaterial.VitreousChina or FixtureMaterial.CeramicTile;
}
