namespace Refinish;

/// <summary>One line of a derivation: a name, a symbol, the formula, the kernel's result, and the source.</summary>
public sealed record WorkingStep
{
    internal WorkingStep(string name, string symbol, Expression formula, Measure measure, Source source)
    {
        Name = Guard.Named(name);
        Symbol = Guard.Named(symbol);
        Formula = formula;
        Measure = measure;
        Source = source;
    }

    /// <summary>What is calculated, in words.</summary>
    public string Name { get; }

    /// <summary>The trade's symbol for it.</summary>
    public string Symbol { get; }

    /// <summary>The formula with its numbers.</summary>
    public Expression Formula { get; }

    /// <summary>The result, in the SI base unit of <see cref="Measure"/>.</summary>
    public double Value => Formula.Value;

    /// <summary>What kind of amount the result is.</summary>
    public Measure Measure { get; }

    /// <summary>Where the formula comes from.</summary>
    public Source Source { get; }

    /// <summary>The step in one line, in metric units.</summary>
    /// <returns>Text such as <c>WFT = DFT / VS = 30 µm / 40 % = 75 µm</c>.</returns>
    public override string ToString() =>
        Symbol + " = " + Formula.Symbolic() + " = " + Formula.Substituted(DisplayUnits.Si) + " = " + Measure.Format(Value);
}
