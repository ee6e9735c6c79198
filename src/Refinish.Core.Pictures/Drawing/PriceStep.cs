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

    public bool IsSum => Kind == PriceStepKind.Sum;
}
