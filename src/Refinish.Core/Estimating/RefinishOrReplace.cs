using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// Two options with different lives, compared by what each costs a year: A = P r / (1 − (1 + r)^(−n)) + C, with P the whole cost, n the
/// life in years, r the interest and C what its care costs every year. Without interest, A = P / n + C.
/// </summary>
/// <remarks>
/// The capital recovery factor r(1 + r)^n/((1 + r)^n − 1) of engineering-economy tables. The comparison assumes that each option can be
/// renewed at the same price when its life ends. Present values are those of the yearly costs over the longer life. Lives are the caller's;
/// none is assumed. Yearly care is the same every year and paid at the end of it, as those tables take it. Break-even life: that life of
/// the first option at which both cost the same a year, −ln(1 − P₁ r / (A₂ − C₁))/ln(1 + r). An option that costs nothing is taken as it
/// is: there is then no share of it and no break-even life, and the sentence says so.
/// </remarks>
/// <example><code>
/// RenewalOption refinish = new() { Name = "refinishing", Parts = [new CostPart("work", 1480m)], LifeYears = 7 };
/// RenewalOption replace = new() { Name = "replacing", Parts = [new CostPart("tub, demolition, plumbing, tile", 5200m)], LifeYears = 20 };
/// RefinishOrReplace answer = new(refinish, replace, Ratio.FromPercent(5), Currency.Of("USD"));
/// decimal yearly = answer.RefinishPerYear;     // 255.77
/// double? breakEven = answer.BreakEvenYears;   // 4.0 years
/// RefinishOrReplace cared = new(refinish with { YearlyCost = 60m }, replace, Ratio.FromPercent(5), Currency.Of("USD"));
/// decimal withCare = cared.RefinishPerYear;    // 315.77
/// </code></example>
public sealed record RefinishOrReplace
{
    private readonly double rate;

    /// <summary>Compares two options.</summary>
    /// <param name="refinish">Refinishing.</param>
    /// <param name="replace">Replacing.</param>
    /// <param name="discountRate">Interest per year, 0 to 100 %.</param>
    /// <param name="currency">The currency.</param>
    /// <param name="costPerDayOutOfUse">What a day without the fixture costs, such as a hotel room's rate; 0 to 10⁹.</param>
    /// <exception cref="ArgumentNullException">An option or the currency is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public RefinishOrReplace(RenewalOption refinish, RenewalOption replace, Ratio discountRate, Currency currency,
        decimal costPerDayOutOfUse = 0)
    {
        Refinish = Guard.NotNull(refinish, nameof(refinish));
        Replace = Guard.NotNull(replace, nameof(replace));
        rate = Guard.Within(discountRate, Bounds.NotNegative(Measure.Percent, 1), nameof(discountRate));
        Currency = Guard.NotNull(currency, nameof(currency));
        CostPerDayOutOfUse = Money.Amount(costPerDayOutOfUse, nameof(costPerDayOutOfUse));
    }

    /// <summary>Refinishing.</summary>
    public RenewalOption Refinish { get; }

    /// <summary>Replacing.</summary>
    public RenewalOption Replace { get; }

    /// <summary>Interest per year.</summary>
    public Ratio DiscountRate => Ratio.FromDecimalFractions(rate);

    /// <summary>The currency.</summary>
    public Currency Currency { get; }

    /// <summary>What a day without the fixture costs.</summary>
    public decimal CostPerDayOutOfUse { get; }

    /// <summary>Whole cost of refinishing once, with the days out of use.</summary>
    public decimal RefinishCost => Refinish.PartsTotal + (Refinish.DaysOutOfUse * CostPerDayOutOfUse);

    /// <summary>Whole cost of replacing once, with the days out of use.</summary>
    public decimal ReplaceCost => Replace.PartsTotal + (Replace.DaysOutOfUse * CostPerDayOutOfUse);

    /// <summary>Equivalent annual cost of refinishing, its yearly care included; rounded to the currency.</summary>
    public decimal RefinishPerYear => Currency.Round(Yearly(RefinishCost, Refinish));

    /// <summary>Equivalent annual cost of replacing, its yearly care included; rounded to the currency.</summary>
    public decimal ReplacePerYear => Currency.Round(Yearly(ReplaceCost, Replace));

    /// <summary>Over how many years the present values are taken: the longer of the two lives.</summary>
    public double HorizonYears => Math.Max(Refinish.LifeYears, Replace.LifeYears);

    /// <summary>
    /// Present value of refinishing again and again over the horizon, a broken last life counted by its share; rounded to the currency.
    /// </summary>
    public decimal RefinishPresentValue =>
        Currency.Round(Yearly(RefinishCost, Refinish) / EconomyKernel.CapitalRecovery(rate, HorizonYears));

    /// <summary>Present value of replacing over the horizon, a broken last life counted by its share; rounded to the currency.</summary>
    public decimal ReplacePresentValue => Currency.Round(Yearly(ReplaceCost, Replace) / EconomyKernel.CapitalRecovery(rate, HorizonYears));

    /// <summary>
    /// Yearly cost of refinishing per yearly cost of replacing; below 100 % refinishing is the cheaper. <see langword="null"/> when
    /// replacing costs nothing.
    /// </summary>
    public Ratio? RefinishPerReplace =>
        ReplaceCost + Replace.YearlyCost > 0
            ? Ratio.FromDecimalFractions(Yearly(RefinishCost, Refinish) / Yearly(ReplaceCost, Replace))
            : null;

    /// <summary>
    /// How long refinishing has to last to cost no more a year than replacing, in years; <see langword="null"/> when no life is long
    /// enough, as when its care alone costs more, or when replacing costs nothing.
    /// </summary>
    public double? BreakEvenYears => EconomyKernel.BreakEven((double)RefinishCost, LeftForRefinishing, rate);

    // What replacing costs a year beyond the care of refinishing.
    private double LeftForRefinishing => Yearly(ReplaceCost, Replace) - (double)Refinish.YearlyCost;

    /// <summary>The comparison in a plain sentence with its numbers.</summary>
    /// <returns>Two or three sentences.</returns>
    public string Sentence() => string.Format(
        CultureInfo.InvariantCulture,
        "At {0} interest, {1} costs {2} and, lasting {3}, {4} a year{5}; {6} costs {7} and, lasting {8}, {9} a year{10}. {11}",
        Measure.Percent.Format(rate),
        Refinish.Name,
        Currency.Text(RefinishCost),
        Measure.Years.Format(Refinish.LifeYears),
        Currency.Text(RefinishPerYear),
        Care(Refinish),
        Replace.Name,
        Currency.Text(ReplaceCost),
        Measure.Years.Format(Replace.LifeYears),
        Currency.Text(ReplacePerYear),
        Care(Replace),
        Compared());

    /// <summary>How the comparison follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Measure money = Measure.Money(Currency);
        Source economy = Source.FromMemory("capital recovery factor of engineering-economy tables, (A/P, i, n); formula seen in a textbook appendix");
        Expression r = Expression.Quantity("r", rate, Measure.Percent);
        Expression day = Expression.Quantity("c_d", (double)CostPerDayOutOfUse, money);
        WorkingStep first = Whole(Refinish, "1", RefinishCost, day, money);
        WorkingStep second = Whole(Replace, "2", ReplaceCost, day, money);
        WorkingStep a1 = PerYear(Refinish, "1", first, r, Yearly(RefinishCost, Refinish), money, economy);
        WorkingStep a2 = PerYear(Replace, "2", second, r, Yearly(ReplaceCost, Replace), money, economy);
        Expression longer = Expression.Max(
            Expression.Quantity("n_1", Refinish.LifeYears, Measure.Years), Expression.Quantity("n_2", Replace.LifeYears, Measure.Years));
        WorkingStep horizon = new("years compared", "H", longer, HorizonYears, Measure.Years, Source.Derived("the longer life"));
        double factor = EconomyKernel.CapitalRecovery(rate, HorizonYears);
        WorkingStep recovery = new("capital recovery over the longer life", "k", Recovery(r, "H", HorizonYears), factor, Measure.Number, economy);
        Expression present1 = Expression.Round(a1.Result() / recovery.Result(), Currency);
        Expression present2 = Expression.Round(a2.Result() / recovery.Result(), Currency);
        List<WorkingStep> steps =
        [
            first, second, a1, a2,
            new(Refinish.Name + ", a year, rounded", "A_1c", Expression.Round(a1.Result(), Currency), (double)RefinishPerYear, money,
                economy),
            new(Replace.Name + ", a year, rounded", "A_2c", Expression.Round(a2.Result(), Currency), (double)ReplacePerYear, money,
                economy),
            horizon,
            recovery,
            new("present value of " + Refinish.Name, "PV_1", present1, (double)RefinishPresentValue, money, economy),
            new("present value of " + Replace.Name, "PV_2", present2, (double)ReplacePresentValue, money, economy),
        ];
        if (RefinishPerReplace is Ratio share)
        {
            Expression quotient = a1.Result() / a2.Result();
            steps.Add(new("yearly cost compared", "q", quotient, share.DecimalFractions, Measure.Percent, Source.Derived("quotient")));
        }

        if (BreakEvenYears is double years)
        {
            double interest = (double)RefinishCost * rate / LeftForRefinishing;
            Expression left = Refinish.YearlyCost > 0 ? a2.Result() - CareOf(Refinish, "1", money) : a2.Result();
            Expression even = EconomyKernel.BreakEvenFormula(first.Result(), left, interest, r, rate);
            Source solved = Source.Derived("equal yearly costs, solved for the life");
            steps.Add(new("break-even life of " + Refinish.Name, "n*", even, years, Measure.Years, solved));
        }

        return new Workings("Refinish or replace", steps);
    }

    /// <summary>The comparison in a sentence.</summary>
    /// <returns>See <see cref="Sentence"/>.</returns>
    public override string ToString() => Sentence();

    private static WorkingStep Whole(RenewalOption option, string index, decimal cost, Expression day, Measure money)
    {
        Expression parts = Expression.Sum(option.Parts.Select(part => Expression.Quantity("c", (double)part.Amount, money)));
        Expression days = Expression.Quantity("d_" + index, option.DaysOutOfUse, Measure.Number);
        return new("whole cost of " + option.Name, "P_" + index, parts + (days * day), (double)cost, money, Source.Supplied("costs of the options"));
    }

    private static Expression CareOf(RenewalOption option, string index, Measure money) =>
        Expression.Quantity("C_" + index, (double)option.YearlyCost, money);

    private string Care(RenewalOption option) =>
        option.YearlyCost > 0 ? ", of it " + Currency.Text(option.YearlyCost) + " for its care" : string.Empty;

    private double Yearly(decimal cost, RenewalOption option) =>
        ((double)cost * EconomyKernel.CapitalRecovery(rate, option.LifeYears)) + (double)option.YearlyCost;

    private WorkingStep PerYear(
        RenewalOption option, string index, WorkingStep cost, Expression r, double yearly, Measure money, Source source)
    {
        Expression capital = cost.Result() * Recovery(r, "n_" + index, option.LifeYears);
        Expression whole = option.YearlyCost > 0 ? capital + CareOf(option, index, money) : capital;
        return new(option.Name + ", a year", "A_" + index, whole, yearly, money, source);
    }

    private Expression Recovery(Expression r, string symbol, double years) =>
        EconomyKernel.CapitalRecoveryFormula(r, rate, Expression.Quantity(symbol, years, Measure.Years), years);

    private string Compared()
    {
        if (RefinishPerReplace is not Ratio share)
        {
            return RefinishCost + Refinish.YearlyCost > 0
                ? "As " + Replace.Name + " costs nothing, no share of it can be given, and however long "
                    + Refinish.Name + " lasts, it costs more."
                : "Neither costs anything, so there is nothing to compare.";
        }

        if (RefinishCost == 0 && BreakEvenYears is not null)
        {
            return "As " + Refinish.Name + " costs nothing" + (Refinish.YearlyCost > 0 ? " but its care" : string.Empty)
                + ", it is the cheaper however short it lasts.";
        }

        string compared = "Per year " + Refinish.Name + " costs " + Measure.Percent.Format(share.DecimalFractions, DisplayUnits.Si, 3)
            + " of " + Replace.Name + ". ";
        return compared + (BreakEvenYears is double years
            ? "It costs less a year than " + Replace.Name + " when it lasts longer than "
                + Measure.Years.Format(Math.Ceiling((years * 100) - 1e-9) / 100) + "."
            : "However long it lasts, it costs more a year than " + Replace.Name + ".");
    }
}
