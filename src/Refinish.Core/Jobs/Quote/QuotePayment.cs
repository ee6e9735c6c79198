namespace Refinish.Jobs;

/// <summary>What one stage of payment comes to.</summary>
public sealed record QuotePayment
{
    internal QuotePayment(PaymentStage stage, decimal amount)
    {
        Stage = stage;
        Amount = amount;
    }

    /// <summary>Identity of the stage.</summary>
    public string Id => Stage.Id;

    /// <summary>The stage as agreed.</summary>
    public PaymentStage Stage { get; }

    /// <summary>Amount with tax, never negative.</summary>
    public decimal Amount { get; }

    /// <summary>Name, amount and when it is due.</summary>
    /// <returns>Text such as <c>deposit, on acceptance: 120.00</c>.</returns>
    public override string ToString() =>
        Stage.Name + ", " + Stage.When + ": " + Amount.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
