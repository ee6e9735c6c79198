namespace Refinish.Estimating;

/// <summary>Where tax is rounded to the currency.</summary>
public enum TaxRounding
{
    /// <summary>Once for each rate, on the sum of all prices that it applies to (EN 16931-1, rule BR-CO-17 for value added tax).</summary>
    OnSum,

    /// <summary>On each line by itself; the tax is the sum of the rounded amounts.</summary>
    PerLine,
}
