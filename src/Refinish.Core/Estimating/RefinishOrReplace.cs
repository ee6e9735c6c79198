using System;
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
    private static readonly Source Economy =
        Source.FromMemory("capital recovery factor of engineering-economy tables, (A/P, i, n); formula seen in a textbook appendix");

    private static readonly Source Costs = Source.Supplied("costs of the options");
    private static readonly Source Longer = Source.Derived("the longer life");
    private static readonly Source Quotient = Source.Derived("quotient");
    private static readonly Source Solved = Source.Derived("equal yearly costs, solved for the life");

    private readonly double rate;
    private readonly Measure money;

    /// <summary>Compares two options of a fixture that is not missed meanwhile.</summary>
    /// <param name="refinish">Refinishing.</param>
    /// <param name="replace">Replacing.</param>
    /// <param name="discountRate">Interest per year, 0 to 100 %.</param>
    /// <param name="currency">The currency.</param>
    /// <exception cref="ArgumentNullException">An option or the currency is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public RefinishOrReplace(RenewalOption refinish, RenewalOption replace, Ratio discountRate, Currency currency)
        : this(refinish, replace, discountRate, currency, 0)
    {
    }

    /// <summary>Compares two options.</summary>
    /// <param name="refinish">Refinishing.</param>
    /// <param name="replace">Replacing.</param>
    /// <param name="discountRate">Interest per year, 0 to 100 %.</param>
    /// <param name="currency">The currency.</param>
    /// <param name="costPerDayOutOfUse">What a day without the fixture costs, such as a hotel room's rate; 0 to 10¹².</param>
    /// <exception cref="ArgumentNullException">An option or the currency is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public RefinishOrReplace(RenewalOption refinish, RenewalOption replace, Ratio discountRate, Currency currency,
        decimal costPerDayOutOfUse)
    {
        Refinish = Guard.NotNull(refinish);
        Replace = Guard.NotNull(replace);
        rate = Guard.Within(discountRate, Bounds.NotNegative(Measure.Percent, 1));
        Currency = Guard.NotNull(currency);
        money = Measure.Money(currency);
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
    public decimal RefinishCost => Whole(1).Value;

    /// <summary>Whole cost of replacing once, with the days out of use.</summary>
    public decimal ReplaceCost => Whole(2).Value;

    /// <summary>Equivalent annual cost of refinishing, its yearly care included; rounded to the currency.</summary>
    public decimal RefinishPerYear => Rounded(1).Value;

    /// <summary>Equivalent annual cost of replacing, its yearly care included; rounded to the currency.</summary>
    public decimal ReplacePerYear => Rounded(2).Value;

    /// <summary>Over how many years the present values are taken: the longer of the two lives.</summary>
    public double HorizonYears => Horizon().Value;

    /// <summary>
    /// Present value of refinishing again and again over the horizon, a broken last life counted by its share; rounded to the currency.
    /// </summary>
    public decimal RefinishPresentValue => Present(1).Value;

    /// <summary>Present value of replacing over the horizon, a broken last life counted by its share; rounded to the currency.</summary>
    public decimal ReplacePresentValue => Present(2).Value;

    /// <summary>
    /// Yearly cost of refinishing per yearly cost of replacing; below 100 % refinishing is the cheaper. <see langword="null"/> when
    /// replacing costs nothing.
    /// </summary>
    public Ratio? RefinishPerReplace => Compared() is Num share ? Ratio.FromDecimalFractions(share.Value) : null;

    /// <summary>
    /// How long refinishing has to last to cost no more a year than replacing, in years; <see langword="null"/> when no life is long
    /// enough, as when its care alone costs more, or when replacing costs nothing.
    /// </summary>
    public double? BreakEvenYears => BreakEven()?.Value;

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
        Verdict());

    /// <summary>How the comparison follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        Whole(1, t);
        Whole(2, t);
        Yearly(1, t);
        Yearly(2, t);
        Rounded(1, t);
        Rounded(2, t);
        Horizon(t);
        Recovery(t);
        Present(1, t);
        Present(2, t);
        Compared(t);
        BreakEven(t);
        return t.Workings("Refinish or replace");
    }

    /// <summary>The comparison in a sentence.</summary>
    /// <returns>See <see cref="Sentence"/>.</returns>
    public override string ToString() => Sentence();

    private string Care(RenewalOption option) =>
        option.YearlyCost > 0 ? ", of it " + Currency.Text(option.YearlyCost) + " for its care" : string.Empty;

    private Amount Whole(int which, Trace? t = null)
    {
        Amount days = t.Money(Symbol("d_", which, t), Option(which).DaysOutOfUse, Measure.Number);
        Amount parts = 0;
        foreach (CostPart part in Option(which).Parts)
        {
            parts += t.Money("c", part.Amount, money);
        }

        return t.Step(Name("whole cost of ", which, string.Empty, t), Symbol("P_", which, t), money, Costs,
            parts + (days * t.Money("c_d", CostPerDayOutOfUse, money)));
    }

    private Num Yearly(int which, Trace? t = null)
    {
        Num life = t.Given(Symbol("n_", which, t), Option(which).LifeYears, Measure.Years);
        Num capital = Whole(which, t).ToNum() * EconomyKernel.CapitalRecovery(Interest(t), life, t);
        return t.Step(Name(string.Empty, which, ", a year", t), Symbol("A_", which, t), money, Economy,
            Option(which).YearlyCost > 0 ? capital + CareOf(which, t) : capital);
    }

    private Amount Rounded(int which, Trace? t = null) => t.Step(
        Name(string.Empty, which, ", a year, rounded", t), Symbol("A_", which, t, "c"), money, Economy,
        Money.Rounded(Yearly(which, t), Currency));

    private Num Horizon(Trace? t = null) => t.Step("years compared", "H", Measure.Years, Longer,
        Num.Max(t.Given("n_1", Refinish.LifeYears, Measure.Years), t.Given("n_2", Replace.LifeYears, Measure.Years)));

    private Num Recovery(Trace? t = null) => t.Step("capital recovery over the longer life", "k", Measure.Number, Economy,
        EconomyKernel.CapitalRecovery(Interest(t), Horizon(t), t));

    private Amount Present(int which, Trace? t = null) => t.Step(Name("present value of ", which, string.Empty, t),
        Symbol("PV_", which, t), money, Economy, Money.Rounded(Yearly(which, t) / Recovery(t), Currency));

    private Num? Compared(Trace? t = null) => ReplaceCost + Replace.YearlyCost > 0
        ? t.Step("yearly cost compared", "q", Measure.Percent, Quotient, Yearly(1, t) / Yearly(2, t))
        : null;

    // What replacing costs a year beyond the care of refinishing pays for it.
    private Num? BreakEven(Trace? t = null)
    {
        Num left = Refinish.YearlyCost > 0 ? Yearly(2, t) - CareOf(1, t) : Yearly(2, t);
        return EconomyKernel.BreakEven(Whole(1, t).ToNum(), left, Interest(t), t) is Num life
            ? t.Step(Name("break-even life of ", 1, string.Empty, t), "n*", Measure.Years, Solved, life)
            : null;
    }

    private Num Interest(Trace? t) => t.Given("r", rate, Measure.Percent);

    private Num CareOf(int which, Trace? t) => t.Given(Symbol("C_", which, t), (double)Option(which).YearlyCost, money);

    private RenewalOption Option(int which) => which == 1 ? Refinish : Replace;

    // No text is made without a derivation.
    private string Name(string before, int which, string after, Trace? t) => t is null ? string.Empty : before + Option(which).Name + after;

    private static string Symbol(string letter, int which, Trace? t, string after = "") =>
        t is null ? string.Empty : letter + (which == 1 ? "1" : "2") + after;

    private string Verdict()
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
