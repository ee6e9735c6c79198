namespace Refinish.Pictures.Drawing;

/// <summary>What one bar of a price stands for.</summary>
internal enum PriceStepKind
{
    Cost,
    Earned,
    PassedOn,
    Less,
    Sum,
}

/// <summary>One bar of a price: it begins where the one before ends, or at nothing for a sum.</summary>
internal sealed record PriceStep(string Name, decimal From, decimal To, PriceStepKind Kind)
{
    public decimal Amount => To - From;

    /// <summary>Whether it belongs to the bar before it that does not.</summary>
    public bool IsUnder { get; init; }

    /// <summary>Whether it stands apart from what is before it.</summary>
    public bool IsApart { get; init; }

    public bool IsSum => Kind == PriceStepKind.Sum;
}
