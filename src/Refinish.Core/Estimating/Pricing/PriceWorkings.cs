using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>The derivation of a price.</summary>
internal static class PriceWorkings
{
    private static readonly Source Line = Source.Derived("quantity × rate, rounded once to the currency, halves away from zero");
    private static readonly Source Sums = Source.Derived("sum of the rounded lines");
    private static readonly Source Rounded = Source.Derived("margin is a share of the price; rounded up to the currency");
    private static readonly Source Book = Source.Supplied("price book");
    private static readonly Source Division =
        Source.Derived("in proportion to cost, cut to the currency, what is left to the largest remainders");

    public static Workings Of(PriceEstimate estimate)
    {
        Measure money = Measure.Money(estimate.Book.Currency);
        List<Workings> parts =
        [
            estimate.Request.Labour.Workings(),
            .. estimate.Purchases.Select(purchase => purchase.Workings(estimate.Book.Currency)),
        ];
        List<WorkingStep> steps = [.. Hourly(estimate, money)];
        EstimateLine[] bought =
            [.. estimate.Lines.Where(line => line.Category is not (LineCategory.Tax or LineCategory.Discount or LineCategory.Margin))];
        List<WorkingStep> costLines = [.. bought.Select((line, i) => line.Step("c_" + Figures.Fixed(i + 1, 0), money, Line))];
        steps.AddRange(costLines);
        if (!estimate.IsComplete)
        {
            return new Workings("Cost lines; no price, because of gaps", steps, parts);
        }

        WorkingStep cost = Step("cost", "C", Total(costLines), estimate.Cost, money, Sums);
        steps.Add(cost);
        steps.AddRange(PriceSteps(estimate, money));
        WorkingStep subtotal = steps.First(step => step.Symbol == "S");
        steps.AddRange(Divided(estimate, costLines, bought, subtotal, money));
        steps.AddRange(After(estimate, subtotal, money));
        WorkingStep net = steps.First(step => step.Symbol == "N");
        WorkingStep profit =
            Step("profit", "G", net.Result() - cost.Result(), estimate.Profit, money, Source.Derived("net price less cost"));
        steps.Add(profit);
        if (estimate.RealisedMargin is UnitsNet.Ratio margin)
        {
            Expression share = profit.Result() / net.Result();
            steps.Add(new("realised margin, a share of the price", "m_r", share, margin.DecimalFractions, Measure.Percent,
                Source.Derived("definition of margin")));
        }

        if (estimate.RealisedMarkup is UnitsNet.Ratio markup)
        {
            Expression share = profit.Result() / cost.Result();
            steps.Add(new("realised markup, a share of the cost", "u_r", share, markup.DecimalFractions, Measure.Percent,
                Source.Derived("definition of markup")));
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
            yield return new(name, symbol, Expression.Round(rate * (1 + burden), estimate.Book.Currency), (double)burdened, money, Book);
        }
    }

    private static IEnumerable<WorkingStep> PriceSteps(PriceEstimate estimate, Measure money)
    {
        PricedCosts costs = estimate.Costs;
        Expression marked = Expression.Quantity("C_m", (double)costs.MarkedUp, money);
        Expression margin = Expression.Quantity("m", (double)estimate.Book.TargetMargin.Fraction, Measure.Percent);
        Expression options = Expression.Quantity("P_o", (double)costs.FixedPrice, money);
        WorkingStep atMargin;
        if (estimate.Request.HoldMargin)
        {
            // A thousand-millionth of a minor unit, so that a whole amount does not round up by its last digit.
            double unit = (double)estimate.Book.Currency.SmallestAmount;
            Expression cost = Expression.Quantity("C", (double)estimate.Cost!.Value, money);
            Expression held = Expression.Ceiling((cost / (1 - margin) / unit) - 1e-7) * unit;
            WorkingStep least = Step("least net price that leaves the margin", "N_m", held, estimate.Sold.HeldNet, money, Rounded);
            yield return least;
            decimal before = estimate.Sold.AtMargin + costs.FixedPrice;
            Expression discountOf =
                Expression.Quantity("D_m", (double)(estimate.Sold.HeldNet < before ? before - estimate.Sold.HeldNet : 0), money);
            atMargin = Step(
                "price before the discount that leaves this after it, at least the fixed prices",
                "P",
                Expression.Max(options, least.Result() + discountOf),
                estimate.PriceAtMargin,
                money,
                Source.Derived("the discount D_m is rounded to the currency"));
        }
        else
        {
            Expression sold = Expression.Round(marked / (1 - margin), estimate.Book.Currency) + options;
            atMargin = Step("price at the target margin, with fixed prices", "P", sold, estimate.PriceAtMargin, money,
                Source.Derived("margin is a share of the price"));
        }

        yield return atMargin;
        Expression minimum = Expression.Quantity("P_min", (double)estimate.Book.MinimumCharge, money);
        yield return Step("subtotal, at least the minimum charge", "S", Expression.Max(atMargin.Result(), minimum), estimate.Subtotal,
            money, Book);
    }

    // What each line without a fixed price carries of the subtotal.
    private static IEnumerable<WorkingStep> Divided(PriceEstimate estimate, List<WorkingStep> costs, EstimateLine[] lines,
        WorkingStep subtotal, Measure money)
    {
        PricedCosts priced = estimate.Costs;
        if (priced.DirectCost == 0)
        {
            yield break;
        }

        Expression charged = subtotal.Result() - Expression.Quantity("P_o", (double)priced.FixedPrice, money);
        Expression direct = Expression.Quantity("C_d", (double)priced.DirectCost, money);
        decimal carried = estimate.Subtotal!.Value - priced.FixedPrice;
        for (int i = 0; i < priced.Direct.Count; i++)
        {
            decimal exact = carried * (lines[i].Cost / priced.DirectCost);
            Expression cut = Expression.Quantity("δ", (double)(lines[i].Price - exact), money);
            yield return new(
                lines[i].Code + " " + lines[i].Description + ", as sold", "p_" + Figures.Fixed(i + 1, 0),
                    (charged * (costs[i].Result() / direct)) + cut,
                (double)lines[i].Price, money, Division);
        }
    }

    private static IEnumerable<WorkingStep> After(PriceEstimate estimate, WorkingStep subtotal, Measure money)
    {
        PriceBook book = estimate.Book;
        Discount? discount = estimate.Request.Discount;
        Expression asked = discount?.Amount is decimal amount
            ? Expression.Quantity("D_a", (double)amount, money)
            : Expression.Round(subtotal.Result() * Expression.Quantity("d", (double)(discount?.Fraction ?? 0), Measure.Percent),
                book.Currency);
        Expression minimum = Expression.Quantity("P_min", (double)book.MinimumCharge, money);
        Expression allowed = discount is null or { MayUndercutMinimum: true }
            ? asked
            : Expression.Min(asked, Expression.Max(Expression.Quantity("0", 0, money), subtotal.Result() - minimum));
        WorkingStep given = Step("discount that is given", "D", allowed, estimate.DiscountGiven, money, Source.Supplied("discount agreed"));
        yield return given;
        WorkingStep net = Step("net price after discount", "N", subtotal.Result() - given.Result(), estimate.Net, money,
            Source.Derived("subtotal less discount"));
        yield return net;
        List<WorkingStep> taxes = [.. estimate.Lines.Where(line => line.Category == LineCategory.Tax)
            .Select((line, i) => line.Step("X_" + Figures.Fixed(i + 1, 0), money, Book))];
        foreach (WorkingStep tax in taxes)
        {
            yield return tax;
        }

        WorkingStep total = Step("total with tax", "T", taxes.Count == 0
            ? net.Result() : net.Result() + Total(taxes), estimate.Total, money, Sums);
        yield return total;
        if (book.CashStep > 0)
        {
            Expression coin = Expression.Quantity("s", (double)book.CashStep, money);
            yield return Step("payable, to the cash step", "T_s", Expression.Floor((total.Result() / coin) + 0.5) * coin, estimate.Payable,
                money, Book);
        }
    }

    private static Expression Total(IEnumerable<WorkingStep> steps) => Expression.Sum(steps.Select(step => step.Result()));

    private static WorkingStep Step(string name, string symbol, Expression formula, decimal? value, Measure money, Source source) =>
        new(name, symbol, formula, (double)(value ?? 0), money, source);
}
