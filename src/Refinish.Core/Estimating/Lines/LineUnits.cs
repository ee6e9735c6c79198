using System;

namespace Refinish.Estimating;

/// <summary>Symbols and codes of the units in which lines are counted.</summary>
/// <example><code>
/// string code = LineUnit.Litre.ExchangeCode();   // "LTR"
/// string symbol = LineUnit.Litre.Symbol();       // "L"
/// </code></example>
public static class LineUnits
{
    /// <summary>The unit as it is written behind a number.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>Text such as <c>h</c>, <c>kit</c> or <c>US gal</c>; empty for an amount of money.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="unit"/> is not a named value.</exception>
    public static string Symbol(this LineUnit unit) => unit switch
    {
        LineUnit.Each => "each",
        LineUnit.Set => "set",
        LineUnit.Kit => "kit",
        LineUnit.Hour => "h",
        LineUnit.Day => "day",
        LineUnit.Job => "job",
        LineUnit.Trip => "trip",
        LineUnit.Fixture => "fixture",
        LineUnit.Millilitre => "mL",
        LineUnit.Litre => "L",
        LineUnit.UsFluidOunce => "US fl oz",
        LineUnit.UsQuart => "US qt",
        LineUnit.UsGallon => "US gal",
        LineUnit.Gram => "g",
        LineUnit.Kilogram => "kg",
        LineUnit.Pound => "lb",
        LineUnit.Metre => "m",
        LineUnit.Foot => "ft",
        LineUnit.SquareMetre => "m²",
        LineUnit.SquareFoot => "ft²",
        _ => Guard.Defined(unit) == LineUnit.Money ? string.Empty : unit.ToString("G"),
    };

    /// <summary>The common code of UN/ECE Recommendation 20, which electronic invoices by EN 16931 use for units.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>A code such as <c>HUR</c>; <c>C62</c>, one, for what the list has no code for: fixtures and amounts of money.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="unit"/> is not a named value.</exception>
    public static string ExchangeCode(this LineUnit unit) => Guard.Defined(unit) switch
    {
        LineUnit.Each => "EA",
        LineUnit.Set => "SET",
        LineUnit.Kit => "KT",
        LineUnit.Hour => "HUR",
        LineUnit.Day => "DAY",
        LineUnit.Job => "E51",
        LineUnit.Trip => "E54",
        LineUnit.Millilitre => "MLT",
        LineUnit.Litre => "LTR",
        LineUnit.UsFluidOunce => "OZA",
        LineUnit.UsQuart => "QTL",
        LineUnit.UsGallon => "GLL",
        LineUnit.Gram => "GRM",
        LineUnit.Kilogram => "KGM",
        LineUnit.Pound => "LBR",
        LineUnit.Metre => "MTR",
        LineUnit.Foot => "FOT",
        LineUnit.SquareMetre => "MTK",
        LineUnit.SquareFoot => "FTK",
        _ => "C62",
    };
}
