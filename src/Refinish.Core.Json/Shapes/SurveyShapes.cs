using System;
using System.Collections.Generic;
using Refinish.Fixtures;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>What was found on a fixture, what is done about it, and with which filler.</summary>
internal static class SurveyShapes
{
    public static ObjectShape<Survey> Survey { get; } = new Fields<Survey>("survey")
        .With("material", MaterialShapes.Material, survey => survey.Material, out Slot<FixtureMaterial> material)
        .With("defects", CommonShapes.List(DefectShapes.Defect), survey => survey.Defects, out Slot<IReadOnlyList<Defect>> defects)
        .Maybe("fixtureAge", Scalars.Count, survey => survey.FixtureAge, (survey, years) => survey with { FixtureAge = years })
        .MaybeOf("ownFacts", CommonShapes.List(Scalars.Text), survey => survey.OwnFacts.Count > 0 ? survey.OwnFacts : null,
            (survey, facts) => survey with { OwnFacts = facts })
        .Optional("previouslyRefinished", Scalars.YesNo, survey => survey.PreviouslyRefinished,
            (survey, said) => survey with { PreviouslyRefinished = said })
        .Maybe("oldCoatAdhesion", DefectShapes.Adhesion, survey => survey.OldCoatAdhesion,
            (survey, grade) => survey with { OldCoatAdhesion = grade })
        .Maybe("yearBuilt", Scalars.Count, survey => survey.YearBuilt, (survey, year) => survey with { YearBuilt = year })
        .Optional("leadTest", new WordShape<LeadTest>(), survey => survey.LeadTest, (survey, result) => survey with { LeadTest = result })
        .Optional("leadSuspected", Scalars.YesNo, survey => survey.LeadSuspected, (survey, said) => survey with { LeadSuspected = said })
        .Optional("certifiedForLead", Scalars.YesNo, survey => survey.CertifiedForLead,
            (survey, said) => survey with { CertifiedForLead = said })
        .Optional("asbestosTest", new WordShape<AsbestosTest>(), survey => survey.AsbestosTest,
            (survey, result) => survey with { AsbestosTest = result })
        .Optional("asbestosSuspected", Scalars.YesNo, survey => survey.AsbestosSuspected,
            (survey, said) => survey with { AsbestosSuspected = said })
        .Optional("certifiedForAsbestos", Scalars.YesNo, survey => survey.CertifiedForAsbestos,
            (survey, said) => survey with { CertifiedForAsbestos = said })
        .Optional("noPermittedStrippingRoute", Scalars.YesNo, survey => survey.NoPermittedStrippingRoute,
            (survey, said) => survey with { NoPermittedStrippingRoute = said })
        .Optional("failedCleaningCycles", Scalars.Count, survey => survey.FailedCleaningCycles,
            (survey, cycles) => survey with { FailedCleaningCycles = cycles })
        .Optional("leakCannotBeStopped", Scalars.YesNo, survey => survey.LeakCannotBeStopped,
            (survey, said) => survey with { LeakCannotBeStopped = said })
        .Optional("substrateWet", Scalars.YesNo, survey => survey.SubstrateWet, (survey, said) => survey with { SubstrateWet = said })
        .Optional("swollenOrDelaminated", Scalars.YesNo, survey => survey.SwollenOrDelaminated,
            (survey, said) => survey with { SwollenOrDelaminated = said })
        .Optional("stainsBleed", Scalars.YesNo, survey => survey.StainsBleed, (survey, said) => survey with { StainsBleed = said })
        .Optional("cuttingOrFoodContactExpected", Scalars.YesNo, survey => survey.CuttingOrFoodContactExpected,
            (survey, said) => survey with { CuttingOrFoodContactExpected = said })
        .Optional("noExhaustPath", Scalars.YesNo, survey => survey.NoExhaustPath, (survey, said) => survey with { NoExhaustPath = said })
        .Optional("flameCannotBeShutOff", Scalars.YesNo, survey => survey.FlameCannotBeShutOff,
            (survey, said) => survey with { FlameCannotBeShutOff = said })
        .Optional("sensitiveOccupantsCannotLeave", Scalars.YesNo, survey => survey.SensitiveOccupantsCannotLeave,
            (survey, said) => survey with { SensitiveOccupantsCannotLeave = said })
        .Optional("cureTimeRefused", Scalars.YesNo, survey => survey.CureTimeRefused,
            (survey, said) => survey with { CureTimeRefused = said })
        .Making(v => new Survey { Material = material(v), Defects = defects(v) });

    public static ObjectShape<FillerProduct> FillerProduct { get; } = new Fields<FillerProduct>("fillerProduct")
        .With("id", Scalars.Text, filler => filler.Id, out Slot<string> id)
        .With("name", Scalars.Text, filler => filler.Name, out Slot<string> name)
        .Optional("chemistry", new WordShape<FillerChemistry>(), filler => filler.Chemistry,
            (filler, chemistry) => filler with { Chemistry = chemistry })
        .With("hardenerByMass", Quantities.Percent, filler => filler.HardenerByMass, out Slot<Ratio> hardenerByMass)
        .With("mixedDensity", Quantities.Density, filler => filler.MixedDensity, out Slot<Density> mixedDensity)
        .With("shrinkage", Quantities.Percent, filler => filler.Shrinkage, out Slot<Ratio> shrinkage)
        .With("maximumLift", Quantities.Tape, filler => filler.MaximumLift, out Slot<Length> maximumLift)
        .With("potLife", Quantities.Duration, filler => filler.PotLife, out Slot<TimeSpan> potLife)
        .With("sandableAfter", Quantities.Duration, filler => filler.SandableAfter, out Slot<TimeSpan> sandableAfter)
        .With("source", CommonShapes.Source, filler => filler.Source, out Slot<Source> source)
        .Making(v => new FillerProduct
        {
            Id = id(v),
            Name = name(v),
            HardenerByMass = hardenerByMass(v),
            MixedDensity = mixedDensity(v),
            Shrinkage = shrinkage(v),
            MaximumLift = maximumLift(v),
            PotLife = potLife(v),
            SandableAfter = sandableAfter(v),
            Source = source(v),
        });

    public static ObjectShape<FillerPolicy> FillerPolicy { get; } = new Fields<FillerPolicy>("fillerPolicy")
        .With("product", FillerProduct, policy => policy.Product, out Slot<FillerProduct> product)
        .Optional("overfill", Quantities.Percent, policy => policy.Overfill, (policy, share) => policy with { Overfill = share })
        .Optional("waste", Quantities.Percent, policy => policy.Waste, (policy, share) => policy with { Waste = share })
        .Optional("rustGrindingMargin", Quantities.Tape, policy => policy.RustGrindingMargin,
            (policy, margin) => policy with { RustGrindingMargin = margin })
        .Optional("rustGrindingDepth", Quantities.Tape, policy => policy.RustGrindingDepth,
            (policy, depth) => policy with { RustGrindingDepth = depth })
        .Optional("burnCuttingMargin", Quantities.Tape, policy => policy.BurnCuttingMargin,
            (policy, margin) => policy with { BurnCuttingMargin = margin })
        .Optional("burnCuttingDepth", Quantities.Tape, policy => policy.BurnCuttingDepth,
            (policy, depth) => policy with { BurnCuttingDepth = depth })
        .Optional("totalDryFilm", Quantities.Film, policy => policy.TotalDryFilm, (policy, film) => policy with { TotalDryFilm = film })
        .Optional("sinkPerDryFilm", Quantities.Percent, policy => policy.SinkPerDryFilm,
            (policy, share) => policy with { SinkPerDryFilm = share })
        .Making(v => new FillerPolicy { Product = product(v) });

    public static ObjectShape<SurveyPolicy> SurveyPolicy { get; } = new Fields<SurveyPolicy>("surveyPolicy")
        .Optional("maximumFloorDeflection", Quantities.Tape, policy => policy.MaximumFloorDeflection,
            (policy, deflection) => policy with { MaximumFloorDeflection = deflection })
        .Optional("maximumCrazing", Quantities.Percent, policy => policy.MaximumCrazing,
            (policy, share) => policy with { MaximumCrazing = share })
        .Optional("minimumAdhesion", DefectShapes.Adhesion, policy => policy.MinimumAdhesion,
            (policy, grade) => policy with { MinimumAdhesion = grade })
        .Optional("cleaningCycles", Scalars.Count, policy => policy.CleaningCycles,
            (policy, cycles) => policy with { CleaningCycles = cycles })
        .Optional("usualFiller", Quantities.Liquid, policy => policy.UsualFiller, (policy, volume) => policy with { UsualFiller = volume })
        .Optional("metalLossDepth", Quantities.Tape, policy => policy.MetalLossDepth,
            (policy, depth) => policy with { MetalLossDepth = depth })
        .Optional("steelPerforationDepth", Quantities.Tape, policy => policy.SteelPerforationDepth,
            (policy, depth) => policy with { SteelPerforationDepth = depth })
        .MaybeOf("ruleChanges", CommonShapes.List(RuleShapes.Change), policy => policy.RuleChanges.Count > 0 ? policy.RuleChanges : null,
            (policy, changes) => policy with { RuleChanges = changes })
        .MaybeOf("ownRules", CommonShapes.List(RuleShapes.Rule), policy => policy.OwnRules.Count > 0 ? policy.OwnRules : null,
            (policy, rules) => policy with { OwnRules = rules })
        .Optional("filler", FillerPolicy, policy => policy.Filler, (policy, filler) => policy with { Filler = filler })
        .Making(_ => new SurveyPolicy());
}
