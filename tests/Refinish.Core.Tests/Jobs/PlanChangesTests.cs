using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>
/// Two quotes whose figures were written down by hand: a margin of 40 % of the price, so that a price is its cost / 0.6, and 10 % of tax.
/// Every number is invented.
/// </summary>
public class PlanChangesTests
{
    private static readonly DateTimeOffset Monday = new(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1));

    // 2 h at 30 = 60, sold at 100; 3 quarts at 40 = 120, sold at 200; a trip at 30, sold at 50; 10 % of 350 is 35.
    private static readonly LineFigures Hours = Line("labour/L-10/tub", LineCategory.Labour, "set up", 2, "h", 30, 60, 100) with { Fixture = "tub", Item = "labour/L-10" };
    private static readonly LineFigures Quarts = Line("material/topcoat/946.352946", LineCategory.Material, "topcoat", 3, "kit", 40, 120, 200);
    private static readonly LineFigures Trip = Line("travel", LineCategory.Travel, "travel", 1, "trip", 30, 30, 50);
    private static readonly LineFigures Tax = Line("tax/vat", LineCategory.Tax, "value added tax", 350, string.Empty, 0.10m, 0, 35);

    private static readonly PlanFigures Before = Sum(new PlanFigures { Job = "quote", Currency = "USD", Trips = 1, Lines = [Hours, Quarts, Trip, Tax] });

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: one gallon at 138 for three quarts at 40 costs 18 more, sells for 30 more, and is taxed 3 more")]
    public void Three_quarts_became_a_gallon()
    {
        LineFigures gallon = Line("material/topcoat/3785.411784", LineCategory.Material, "topcoat", 1, "kit", 138, 138, 230);
        PlanChanges changes = PlanChanges.Between(Before, Sum(Before with { Lines = [Tax with { Quantity = 380, Price = 38 }, gallon, Trip, Hours] }), []);
        Assert.Equal((33m, 18m), (changes.Total, changes.Cost));
        Assert.Equal(["material/topcoat", "tax/vat"], changes.Changes.Select(change => change.Key));
        PlanChange kits = changes.Changes[0];
        Assert.Equal((ChangeSubject.Material, ChangeKind.Changed, ChangeCause.Kits, 30m, 18m), (kits.Subject, kits.Kind, kits.Cause, kits.Price, kits.Cost));
        Assert.Equal([(null, 1m), (3m, null)], kits.Lines.Select(line => (line.Before?.Quantity, line.After?.Quantity)));
        Assert.Equal("Topcoat: 3 × 1 US qt became 1 × 1 US gal; price +30.00 USD (cost +18.00 USD).", kits.Sentence(DisplayUnits.UsCustomary));
        Assert.Equal("Topcoat: 3 × 946.4 mL became 1 × 3.785 L; price +30.00 USD (cost +18.00 USD).", kits.Sentence(DisplayUnits.Si));
        Assert.Equal("Value added tax: on another price; price +3.00 USD.", changes.Changes[1].Sentence(DisplayUnits.Si));
        Assert.Equal([("work", 30m), ("tax/vat", 3m), ("total", 0m)],
            changes.For(LineReader.Customer).Changes.Select(change => (change.Key, change.Price)));
    }

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: half an hour more at 30 costs 15, sells for 25; a second trip costs 30, sells for 50; tax on 75 is 7.50")]
    public void Hours_and_a_visit_more()
    {
        PlanChanges changes = PlanChanges.Between(Before, Sum(Before with
        {
            Trips = 2,
            Lines = [Hours with { Quantity = 2.5m, Cost = 75, Price = 125 }, Quarts, Trip with { Quantity = 2, Cost = 60, Price = 100 }, Tax with { Quantity = 425, Price = 42.5m }],
        }), []);
        Assert.Equal((82.5m, 45m, 1), (changes.Total, changes.Cost, changes.Trips));
        Assert.Equal(["visits", "labour/L-10/tub", "tax/vat"], changes.Changes.Select(change => change.Key));
        Assert.Equal((1m, 2m), (changes.Changes[0].QuantityBefore, changes.Changes[0].QuantityAfter));
        Assert.Equal("Visits: 1 became 2; price +50.00 USD (cost +30.00 USD).", changes.Changes[0].ToString());
        Assert.Equal(TimeSpan.FromHours(0.5), changes.Changes[1].Time);
        Assert.Equal("Set up (tub): 2 h became 2.5 h; price +25.00 USD (cost +15.00 USD).", changes.Changes[1].ToString());
        Assert.Equal("Set up (tub): 2 h became 2.5 h; price +25.00 USD.", changes.Changes[1].Sentence(DisplayUnits.Si, LineReader.Customer));
        Assert.Equal(ChangeCause.Quantity, changes.Changes[1].Cause);
    }

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: 10 % off 350 is 35 before tax, so the tax falls by 3.50; swapped, both come back")]
    public void A_discount_is_one_change_and_goes_both_ways()
    {
        LineFigures discount = Line("discount", LineCategory.Discount, "regular customer", 350, string.Empty, -0.1m, 0, -35);
        PlanFigures less = Sum(Before with { Lines = [Hours, Quarts, Trip, discount, Tax with { Quantity = 315, Price = 31.5m }] });
        PlanChanges given = PlanChanges.Between(Before, less, []);
        PlanChanges taken = PlanChanges.Between(less, Before, []);
        Assert.Equal([("discount", ChangeKind.Added, -35m), ("tax/vat", ChangeKind.Changed, -3.5m)], given.Changes.Select(change => (change.Key, change.Kind, change.Price)));
        Assert.Equal([("discount", ChangeKind.Removed, 35m), ("tax/vat", ChangeKind.Changed, 3.5m)], taken.Changes.Select(change => (change.Key, change.Kind, change.Price)));
        Assert.Equal("Discount given; price -35.00 USD.", given.Changes[0].ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: the wage rises from 30 to 33 over two tasks of 2 h and 1 h: 9 more of cost in one change")]
    public void A_rate_that_moves_every_hour_is_one_change()
    {
        LineFigures other = Line("labour/L-20/tub", LineCategory.Labour, "mask", 1, "h", 30, 30, 50);
        PlanFigures before = Sum(Before with { Lines = [Hours, other, Trip] });
        PlanFigures after = Sum(before with { Lines = [Hours with { Rate = 33, Cost = 66, Price = 110 }, other with { Rate = 33, Cost = 33, Price = 55 }, Trip] });
        PlanChange change = Assert.Single(PlanChanges.Between(before, after, []).Changes);
        Assert.Equal((ChangeSubject.LabourRate, 9m, 15m, 30m, 33m), (change.Subject, change.Cost, change.Price, change.RateBefore, change.RateAfter));
        Assert.Equal("Rate of an hour: 30.00 USD became 33.00 USD; price +15.00 USD (cost +9.00 USD).", change.ToString());
        Assert.Equal(change.Key, Assert.Single(PlanChanges.Between(after, before, []).Changes).Key);
    }

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: with a minimum charge of 400 the two lines carry 200 each, without it 150 and 50; nothing else moved")]
    public void What_lines_carry_is_one_change_with_its_cause()
    {
        PlanFigures free = Sum(new PlanFigures { Job = "quote", Currency = "USD", Lines = [Hours with { Price = 150 }, Trip with { Price = 50 }] });
        PlanFigures least = Sum(free with { MinimumChargeApplied = true, Lines = [Trip with { Price = 200 }, Hours with { Price = 200 }] });
        PlanChange change = Assert.Single(PlanChanges.Between(free, least, []).Changes);
        Assert.Equal((ChangeSubject.SharedCosts, ChangeCause.MinimumCharge, 200m, 0m), (change.Subject, change.Cause, change.Price, change.Cost));
        Assert.StartsWith("The minimum charge decides", change.ToString(), StringComparison.Ordinal);
        Assert.Equal(ChangeCause.SharedCosts, Assert.Single(PlanChanges.Between(free, Sum(free with { Lines = [Hours with { Price = 160 }, Trip with { Price = 50 }] }), []).Changes).Cause);
    }

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: the sink's hours and its option go with it, 20 + 85 sold; the tub stays")]
    public void A_struck_fixture_takes_its_lines_along()
    {
        LineFigures sink = Line("labour/L-10/sink", LineCategory.Labour, "set up", 0.4m, "h", 30, 12, 20) with { Fixture = "sink", Item = "labour/L-10" };
        LineFigures trim = Line("option/trim/sink", LineCategory.Option, "new trim", 1, "set", 42, 42, 85) with { Fixture = "sink", Item = "option/trim", IsPriceFixed = true };
        PlanFigures both = Sum(Before with { Lines = [Hours, sink, trim, Trip], Fixtures = [new FixtureFigures { Id = "tub" }, new FixtureFigures { Id = "sink", Name = "the sink" }] });
        PlanFigures tub = Sum(both with { Lines = [Hours, Trip], Fixtures = [both.Fixtures[0]] });
        PlanChange struck = Assert.Single(PlanChanges.Between(both, tub, []).Changes);
        Assert.Equal(("fixture/sink", ChangeKind.Removed, -105m, -54m, TimeSpan.FromMinutes(-24)), (struck.Key, struck.Kind, struck.Price, struck.Cost, struck.Time));
        Assert.Equal("The sink: struck; price -105.00 USD (cost -54.00 USD).", struck.ToString());
        PlanChange declined = Assert.Single(PlanChanges.Between(both, Sum(both with { Lines = [Hours, sink, Trip] }), []).Changes);
        Assert.Equal("New trim (the sink): gone; price -85.00 USD (cost -42.00 USD).", declined.ToString());
        PlanChange dearer = Assert.Single(PlanChanges.Between(both, Sum(both with { Lines = [Hours, sink, Trip, trim with { Price = 90 }] }), []).Changes);
        Assert.Equal((ChangeSubject.Option, 5m, 0m), (dearer.Subject, dearer.Price, dearer.Cost));
    }

    [Fact]
    [Evidence(Basis.Independent, "dates by hand: everything a day later is one change; an end that comes three hours later still is a second")]
    public void Dates_that_move_with_the_start_are_one_change()
    {
        PlanFigures monday = Days(Monday, 6);
        PlanFigures tuesday = Days(Monday.AddDays(1), 6);
        PlanChange start = Assert.Single(PlanChanges.Between(monday, tuesday, []).Changes);
        Assert.Equal((ChangeSubject.Start, TimeSpan.FromDays(1)), (start.Subject, start.Time));
        Assert.Equal("Start: 2027-03-01 08:00 became 2027-03-02 08:00, 1 day later.", start.ToString());
        Assert.Equal([("start", 24.0), ("end", 27.0), ("water/tub", 27.0)], PlanChanges.Between(monday, Days(Monday.AddDays(1), 9), [])
            .Changes.OrderBy(change => change.Time).ThenBy(change => change.Key).Select(change => (change.Key, change.Time.TotalHours)));

        static PlanFigures Days(DateTimeOffset start, int hours) => new()
        {
            Job = "quote",
            Visits = [new VisitFigures { Worker = "ada", Arrives = start, Leaves = start.AddHours(hours) }],
            Fixtures = [new FixtureFigures { Id = "tub", WaterFrom = start.AddHours(hours + 48) }],
        };
    }

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: 3 and 23.5 hours are told in hours, 27 hours in days, 8832 hours are 368 days")]
    public void Long_times_are_told_in_days()
    {
        Assert.Equal(["3 h", "23.5 h", "1.1 days", "368 days"], new[] { 3, 23.5, 27, 8832 }.Select(hours => Moved(hours).Split(',')[1].Trim().Replace(" later.", string.Empty)));

        static string Moved(double hours) => Assert.Single(PlanChanges.Between(Starting(0), Starting(hours), []).Changes).ToString();
        static PlanFigures Starting(double later) => new()
        {
            Job = "quote", Visits = [new VisitFigures { Worker = "ada", Arrives = Monday.AddHours(later), Leaves = Monday.AddHours(later + 6) }],
        };
    }

    [Fact]
    [Evidence(Basis.Contract, "one input and one result take no s")]
    public void One_is_not_many()
    {
        PlanFigures dearer = Before with { Total = 400 };
        Assert.Equal("385.00 USD became 400.00 USD, 1 input and 1 result changed", PlanChanges.Between(Before, dearer, [new ValueChange { Path = "$.a", Before = "1", After = "2" }]).ToString());
        Assert.Equal("385.00 USD became 400.00 USD, 0 inputs and 1 result changed", PlanChanges.Between(Before, dearer, []).ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "an objection, the lost price and a refusal come before any amount; conditions and cautions come last")]
    public void What_stands_in_the_way_comes_first()
    {
        PlanRemark fan = new("Air/bath", "bath", "The fan is too weak.");
        PlanFigures stopped = Before with { Total = null, Cost = null, Currency = null, Lines = [], Objections = [fan], Cautions = [new PlanRemark("C-1", string.Empty, "Solvent burns.")] };
        PlanChanges changes = PlanChanges.Between(Before, stopped, []);
        Assert.Equal(["price", "objection/Air/bath", "caution/C-1"], changes.Changes.Select(change => change.Key));
        Assert.Equal(["There is no price any more; it was 385.00 USD.", "Stands in the way now: The fan is too weak.", "New caution: Solvent burns."],
            changes.Sentences(DisplayUnits.Si));
        Assert.Null(changes.Total);
        PlanChanges refused = PlanChanges.Refused(Before, [new PlanRemark("$.job.shop.guns", "$.job.shop.guns", "guns is 0; allowed: at least 1.")]);
        Assert.Equal(385m, refused.Before.Total);
        Assert.Equal("Today's library refuses the input: guns is 0; allowed: at least 1.", Assert.Single(refused.Changes).ToString());
        Assert.Throws<ArgumentException>(() => PlanChanges.Refused(Before, []));
    }

    [Fact]
    [Evidence(Basis.Contract, "amounts of two currencies are not compared")]
    public void Another_currency_is_told_and_nothing_is_added_up()
    {
        PlanChanges changes = PlanChanges.Between(Before, Before with { Currency = "EUR" }, []);
        Assert.Equal((ChangeSubject.Currency, null), (Assert.Single(changes.Changes).Subject, changes.Total));
        Assert.Equal("385.00 USD became 385.00 EUR; amounts of two currencies are not compared.", changes.Changes[0].ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "stored figures that somebody changed need not add up; what no line tells is a change of its own")]
    public void What_no_line_tells_is_told()
    {
        PlanChange rest = Assert.Single(PlanChanges.Between(Before, Before with { Total = 400 }, []).Changes);
        Assert.Equal((ChangeSubject.Remainder, 15m), (rest.Subject, rest.Price));
    }

    [Fact]
    [Evidence(Basis.Contract, "figures refuse what they cannot be")]
    public void Bad_figures_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new PlanFigures { Job = string.Empty });
        Assert.Throws<ArgumentException>(() => new LineFigures { Id = " " });
        Assert.Throws<ArgumentException>(() => new PlanRemark(string.Empty, string.Empty, "x"));
        Assert.Throws<ArgumentException>(() => new ValueChange { Path = string.Empty });
        Assert.Throws<ArgumentNullException>(() => PlanChanges.Between((PlanFigures)null!, Before, []));
        Assert.Throws<ArgumentNullException>(() => PlanChanges.Between(null!, (JobPlan)null!));
    }

    [Fact]
    [Evidence(Basis.Contract, "a value with its place; a difference only between numbers of one unit")]
    public void A_value_tells_its_place_and_its_numbers()
    {
        ValueChange wage = new() { Path = "$.shop.prices.labourRate", Before = "26", After = "28", NumberBefore = 26, NumberAfter = 28 };
        Assert.Equal(("shop.prices.labourRate: 26 became 28", 2.0), (wage.ToString(), wage.Difference));
        Assert.Null((wage with { UnitBefore = "mm", UnitAfter = "in" }).Difference);
        Assert.Equal((ChangeKind.Added, ChangeKind.Removed, ChangeKind.Changed),
            (new ValueChange { Path = "$.a", After = "1" }.Kind, new ValueChange { Path = "$.a", Before = "1" }.Kind, new ValueChange { Path = "$.a" }.Kind));
    }

    private static LineFigures Line(string id, LineCategory category, string what, decimal quantity, string unit, decimal rate, decimal cost, decimal price) => new()
    {
        Id = id, Category = category, Description = what, Quantity = quantity, Unit = unit, Rate = rate, Cost = cost, Price = price,
    };

    private static PlanFigures Sum(PlanFigures figures) => figures with { Total = figures.Lines.Sum(line => line.Price), Cost = figures.Lines.Sum(line => line.Cost) };
}
