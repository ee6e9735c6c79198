using System.Globalization;

namespace Refinish.Estimating;

/// <summary>How many kits of one size, or loose pieces, are bought.</summary>
public sealed record KitCount
{
    internal KitCount(MaterialPrice kit, int count)
    {
        Kit = kit;
        Count = count;
    }

    /// <summary>The kit, or the price of one piece.</summary>
    public MaterialPrice Kit { get; }

    /// <summary>How many, at least 1.</summary>
    public int Count { get; }

    /// <summary>Count × price, exact.</summary>
    public decimal Cost => Count * Kit.Price;

    /// <summary>Count and kit.</summary>
    /// <returns>Text such as <c>3 × two-part topcoat, 1.1829 L: 78.00</c>.</returns>
    public override string ToString() => Count.ToString(CultureInfo.InvariantCulture) + " × " + Kit;
}
