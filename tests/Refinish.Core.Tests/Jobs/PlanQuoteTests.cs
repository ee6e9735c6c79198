using System;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>The quote of a whole job.</summary>
public class PlanQuoteTests
{
    private static readonly PaymentStage Rest = PaymentStage.OfRest("rest", PaymentDue.OnCompletion);

    private static PaymentStage Deposit(double percent) => PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(percent));

    private static ExtraItem Plumber(string id, string? fixture) =>
        new() { Id = id, Category = LineCategory.Subcontract, Description = "plumber (invented)", Quantity = 1, Unit = LineUnit.Job, Rate = 100m, UnitPrice = 140m, Fixture = fixture };

    [Fact]
    [Evidence(Basis.Identity, "yearly care of either option is added to what it costs a year, to the cent")]
    public void Yearly_care_goes_into_the_comparison()
    {
        ReplacementOffer offer = InventedJobs.Replacing;
        ReplacementOffer cared = offer with { RefinishYearlyCost = 40m, Replacement = offer.Replacement with { YearlyCost = 25m } };
        RefinishOrReplace plain = (InventedJobs.OccupiedHouse() with { Replacement = offer }).Plan().Comparison!;
        RefinishOrReplace care = (InventedJobs.OccupiedHouse() with { Replacement = cared }).Plan().Comparison!;
        Assert.Equal(plain.RefinishPerYear + 40m, care.RefinishPerYear);
        Assert.Equal(plain.ReplacePerYear + 25m, care.ReplacePerYear);
        Numbers.Refuses("RefinishYearlyCost", () => _ = offer with { RefinishYearlyCost = -1m });
    }

    [Fact]
    [Evidence(Basis.Contract, "a plan's quote is its price by fixture, with terms, handover, conditions and the cautions of customer and occupant by reference")]
    public void A_plan_has_a_quote()
    {
        JobPlan plan = (InventedJobs.OccupiedHouse() with { Terms = new QuoteTerms { Number = "Q-9", Payments = [Deposit(30), Rest] } }).Plan();
        CustomerQuote quote = plan.Quote!;
        Assert.Same(quote, plan.Quote);
        Assert.Equal(plan.Price!.Total, quote.Total);
        Assert.Equal(["fixture/tub", "option/drain-trim/tub", "option/slip-floor/tub"], quote.Items.Select(item => item.Id));
        Assert.Equal(plan.Price.Net, quote.Fixtures.Single().Price);
        Assert.Same(plan.Handover, quote.Handover);
        Assert.Equal(plan.Conditions.Where(condition => condition.Concerns != Audience.Crew), quote.Conditions);
        Assert.NotEmpty(quote.Cautions);
        Assert.All(quote.Cautions, caution => Assert.Contains(caution, plan.Cautions));
        Assert.All(quote.Cautions, caution => Assert.NotEqual(Audience.None, caution.Caution.Concerns & (Audience.Customer | Audience.Occupant)));
        Assert.Null(quote.Deposit);
        string text = quote.ToText(DisplayUnits.Si);
        Assert.StartsWith(plan.Job.Shop.Name + "\noccupied: Q-9\n", text, StringComparison.Ordinal);
        Assert.Equal(plan.Schedule!.Visits.Select(visit => visit.Arrives.Date).Distinct().Count(), quote.VisitDays.Count);
        Assert.Contains("We come on " + quote.VisitDays[0].ToString("ddd yyyy-MM-dd", CultureInfo.InvariantCulture), text, StringComparison.Ordinal);
        Assert.Contains("water may run from ", text, StringComparison.Ordinal);
        Assert.Contains("Warranty of 5 years, until ", text, StringComparison.Ordinal);
        foreach (PlannedCaution caution in quote.Cautions)
        {
            Assert.Contains("! " + caution.Caution, text, StringComparison.Ordinal);
        }

        Numbers.CanBeWritten(quote.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "assumed sizes make an estimate: the sheet says so and asks for no money; a mix-up of units makes no quote at all")]
    public void Sizes_that_are_assumed_or_doubtful_are_no_quote()
    {
        Job job = InventedJobs.OccupiedHouse() with { Terms = new QuoteTerms { Number = "Q-9", Payments = [Deposit(30), Rest] } };
        FixtureJob rough = job.Fixtures[0] with { Fixture = RoughFixture.RecessedBathtub(Length.FromInches(60), Length.FromInches(30)) };
        CustomerQuote estimate = (job with { Fixtures = [rough] }).Plan().Quote!;
        Assert.True(estimate.IsEstimate);
        Assert.False(job.Plan().Quote!.IsEstimate);
        string text = estimate.ToText(DisplayUnits.Si);
        Assert.Contains("ESTIMATE, not yet a quote", text, StringComparison.Ordinal);
        Assert.DoesNotContain("pay on", text, StringComparison.Ordinal);

        // Walls of 30, 60 and 30 in by 60 in, typed as centimetres.
        TiledSurround walls = new(InventedJobs.Surround.Measurements with
        {
            Walls = [.. new[] { 30, 60, 30 }.Select(length => new WallRun(Length.FromCentimeters(length), Length.FromCentimeters(60)))], Openings = [],
        });
        JobPlan mixed = (job with { Fixtures = [job.Fixtures[0], rough with { Id = "walls", Survey = new Survey { Material = FixtureMaterial.CeramicTile, Defects = [] }, Options = [], Fixture = walls }] }).Plan();
        Assert.Contains(mixed.Doubts, doubt => doubt.IsUnitMixUp);
        Assert.NotNull(mixed.Price?.Total);
        Assert.Null(mixed.Quote);
    }

    [Fact]
    [Evidence(Basis.Contract, "the quote of an alternative says which one it is")]
    public void An_alternative_says_its_name()
    {
        Job job = InventedJobs.OccupiedHouse();
        JobAlternative plain = new() { Id = "plain", Name = "without grains", Fixtures = [job.Fixtures[0] with { Options = [] }] };
        AlternativePlan one = new QuoteAlternatives((job with { Alternatives = [plain] }).Plan()).Alternatives.Single();
        Assert.Contains("occupied, without grains", one.Quote!.ToText(DisplayUnits.Si), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "what is for the crew alone stays in the plan; what protects the people of the dwelling stands on the sheet, right after prices and times, leaving it first")]
    public void The_sheet_speaks_to_the_customer()
    {
        foreach (Job job in (Job[])[InventedJobs.OccupiedHouse(), InventedJobs.ColdHouse(), InventedJobs.Rental()])
        {
            JobPlan plan = job.Plan();
            if (plan.Quote is not CustomerQuote quote)
            {
                continue;
            }

            string text = quote.ToText(DisplayUnits.Si);
            foreach (string word in (string[])["mask", "goes in before", "leave the heat on", "clean the gun", "262.11", "stands by", "offered a slip"])
            {
                Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase);
            }

            // Whatever the catalogue says to customers or occupants is there.
            Assert.Equal(
                plan.Cautions.Where(caution => (caution.Caution.Concerns & (Audience.Customer | Audience.Occupant)) != 0).Select(caution => caution.Caution.Code).OrderBy(code => code, StringComparer.Ordinal),
                quote.Cautions.Select(caution => caution.Caution.Code).OrderBy(code => code, StringComparer.Ordinal));
            int last = text.IndexOf("Keep each room as warm as planned", StringComparison.Ordinal);
            foreach (Caution caution in (Caution[])[Cautions.Occupants, Cautions.IgnitionSources, Cautions.DetectorsAndSprinklers, Cautions.CuringVapour])
            {
                int at = text.IndexOf(caution.Sentence, StringComparison.Ordinal);
                Assert.InRange(at, last, text.IndexOf("Warranty of ", StringComparison.Ordinal));
            }

            Assert.Equal(Cautions.Occupants, quote.Cautions[0].Caution);
            foreach (PlanCondition air in plan.Conditions.Where(condition => condition.Id.EndsWith("/re-entry", StringComparison.Ordinal)))
            {
                Assert.Contains(air, quote.Conditions);
                Assert.InRange(text.IndexOf(air.Sentence(DisplayUnits.Si), StringComparison.Ordinal), last, text.IndexOf("Warranty of ", StringComparison.Ordinal));
            }

            Assert.All(plan.Conditions.Where(condition => condition.Id.EndsWith("/night", StringComparison.Ordinal)), night => Assert.Equal(Audience.Crew, night.Concerns));
            Assert.Contains("cared for as the handover says", text, StringComparison.Ordinal);
            Assert.DoesNotContain("as above", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "lead and asbestos are everybody's, a hole that may be found is the customer's, silicone is the crew's")]
    public void Conditions_say_whom_they_concern()
    {
        Job job = InventedJobs.OccupiedHouse();
        Survey survey = job.Fixtures[0].Survey with { YearBuilt = 1950, LeadTest = LeadTest.NotTested, Defects = [new SiliconeResidue(Length.FromMeters(1)), new RustSpot(Length.FromMillimeters(10))] };
        JobPlan plan = (job with { Fixtures = [job.Fixtures[0] with { Survey = survey }] }).Plan();
        Audience Of(string rule) => plan.Conditions.First(condition => condition.Reason?.RuleCode == rule).Concerns;
        Assert.Equal(Audience.Crew, Of("S-13"));
        Assert.Equal(Audience.Crew | Audience.Customer, Of("S-27"));
        Assert.Equal(Audience.Crew | Audience.Customer | Audience.Occupant, Of("S-19"));
        Assert.All(plan.Conditions, condition => Assert.NotEqual(Audience.None, condition.Concerns));
    }

    [Fact]
    [Evidence(Basis.Contract, "the clock that the times are on is said once, with its offset")]
    public void The_clock_is_said_once()
    {
        string text = InventedJobs.OccupiedHouse().Plan().Quote!.ToText(DisplayUnits.Si);
        Assert.Equal(2, text.Split(new[] { "UTC+01:00" }, StringSplitOptions.None).Length);
        Assert.Contains("Times are on the clock of the place, UTC+01:00.\n", text, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "days out of use run from the first operation on the fixture to the hour of water, a begun day counted")]
    public void Days_out_of_use_are_counted_up()
    {
        Handover handover = InventedJobs.OccupiedHouse().Plan().Handover!;
        FixtureHandover tub = handover.Fixtures[0];
        Assert.InRange((tub.WaterFrom!.Value - tub.Begun).TotalDays, tub.DaysOutOfUse!.Value - 1, tub.DaysOutOfUse.Value);
        Assert.InRange((handover.WaterFrom!.Value - handover.Begun).TotalDays, handover.DaysOutOfUse!.Value - 1, handover.DaysOutOfUse.Value);
        Assert.True(handover.Begun <= tub.Begun && tub.Begun < tub.HandedOver);
    }

    [Fact]
    [Evidence(Basis.Contract, "a fixture that is left out is named with its reason and has no price; what was added for it goes with it")]
    public void A_fixture_left_out_is_told()
    {
        JobPlan plan = (InventedJobs.Rental() with { Extras = [Plumber("for-the-pan", "pan"), Plumber("for-the-vessel", "vessel"), Plumber("for-all", null)] }).Plan();
        CustomerQuote quote = plan.Quote!;
        Assert.Equal(["counter", "vessel"], quote.Fixtures.Select(fixture => fixture.Id));
        Assert.Equal(["extra/for-the-vessel/vessel"], quote.Fixtures[1].Extras.Select(item => item.Id));
        Assert.Equal(["extra/for-all"], quote.ForTheJob.Select(item => item.Id));
        Assert.Equal("pan", Assert.Single(quote.LeftOut).About);
        Assert.Contains("Not in this price:\n  " + quote.LeftOut[0].Sentence(DisplayUnits.Si) + "\n", quote.ToText(DisplayUnits.Si), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "no quote without a price or while something stands in the way; the objections say why")]
    public void No_quote_while_something_stands_in_the_way()
    {
        Job job = InventedJobs.OccupiedHouse();
        JobPlan unpriced = (job with { Shop = job.Shop with { Prices = job.Shop.Prices with { TravelPerTrip = null } } }).Plan();
        Assert.Null(unpriced.Quote);
        Assert.Contains(unpriced.Objections, objection => objection.Kind == ObjectionKind.Price);
        JobPlan refused = (job with { Fixtures = [job.Fixtures[0] with { Survey = job.Fixtures[0].Survey with { Defects = [new Perforation(Length.FromMillimeters(40))] } }] }).Plan();
        Assert.Null(refused.Quote);
        Assert.All(refused.Objections, objection => Assert.Equal(ObjectionKind.FixtureLeftOut, objection.Kind));
    }

    [Fact]
    [Evidence(Basis.Contract, "payments that do not fit are objections of the plan by stage, never an exception; there is a price and no quote")]
    public void Payments_that_do_not_fit_are_objected_to()
    {
        QuoteTerms terms = new() { Payments = [PaymentStage.OfAmount("first", PaymentDue.OnAcceptance, 100.005m), PaymentStage.OfAmount("second", PaymentDue.AtStart, 99_999m), Rest] };
        JobPlan plan = (InventedJobs.OccupiedHouse() with { Terms = terms }).Plan();
        Assert.Equal(["Payment/first", "Payment/second"], plan.Objections.Select(objection => objection.Id));
        Assert.Contains("multiples of 0.01", plan.Objections[0].Sentence(DisplayUnits.Si), StringComparison.Ordinal);
        Assert.Null(plan.Quote);
        Assert.NotNull(plan.Price!.Total);
    }

    [Fact]
    [Evidence(Basis.Contract, "a limit that the shop states for deposits stands in the way when it is exceeded and is told when it is kept")]
    public void A_deposit_beyond_the_limit_of_the_shop_is_objected_to()
    {
        Job job = InventedJobs.OccupiedHouse();
        job = job with { Shop = job.Shop with { DepositLimit = new DepositLimit(Ratio.FromPercent(10), 1000m, Source.Invented("test")) } };
        JobPlan much = (job with { Terms = new QuoteTerms { Payments = [Deposit(11), Rest] } }).Plan();
        PlanObjection objection = Assert.Single(much.Objections);
        Assert.Equal("Payment/occupied/deposit", objection.Id);
        Assert.Equal(ComparisonOutcome.Beyond, objection.Comparison!.Outcome);
        CustomerQuote kept = (job with { Terms = new QuoteTerms { Payments = [Deposit(10), Rest] } }).Plan().Quote!;
        Assert.Equal(ComparisonOutcome.Within, kept.Deposit!.Outcome);
        Assert.Null(job.Plan().Quote!.Deposit);
    }

    [Fact]
    [Evidence(Basis.Contract, "an extra that names a fixture or a room which is not there is objected to, not ignored")]
    public void An_extra_names_what_is_there()
    {
        JobPlan plan = (InventedJobs.OccupiedHouse() with { Extras = [Plumber("a", "bath-tub"), Plumber("b", null) with { Room = "cellar" }] }).Plan();
        Assert.Equal(["Input/a/extra-fixture", "Input/b/extra-room"], plan.Objections.Select(objection => objection.Id));
    }
}
