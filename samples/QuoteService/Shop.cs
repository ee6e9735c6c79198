using System;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Samples.QuoteService;

/// <summary>
/// What the shop decides: prices, coating system, gun, exhaust, hours, warranty. Everything in this file is invented; put your own price list,
/// data sheets, gun tests and hours in its place before anyone is quoted anything.
/// </summary>
internal static class Shop
{
    public const string Invented = "Invented demonstration: products, prices, hours and warranty describe no shop and no product on sale.";

    /// <summary>The clock on the wall of the shop.</summary>
    public static TimeSpan Clock { get; } = TimeSpan.FromHours(1);

    public static PriceBook Prices { get; } = new()
    {
        Currency = "EUR",
        LabourRate = 26m,
        Burden = Ratio.FromPercent(32),
        OverheadPerHour = 9m,
        TravelPerTrip = 28m,
        DisposalPerJob = 18m,
        ConsumablesPerFixture = 34m,
        Materials =
        [
            new("two-part epoxy primer", Volume.FromMilliliters(750), 44m),
            new("epoxy reducer", Volume.FromMilliliters(500), 9m),
            new("two-part acrylic urethane topcoat", Volume.FromMilliliters(1250), 92m),
            new("urethane reducer", Volume.FromMilliliters(500), 11m),
            new("silane adhesion promoter", Volume.FromMilliliters(250), 38m),
            new("plastic adhesion promoter", Volume.FromMilliliters(250), 29m),
            new("epoxy filler", Volume.FromMilliliters(200), 24m),
            new("spot primer", Volume.FromMilliliters(100), 13m),
            new("silicone remover", Volume.FromMilliliters(250), 16m),
        ],
        Options = [TradeOptions.SlipResistantFloor(31m, 85m), TradeOptions.DrainTrim(42m)],
        MinimumCharge = 390m,
        TargetMargin = new Margin(Ratio.FromPercent(38)),
        SalesTax = Ratio.FromPercent(20),
    };

    /// <summary>A whole job with an invented tub in it: the customer's part is written over, the rest is the shop's.</summary>
    public static BathroomJob Example { get; } = new()
    {
        Name = "Bathroom at the old ferry (invented)",
        Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, Clock),
        Fixtures = [Tub()],
        Options = [new OptionOrder("X-10")],
        Site = new SiteConditions
        {
            Room = new Room(Length.FromMeters(2.6), Length.FromMeters(2.1), Length.FromMeters(2.5)),
            Air = new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)),
            Surface = Temperature.FromDegreesCelsius(20),
            Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) },
            AirborneFraction = Ratio.FromPercent(10),
            IsocyanateLimit = MassConcentration.FromMilligramsPerCubicMeter(1),
            IsocyanateLimitSource = Source.Published("Oregon OSHA, rules for air contaminants", "polyisocyanates of hexamethylene diisocyanate, ceiling; seen second-hand"),
        },
        System = GenericCatalogue.EpoxyUrethaneSystem,
        Gun = new SprayGun
        {
            FluidRate = VolumeFlow.FromMillilitersPerMinute(160),
            TransferEfficiency = Ratio.FromPercent(60),
            TriggerFraction = Ratio.FromPercent(45),
        },
        Residue = Ratio.FromPercent(8),
        Batches = new BatchRules { CupVolume = Volume.FromMilliliters(600) },
        Hours = new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)),
        DefectMaterials = DefectMaterials.Generic,
        Prices = Prices,
        Warranty = new WarrantyTerms
        {
            Years = 5,
            Life = new WeibullLife(2.2, 18),
            CostPerClaim = 320m,
            ClaimProbability = Ratio.FromPercent(80),
            DiscountRate = Ratio.FromPercent(3),
        },
    };

    private static FixtureJob Tub() => new()
    {
        Name = "bathtub",
        Fixture = new RecessedBathtub(new RecessedBathtubMeasurements
        {
            OverallLength = Length.FromMillimeters(1524),
            OverallWidth = Length.FromMillimeters(762),
            ApronHeight = Length.FromMillimeters(368),
            RimLength = Length.FromMillimeters(1346),
            RimWidth = Length.FromMillimeters(597),
            RimCornerRadius = Length.FromMillimeters(152),
            Depth = Length.FromMillimeters(337),
            FloorLength = Length.FromMillimeters(1118),
            FloorWidth = Length.FromMillimeters(495),
            FloorCornerRadius = Length.FromMillimeters(127),
            HeadRun = Length.FromMillimeters(178),
            FootRun = Length.FromMillimeters(50),
            CoveRadius = Length.FromMillimeters(64),
            DrainDiameter = Length.FromMillimeters(51),
            OverflowDiameter = Length.FromMillimeters(76),
        }),
        Survey = new Survey
        {
            Material = FixtureMaterial.EnamelledCastIron,
            Defects = [new Chip(Length.FromMillimeters(18), Length.FromMillimeters(1.5)), new SiliconeResidue(Length.FromMeters(3))],
            BuiltBefore1978 = true,
            LeadTest = LeadTest.Negative,
        },
    };
}
