using System;
using System.Globalization;
using System.Linq;
using Refinish.Films;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Foundation;

public class WorkingsTests
{
    private static readonly Workings Film = new WetFilm(Length.FromMicrometers(30), Ratio.FromPercent(40), Ratio.FromPercent(10)).Workings();

    [Theory]
    [InlineData("")]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [Evidence(Basis.Contract, "plain text: name, symbols, numbers with units, result, source; the same under every culture")]
    public void Plain_text_reads_like_a_worked_example(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo(culture);
        try
        {
            string expected = """
                Wet film
                  wet film
                    WFT = DFT · (1 + R) / VS
                        = 30 µm × (1 + 10 %) / 40 %
                        = 82.5 µm
                    [derived: definition of volume solids, reducer counted as volatile; volumes additive]
                  theoretical spreading rate
                    SR = 1 / WFT
                       = 1 / 82.5 µm
                       = 12.1212 m²/L
                    [derived: definition of volume solids, reducer counted as volatile; volumes additive]

                """.ReplaceLineEndings("\n");
            Assert.Equal(expected, Film.ToPlainText(DisplayUnits.Si));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "Markdown with formulas in code spans")]
    public void Markdown_is_a_numbered_list() => Assert.Equal(
        "## Wet film\n\n1. wet film: `WFT = DFT · (1 + R) / VS = 30 µm × (1 + 10 %) / 40 %` = **82.5 µm** (derived: definition of volume solids, reducer counted as volatile; volumes additive)\n"
        + "2. theoretical spreading rate: `SR = 1 / WFT = 1 / 82.5 µm` = **12.1212 m²/L** (derived: definition of volume solids, reducer counted as volatile; volumes additive)\n\n",
        Film.ToMarkdown(DisplayUnits.Si));

    [Fact]
    [Evidence(Basis.Contract, "LaTeX with balanced braces and environments")]
    public void Latex_is_balanced()
    {
        string latex = Film.ToLatex(DisplayUnits.UsCustomary);
        Assert.Contains("\\mathit{WFT} &= \\frac{", latex, StringComparison.Ordinal);
        Assert.Equal(latex.Count(c => c == '{'), latex.Count(c => c == '}'));
        Assert.Equal(2, latex.Split("\\begin{align*}").Length - 1);
        Assert.Equal(2, latex.Split("\\end{align*}").Length - 1);
    }

    [Fact]
    [Evidence(Basis.Contract, "workings that say the same are equal in text, and parts come before the steps that rest on them")]
    public void Parts_come_first()
    {
        WorkingStep step = new("sum", "s", (new Trace().Number(1) + 1).Formula, Measure.Number, Source.Derived("arithmetic"));
        Workings whole = new("Whole", [step], [Film]);
        Assert.Equal(["wet film", "theoretical spreading rate", "sum"], whole.AllSteps().Select(part => part.Name));
        Assert.Equal("s = 1 + 1 = 1 + 1 = 2", step.ToString());
    }
}
