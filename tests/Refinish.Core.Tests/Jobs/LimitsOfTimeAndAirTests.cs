using System;
using System.Linq;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Times of a data sheet that the cold stretches beyond what a schedule counts, and air in which nothing helps but drying it.</summary>
public class LimitsOfTimeAndAirTests
{
    private const string Coat = "bath/coat/2/acrylic-urethane-topcoat";

    private static readonly Job Tub = InventedJobs.OccupiedHouse();

    private static readonly CureTimes Cure = GenericCatalogue.AcrylicUrethaneTopcoat.Cure;

    [Fact]
    [Evidence(Basis.Independent, "by hand: 30 days at 25 °C are 30 × 2^1.1 = 64.3 days at 14 °C, longer than the 60 that a schedule counts: no bound to it, and the window tells them")]
    public void A_window_that_closes_beyond_the_schedule_binds_nothing()
    {
        JobPlan plan = Cold(Cure with { RecoatCloses = TimeSpan.FromDays(30) }).Plan();
        RefusesNoPart(plan);
        ScheduledWindow window = plan.Schedule!.Windows.First(one => one.Operation.Operation.Id == Coat);
        Numbers.Near(30 * Math.Pow(2, 1.1), (window.Closes!.Value - window.FirstStroke).TotalDays, 1.0 / 1440);
        Assert.DoesNotContain(plan.Schedule.Work.Lags, lag => lag.Before == Coat && lag.Maximum is not null);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: a window that opens after 30 days at 25 °C opens after 64.3 days = 1543.4 h at 14 °C; touch-dry after 40 days 85.7 days = 2057.9 h; 40 days of stand-in time 2057.9 h and some minutes of spraying; each coat and what it waits for is named")]
    public void A_wait_beyond_the_schedule_names_the_coat()
    {
        JobPlan opens = Cold(Cure with { RecoatOpens = TimeSpan.FromDays(30), RecoatCloses = null }).Plan();
        Says(opens, "Schedule/" + Coat + "/bath/coat/3/acrylic-urethane-topcoat",
            "Before 'two-part acrylic urethane topcoat, coat 2' goes on after 'two-part acrylic urethane topcoat, coat 1'", " takes 1543.4 h; allowed: at most 1440 h");
        JobPlan dries = Cold(Cure with { TouchDry = TimeSpan.FromDays(40), WaterService = TimeSpan.FromDays(40), FullCure = TimeSpan.FromDays(40) }).Plan();
        Says(dries, "Schedule/" + Coat + "/dust", "Until dust no longer sticks to two-part acrylic urethane topcoat, it takes 2057.9 h", "Warm the room");
        JobPlan stands = Cold(Cure with { Induction = TimeSpan.FromDays(40), PotLife = TimeSpan.FromDays(50) }).Plan();
        Says(stands, "Schedule/" + Coat + "/long", "Mixing and spraying two-part acrylic urethane topcoat in one go takes 205", "allowed: at most 1440 h");
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: a pot life of 60 days at a factor of 4 is 60 × 4^1.1 = 275.7 days at 14 °C: no cup has to hurry")]
    public void A_pot_life_beyond_the_schedule_hurries_no_cup()
    {
        JobPlan plan = Cold(Cure with { PotLife = TimeSpan.FromDays(60), RatePerTenKelvin = 4 }).Plan();
        RefusesNoPart(plan);
        CoatRun run = plan.Runs.First(one => one.Run.Id == Coat).Run;
        Assert.True(run.Cups.IsPossible);
        Numbers.Near(60 * Math.Pow(4, 1.1), run.Cups.PotLife!.Value.TotalDays, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Contract, "an operation of a product between 90 and 100 s after its coat holds no whole minute: the two are named, no part is refused")]
    public void A_wait_without_a_whole_minute_is_told()
    {
        JobPlan plan = In(Tub.Premises.Rooms[0].Climate, OwnProducts.LampCured with
        {
            Operations = [OwnProducts.Lamp with { Wait = TimeSpan.FromSeconds(90), Within = TimeSpan.FromSeconds(100) }],
        }).Plan();
        RefusesNoPart(plan);
        Assert.Contains(plan.Objections, one => one.Kind == ObjectionKind.Schedule
            && one.ToString().Contains("at least 2 min and at most 1 min later", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(35, 95)]
    [InlineData(55, 95)]
    [InlineData(60, 90)]
    [Evidence(Basis.Independent, "by hand: dew points 34.1, 53.9 and 57.8 °C, so that no surface of at most 32 °C is 3 K above them: dry the air or cool, and nothing is warmed")]
    public void Nothing_is_warmed_beyond_its_product(double celsius, double percent)
    {
        JobPlan plan = In(Air(celsius, percent, celsius), GenericCatalogue.AcrylicUrethaneTopcoat).Plan();
        RefusesNoPart(plan);
        Assert.DoesNotContain(plan.Objections, one => one.Id == "SprayWindow/tub/warm");
        PlanObjection damp = plan.Objections.First(one => one.Id.EndsWith("/dew-point", StringComparison.Ordinal));
        Assert.Contains("Dry the air to ", damp.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Heat the surface", damp.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 28 °C and 90 % have a dew point of 26.2 °C; 29.2 °C is needed and 32 °C is the most of the product, less than 5 K above it")]
    public void A_room_is_heated_to_the_most_of_its_product()
    {
        PlanObjection warm = In(Air(28, 90, 25), GenericCatalogue.AcrylicUrethaneTopcoat).Plan().Objections.Single(one => one.Id == "SprayWindow/tub/warm");
        Assert.Contains("25 °C, 29.2 °C is needed", warm.ToString(), StringComparison.Ordinal);
        Assert.Contains("In a room at 32 °C", warm.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "a room is held at −20 to 60 °C, air and surface alike; air of −20 °C is planned and told to be cold, colder air is no climate")]
    public void Air_below_the_cure_data_is_no_climate()
    {
        Numbers.Refuses("air", () => _ = Air(-20.1, 50, 5));
        Numbers.Refuses("air", () => _ = Air(-60, 50, 5));
        JobPlan plan = In(Air(-20, 50, 5), GenericCatalogue.AcrylicUrethaneTopcoat).Plan();
        RefusesNoPart(plan);
        Assert.Contains(plan.Objections, one => one.Id == "SprayWindow/bath/acrylic-urethane-topcoat/air-cold");
    }

    [Fact]
    [Evidence(Basis.Contract, "limits that cross each other are no product")]
    public void A_product_refuses_limits_that_cross()
    {
        CoatingProduct topcoat = GenericCatalogue.AcrylicUrethaneTopcoat;
        SprayLimits limits = topcoat.SprayLimits;
        Numbers.Refuses("MinimumTemperature", () => _ = topcoat with
        {
            SprayLimits = limits with { MinimumTemperature = limits.MaximumTemperature, MaximumTemperature = limits.MinimumTemperature },
        });
        Numbers.Refuses("MinimumRelativeHumidity", () => _ = topcoat with
        {
            SprayLimits = limits with { MinimumRelativeHumidity = Ratio.FromPercent(85), MaximumRelativeHumidity = Ratio.FromPercent(40) },
        });
    }

    [Theory]
    [InlineData(18, false)]
    [InlineData(18, true)]
    [InlineData(16, false)]
    [InlineData(16, true)]
    [Evidence(Basis.Independent, "by hand: 60 h at 15 °C and 24 h at 25 °C, ln t straight against 1/T, are 45.3 h at 18 °C and 54.6 h at 16 °C, where the rule of doubling "
        + "from 25 °C says 39.0 h and 44.8 h; a room that follows a log without a change is a room that is held")]
    public void Rows_of_the_data_sheet_count_in_every_climate(double celsius, bool followed)
    {
        CureTimes warm = Cure with { WaterService = TimeSpan.FromHours(24) };
        CureTimes cold = warm with { ReferenceTemperature = Temperature.FromDegreesCelsius(15), WaterService = TimeSpan.FromHours(60) };
        RoomClimate climate = followed
            ? RoomClimate.Logged(
                new TemperatureHistory(Tub.Start.AddDays(-1), [new TemperatureSegment(TimeSpan.FromDays(2), Temperature.FromDegreesCelsius(celsius))], true),
                Temperature.FromDegreesCelsius(5), Temperature.FromDegreesCelsius(celsius))
            : Air(celsius, 40, celsius);
        JobPlan plan = In(climate, GenericCatalogue.AcrylicUrethaneTopcoat with { Cure = warm, CureTable = new CureTable([cold, warm]) }).Plan();
        double share = ((1 / 288.15) - (1 / (celsius + 273.15))) / ((1 / 288.15) - (1 / 298.15));
        double minutes = 60 * 60 * Math.Pow(24.0 / 60, share);
        Assert.InRange((plan.Handover!.Fixtures[0].CoatingReady!.Value - plan.Runs[^1].End).TotalMinutes, minutes, minutes + 1);
    }

    private static RoomClimate Air(double celsius, double percent, double surface) =>
        RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(celsius), Ratio.FromPercent(percent)), Temperature.FromDegreesCelsius(surface));

    private static Job Cold(CureTimes cure) => In(Air(14, 45, 14), GenericCatalogue.AcrylicUrethaneTopcoat with { Cure = cure });

    private static Job In(RoomClimate climate, CoatingProduct topcoat) => Tub with
    {
        Premises = Tub.Premises with { Rooms = [Tub.Premises.Rooms[0] with { Climate = climate }] },
        Fixtures = [Tub.Fixtures[0] with { Options = [] }],
        Shop = Tub.Shop with
        {
            System = new CoatingSystem(
                "changed", "generic system with another topcoat",
                [
                    SystemStep.Wipe(GenericCatalogue.SilanePromoter),
                    SystemStep.Coat(new CoatingLayer(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(30), 1, Ratio.FromPercent(10))),
                    SystemStep.Coat(new CoatingLayer(topcoat, Length.FromMicrometers(30), 2)),
                ],
                null, Source.Invented("for this test")),
        },
    };

    private static void RefusesNoPart(JobPlan plan) =>
        Assert.DoesNotContain(plan.Objections, one => one.Kind == ObjectionKind.OutOfRange || one.ToString().Contains("outside what can be computed", StringComparison.Ordinal));

    private static void Says(JobPlan plan, string id, params string[] words)
    {
        RefusesNoPart(plan);
        PlanObjection said = plan.Objections.FirstOrDefault(one => one.Id == id)
            ?? throw new Xunit.Sdk.XunitException(id + " is not among " + string.Join("; ", plan.Objections.Select(one => one.Id + ": " + one)));
        Assert.All(words, word => Assert.Contains(word, said.ToString(), StringComparison.Ordinal));
        Assert.Null(plan.Schedule);
    }
}
