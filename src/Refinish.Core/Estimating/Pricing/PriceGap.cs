namespace Refinish.Estimating;

/// <summary>Why an estimate has no price: what the price book does not have, or an amount that cannot be reckoned with.</summary>
/// <param name="Id">Identity, unique within an estimate: that of the line which is missing, such as <c>labour/L-50</c> or
/// <c>material/epoxy-primer</c>.</param>
/// <param name="Code">Code of the step or item.</param>
/// <param name="What">The step or item, in words.</param>
/// <param name="Missing">What is missing or cannot be.</param>
public sealed record PriceGap(string Id, string Code, string What, string Missing)
{
    /// <summary>An amount of money that its currency cannot have.</summary>
    internal static PriceGap Decimals(string id, string code, string what, decimal amount, Currency currency) => new(
        id, code, what + " of " + amount.ToString(System.Globalization.CultureInfo.InvariantCulture) + " " + currency.Code,
        currency.Code + " has " + (currency.Decimals == 0 ? "no" : Figures.Fixed(currency.Decimals, 0)) + " decimals: a multiple of "
            + currency.Number(currency.SmallestAmount) + " is needed");

    /// <summary>The gap in one line.</summary>
    /// <returns>Text such as <c>L-51 spray topcoat, one coat: no labour rate in the price book</c>.</returns>
    public override string ToString() => Code + " " + What + ": " + Missing;
}
