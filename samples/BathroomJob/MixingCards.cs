using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Coverage;
using Refinish.Jobs;

namespace Refinish.Samples.BathroomJob;

/// <summary>One card a coat, to be read at the bench with wet gloves: cup by cup, line by line, and what the scale shows without taring.</summary>
internal static class MixingCards
{
    public static void Write(Paper paper, BathroomPlan plan)
    {
        foreach (CoatPlan coat in plan.Coats)
        {
            paper.Heading("Mixing card: " + coat.Name);
            paper.Line("Film  " + paper.Show(Measure.Film, coat.Quantity.WetFilm.Thickness.Meters) + " wet on the comb, dries to " + paper.Show(Measure.Film, coat.Layer.DryFilmPerCoat.Meters));
            paper.Line("Need  " + paper.Show(Measure.Liquid, coat.Quantity.PouredVolume.CubicMeters) + " poured, " + paper.Show(Measure.Liquid, coat.Quantity.SprayedVolume.CubicMeters)
                + " through the gun, " + paper.Show(Measure.Liquid, coat.Quantity.FilmVolume.CubicMeters) + " on " + paper.Show(Measure.Area, coat.Quantity.Area.SquareMeters)
                + "; spraying takes " + Paper.Span(coat.Quantity.SprayTime));
            if (coat.Batches is not { IsPossible: true } batches || coat.Cups.Count == 0)
            {
                paper.Line("No batch can be planned; see the job sheet.");
                continue;
            }

            paper.Line("Ratio " + coat.Layer.Product.MixRatio + " by volume = 100 : " + coat.Cups[0].HardenerPer100Base.ToString("F1", CultureInfo.InvariantCulture)
                + " by weight, reducer " + paper.Show(Measure.Percent, coat.Layer.Reducer.DecimalFractions) + " of the mix");
            string stand = coat.InCup.Induction is { Ticks: > 0 } induction ? "let it stand " + Paper.Span(induction) + ", then " : string.Empty;
            if (coat.InCup.PotLife is { } potLife && batches.TimeToUse is { } use)
            {
                paper.Line("Pot   " + Paper.Span(potLife) + " at this room temperature: " + stand + "spray each cup out within " + Paper.Span(use) + " of that");
            }

            List<string[]> rows = [["cup", "pour A to", "then B to", "reducer to", "scale after A", "after B", "after reducer"]];
            rows.AddRange(coat.Cups.Select((cup, i) => Row(paper, cup, i)));
            paper.Table(rows, "rrrrrrr");
        }
    }

    private static string[] Row(Paper paper, PouredMix cup, int i) =>
    [
        (i + 1).ToString(CultureInfo.InvariantCulture),
        paper.Show(Measure.Liquid, cup.BaseVolume.CubicMeters, 4),
        paper.Show(Measure.Liquid, cup.LineAfterHardener.CubicMeters, 4),
        paper.Show(Measure.Liquid, cup.Total.CubicMeters, 4),
        paper.Show(Measure.Mass, cup.BaseMass.Kilograms, 4),
        paper.Show(Measure.Mass, cup.ScaleAfterHardener.Kilograms, 4),
        paper.Show(Measure.Mass, cup.ScaleAfterReducer.Kilograms, 4),
    ];
}
