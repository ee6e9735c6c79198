using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>
/// The lines of an estimate as a customer reads them: options and extras keep their prices; all other prices together are divided over the
/// fixtures by their own cost and by what they weigh. Discount and taxes are divided over what they apply to. Every division is in whole
/// minor units, in the order of ids, so that it does not depend on the order in which fixtures are listed.
/// </summary>
internal sealed class QuoteDivision
{
    private const string ExtraPrefix = "extra/";
    private const string Consumables = "consumables";

    private readonly PriceEstimate price;
    private readonly FixtureWeight[] fixtures;
    private readonly List<EstimateLine> work = [];
    private readonly List<EstimateLine> beside = [];

    public QuoteDivision(PriceEstimate price, IReadOnlyList<FixtureWeight> listed)
    {
        this.price = price;
        fixtures = [.. listed.OrderBy(fixture => fixture.Id, StringComparer.Ordinal)];
        foreach (EstimateLine line in price.Lines.Where(line => line.Category is not (LineCategory.Discount or LineCategory.Tax)))
        {
            (IsBeside(line) ? beside : work).Add(line);
        }

        beside.Sort(static (one, other) => Order(one, other));
        FixtureCost[] own =
        [
            .. fixtures.Select(fixture => new FixtureCost(fixture.Id, fixture.Name, Direct.Sum(line => line.Cost * Part(line, fixture.Id)),
                fixture.Weight)),
        ];
        ByFixture = new PriceByFixture(work.Sum(line => line.Price), own, Direct.Sum(line => line.Cost * SharedPart(line)),
            price.Book.Currency);
        Divide(listed);
    }

    /// <summary>The refinishing itself by fixture, by id.</summary>
    public PriceByFixture ByFixture { get; }

    /// <summary>The fixtures as listed.</summary>
    public IReadOnlyList<QuotedFixture> Fixtures { get; private set; } = ValueList<QuotedFixture>.Empty;

    /// <summary>What concerns the job as a whole.</summary>
    public IReadOnlyList<QuoteItem> ForTheJob { get; private set; } = ValueList<QuoteItem>.Empty;

    private decimal Step => price.Book.Currency.SmallestAmount;

    private static bool IsBeside(EstimateLine line) =>
        line.Category == LineCategory.Option || line.Item.StartsWith(ExtraPrefix, StringComparison.Ordinal);

    private static int Order(EstimateLine one, EstimateLine other)
    {
        bool isOption = one.Category == LineCategory.Option;
        return isOption == (other.Category == LineCategory.Option) ? string.CompareOrdinal(one.Id, other.Id) : isOption ? -1 : 1;
    }

    private static QuoteItem Item(EstimateLine line)
    {
        bool isOption = line.Category == LineCategory.Option;
        return new QuoteItem(line.Id, isOption ? QuoteItemKind.Option : QuoteItemKind.Extra, line.Code, line.Description, line.Quantity,
            line.Unit)
        {
            Fixture = line.Fixture,
            Room = line.Room,
            HostCode = line.HostCode,
            Price = line.Price,
        };
    }

    // Overhead and warranty are carried by the other lines, in proportion to their cost.
    private IEnumerable<EstimateLine> Direct => work.Where(line => line.Category is not (LineCategory.Overhead or LineCategory.Warranty));

    // Consumables are reckoned for each fixture.
    private decimal Part(EstimateLine line, string fixture) => line.Item == Consumables ? 1m / fixtures.Length : line.Fixture == fixture
        ? 1 : 0;

    private static decimal SharedPart(EstimateLine line) => line.Item == Consumables || line.Fixture is not null ? 0 : 1;

    private void Divide(IReadOnlyList<FixtureWeight> listed)
    {
        QuoteItem[] items =
        [
            .. fixtures.Select((fixture, i) => new QuoteItem("fixture/" + fixture.Id, QuoteItemKind.Fixture, fixture.Id, fixture.Name, 1,
                LineUnit.Fixture)
            {
                Fixture = fixture.Id,
                Price = ByFixture.Parts[i].Amount,
            }),
            .. beside.Select(Item),
        ];
        decimal[] discounts = Apportionment.Of(price.DiscountGiven ?? 0, [.. items.Select(item => item.Price)], Step);
        decimal[] taxes = new decimal[items.Length];
        foreach (TaxAmount tax in price.Taxes.Where(tax => tax.Amount != 0))
        {
            decimal[] parts = Apportionment.Of(tax.Amount, [.. Taxed(items, tax.Rate.Code)], Step);
            for (int i = 0; i < parts.Length; i++)
            {
                taxes[i] += parts[i];
            }
        }

        for (int i = 0; i < items.Length; i++)
        {
            items[i] = items[i] with { Discount = discounts[i], Tax = taxes[i] };
        }

        Fixtures = new ValueList<QuotedFixture>(listed.Select(fixture => new QuotedFixture(
            items.First(item => item.Kind == QuoteItemKind.Fixture && item.Fixture == fixture.Id),
            new ValueList<QuoteItem>(items.Where(item => item.Kind != QuoteItemKind.Fixture && item.Fixture == fixture.Id)))));
        ForTheJob = new ValueList<QuoteItem>(items.Where(item => item.Fixture is null));
    }

    // How much of each item is taxed at a rate. Of the refinishing of a fixture it is the taxed part of the lines that it bears.
    private IEnumerable<decimal> Taxed(QuoteItem[] items, string code)
    {
        decimal allWeights = fixtures.Sum(fixture => (decimal)fixture.Weight);
        for (int i = 0; i < fixtures.Length; i++)
        {
            decimal share = allWeights > 0 ? (decimal)fixtures[i].Weight / allWeights : 1m / fixtures.Length;
            decimal taxed = 0;
            decimal all = 0;
            foreach (EstimateLine line in work)
            {
                decimal borne = line.Price * (Part(line, fixtures[i].Id) + (SharedPart(line) * share));
                all += borne;
                taxed += line.Taxes.Contains(code) ? borne : 0;
            }

            yield return all == 0 ? 0 : items[i].Price * taxed / all;
        }

        foreach (EstimateLine line in beside)
        {
            yield return line.Taxes.Contains(code) ? line.Price : 0;
        }
    }
}
