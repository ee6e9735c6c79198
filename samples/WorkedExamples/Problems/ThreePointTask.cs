using Refinish.Estimating;

namespace Refinish.Samples.WorkedExamples;

internal sealed class ThreePointTask : Problem
{
    public override string Floor => "Estimating";

    public override string Title => "How long will a task take, and how sure is that?";

    public override string Question =>
        "A task takes 30 h at best, most likely 50, at worst 100. What are its PERT mean and variance?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Heizer and Render, Operations Management, Hill Construction case, task D (in days there): mean 55, variance 136.11.";

    protected override Solution Work(Given given)
    {
        // shown
        double minimum = 30;
        double mode = 50;
        double maximum = 100;
        // given
        given.Take(ref minimum, "hours at best");
        given.Take(ref mode, "hours most likely");
        given.Take(ref maximum, "hours at worst");
        // shown
        ThreePoint hours = new(minimum, mode, maximum);
        double mean = hours.Mean;
        double variance = hours.ClassicVariance;
        // end
        return new(hours.Workings(),
        [
            new("mean", Measure.Number, mean, "55"),
            new("classic variance", Measure.Number, variance, "136.11"),
            new("variance of the beta distribution with that mean", Measure.Number, hours.BetaPertVariance),
        ]);
    }
}
