using System.Collections.Generic;
using System.Linq;
using Refinish.Colours;
using Refinish.Coverage;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>What a plan says of each fixture: verdict, what lies under the coat, areas, filler, coats in order, colour, grains.</summary>
internal static class ProcedureResults
{
    public static FieldsShape<VerdictReason> Reason { get; } = new Fields<VerdictReason>("verdictReason")
        .Show("ruleCode", Text, it => it.RuleCode)
        .Show("effect", new WordShape<Suitability>(), it => it.Effect)
        .Show("title", Text, it => it.Title)
        .Show("sentence", Results.Sentence, it => it.SentenceIn)
        .Show("comparison", Results.Comparison.OrNull(), it => it.Comparison)
        .Show("change", RuleShapes.Change.OrNull(), it => it.Change)
        .Show("remedy", Text, it => it.Remedy)
        .Show("repeatTest", Text, it => it.RepeatTest)
        .Show("source", CommonShapes.Source, it => it.Source)
        .AsResults();

    private static readonly FieldsShape<FixtureZone> Zone = new Fields<FixtureZone>("fixtureZone")
        .Show("kind", FixtureParts.Zone, it => it.Kind)
        .Show("area", Results.Area, it => it.Area.SquareMeters)
        .Show("slopeFromHorizontal", Results.Angle, it => it.SlopeFromHorizontal.Radians)
        .AsResults();

    private static readonly FieldsShape<Verdict> Verdict = new Fields<Verdict>("verdict")
        .Show("suitability", new WordShape<Suitability>(), it => it.Suitability)
        .Show("mayBePlanned", YesNo, it => it.MayBePlanned)
        .Show("reasons", List(Reason), it => it.Reasons)
        .AsResults();

    private static readonly FieldsShape<OldCoatDecision> OldCoat = new Fields<OldCoatDecision>("oldCoatDecision")
        .Show("isThere", YesNo, it => it.IsThere)
        .Show("comesOff", YesNo, it => it.ComesOff)
        .Show("isKept", YesNo, it => it.IsKept)
        .Show("isTested", YesNo, it => it.IsTested)
        .AsResults();

    private static readonly FieldsShape<FillerEstimate> Filler = new Fields<FillerEstimate>("fillerEstimate")
        .Show("volume", Results.Liquid, it => it.Volume.CubicMeters)
        .Show("mass", Results.Mass, it => it.Mass.Kilograms)
        .Show("resinMass", Results.Mass, it => it.ResinMass.Kilograms)
        .Show("hardenerMass", Results.Mass, it => it.HardenerMass.Kilograms)
        .Show("lifts", Count, it => it.Lifts)
        .Show("sink", Results.Comparisons, it => [.. it.Items.Where(item => item.IsFilled).Select(item => item.SinkAgainstFilm)])
        .AsResults();

    private static readonly FieldsShape<PlannedCoat> Coat = new Fields<PlannedCoat>("plannedCoat")
        .Show("number", Count, it => it.Number)
        .Show("product", Text, it => it.Layer.Product.Id)
        .Show("dryFilm", Results.Film, it => it.Layer.DryFilmPerCoat.Meters)
        .Show("takesGrains", YesNo, it => it.TakesGrains)
        .AsResults();

    private static readonly FieldsShape<ColourDifference> Colour = new Fields<ColourDifference>("colourDifference")
        .Show("deltaL", Results.Number, it => it.DeltaL)
        .Show("deltaA", Results.Number, it => it.DeltaA)
        .Show("deltaB", Results.Number, it => it.DeltaB)
        .Show("deltaChroma", Results.Number, it => it.DeltaChroma)
        .Show("deltaHue", Results.Number, it => it.DeltaHue)
        .Show("cie76", Results.Number, it => it.Cie76)
        .Show("cie94", Results.Number, it => it.Cie94)
        .Show("ciede2000", Results.Number, it => it.Ciede2000)
        .AsResults();

    private static readonly FieldsShape<HidingCoat> HidingCoat = new Fields<HidingCoat>("hidingCoat")
        .Show("coats", Count, it => it.Coats)
        .Show("difference", Results.Number.OrNull(), it => it.Difference)
        .AsResults();

    private static readonly FieldsShape<ColourJudgement> Hiding = new Fields<ColourJudgement>("colourJudgement")
        .Show("coatsPlanned", Count, it => it.CoatsPlanned)
        .Show("coatsNeeded", Count.OrNull(), it => it.CoatsNeeded)
        .Show("isJudged", YesNo, it => it.IsJudged)
        .Show("isShort", YesNo, it => it.IsShort)
        .Show("objection", Text.OrNull(), it => it.Plan?.Objection)
        .Show("afterCoats", List(HidingCoat), it => it.Plan?.Coats ?? [])
        .AsResults();

    private static readonly FieldsShape<SlipResistantFloor> SlipFloor = new Fields<SlipResistantFloor>("slipResistantFloor")
        .Show("floor", Results.Area, it => it.Floor.SquareMeters)
        .Show("additive", Text, it => it.Additive.Id)
        .Show("filmAround", Results.Film, it => it.FilmAround.Meters)
        .Show("areaFraction", Results.Percent, it => it.AreaFraction.DecimalFractions)
        .Show("grainsPerSquareMeter", Results.Number, it => it.GrainsPerSquareMeter)
        .Show("embedment", Results.Percent, it => it.Embedment.DecimalFractions)
        .Show("standsOut", Results.Film, it => it.StandsOut.Meters)
        .Show("addedArea", Results.Percent, it => it.AddedArea.DecimalFractions)
        .Show("toWeighOut", Results.Mass, it => it.ToWeighOut.Kilograms)
        .Show("bands", Results.Comparisons, it => it.Bands)
        .AsResults();

    public static FieldsShape<CoatedSurface> Surface { get; } = new Fields<CoatedSurface>("coatedSurface")
        .Show("id", Text, it => it.Id)
        .Show("area", Results.Area, it => it.Area.SquareMeters)
        .Show("transferEfficiency", Results.Percent.OrNull(), it => it.TransferEfficiency?.DecimalFractions)
        .AsResults();

    public static FieldsShape<Procedure> Procedure { get; } = new Fields<Procedure>("procedure")
        .Show("id", Text, it => it.Fixture.Id)
        .Show("name", Text, it => it.Fixture.Name)
        .Show("room", Text, it => it.Fixture.Room)
        .Show("description", Text, it => it.Fixture.Fixture.Description)
        .Show("isPlanned", YesNo, it => it.IsPlanned)
        .Show("verdict", Verdict, it => it.Verdict)
        .Show("system", Text, it => it.System.Id)
        .Show("systemObjections", Results.Sentences, it => it.SystemObjections)
        .Show("refusals", Results.Sentences, it => it.Refusals)
        .Show("surface", Text, it => it.Surface.Id)
        .Show("oldCoat", OldCoat, it => it.OldCoat)
        .Show("coatedArea", Results.Area, it => it.CoatedArea.SquareMeters)
        .Show("surfaces", List(Surface), it => it.Surfaces)
        .Show("zones", List(Zone), it => it.Fixture.Fixture.Zones)
        .Show("maskedEdge", Results.Edge, it => it.Fixture.Fixture.MaskedEdge.Meters)
        .Show("waterCapacity", Results.Capacity.OrNull(), it => it.Fixture.Fixture.WaterCapacity?.CubicMeters)
        .Show("filler", Filler, it => it.Filler)
        .Show("promoter", Text.OrNull(), it => it.Promoter?.Id)
        .Show("coats", List(Coat), it => it.Coats)
        .Show("colourChange", Colour.OrNull(), it => it.ColourChange)
        .Show("hiding", Hiding.OrNull(), it => it.Hiding)
        .Show("slipFloor", SlipFloor.OrNull(), it => it.SlipFloor)
        .AsResults();
}
