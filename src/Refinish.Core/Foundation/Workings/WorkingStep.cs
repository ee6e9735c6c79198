namespace Refinish;

/// <summary>One line of a derivation: a name, a symbol, the formula, the kernel's result, and the source.</summary>
public sealed record WorkingStep
{
    /// <summary>Makes a step.</summary>
    /// <param name="name">What is calculated, in words.</param>
    /// <param name="symbol">The trade's symbol for it; an underscore starts a subscript.</param>
    /// <param name="formula">The formula with its numbers.</param>
    /// <param name="value">The number that the calculation itself gave, in the SI base unit of <paramref name="measure"/>.</param>
    /// <param name="measure">What kind of amount the result is.</param>
    /// <param name="source">Where the formula comes from.</param>
    /// <exception cref="System.ArgumentException">A text is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="value"/> is NaN or infinite.</exception>
    public WorkingStep(string name, string symbol, Expression formula, double value, Measure measure, Source source)
    {
        Name = Guard.Named(name, nameof(name));
        Symbol = Guard.Named(symbol, nameof(symbol));
        Formula = Guard.NotNull(formula, nameof(formula));
        Measure = Guard.NotNull(measure, nameof(measure));
        Value = Guard.Within(value, Bounds.Between(double.MinValue, double.MaxValue, measure), nameof(value));
        Source = Guard.NotNull(source, nameof(source));
    }

    /// <summary>What is calculated, in words.</summary>
    public string Name { get; }

    /// <summary>The trade's symbol for it.</summary>
    public string Symbol { get; }

    /// <summary>The formula with its numbers; <see cref="Expression.Evaluate"/> agrees with <see cref="Value"/>.</summary>
    public Expression Formula { get; }

    /// <summary>The number that the calculation itself gave, in the SI base unit of <see cref="Measure"/>.</summary>
    public double Value { get; }

    /// <summary>What kind of amount the result is.</summary>
    public Measure Measure { get; }

    /// <summary>Where the formula comes from.</summary>
    public Source Source { get; }

    /// <summary>The result as a leaf for the next step's formula.</summary>
    /// <returns>A quantity with this step's symbol, value and measure.</returns>
    public Expression Result() => Expression.Quantity(Symbol, Value, Measure);

    /// <summary>The step in one line, in metric units.</summary>
    /// <returns>Text such as <c>WFT = DFT / VS = 30 µm / 40 % = 75 µm</c>.</returns>
    public override string ToString() =>
        Symbol + " = " + Formula.Symbolic() + " = " + Formula.Substituted(DisplayUnits.Si) + " = " + Measure.Format(Value);
}
