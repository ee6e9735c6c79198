using System;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Samples.QuoteService;

/// <summary>
/// What the shop decides: people, hours, prices, coating system, gun, exhaust, extras, warranty. Everything in this file is invented, as
/// is the shop that it starts from; put your own price list, data sheets, gun tests and hours in its place before anyone is quoted
/// anything.
/// </summary>
internal static class OurShop
{
    public const string Invented = "Invented demonstration: products, prices, hours and warranty describe no shop and no product on sale.";

    /// <summary>The clock on the wall of the shop.</summary>
    public static TimeSpan Clock { get; } = TimeSpan.FromHours(1);

    public static Shop Shop { get; } = Shop.Generic with
    {
        Name = "Old Ferry Refinishing (invented)",
        Crew = [new Worker { Id = "ada", Name = "Ada", Wage = 28m }, new Worker { Id = "ben", Name = "Ben", Wage = 22m }],
        Calendar = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), LocalClock.Fixed(Clock)),
        Prices = Shop.Generic.Prices with
        {
            Currency = Currency.Of("EUR"),
            Burden = Ratio.FromPercent(32),
            Taxes = [new() { Code = "vat", Name = "value added tax", Rate = Ratio.FromPercent(20) }],
        },
        AirborneFraction = Ratio.FromPercent(10),
    };

    /// <summary>The fan that the shop brings into every room.</summary>
    public static Exhaust Exhaust { get; } = new() { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) };

    /// <summary>
    /// A whole job with an invented tub and every extra in it: the customer's part is written over, the rest is the shop's.
    /// </summary>
    public static Job Example { get; } = new()
    {
        Id = "example",
        Name = "Bathroom at the old ferry (invented)",
        Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, Clock),
        Shop = Shop,
        Premises = new Premises
        {
            Id = "old-ferry",
            Rooms =
            [
                new SiteRoom
                {
                    Id = "bathroom",
                    Room = new Room { Length = Length.FromMeters(2.6), Width = Length.FromMeters(2.1), Height = Length.FromMeters(2.5) },
                    Exhaust = Exhaust,
                    Climate = RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)),
                        Temperature.FromDegreesCelsius(20)),
                },
            ],
        },
        Fixtures = [Tub()],
        Terms = new QuoteTerms
        {
            ValidFor = 30,
            Payments =
            [
                PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(20)),
                PaymentStage.OfRest("rest", PaymentDue.OnCompletion),
            ],
        },
    };

    private static FixtureJob Tub() => new()
    {
        Id = "tub",
        Name = "bathtub",
        Room = "bathroom",
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
            YearBuilt = 1955,
            LeadTest = LeadTest.Negative,
        },
        Options =
        [
            FixtureOption.SlipResistantFloor("slip-floor", GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(20)),
            FixtureOption.DrainTrim("drain-trim"),
        ],
    };
}
