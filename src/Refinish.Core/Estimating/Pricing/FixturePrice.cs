namespace Refinish.Estimating;

/// <summary>One fixture's part of a price.</summary>
public sealed record FixturePrice
{
    private readonly Currency currency;

    internal FixturePrice(FixtureCost cost, decimal amount, Currency currency)
    {
        Cost = cost;
        Amount = amount;
        this.currency = currency;
    }

    /// <summary>Id of the fixture.</summary>
    public string Id => Cost.Id;

    /// <summary>What the fixture costs by itself.</summary>
    public FixtureCost Cost { get; }

    /// <summary>Its part of the price, in whole minor units.</summary>
    public decimal Amount { get; }

    /// <summary>Name and amount.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Cost.Name + ": " + currency.Number(Amount);
}
