using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Jobs;

namespace Refinish.Samples.BathroomJob;

/// <summary>One card a layer, to be read at the bench with wet gloves: cup by cup, line by line, and what the scale shows without taring.</summary>
internal static class MixingCards
{
    public static void Write(Paper paper, BathroomPlan plan)
    {
        foreach (IGrouping<(CoatingLayer, CoatQuantity), CoatPlan> alike in plan.Coats.GroupBy(coat => (coat.Layer, coat.Quantity)))
        {
            Write(paper, alike.First(), alike.Count());
        }
    }

    private static void Write(Paper paper, CoatPlan coat, int coats)
    {
        paper.Heading("Mixing card: " + coat.Layer.Product.Name + (coats == 1 ? string.Empty : ", mixed anew for each of " + Number(coats) + " coats"));
        paper.Line("Film  " + paper.Show(Measure.Film, coat.Quantity.WetFilm.Thickness.Meters) + " wet on the comb, dries to " + paper.Show(Measure.Film, coat.Layer.DryFilmPerCoat.Meters));
        paper.Line("Need  " + paper.Show(Measure.Liquid, coat.Quantity.PouredVolume.CubicMeters) + " poured, " + paper.Show(Measure.Liquid, coat.Quantity.SprayedVolume.CubicMeters)
            + " through the gun, " + paper.Show(Measure.Liquid, coat.Quantity.FilmVolume.CubicMeters) + " on " + paper.Show(Measure.Area, coat.Quantity.Area.SquareMeters)
            + "; spraying takes " + Paper.Span(coat.Quantity.SprayTime));
        if (coat.Batches is not { IsPossible: true } batches || coat.Cups.Count == 0)
        {
            paper.Line("No batch can be planned; see the job sheet.");
            return;
        }

        paper.Line("Ratio " + coat.Layer.Product.MixRatio + " by volume = 100 : " + coat.Cups[0].HardenerPer100Base.ToString("F1", CultureInfo.InvariantCulture)
            + " by weight, reducer " + paper.Show(Measure.Percent, coat.Layer.Reducer.DecimalFractions) + " of A + B by volume");
        string stand = coat.InCup.Induction is { Ticks: > 0 } induction ? "let it stand " + Paper.Span(induction) + ", then " : string.Empty;
        if (coat.InCup.PotLife is { } potLife && batches.TimeToUse is { } use)
        {
            paper.Line("Pot   " + Paper.Span(potLife) + " at this room temperature: " + stand + "spray each cup out within " + Paper.Span(use));
        }

        paper.Line(coat.Layer.Product.IsocyanateFraction.DecimalFractions > 0
            ? "Wear  supplied air, closed goggles, gloves and suit before the cans are opened: this hardener is an isocyanate (cautions, safety data sheet)"
            : "Wear  the respirator of your programme, closed goggles, gloves before the cans are opened (cautions, safety data sheet)");
        if (coat.Layer.Product.Hardener is not null)
        {
            CupReading reading = new(coat.Cups[coat.Cups.Count - 1], batches.Rules.Graduation);
            paper.Line("Read  " + reading + (reading.Comparison.Remedy is string remedy ? ", more than the data sheet allows. " + remedy : string.Empty));
        }

        paper.Line("Limit " + MixedCoating.AtMaximumReducer(coat.Layer.Product).Compare(VocLimits.CaliforniaMeasure2007) + " (" + VocLimits.CaliforniaMeasure2007.Source + ")");
        List<string[]> rows =
        [
            ["", "fill line", "fill line", "fill line", "scale", "scale", "scale"],
            ["cup", "A", "A+B", "A+B+reducer", "A", "A+B", "A+B+reducer"],
        ];
        rows.AddRange(coat.Cups.Select((cup, i) => Row(paper, cup, i)));
        paper.Table(rows, "rrrrrrr");
    }

    private static string[] Row(Paper paper, PouredMix cup, int i) =>
    [
        Number(i + 1),
        Line(paper, Measure.Liquid, cup.BaseVolume.CubicMeters),
        Line(paper, Measure.Liquid, cup.LineAfterHardener.CubicMeters),
        Line(paper, Measure.Liquid, cup.Total.CubicMeters),
        Line(paper, Measure.Mass, cup.BaseMass.Kilograms),
        Line(paper, Measure.Mass, cup.ScaleAfterHardener.Kilograms),
        Line(paper, Measure.Mass, cup.ScaleAfterReducer.Kilograms),
    ];

    // Millilitres and grams as a cup and a bench scale show them; a fluid ounce and an ounce are thirty times coarser.
    private static string Line(Paper paper, Measure measure, double si) =>
        measure.Shown(si, paper.System).ToString(paper.System == DisplayUnits.Si ? "F0" : "F1", CultureInfo.InvariantCulture) + " " + measure.Symbol(paper.System);

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
