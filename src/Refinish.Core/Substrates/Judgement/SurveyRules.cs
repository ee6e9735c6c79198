using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Substrates;

/// <summary>The rules. Thresholds are the policy's; the order of the codes carries no rank.</summary>
internal static class SurveyRules
{
    private const Suitability No = Suitability.NotSuitable;
    private const Suitability If = Suitability.SuitableWithConditions;
    private const int LeadYear = 1978;
    private const Audience Everybody = Audience.Crew | Audience.Customer | Audience.Occupant;

    private static readonly Source Invented = Source.Invented("threshold or rule of the survey policy, to be replaced by the shop's own");
    private static readonly Source Practice = Source.CommonPractice("survey of a worn fixture");
    private static readonly Source Liners =
        Source.CommonPractice("a liner over an old tub is refinished only where it is bonded all over and dry behind");
    private static readonly Source LeadAge = Source.Published("73 FR 21692", "final renovation rule, 22 April 2008, summary: target housing is housing built before 1978, TSCA section 401, with exceptions");
    private static readonly Source Stripping = Source.FromMemory("40 CFR 751 subpart B (89 FR 39254) forbids methylene chloride for commercial coating removal outside listed exceptions");

    public static IReadOnlyList<SurveyRule> All { get; } = new ValueList<SurveyRule>(
    [
        new("S-01", "material not known", No, "identify the material: magnet, sound, edge, hidden solvent rub", "identification", Practice,
            (s, _) => When(s.Material.IsUnknown, "the material is not known, so nothing can be judged")),
        new("S-02", "nothing bonds in the field", No, "replace the fixture", "identification", Source.CommonPractice("polyethylene and polypropylene are not coated in place"),
            (s, _) => When(!s.Material.BondsInTheField, s.Material.Name + ": coatings do not bond to it in the field")),
        new("S-03", "hole right through", No, "structural repair first, where one is allowed", "load and leak test", Practice,
            (s, _) => Each<Perforation>(s)),
        new("S-04", "floor gives", No, "support the floor from below", "deflection under a standing person", Invented,
            (s, p) => Flexing(s, p, beyond: true)),
        new("S-05", "floor gives a little", If, "tell the customer; look for movement at the drain", "deflection under a standing person", Invented,
            (s, p) => Flexing(s, p, beyond: false)),
        new("S-06", "crack moves", No, "support and reinforce until it no longer moves", "look at the crack under load", Practice,
            (s, _) => Each<Crack>(s, crack => crack.MovesUnderLoad)),
        new("S-07", "crack at rest", If, "open, reinforce where the material allows, fill", "look at the crack under load", Practice,
            (s, _) => Each<Crack>(s, crack => !crack.MovesUnderLoad)),
        new("S-08", "tiles loose", No, "fix the tiles again and find the cause", "tap test", Practice,
            (s, _) => Each<LooseTiles>(s)),
        new("S-09", "wet behind the surface", No, "find and stop the water, let it dry", "moisture reading", Practice,
            (s, _) => When(s.SubstrateWet, "the wall or board behind the surface is wet")),
        new("S-10", "swollen or coming apart", No, "replace the board or laminate", "tap test and straight edge", Practice,
            (s, _) => When(s.SwollenOrDelaminated, "board or laminate is swollen or coming apart")),
        new("S-11", "leak", No, "have the leak repaired", "an hour without a drip", Practice,
            (s, _) => When(s.LeakCannotBeStopped, "a drip or leak onto the surface cannot be stopped")),
        new("S-12", "cannot be made clean", No, "remove the residue mechanically", "water-break test", Invented,
            (s, p) => When(s.FailedCleaningCycles >= p.CleaningCycles, "the water-break test failed after " + Figures.Fixed(s.FailedCleaningCycles, 0)
                + " cleaning cycles; the policy ends at " + Figures.Fixed(p.CleaningCycles, 0))),
        new("S-13", "silicone", If, "cut out, digest or abrade the silicone, then clean twice", "water-break test", Practice,
            (s, _) => Each<SiliconeResidue>(s)) { Concerns = Audience.Crew },
        new("S-14", "old coat has to come off and cannot", No, "find a permitted way to strip, or replace", "cross-cut tape test", Stripping,
            (s, p) => s.NoPermittedStrippingRoute ? Weak(s, p) : []),
        new("S-15", "old coat has to come off", If, "strip by a permitted way down to the sound surface", "cross-cut tape test", Practice,
            (s, p) => s.NoPermittedStrippingRoute ? [] : Weak(s, p)),
        new("S-16", "hold of the old coat not tested", If, "tape test before the price is agreed: nothing can be said about the old coat yet", "cross-cut tape test", Practice,
            (s, _) => Untested(s)),
        new("S-17", "lead", No, "a certified firm, or leave the surface undisturbed", "clearance by the certified firm", LeadAge,
            (s, _) => When(s.LeadTest == LeadTest.Positive && !s.CertifiedForLead,
                "lead was found and the crew holds no certificate for lead work")) { ProtectsPeople = true },
        new("S-18", "lead, certified crew", If, "lead-safe work as the certificate demands", "clearance", LeadAge,
            (s, _) => When(s.LeadTest == LeadTest.Positive && s.CertifiedForLead,
                "lead was found; the crew is certified")) { ProtectsPeople = true, Concerns = Everybody },
        new("S-19", "lead not tested", If, "test for lead before anything is sanded, etched or stripped", "lead test", LeadAge,
            (s, _) => When(LeadIsOpen(s), s.YearBuilt switch
            {
                null => "year of building not known and not tested for lead",
                < LeadYear => "built before 1978 and not tested for lead",
                _ => "lead is suspected and not tested",
            })) { ProtectsPeople = true, Concerns = Everybody },
        new("S-20", "use beyond a coating's limits", No, "another worktop, or agree in writing on boards and trivets", "agreed use", Practice,
            (s, _) => When(s.CuttingOrFoodContactExpected, "cutting, hot pots or unwrapped food are expected on the surface")),
        new("S-21", "crazed beyond the policy", If, "hold: find the cause, abrade, seal with a further primer coat, exclude from warranty if it moves", "look again after abrading", Invented,
            (s, p) => Crazed(s, p, beyond: true)),
        new("S-22", "crazed", If, "abrade and seal with a further primer coat", "look again after abrading", Invented,
            (s, p) => Crazed(s, p, beyond: false)) { Concerns = Audience.Crew },
        new("S-23", "stains bleed", If, "remove the rust or block the stain before priming", "look again after a day", Practice,
            (s, _) => When(s.StainsBleed, "stains bleed through the surface")) { Concerns = Audience.Crew },
        new("S-24", "waiting time refused", If, "agree on the waiting time before starting", "written agreement", Practice,
            (s, _) => When(s.CureTimeRefused, "the customer does not accept the time before water may run")),
        new("S-25", "metal loss", If, "clean to bright metal and look for holes before filling", "probe the place", Source.FromMemory("enamel is about 0.3 to 1 mm thick"),
            (s, p) => Deep(s, p.MetalLossDepth.Meters, "depth in enamel on metal", steelOnly: false)),
        new("S-26", "steel may be through", If, "probe for a hole before filling; a hole is a structural repair", "probe the place", Invented,
            (s, p) => Deep(s, p.SteelPerforationDepth.Meters, "depth in enamel on steel", steelOnly: true)),
        new("S-27", "rust", If, "grind to bright metal, probe and tap for holes, for wide rust on thin steel is often through; spot prime the same hour, let it dry, fill", "look again before priming", Practice,
            (s, _) => Each<RustSpot>(s)),
        new("S-28", "grout", If, "rake out, regrout and let it dry", "moisture reading", Practice,
            (s, _) => Each<GroutFailure>(s)) { Concerns = Audience.Crew },
        new("S-29", "burn", If, "cut out to sound material, fill", "look again after cutting", Practice,
            (s, _) => Each<Burn>(s)) { Concerns = Audience.Crew },
        new("S-30", "much filler", If, "measure again; ask whether replacing is the better answer", "survey", Invented, Filler),
        new("S-31", "survey contradicts itself", If, "identify the material again, or find where the trace comes from", "identification", Practice,
            (s, _) => s.Defects.Where(defect => !s.Material.IsUnknown && defect.Contradicts(s.Material)).Select(defect =>
                new Finding(system => defect.Describe(system) + " does not go with " + s.Material.Name))),
        new("S-32", "no exhaust path", No, "another way for the air, or no spraying here", "smoke or paper test at the opening", Practice,
            (s, _) => When(s.NoExhaustPath, "there is no way to lead exhaust air outdoors")) { ProtectsPeople = true },
        new("S-33", "flame", No, "have the flame or pilot shut off", "look before mixing", Practice,
            (s, _) => When(s.FlameCannotBeShutOff, "an open flame or pilot cannot be shut off")) { ProtectsPeople = true },
        new("S-34", "people who cannot leave", No, "another day, or another place for them", "ask before mixing", Practice,
            (s, _) => When(s.SensitiveOccupantsCannotLeave, "people who must not breathe the vapour cannot leave")) { ProtectsPeople =
                true },
        new("S-35", "pitting", If, "clean out the pits, dry, probe the deepest for holes, fill and sand", "look again under side light", Practice,
            (s, _) => Each<Pitting>(s)),
        new("S-36", "asbestos would be disturbed", No, "a licensed firm removes or seals it first, or the work leaves it alone",
            "clearance by the licensed firm", AsbestosRules.Presumed,
            (s, p) => AsbestosRules.Found(s, p, certified: false)) { ProtectsPeople = true },
        new("S-37", "asbestos, trained and licensed crew", If, "asbestos work as the licence demands, before anything else",
            "clearance", AsbestosRules.Presumed,
            (s, p) => AsbestosRules.Found(s, p, certified: true)) { ProtectsPeople = true, Concerns = Everybody },
        new("S-38", "asbestos left alone", If, "mark it, tell everyone who works there, and stop if the work comes near it",
            "look before each visit", AsbestosRules.Presumed,
            AsbestosRules.LeftAlone) { ProtectsPeople = true, Concerns = Everybody },
        new("S-39", "asbestos not tested where the work disturbs", If,
            "treat as asbestos until sampled by somebody accredited; nothing is loosened, raked out or opened before",
            "laboratory result", AsbestosRules.Presumed,
            AsbestosRules.Untested) { ProtectsPeople = true, Concerns = Everybody },
        new("S-40", "asbestos not tested", If,
            "ask what is known; leave adhesive, board, flooring and what is under the fixture alone, and sample before work reaches them",
            "laboratory result or the owner's record", AsbestosRules.Presumed,
            AsbestosRules.UntestedAlone) { ProtectsPeople = true, Concerns = Everybody },
        new("S-41", "old coat peels in places", If, "take off what is loose, feather the edges, and tape test again beside each patch",
            "cross-cut tape test", Practice,
            Patches),
        new("S-42", "water behind the liner", No,
            "take the liner off, find where the water gets in, let the tub below dry, and judge that one; or replace",
            "moisture reading", Liners,
            (s, _) => Each<Liner>(s, liner => liner.State == LinerState.WaterBehind)),
        new("S-43", "liner loose", No, "take the liner off and judge the tub below; or replace", "press and tap all over", Liners,
            (s, _) => Each<Liner>(s, liner => !liner.ComesOff && liner.State == LinerState.Loose)),
        new("S-44", "liner not tested", If, "press and tap it all over and look for water at drain and edges before the price is agreed",
            "press and tap all over", Liners,
            (s, _) => Each<Liner>(s, liner => !liner.ComesOff && liner.State == LinerState.NotTested)),
        new("S-45", "liner stays", If,
            "tell the customer that liner and glue stay and are not in the warranty; seal it at drain and edges", "press and tap all over",
            Liners,
            (s, _) => Each<Liner>(s, liner => !liner.ComesOff && liner.State == LinerState.BondedAndDry)),
        new("S-46", "liner comes off", If,
            "judge the bare tub again before anything goes on it: nobody has seen it yet; the material of this survey is taken as that of the tub, not of the liner",
            "the whole survey of the bare tub, with a moisture reading", Liners,
            (s, _) => Each<Liner>(s, liner => liner.ComesOff && liner.State != LinerState.WaterBehind)),
        new("S-47", "found, and judged by no rule", If, "add a rule that reads it, or take it out of the survey", "survey", Practice,
            Unread),
    ]);

    public static bool LeadIsOpen(Survey survey) =>
        survey.LeadTest == LeadTest.NotTested && (survey.LeadSuspected || !(survey.YearBuilt >= LeadYear));

    private static IEnumerable<Finding> When(bool applies, string sentence) => applies ? [sentence] : [];

    private static IEnumerable<Finding> Each<T>(Survey survey, Func<T, bool>? which = null)
        where T : Defect => survey.Defects.OfType<T>().Where(which ?? (_ => true)).Select(Finding.About);

    // What was written down is either judged or told.
    private static IEnumerable<Finding> Unread(Survey survey, SurveyPolicy policy)
    {
        foreach (string fact in survey.OwnFacts.Where(fact => !policy.Reads(when => when.OwnFacts.Contains(fact))))
        {
            yield return "the fact " + fact + " is read by no rule";
        }

        if (survey.FixtureAge is int age && !policy.Reads(when => when.OlderThanYears is not null))
        {
            yield return "the age of the fixture, " + Figures.Fixed(age, 0) + " years, is read by no rule";
        }
    }

    private static IEnumerable<Finding> Flexing(Survey survey, SurveyPolicy policy, bool beyond) =>
        survey.Defects.OfType<FlexingFloor>()
            .Select(floor => new LimitComparison("give of the floor", floor.Deflection.Meters, policy.MaximumFloorDeflection.Meters, LimitSense.AtMost, Measure.Length, Invented))
            .Where(comparison => comparison.Outcome == ComparisonOutcome.Beyond == beyond).Select(Finding.About);

    private static IEnumerable<Finding> Crazed(Survey survey, SurveyPolicy policy, bool beyond) =>
        survey.Defects.OfType<Crazing>()
            .Select(crazing => new LimitComparison("crazed share", crazing.OfArea.DecimalFractions, policy.MaximumCrazing.DecimalFractions, LimitSense.AtMost, Measure.Percent, Invented))
            .Where(comparison => comparison.Outcome == ComparisonOutcome.Beyond == beyond).Select(Finding.About);

    private static IEnumerable<Finding> Weak(Survey survey, SurveyPolicy policy)
    {
        string floor = "; the policy keeps " + PeelingCoat.GradeName(policy.MinimumAdhesion) + " and better";
        foreach (PeelingCoat coat in survey.Defects.OfType<PeelingCoat>().Where(coat => coat.Adhesion < policy.MinimumAdhesion))
        {
            yield return new Finding(system => coat.Describe(system) + floor);
        }

        if (survey.OldCoatAdhesion is AdhesionGrade grade && grade < policy.MinimumAdhesion)
        {
            yield return "adhesion of the old coat is " + PeelingCoat.GradeName(grade) + floor;
        }
    }

    // What held the tape still came off somewhere: a patch is never without a condition.
    private static IEnumerable<Finding> Patches(Survey survey, SurveyPolicy policy) =>
        Each<PeelingCoat>(survey, coat => coat.Adhesion >= policy.MinimumAdhesion);

    private static IEnumerable<Finding> Untested(Survey survey)
    {
        foreach (PeelingCoat coat in survey.Defects.OfType<PeelingCoat>().Where(coat => coat.Adhesion is null))
        {
            yield return Finding.About(coat);
        }

        if (survey.PreviouslyRefinished && survey.OldCoatAdhesion is null && !survey.Defects.OfType<PeelingCoat>().Any())
        {
            yield return "refinished before, and the adhesion of the old coat was not tested";
        }
    }

    private static IEnumerable<Finding> Deep(Survey survey, double limit, string subject, bool steelOnly)
    {
        if (!survey.Material.IsEnamelled || (steelOnly && survey.Material.Metal != MetalBelow.SteelSheet))
        {
            return [];
        }

        return survey.Defects
            .Select(defect => (Defect: defect, Depth: defect.MeasuredDepth))
            .Where(pair => pair.Depth > limit)
            .Select(pair => Finding.About(pair.Defect, new LimitComparison(subject, pair.Depth, limit, LimitSense.AtMost, Measure.Length, Invented)));
    }

    private static IEnumerable<Finding> Filler(Survey survey, SurveyPolicy policy)
    {
        // In a fixed order, so that the last digit does not depend on the order of the survey.
        double volume = survey.Defects.Select(defect => new FillerVolume(defect, policy.Filler).Mixed.CubicMeters).OrderBy(mixed => mixed).Sum();
        LimitComparison comparison = new("filler on one fixture", volume, policy.UsualFiller.CubicMeters, LimitSense.AtMost, Measure.Liquid, Invented);
        return comparison.Outcome == ComparisonOutcome.Beyond ? [Finding.About(comparison)] : [];
    }
}
