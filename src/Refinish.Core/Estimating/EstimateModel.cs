using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// An estimate as a function of its uncertain inputs: labour tasks first, then factors on quantities, kit prices, labour rate, extras.
/// Hours and amounts are not rounded; kits stay whole.
/// </summary>
internal sealed class EstimateModel
{
    private readonly double[] areaShares;
    private readonly QuantityFactor[] factors;
    private readonly KitStaircase[] kits;
    private readonly double[] needs;

    // For each item, the factors that multiply it.
    private readonly int[][] multiplies;
    private readonly double rate;
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
        Inputs =
        [
            .. request.Labour.Lines.Select((line, i) => new UncertainInput(
                line.Code + " " + line.Description, line.HourRange.As(doubts.Hours), EstimateRange.LabourGroup)),
            .. factors.Select(factor => new UncertainInput(factor.Name, factor.Distribution)),
            new UncertainInput("kit prices", doubts.KitPrices),
            new UncertainInput("labour rate", doubts.LabourRate),
            .. doubts.Extras,
        ];
        areaShares = [.. request.Labour.Lines.Select(line => line.Task.AreaShare)];
        IGrouping<string, MaterialNeed>[] items = [.. request.Materials.GroupBy(need => need.Item, StringComparer.Ordinal)];
        needs = [.. items.Select(item => item.Sum(need => need.Volume.CubicMeters))];
        multiplies = [.. items.Select(item => Enumerable.Range(0, factors.Length).Where(i => factors[i].Multiplies(item.Key)).ToArray())];
        kits = [.. items.Select((item, i) => new KitStaircase([.. book.Materials.Where(price => price.Item == item.Key)], End(i, low: true), End(i, low: false)))];
        rate = (double)Money.Round((book.LabourRate ?? 0) * (1 + book.BurdenFraction));
        overheadPerHour = (double)book.OverheadPerHour;
        overheadFraction = (double)book.OverheadFraction;

        // What does not vary: consumables, travel, disposal and options, and on the other side warranty and the cost of options at a fixed price.
        decimal labour = request.Labour.Lines.Sum(line => Money.Round(Money.Round(line.HourRange.Mean) * (decimal)rate));
        directRest = (double)(estimate.DirectCost - labour - estimate.Purchases.Sum(purchase => purchase.Cost));
        spreadRest = (double)estimate.FixedCost;
    }

    public IReadOnlyList<UncertainInput> Inputs { get; }

    public double Hours(double[] drawn)
    {
        double area = 1;
        for (int i = 0; i < factors.Length; i++)
        {
            if (factors[i].ScalesAreaLabour)
            {
                area *= factors[i].Of(drawn[tasks + i]);
            }
        }

        double hours = 0;
        for (int i = 0; i < tasks; i++)
        {
            hours += drawn[i] * (1 + (areaShares[i] * (area - 1)));
        }

        return hours;
    }

    public double Cost(double[] drawn, double hours)
    {
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
        double direct = directRest + (material * drawn[next]) + (hours * rate * drawn[next + 1]);
        double cost = (direct * (1 + overheadFraction)) + (hours * overheadPerHour) + spreadRest;
        for (int i = next + 2; i < drawn.Length; i++)
        {
            cost += drawn[i];
        }

        return cost;
    }

    public double Cost(double[] drawn) => Cost(drawn, Hours(drawn));

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
