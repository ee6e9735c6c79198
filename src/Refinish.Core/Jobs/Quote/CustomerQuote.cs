using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Fixtures;

namespace Refinish.Jobs;

/// <summary>
/// A quote as the customer reads it: price by fixture with its options under it, what was added for the job, discount, each tax, total,
/// payments, validity, and from a plan the days out of use, conditions, warranty and cautions. It shows no labour, no materials, no rates
/// and no cost.
/// </summary>
/// <remarks>
/// Σ items = subtotal; subtotal − discount = net; net + Σ taxes = total; total + cash rounding = payable; Σ payments = payable; all
/// exactly. Options and extras have the prices of their lines. Everything else is divided over the fixtures: each bears its own cost and a
/// part of what is shared by the hours that its work would take alone, at one margin (<see cref="PriceByFixture"/>). Discount and taxes are
/// divided over the items that they apply to, so that with tax too Σ items = total. Amounts do not depend on the order in which fixtures
/// are listed; a share is no stand-alone price.
/// </remarks>
public sealed class CustomerQuote
{
    private static readonly Source SumOfItems = Source.Derived("sum of the items");
    private static readonly Source Agreed = Source.Supplied("discount agreed");
    private static readonly Source OfTheBook = Source.Supplied("taxes of the price book");

    private readonly QuoteDivision division;
    private readonly IReadOnlyList<SiteRoom> rooms = ValueList<SiteRoom>.Empty;

    /// <summary>Makes a quote from its parts, without what a plan adds.</summary>
    /// <param name="price">
    /// An estimate that is complete, made with the discount, the exemption and the margin of <paramref name="terms"/>.
    /// </param>
    /// <param name="fixtures">The fixtures, at least one: those that the estimate's lines name, and those that only share.</param>
    /// <param name="terms">What is agreed.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">
    /// The estimate is not complete, or was made with other terms, or names a fixture that is not listed; the list is empty or holds a
    /// fixture twice; or the stages of payment do not fit the total.
    /// </exception>
    public CustomerQuote(PriceEstimate price, IReadOnlyList<FixtureWeight> fixtures, QuoteTerms terms)
    {
        Guard.NotNull(price);
        Terms = Guard.NotNull(terms);
        ValueList<FixtureWeight> listed = Unique.Ids(Guard.List(fixtures, 1), fixture => fixture.Id, nameof(fixtures));
        if (!price.IsComplete)
        {
            throw new ArgumentException("price is not complete: " + price, nameof(price));
        }

        EstimateRequest request = price.Request;
        if (!Equals(request.Discount, terms.Discount) || !Equals(request.Exemption, terms.Exemption)
            || request.HoldMargin != terms.HoldMargin)
        {
            throw new ArgumentException("terms has another discount, exemption or margin than the estimate was made with.", nameof(terms));
        }

        if (price.Lines.FirstOrDefault(line => line.Fixture is not null && listed.All(fixture =>
            fixture.Id != line.Fixture)) is EstimateLine strange)
        {
            throw new ArgumentException("fixtures does not hold '" + strange.Fixture + "', which the line " + strange.Id + " names.",
                nameof(fixtures));
        }

        Price = price;
        Currency = price.Book.Currency;
        Name = terms.Number ?? "quote";
        Schedule = new PaymentPlan(Currency, Total, price.Book.CashStep, terms.Payments);
        if (Schedule.Faults.Count > 0)
        {
            throw new ArgumentException("terms has payments that do not fit. " + Schedule, nameof(terms));
        }

        division = new QuoteDivision(price, listed);
    }

    internal CustomerQuote(JobPlan plan)
        : this(plan.Price!, [.. plan.Planned.Select(procedure => new FixtureWeight(procedure.Fixture.Id, procedure.Fixture.Name,
            procedure.HoursAlone))], plan.Job.Terms)
    {
        Name = plan.Job.Name;
        Shop = plan.Job.Shop.Name;
        Premises = plan.Job.Premises.Name == plan.Job.Premises.Id ? null : plan.Job.Premises.Name;
        rooms = plan.Job.Premises.Rooms;
        VisitDays = new ValueList<DateTime>(plan.Schedule!.Visits.Select(visit => visit.Arrives.Date).Distinct().OrderBy(day => day));
        Handover = plan.Handover;
        Warranty = plan.Job.Shop.Warranty;
        IsEstimate = plan.Planned.Any(procedure => procedure.Fixture.Fixture is RoughFixture { IsMeasured: false });
        LeftOut = plan.Objections;
        Conditions = new ValueList<PlanCondition>(plan.Conditions.Where(condition =>
            (condition.Concerns & (Audience.Customer | Audience.Occupant)) != 0));

        // What the people in the dwelling have to do comes before what the customer has to know.
        Cautions = new ValueList<PlannedCaution>(plan.CautionsFor(Audience.Occupant).Concat(plan.CautionsFor(Audience.Customer)).Distinct());
        Deposit = plan.Job.Shop.DepositLimit is DepositLimit limit && Schedule.Payments.Count > 0 ? Schedule.Against(limit) : null;
    }

    /// <summary>Name of the job; the number of the quote where there is no job.</summary>
    public string Name { get; }

    /// <summary>Name of the shop; <see langword="null"/> without a plan.</summary>
    public string? Shop { get; }

    /// <summary>Name of the premises; <see langword="null"/> without a plan, or where they have none beside their identity.</summary>
    public string? Premises { get; }

    /// <summary>The days on which somebody of the shop comes, on the clock of the place; empty without a plan.</summary>
    public IReadOnlyList<DateTime> VisitDays { get; } = ValueList<DateTime>.Empty;

    /// <summary>
    /// Whether sizes of a fixture are still assumed, as after a telephone call: then it is an estimate that a visit has to confirm, and the
    /// sheet says so; <see langword="false"/> without a plan.
    /// </summary>
    public bool IsEstimate { get; }

    /// <summary>What is agreed: number, revision, validity, stages of payment.</summary>
    public QuoteTerms Terms { get; }

    /// <summary>The currency of all amounts.</summary>
    public Currency Currency { get; }

    /// <summary>The fixtures in the order of the job, each with its options and extras.</summary>
    public IReadOnlyList<QuotedFixture> Fixtures => division.Fixtures;

    /// <summary>
    /// What was added for the job as a whole, by id: allowances, other trades, hired equipment, options of no one fixture.
    /// </summary>
    public IReadOnlyList<QuoteItem> ForTheJob => division.ForTheJob;

    /// <summary>Every item: each fixture, what is under it, and what concerns the job as a whole.</summary>
    public IEnumerable<QuoteItem> Items => Fixtures.SelectMany(fixture => new[] { fixture.Work }.Concat(fixture.Extras)).Concat(ForTheJob);

    /// <summary>Price of all items before discount and tax.</summary>
    public decimal Subtotal => Price.Subtotal!.Value;

    /// <summary>Discount that is given; 0 when none is.</summary>
    public decimal Discount => Price.DiscountGiven!.Value;

    /// <summary>What the minimum charge takes off the discount that was asked for; 0 when nothing.</summary>
    public decimal DiscountWithheld => Price.DiscountWithheld!.Value;

    /// <summary>After the discount, before tax.</summary>
    public decimal Net => Price.Net!.Value;

    /// <summary>Each tax with what it comes to, or why the customer does not pay it.</summary>
    public IReadOnlyList<TaxAmount> Taxes => Price.Taxes;

    /// <summary>All taxes together.</summary>
    public decimal Tax => Price.Tax!.Value;

    /// <summary>Price with tax.</summary>
    public decimal Total => Price.Total!.Value;

    /// <summary>What rounding to the cash step adds or takes; 0 where none is used.</summary>
    public decimal CashRounding => Payable - Total;

    /// <summary>What is paid.</summary>
    public decimal Payable => Price.Payable!.Value;

    /// <summary>What is paid when; they add up to <see cref="Payable"/>. Empty when no stages are agreed.</summary>
    public IReadOnlyList<QuotePayment> Payments => Schedule.Payments;

    /// <summary>
    /// What is asked for before the work has begun, against <see cref="Shop.DepositLimit"/>; <see langword="null"/> without a plan, a limit
    /// or stages.
    /// </summary>
    public LimitComparison? Deposit { get; }

    /// <summary>When each fixture may be used again and what the warranty covers; <see langword="null"/> without a plan.</summary>
    public Handover? Handover { get; }

    /// <summary>The term of the warranty; <see langword="null"/> without a plan.</summary>
    public WarrantyTerms? Warranty { get; }

    /// <summary>Fixtures that are not in the price, each with the reason; empty without a plan.</summary>
    public IReadOnlyList<PlanObjection> LeftOut { get; } = ValueList<PlanObjection>.Empty;

    /// <summary>
    /// What has to be done or found out before the quote holds, without what is for the crew alone; empty without a plan.
    /// </summary>
    public IReadOnlyList<PlanCondition> Conditions { get; } = ValueList<PlanCondition>.Empty;

    /// <summary>
    /// The cautions that concern the occupants, then those that concern the customer alone; empty without a plan, which is no all-clear.
    /// </summary>
    public IReadOnlyList<PlannedCaution> Cautions { get; } = ValueList<PlannedCaution>.Empty;

    /// <summary>The quote as a sheet for the customer.</summary>
    /// <param name="system">Metric or US customary, for conditions and reasons.</param>
    /// <returns>Lines that end in a line feed.</returns>
    public string ToText(DisplayUnits system) => QuoteText.Of(this, system);

    /// <summary>
    /// How the price is divided over the fixtures, and how items make up the total and the total the payments. For the shop: it tells
    /// costs.
    /// </summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Quote for the customer", [division.ByFixture.Workings(), Schedule.Workings()], t =>
        {
            Measure money = Measure.Money(Currency);
            Amount Sum(string symbol, Func<QuoteItem, decimal> of) => Items.Select((item, i) =>
                t.Money(symbol + "_" + Figures.Fixed(i + 1, 0), of(item), money)).Aggregate((all, one) => all + one);
            Amount subtotal = t.Step("subtotal", "S", money, SumOfItems, Sum("p", item => item.Price));
            Amount net = t.Step("net price after discount", "N", money, Agreed, subtotal - t.Money("D", Discount, money));
            Amount taxes = Taxes.Aggregate(t.Money("X_0", 0, money), (all, tax) => all + t.Money("X_" + tax.Rate.Code, tax.Amount, money));
            t.Step("total with tax", "T", money, OfTheBook, net + taxes);
            return t.Step("total of the items with tax", "T_i", money, SumOfItems, Sum("g", item => item.WithTax)).ToNum();
        });

    /// <summary>Number, revision and total.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Terms + ": " + Currency.Text(Total);

    /// <summary>What people call a fixture or a room; its identity when neither has it.</summary>
    internal string NameOf(string id) => Fixtures.FirstOrDefault(fixture => fixture.Id == id)?.Name
        ?? rooms.FirstOrDefault(room => room.Id == id)?.Name
        ?? id;

    internal PriceEstimate Price { get; }

    /// <summary>Total, payable and stages.</summary>
    internal PaymentPlan Schedule { get; }
}
