using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// An estimate as a function of its uncertain inputs: labour tasks first, then factors on quantities, kit prices, labour rate, extras.
/// Hours and amounts are not rounded; kits stay whole; paid time does not vary, its wage does.
/// </summary>
internal sealed class EstimateModel
{
    private readonly double[] areaShares;
    private readonly QuantityFactor[] factors;
    private readonly KitStaircase[] kits;
    private readonly double[] needs;

    // For each item, the factors that multiply it.
    private readonly int[][] multiplies;

    // What an hour of each task costs.
    private readonly double[] rates;
    private readonly double paidHours;
    private readonly double paidCost;
    private readonly double overheadPerHour;
    private readonly double overheadFraction;
    private readonly double directRest;
    private readonly double spreadRest;
    private readonly int tasks;

    public EstimateModel(PriceEstimate estimate, EstimateUncertainty doubts)
    {
        EstimateRequest request = estimate.Request;
        PriceBook book = estimate.Book;
        tasks = request.Labour.Lines.Count;
        factors = [.. doubts.Quantities];
        Inputs = new ValueList<UncertainInput>(
        [
            .. request.Labour.Lines.Select(line => new UncertainInput
            {
                Name = line.Code + " " + line.Description,
                Distribution = line.HourRange.As(doubts.Hours),
                Group = "labour",
            }),
            .. factors.Select(factor => new UncertainInput { Name = factor.Name, Distribution = factor.Distribution }),
            new UncertainInput { Name = "kit prices", Distribution = doubts.KitPrices },
            new UncertainInput { Name = "labour rate", Distribution = doubts.LabourRate },
            .. doubts.Extras,
        ]);
        areaShares = [.. request.Labour.Lines.Select(line => line.Task.AreaShare)];
        rates = [.. request.Labour.Lines.Select(line => Rate(book, line.Task.Wage))];
        paidHours = request.PaidTime.Where(paid => !paid.IsPremium).Sum(paid => paid.Hours);
        paidCost = request.PaidTime.Sum(paid => paid.Hours * Rate(book, paid.Wage));
        needs = [.. estimate.Purchases.Select(purchase => purchase.Need.Si)];
        multiplies = [.. estimate.Purchases.Select(purchase =>
            Enumerable.Range(0, factors.Length).Where(i => factors[i].Multiplies(purchase.Item)).ToArray())];
        kits = [.. estimate.Purchases.Select((purchase, i) => new KitStaircase(purchase, End(i, low: true), End(i, low: false)))];
        overheadPerHour = (double)book.OverheadPerHour;
        overheadFraction = (double)book.OverheadFraction;

        // What does not vary: consumables, travel, disposal and options, and on the other side warranty and the cost of options at a fixed
        // price.
        decimal labour = estimate.Lines.Where(line => line.Category == LineCategory.Labour).Sum(line => line.Cost);
        directRest = (double)(estimate.DirectCost - labour - estimate.Purchases.Sum(purchase => purchase.Cost));
        spreadRest = (double)estimate.FixedCost;
    }

    public IReadOnlyList<UncertainInput> Inputs { get; }

    public double Cost(double[] drawn) => Cost(drawn, out _);

    public double Cost(double[] drawn, out double hours)
    {
        double area = 1;
        for (int i = 0; i < factors.Length; i++)
        {
            if (factors[i].ScalesAreaLabour)
            {
                area *= factors[i].Of(drawn[tasks + i]);
            }
        }

        hours = paidHours;
        double wages = paidCost;
        for (int i = 0; i < tasks; i++)
        {
            double worked = drawn[i] * (1 + (areaShares[i] * (area - 1)));
            hours += worked;
            wages += worked * rates[i];
        }

        double material = 0;
        for (int i = 0; i < kits.Length; i++)
        {
            double need = needs[i];
            foreach (int factor in multiplies[i])
            {
                need *= factors[factor].Of(drawn[tasks + factor]);
            }

            material += kits[i].CostOf(need);
        }

        int next = tasks + factors.Length;
        double direct = directRest + (material * drawn[next]) + (wages * drawn[next + 1]);
        double cost = (direct * (1 + overheadFraction)) + (hours * overheadPerHour) + spreadRest;
        for (int i = next + 2; i < drawn.Length; i++)
        {
            cost += drawn[i];
        }

        return cost;
    }

    private static double Rate(PriceBook book, decimal? wage) => (double)PricedCosts.Burdened(book, wage ?? book.LabourRate ?? 0);

    private double End(int item, bool low)
    {
        double need = needs[item];
        foreach (int factor in multiplies[item])
        {
            double one = factors[factor].Of(factors[factor].Distribution.At(0.001));
            double other = factors[factor].Of(factors[factor].Distribution.At(0.999));
            need *= low ? Math.Min(one, other) : Math.Max(one, other);
        }

        return need;
    }
}
