using System;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>The invented shop behind <see cref="Shop.Generic"/>.</summary>
internal static class GenericShop
{
    public static Shop Make() => new()
    {
        Name = "generic shop (invented)",
        Crew = [new Worker { Id = "first" }, new Worker { Id = "second" }],
        Calendar = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), LocalClock.Fixed(TimeSpan.Zero)),
        System = GenericCatalogue.EpoxyUrethaneSystem,
        Gun = new SprayGun
        {
            FluidRate = VolumeFlow.FromMillilitersPerMinute(160),
            TransferEfficiency = Ratio.FromPercent(60),
            TriggerFraction = Ratio.FromPercent(45),
        },
        Prices = Prices(),
        Warranty = new WarrantyTerms
        {
            Years = 5,
            Life = new WeibullLife(2.2, 18),
            CostPerClaim = 320m,
            ClaimProbability = Ratio.FromPercent(80),
        },
    };

    private static PriceBook Prices() => new()
    {
        Currency = Currency.Of("USD"),
        LabourRate = 26m,
        Burden = Ratio.FromPercent(30),
        OverheadPerHour = 9m,
        TravelPerTrip = 28m,
        DisposalPerJob = 18m,
        ConsumablesPerFixture = 34m,
        MinimumCharge = 390m,
        TargetMargin = new Margin(Ratio.FromPercent(38)),
        Materials =
        [
            new("epoxy-primer", Volume.FromMilliliters(750), 44m),
            new("epoxy-primer", Volume.FromMilliliters(3000), 149m),
            new("high-solids-primer", Volume.FromMilliliters(750), 58m),
            new("high-solids-primer", Volume.FromMilliliters(3000), 196m),
            new("high-solids-topcoat", Volume.FromMilliliters(1250), 118m),
            new("high-solids-topcoat", Volume.FromMilliliters(5000), 408m),
            new("epoxy-reducer", Volume.FromMilliliters(500), 9m),
            new("acrylic-urethane-topcoat", Volume.FromMilliliters(1250), 92m),
            new("acrylic-urethane-topcoat", Volume.FromMilliliters(5000), 318m),
            new("acrylic-urethane-clear", Volume.FromMilliliters(1250), 98m),
            new("urethane-reducer", Volume.FromMilliliters(500), 11m),
            new("silane-promoter", Volume.FromMilliliters(250), 38m),
            new("plastic-promoter", Volume.FromMilliliters(250), 34m),
            new("epoxy-filler", Volume.FromMilliliters(200), 24m),
            new("spot-primer", Volume.FromMilliliters(100), 13m),
            new("stripper", Volume.FromMilliliters(1000), 29m),
            new("sealing-primer", Volume.FromMilliliters(500), 31m),
            new("silicone-remover", Volume.FromMilliliters(250), 16m),
            new("descaler", Volume.FromMilliliters(1000), 9m),
            new("degreaser", Volume.FromMilliliters(1000), 11m),
            new("alcohol-wipe", Volume.FromMilliliters(1000), 8m),
            new("grout", Volume.FromMilliliters(500), 7m),
            new("laminating-resin", Volume.FromMilliliters(500), 22m),
        ],
        Options =
        [
            new OptionPrice { Code = "slip-floor", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 31m, Price = 85m },
            new OptionPrice { Code = "drain-trim", Description = "new drain and overflow trim", Unit = LineUnit.Set, Cost = 42m },
        ],
    };
}
