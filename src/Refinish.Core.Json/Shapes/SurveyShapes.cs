using System;
using System.Collections.Generic;
using Refinish.Fixtures;
using Refinish.Substrates;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>What was found on a fixture, what is done about it, and with which filler.</summary>
internal static class SurveyShapes
{
    public static ObjectShape<Survey> Survey { get; } = new Fields<Survey>("survey")
        .With("material", MaterialShapes.Material, it => it.Material, out Slot<FixtureMaterial> material)
        .With("defects", List(DefectShapes.Defect), it => it.Defects, out Slot<IReadOnlyList<Defect>> defects)
        .Maybe("fixtureAge", Count, it => it.FixtureAge, (it, years) => it with { FixtureAge = years })
        .MaybeOf("ownFacts", List(Text), it => it.OwnFacts.Count > 0 ? it.OwnFacts : null, (it, facts) => it with { OwnFacts = facts })
        .Optional("previouslyRefinished", YesNo, it => it.PreviouslyRefinished, (it, said) => it with { PreviouslyRefinished = said })
        .Maybe("oldCoatAdhesion", DefectShapes.Adhesion, it => it.OldCoatAdhesion, (it, grade) => it with { OldCoatAdhesion = grade })
        .Maybe("yearBuilt", Count, it => it.YearBuilt, (it, year) => it with { YearBuilt = year })
        .Optional("leadTest", new WordShape<LeadTest>(), it => it.LeadTest, (it, result) => it with { LeadTest = result })
        .Optional("leadSuspected", YesNo, it => it.LeadSuspected, (it, said) => it with { LeadSuspected = said })
        .Optional("certifiedForLead", YesNo, it => it.CertifiedForLead, (it, said) => it with { CertifiedForLead = said })
        .Optional("asbestosTest", new WordShape<AsbestosTest>(), it => it.AsbestosTest, (it, result) => it with { AsbestosTest = result })
        .Optional("asbestosSuspected", YesNo, it => it.AsbestosSuspected, (it, said) => it with { AsbestosSuspected = said })
        .Optional("certifiedForAsbestos", YesNo, it => it.CertifiedForAsbestos, (it, said) => it with { CertifiedForAsbestos = said })
        .Optional("noPermittedStrippingRoute", YesNo, it => it.NoPermittedStrippingRoute,
            (it, said) => it with { NoPermittedStrippingRoute = said })
        .Optional("failedCleaningCycles", Count, it => it.FailedCleaningCycles, (it, cycles) => it with { FailedCleaningCycles = cycles })
        .Optional("leakCannotBeStopped", YesNo, it => it.LeakCannotBeStopped, (it, said) => it with { LeakCannotBeStopped = said })
        .Optional("substrateWet", YesNo, it => it.SubstrateWet, (it, said) => it with { SubstrateWet = said })
        .Optional("swollenOrDelaminated", YesNo, it => it.SwollenOrDelaminated, (it, said) => it with { SwollenOrDelaminated = said })
        .Optional("stainsBleed", YesNo, it => it.StainsBleed, (it, said) => it with { StainsBleed = said })
        .Optional("cuttingOrFoodContactExpected", YesNo, it => it.CuttingOrFoodContactExpected,
            (it, said) => it with { CuttingOrFoodContactExpected = said })
        .Optional("noExhaustPath", YesNo, it => it.NoExhaustPath, (it, said) => it with { NoExhaustPath = said })
        .Optional("flameCannotBeShutOff", YesNo, it => it.FlameCannotBeShutOff, (it, said) => it with { FlameCannotBeShutOff = said })
        .Optional("sensitiveOccupantsCannotLeave", YesNo, it => it.SensitiveOccupantsCannotLeave,
            (it, said) => it with { SensitiveOccupantsCannotLeave = said })
        .Optional("cureTimeRefused", YesNo, it => it.CureTimeRefused, (it, said) => it with { CureTimeRefused = said })
        .Making(v => new Survey { Material = material(v), Defects = defects(v) });

    public static ObjectShape<FillerProduct> FillerProduct { get; } = new Fields<FillerProduct>("fillerProduct")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .Optional("chemistry", new WordShape<FillerChemistry>(), it => it.Chemistry, (it, chemistry) => it with { Chemistry = chemistry })
        .With("hardenerByMass", Percent, it => it.HardenerByMass, out Slot<Ratio> hardenerByMass)
        .With("mixedDensity", Quantities.Density, it => it.MixedDensity, out Slot<Density> mixedDensity)
        .With("shrinkage", Percent, it => it.Shrinkage, out Slot<Ratio> shrinkage)
        .With("maximumLift", Tape, it => it.MaximumLift, out Slot<Length> maximumLift)
        .With("potLife", Quantities.Duration, it => it.PotLife, out Slot<TimeSpan> potLife)
        .With("sandableAfter", Quantities.Duration, it => it.SandableAfter, out Slot<TimeSpan> sandableAfter)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new FillerProduct
        {
            Id = id(v), Name = name(v), HardenerByMass = hardenerByMass(v), MixedDensity = mixedDensity(v), Shrinkage = shrinkage(v),
            MaximumLift = maximumLift(v), PotLife = potLife(v), SandableAfter = sandableAfter(v), Source = source(v),
        });

    public static ObjectShape<FillerPolicy> FillerPolicy { get; } = new Fields<FillerPolicy>("fillerPolicy")
        .With("product", FillerProduct, it => it.Product, out Slot<FillerProduct> product)
        .Optional("overfill", Percent, it => it.Overfill, (it, share) => it with { Overfill = share })
        .Optional("waste", Percent, it => it.Waste, (it, share) => it with { Waste = share })
        .Optional("rustGrindingMargin", Tape, it => it.RustGrindingMargin, (it, margin) => it with { RustGrindingMargin = margin })
        .Optional("rustGrindingDepth", Tape, it => it.RustGrindingDepth, (it, depth) => it with { RustGrindingDepth = depth })
        .Optional("burnCuttingMargin", Tape, it => it.BurnCuttingMargin, (it, margin) => it with { BurnCuttingMargin = margin })
        .Optional("burnCuttingDepth", Tape, it => it.BurnCuttingDepth, (it, depth) => it with { BurnCuttingDepth = depth })
        .Optional("totalDryFilm", Film, it => it.TotalDryFilm, (it, film) => it with { TotalDryFilm = film })
        .Optional("sinkPerDryFilm", Percent, it => it.SinkPerDryFilm, (it, share) => it with { SinkPerDryFilm = share })
        .Making(v => new FillerPolicy { Product = product(v) });

    public static ObjectShape<SurveyPolicy> SurveyPolicy { get; } = new Fields<SurveyPolicy>("surveyPolicy")
        .Optional("maximumFloorDeflection", Tape, it => it.MaximumFloorDeflection,
            (it, deflection) => it with { MaximumFloorDeflection = deflection })
        .Optional("maximumCrazing", Percent, it => it.MaximumCrazing, (it, share) => it with { MaximumCrazing = share })
        .Optional("minimumAdhesion", DefectShapes.Adhesion, it => it.MinimumAdhesion, (it, grade) => it with { MinimumAdhesion = grade })
        .Optional("cleaningCycles", Count, it => it.CleaningCycles, (it, cycles) => it with { CleaningCycles = cycles })
        .Optional("usualFiller", Liquid, it => it.UsualFiller, (it, volume) => it with { UsualFiller = volume })
        .Optional("metalLossDepth", Tape, it => it.MetalLossDepth, (it, depth) => it with { MetalLossDepth = depth })
        .Optional("steelPerforationDepth", Tape, it => it.SteelPerforationDepth, (it, depth) => it with { SteelPerforationDepth = depth })
        .MaybeOf("ruleChanges", List(RuleShapes.Change), it => it.RuleChanges.Count > 0 ? it.RuleChanges : null,
            (it, changes) => it with { RuleChanges = changes })
        .MaybeOf("ownRules", List(RuleShapes.Rule), it => it.OwnRules.Count > 0 ? it.OwnRules : null,
            (it, rules) => it with { OwnRules = rules })
        .Optional("filler", FillerPolicy, it => it.Filler, (it, filler) => it with { Filler = filler })
        .Making(_ => new SurveyPolicy());
}
