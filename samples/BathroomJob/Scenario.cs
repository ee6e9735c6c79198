using System;
using Refinish.Estimating;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Samples.BathroomJob;

/// <summary>Jobs to show, test and measure with. People, places, measurements, findings, rates and prices are invented.</summary>
internal static class Scenario
{
    /// <summary>
    /// Two bathrooms and a kitchenette: two people of different wages, two coating systems, a colour change, a slip-resistant floor, a cold
    /// tub, an unheated bathroom, a laminate counter, and a shower pan that has to be refused.
    /// </summary>
    public static Job Guesthouse() => new()
    {
        Id = "ferry-2027-03",
        Name = "Guesthouse at the old ferry, two bathrooms and a kitchenette (invented)",
        Shop = ScenarioShop.Ferry(),
        Premises = ScenarioPremises.Guesthouse(),
        Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)),
        Fixtures =
        [
            ScenarioFixtures.ColdTub("tub-1", "bath-1"),
            ScenarioFixtures.Sink("sink-1", "bath-1"),
            ScenarioFixtures.Surround("walls-2", "bath-2"),
            ScenarioFixtures.Vanity("vanity-2", "bath-2"),
            ScenarioFixtures.FlexingPan("shower-2", "bath-2"),
            ScenarioFixtures.Counter("counter", "kitchenette"),
        ],
        Terms = new QuoteTerms
        {
            Number = "F-2027-03",
            Issued = new DateTimeOffset(2027, 2, 15, 9, 0, 0, TimeSpan.FromHours(1)),
            ValidFor = 30,
            Payments =
            [
                PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(20)),
                PaymentStage.OfRest("rest", PaymentDue.OnCompletion),
            ],
        },
        Replacement = Replacing(
            16, new("tub, sinks, tile and counter", 8200m), new("demolition and haul-away", 2600m), new("plumbing", 3900m),
                new("tile setting", 6100m)),
    };

    /// <summary>One bathroom with a tub, a pedestal sink and a tiled surround, all of which can be done.</summary>
    public static Job OneBathroom() => new()
    {
        Id = "ferry-bath-3",
        Name = "Guesthouse at the old ferry, bathroom 3 (invented)",
        Shop = ScenarioShop.Ferry(),
        Premises = ScenarioPremises.OneBathroom(),
        Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)),
        Fixtures = [ScenarioFixtures.Tub("tub", "bath-3"), ScenarioFixtures.Sink("sink", "bath-3"),
            ScenarioFixtures.Surround("surround", "bath-3")],
        Replacement = Replacing(
            12, new("tub, sink and tile", 2900m), new("demolition and haul-away", 850m), new("plumbing", 1150m),
                new("tile setting", 2600m)),
    };

    /// <summary>What the shop is not sure of: the tape, the gun and a second visit for touching up.</summary>
    public static EstimateUncertainty Doubts() => new()
    {
        Quantities =
        [
            new QuantityFactor { Name = "taped area", Distribution = new TriangularDistribution(0.95, 1, 1.1), ScalesAreaLabour = true },
            QuantityFactor.Transfer(
                Ratio.FromPercent(60), new PertDistribution(0.45, 0.6, 0.7),
                [ScenarioShop.Primer.Id, ScenarioShop.Topcoat.Id, "epoxy-primer", "acrylic-urethane-topcoat", "acrylic-urethane-clear",
                    "epoxy-reducer", "urethane-reducer"]),
        ],
        Extras = [new UncertainInput { Name = "touching up", Distribution = new TriangularDistribution(0, 0, 80) }],
    };

    private static ReplacementOffer Replacing(int days, params CostPart[] parts) => new()
    {
        Replacement = new RenewalOption { Name = "replacing", Parts = parts, LifeYears = 30, DaysOutOfUse = days },
        RefinishLifeYears = 12,
        DiscountRate = Ratio.FromPercent(3),
        CostPerDayOutOfUse = 70m,
    };
}
