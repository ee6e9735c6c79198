using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Jobs;

namespace Refinish.Samples.BathroomJob;

/// <summary>
/// One card a coat, to be read at the bench with wet gloves: what is left over, cup by cup, line by line, and what the scale shows without
/// taring.
/// </summary>
internal static class MixingCards
{
    public static void Write(Paper paper, JobPlan plan)
    {
        paper.Heading("Mixing cards");
        if (plan.Runs.Count == 0)
        {
            paper.Line("No coat is planned; see the job sheet.");
        }

        foreach (CoatRun run in plan.Runs.Select(planned => planned.Run).DistinctBy(run => run.Layer.Product.Id))
        {
            Product(paper, plan, run);
        }

        paper.Line();
        foreach (ScheduledRun run in plan.Runs)
        {
            Write(paper, plan, run);
            paper.Line();
        }
    }

    // What holds for every cup of a product: what it gives off, and what its film does on a wall.
    private static void Product(Paper paper, JobPlan plan, CoatRun run)
    {
        paper.Line(run.Layer.Product.Name + ", " + run.Layer.Product.Source);
        LimitComparison voc = plan.Voc[run.Layer.Product.Id];
        paper.Line(voc.Sentence(paper.System) + (plan.Job.Shop.Limits.Voc.Count == 0
            ? "; for comparison only, " + plan.Job.Shop.Limits.Name + " has no limit (" + voc.Source + ")" : string.Empty), 2, "VOC   ");
        foreach (LimitComparison flow in run.Flow(UnitsNet.Angle.FromDegrees(90)))
        {
            paper.Line(flow.Sentence(paper.System), 2, "Flow  ");
        }
    }

    private static void Write(Paper paper, JobPlan plan, ScheduledRun planned)
    {
        CoatRun run = planned.Run;
        CoatingProduct product = run.Layer.Product;
        CoatDemand demand = run.Demand;
        paper.Line(Paper.Day(planned.Start) + " " + Paper.Clock(planned.Start) + " · " + run.Id + " · " + product.Name);
        paper.Line(paper.Show(Measure.Film, demand.WetFilm.Thickness.Meters) + " wet on the comb, dries to "
            + paper.Show(Measure.Film, run.Layer.DryFilmPerCoat.Meters), 2, "Film   ");
        paper.Line(paper.Show(Measure.Liquid, demand.Total.CubicMeters) + " in the cups, "
            + paper.Show(Measure.Liquid, demand.Sprayed.CubicMeters) + " through the gun, "
            + paper.Show(Measure.Liquid, demand.Film.CubicMeters) + " becomes film on " + paper.Show(Measure.Area, demand.Area.SquareMeters)
            + "; first stroke " + Paper.Clock(planned.SprayingFrom) + ", spraying takes " + Paper.Span(run.SprayTime), 2, "Need   ");
        if (planned.Before is { } before)
        {
            paper.Line(paper.Show(Measure.Liquid, planned.FromBefore.CubicMeters) + " of " + before.Run.Id + " are left and still good", 2,
                "Left   ");
        }

        if (planned.Mixes.Count == 0)
        {
            paper.Line("No cup can be planned; see the job sheet.");
            return;
        }

        if (planned.Cups.Excess.CubicMeters > 0.1 * planned.Cups.Mixed.CubicMeters)
        {
            paper.Line(paper.Show(Measure.Liquid, planned.Cups.Mixed.CubicMeters) + ": no smaller cup is measured well; "
                + paper.Show(Measure.Liquid, planned.Cups.Excess.CubicMeters) + " are left over", 2, "Mix    ");
        }

        paper.Line(product.MixRatio + " by volume = 100 : " + string.Join(" : ", product.Per100OfFirst.Skip(1).Select(parts => parts.ToString("F1",
            CultureInfo.InvariantCulture))) + " by weight, reducer "
            + paper.Show(Measure.Percent, run.Layer.Reducer.DecimalFractions) + " of the mixed parts by volume", 2, "Ratio  ");
        string stand = run.InCup.Induction is { Ticks: > 0 } induction ? "let it stand " + Paper.Span(induction) + ", then " : string.Empty;
        if (run.InCup.PotLife is { } potLife && planned.Cups.TimeToUse is { } use)
        {
            paper.Line(Paper.Within(potLife) + " from mixing at " + paper.Show(Measure.Temperature, run.InCup.Site.Kelvins) + ": " + stand
                + "spray each cup out within " + Paper.Within(use), 2, "Pot    ");
        }

        paper.Line(product.IsocyanateFraction.DecimalFractions > 0
            ? "supplied air, closed goggles, gloves and suit before the cans are opened: this hardener is an isocyanate (cautions, "
                + "safety data sheet)"
            : "the respirator of your programme, closed goggles, gloves before the cans are opened (cautions, safety data sheet)", 2,
                "Wear   ");
        // The climate to spray in, which says nothing of what anybody breathes.
        paper.Line(planned.Window.IsOpen ? "temperatures, humidity and dew point each within the product's limit"
            : "temperatures, humidity and dew point: " + planned.Window, 2, "Room   ");
        if (plan.Schedule?.Windows.FirstOrDefault(window => window.Operation.Operation.Id == run.Id) is { } window)
        {
            paper.Line(window.SentenceOn(planned.Start.Date), 2, "After  ");
        }

        if (product.Parts.Count > 1)
        {
            CupReading reading = new(planned.Mixes[^1], planned.Cups.Batches[^1].Cup.Graduation);
            paper.Line(reading + (reading.Comparison.Remedy is string remedy ? ", more than the data sheet allows. " + remedy
                : string.Empty), 2, "Read   ");
        }

        Cups(paper, planned.Mixes);
    }

    private static void Cups(Paper paper, IReadOnlyList<PouredMix> mixes)
    {
        int parts = mixes[0].Parts.Count;
        string[] after = [.. Enumerable.Range(0, parts).Select(i => i == 0 ? mixes[0].Parts[0].Component.Name : "+ " + mixes[0].Parts[i].Component.Name)];
        List<string[]> rows =
        [
            ["", .. Enumerable.Repeat("fill line", parts), .. Enumerable.Repeat("scale", parts)],
            ["cup", .. after, .. after],
        ];
        rows.AddRange(mixes.Select((cup, i) => (string[])
        [
            (i + 1).ToString(CultureInfo.InvariantCulture),
            .. cup.Parts.Select(part => Line(paper, Measure.Liquid, part.FillLine.CubicMeters)),
            .. cup.Parts.Select(part => Line(paper, Measure.Mass, part.Scale.Kilograms)),
        ]));
        paper.Table(rows, new string('r', 1 + (2 * parts)));
    }

    // Millilitres and grams as a cup and a bench scale show them; a fluid ounce and an ounce are thirty times coarser.
    private static string Line(Paper paper, Measure measure, double si) =>
        measure.Shown(si, paper.System).ToString(paper.System == DisplayUnits.Si ? "F0" : "F1", CultureInfo.InvariantCulture) + " "
            + measure.Symbol(paper.System);
}
