using System.Collections.Generic;
using System.Linq;
using Refinish.Colours;
using Refinish.Coverage;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;

namespace Refinish.Json.Shapes;

/// <summary>What a plan says of each fixture: verdict, what lies under the coat, areas, filler, coats in order, colour, grains.</summary>
internal static class ProcedureResults
{
    public static FieldsShape<VerdictReason> Reason { get; } = new Fields<VerdictReason>("verdictReason")
        .Show("ruleCode", Scalars.Text, reason => reason.RuleCode)
        .Show("effect", new WordShape<Suitability>(), reason => reason.Effect)
        .Show("title", Scalars.Text, reason => reason.Title)
        .Show("sentence", Results.Sentence, reason => reason.SentenceIn)
        .Show("comparison", Results.Comparison.OrNull(), reason => reason.Comparison)
        .Show("change", RuleShapes.Change.OrNull(), reason => reason.Change)
        .Show("remedy", Scalars.Text, reason => reason.Remedy)
        .Show("repeatTest", Scalars.Text, reason => reason.RepeatTest)
        .Show("source", CommonShapes.Source, reason => reason.Source)
        .AsResults();

    private static readonly FieldsShape<FixtureZone> Zone = new Fields<FixtureZone>("fixtureZone")
        .Show("kind", JobShapes.Zone, zone => zone.Kind)
        .Show("area", Results.Area, zone => zone.Area.SquareMeters)
        .Show("slopeFromHorizontal", Results.Angle, zone => zone.SlopeFromHorizontal.Radians)
        .AsResults();

    private static readonly FieldsShape<Verdict> Verdict = new Fields<Verdict>("verdict")
        .Show("suitability", new WordShape<Suitability>(), verdict => verdict.Suitability)
        .Show("mayBePlanned", Scalars.YesNo, verdict => verdict.MayBePlanned)
        .Show("reasons", CommonShapes.List(Reason), verdict => verdict.Reasons)
        .AsResults();

    private static readonly FieldsShape<OldCoatDecision> OldCoat = new Fields<OldCoatDecision>("oldCoatDecision")
        .Show("isThere", Scalars.YesNo, coat => coat.IsThere)
        .Show("comesOff", Scalars.YesNo, coat => coat.ComesOff)
        .Show("isKept", Scalars.YesNo, coat => coat.IsKept)
        .Show("isTested", Scalars.YesNo, coat => coat.IsTested)
        .AsResults();

    private static readonly FieldsShape<FillerEstimate> Filler = new Fields<FillerEstimate>("fillerEstimate")
        .Show("volume", Results.Liquid, filler => filler.Volume.CubicMeters)
        .Show("mass", Results.Mass, filler => filler.Mass.Kilograms)
        .Show("resinMass", Results.Mass, filler => filler.ResinMass.Kilograms)
        .Show("hardenerMass", Results.Mass, filler => filler.HardenerMass.Kilograms)
        .Show("lifts", Scalars.Count, filler => filler.Lifts)
        .Show("sink", Results.Comparisons, filler => [.. filler.Items.Where(item => item.IsFilled).Select(item => item.SinkAgainstFilm)])
        .AsResults();

    private static readonly FieldsShape<PlannedCoat> Coat = new Fields<PlannedCoat>("plannedCoat")
        .Show("number", Scalars.Count, coat => coat.Number)
        .Show("product", Scalars.Text, coat => coat.Layer.Product.Id)
        .Show("dryFilm", Results.Film, coat => coat.Layer.DryFilmPerCoat.Meters)
        .Show("takesGrains", Scalars.YesNo, coat => coat.TakesGrains)
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

    private static readonly FieldsShape<HidingCoat> HidingCoat = new Fields<HidingCoat>("hidingCoat")
        .Show("coats", Scalars.Count, coat => coat.Coats)
        .Show("difference", Results.Number.OrNull(), coat => coat.Difference)
        .AsResults();

    private static readonly FieldsShape<ColourJudgement> Hiding = new Fields<ColourJudgement>("colourJudgement")
        .Show("coatsPlanned", Scalars.Count, hiding => hiding.CoatsPlanned)
        .Show("coatsNeeded", Scalars.Count.OrNull(), hiding => hiding.CoatsNeeded)
        .Show("isJudged", Scalars.YesNo, hiding => hiding.IsJudged)
        .Show("isShort", Scalars.YesNo, hiding => hiding.IsShort)
        .Show("objection", Scalars.Text.OrNull(), hiding => hiding.Plan?.Objection)
        .Show("afterCoats", CommonShapes.List(HidingCoat), hiding => hiding.Plan?.Coats ?? [])
        .AsResults();

    private static readonly FieldsShape<SlipResistantFloor> SlipFloor = new Fields<SlipResistantFloor>("slipResistantFloor")
        .Show("floor", Results.Area, floor => floor.Floor.SquareMeters)
        .Show("additive", Scalars.Text, floor => floor.Additive.Id)
        .Show("filmAround", Results.Film, floor => floor.FilmAround.Meters)
        .Show("areaFraction", Results.Percent, floor => floor.AreaFraction.DecimalFractions)
        .Show("grainsPerSquareMeter", Results.Number, floor => floor.GrainsPerSquareMeter)
        .Show("embedment", Results.Percent, floor => floor.Embedment.DecimalFractions)
        .Show("standsOut", Results.Film, floor => floor.StandsOut.Meters)
        .Show("addedArea", Results.Percent, floor => floor.AddedArea.DecimalFractions)
        .Show("toWeighOut", Results.Mass, floor => floor.ToWeighOut.Kilograms)
        .Show("bands", Results.Comparisons, floor => floor.Bands)
        .AsResults();

    public static FieldsShape<CoatedSurface> Surface { get; } = new Fields<CoatedSurface>("coatedSurface")
        .Show("id", Scalars.Text, surface => surface.Id)
        .Show("area", Results.Area, surface => surface.Area.SquareMeters)
        .Show("transferEfficiency", Results.Percent.OrNull(), surface => surface.TransferEfficiency?.DecimalFractions)
        .AsResults();

    public static FieldsShape<Procedure> Procedure { get; } = new Fields<Procedure>("procedure")
        .Show("id", Scalars.Text, procedure => procedure.Fixture.Id)
        .Show("name", Scalars.Text, procedure => procedure.Fixture.Name)
        .Show("room", Scalars.Text, procedure => procedure.Fixture.Room)
        .Show("description", Scalars.Text, procedure => procedure.Fixture.Fixture.Description)
        .Show("isPlanned", Scalars.YesNo, procedure => procedure.IsPlanned)
        .Show("verdict", Verdict, procedure => procedure.Verdict)
        .Show("system", Scalars.Text, procedure => procedure.System.Id)
        .Show("systemObjections", Results.Sentences, procedure => procedure.SystemObjections)
        .Show("refusals", Results.Sentences, procedure => procedure.Refusals)
        .Show("surface", Scalars.Text, procedure => procedure.Surface.Id)
        .Show("oldCoat", OldCoat, procedure => procedure.OldCoat)
        .Show("coatedArea", Results.Area, procedure => procedure.CoatedArea.SquareMeters)
        .Show("surfaces", CommonShapes.List(Surface), procedure => procedure.Surfaces)
        .Show("zones", CommonShapes.List(Zone), procedure => procedure.Fixture.Fixture.Zones)
        .Show("maskedEdge", Results.Edge, procedure => procedure.Fixture.Fixture.MaskedEdge.Meters)
        .Show("waterCapacity", Results.Capacity.OrNull(), procedure => procedure.Fixture.Fixture.WaterCapacity?.CubicMeters)
        .Show("filler", Filler, procedure => procedure.Filler)
        .Show("promoter", Scalars.Text.OrNull(), procedure => procedure.Promoter?.Id)
        .Show("coats", CommonShapes.List(Coat), procedure => procedure.Coats)
        .Show("colourChange", Colour.OrNull(), procedure => procedure.ColourChange)
        .Show("hiding", Hiding.OrNull(), procedure => procedure.Hiding)
        .Show("slipFloor", SlipFloor.OrNull(), procedure => procedure.SlipFloor)
        .AsResults();
}
