using System.Linq;
using Refinish.Estimating;

namespace Refinish.Samples.WorkedExamples;

internal sealed class HowLongFinishesLast : Problem
{
    public override string Floor => "Estimating";

    public override string Title => "How long do finishes last, when half of them still do?";

    public override string Question =>
        "Of twenty units on test ten failed, after 54 to 386 h; the other ten were still good after 500 h. Which Weibull life fits best?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "NIST/SEMATECH e-Handbook 8.4.1.3 (apr413), seen second-hand: shape 1.7207, scale 606.5280, log-likelihood −75.135. The last printed digits of shape and scale are off, hence the tolerances. The library counts in years; any unit of time does.";

    protected override Solution Work(Given given)
    {
        // shown
        double ended = 500;
        // given
        given.Take(ref ended, "age of those that were still good");
        // shown
        double[] failedAt = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386];
        WeibullFit fit = new([.. failedAt.Select(age => new LifeRecord(age, failed: true)), new LifeRecord(ended, failed: false, count: 10)]);
        WeibullLife? life = fit.Life;
        // end
        return new(fit.Workings(),
        [
            new("shape", Measure.Number, life!.Shape, "1.7207", Within: 1.1e-4),
            new("scale", Measure.Number, life.ScaleYears, "606.5280", Within: 1e-3),
            new("log-likelihood", Measure.Number, fit.LogLikelihood!.Value, "-75.135"),
        ]);
    }
}
