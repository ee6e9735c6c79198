using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>
/// What the bridge takes for granted, since a takeoff does not say it: the shop and the room, all invented. Put data sheets, time sheets,
/// price lists and readings in their place.
/// </summary>
internal static class Assumed
{
    /// <summary>Said on every row that is priced.</summary>
    public const string Note = "room, fan, air and surface are assumed: measure them, and plan the job again, before anybody opens a can";

    /// <summary>Start of the work, from which the calendar is laid out.</summary>
    public static readonly DateTimeOffset Start = new(2027, 3, 1, 8, 0, 0, TimeSpan.Zero);

    // The shop works through a property with open drums, so materials are charged by ten millilitres drawn and not by the kit.
    private static readonly Volume Draw = Volume.FromMilliliters(10);

    /// <summary>
    /// The shop: whoever waits on one fixture works on the next, so hours worked are paid; travel and disposal belong to the property.
    /// </summary>
    public static Shop Shop { get; } = Shop.Generic with
    {
        Name = "bridge shop (invented)",
        Paid = PaidTimeRule.Worked,
        Labour = [.. LabourStandards.Generic
            .Select(standard => standard.Work == WorkKind.Travel ? standard with { PerUnit = new ThreePoint(0, 0, 0) } : standard)],
        Prices = new PriceBook
        {
            Currency = Currency.Of("EUR"),
            LabourRate = 26m,
            Burden = Ratio.FromPercent(32),
            OverheadPerHour = 9m,
            ConsumablesPerFixture = 34m,
            DisposalPerJob = 0m,
            TravelPerTrip = 0m,
            Materials =
            [
                new("epoxy-primer", Draw, 0.55m), new("epoxy-reducer", Draw, 0.16m), new("acrylic-urethane-topcoat", Draw, 0.72m),
                new("urethane-reducer", Draw, 0.20m),
                new("silane-promoter", Draw, 1.40m), new("plastic-promoter", Draw, 1.10m), new("epoxy-filler", Draw, 1.15m),
                new("spot-primer", Draw, 1.20m),
                new("sealing-primer", Draw, 0.70m), new("stripper", Draw, 0.31m), new("silicone-remover", Draw, 0.60m),
                new("grout", Draw, 0.14m), new("laminating-resin", Draw, 0.44m),
                new("descaler", Draw, 0.09m), new("degreaser", Draw, 0.11m), new("alcohol-wipe", Draw, 0.08m),
            ],
            Options = [new() { Code = "X-SLIP", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 31m, Price = 85m },
                new() { Code = "X-DRAIN", Description = "new drain and overflow trim", Unit = LineUnit.Set, Cost = 42m }],
            TargetMargin = new Margin(Ratio.FromPercent(38)),
            Taxes =
            [
                new() { Code = "goods", Name = "tax on goods (invented)", Rate = Ratio.FromPercent(20),
                    Categories = [LineCategory.Material, LineCategory.Consumables, LineCategory.Option] },
                new() { Code = "work", Name = "reduced tax on work (invented)", Rate = Ratio.FromPercent(10),
                    Categories = [LineCategory.Labour] },
            ],

            // What the estimating program calls these items; whatever is not mapped keeps its short code.
            HostCodes = [new("labour/" + LabourStandards.SetUp.Code, "09-97-10"), new("material/epoxy-primer", "09-97-71")],
        },
    };

    /// <summary>The room of every fixture.</summary>
    public static Premises Premises { get; } = new()
    {
        Id = "property",
        Rooms =
        [
            new SiteRoom
            {
                Id = "room",
                Room = new Room { Length = Length.FromMeters(2.6), Width = Length.FromMeters(2.1), Height = Length.FromMeters(2.5) },
                Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) },
                Climate = RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)),
                    Temperature.FromDegreesCelsius(20)),
            },
        ],
    };

    /// <summary>The extras that a takeoff may order, by the code in the price book.</summary>
    public static IReadOnlyDictionary<string, FixtureOption> Options { get; } =
        new Dictionary<string, FixtureOption>(StringComparer.Ordinal)
        {
            ["X-SLIP"] = FixtureOption.SlipResistantFloor("X-SLIP", GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(20)),
            ["X-DRAIN"] = FixtureOption.DrainTrim("X-DRAIN"),
        };
}
