using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class PaymentPlanTests
{
    private static readonly Currency Dollar = Currency.Of("USD");

    private static PaymentStage Share(string id, PaymentDue due, double percent) => PaymentStage.OfShare(id, due, Ratio.FromPercent(percent));

    private static PaymentStage Rest(PaymentDue due = PaymentDue.OnCompletion) => PaymentStage.OfRest("rest", due);

    private static decimal[] Amounts(PaymentPlan plan) => [.. plan.Payments.Select(payment => payment.Amount)];

    [Fact]
    [Evidence(Basis.Independent, "by hand: 10 % of 1234.56 is 123.456, cut to 123.45; 200 at the start; 1234.56 - 123.45 - 200 = 911.11 is left")]
    public void Shares_are_cut_and_the_rest_is_what_is_left()
    {
        PaymentPlan plan = new(Dollar, 1234.56m, 0m, [Share("deposit", PaymentDue.OnAcceptance, 10), PaymentStage.OfAmount("start", PaymentDue.AtStart, 200m), Rest()]);
        Assert.Equal([123.45m, 200m, 911.11m], Amounts(plan));
        Assert.Equal(["deposit", "start", "rest"], plan.Payments.Select(payment => payment.Id));
        Assert.Equal("deposit, on acceptance: 123.45", plan.Payments[0].ToString());
        Numbers.CanBeWritten(plan.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand, Swiss coins of 0.05: 987.63 is paid as 987.65; a third of it, 329.21, is 329.20; two thirds are 658.45")]
    public void Payments_are_coins()
    {
        PaymentPlan plan = new(Currency.Of("CHF"), 987.63m, 0.05m, [PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromDecimalFractions(1.0 / 3)), Rest()]);
        Assert.Equal(987.65m, plan.Payable);
        Assert.Equal([329.20m, 658.45m], Amounts(plan));
        Numbers.CanBeWritten(plan.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: yen have no decimals, 30 % of 12345 is 3703.5; dinars have three, 30 % of 12.345 is 3.7035")]
    public void Payments_have_the_decimals_of_the_currency()
    {
        Assert.Equal([3703m, 8642m], Amounts(new(Currency.Of("JPY"), 12345m, 0m, [Share("deposit", PaymentDue.OnAcceptance, 30), Rest()])));
        Assert.Equal([3.703m, 8.642m], Amounts(new(Currency.Of("KWD"), 12.345m, 0m, [Share("deposit", PaymentDue.OnAcceptance, 30), Rest()])));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: a third of 300 typed in fifteen figures is 100.00 and not 99.99; three thirds leave nothing and are allowed")]
    public void A_third_is_a_third()
    {
        Ratio third = Ratio.FromDecimalFractions(1.0 / 3);
        PaymentStage[] stages =
        [
            PaymentStage.OfShare("a", PaymentDue.OnAcceptance, third), PaymentStage.OfShare("b", PaymentDue.AtStart, third),
            PaymentStage.OfShare("c", PaymentDue.OnCompletion, third), Rest(),
        ];
        Assert.Equal([100m, 100m, 100m, 0m], Amounts(new(Dollar, 300m, 0m, stages)));
        Ratio sixth = Ratio.FromDecimalFractions(1.0 / 6);
        PaymentPlan six = new(Dollar, 0.05m, 0.05m, [.. Enumerable.Range(1, 6).Select(i => PaymentStage.OfShare("s" + i, PaymentDue.OnAcceptance, sixth)), Rest()]);
        Assert.Equal([0m, 0m, 0m, 0m, 0m, 0m, 0.05m], Amounts(six));
    }

    [Fact]
    [Evidence(Basis.Contract, "an amount beyond what is left, and one that is no coin, are faults with stage and field; there are no payments then")]
    public void Stages_that_do_not_fit_are_faults()
    {
        PaymentPlan much = new(Dollar, 300m, 0m, [PaymentStage.OfAmount("a", PaymentDue.OnAcceptance, 200m), PaymentStage.OfAmount("b", PaymentDue.AtStart, 100.01m), Rest()]);
        PaymentFault fault = Assert.Single(much.Faults);
        Assert.Equal(("b", "Amount"), (fault.Stage, fault.Field));
        Assert.Equal("Amount of the payment 'b' is 100.01 USD; allowed: at most 100.00 USD, which the stages before it leave of 300.00 USD.", fault.Sentence);
        Assert.Empty(much.Payments);
        PaymentFault cents = Assert.Single(new PaymentPlan(Currency.Of("JPY"), 3000m, 0m, [PaymentStage.OfAmount("a", PaymentDue.OnAcceptance, 200.5m), Rest()]).Faults);
        Assert.Equal("Amount of the payment 'a' is 200.5 JPY; allowed: multiples of 1.", cents.Sentence);
        PaymentFault coin = Assert.Single(new PaymentPlan(Currency.Of("CHF"), 300m, 0.05m, [PaymentStage.OfAmount("a", PaymentDue.OnAcceptance, 20.02m), Rest()]).Faults);
        Assert.Equal("Amount of the payment 'a' is 20.02 CHF; allowed: multiples of 0.05.", coin.Sentence);
        Assert.Equal([300m, 0m], Amounts(new(Dollar, 300m, 0m, [PaymentStage.OfAmount("all", PaymentDue.OnAcceptance, 300m), Rest()])));
    }

    [Fact]
    [Evidence(Basis.Contract, "stages that cannot be those of one quote are refused where they are given")]
    public void Stages_are_in_order_and_end_with_the_rest()
    {
        static void Refused(string words, params PaymentStage[] stages)
        {
            foreach (ArgumentException error in (ArgumentException[])
            [
                Assert.Throws<ArgumentException>(() => _ = new QuoteTerms { Payments = stages }),
                Assert.Throws<ArgumentException>(() => _ = new PaymentPlan(Dollar, 100m, 0m, stages)),
            ])
            {
                Assert.Contains(words, error.Message, StringComparison.Ordinal);
            }
        }

        Refused("ends with 'a'", Share("a", PaymentDue.OnAcceptance, 10));
        Refused("take the rest before", Rest(), PaymentStage.OfRest("b", PaymentDue.OnCompletion));
        Refused("order in which they fall due", Share("a", PaymentDue.AtStart, 10), Share("b", PaymentDue.OnAcceptance, 10), Rest());
        Refused("at most 100 %", Share("a", PaymentDue.OnAcceptance, 60), Share("b", PaymentDue.AtStart, 41), Rest());
        Refused("twice", Share("a", PaymentDue.OnAcceptance, 10), Share("a", PaymentDue.AtStart, 10), Rest());
        Refused("order in which they fall due", PaymentStage.OfAmount("a", PaymentDue.AfterCompletion, 10m) with { Days = 30 }, PaymentStage.OfRest("rest", PaymentDue.AfterCompletion) with { Days = 14 });
        Assert.Throws<ArgumentException>(() => _ = Rest() with { Days = 3 });
        Numbers.Refuses("share", () => _ = Share("a", PaymentDue.AtStart, 100.5));
        Numbers.Refuses("share", () => _ = Share("a", PaymentDue.AtStart, 0));
        Numbers.Refuses("total", () => _ = new PaymentPlan(Dollar, 1.005m, 0m, []));
        Numbers.Refuses("cashStep", () => _ = new PaymentPlan(Dollar, 1m, 0.001m, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => _ = PaymentStage.OfAmount("a", PaymentDue.AtStart, 0m));
        Assert.Throws<ArgumentOutOfRangeException>(() => _ = PaymentStage.OfRest("a", (PaymentDue)9));
        Numbers.Refuses("Days", () => _ = PaymentStage.OfRest("rest", PaymentDue.AfterCompletion) with { Days = -1 });
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand, the lesser of 1000 and 10 % as California Business and Professions Code § 7159.5 (a)(3) has it, read second-hand: of 4200 the share, 420; "
        + "of 12000 the amount, 1000")]
    public void A_deposit_is_held_against_the_lesser_of_share_and_amount()
    {
        DepositLimit limit = new(Ratio.FromPercent(10), 1000m, Source.Published("California Business and Professions Code", "§ 7159.5 (a)(3), read second-hand"));
        Assert.Equal(420m, limit.MostOf(4200m));
        Assert.Equal(1000m, limit.MostOf(12000m));
        PaymentStage[] stages = [Share("deposit", PaymentDue.OnAcceptance, 10), PaymentStage.OfAmount("start", PaymentDue.AtStart, 100m), Rest()];
        PaymentPlan plan = new(Dollar, 4200m, 0m, stages);
        LimitComparison strict = plan.Against(limit);
        Assert.Equal((520, 420, ComparisonOutcome.Beyond), (strict.Value?.Si, strict.Limit?.Si, strict.Outcome));
        LimitComparison acceptance = plan.Against(new DepositLimit(limit.Share, limit.Amount, limit.Source, PaymentDue.OnAcceptance));
        Assert.Equal((420, 420, ComparisonOutcome.Within), (acceptance.Value?.Si, acceptance.Limit?.Si, acceptance.Outcome));
        Assert.Equal(ComparisonOutcome.Beyond, new PaymentPlan(Dollar, 12000m, 0m, stages).Against(new DepositLimit(limit.Share, limit.Amount, limit.Source, PaymentDue.OnAcceptance)).Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, new PaymentPlan(Dollar, 4200m, 0m, []).Against(limit).Outcome);
        Assert.Throws<ArgumentException>(() => _ = new DepositLimit(null, null, Source.Invented("test")));
        Numbers.Refuses("share", () => _ = new DepositLimit(Ratio.FromPercent(101), null, Source.Invented("test")));
        Assert.Equal("at most 10 % (invented: test)", new DepositLimit(Ratio.FromPercent(10), null, Source.Invented("test")).ToString());
    }

    [Fact]
    [Evidence(Basis.Identity, "payments are coins, none is negative, none by share is more than its share, and they add up to what is paid: 2000 random plans")]
    public void Payments_add_up()
    {
        Random random = new(15);
        Currency[] currencies = [Dollar, Currency.Of("JPY"), Currency.Of("KWD"), Currency.Of("CHF")];
        for (int trial = 0; trial < 2000; trial++)
        {
            Currency currency = currencies[random.Next(4)];
            decimal step = random.Next(2) == 0 ? 0m : currency.SmallestAmount * (random.Next(2) == 0 ? 5 : 100);
            decimal total = currency.SmallestAmount * random.Next(0, 2_000_000);
            double left = 1;
            List<PaymentStage> stages = [];
            for (int i = random.Next(0, 4); i > 0; i--)
            {
                double share = Math.Round(left * random.NextDouble(), 3);
                left -= share;
                stages.Add(share == 0 ? PaymentStage.OfShare("s" + i, PaymentDue.OnAcceptance, Ratio.FromPercent(0.01)) : PaymentStage.OfShare("s" + i, PaymentDue.OnAcceptance, Ratio.FromDecimalFractions(share * 0.999)));
            }

            PaymentPlan plan = new(currency, total, step, [.. stages, Rest()]);
            decimal coin = step > 0 ? step : currency.SmallestAmount;
            Assert.Equal(stages.Count + 1, plan.Payments.Count);
            Assert.Equal(plan.Payable, plan.Payments.Sum(payment => payment.Amount));
            Assert.True(Math.Abs(plan.Payable - total) <= coin / 2);
            foreach (QuotePayment payment in plan.Payments)
            {
                Assert.True(payment.Amount >= 0 && payment.Amount % coin == 0, payment.ToString());
                if (payment.Stage.Share is Ratio share)
                {
                    Assert.InRange((double)payment.Amount, ((double)total * share.DecimalFractions) - (double)coin, ((double)total * share.DecimalFractions) + 1e-6);
                }
            }
        }
    }
}
