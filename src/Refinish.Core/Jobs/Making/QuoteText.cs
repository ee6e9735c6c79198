using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>A quote as a sheet for the customer.</summary>
internal sealed class QuoteText
{
    private const int Width = 48;

    private readonly CustomerQuote quote;
    private readonly DisplayUnits system;
    private readonly StringBuilder text = new();

    private QuoteText(CustomerQuote quote, DisplayUnits system)
    {
        this.quote = quote;
        this.system = system;
    }

    public static string Of(CustomerQuote quote, DisplayUnits system)
    {
        QuoteText sheet = new(quote, system);
        sheet.Prices();
        sheet.Payments();
        sheet.Times();
        sheet.Rest();
        return sheet.text.ToString();
    }

    private static string Clock(System.DateTimeOffset? time) =>
        time?.ToString("ddd yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) ?? "an hour that cannot be said";

    private void Prices()
    {
        bool withTax = quote.Terms.PricesShown == PricesShown.WithTax;
        Line(quote.Name == quote.Terms.Number ? quote.Terms.ToString() : quote.Name + ": " + quote.Terms);
        Line("amounts in " + quote.Currency.Code + (withTax ? ", each with its discount and tax" : ", before discount and tax"));
        foreach (QuotedFixture fixture in quote.Fixtures)
        {
            Amount(fixture.Name, fixture.Work.As(quote.Terms.PricesShown));
            foreach (QuoteItem item in fixture.Extras)
            {
                Item("  ", item);
            }
        }

        foreach (QuoteItem item in quote.ForTheJob)
        {
            Item(string.Empty, item);
        }

        if (withTax)
        {
            Amount("total with tax", quote.Total);
            if (quote.Discount != 0)
            {
                Amount("  " + Reason() + " in it, before tax", -quote.Discount);
            }

            Taxes("  ", " in it");
        }
        else
        {
            Amount("subtotal", quote.Subtotal);
            if (quote.Discount != 0)
            {
                Amount(Reason(), -quote.Discount);
                Amount("net", quote.Net);
            }

            Taxes(string.Empty, string.Empty);
            Amount("total with tax", quote.Total);
        }

        if (quote.CashRounding != 0)
        {
            Amount("rounding to coins", quote.CashRounding);
            Amount("to be paid", quote.Payable);
        }

        if (quote.DiscountWithheld != 0)
        {
            Line("The minimum charge takes " + quote.Currency.Text(quote.DiscountWithheld) + " off the discount.");
        }
    }

    private string Reason() => quote.Terms.Discount?.Reason ?? "discount";

    private void Taxes(string indent, string end)
    {
        foreach (TaxAmount tax in quote.Taxes)
        {
            if (tax.Exemption is null)
            {
                Amount(indent + tax.Rate + end, tax.Amount);
            }
            else
            {
                Line(indent + tax.Rate + ": not charged, " + tax.Exemption);
            }
        }
    }

    private void Item(string indent, QuoteItem item)
    {
        string many = item.Quantity == 1 ? string.Empty : Figures.Significant((double)item.Quantity, 12) + " " + item.Unit.Symbol() + " ";
        Amount(indent + many + item.Description, item.As(quote.Terms.PricesShown));
    }

    private void Payments()
    {
        foreach (QuotePayment payment in quote.Payments)
        {
            Amount("pay " + payment.Stage.When + ": " + payment.Stage.Name, payment.Amount);
        }
    }

    private void Times()
    {
        if (quote.Handover is not Handover handover)
        {
            return;
        }

        foreach (FixtureHandover fixture in handover.Fixtures)
        {
            Line(fixture.Procedure.Fixture.Name + ": out of use from " + Clock(fixture.Begun) + "; water may run from "
                + Clock(fixture.WaterFrom) + ", not before");
        }

        Line("Warranty of " + quote.Warranty + ", until " + handover.WarrantyUntil.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
            + " if the work is done as planned. " + string.Join(" ", handover.Covers) + " Not covered, unless the contract says otherwise: "
            + string.Join(" ", handover.Exclusions));
    }

    private void Rest()
    {
        Section("Not in this price", quote.LeftOut.Select(objection => objection.Sentence(system)));
        Section("Before this holds", quote.Conditions.Select(condition =>
            condition.About + ": " + condition.Sentence(system) + ". " + Sentences.Begun(Sentences.Closed(condition.Remedy))));
        foreach (PlannedCaution caution in quote.Cautions)
        {
            Line("! " + caution);
        }
    }

    private void Section(string title, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length > 0)
        {
            Line(title + ":");
            foreach (string line in all)
            {
                Line("  " + line);
            }
        }
    }

    private void Amount(string what, decimal amount) => Line(what.PadRight(Width) + " " + quote.Currency.Number(amount).PadLeft(12));

    private void Line(string line) => text.Append(line).Append('\n');
}
