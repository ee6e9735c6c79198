using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>A quote as a sheet for the customer.</summary>
internal sealed class QuoteText(CustomerQuote quote, DisplayUnits system)
{
    private const int Width = 48;

    private readonly TextSheet text = new();

    private string Total => quote.Tax == 0 ? "total" : "total with tax";

    public static string Of(CustomerQuote quote, DisplayUnits system)
    {
        QuoteText sheet = new(quote, system);
        sheet.Prices();
        sheet.Payments();
        sheet.Times();
        sheet.Occupants();
        sheet.Warranty();
        sheet.Rest();
        return sheet.text.ToString();
    }

    private static bool ForOccupants(PlannedCaution caution) => caution.Caution.Concerns.HasFlag(Audience.Occupant);

    private static bool ForOccupants(PlanCondition condition) => condition.Concerns.HasFlag(Audience.Occupant);

    // Where the clocks change while the fixtures are out of use, both are said.
    private static string Zones(Handover handover) => string.Join(", then ", handover.Fixtures
        .SelectMany(fixture => new[] { (DateTimeOffset?)fixture.Begun, fixture.WaterFrom })
        .Where(time => time is not null).OrderBy(time => time).Select(time => Zone(time!.Value.Offset)).Distinct());

    private static string Zone(TimeSpan offset) =>
        "UTC" + (offset < TimeSpan.Zero ? "-" : "+") + offset.ToString("hh\\:mm", CultureInfo.InvariantCulture);

    private static IEnumerable<string> Wrapped(string what)
    {
        string indent = new(' ', what.Length - what.TrimStart(' ').Length);
        string line = indent;
        bool isEmpty = true;
        foreach (string word in what.Split([' '], StringSplitOptions.RemoveEmptyEntries))
        {
            string rest = word;
            if (!isEmpty && line.Length + 1 + rest.Length > Width)
            {
                yield return line;
                line = indent + "  ";
                isEmpty = true;
            }

            while (line.Length + rest.Length > Width)
            {
                int part = Width - line.Length;
                part -= char.IsHighSurrogate(rest[part - 1]) ? 1 : 0;
                string head = rest.Substring(0, part);
                yield return line + head;
                rest = rest.Substring(part);
                line = indent + "  ";
            }

            line += (isEmpty ? string.Empty : " ") + rest;
            isEmpty = false;
        }

        yield return line;
    }

    private void Prices()
    {
        bool withTax = quote.Terms.PricesShown == PricesShown.WithTax;
        if (quote.Shop is string shop)
        {
            Line(shop);
        }

        string said = quote.Terms.Said;
        Line(quote.Name == quote.Terms.Number ? said : quote.Name + (said.Length > 0 ? ": " + said : string.Empty));
        if (quote.Premises is string place && quote.Name.IndexOf(place, StringComparison.Ordinal) < 0)
        {
            Line("at " + place);
        }

        if (quote.IsEstimate)
        {
            Line("ESTIMATE, not yet a quote: some sizes are assumed.");
            Line("The price can be promised once they are measured.");
        }

        Line("amounts in " + quote.Currency.Code + Items(withTax));
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
            Amount(Total, quote.Total);
            if (quote.Discount != 0)
            {
                Amount("  " + Reason() + " in it, before tax", -quote.Discount);
            }

            Taxes("  ", " in it");
        }
        else
        {
            if (quote.Discount != 0 || quote.Taxes.Count > 0)
            {
                Amount("subtotal", quote.Subtotal);
            }

            if (quote.Discount != 0)
            {
                Amount(Reason(), -quote.Discount);
                Amount("net", quote.Net);
            }

            Taxes(string.Empty, string.Empty);
            Amount(Total, quote.Total);
        }

        if (quote.CashRounding != 0)
        {
            Amount("rounding to coins", quote.CashRounding);
            Amount("to be paid", quote.Payable);
        }

        if (quote.Fixtures.Count > 1)
        {
            Line("Each of these prices is a part of the whole job:");
            Line("one fixture alone would be priced anew.");
        }

        if (quote.DiscountWithheld != 0)
        {
            Line("The minimum charge takes " + quote.Currency.Text(quote.DiscountWithheld) + " off the discount.");
        }
    }

    // Of the items alone: total, payments and what is written under the items are what they are called.
    private string Items(bool withTax)
    {
        string between = quote.Discount != 0 && quote.Tax != 0 ? "discount and tax" : quote.Discount != 0 ? "discount" : "tax";
        return quote.Discount == 0 && quote.Tax == 0 ? string.Empty
            : withTax ? "; each item with its " + between : "; items before " + between;
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

    private void Item(string indent, QuoteItem item) => Amount(indent + item.Label, item.As(quote.Terms.PricesShown));

    private void Payments()
    {
        if (quote.IsEstimate)
        {
            // Nobody pays on a guess.
            return;
        }

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

        Line("We come on " + string.Join(", ", quote.VisitDays.Select(day => day.ToString("ddd yyyy-MM-dd", CultureInfo.InvariantCulture)))
            + ".");
        Line("Times are on the clock of the place, " + Zones(handover) + ".");
        foreach (FixtureHandover fixture in handover.Fixtures)
        {
            Line(fixture.Procedure.Fixture.Name + ": out of use from " + TextSheet.Clock(fixture.Begun) + "; water may run from "
                + TextSheet.Clock(fixture.WaterFrom) + ", not before");
        }

        Line("Keep each room as warm as planned until then: colder, everything takes longer.");
    }

    private void Occupants()
    {
        Section("For everybody who lives there", quote.Cautions.Where(ForOccupants).Select(caution => "! " + caution)
            .Concat(quote.Conditions.Where(ForOccupants).Select(Condition)));
    }

    private void Warranty()
    {
        if (quote.Handover is not Handover handover)
        {
            return;
        }

        Line("Warranty of " + quote.Warranty + ", until " + handover.WarrantyUntil.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
            + " if the work is done as planned. " + string.Join(" ", handover.Covers) + " Not covered, unless the contract says otherwise: "
            + string.Join(" ", handover.Exclusions));
    }

    private void Rest()
    {
        Section("Not in this price", quote.LeftOut.Select(objection => objection.Sentence(system)));
        Section("Before this holds", quote.Conditions.Where(condition => !ForOccupants(condition)).Select(Condition));
        foreach (PlannedCaution caution in quote.Cautions.Where(caution => !ForOccupants(caution)))
        {
            Line("! " + caution);
        }
    }

    private string Condition(PlanCondition condition) => condition.In(system, quote.NameOf(condition.About));

    private void Section(string title, IEnumerable<string> lines) => text.Section(title, [.. lines]);

    // A name that is too long goes on below itself, so that the amounts stay in their column.
    private void Amount(string what, decimal amount)
    {
        string[] lines = [.. Wrapped(what)];
        foreach (string line in lines.Take(lines.Length - 1))
        {
            Line(line);
        }

        Line(lines[lines.Length - 1].PadRight(Width) + " " + quote.Currency.Number(amount).PadLeft(12));
    }

    private void Line(string line) => text.Line(line);
}
