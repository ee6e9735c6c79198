namespace Refinish.Jobs;

/// <summary>One fixture in a quote and in an alternative to it.</summary>
/// <remarks>The part that a fixture bears of shared costs moves when another fixture changes; so a fixture that is the same in both may
/// differ in price.</remarks>
public sealed record QuotedDifference
{
    internal QuotedDifference(QuotedFixture? quoted, QuotedFixture? alternative)
    {
        Quoted = quoted;
        Alternative = alternative;
    }

    /// <summary>Id of the fixture.</summary>
    public string Id => (Quoted ?? Alternative)!.Id;

    /// <summary>What the customer calls it.</summary>
    public string Name => (Quoted ?? Alternative)!.Name;

    /// <summary>The fixture in the quote; <see langword="null"/> when it is not in it.</summary>
    public QuotedFixture? Quoted { get; }

    /// <summary>The fixture in the alternative; <see langword="null"/> when it is not in it.</summary>
    public QuotedFixture? Alternative { get; }

    /// <summary>What the alternative adds before discount and tax, options and extras of the fixture included.</summary>
    public decimal Price => (Alternative?.Price ?? 0) - (Quoted?.Price ?? 0);

    /// <summary>What the alternative adds with discount and tax.</summary>
    public decimal WithTax => (Alternative?.WithTax ?? 0) - (Quoted?.WithTax ?? 0);

    /// <summary>Name and difference with tax.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ": " + (WithTax > 0 ? "+" : string.Empty)
        + WithTax.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
