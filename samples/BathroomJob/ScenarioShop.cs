using System;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Coverage;
using Refinish.Jobs;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Samples.BathroomJob;

/// <summary>
/// The invented shop: what a refinisher writes down once a year. It starts from the library's invented shop and says what differs.
/// </summary>
internal static class ScenarioShop
{
    private static readonly Source Invented = Source.Invented("for the demonstration; no product on sale");

    /// <summary>The generic epoxy primer with a colour and a scattering, so that hiding can be judged.</summary>
    public static CoatingProduct Primer { get; } = GenericCatalogue.EpoxyPrimer with
    {
        Id = "white-primer", Name = "white epoxy primer", Colour = new CieLab(93, -0.5, 2),
            Scattering = ReciprocalLength.FromInverseMillimeters(60), Source = Invented,
    };

    /// <summary>The generic topcoat with a scattering.</summary>
    public static CoatingProduct Topcoat { get; } = GenericCatalogue.AcrylicUrethaneTopcoat with
    {
        Id = "white-topcoat", Name = "white urethane topcoat", Scattering = ReciprocalLength.FromInverseMillimeters(90), Source = Invented,
    };

    /// <summary>The system on enamel, china and tile: one coat of primer, three of topcoat.</summary>
    public static CoatingSystem White { get; } = new(
        "white-on-enamel",
        "white epoxy primer under white urethane",
        [
            SystemStep.Wipe(GenericCatalogue.SilanePromoter),
            SystemStep.Coat(new CoatingLayer(Primer, Length.FromMicrometers(30), 1, Ratio.FromPercent(10))),
            SystemStep.Coat(new CoatingLayer(Topcoat, Length.FromMicrometers(30), 3, Ratio.FromPercent(10))),
        ],
        Length.FromMicrometers(200),
        Invented);

    /// <summary>Two people of different wages, weekdays from 8 to 17 by Central European winter time.</summary>
    public static Shop Ferry() => Shop.Generic with
    {
        Name = "Ferry Street Refinishing (invented)",
        Crew = [new Worker { Id = "ada", Name = "Ada", Wage = 31m }, new Worker { Id = "ben", Name = "Ben", Wage = 23m }],
        Calendar = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)),
            LocalClock.Fixed(TimeSpan.FromHours(1))),
        System = White,
        Cups = CupRules.Generic with
        {
            // The least of each cup is what keeps a misread line within 5 % of the mix ratio, the tolerance of the data sheets.
            Cups =
            [
                new MixingCup(Volume.FromMilliliters(150), Volume.FromMilliliters(0.5), Volume.FromMilliliters(70)),
                new MixingCup(Volume.FromMilliliters(600), Volume.FromMilliliters(2), Volume.FromMilliliters(280)),
            ],
        },
        Prices = Shop.Generic.Prices with
        {
            Currency = Currency.Of("EUR"),
            Burden = Ratio.FromPercent(32),
            Taxes = [new() { Code = "sales", Name = "sales tax", Rate = Ratio.FromPercent(20) }],
            Materials =
            [
                .. Shop.Generic.Prices.Materials,
                new(Primer.Id, Volume.FromMilliliters(750), 47m),
                new(Primer.Id, Volume.FromMilliliters(3000), 158m),
                new(Topcoat.Id, Volume.FromMilliliters(1250), 98m),
                new(Topcoat.Id, Volume.FromMilliliters(5000), 339m),
            ],
        },
        Warranty = Shop.Generic.Warranty with { DiscountRate = Ratio.FromPercent(3) },
        AirborneFraction = Ratio.FromPercent(10),
    };
}
