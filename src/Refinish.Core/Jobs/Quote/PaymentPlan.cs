using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>A total with tax, paid in stages: each a multiple of the coin, none negative, together exactly what is to be paid.</summary>
/// <remarks>
/// A stage by share is its share of the total, rounded down to a coin, so that no stage asks for more than its share; the last stage takes
/// the rest. A coin is the cash step, or the smallest amount of the currency where there is none. Amounts that are no multiple of it, or
/// stages that ask for more than the total, are <see cref="Faults"/>; then there are no payments.
/// </remarks>
/// <example><code>
/// PaymentPlan plan = new(Currency.Of("USD"), 1234.56m, 0m,
/// [
///     PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(10)),
///     PaymentStage.OfRest("rest", PaymentDue.OnCompletion),
/// ]);
/// decimal deposit = plan.Payments[0].Amount;   // 123.45
/// decimal rest = plan.Payments[1].Amount;      // 1111.11
/// </code></example>
public sealed record PaymentPlan
{
    private const decimal Hair = Currency.Hair;

    private static readonly Source WholeCoins = Source.Derived("the total rounded to the coin, halves up");
    private static readonly Source Agreed = Source.Supplied("terms of the quote");

    /// <summary>Divides a total over stages.</summary>
    /// <param name="currency">The currency.</param>
    /// <param name="total">Total with tax, 0 to 10¹², with no more decimals than the currency has.</param>
    /// <param name="cashStep">The smallest coin that is used, 0 to 10¹²; 0 for the smallest amount of the currency.</param>
    /// <param name="stages">The stages as <see cref="QuoteTerms.Payments"/> takes them.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="stages"/> cannot be the stages of one quote.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An amount is outside its range or has more decimals than the currency.</exception>
    public PaymentPlan(Currency currency, decimal total, decimal cashStep, IReadOnlyList<PaymentStage> stages)
    {
        Currency = Guard.NotNull(currency);
        Total = Fitting(total, nameof(total));
        CashStep = Fitting(cashStep, nameof(cashStep));
        Stages = QuoteTerms.InOrder(stages, nameof(stages));
        Payable = ToBePaid().Value;
        List<PaymentFault> faults = [];
        List<QuotePayment> payments = [.. Divided(faults)];
        Faults = new ValueList<PaymentFault>(faults);
        Payments = faults.Count > 0 ? ValueList<QuotePayment>.Empty : new ValueList<QuotePayment>(payments);
    }

    /// <summary>The currency.</summary>
    public Currency Currency { get; }

    /// <summary>Total with tax.</summary>
    public decimal Total { get; }

    /// <summary>The smallest coin that is used; 0 for the smallest amount of the currency.</summary>
    public decimal CashStep { get; }

    /// <summary>The total rounded to the coin, halves up.</summary>
    public decimal Payable { get; }

    /// <summary>The stages.</summary>
    public IReadOnlyList<PaymentStage> Stages { get; }

    /// <summary>What each stage comes to, in their order; empty without stages or with a fault.</summary>
    public IReadOnlyList<QuotePayment> Payments { get; }

    /// <summary>Stages that do not fit the total or the currency.</summary>
    public IReadOnlyList<PaymentFault> Faults { get; }

    /// <summary>What is asked for before the work has begun, held against a limit. It cannot be judged without payments.</summary>
    /// <param name="limit">The limit.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="limit"/> is missing.</exception>
    public LimitComparison Against(DepositLimit limit)
    {
        Guard.NotNull(limit);
        decimal? asked = Payments.Count == 0 ? null : Payments.Where(payment => payment.Stage.Due <= limit.Until).Sum(payment =>
            payment.Amount);
        return new LimitComparison(
            limit.Until switch
            {
                PaymentDue.OnAcceptance => "payments due on acceptance",
                PaymentDue.AtStart => "payments due by the start of the work",
                PaymentDue.OnCompletion => "payments due by completion",
                _ => "all payments",
            },
            (double?)asked,
            (double)limit.MostOf(Total),
            LimitSense.AtMost,
            Measure.Money(Currency),
            limit.Source,
            "ask for less before, and for more on completion");
    }

    /// <summary>How each payment follows.</summary>
    /// <returns>The derivation; without steps where there are no payments.</returns>
    public Workings Workings()
    {
        Trace t = new();
        Measure money = Measure.Money(Currency);
        Amount left = t.Step("to be paid, in whole coins", "T_p", money, WholeCoins, ToBePaid(t));
        for (int i = 0; i < Payments.Count; i++)
        {
            PaymentStage stage = Payments[i].Stage;
            left -= t.Step(stage.Name, "p_" + Figures.Fixed(i + 1, 0), money, Agreed, Asked(stage, left, t));
        }

        return t.Workings("Payments");
    }

    /// <summary>The payments in one line.</summary>
    /// <returns>Payments, or what is wrong with them.</returns>
    public override string ToString() => Faults.Count > 0
        ? string.Join(" ", Faults.Select(fault => fault.Sentence))
        : string.Join("; ", Payments.Select(payment => payment.ToString()));

    private Amount ToBePaid(Trace? t = null) => CashStep == 0 ? Whole(t) : Money.ToCoin(Whole(t), OneCoin(t));

    private Amount Asked(PaymentStage stage, Amount left, Trace? t = null) =>
        stage.Fraction is decimal share
            ? Amount.Min(left, Amount.Floor((t.Money("q", share, Measure.Percent) * Whole(t) / OneCoin(t)) + Hair) * OneCoin(t))
        : stage.Amount is decimal amount ? t.Money("a", amount, Measure.Money(Currency)) : left;

    private Amount Whole(Trace? t) => t.Money("T", Total, Measure.Money(Currency));

    private Amount OneCoin(Trace? t) => t.Money("s", Coin, Measure.Money(Currency));

    private decimal Coin => CashStep > 0 ? CashStep : Currency.SmallestAmount;

    private IEnumerable<QuotePayment> Divided(List<PaymentFault> faults)
    {
        decimal left = Payable;
        foreach (PaymentStage stage in Stages)
        {
            decimal asked = Asked(stage, left).Value;
            if (stage.Fraction is null && stage.Amount is decimal amount)
            {
                void Refuse(string allowed) => faults.Add(new PaymentFault(stage.Id, nameof(PaymentStage.Amount),
                    "Amount of the payment '" + stage.Id + "' is " + Plain(amount) + " " + Currency.Code + "; allowed: " + allowed + "."));
                if (amount % Coin != 0)
                {
                    Refuse("multiples of " + Plain(Coin));
                }

                if (amount > left)
                {
                    Refuse("at most " + Currency.Text(left) + ", which the stages before it leave of " + Currency.Text(Payable));
                }
            }

            left = Math.Max(0, left - asked);
            yield return new QuotePayment(stage, asked);
        }
    }

    private static string Plain(decimal amount) => amount.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private decimal Fitting(decimal amount, string name)
    {
        Money.Amount(amount, name);
        Guard.Rule(Currency.Fits(amount), name, (double)amount, Measure.Number, "multiples of " + Plain(Currency.SmallestAmount));
        return amount;
    }
}
