using System.Linq;
using Refinish.Colours;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;

namespace Refinish.Json.Shapes;

/// <summary>What a plan says of each fixture.</summary>
internal static class FixtureResults
{
    public static FieldsShape<VerdictReason> Reason { get; } = new Fields<VerdictReason>("verdictReason")
        .Show("ruleCode", Scalars.Text, reason => reason.RuleCode)
        .Show("effect", new WordShape<Suitability>(), reason => reason.Effect)
        .Show("title", Scalars.Text, reason => reason.Title)
        .Show("sentence", Scalars.Text, reason => reason.Sentence)
        .Show("comparison", Results.Comparison.OrNull(), reason => reason.Comparison)
        .Show("remedy", Scalars.Text, reason => reason.Remedy)
        .Show("repeatTest", Scalars.Text, reason => reason.RepeatTest)
        .Show("source", CommonShapes.Source, reason => reason.Source)
        .AsResults();

    private static readonly FieldsShape<FixtureZone> Zone = new Fields<FixtureZone>("fixtureZone")
        .Show("kind", new WordShape<FixtureZoneKind>(), zone => zone.Kind)
        .Show("area", Results.Area, zone => zone.Area.SquareMeters)
        .Show("slopeFromHorizontal", Results.Angle, zone => zone.SlopeFromHorizontal.Radians)
        .AsResults();

    private static readonly FieldsShape<Verdict> Verdict = new Fields<Verdict>("verdict")
        .Show("suitability", new WordShape<Suitability>(), verdict => verdict.Suitability)
        .Show("mayBePlanned", Scalars.YesNo, verdict => verdict.MayBePlanned)
        .Show("reasons", CommonShapes.List(Reason), verdict => verdict.Reasons)
        .Show("cautions", Results.Cautions, verdict => verdict.Cautions)
        .AsResults();

    private static readonly FieldsShape<PreparationStep> Step = new Fields<PreparationStep>("preparationStep")
        .Show("code", Scalars.Text, step => step.Code)
        .Show("kind", new WordShape<PreparationKind>(), step => step.Kind)
        .Show("instruction", Scalars.Text, step => step.Instruction)
        .Show("coarsestGrit", Scalars.Count.OrNull(), step => step.CoarsestGrit)
        .Show("finestGrit", Scalars.Count.OrNull(), step => step.FinestGrit)
        .Show("source", CommonShapes.Source, step => step.Source)
        .AsResults();

    private static readonly FieldsShape<Preparation> Preparation = new Fields<Preparation>("preparation")
        .Show("steps", CommonShapes.List(Step), preparation => preparation.Steps)
        .Show("whyNone", Scalars.Text.OrNull(), preparation => preparation.WhyNone)
        .Show("promoter", new WordShape<PromoterKind>(), preparation => preparation.Promoter)
        .Show("cautions", Results.Cautions, preparation => preparation.Cautions)
        .AsResults();

    private static readonly FieldsShape<FillerEstimate> Filler = new Fields<FillerEstimate>("fillerEstimate")
        .Show("volume", Results.Liquid, filler => filler.Volume.CubicMeters)
        .Show("mass", Results.Mass, filler => filler.Mass.Kilograms)
        .Show("resinMass", Results.Mass, filler => filler.ResinMass.Kilograms)
        .Show("hardenerMass", Results.Mass, filler => filler.HardenerMass.Kilograms)
        .Show("lifts", Scalars.Count, filler => filler.Lifts)
        .Show("sink", Results.Comparisons, filler => [.. filler.Items.Where(item => item.IsFilled).Select(item => item.SinkAgainstFilm)])
        .Show("cautions", Results.Cautions, filler => filler.Cautions)
        .AsResults();

    private static readonly FieldsShape<ColourDifference> Colour = new Fields<ColourDifference>("colourDifference")
        .Show("deltaL", Results.Number, colour => colour.DeltaL)
        .Show("deltaA", Results.Number, colour => colour.DeltaA)
        .Show("deltaB", Results.Number, colour => colour.DeltaB)
        .Show("deltaChroma", Results.Number, colour => colour.DeltaChroma)
        .Show("deltaHue", Results.Number, colour => colour.DeltaHue)
        .Show("cie76", Results.Number, colour => colour.Cie76)
        .Show("cie94", Results.Number, colour => colour.Cie94)
        .Show("ciede2000", Results.Number, colour => colour.Ciede2000)
        .AsResults();

    public static FieldsShape<FixturePlan> Fixture { get; } = new Fields<FixturePlan>("fixturePlan")
        .Show("name", Scalars.Text, fixture => fixture.Job.Name)
        .Show("description", Scalars.Text, fixture => fixture.Job.Fixture.Description)
        .Show("isPlanned", Scalars.YesNo, fixture => fixture.IsPlanned)
        .Show("verdict", Verdict, fixture => fixture.Verdict)
        .Show("systemObjections", Results.Sentences, fixture => fixture.SystemObjections)
        .Show("coatedArea", Results.Area, fixture => fixture.CoatedArea.SquareMeters)
        .Show("zones", CommonShapes.List(Zone), fixture => fixture.Job.Fixture.Zones)
        .Show("maskedEdge", Results.Edge, fixture => fixture.Job.Fixture.MaskedEdge.Meters)
        .Show("waterCapacity", Results.Capacity.OrNull(), fixture => fixture.Job.Fixture.WaterCapacity?.CubicMeters)
        .Show("preparation", Preparation, fixture => fixture.Preparation)
        .Show("filler", Filler, fixture => fixture.Filler)
        .Show("promoter", Scalars.Text.OrNull(), fixture => fixture.Promoter?.Name)
        .Show("colourChange", Colour.OrNull(), fixture => fixture.ColourChange)
        .AsResults();
}
