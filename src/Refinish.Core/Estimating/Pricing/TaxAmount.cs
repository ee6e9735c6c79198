namespace Refinish.Estimating;

/// <summary>What one rate of tax comes to on an estimate.</summary>
public sealed record TaxAmount
{
    private readonly Currency currency;

    internal TaxAmount(TaxRate rate, decimal taxed, decimal amount, TaxExemption? exemption, Currency currency)
    {
        Rate = rate;
        Taxed = taxed;
        Amount = amount;
        Exemption = exemption;
        this.currency = currency;
    }

    /// <summary>The rate.</summary>
    public TaxRate Rate { get; }

    /// <summary>The net price that it applies to, after the discount.</summary>
    public decimal Taxed { get; }

    /// <summary>The tax; 0 for a customer who is exempt.</summary>
    public decimal Amount { get; }

    /// <summary>Why the tax is not charged; <see langword="null"/> when it is.</summary>
    public TaxExemption? Exemption { get; }

    /// <summary>Rate and amount.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Rate + (Exemption is null ? ": " + currency.Text(Amount) : ": exempt, " + Exemption);
}
