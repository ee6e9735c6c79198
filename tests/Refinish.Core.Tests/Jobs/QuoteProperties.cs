using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>What holds for the quote of every job: random jobs with random terms, taxes, extras and currencies.</summary>
public class QuoteProperties
{
    private static readonly string[] Codes = ["USD", "JPY", "KWD", "CHF"];

    private static Job Make(int seed)
    {
        Random random = new(seed);
        Job job = RandomJobs.Tame(seed);
        PriceBook book = job.Shop.Prices;
        Currency currency = Currency.Of(Codes[random.Next(4)]);
        string? first = random.Next(2) == 0 ? job.Fixtures[0].Id : null;
        return job with
        {
            Shop = job.Shop with
            {
                Warranty = job.Shop.Warranty,
                Prices = book with
                {
                    Currency = currency,
                    CashStep = currency.SmallestAmount * (random.Next(3) switch { 0 => 0, 1 => 5, _ => 100 }),
                    TaxRounding = random.Next(2) == 0 ? TaxRounding.OnSum : TaxRounding.PerLine,
                    Taxes =
                    [
                        new() { Code = "all", Name = "on all", Rate = Ratio.FromPercent(random.Next(0, 25)) },
                        new() { Code = "some", Name = "on goods and options", Rate = Ratio.FromPercent(7.25), Categories = [LineCategory.Material, LineCategory.Option, LineCategory.Allowance] },
                    ],
                },
            },
            Extras =
            [
                new ExtraItem { Id = "plumber", Category = LineCategory.Subcontract, Description = "plumber", Quantity = 1, Unit = LineUnit.Job, Rate = random.Next(1, 300), Fixture = first },
                new ExtraItem { Id = "rust", Category = LineCategory.Allowance, Description = "hidden rust", Quantity = 2, Unit = LineUnit.Hour, Rate = 20m, UnitPrice = random.Next(0, 60) },
            ],
            Terms = new QuoteTerms
            {
                Discount = random.Next(3) switch
                {
                    0 => null,
                    1 => Discount.Of(Ratio.FromPercent(random.Next(0, 30))) with { MayUndercutMinimum = random.Next(2) == 0 },
                    _ => Discount.Of((decimal)random.Next(0, 80)),
                },
                Exemption = random.Next(4) == 0 ? new TaxExemption { Reason = "exempt", Codes = random.Next(2) == 0 ? null : ["some"] } : null,
                HoldMargin = random.Next(4) == 0,
                PricesShown = random.Next(2) == 0 ? PricesShown.Net : PricesShown.WithTax,
                Payments = random.Next(3) == 0 ? [] :
                [
                    PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(random.Next(1, 60))),
                    PaymentStage.OfShare("start", PaymentDue.AtStart, Ratio.FromPercent(random.Next(1, 40))), PaymentStage.OfRest("rest", PaymentDue.OnCompletion),
                ],
            },
        };
    }

    private static string? Breach(Job job)
    {
        JobPlan plan = job.Plan();
        if (plan.Quote is not CustomerQuote quote)
        {
            bool priced = plan.Price?.Total is not null && plan.Objections.All(objection => objection.Kind == ObjectionKind.FixtureLeftOut);
            return priced ? "there is a price and nothing in its way, and no quote" : null;
        }

        QuoteItem[] items = [.. quote.Items];
        return quote.Total != plan.Price!.Total || quote.Payable != plan.Price.Payable ? "the quote is not the price"
            : items.Sum(item => item.Price) != quote.Subtotal ? "items are not the subtotal"
            : items.Sum(item => item.Discount) != quote.Discount || quote.Subtotal - quote.Discount != quote.Net ? "discounts are not the discount"
            : items.Sum(item => item.Tax) != quote.Tax || quote.Taxes.Sum(tax => tax.Amount) != quote.Tax ? "taxes are not the tax"
            : items.Sum(item => item.WithTax) != quote.Total ? "items with tax are not the total"
            : quote.Total + quote.CashRounding != quote.Payable ? "rounding is not the difference"
            : quote.Payments.Count != job.Terms.Payments.Count ? "a stage has no payment"
            : quote.Payments.Count > 0 && quote.Payments.Sum(payment => payment.Amount) != quote.Payable ? "payments are not what is paid"
            : items.Any(item => item.Price < 0 || item.Discount < 0 || item.Tax < 0 || item.WithTax < 0) || quote.Payments.Any(payment => payment.Amount < 0) ? "a part is negative"
            : items.Any(item => !quote.Currency.Fits(item.Price) || !quote.Currency.Fits(item.Discount) || !quote.Currency.Fits(item.Tax)) ? "a part has too many decimals"
            : items.Select(item => item.Id).Distinct().Count() != items.Length ? "an id stands twice"
            : items.Any(item => item.Id != Expected(item)) ? "an id is not formed from ids"
            : quote.Fixtures.Select(fixture => fixture.Id).SequenceEqual(plan.Planned.Select(procedure => procedure.Fixture.Id)) ? null : "fixtures are not those planned";
    }

    private static string Expected(QuoteItem item) =>
        (item.Kind == QuoteItemKind.Fixture ? "fixture/" + item.Fixture : (item.Kind == QuoteItemKind.Option ? "option/" : "extra/") + item.Code + (item.Fixture is null ? string.Empty : "/" + item.Fixture));

    [Fact]
    [Evidence(Basis.Identity, "items, discount, taxes, rounding and payments add up exactly, nothing is negative, ids are unique: 100 random jobs in four currencies")]
    public void Every_quote_adds_up() => JobProperties.Holds(100, Make, Breach);

    [Fact]
    [Evidence(Basis.Identity, "the quote's derivation gives its numbers: random jobs")]
    public void Every_quote_shows_its_work()
    {
        int quotes = 0;
        for (int seed = 0; seed < 20; seed++)
        {
            if (Make(seed).Plan().Quote is CustomerQuote quote)
            {
                quotes++;
                Numbers.CanBeWritten(quote.Workings());
            }
        }

        Assert.True(quotes > 8, quotes + " of 20 jobs have a quote");
    }

    [Fact]
    [Evidence(Basis.Identity, "extras, taxes and host codes listed in another order: the same keys and amounts; fixtures in another order: the same keys, random jobs")]
    public void Keys_do_not_depend_on_order()
    {
        for (int seed = 0; seed < 25; seed++)
        {
            Job job = Make(seed);
            if (job.Plan().Quote is not CustomerQuote quote)
            {
                continue;
            }

            Job turned = job with
            {
                Extras = [.. Enumerable.Reverse(job.Extras)],
                Shop = job.Shop with { Prices = job.Shop.Prices with { Taxes = [.. Enumerable.Reverse(job.Shop.Prices.Taxes)] } },
            };
            Assert.Equal(quote.Total, turned.Plan().Quote!.Total);
            Assert.Equal(Keys(quote), Keys(turned.Plan().Quote!));
            if ((job with { Fixtures = [.. Enumerable.Reverse(job.Fixtures)] }).Plan().Quote is CustomerQuote reversed)
            {
                Assert.Equal(Keys(quote), Keys(reversed));
            }
        }

        static IEnumerable<string> Keys(CustomerQuote quote) => quote.Items.Select(item => item.Id).OrderBy(id => id, StringComparer.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Identity, "an alternative that changes nothing costs nothing, one without the last fixture what the job without it costs: random jobs")]
    public void Alternatives_are_consistent()
    {
        for (int seed = 0; seed < 20; seed++)
        {
            Job job = Make(seed);
            if (job.Fixtures.Count < 2)
            {
                continue;
            }

            string last = job.Fixtures[job.Fixtures.Count - 1].Id;
            QuoteAlternatives all = new((job with { Alternatives = [new JobAlternative { Id = "same" }, new JobAlternative { Id = "less", LeftOut = [last] }] }).Plan());
            Assert.Equal(all.Quote?.Total, all.Alternatives[0].Total);
            Job less = job with { Fixtures = [.. job.Fixtures.Take(job.Fixtures.Count - 1)], Extras = [.. job.Extras.Where(extra => extra.Fixture != last)] };
            Assert.Equal(less.Plan().Quote?.Total, all.Alternatives[1].Total);
        }
    }
}
