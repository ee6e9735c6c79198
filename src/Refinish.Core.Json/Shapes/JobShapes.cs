using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>A whole job: what it defines, its shop, its premises and what is wanted.</summary>
internal static class JobShapes
{
    public static ObjectShape<ZoneEfficiency> Efficiency { get; } = new Fields<ZoneEfficiency>("zoneEfficiency")
        .With("zone", FixtureParts.Zone, it => it.Zone, out Slot<FixtureZoneKind> zone)
        .With("efficiency", Percent, it => it.Efficiency, out Slot<Ratio> part)
        .Making(v => new ZoneEfficiency(zone(v), part(v)));

    public static OneOfShape<FixtureOption> Option { get; } = new OneOfShape<FixtureOption>("fixtureOption")
        .Or("slipResistantFloor", SlipResistantFloor(), option => option.Kind == FixtureOptionKind.SlipResistantFloor)
        .Or("drainTrim", DrainTrim(), option => option.Kind == FixtureOptionKind.DrainTrim && option.Loss.DecimalFractions == 0)
        .Or("work", Work(), option => option.Kind == FixtureOptionKind.Work && option.Loss.DecimalFractions == 0);

    public static ObjectShape<FixtureJob> Fixture { get; } = new Fields<FixtureJob>("fixtureJob")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .MaybeOf("name", Text, it => Said.Name(it.Name, it.Id, it, one => one with { Name = one.Name }),
            (it, name) => it with { Name = name })
        .With("room", Text, it => it.Room, out Slot<string> room)
        .With("fixture", FixtureShapes.Fixture, it => it.Fixture, out Slot<IFixture> measured)
        .With("survey", SurveyShapes.Survey, it => it.Survey, out Slot<Survey> survey)
        .MaybeOf("zones", List(FixtureParts.Zone), it => it.Zones, (it, zones) => it with { Zones = zones })
        .Optional("share", Percent, it => it.Share, (it, share) => it with { Share = share })
        .MaybeOf("system", SystemShapes.System, it => it.System, (it, system) => it with { System = system })
        .MaybeOf("gun", GunShapes.Gun, it => it.Gun, (it, gun) => it with { Gun = gun })
        .MaybeOf("losses", GunShapes.Losses, it => it.Losses, (it, losses) => it with { Losses = losses })
        .Optional("efficiencies", List(Efficiency), it => it.Efficiencies, (it, efficiencies) => it with { Efficiencies = efficiencies })
        .Maybe("surface", Quantities.Temperature, it => it.Surface, (it, temperature) => it with { Surface = temperature })
        .Maybe("weight", Weight, it => it.Weight, (it, weight) => it with { Weight = weight })
        .Maybe("wallThickness", Tape, it => it.WallThickness, (it, thickness) => it with { WallThickness = thickness })
        .Maybe("oldColour", Colour, it => it.OldColour, (it, colour) => it with { OldColour = colour })
        .Maybe("newColour", Colour, it => it.NewColour, (it, colour) => it with { NewColour = colour })
        .Optional("options", List(Option), it => it.Options, (it, options) => it with { Options = options })
        .Making(v => new FixtureJob { Id = id(v), Room = room(v), Fixture = measured(v), Survey = survey(v) });

    public static ObjectShape<JobAlternative> Alternative { get; } = new Fields<JobAlternative>("jobAlternative")
        .With("id", Text, it => it.Id, out Slot<string> other)
        .MaybeOf("name", Text, it => Said.Name(it.Name, it.Id, it, one => one with { Name = one.Name }),
            (it, name) => it with { Name = name })
        .Optional("fixtures", List(Fixture), it => it.Fixtures, (it, fixtures) => it with { Fixtures = fixtures })
        .Optional("leftOut", List(Text), it => it.LeftOut, (it, ids) => it with { LeftOut = ids })
        .Making(v => new JobAlternative { Id = other(v) });

    public static ObjectShape<DayRequest> Days { get; } = new Fields<DayRequest>("dayRequest")
        .With("days", List(Times.Day), it => it.Days, out Slot<IReadOnlyList<DateTime>> days)
        .WithOr("operations", List(Text), it => it.Operations, [], out Slot<IReadOnlyList<string>> operations)
        .Making(v => new DayRequest(days(v), operations(v)));

    public static ObjectShape<OpenedKit> Kit { get; } = new Fields<OpenedKit>("openedKit")
        .With("product", CoatingShapes.Product, it => it.Product, out Slot<CoatingProduct> product)
        .With("left", List(CoatingShapes.PartVolume), it => it.Left, out Slot<IReadOnlyList<PartVolume>> left)
        .With("opened", Times.Instant, it => it.Opened, out Slot<DateTimeOffset> opened)
        .MakingTogether(
            () => new OpenedKit(
                GenericCatalogue.EpoxyPrimer,
                [.. GenericCatalogue.EpoxyPrimer.Parts.Select(part => new PartVolume(part.Component.Id, Volume.Zero))],
                DateTimeOffset.MinValue),
            v => new OpenedKit(product(v), left(v), opened(v)));

    /// <summary>The fields of a job; what it defines stands before what names it.</summary>
    public static ObjectShape<Job> Fields { get; } = new Fields<Job>("job")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .MaybeOf("name", Text, it => Said.Name(it.Name, it.Id, it, one => one with { Name = one.Name }),
            (it, name) => it with { Name = name })
        .With("start", Times.Instant, it => it.Start, out Slot<DateTimeOffset> start)
        .WithOr("catalogue", CatalogueShapes.Catalogue, Catalogue.Of, new Catalogue(), out _)
        .With("shop", ShopShapes.Shop, it => it.Shop, out Slot<Shop> shop)
        .With("premises", SiteShapes.Premises, it => it.Premises, out Slot<Premises> premises)
        .With("fixtures", List(Fixture), it => it.Fixtures, out Slot<IReadOnlyList<FixtureJob>> fixtures)
        .Optional("days", List(Days), it => it.Days, (it, days) => it with { Days = days })
        .Optional("changes", List(OperationShapes.Change), it => it.Changes, (it, changes) => it with { Changes = changes })
        .Optional("stock", List(Kit), it => it.Stock, (it, stock) => it with { Stock = stock })
        .Optional("extras", List(TaxShapes.Extra), it => it.Extras, (it, extras) => it with { Extras = extras })
        .Optional("terms", QuoteShapes.Terms, it => it.Terms, (it, terms) => it with { Terms = terms })
        .Optional("alternatives", List(Alternative), it => it.Alternatives, (it, alternatives) => it with { Alternatives = alternatives })
        .MaybeOf("replacement", PriceShapes.Replacement, it => it.Replacement, (it, offer) => it with { Replacement = offer })
        .MakingInOrder(v => new Job { Id = id(v), Start = start(v), Shop = shop(v), Premises = premises(v), Fixtures = fixtures(v) });

    /// <summary>A job as a document of its own, with its format and version.</summary>
    public static DocumentShape<Job> Job { get; } = new("job", 2, Fields);

    private static ObjectShape<FixtureOption> SlipResistantFloor() => new Fields<FixtureOption>("slipResistantFloorOption")
        .With("code", Text, it => it.Code, out Slot<string> code)
        .With("additive", CoatingShapes.Additive, it => it.Additive!, out Slot<SlipAdditive> additive)
        .With("rate", Quantities.AreaDensity, it => it.Rate, out Slot<AreaDensity> rate)
        .Optional("loss", Percent, it => it.Loss, (it, loss) => it with { Loss = loss })
        .Making(v => FixtureOption.SlipResistantFloor(code(v), additive(v), rate(v)));

    private static ObjectShape<FixtureOption> DrainTrim() => new Fields<FixtureOption>("drainTrimOption")
        .With("code", Text, it => it.Code, out Slot<string> code)
        .Optional("quantity", Scalars.Money, it => it.Quantity, (it, quantity) => it with { Quantity = quantity })
        .Making(v => FixtureOption.DrainTrim(code(v)));

    private static ObjectShape<FixtureOption> Work() => new Fields<FixtureOption>("workOption")
        .With("code", Text, it => it.Code, out Slot<string> code)
        .With("operation", OperationShapes.Operation, it => it.Operation!, out Slot<Operation> operation)
        .With("after", LabourShapes.Work, it => it.After, out Slot<WorkKind> after)
        .Optional("quantity", Scalars.Money, it => it.Quantity, (it, quantity) => it with { Quantity = quantity })
        .Making(v => FixtureOption.Work(code(v), operation(v), after(v)));
}
