using System.Globalization;
using System.Text;

namespace Refinish;

/// <summary>The three ways in which workings are written out.</summary>
internal static class WorkingsText
{
    public static string Plain(Workings workings, DisplayUnits system)
    {
        StringBuilder text = new();
        Plain(workings, system, text, string.Empty);
        return text.ToString();
    }

    public static string Markdown(Workings workings, DisplayUnits system)
    {
        StringBuilder text = new();
        Markdown(workings, system, text, 2);
        return text.ToString();
    }

    public static string Latex(Workings workings, DisplayUnits system)
    {
        StringBuilder text = new();
        Latex(workings, system, text, 0);
        return text.ToString();
    }

    private static void Plain(Workings workings, DisplayUnits system, StringBuilder text, string indent)
    {
        text.Append(indent).Append(workings.Title).Append('\n');
        foreach (Workings part in workings.Parts)
        {
            Plain(part, system, text, indent + "  ");
        }

        foreach (WorkingStep step in workings.Steps)
        {
            string lead = indent + "    " + new string(' ', step.Symbol.Length);
            text.Append(indent).Append("  ").Append(step.Name).Append('\n')
                .Append(indent).Append("    ").Append(step.Symbol).Append(" = ").Append(step.Formula.Symbolic()).Append('\n');
            if (!IsBare(step))
            {
                text.Append(lead).Append(" = ").Append(step.Formula.Substituted(system)).Append('\n');
            }

            text.Append(lead).Append(" = ").Append(step.Measure.Format(step.Value, system, 6)).Append('\n')
                .Append(indent).Append("    [").Append(step.Source).Append("]\n");
        }
    }

    private static void Markdown(Workings workings, DisplayUnits system, StringBuilder text, int level)
    {
        text.Append('#', System.Math.Min(level, 6)).Append(' ').Append(workings.Title).Append("\n\n");
        foreach (Workings part in workings.Parts)
        {
            Markdown(part, system, text, level + 1);
        }

        int number = 1;
        foreach (WorkingStep step in workings.Steps)
        {
            text.Append(number.ToString(CultureInfo.InvariantCulture)).Append(". ").Append(step.Name).Append(": `")
                .Append(step.Symbol).Append(" = ").Append(step.Formula.Symbolic());
            if (!IsBare(step))
            {
                text.Append(" = ").Append(step.Formula.Substituted(system));
            }

            text.Append("` = **").Append(step.Measure.Format(step.Value, system, 6)).Append("** (").Append(step.Source).Append(")\n");
            number++;
        }

        text.Append('\n');
    }

    private static void Latex(Workings workings, DisplayUnits system, StringBuilder text, int level)
    {
        string heading = level == 0 ? "\\section*{" : level == 1 ? "\\subsection*{" : "\\paragraph{";
        text.Append(heading).Append(Escaped(workings.Title)).Append("}\n");
        foreach (Workings part in workings.Parts)
        {
            Latex(part, system, text, level + 1);
        }

        foreach (WorkingStep step in workings.Steps)
        {
            string symbol = FormulaWriter.SymbolText(step.Symbol, FormulaStyle.Latex);
            string unit = step.Measure.Symbol(system);
            text.Append(Escaped(step.Name)).Append(" (").Append(Escaped(step.Source.ToString())).Append("):\n\\begin{align*}\n")
                .Append(symbol).Append(" &= ").Append(step.Formula.SymbolicLatex()).Append(" \\\\\n");
            if (!IsBare(step))
            {
                text.Append("&= ").Append(step.Formula.SubstitutedLatex(system)).Append(" \\\\\n");
            }

            text.Append("&= ").Append(step.Measure.FormatLatex(step.Value, system));
            if (unit.Length > 0)
            {
                text.Append("\\,").Append(FormulaWriter.LatexUnit(unit));
            }

            text.Append("\n\\end{align*}\n");
        }
    }

    // A step that only states a given number would otherwise print it twice.
    private static bool IsBare(WorkingStep step) => step.Formula is QuantityExpression or NumberExpression;

    private static string Escaped(string text)
    {
        StringBuilder latex = new();
        foreach (char c in text)
        {
            latex.Append(c switch
            {
                '\\' => "\\textbackslash{}",
                '^' => "\\textasciicircum{}",
                '~' => "\\textasciitilde{}",
                '&' or '%' or '$' or '#' or '_' or '{' or '}' => "\\" + c,
                _ => c.ToString(),
            });
        }

        return latex.ToString();
    }
}
