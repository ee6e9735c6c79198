using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures;

/// <summary>A quote as the customer may see it: price by fixture with its options, discount, each tax, total, what is paid.</summary>
/// <remarks>
/// It shows no cost, no rates and no materials. Prices of items stand net or with tax as the terms of the quote say; with tax, the discount
/// and the taxes in them are told below. When a plan has no quote it says what stands in the way.
/// </remarks>
/// <example><code>
/// PriceBook book = new() { Currency = Currency.Of("USD"), LabourRate = 30m, TravelPerTrip = 25m, DisposalPerJob = 10m, ConsumablesPerFixture = 35m, TargetMargin = new(Ratio.FromPercent(45)) };
/// PriceEstimate price = new(book, new EstimateRequest { Labour = new([new LabourTask { Standard = LabourStandards.SetUp, Units = 1 }]),
///     Materials = [], Fixtures = 1 });
/// string svg = new QuotePicture(new CustomerQuote(price, [new FixtureWeight("tub", "bathtub", 3)], QuoteTerms.None)).ToSvg();
/// </code></example>
public sealed class QuotePicture : Picture
{
    private const string Heading = "What it costs";
    private readonly CustomerQuote? quote;
    private readonly JobPlan? plan;

    /// <summary>Pictures a quote.</summary>
    /// <param name="quote">The quote.</param>
    /// <exception cref="ArgumentNullException"><paramref name="quote"/> is missing.</exception>
    public QuotePicture(CustomerQuote quote)
        : base(Heading, Given.NotNull(quote, nameof(quote)).Name) =>
        this.quote = quote;

    /// <summary>Pictures the quote of a plan.</summary>
    /// <param name="plan">The plan; without a quote, the picture says what stands in the way.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    public QuotePicture(JobPlan plan)
        : base(Heading, Given.NotNull(plan, nameof(plan)).Job.Name)
    {
        this.plan = plan;
        quote = plan.Quote;
    }

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units) => quote is null
        ? "There is no quote; what stands in the way: " + Figures.Fixed(plan!.Objections.Count, 0) + ". " + string.Join(" ",
            Objections.Of(plan, units, hasResult: false))
        : (Terms(quote) is { Length: > 0 } terms ? Begun(terms) + ". " : string.Empty)
            + "The price item by item, as bars that begin where the one before ends. "
            + string.Join("; ", Steps(quote).Select(step => (step.IsSum ? "together " : string.Empty) + step.Name + " "
                + quote.Currency.Number(step.Amount)))
            + ". In " + quote.Currency + "." + string.Concat(Notes(quote).Select(note => " " + note))
            + string.Concat(quote.LeftOut.Select(objection => " Not in this price: " + objection.Sentence(units)));

    private protected override void Draw(Page page)
    {
        if (quote is null)
        {
            page.Paragraph("There is no quote.");
            page.Warnings(Objections.Of(plan, page.Units, hasResult: false));

            return;
        }

        if (Terms(quote) is { Length: > 0 } terms)
        {
            page.Note(terms);
        }

        page.Paragraph(quote.Currency.Text(quote.Total) + (quote.Tax > 0 ? " with tax" : string.Empty), bold: true);
        foreach (PlanObjection objection in quote.LeftOut)
        {
            page.Warning("Not in this price: " + objection.Sentence(page.Units));
        }

        PriceBars.Draw(page, [.. Steps(quote)], quote.Currency.Number);
        foreach (string note in Notes(quote))
        {
            page.Note(note);
        }
    }

    // Number, revision and validity, without the number where the quote is called by it.
    private static string Terms(CustomerQuote quote) => string.Join(", ", new[]
    {
        quote.Terms.Number == quote.Name ? null : quote.Terms.Number,
        quote.Terms.Revision is null ? null : "revision " + quote.Terms.Revision,
        quote.Terms.ValidUntil is DateTime last ? "holds until " + last.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : null,
    }.Where(part => part is not null));

    private static string Begun(string words) => char.ToUpperInvariant(words[0]) + words.Substring(1);

    private static IEnumerable<PriceStep> Steps(CustomerQuote quote)
    {
        bool withTax = quote.Terms.PricesShown == PricesShown.WithTax;
        decimal at = 0;
        foreach (QuoteItem item in quote.Items)
        {
            yield return new PriceStep(
                item.Label, at, at += item.As(quote.Terms.PricesShown), item.Kind == QuoteItemKind.Fixture ? PriceStepKind.Cost
                    : PriceStepKind.Earned)
            {
                IsUnder = item.Kind != QuoteItemKind.Fixture && item.Fixture is not null,
                IsApart = quote.ForTheJob.Count > 0 && ReferenceEquals(item, quote.ForTheJob[0]),
            };
        }

        bool apart = true;
        PriceStep Sum(string name)
        {
            PriceStep sum = new(name, 0, at, PriceStepKind.Sum) { IsApart = apart };
            apart = false;
            return sum;
        }

        if (!withTax && quote.Discount != 0)
        {
            yield return Sum("subtotal");
            yield return new PriceStep(quote.Terms.Discount!.Reason, at, at -= quote.Discount, PriceStepKind.Less);
        }

        if (!withTax && quote.Taxes.Count > 0)
        {
            yield return Sum("net");
            foreach (TaxAmount tax in quote.Taxes.Where(tax => tax.Amount != 0))
            {
                yield return new PriceStep(tax.Rate.ToString(), at, at += tax.Amount, PriceStepKind.PassedOn);
            }
        }

        yield return Sum("total");
        if (quote.CashRounding != 0)
        {
            yield return new PriceStep("rounding to coins", at, at += quote.CashRounding, quote.CashRounding > 0 ? PriceStepKind.PassedOn
                : PriceStepKind.Less);
            yield return Sum("to be paid");
        }
    }

    private static IEnumerable<string> Notes(CustomerQuote quote)
    {
        if (quote.Terms.PricesShown == PricesShown.WithTax)
        {
            yield return "Each price is with tax" + (quote.Discount == 0 ? "." : " and after the discount of "
                + quote.Currency.Text(quote.Discount) + " before tax.");
            foreach (TaxAmount tax in quote.Taxes.Where(tax => tax.Amount != 0))
            {
                yield return "In the total: " + tax.Rate + ", " + quote.Currency.Text(tax.Amount) + ".";
            }
        }

        foreach (TaxAmount tax in quote.Taxes.Where(tax => tax.Exemption is not null))
        {
            yield return tax.Rate + ": not charged, " + tax.Exemption + ".";
        }

        foreach (QuotePayment payment in quote.Payments)
        {
            yield return "To pay " + payment.Stage.When + ": " + quote.Currency.Text(payment.Amount) + " (" + payment.Stage.Name + ").";
        }
    }
}
