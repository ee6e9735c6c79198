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

namespace Refinish.Json.Shapes;

/// <summary>A whole job: what it defines, its shop, its premises and what is wanted.</summary>
internal static class JobShapes
{
    public static ObjectShape<ZoneEfficiency> Efficiency { get; } = new Fields<ZoneEfficiency>("zoneEfficiency")
        .With("zone", FixtureParts.Zone, efficiency => efficiency.Zone, out Slot<FixtureZoneKind> zone)
        .With("efficiency", Quantities.Percent, efficiency => efficiency.Efficiency, out Slot<Ratio> part)
        .Making(v => new ZoneEfficiency(zone(v), part(v)));

    public static OneOfShape<FixtureOption> Option { get; } = new OneOfShape<FixtureOption>("fixtureOption")
        .Or("slipResistantFloor", SlipResistantFloor(), option => option.Kind == FixtureOptionKind.SlipResistantFloor)
        .Or("drainTrim", DrainTrim(), option => option.Kind == FixtureOptionKind.DrainTrim && option.Loss.DecimalFractions == 0)
        .Or("work", Work(), option => option.Kind == FixtureOptionKind.Work && option.Loss.DecimalFractions == 0);

    public static ObjectShape<FixtureJob> Fixture { get; } = new Fields<FixtureJob>("fixtureJob")
        .With("id", Scalars.Text, fixture => fixture.Id, out Slot<string> id)
        .MaybeOf("name", Scalars.Text, fixture => Said.Name(fixture.Name, fixture.Id, fixture, one => one with { Name = one.Name }),
            (fixture, name) => fixture with { Name = name })
        .With("room", Scalars.Text, fixture => fixture.Room, out Slot<string> room)
        .With("fixture", FixtureShapes.Fixture, fixture => fixture.Fixture, out Slot<IFixture> measured)
        .With("survey", SurveyShapes.Survey, fixture => fixture.Survey, out Slot<Survey> survey)
        .MaybeOf("zones", CommonShapes.List(FixtureParts.Zone), fixture => fixture.Zones, (fixture, zones) =>
            fixture with { Zones = zones })
        .Optional("share", Quantities.Percent, fixture => fixture.Share, (fixture, share) => fixture with { Share = share })
        .MaybeOf("system", SystemShapes.System, fixture => fixture.System, (fixture, system) => fixture with { System = system })
        .MaybeOf("gun", GunShapes.Gun, fixture => fixture.Gun, (fixture, gun) => fixture with { Gun = gun })
        .MaybeOf("losses", GunShapes.Losses, fixture => fixture.Losses, (fixture, losses) => fixture with { Losses = losses })
        .Optional("efficiencies", CommonShapes.List(Efficiency), fixture => fixture.Efficiencies,
            (fixture, efficiencies) => fixture with { Efficiencies = efficiencies })
        .Maybe("surface", Quantities.Temperature, fixture => fixture.Surface,
            (fixture, temperature) => fixture with { Surface = temperature })
        .Maybe("weight", Quantities.Weight, fixture => fixture.Weight, (fixture, weight) => fixture with { Weight = weight })
        .Maybe("wallThickness", Quantities.Tape, fixture => fixture.WallThickness,
            (fixture, thickness) => fixture with { WallThickness = thickness })
        .Maybe("oldColour", CommonShapes.Colour, fixture => fixture.OldColour, (fixture, colour) => fixture with { OldColour = colour })
        .Maybe("newColour", CommonShapes.Colour, fixture => fixture.NewColour, (fixture, colour) => fixture with { NewColour = colour })
        .Optional("options", CommonShapes.List(Option), fixture => fixture.Options,
            (fixture, options) => fixture with { Options = options })
        .Making(v => new FixtureJob { Id = id(v), Room = room(v), Fixture = measured(v), Survey = survey(v) });

    public static ObjectShape<JobAlternative> Alternative { get; } = new Fields<JobAlternative>("jobAlternative")
        .With("id", Scalars.Text, alternative => alternative.Id, out Slot<string> other)
        .MaybeOf("name", Scalars.Text, alternative =>
            Said.Name(alternative.Name, alternative.Id, alternative, one => one with { Name = one.Name }),
            (alternative, name) => alternative with { Name = name })
        .Optional("fixtures", CommonShapes.List(Fixture), alternative => alternative.Fixtures,
            (alternative, fixtures) => alternative with { Fixtures = fixtures })
        .Optional("leftOut", CommonShapes.List(Scalars.Text), alternative => alternative.LeftOut, (alternative, ids) =>
            alternative with { LeftOut = ids })
        .Making(v => new JobAlternative { Id = other(v) });

    public static ObjectShape<DayRequest> Days { get; } = new Fields<DayRequest>("dayRequest")
        .With("days", CommonShapes.List(Times.Day), request => request.Days, out Slot<IReadOnlyList<DateTime>> days)
        .WithOr("operations", CommonShapes.List(Scalars.Text), request => request.Operations, [],
            out Slot<IReadOnlyList<string>> operations)
        .Making(v => new DayRequest(days(v), operations(v)));

    public static ObjectShape<OpenedKit> Kit { get; } = new Fields<OpenedKit>("openedKit")
        .With("product", CoatingShapes.Product, kit => kit.Product, out Slot<CoatingProduct> product)
        .With("left", CommonShapes.List(CoatingShapes.PartVolume), kit => kit.Left, out Slot<IReadOnlyList<PartVolume>> left)
        .With("opened", Times.Instant, kit => kit.Opened, out Slot<DateTimeOffset> opened)
        .MakingTogether(
            () => new OpenedKit(
                GenericCatalogue.EpoxyPrimer,
                [.. GenericCatalogue.EpoxyPrimer.Parts.Select(part => new PartVolume(part.Component.Id, Volume.Zero))],
                DateTimeOffset.MinValue),
            v => new OpenedKit(product(v), left(v), opened(v)));

    /// <summary>The fields of a job; what it defines stands before what names it.</summary>
    public static ObjectShape<Job> Fields { get; } = new Fields<Job>("job")
        .With("id", Scalars.Text, job => job.Id, out Slot<string> id)
        .MaybeOf("name", Scalars.Text, job => Said.Name(job.Name, job.Id, job, one => one with { Name = one.Name }),
            (job, name) => job with { Name = name })
        .With("start", Times.Instant, job => job.Start, out Slot<DateTimeOffset> start)
        .WithOr("catalogue", CatalogueShapes.Catalogue, Catalogue.Of, new Catalogue(), out _)
        .With("shop", ShopShapes.Shop, job => job.Shop, out Slot<Shop> shop)
        .With("premises", SiteShapes.Premises, job => job.Premises, out Slot<Premises> premises)
        .With("fixtures", CommonShapes.List(Fixture), job => job.Fixtures, out Slot<IReadOnlyList<FixtureJob>> fixtures)
        .Optional("days", CommonShapes.List(Days), job => job.Days, (job, days) => job with { Days = days })
        .Optional("changes", CommonShapes.List(OperationShapes.Change), job => job.Changes,
            (job, changes) => job with { Changes = changes })
        .Optional("stock", CommonShapes.List(Kit), job => job.Stock, (job, stock) => job with { Stock = stock })
        .Optional("extras", CommonShapes.List(TaxShapes.Extra), job => job.Extras, (job, extras) => job with { Extras = extras })
        .Optional("terms", QuoteShapes.Terms, job => job.Terms, (job, terms) => job with { Terms = terms })
        .Optional("alternatives", CommonShapes.List(Alternative), job => job.Alternatives,
            (job, alternatives) => job with { Alternatives = alternatives })
        .MaybeOf("replacement", PriceShapes.Replacement, job => job.Replacement, (job, offer) => job with { Replacement = offer })
        .MakingInOrder(v => new Job { Id = id(v), Start = start(v), Shop = shop(v), Premises = premises(v), Fixtures = fixtures(v) });

    /// <summary>A job as a document of its own, with its format and version.</summary>
    public static DocumentShape<Job> Job { get; } = new("job", 2, Fields);

    private static ObjectShape<FixtureOption> SlipResistantFloor() => new Fields<FixtureOption>("slipResistantFloorOption")
        .With("code", Scalars.Text, option => option.Code, out Slot<string> code)
        .With("additive", CoatingShapes.Additive, option => option.Additive!, out Slot<SlipAdditive> additive)
        .With("rate", Quantities.AreaDensity, option => option.Rate, out Slot<AreaDensity> rate)
        .Optional("loss", Quantities.Percent, option => option.Loss, (option, loss) => option with { Loss = loss })
        .Making(v => FixtureOption.SlipResistantFloor(code(v), additive(v), rate(v)));

    private static ObjectShape<FixtureOption> DrainTrim() => new Fields<FixtureOption>("drainTrimOption")
        .With("code", Scalars.Text, option => option.Code, out Slot<string> code)
        .Optional("quantity", Scalars.Money, option => option.Quantity, (option, quantity) => option with { Quantity = quantity })
        .Making(v => FixtureOption.DrainTrim(code(v)));

    private static ObjectShape<FixtureOption> Work() => new Fields<FixtureOption>("workOption")
        .With("code", Scalars.Text, option => option.Code, out Slot<string> code)
        .With("operation", OperationShapes.Operation, option => option.Operation!, out Slot<Operation> operation)
        .With("after", LabourShapes.Work, option => option.After, out Slot<WorkKind> after)
        .Optional("quantity", Scalars.Money, option => option.Quantity, (option, quantity) => option with { Quantity = quantity })
        .Making(v => FixtureOption.Work(code(v), operation(v), after(v)));
}
