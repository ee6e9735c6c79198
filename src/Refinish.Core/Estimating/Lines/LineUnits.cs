using System;

namespace Refinish.Estimating;

/// <summary>Symbols and codes of the units in which lines are counted.</summary>
/// <example><code>
/// string code = LineUnit.Litre.ExchangeCode();   // "LTR"
/// string symbol = LineUnit.Litre.Symbol();       // "L"
/// </code></example>
public static class LineUnits
{
    // Symbol and code of each unit, in the order of the enumeration.
    private static readonly (string Symbol, string Code)[] Rows =
    [
        ("each", "EA"),
        ("set", "SET"),
        ("kit", "KT"),
        ("h", "HUR"),
        ("day", "DAY"),
        ("job", "E51"),
        ("trip", "E54"),
        ("fixture", "C62"),
        ("mL", "MLT"),
        ("L", "LTR"),
        ("US fl oz", "OZA"),
        ("US qt", "QTL"),
        ("US gal", "GLL"),
        ("g", "GRM"),
        ("kg", "KGM"),
        ("lb", "LBR"),
        ("m", "MTR"),
        ("ft", "FOT"),
        ("m²", "MTK"),
        ("ft²", "FTK"),
        (string.Empty, "C62"),
    ];

    /// <summary>The unit as it is written behind a number.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>Text such as <c>h</c>, <c>kit</c> or <c>US gal</c>; empty for an amount of money.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="unit"/> is not a named value.</exception>
    public static string Symbol(this LineUnit unit) => Rows[(int)Guard.Defined(unit)].Symbol;

    /// <summary>The common code of UN/ECE Recommendation 20, which electronic invoices by EN 16931 use for units.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>A code such as <c>HUR</c>; <c>C62</c>, one, for what the list has no code for: fixtures and amounts of money.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="unit"/> is not a named value.</exception>
    public static string ExchangeCode(this LineUnit unit) => Rows[(int)Guard.Defined(unit)].Code;
}
