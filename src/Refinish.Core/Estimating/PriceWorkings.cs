using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>The derivation of a price.</summary>
internal static class PriceWorkings
{
    private static readonly Source Line = Source.Derived("quantity × rate, rounded once to cents, halves away from zero");
    private static readonly Source Sums = Source.Derived("sum of the rounded lines");
    private static readonly Source Rounded = Source.Derived("margin is a share of the price; rounded up to cents");
    private static readonly Source Book = Source.Supplied("price book");

    public static Workings Of(PriceEstimate estimate, PricedCosts costs)
    {
        Measure money = Measure.Money(estimate.Book.Currency);
        List<Workings> parts =
        [
            estimate.Request.Labour.Workings(),
            .. estimate.Purchases.Select(purchase => purchase.Workings(estimate.Book.Currency)),
        ];
        List<WorkingStep> steps = [.. Hourly(estimate, money)];
        List<WorkingStep> costLines = LineSteps(estimate.CostLines, "c_", money);
        steps.AddRange(costLines);
        if (!estimate.IsComplete)
        {
            return new Workings("Cost lines; no price, because of gaps", steps, parts);
        }

        WorkingStep cost = Step("cost", "C", Total(costLines), estimate.Cost, money, Sums);
        steps.Add(cost);
        steps.AddRange(PriceSteps(estimate, costs, money));
        List<WorkingStep> sold = LineSteps(estimate.Lines, "p_", money);
        steps.AddRange(sold);
        WorkingStep net = steps.First(step => step.Symbol == "N");
        steps.Add(Step("total of the customer's lines", "T", Total(sold), estimate.Total, money, Sums));
        Source difference = Source.Derived("net price less cost");
        WorkingStep profit = Step("profit", "G", net.Result() - cost.Result(), estimate.Profit, money, difference);
        steps.Add(profit);
        if (estimate.RealisedMargin is UnitsNet.Ratio margin)
        {
            Expression share = profit.Result() / net.Result();
            Source definition = Source.Derived("definition of margin");
            steps.Add(new("realised margin, a share of the price", "m_r", share, margin.DecimalFractions, Measure.Percent, definition));
        }

        if (estimate.RealisedMarkup is UnitsNet.Ratio markup)
        {
            Expression share = profit.Result() / cost.Result();
            Source definition = Source.Derived("definition of markup");
            steps.Add(new("realised markup, a share of the cost", "u_r", share, markup.DecimalFractions, Measure.Percent, definition));
        }

        return new Workings("Price", steps, parts);
    }

    // One step for the wage of the price book and one for each other wage that is paid.
    private static IEnumerable<WorkingStep> Hourly(PriceEstimate estimate, Measure money)
    {
        List<decimal> wages = [];
        if (estimate.Book.LabourRate is decimal usual)
        {
            wages.Add(usual);
        }

        wages.AddRange(estimate.Request.Labour.Lines.Select(line => line.Task.Wage).OfType<decimal>());
        wages.AddRange(estimate.Request.PaidTime.Select(paid => paid.Wage).OfType<decimal>());
        Expression burden = Expression.Quantity("β", (double)estimate.Book.BurdenFraction, Measure.Percent);
        int number = 0;
        foreach (decimal wage in wages.Distinct())
        {
            string name = number == 0 && estimate.Book.LabourRate is not null
                ? "hourly cost of labour with burden"
                : "hourly cost with burden at a wage of " + money.Format((double)wage);
            number++;
            Expression rate = Expression.Quantity("w", (double)wage, money);
            string symbol = number == 1 ? "w_b" : "w_b" + Figures.Fixed(number, 0);
            decimal burdened = PricedCosts.Burdened(estimate.Book, wage);
            yield return new(name, symbol, Expression.RoundToCents(rate * (1 + burden)), (double)burdened, money, Book);
        }
    }

    private static IEnumerable<WorkingStep> PriceSteps(PriceEstimate estimate, PricedCosts costs, Measure money)
    {
        Expression marked = Expression.Quantity("C_m", (double)costs.MarkedUp, money);
        Expression margin = Expression.Quantity("m", (double)estimate.Book.TargetMargin.Fraction, Measure.Percent);
        Expression options = Expression.Quantity("P_o", (double)costs.FixedPrice, money);
        Source share = Source.Derived("margin is a share of the price");
        WorkingStep atMargin;
        if (estimate.Request.HoldMargin)
        {
            // A thousand-millionth of a cent, so that an amount of whole cents does not round up by its last digit.
            Expression cost = Expression.Quantity("C", (double)estimate.Cost!.Value, money);
            Expression held = Expression.Ceiling((100 * cost / (1 - margin)) - 1e-7) / 100;
            WorkingStep least = Step("least net price that leaves the margin", "N_m", held, costs.HeldNet, money, Rounded);
            yield return least;
            decimal before = costs.AtMargin + costs.FixedPrice;
            Expression discountOf = Expression.Quantity("D", (double)(costs.HeldNet < before ? before - costs.HeldNet : 0), money);
            atMargin = Step(
                "price before the discount that leaves this after it, at least the options at fixed price",
                "P",
                Expression.Max(options, least.Result() + discountOf),
                estimate.PriceAtMargin,
                money,
                Source.Derived("the discount D is rounded to cents"));
        }
        else
        {
            Expression sold = Expression.RoundToCents(marked / (1 - margin)) + options;
            atMargin = Step("price at the target margin, with options at fixed price", "P", sold, estimate.PriceAtMargin, money, share);
        }

        yield return atMargin;
        Expression minimum = Expression.Quantity("P_min", (double)Money.Round(estimate.Book.MinimumCharge), money);
        Expression more = Expression.Max(atMargin.Result(), minimum);
        WorkingStep subtotal = Step("subtotal, at least the minimum charge", "S", more, estimate.Subtotal, money, Book);
        yield return subtotal;
        Expression discount = Expression.Quantity("d", (double)estimate.Request.DiscountFraction, Measure.Percent);
        Expression left = subtotal.Result() - Expression.RoundToCents(subtotal.Result() * discount);
        WorkingStep net = Step("net price after discount", "N", left, estimate.Net, money, Source.Supplied("discount agreed"));
        yield return net;
        Expression tax = Expression.Quantity("τ", (double)estimate.Book.TaxFraction, Measure.Percent);
        yield return Step("sales tax", "X", Expression.RoundToCents(net.Result() * tax), estimate.Tax, money, Book);
    }

    private static List<WorkingStep> LineSteps(IReadOnlyList<EstimateLine> lines, string symbol, Measure money) =>
        [.. lines.Select((line, i) => line.Step(symbol + Figures.Fixed(i + 1, 0), money, Line))];

    private static Expression Total(IEnumerable<WorkingStep> steps) => Expression.Sum(steps.Select(step => step.Result()));

    private static WorkingStep Step(string name, string symbol, Expression formula, decimal? value, Measure money, Source source) =>
        new(name, symbol, formula, (double)(value ?? 0), money, source);
}
