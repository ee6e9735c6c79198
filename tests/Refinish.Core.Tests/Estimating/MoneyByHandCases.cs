using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Tests.Estimating;

/// <summary>The invented estimates of <c>money_by_hand.py</c>, put into this library's own inputs number by number.</summary>
internal static class MoneyByHandCases
{
    private static readonly LineCategory[] Goods = [LineCategory.Material, LineCategory.Option];

    private static readonly Dictionary<string, Func<PriceEstimate>> Cases = new()
    {
        ["yen"] = Yen,
        ["dinar"] = Dinar,
        ["franc"] = Franc,
        ["us"] = () => Us(null),
        ["us exempt"] = () => Us(new TaxExemption { Reason = "resale certificate (invented)" }),
        ["us county exempt"] = () => Us(new TaxExemption { Reason = "county's own property (invented)", Codes = ["county"] }),
        ["euro sum"] = () => Euro(TaxRounding.OnSum),
        ["euro lines"] = () => Euro(TaxRounding.PerLine),
        ["minimum kept"] = () => Small(195m, false),
        ["minimum undercut"] = () => Small(195m, true),
        ["minimum near"] = () => Small(140m, false),
        ["held"] = Held,
        ["halves"] = Halves,
    };

    public static IEnumerable<string> Names => Cases.Keys;

    public static PriceEstimate Of(string name) => Cases[name]();

    private static PriceEstimate Yen() => new(
        new PriceBook
        {
            Currency = Currency.Of("JPY"),
            LabourRate = 1850.5m,
            Burden = Ratio.FromPercent(15),
            OverheadPerHour = 350m,
            Materials = [Kit("primer", 750, 6480m), Kit("topcoat", 1000, 2450.5m)],
            ConsumablesPerFixture = 3300m,
            TravelPerTrip = 1500m,
            DisposalPerJob = 800m,
            Options = [new() { Code = "slip-floor", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 4200m, Price = 12000m }],
            TargetMargin = new Margin(Ratio.FromPercent(40)),
            Taxes = [new TaxRate { Code = "consumption", Name = "consumption tax", Rate = Ratio.FromPercent(10) }],
        },
        new EstimateRequest
        {
            Labour = new LabourEstimate([Hours("H-10", 1.75), Hours("H-20", 2.5), Hours("H-30", 0.4)]),
            Materials = [Need("primer", 1400), Need("topcoat", 2600)],
            Fixtures = 1,
            Trips = 2,
            Options = [new() { Code = "slip-floor" }],
        });

    private static PriceEstimate Dinar() => new(
        new PriceBook
        {
            Currency = Currency.Of("KWD"),
            LabourRate = 4.2505m,
            Burden = Ratio.FromPercent(8),
            Materials = [Kit("primer", 750, 9.875m), Kit("topcoat", 1000, 14.2505m)],
            ConsumablesPerFixture = 3.125m,
            TravelPerTrip = 2.5m,
            DisposalPerJob = 1.25m,
            TargetMargin = new Margin(Ratio.FromPercent(35)),
            CashStep = 0.005m,
        },
        new EstimateRequest
        {
            Labour = new LabourEstimate([Hours("H-10", 1.25), Hours("H-20", 3.3), Hours("H-30", 1.25)]),
            PaidTime = [new() { Id = "waiting", Description = "waiting on site", Time = TimeSpan.FromMinutes(45) }],
            Materials = [Need("primer", 700), Need("topcoat", 1700)],
            Fixtures = 2,
            Trips = 3,
            Extras =
            [
                new() { Id = "plumber", Category = LineCategory.Subcontract, Description = "plumber refits the waste (invented)", Quantity = 1m, Unit = LineUnit.Job, Rate = 18.75m },
                new() { Id = "hidden-rust", Category = LineCategory.Allowance, Description = "rust under the overflow (invented)", Quantity = 2.5m, Unit = LineUnit.Hour, Rate = 4.591m, UnitPrice = 7m },
            ],
            WarrantyReserve = 1.925m,
            Discount = Discount.Of(5.25m),
        });

    private static PriceEstimate Franc() => new(
        new PriceBook
        {
            Currency = Currency.Of("CHF"),
            LabourRate = 38.45m,
            Burden = Ratio.FromPercent(16),
            OverheadPerHour = 9.9m,
            Materials = [Kit("primer", 750, 62.35m), Kit("topcoat", 1000, 88.905m)],
            ConsumablesPerFixture = 27.5m,
            TravelPerTrip = 35m,
            DisposalPerJob = 18.2m,
            Options =
            [
                new() { Code = "slip-floor", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 14.8m, Price = 95m },
                new() { Code = "drain-trim", Description = "drain and overflow trim", Unit = LineUnit.Each, Cost = 21.475m },
            ],
            TargetMargin = new Margin(Ratio.FromPercent(42)),
            Taxes = [new TaxRate { Code = "vat", Name = "value added tax", Rate = Ratio.FromPercent(8.1) }],
            CashStep = 0.05m,
        },
        new EstimateRequest
        {
            Labour = new LabourEstimate([Hours("H-10", 1.5), Hours("H-20", 2.75) with { Worker = "bea", Wage = 41.3m }]),
            Materials = [Need("primer", 600), Need("topcoat", 1200)],
            Fixtures = 1,
            Trips = 2,
            Options = [new() { Code = "slip-floor" }, new() { Code = "drain-trim", Quantity = 2 }],
        });

    private static PriceEstimate Us(TaxExemption? exemption) => new(
        new PriceBook
        {
            Currency = Currency.Of("USD"),
            LabourRate = 32m,
            Burden = Ratio.FromPercent(22),
            OverheadPerHour = 6.5m,
            Materials = [Kit("primer", 750, 52.35m), Kit("topcoat", 1000, 78.99m)],
            ConsumablesPerFixture = 35m,
            TravelPerTrip = 25m,
            DisposalPerJob = 10m,
            Options =
            [
                new() { Code = "slip-floor", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 6m, Price = 75m },
                new() { Code = "drain-trim", Description = "drain and overflow trim", Unit = LineUnit.Each, Cost = 40.25m },
            ],
            TargetMargin = new Margin(Ratio.FromPercent(45)),
            Taxes =
            [
                new TaxRate { Code = "state", Name = "state sales tax", Rate = Ratio.FromPercent(6.25), Categories = Goods },
                new TaxRate { Code = "county", Name = "county sales tax", Rate = Ratio.FromPercent(1.75), Categories = Goods },
            ],
        },
        new EstimateRequest
        {
            Labour = new LabourEstimate([Hours("H-10", 1.1), Hours("H-20", 3.35)]),
            PaidTime = [new() { Id = "waiting", Description = "waiting on site", Time = TimeSpan.FromMinutes(30) }],
            Materials = [Need("primer", 327), Need("topcoat", 1490)],
            Fixtures = 1,
            Trips = 2,
            Options = [new() { Code = "slip-floor" }, new() { Code = "drain-trim" }],
            Extras =
            [
                new() { Id = "scaffold", Category = LineCategory.Equipment, Description = "hired scaffold (invented)", Quantity = 2m, Unit = LineUnit.Day, Rate = 18.75m },
                new() { Id = "plumber", Category = LineCategory.Subcontract, Description = "plumber refits the waste (invented)", Quantity = 1m, Unit = LineUnit.Job, Rate = 140m, UnitPrice = 165m },
            ],
            Discount = Discount.Of(Ratio.FromPercent(7.5)),
            Exemption = exemption,
        });

    private static PriceEstimate Euro(TaxRounding rounding) => new(
        new PriceBook
        {
            Currency = Currency.Of("EUR"),
            LabourRate = 21.5m,
            Burden = Ratio.FromPercent(21),
            Materials = [Kit("primer", 750, 44.9m), Kit("topcoat", 1000, 92.15m)],
            ConsumablesPerFixture = 23.4m,
            TravelPerTrip = 31.7m,
            DisposalPerJob = 12.6m,
            Options = [new() { Code = "slip-floor", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 9.85m, Price = 69.9m }],
            TargetMargin = new Margin(Ratio.FromPercent(38)),
            Taxes =
            [
                new TaxRate { Code = "standard", Name = "value added tax", Rate = Ratio.FromPercent(19), Categories =
                    [
                        LineCategory.Labour, LineCategory.Material, LineCategory.Consumables, LineCategory.Equipment,
                        LineCategory.Subcontract, LineCategory.Travel, LineCategory.Option,
                    ] },
                new TaxRate { Code = "reduced", Name = "value added tax, reduced", Rate = Ratio.FromPercent(7), Categories = [LineCategory.Waste, LineCategory.Allowance] },
            ],
            TaxRounding = rounding,
        },
        new EstimateRequest
        {
            Labour = new LabourEstimate([Hours("H-10", 1.2), Hours("H-20", 2.9), Hours("H-30", 0.85)]),
            Materials = [Need("primer", 500), Need("topcoat", 900)],
            Fixtures = 1,
            Options = [new() { Code = "slip-floor" }],
            Extras =
            [
                new() { Id = "plumber", Category = LineCategory.Subcontract, Description = "plumber refits the waste (invented)", Quantity = 1m, Unit = LineUnit.Job, Rate = 110.35m },
                new() { Id = "hidden-rust", Category = LineCategory.Allowance, Description = "rust under the overflow (invented)", Quantity = 1m, Unit = LineUnit.Job, Rate = 40m, UnitPrice = 55.55m },
            ],
            Discount = Discount.Of(18.25m),
        });

    private static PriceEstimate Small(decimal minimum, bool mayUndercut) => new(
        new PriceBook
        {
            Currency = Currency.Of("USD"),
            LabourRate = 30m,
            Burden = Ratio.FromPercent(22),
            OverheadOfDirectCost = Ratio.FromPercent(5),
            Materials = [Kit("filler", 200, 24.15m)],
            ConsumablesPerFixture = 8.5m,
            TravelPerTrip = 25m,
            DisposalPerJob = 2.75m,
            MinimumCharge = minimum,
            TargetMargin = new Margin(Ratio.FromPercent(45)),
            Taxes = [new TaxRate { Code = "sales", Name = "sales tax", Rate = Ratio.FromPercent(7.25), Categories = [LineCategory.Material] }],
        },
        new EstimateRequest
        {
            Labour = new LabourEstimate([Hours("H-10", 0.7)]),
            Materials = [Need("filler", 20)],
            Fixtures = 1,
            Discount = Discount.Of(30m) with { MayUndercutMinimum = mayUndercut },
        });

    private static PriceEstimate Held() => new(
        new PriceBook
        {
            Currency = Currency.Of("USD"),
            LabourRate = 32m,
            Burden = Ratio.FromPercent(22),
            Materials = [Kit("primer", 750, 52.35m), Kit("topcoat", 1000, 78.99m)],
            ConsumablesPerFixture = 35m,
            TravelPerTrip = 25m,
            DisposalPerJob = 10m,
            Options = [new() { Code = "slip-floor", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 6m, Price = 75m }],
            TargetMargin = new Margin(Ratio.FromPercent(45)),
            Taxes = [new TaxRate { Code = "sales", Name = "sales tax", Rate = Ratio.FromPercent(7.25), Categories = Goods }],
        },
        new EstimateRequest
        {
            Labour = new LabourEstimate([Hours("H-10", 1.1), Hours("H-20", 2.65)]),
            Materials = [Need("primer", 327), Need("topcoat", 900)],
            Fixtures = 1,
            Trips = 2,
            Options = [new() { Code = "slip-floor" }],
            WarrantyReserve = 11.4m,
            Discount = Discount.Of(Ratio.FromPercent(12)),
            HoldMargin = true,
        });

    private static PriceEstimate Halves() => new(
        new PriceBook
        {
            Currency = Currency.Of("EUR"),
            LabourRate = 38.71m,
            Materials = [Kit("primer", 750, 38.73m), Kit("topcoat", 1000, 72.1m)],
            ConsumablesPerFixture = 7.57m,
            TravelPerTrip = 24.05m,
            DisposalPerJob = 8.58m,
            Options = [new() { Code = "drain-trim", Description = "drain and overflow trim", Unit = LineUnit.Each, Cost = 41.26m }],
            TargetMargin = new Margin(Ratio.FromPercent(20)),
        },
        new EstimateRequest
        {
            Labour = new LabourEstimate([Hours("H-10", 2), Hours("H-20", 3.1)]),
            Materials = [Need("primer", 1100), Need("topcoat", 900)],
            Fixtures = 2,
            Trips = 2,
            Options = [new() { Code = "drain-trim" }],
            Extras = [new() { Id = "plumber", Category = LineCategory.Subcontract, Description = "plumber refits the waste (invented)", Quantity = 1m, Unit = LineUnit.Job, Rate = 90.02m }],
        });

    private static MaterialPrice Kit(string item, double millilitres, decimal price) =>
        new(item, Volume.FromMilliliters(millilitres), price);

    private static MaterialNeed Need(string item, double millilitres) => new(item, item, Volume.FromMilliliters(millilitres));

    private static LabourTask Hours(string code, double hours) => new() { Standard = new LabourStandard
    {
        Code = code,
        Description = "work " + code,
        Fixed = ThreePoint.Exactly(hours),
        Source = Source.Invented("test"),
    } };
}
