using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// One substance from data sheets that differ. The careful figures count: the lowest molar mass, which is the most vapour by volume; the
/// lowest flammable limit and the highest vapour pressure that any sheet knows. It does not burn, or is not volatile, only where all sheets
/// say so. Name and density are the first sheet's.
/// </summary>
internal sealed class CarefulSolvent
{
    private static readonly Source Rule =
        Source.Derived("the lowest figure is the careful one: more vapour by volume, and a flammable limit reached sooner");

    private readonly List<Solvent> sheets;
    private Solvent? figures;

    private CarefulSolvent(Solvent first)
    {
        sheets = [first];
    }

    /// <summary>The description that counts.</summary>
    public Solvent Figures => figures ??= sheets[0] with
    {
        MolarMass = sheets.Select(sheet => sheet.MolarMass).OrderBy(mass => mass.KilogramsPerMole).First(),
        // A limit goes before nothing known, and that before not burning.
        Flammability = sheets.Select(sheet => sheet.Flammability)
            .OrderBy(one => one.Lower?.DecimalFractions ?? (one.IsNonBurning ? double.PositiveInfinity : double.MaxValue)).First(),
        Volatility = sheets.Select(sheet => sheet.Volatility)
            .OrderByDescending(one => one.VapourPressure?.Pascals ?? (one.IsVolatile ? 0 : -1)).First(),
        Source = Source.Derived("the careful figures of " + string.Join(
            "; ",
            sheets.Select(sheet => sheet.Source.ToString()).Distinct(StringComparer.Ordinal))),
    };

    /// <summary>
    /// Adds another description of a substance to those collected, unless it is known already. Nothing is made while all descriptions are
    /// alike.
    /// </summary>
    public static List<CarefulSolvent>? Collect(List<CarefulSolvent>? collected, Solvent first, Solvent another)
    {
        if (ReferenceEquals(first, another) || first.Equals(another))
        {
            return collected;
        }

        collected ??= [];
        CarefulSolvent? of = collected.Find(
            careful => string.Equals(careful.sheets[0].CasNumber, first.CasNumber, StringComparison.Ordinal));
        if (of is null)
        {
            of = new CarefulSolvent(first);
            collected.Add(of);
        }

        if (!of.sheets.Contains(another))
        {
            of.sheets.Add(another);
            of.figures = null;
        }

        return collected;
    }

    /// <summary>Which figures were chosen from.</summary>
    public Workings Workings() => Trace.Of(
        Figures.Name + ", of differing descriptions",
        [LowestMass, .. Trace.When(Figures.Flammability.Lower is not null, LowestLimit)]);

    private Num LowestMass(Trace t) => t.Step("lowest molar mass of the descriptions", "M", Measure.MolarMass, Rule,
        Least(sheets.Select((sheet, i) => t.Given("M_", i + 1, sheet.MolarMass.KilogramsPerMole, Measure.MolarMass))));

    private Num LowestLimit(Trace t) => t.Step("lowest flammable limit that a description gives", "LFL", Measure.Percent, Rule,
        Least(sheets.Select(sheet => sheet.Flammability.Lower).OfType<Ratio>().Select((limit, i) =>
            t.Given("LFL_", i + 1, limit.DecimalFractions, Measure.Percent))));

    private static Num Least(IEnumerable<Num> values) => values.Aggregate(Num.Min);
}
