namespace Refinish.Estimating;

/// <summary>One fixture's part of a price.</summary>
public sealed record FixturePrice
{
    internal FixturePrice(FixtureCost cost, decimal amount)
    {
        Cost = cost;
        Amount = amount;
    }

    /// <summary>Id of the fixture.</summary>
    public string Id => Cost.Id;

    /// <summary>What the fixture costs by itself.</summary>
    public FixtureCost Cost { get; }

    /// <summary>Its part of the price, in whole cents.</summary>
    public decimal Amount { get; }

    /// <summary>Name and amount.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Cost.Name + ": " + Figures.Fixed((double)Amount, 2);
}
