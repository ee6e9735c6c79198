using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// The price of a job divided over its fixtures: each bears its own cost and a part of what is shared (travel, setting up, disposal) by weight, at one
/// and the same margin. The parts are whole cents and add up to the price.
/// </summary>
/// <remarks>
/// part = P (own + S w / Σw) / (Σ own + S). Parts are cut to cents, and the cents that are left go to the largest remainders (Hamilton's method;
/// the earlier in the list among equals). A share is no stand-alone price: done alone, a fixture bears all of S.
/// </remarks>
/// <example><code>
/// PriceByFixture rooms = new(1000m, [new FixtureCost("tub", 300m), new FixtureCost("sink", 100m)], sharedCost: 200m);
/// decimal tub = rooms.Parts[0].Amount;   // 666.67
/// </code></example>
public sealed record PriceByFixture
{
    private readonly double[] exact;

    /// <summary>Divides a price.</summary>
    /// <param name="price">Price of the job in whole cents, at least 0.</param>
    /// <param name="fixtures">The fixtures, at least one.</param>
    /// <param name="sharedCost">Cost that they share, at least 0.</param>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, all costs are 0, or there is a shared cost and no weight.</exception>
    public PriceByFixture(decimal price, IReadOnlyList<FixtureCost> fixtures, decimal sharedCost)
    {
        Price = Money.Amount(price, nameof(price));
        Guard.Rule(Money.Round(price) == price, nameof(price), (double)price, Measure.Number, "whole cents");
        Fixtures = Guard.List(fixtures, nameof(fixtures), 1);
        SharedCost = Money.Amount(sharedCost, nameof(sharedCost));
        double weights = Fixtures.Sum(fixture => fixture.Weight);
        Guard.Rule(sharedCost == 0 || weights > 0, nameof(fixtures), weights, Measure.Number, "weights of more than 0 together, to divide a shared cost");
        decimal total = Fixtures.Sum(fixture => fixture.OwnCost) + sharedCost;
        Guard.Rule(total > 0, nameof(fixtures), (double)total, Measure.Number, "costs of more than 0 together");
        exact = [.. Fixtures.Select(fixture => (double)price * ((double)fixture.OwnCost + (weights > 0 ? (double)sharedCost * fixture.Weight / weights : 0)) / (double)total)];
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
        double weights = Fixtures.Sum(fixture => fixture.Weight);
        Expression all = Expression.Quantity("Σw", weights > 0 ? weights : 1, Measure.Number);
        WorkingStep cost = new("all costs", "C", Expression.Sum(Fixtures.Select(fixture => Expression.Quantity("c", (double)fixture.OwnCost, money))) + shared, (double)(Fixtures.Sum(fixture => fixture.OwnCost) + SharedCost), money, source);
        List<WorkingStep> steps = [cost];
        for (int i = 0; i < Fixtures.Count; i++)
        {
            string number = Figures.Fixed(i + 1, 0);
            Expression own = Expression.Quantity("c_" + number, (double)Fixtures[i].OwnCost, money);
            Expression weight = Expression.Quantity("w_" + number, Fixtures[i].Weight, Measure.Number);
            WorkingStep part = new(Fixtures[i].Name + ", before rounding", "x_" + number, price * (own + (shared * weight / all)) / cost.Result(), exact[i], money, source);
            steps.Add(part);
            Expression cents = Expression.Quantity("δ_" + number, (double)Parts[i].Amount - exact[i], money);
            steps.Add(new(Fixtures[i].Name, "p_" + number, part.Result() + cents, (double)Parts[i].Amount, money, Source.Derived("cut to cents, left cents to the largest remainders")));
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
