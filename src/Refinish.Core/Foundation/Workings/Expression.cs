namespace Refinish;

/// <summary>
/// A formula of a derivation as it is written out: in symbols, or with its numbers and units, as plain text or in LaTeX. It is made by the
/// same line that calculated the number, so that what is shown cannot drift from it.
/// </summary>
/// <example><code>
/// WetFilm film = new(Length.FromMicrometers(30), Ratio.FromPercent(40));
/// Expression formula = film.Workings().Steps[0].Formula;
/// string text = formula.Symbolic();                                  // "DFT · (1 + R) / VS"
/// string numbers = formula.Substituted(DisplayUnits.Si);             // "30 µm × (1 + 0 %) / 40 %"
/// double wet = formula.Value;                                        // 0.000075 m
/// </code></example>
public abstract class Expression
{
    private protected Expression(double value) => Value = value;

    /// <summary>The value in SI base units.</summary>
    public double Value { get; }

    /// <summary>How tightly the outermost operation binds when written; see <see cref="Binding"/>.</summary>
    internal virtual int BindingIn(FormulaWriter writer) => Binding.Atom;

    /// <summary>The formula in symbols, as plain text.</summary>
    /// <returns>Text such as <c>DFT / VS</c>.</returns>
    public string Symbolic() => FormulaWriter.Write(this, FormulaStyle.Plain, null);

    /// <summary>The formula with its numbers and units put in, as plain text.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text such as <c>30 µm / 40 %</c>.</returns>
    public string Substituted(DisplayUnits system) => FormulaWriter.Write(this, FormulaStyle.Plain, system);

    /// <summary>The formula in symbols, in LaTeX mathematics without delimiters.</summary>
    /// <returns>Text such as <c>\frac{DFT}{VS}</c>.</returns>
    public string SymbolicLatex() => FormulaWriter.Write(this, FormulaStyle.Latex, null);

    /// <summary>The formula with its numbers and units put in, in LaTeX mathematics without delimiters.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>LaTeX text.</returns>
    public string SubstitutedLatex(DisplayUnits system) => FormulaWriter.Write(this, FormulaStyle.Latex, system);

    /// <summary>The formula in symbols.</summary>
    /// <returns>See <see cref="Symbolic"/>.</returns>
    public override string ToString() => Symbolic();

    internal abstract void WriteTo(FormulaWriter writer);
}
