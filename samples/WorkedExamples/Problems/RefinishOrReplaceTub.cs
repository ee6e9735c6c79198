using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class RefinishOrReplaceTub : Problem
{
    public override string Floor => "Estimating";

    public override string Title => "Refinish or replace?";

    public override string Question =>
        "Refinishing costs 1480 and lasts seven years, replacing costs 5200 and lasts twenty. Money costs 5 % a year. What does each cost a year?";

    public override Backing Backing => Backing.WorkedApart;

    public override string Origin =>
        "By exact arithmetic apart from the library: capital recovery factors 0.172820 and 0.080243, so 255.77 and 417.26 a year; the method is that of engineering-economy tables. Prices and lives invented.";

    protected override Solution Work(Given given)
    {
        // shown
        decimal refinishing = 1480;
        double refinishingYears = 7;
        decimal replacing = 5200;
        double replacingYears = 20;
        Ratio discountRate = Ratio.FromPercent(5);
        // given
        given.Take(ref refinishing, "price of refinishing");
        given.Take(ref refinishingYears, "years until it has to be done again");
        given.Take(ref replacing, "price of replacing, with plumbing, tiles and disposal");
        given.Take(ref replacingYears, "years until it has to be done again");
        given.Take(ref discountRate, "interest a year");
        // shown
        RefinishOrReplace choice = new(
            new RenewalOption { Name = "refinishing", Parts = [new("as quoted", refinishing)], LifeYears = refinishingYears },
            new RenewalOption { Name = "replacing", Parts = [new("as quoted", replacing)], LifeYears = replacingYears },
            discountRate,
            Currency.Of("EUR"));
        double? breakEven = choice.BreakEvenYears;
        // end
        return new(choice.Workings(),
        [
            new("refinishing, a year", Measure.Money(Currency.Of("EUR")), (double)choice.RefinishPerYear, "255.77"),
            new("replacing, a year", Measure.Money(Currency.Of("EUR")), (double)choice.ReplacePerYear, "417.26"),
            .. breakEven is { } years ? [new Answer("refinishing has to last", Measure.Years, years, "4.0")] : (Answer[])[],
        ]);
    }
}
