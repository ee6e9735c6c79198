using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class EightTubsAlike : Problem
{
    public override string Floor => "Estimating";

    public override string Title => "How long do eight units alike take?";

    public override string Question =>
        "A first unit takes 100 h and the curve is one of 80 % by cumulative averages. What do eight take together and on average, and how long does the eighth take?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "A management-accounting text (flipbuilder.com bmcx/vksq, p. 330): average 51.2 h, total 409.6 h.";

    protected override Solution Work(Given given)
    {
        // shown
        double first = 100;
        int count = 8;
        Ratio slope = Ratio.FromPercent(80);
        // given
        given.Take(ref first, "hours of the first");
        given.Take(ref count, "how many are done");
        given.Take(ref slope, "average after doubling, of the average before");
        // shown
        LearningCurve curve = new(LearningModel.CumulativeAverage, slope);
        double average = first * curve.Average(count);
        double total = first * curve.Total(count);
        // end
        return new(curve.Workings(count),
        [
            new("average hours", Measure.Number, average, "51.2"),
            new("total hours", Measure.Number, total, "409.6"),
            new("hours of the last", Measure.Number, first * curve.Unit(count)),
        ]);
    }
}
