using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// What a schedule costs: labour of the operations, paid time beyond them, trips, materials as bought, options and warranty, priced by the
/// shop's book.
/// </summary>
public sealed class JobCosts
{
    private static readonly Source OwnRisk = Source.Derived("every fixture carries its own risk");

    /// <summary>Prices a schedule.</summary>
    /// <param name="schedule">A schedule that was found.</param>
    /// <exception cref="ArgumentNullException"><paramref name="schedule"/> is missing.</exception>
    public JobCosts(CrewSchedule schedule) : this(schedule, ValueList<OpenedKit>.Empty, ValueList<ExtraItem>.Empty, QuoteTerms.None)
    {
    }

    /// <summary>Prices a schedule with what is in stock, what comes beside it and what was agreed.</summary>
    /// <param name="schedule">A schedule that was found.</param>
    /// <param name="stock">Opened kits that may be used up.</param>
    /// <param name="extras">Hired equipment, other trades, allowances.</param>
    /// <param name="terms">Discount, exemption from tax, and whether the margin is held.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">The schedule was not found, or an entry of a list is missing.</exception>
    public JobCosts(CrewSchedule schedule, IReadOnlyList<OpenedKit> stock, IReadOnlyList<ExtraItem> extras, QuoteTerms terms)
    {
        Guard.NotNull(terms);
        Schedule = Guard.NotNull(schedule);
        if (!schedule.IsPossible)
        {
            throw new ArgumentException("schedule was not found, so that there is nothing to price.", nameof(schedule));
        }

        Shop shop = schedule.Work.Shop;
        Draws = new ValueList<StockDraw>(DrawsOf(schedule, Guard.List(stock)));
        Reserve = new WarrantyReserve(shop.Warranty.Life, shop.Warranty.Years, shop.Warranty.CostPerClaim, shop.Warranty.ClaimProbability,
            shop.Prices.Currency, shop.Warranty.DiscountRate);
        ReserveForAll = All().Value;
        CrewLabour labour = new(schedule);
        Overtime = new CrewOvertime(schedule);
        Request = new EstimateRequest
        {
            Labour = new LabourEstimate(labour.Tasks(), schedule.Work.Premises.Difficulty, 1),
            PaidTime = [.. labour.PaidTime(), .. Overtime.Premiums],
            Materials = Needs(schedule),
            Fixtures = schedule.Work.Procedures.Count,
            Trips = schedule.Trips,
            Options = [.. schedule.Work.Procedures.SelectMany(procedure => procedure.Fixture.Options.Select(option =>
                new OptionOrder { Code = option.Code, Quantity = option.Quantity, Fixture = procedure.Fixture.Id }))],
            Extras = Guard.List(extras),
            WarrantyReserve = ReserveForAll,
            Discount = terms.Discount,
            Exemption = terms.Exemption,
            HoldMargin = terms.HoldMargin,
        };
        Price = new PriceEstimate(shop.Prices, Request);
    }

    /// <summary>The schedule that is priced.</summary>
    public CrewSchedule Schedule { get; }

    /// <summary>What is taken out of opened kits, product by product.</summary>
    public IReadOnlyList<StockDraw> Draws { get; }

    /// <summary>Overtime of the crew by the shop's rule, from the hours of this job alone.</summary>
    public CrewOvertime Overtime { get; }

    /// <summary>Warranty reserve of one fixture.</summary>
    public WarrantyReserve Reserve { get; }

    /// <summary>Warranty reserve of all planned fixtures, each carrying its own risk.</summary>
    public decimal ReserveForAll { get; }

    /// <summary>Hours, trips, materials and options as the price estimate takes them.</summary>
    public EstimateRequest Request { get; }

    /// <summary>Cost and price, or what the price book lacks.</summary>
    public PriceEstimate Price { get; }

    /// <summary>How hours, materials and price follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Costs",
        [
            .. Draws.Select(draw => draw.Workings()), Reserve.Workings(), Request.Labour.Workings(),
            .. Overtime.People.Select(person => person.Workings()), Price.Workings(),
        ],
        t => All(t).ToNum());

    /// <summary>The price.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Price.ToString();

    // Leftovers are counted on the day of the first run of their product.
    private static IEnumerable<StockDraw> DrawsOf(CrewSchedule schedule, ValueList<OpenedKit> stock)
    {
        if (stock.Count == 0)
        {
            yield break;
        }

        foreach (IGrouping<string, ScheduledRun> product in schedule.Runs.GroupBy(run => run.Run.Layer.Product.Id, StringComparer.Ordinal))
        {
            CoatingProduct one = product.First().Run.Layer.Product;
            OpenedKit[] kits = [.. stock.Where(kit => kit.Product.Equals(one) && kit.Opened <= product.First().Start)];
            if (kits.Length > 0)
            {
                yield return new StockDraw(one, Volume.FromCubicMeters(product.Sum(Mixed)), product.First().Start, kits);
            }
        }
    }

    private static double Mixed(ScheduledRun run) => run.Cups.Mixed.CubicMeters / (1 + run.Run.Layer.Reducer.DecimalFractions);

    private List<MaterialNeed> Needs(CrewSchedule schedule)
    {
        List<MaterialNeed> needs = [];
        foreach (ScheduledRun run in schedule.Runs)
        {
            CoatingProduct product = run.Run.Layer.Product;
            double mixed = Mixed(run);
            Add(needs, product.Id, product.Name, mixed, product.MixedDensity);
            if (product.Reducer is CoatingComponent reducer && run.Run.Layer.Reducer.DecimalFractions > 0)
            {
                Add(needs, reducer.Id, reducer.Name, run.Cups.Mixed.CubicMeters - mixed, reducer.Density);
            }
        }

        foreach (StockDraw draw in Draws)
        {
            Add(needs, draw.Product.Id, draw.Product.Name, -draw.Covered.CubicMeters, draw.Product.MixedDensity);
        }

        needs.AddRange(schedule.Work.Operations.SelectMany(operation => operation.Materials));
        needs = MaterialNeed.Joined(needs);
        needs.RemoveAll(need => need.Amount.Si <= 0);
        return needs;
    }

    private static void Add(List<MaterialNeed> needs, string item, string name, double volume, Density density) =>
        needs.Add(new MaterialNeed(item, name, Volume.FromCubicMeters(volume), density.KilogramsPerCubicMeter));

    private Amount All(Trace? t = null) => t.Step("warranty reserve of all planned fixtures", "R", Measure.Money(Reserve.Currency), OwnRisk,
        t.Money("R_1", Reserve.Reserve, Measure.Money(Reserve.Currency)) * t.Money("n", Schedule.Work.Procedures.Count, Measure.Number));
}
