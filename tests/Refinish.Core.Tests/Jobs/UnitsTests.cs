using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Air;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class UnitsTests
{
    [Fact]
    [Evidence(Basis.Identity, "the same tub, room, climate, gun, cups and kits read in millimetres, metres, °C and litres and in inches, "
        + "feet, °F and US gallons: the same plan to 1e-9, the same ids, the same cents")]
    public void Units_do_not_matter()
    {
        JobPlan metric = Made(Length.FromMeters(1), Volume.FromLiters(1), celsius => Temperature.FromDegreesCelsius(celsius)).Plan();
        JobPlan customary = Made(Length.FromInches(1 / 0.0254), Volume.FromUsGallons(1 / 3.785411784), celsius =>
            Temperature.FromDegreesFahrenheit((celsius * 9 / 5) + 32)).Plan();
        Assert.Empty(metric.Objections);
        Assert.Equal(metric.Operations.Select(operation => operation.Id), customary.Operations.Select(operation => operation.Id));
        Assert.Equal(metric.Schedule!.Operations.Select(operation => operation.ToString()),
            customary.Schedule!.Operations.Select(operation =>
            operation.ToString()));
        Assert.Equal(metric.Price!.Lines.Select(line => line.Id + line.Price.ToString(CultureInfo.InvariantCulture)),
            customary.Price!.Lines.Select(line => line.Id + line.Price.ToString(CultureInfo.InvariantCulture)));
        WorkingStep[] expected = [.. metric.Workings().AllSteps()];
        WorkingStep[] actual = [.. customary.Workings().AllSteps()];
        Assert.Equal(expected.Select(step => step.Name), actual.Select(step => step.Name));
        Assert.True(expected.Length > 200);

        // Where the worst window of a dose lies is flat, so that its place is known less well than the dose; both its ends shift together.
        Assert.Empty(expected.Zip(actual)
            .Where(pair => !pair.First.Name.StartsWith("time integral", StringComparison.Ordinal)
                && Math.Abs(pair.First.Value - pair.Second.Value) > 1e-9 * Math.Max(1e-3, Math.Abs(pair.First.Value)))
            .Select(pair => pair.First.Name + ": " + pair.First.Value.ToString("R", CultureInfo.InvariantCulture) + " and "
                + pair.Second.Value.ToString("R", CultureInfo.InvariantCulture)));
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [Evidence(Basis.Contract, "plan, derivation and handover read the same under every culture")]
    public void Cultures_do_not_matter(string culture)
    {
        static string Read()
        {
            JobPlan plan = InventedJobs.OccupiedHouse().Plan();
            return plan.Workings().ToPlainText(DisplayUnits.UsCustomary) + plan.Handover!.ToText(DisplayUnits.Si) + string.Join("\n",
                plan.Operations) + string.Join("\n", plan.Price!.Lines);
        }

        CultureInfo before = CultureInfo.CurrentCulture;
        string invariant = Read();
        CultureInfo.CurrentCulture = new CultureInfo(culture);
        try
        {
            Assert.Equal(invariant, Read());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    // Every figure is written in metres, litres and °C, and handed in as the caller's unit.
    private static Job Made(Length metre, Volume litre, Func<double, Temperature> temperature)
    {
        Length M(double metres) => new(metres * (double)metre.Value, metre.Unit);
        Volume L(double litres) => new(litres * (double)litre.Value, litre.Unit);
        Temperature T(double celsius) => temperature(celsius);
        Job job = InventedJobs.OccupiedHouse();
        return job with
        {
            Shop = job.Shop with
            {
                Gun = job.Shop.Gun with { FluidRate = L(0.16) / TimeSpan.FromMinutes(1) },
                Losses = new ApplicationLosses { Residue = Ratio.FromPercent(8), HoldUp = L(0.015) },
                Cups = new CupRules { Cups = [new MixingCup(L(0.6), L(0.005), L(0.05))] },
                Prices = job.Shop.Prices with { Materials = [.. job.Shop.Prices.Materials.Select(price => new MaterialPrice(price.Item,
                    L(price.Size.In(LineUnit.Litre)), price.Price))] },
            },
            Premises = job.Premises with
            {
                Rooms =
                [
                    new SiteRoom
                    {
                        Id = "bath", Room = new Room { Length = M(2.5), Width = M(1.6), Height = M(2.4) },
                            Exhaust = new Exhaust { LabelFlow = L(450) / TimeSpan.FromSeconds(1) },
                        Climate = RoomClimate.Held(new Refinish.Climate.MoistAir(T(22.5), Ratio.FromPercent(45)), T(20.5)),
                    },
                ],
            },
            Fixtures =
            [
                job.Fixtures[0] with
                {
                    Fixture = new RecessedBathtub(new RecessedBathtubMeasurements
                    {
                        RimLength = M(1.346), RimWidth = M(0.597), RimCornerRadius = M(0.152), FloorLength = M(1.118),
                            FloorWidth = M(0.495), FloorCornerRadius = M(0.127),
                        Depth = M(0.337), HeadRun = M(0.178), FootRun = M(0.05), CoveRadius = M(0.064), OverallLength = M(1.524),
                            OverallWidth = M(0.762),
                        ApronHeight = M(0.368), DrainDiameter = M(0.051), OverflowDiameter = M(0.076),
                    }),
                    Survey = new Survey { Material = FixtureMaterial.EnamelledSteel, Defects = [new Chip(M(0.018), M(0.0012)),
                        new RustSpot(M(0.02))], YearBuilt = 1995 },
                },
            ],
        };
    }
}
