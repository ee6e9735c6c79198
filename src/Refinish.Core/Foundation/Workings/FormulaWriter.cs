using System.Collections.Generic;
using System.Text;

namespace Refinish;

internal enum FormulaStyle
{
    Plain,
    Latex,
}

/// <summary>Writes an expression: in symbols when <see cref="System"/> is null, with numbers and units otherwise.</summary>
internal sealed class FormulaWriter
{
    private static readonly Dictionary<char, string> Greek = new()
    {
        ['α'] = "\\alpha", ['β'] = "\\beta", ['γ'] = "\\gamma", ['δ'] = "\\delta", ['Δ'] = "\\Delta", ['ε'] = "\\varepsilon",
        ['η'] = "\\eta", ['θ'] = "\\theta", ['κ'] = "\\kappa", ['λ'] = "\\lambda", ['μ'] = "\\mu", ['π'] = "\\pi", ['ρ'] = "\\rho",
        ['σ'] = "\\sigma", ['Σ'] = "\\Sigma", ['τ'] = "\\tau", ['φ'] = "\\varphi", ['ψ'] = "\\psi", ['ω'] = "\\omega", ['∞'] = "\\infty",
        ['′'] = "'",
    };

    private readonly StringBuilder text = new();

    private FormulaWriter(FormulaStyle style, DisplayUnits? system)
    {
        Style = style;
        System = system;
    }

    public FormulaStyle Style { get; }

    public DisplayUnits? System { get; }

    public string Times => Style == FormulaStyle.Latex ? " \\cdot " : System is null ? " · " : " × ";

    private bool IsLatex => Style == FormulaStyle.Latex;

    public static string Write(Expression expression, FormulaStyle style, DisplayUnits? system)
    {
        FormulaWriter writer = new(style, system);
        expression.WriteTo(writer);
        return writer.text.ToString();
    }

    public static string SymbolText(string symbol, FormulaStyle style) => style == FormulaStyle.Latex ? LatexSymbol(symbol) : symbol;

    /// <summary>A unit in LaTeX: upright, with the characters that LaTeX would misread replaced.</summary>
    public static string LatexUnit(string unit) =>
        "\\mathrm{" + unit.Replace(" ", "\\ ").Replace("%", "\\%").Replace("µ", "\\mu ").Replace("²", "^2").Replace("³", "^3").Replace("·", "\\cdot ")
            .Replace("°", "^\\circ ").Replace("Δ", "\\Delta ").Replace("€", "\\text{€}").Replace("$", "\\$") + "}";

    public FormulaWriter Text(string piece)
    {
        text.Append(IsLatex ? piece.Replace('−', '-') : piece);
        return this;
    }

    public void Number(double value) => text.Append(IsLatex ? Figures.SignificantLatex(value, 10) : Signed(Figures.Significant(value, 10)));

    public void Symbol(string symbol) => text.Append(SymbolText(symbol, Style));

    public void Amount(double value, Measure measure, DisplayUnits system)
    {
        string unit = measure.Symbol(system);
        text.Append(IsLatex ? measure.FormatLatex(value, system) : Signed(measure.FormatNumber(value, system)));
        if (unit.Length > 0)
        {
            text.Append(IsLatex ? "\\," + LatexUnit(unit) : unit == "°" ? unit : " " + unit);
        }
    }

    /// <summary>Writes an expression, in parentheses when it binds more loosely than its place asks for.</summary>
    public FormulaWriter Nested(Expression expression, int atLeast)
    {
        if (expression.BindingIn(this) >= atLeast)
        {
            expression.WriteTo(this);
            return this;
        }

        text.Append(IsLatex ? "\\left(" : "(");
        expression.WriteTo(this);
        text.Append(IsLatex ? "\\right)" : ")");
        return this;
    }

    public void Infix(Expression left, string sign, Expression right, int leftAtLeast, int rightAtLeast) =>
        Nested(left, leftAtLeast).Text(sign).Nested(right, rightAtLeast);

    public void Fraction(Expression over, Expression under)
    {
        if (IsLatex)
        {
            text.Append("\\frac{");
            over.WriteTo(this);
            text.Append("}{");
            under.WriteTo(this);
            text.Append('}');
        }
        else
        {
            Infix(over, " / ", under, Binding.Product, Binding.Product + 1);
        }
    }

    public void Power(Expression basis, Expression exponent)
    {
        Nested(basis, Binding.Power + 1);
        if (IsLatex)
        {
            text.Append("^{");
            exponent.WriteTo(this);
            text.Append('}');
        }
        else if (exponent is NumberExpression { Value: 2 or 3 })
        {
            text.Append(exponent.Value == 2 ? '²' : '³');
        }
        else
        {
            text.Append('^');
            Nested(exponent, Binding.Power + 1);
        }
    }

    public void Function(string name, string latex, Expression argument)
    {
        if (IsLatex && latex == "\\sqrt")
        {
            text.Append("\\sqrt{");
            argument.WriteTo(this);
            text.Append('}');
            return;
        }

        text.Append(IsLatex ? latex + "\\left(" : name + "(");
        argument.WriteTo(this);
        text.Append(IsLatex ? "\\right)" : ")");
    }

    public void List(string name, IReadOnlyList<Expression> terms)
    {
        text.Append(IsLatex ? "\\" + name + "\\left(" : name + "(");
        for (int i = 0; i < terms.Count; i++)
        {
            text.Append(i == 0 ? string.Empty : IsLatex ? ",\\ " : "; ");
            terms[i].WriteTo(this);
        }

        text.Append(IsLatex ? "\\right)" : ")");
    }

    public void Integral(string symbol, Expression lower, Expression upper, Expression body)
    {
        text.Append(IsLatex ? "\\int_{" : "∫[");
        lower.WriteTo(this);
        text.Append(IsLatex ? "}^{" : " … ");
        upper.WriteTo(this);
        text.Append(IsLatex ? "} " : "] ");
        Nested(body, Binding.Product);
        text.Append(IsLatex ? "\\,\\mathrm{d}" : " d").Append(SymbolText(symbol, Style));
    }

    public void Equation(string symbol, Expression rising, Expression target)
    {
        text.Append(IsLatex ? "\\text{that } " + LatexSymbol(symbol) + "\\text{ at which } " : "that " + symbol + " at which ");
        rising.WriteTo(this);
        text.Append(" = ");
        target.WriteTo(this);
    }

    // Formulas subtract with a minus sign, so their numbers carry the same one.
    private static string Signed(string number) => number.Replace('-', '−');

    private static string LatexSymbol(string symbol)
    {
        int underscore = symbol.IndexOf('_');
        string head = underscore < 0 ? symbol : symbol.Substring(0, underscore);
        StringBuilder latex = new();
        bool word = head.Length > 1 && char.IsLetter(head[0]) && head[0] < 128;
        if (word)
        {
            latex.Append("\\mathit{");
        }

        foreach (char c in head)
        {
            latex.Append(Greek.TryGetValue(c, out string? command) ? command + (head.Length > 1 ? " " : string.Empty) : c == '%' ? "\\%" : c.ToString());
        }

        if (word)
        {
            latex.Append('}');
        }

        return underscore < 0 ? latex.ToString() : latex + "_{\\mathrm{" + LatexSubscript(symbol.Substring(underscore + 1)) + "}}";
    }

    private static string LatexSubscript(string subscript)
    {
        StringBuilder latex = new();
        foreach (char c in subscript)
        {
            latex.Append(Greek.TryGetValue(c, out string? command) ? command + " " : c == '%' ? "\\%" : c == ' ' ? "\\ " : c.ToString());
        }

        return latex.ToString();
    }
}
