using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// The price of a job divided over its fixtures: each bears its own cost and a part of what is shared (travel, setting up, disposal) by
/// weight, at one and the same margin. The parts are whole minor units and add up to the price.
/// </summary>
/// <remarks>
/// part = P (own + S w / Σw) / (Σ own + S). Where nothing costs anything the price is divided by weight alone, and where no fixture has a
/// weight all weigh the same. Parts are cut to the currency, and what is left goes to the largest remainders (Hamilton's method; the
/// earlier in the list among equals). A share is no stand-alone price: done alone, a fixture bears all of S.
/// </remarks>
/// <example><code>
/// FixtureCost tub = new("tub-1", "tub", 300m, 1);
/// FixtureCost sink = new("sink-1", "sink", 100m, 1);
/// PriceByFixture rooms = new(1000m, [tub, sink], sharedCost: 200m, Currency.Of("USD"));
/// decimal part = rooms.Parts[0].Amount;   // 666.67
/// </code></example>
public sealed record PriceByFixture
{
    private static readonly Source OneMargin = Source.Derived("own cost and a share by weight, at one margin");
    private static readonly Source Cut = Source.Derived("cut to the currency, what is left to the largest remainders");

    private readonly decimal allWeights;
    private readonly decimal total;

    /// <summary>Divides a price.</summary>
    /// <param name="price">Price of the job, at least 0, with no more decimals than the currency.</param>
    /// <param name="fixtures">The fixtures, at least one.</param>
    /// <param name="sharedCost">Cost that they share, at least 0.</param>
    /// <param name="currency">The currency.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">The list is empty, holds an empty entry, or two fixtures have one id.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public PriceByFixture(decimal price, IReadOnlyList<FixtureCost> fixtures, decimal sharedCost, Currency currency)
    {
        Currency = Guard.NotNull(currency);
        Price = Money.Amount(price, nameof(price));
        Money.Fits(price, currency, nameof(price), "an amount");
        Fixtures = Unique.Ids(Guard.List(fixtures, 1), fixture => fixture.Id, nameof(fixtures));
        SharedCost = Money.Amount(sharedCost, nameof(sharedCost));
        allWeights = Fixtures.Sum(fixture => (decimal)fixture.Weight);
        total = Fixtures.Sum(fixture => fixture.OwnCost) + sharedCost;
        decimal[] parts = Apportionment.Of(price, [.. Fixtures.Select(Bears)], currency.SmallestAmount);
        Parts = new ValueList<FixturePrice>(parts.Select((amount, i) => new FixturePrice(Fixtures[i], amount, currency)));
    }

    /// <summary>The currency.</summary>
    public Currency Currency { get; }

    /// <summary>Price of the job.</summary>
    public decimal Price { get; }

    /// <summary>The fixtures with their own costs.</summary>
    public IReadOnlyList<FixtureCost> Fixtures { get; }

    /// <summary>Cost that they share.</summary>
    public decimal SharedCost { get; }

    /// <summary>The parts in the order of the fixtures; they add up to <see cref="Price"/>.</summary>
    public IReadOnlyList<FixturePrice> Parts { get; }

    /// <summary>How each part follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        Measure money = Measure.Money(Currency);
        Amount price = t.Money("P", Price, money);
        Amount shared = t.Money("S", SharedCost, money);
        Amount weights = t.Money("Σw", Weights, Measure.Number);
        Amount own = 0;
        foreach (FixtureCost fixture in Fixtures)
        {
            own += t.Money("c", fixture.OwnCost, money);
        }

        Amount costs = t.Step("all costs", "C", money, OneMargin, own + shared);
        for (int i = 0; i < Fixtures.Count; i++)
        {
            string number = Figures.Fixed(i + 1, 0);
            Amount weight = t.Money("w_" + number, WeightOf(Fixtures[i]), Measure.Number);
            Amount exact = t.Step(Fixtures[i].Name + ", before rounding", "x_" + number, money, OneMargin, total > 0
                ? price * Borne(t.Money("c_" + number, Fixtures[i].OwnCost, money), shared, weight, weights) / costs
                : price * weight / weights);
            t.Step(Fixtures[i].Name, "p_" + number, money, Cut, exact + t.Money("δ_" + number, Parts[i].Amount - exact.Value, money));
        }

        return t.Workings("Price by fixture");
    }

    /// <summary>The parts in one line.</summary>
    /// <returns>Text such as <c>tub: 666.67, sink: 333.33</c>.</returns>
    public override string ToString() => string.Join(", ", Parts.Select(part => part.ToString()));

    /// <summary>Whether price, fixtures and shared cost are the same.</summary>
    /// <param name="other">The division to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(PriceByFixture? other) =>
        other is not null && Price == other.Price && SharedCost == other.SharedCost && Fixtures.Equals(other.Fixtures);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Price.GetHashCode() * 31) + Fixtures.GetHashCode());

    private decimal Weights => allWeights > 0 ? allWeights : Fixtures.Count;

    private decimal WeightOf(FixtureCost fixture) => allWeights > 0 ? (decimal)fixture.Weight : 1;

    private decimal Bears(FixtureCost fixture) =>
        total > 0 ? Borne(fixture.OwnCost, SharedCost, WeightOf(fixture), Weights).Value : WeightOf(fixture);

    private static Amount Borne(Amount own, Amount shared, Amount weight, Amount weights) => own + (shared * (weight / weights));
}
