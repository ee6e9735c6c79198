using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>What the estimator's program gets for one row: a price whose lines add up to its total, or why the fixture is not refinished.</summary>
internal sealed record FixtureEstimate(TakeoffRow Row, Verdict Verdict, PriceEstimate? Price, string Note)
{
    /// <summary>Area, verdict, quantities, hours and price, all by the library; travel and disposal belong to the property and stand on no row.</summary>
    public static FixtureEstimate Of(TakeoffRow row)
    {
        Verdict verdict = new(row.Survey, Shop.Policy);
        IReadOnlyList<string> objections = Shop.System.ObjectionsFor(row.Survey.Material);
        string reasons = string.Join("; ", verdict.Reasons.Select(reason => reason.RuleCode + " " + reason.Title + ": " + reason.Remedy).Concat(objections).Distinct());
        if (!verdict.MayBePlanned || objections.Count > 0)
        {
            return new FixtureEstimate(row, verdict, null, reasons);
        }

        Area all = row.Shape.CoatedArea * row.Count;
        EstimateRequest request = new()
        {
            Fixtures = row.Count,
            Trips = 0,
            Labour = new LabourEstimate(
            [
                new LabourTask(Shop.Prepare, row.Shape.CoatedArea, units: 1) { Repeats = row.Count },
                .. LabourStandards.ForDefects(row.Survey.Defects).GroupBy(task => task.Standard)
                    .Select(same => new LabourTask(same.Key, units: same.Sum(task => task.Units)) { Repeats = row.Count }),
                new LabourTask(Shop.Spray, row.Shape.CoatedArea) { Repeats = row.Count },
                new LabourTask(Shop.Return, units: 1) { Repeats = row.Count },
            ]),
            Materials = [.. Materials(row, all)],
            Options = [.. row.Options.Select(code => new OptionOrder(code, row.Count))],
        };
        PriceEstimate price = new(Shop.Prices, request);
        return price.IsComplete
            ? new FixtureEstimate(row, verdict, price, reasons)
            : throw new RowException(price.Gaps[0].Code.StartsWith('X') ? "options" : "material", string.Join("; ", price.Gaps.Select(gap => gap.ToString())));
    }

    private static IEnumerable<MaterialNeed> Materials(TakeoffRow row, Area all)
    {
        foreach (TakeoffLine line in new Takeoff([new CoatedSurface(row.Fixture, all)], Shop.System, Shop.Losses).Lines)
        {
            yield return new MaterialNeed(line.Product.Name, line.Mixed);
            if (line.Product.Reducer is { } reducer)
            {
                yield return new MaterialNeed(reducer.Name, line.Reducer);
            }
        }

        if (Shop.System.PromoterFor(row.Survey.Material) is { } promoter)
        {
            yield return new MaterialNeed(promoter.Name, new PromoterQuantity(all, promoter).Volume);
        }

        FillerEstimate filler = new(row.Survey.Defects, Shop.Filler);
        if (filler.Items.Count > 0)
        {
            yield return new MaterialNeed(Shop.Filler.Product.Name, filler.Volume * row.Count);
        }

        foreach (MaterialNeed need in DefectMaterials.For(row.Survey.Defects, row.Shape.CoatedArea, Shop.DefectMaterials))
        {
            yield return new MaterialNeed(need.Item, need.Volume * row.Count);
        }
    }
}
