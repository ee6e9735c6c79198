namespace Refinish.Estimating;

/// <summary>What an estimate needed and the price book does not have. An estimate with a gap has no price.</summary>
public sealed record PriceGap
{
    internal PriceGap(string code, string what, string missing)
    {
        Code = code;
        What = what;
        Missing = missing;
    }

    /// <summary>Code of the step or item.</summary>
    public string Code { get; }

    /// <summary>The step or item, in words.</summary>
    public string What { get; }

    /// <summary>What is missing.</summary>
    public string Missing { get; }

    /// <summary>The gap in one line.</summary>
    /// <returns>Text such as <c>L-50 topcoats: no labour rate in the price book</c>.</returns>
    public override string ToString() => Code + " " + What + ": " + Missing;
}
