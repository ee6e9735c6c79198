using System;
using System.Linq;
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

namespace Refinish.Samples.Portfolio;

/// <summary>One bathroom of the portfolio, made of what its row holds; everything else is the same for all and invented.</summary>
internal static class Bathroom
{
    private static readonly SprayGun Gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(160), TransferEfficiency = Ratio.FromPercent(60), TriggerFraction = Ratio.FromPercent(45) };

    private static readonly SiteConditions Site = new()
    {
        Room = new Room(Length.FromMeters(2.6), Length.FromMeters(2.1), Length.FromMeters(2.5)),
        Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) },
        Air = new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)),
        Surface = Temperature.FromDegreesCelsius(20),
    };

    private static readonly WarrantyTerms Warranty = new()
    {
        Years = 5, Life = new WeibullLife(2.2, 18), CostPerClaim = 320m, ClaimProbability = Ratio.FromPercent(80), DiscountRate = Ratio.FromPercent(3),
    };

    private static readonly PriceBook Prices = new()
    {
        Currency = "EUR", LabourRate = 26m, Burden = Ratio.FromPercent(32), OverheadPerHour = 9m, TravelPerTrip = 28m, DisposalPerJob = 18m, ConsumablesPerFixture = 34m,
        Materials =
        [
            new("two-part epoxy primer", Volume.FromMilliliters(750), 44m), new("epoxy reducer", Volume.FromMilliliters(500), 9m),
            new("two-part acrylic urethane topcoat", Volume.FromMilliliters(1250), 92m), new("urethane reducer", Volume.FromMilliliters(500), 11m),
            new("silane adhesion promoter", Volume.FromMilliliters(250), 38m), new("epoxy filler", Volume.FromMilliliters(200), 24m),
        ],
        TargetMargin = new Margin(Ratio.FromPercent(38)),
    };

    /// <summary>The whole plan of one bathroom: film, cups, times, timeline, air, price, warranty.</summary>
    public static BathroomPlan Plan(int length, int width, int depth, int chips)
    {
        Length overall = Length.FromMillimeters(length), across = Length.FromMillimeters(width), deep = Length.FromMillimeters(depth);
        return new BathroomJob
        {
            Name = "bathroom",
            Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)),
            Hours = new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)),
            System = GenericCatalogue.EpoxyUrethaneSystem, Gun = Gun, Residue = Ratio.FromPercent(8),
            Batches = new BatchRules { CupVolume = Volume.FromMilliliters(600) },
            Site = Site, Prices = Prices, Warranty = Warranty,
            Fixtures =
            [
                new FixtureJob
                {
                    Name = "bathtub",
                    Fixture = new RecessedBathtub(new RecessedBathtubMeasurements
                    {
                        OverallLength = overall, OverallWidth = across, Depth = deep, ApronHeight = deep * 1.1,
                        RimLength = overall * 0.88, RimWidth = across * 0.78, RimCornerRadius = across * 0.2,
                        FloorLength = overall * 0.73, FloorWidth = across * 0.65, FloorCornerRadius = across * 0.16,
                        HeadRun = overall * 0.12, FootRun = overall * 0.03, CoveRadius = deep * 0.19,
                        DrainDiameter = Length.FromMillimeters(51), OverflowDiameter = Length.FromMillimeters(76),
                    }),
                    Survey = new Survey
                    {
                        Material = FixtureMaterial.EnamelledCastIron, LeadTest = LeadTest.Negative,
                        Defects = [.. Enumerable.Repeat<Defect>(new Chip(Length.FromMillimeters(14), Length.FromMillimeters(1.2)), chips)],
                    },
                },
            ],
        }.Plan();
    }

    /// <summary>The net price in cents: a whole number, so that no order of adding changes a sum; nothing when the plan has no price.</summary>
    public static long? Cents(int length, int width, int depth, int chips) => (long?)(Plan(length, width, depth, chips).Price?.Net * 100);
}
