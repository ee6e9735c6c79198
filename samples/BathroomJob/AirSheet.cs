using System.Linq;
using Refinish.Air;
using Refinish.Jobs;

namespace Refinish.Samples.BathroomJob;

/// <summary>The air: whether coats may go on, what the vapour comes to, what the fan would have to move. Comparisons, no all-clear.</summary>
internal static class AirSheet
{
    public static void Write(Paper paper, BathroomPlan plan)
    {
        paper.Heading("Air");
        foreach (var window in plan.Coats.Select(coat => coat.Window).Distinct())
        {
            paper.Line("Dew point " + paper.Show(Measure.Temperature, window.Air.DewPoint.Kelvins) + ". Measure again before each coat, at the coldest spot.");
            foreach (LimitComparison check in window.Checks)
            {
                paper.Line(check.Sentence(paper.System), 2, "· ");
            }
        }

        if (plan.Air is not AirStudy air)
        {
            paper.Line("The air was not studied; see the job sheet.");
            return;
        }

        paper.Line("Fan " + paper.Show(Measure.Airflow, air.Exhaust.LabelFlow.CubicMetersPerSecond) + " on its label, counted as "
            + paper.Show(Measure.Airflow, air.Exhaust.FreshAirFlow.CubicMetersPerSecond) + " of fresh air");
        if (air.AirflowForFlammableLimit is { } least)
        {
            paper.Line("Airflow that would keep the vapour at a quarter of the lower flammable limit: " + paper.Show(Measure.Airflow, least.CubicMetersPerSecond));
        }

        paper.Line(air.FlammableLimit.Sentence(paper.System), 2, "· ");
        paper.Line(air.FlammableDesignLine.Sentence(paper.System), 2, "· ");
        paper.Line(air.AdditiveLimit.Sentence(paper.System), 2, "· ");
        foreach (LimitComparison comparison in air.Exposure)
        {
            paper.Line(comparison.Sentence(paper.System), 2, "· ");
        }

        foreach (IsocyanateScreen screen in plan.IsocyanateScreens.Take(1))
        {
            paper.Line(screen.Comparison.Sentence(paper.System), 2, "· ");
        }

        paper.Line("Without an airflow for everyone's lungs, people at work are protected by their respirator programme, not by this fan.");
    }
}
