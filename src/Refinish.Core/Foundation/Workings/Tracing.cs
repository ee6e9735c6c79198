using System.Collections.Generic;

namespace Refinish;

/// <summary>How formulas name their numbers. Without a trace each of these hands its number back as it is.</summary>
internal static class Tracing
{
    /// <summary>An input, with its symbol.</summary>
    /// <param name="trace">The derivation that is being made, or none.</param>
    /// <param name="symbol">The trade's symbol; an underscore starts a subscript, as in <c>V_A</c>.</param>
    /// <param name="value">The value in the SI base unit of <paramref name="measure"/>.</param>
    /// <param name="measure">What kind of amount it is.</param>
    public static Num Given(this Trace? trace, string symbol, double value, Measure measure) =>
        trace is null ? value : new Num(value, new QuantityExpression(symbol, value, measure));

    /// <summary>One of several inputs, with its number at the symbol: <c>d_</c> and 1 make d_1.</summary>
    /// <param name="trace">The derivation that is being made, or none.</param>
    /// <param name="symbol">The trade's symbol up to its number.</param>
    /// <param name="number">The number.</param>
    /// <param name="value">The value in the SI base unit of <paramref name="measure"/>.</param>
    /// <param name="measure">What kind of amount it is.</param>
    public static Num Given(this Trace? trace, string symbol, int number, double value, Measure measure) =>
        trace is null ? value : trace.Given(symbol + Figures.Fixed(number, 0), value, measure);

    /// <summary>An input of a named thing, such as <c>M_acetone</c>.</summary>
    public static Num Given(this Trace? trace, string symbol, string name, double value, Measure measure) =>
        trace is null ? value : trace.Given(symbol + name, value, measure);

    /// <summary>An input in money.</summary>
    /// <param name="trace">The derivation that is being made, or none.</param>
    /// <param name="symbol">The trade's symbol.</param>
    /// <param name="value">The amount.</param>
    /// <param name="measure">Money, or money per something.</param>
    public static Amount Money(this Trace? trace, string symbol, decimal value, Measure measure) =>
        trace is null ? value : new Amount(value, new QuantityExpression(symbol, (double)value, measure));

    /// <summary>A result: the step is noted, and stands in the formulas that follow by its symbol.</summary>
    /// <param name="trace">The derivation that is being made, or none.</param>
    /// <param name="name">What is calculated, in words; a constant, so that no text is made where nobody reads it.</param>
    /// <param name="symbol">The trade's symbol; an underscore starts a subscript.</param>
    /// <param name="measure">What kind of amount the result is.</param>
    /// <param name="source">Where the formula comes from.</param>
    /// <param name="formula">The formula with its numbers.</param>
    public static Num Step(this Trace? trace, string name, string symbol, Measure measure, Source source, Num formula)
    {
        if (trace is null)
        {
            return formula.Value;
        }

        trace.Note(name, symbol, formula.Formula, measure, source);
        return trace.Given(symbol, formula.Value, measure);
    }

    /// <summary>A result in money.</summary>
    /// <param name="trace">The derivation that is being made, or none.</param>
    /// <param name="name">What is calculated, in words.</param>
    /// <param name="symbol">The trade's symbol.</param>
    /// <param name="measure">Money, or money per something.</param>
    /// <param name="source">Where the formula comes from.</param>
    /// <param name="formula">The formula with its amounts.</param>
    public static Amount Step(this Trace? trace, string name, string symbol, Measure measure, Source source, Amount formula)
    {
        if (trace is null)
        {
            return formula.Value;
        }

        trace.Note(name, symbol, formula.Formula, measure, source);
        return trace.Money(symbol, formula.Value, measure);
    }

    /// <summary>How far each value is on the allowed side of its limit, as steps; only of comparisons that have both.</summary>
    /// <param name="trace">The derivation that is being made.</param>
    /// <param name="checks">The comparisons.</param>
    /// <param name="value">The symbol of the value.</param>
    /// <param name="limit">The symbol of the limit.</param>
    /// <param name="source">Where the comparison comes from; that of each comparison when omitted.</param>
    /// <returns>Always 0: so it fits into the list of <see cref="Trace.Of(string, System.Func{Trace, Num}[])"/>.</returns>
    public static Num Margins(this Trace trace, IEnumerable<LimitComparison> checks, string value, string limit, Source? source = null)
    {
        foreach (LimitComparison check in checks)
        {
            Num x = trace.Given(value, check.Value!.Value.Si, check.Measure);
            Num end = trace.Given(limit, check.Limit!.Value.Si, check.Measure);
            trace.Step("margin, " + check.Subject, "m", check.Margin!.Value.Measure, source ?? check.Source,
                check.Sense == LimitSense.AtLeast ? x - end : end - x);
        }

        return default;
    }

    /// <summary>π as a letter, even beside plain numbers.</summary>
    /// <param name="trace">The derivation that is being made, or none.</param>
    public static Num Pi(this Trace? trace) => trace is null ? Num.Pi : new Num(Num.Pi.Value, Num.Pi.Formula);

    /// <summary>A plain number that is written even beside plain numbers, such as the 1 in 1 / 3.</summary>
    /// <param name="trace">The derivation that is being made, or none.</param>
    /// <param name="value">The number.</param>
    public static Num Number(this Trace? trace, double value) => trace is null ? value : new Num(value, new NumberExpression(value, null));
}
