using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// The price of a job divided over its fixtures: each bears its own cost and a part of what is shared (travel, setting up, disposal) by
/// weight, at
/// one and the same margin. The parts are whole cents and add up to the price.
/// </summary>
/// <remarks>
/// part = P (own + S w / Σw) / (Σ own + S). Where nothing costs anything the price is divided by weight alone, and where no fixture has a
/// weight all
/// weigh the same. Parts are cut to cents, and the cents that are left go to the largest remainders (Hamilton's method; the earlier in the
/// list among
/// equals). A share is no stand-alone price: done alone, a fixture bears all of S.
/// </remarks>
/// <example><code>
/// FixtureCost tub = new("tub-1", "tub", 300m, 1);
/// FixtureCost sink = new("sink-1", "sink", 100m, 1);
/// PriceByFixture rooms = new(1000m, [tub, sink], sharedCost: 200m);
/// decimal part = rooms.Parts[0].Amount;   // 666.67
/// </code></example>
public sealed record PriceByFixture
{
    private readonly double[] exact;
    private readonly double allWeights;
    private readonly double total;

    /// <summary>Divides a price.</summary>
    /// <param name="price">Price of the job in whole cents, at least 0.</param>
    /// <param name="fixtures">The fixtures, at least one.</param>
    /// <param name="sharedCost">Cost that they share, at least 0.</param>
    /// <exception cref="ArgumentException">The list is empty, holds an empty entry, or two fixtures have one id.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public PriceByFixture(decimal price, IReadOnlyList<FixtureCost> fixtures, decimal sharedCost)
    {
        Price = Money.Amount(price, nameof(price));
        Guard.Rule(Money.Round(price) == price, nameof(price), (double)price, Measure.Number, "whole cents");
        Fixtures = Guard.List(fixtures, nameof(fixtures), 1);
        SharedCost = Money.Amount(sharedCost, nameof(sharedCost));
        HashSet<string> ids = new(StringComparer.Ordinal);
        foreach (FixtureCost fixture in Fixtures)
        {
            if (!ids.Add(fixture.Id))
            {
                throw new ArgumentException(
                    "fixtures holds two fixtures with the id " + fixture.Id + "; each needs its own.", nameof(fixtures));
            }
        }

        allWeights = Fixtures.Sum(fixture => fixture.Weight);
        total = Fixtures.Sum(fixture => (double)fixture.OwnCost) + (double)sharedCost;
        exact = [.. Fixtures.Select(fixture => total > 0
            ? (double)price * ((double)fixture.OwnCost + ((double)sharedCost * WeightOf(fixture) / Weights)) / total
            : (double)price * WeightOf(fixture) / Weights)];
        Parts = new ValueList<FixturePrice>(Rounded().Select((amount, i) => new FixturePrice(Fixtures[i], amount)));
    }

    /// <summary>Price of the job.</summary>
    public decimal Price { get; }

    /// <summary>The fixtures with their own costs.</summary>
    public IReadOnlyList<FixtureCost> Fixtures { get; }

    /// <summary>Cost that they share.</summary>
    public decimal SharedCost { get; }

    /// <summary>The parts in the order of the fixtures; they add up to <see cref="Price"/>.</summary>
    public IReadOnlyList<FixturePrice> Parts { get; }

    /// <summary>How each part follows.</summary>
    /// <param name="currency">How the money is shown.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentException"><paramref name="currency"/> is empty.</exception>
    public Workings Workings(string currency)
    {
        Measure money = Measure.Money(currency);
        Source source = Source.Derived("own cost and a share by weight, at one margin");
        Expression price = Expression.Quantity("P", (double)Price, money);
        Expression shared = Expression.Quantity("S", (double)SharedCost, money);
        Expression all = Expression.Quantity("Σw", Weights, Measure.Number);
        Expression costs = Expression.Sum(Fixtures.Select(fixture => Expression.Quantity("c", (double)fixture.OwnCost, money))) + shared;
        WorkingStep cost = new("all costs", "C", costs, total, money, source);
        List<WorkingStep> steps = [cost];
        Source cut = Source.Derived("cut to cents, left cents to the largest remainders");
        for (int i = 0; i < Fixtures.Count; i++)
        {
            string number = Figures.Fixed(i + 1, 0);
            Expression own = Expression.Quantity("c_" + number, (double)Fixtures[i].OwnCost, money);
            Expression weight = Expression.Quantity("w_" + number, WeightOf(Fixtures[i]), Measure.Number);
            Expression before = total > 0 ? price * (own + (shared * weight / all)) / cost.Result() : price * weight / all;
            WorkingStep part = new(Fixtures[i].Name + ", before rounding", "x_" + number, before, exact[i], money, source);
            steps.Add(part);
            Expression cents = Expression.Quantity("δ_" + number, (double)Parts[i].Amount - exact[i], money);
            steps.Add(new(Fixtures[i].Name, "p_" + number, part.Result() + cents, (double)Parts[i].Amount, money, cut));
        }

        return new Workings("Price by fixture", steps);
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

    private double Weights => allWeights > 0 ? allWeights : Fixtures.Count;

    private double WeightOf(FixtureCost fixture) => allWeights > 0 ? fixture.Weight : 1;

    private decimal[] Rounded()
    {
        // In decimal from here: twenty digits are enough to cut at cents.
        decimal[] cents = [.. exact.Select(amount => Math.Floor((decimal)amount * 100))];
        int left = (int)((Price * 100) - cents.Sum());
        IEnumerable<int> order = Enumerable.Range(0, cents.Length)
            .OrderByDescending(i => ((decimal)exact[i] * 100) - cents[i])
            .ThenBy(i => i);
        foreach (int i in order.Take(left))
        {
            cents[i]++;
        }

        return [.. cents.Select(amount => amount / 100)];
    }
}
