using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;

namespace Refinish.Jobs;

/// <summary>
/// What stands in the way of coats before any time is looked for: air and surface, cure, cups, volatile organic compounds.
/// </summary>
internal static class RunObjections
{
    // In the order in which the spray window and the forecast list their checks.
    private static readonly string[] WindowCodes =
        ["dew-point", "humidity", "air-cold", "air-hot", "surface-cold", "surface-hot", "humidity-low"];
    private static readonly string[] CureCodes = ["cure-cold", "cure-hot"];

    public static IEnumerable<PlanObjection> Of(WorkList work)
    {
        HashSet<string> told = new(StringComparer.Ordinal);
        HashSet<CoatingProduct> compared = [];
        // The coldest first: of several runs with one product in one room, it is the one that a limit is told of.
        foreach (CoatRun run in work.Runs.OrderBy(run => run.OnSurface.Site.Kelvins))
        {
            Operation? operation = work.Operations.FirstOrDefault(one => one.Id == run.Id);
            bool held = operation?.Room is not string room || work.Courses[room].IsHeld;
            string about = (operation?.Room ?? run.Id) + "/" + run.Layer.Product.Id;
            foreach (PlanObjection objection in held
                ? Climate(run, about).Concat(Operations(run)).Where(objection => told.Add(objection.Id)) : [])
            {
                yield return objection;
            }

            // In a held room the checks of the cure have said it where the product gives no times at all.
            if (!run.Cups.IsPossible && (run.InCup.IsAvailable || !held))
            {
                yield return new PlanObjection(ObjectionKind.Batch, run.Id, string.Empty, run.Layer.Product.Name + ": " + string.Join(" ", run.Cups.Objections));
            }

            bool first = compared.Add(run.Layer.Product);
            foreach (PlanObjection objection in first ? Sheet(run.Layer.Product) : [])
            {
                yield return objection;
            }

            if (work.Shop.Limits.Voc.Count > 0 && first
                && VocComparison.Of(run.Layer, work.Shop.Limits) is { Outcome: not ComparisonOutcome.Within } voc)
            {
                yield return new PlanObjection(ObjectionKind.Voc, run.Layer.Product.Id, string.Empty, voc);
            }
        }
    }

    private static IEnumerable<PlanObjection> Operations(CoatRun run) => CoatOperations.Outside(run).Select(outside =>
        new PlanObjection(
            ObjectionKind.SprayWindow, CoatOperations.IdOf(run, outside.Operation), WindowCodes[outside.Index], outside.Check));

    // Makers leave one to one on purpose, by less than a third (common practice, no source); a ratio of weights read as one of volumes, or
    // a
    // lost digit, is further off.
    private const double OnPurpose = 1.0 / 3;

    private static IEnumerable<PlanObjection> Sheet(CoatingProduct product) => new DataSheetCheck(product).Contradictions
        .Where(finding => finding.Code != DataSheetCheck.StoichiometryCode || finding.Comparison.Value?.Si > OnPurpose)
        .Select(finding => new PlanObjection(
            ObjectionKind.Input, product.Id, finding.Code,
                "The data sheet of " + product.Name + " contradicts itself. " + finding + ". " + finding.Comparison.Remedy));

    private static IEnumerable<PlanObjection> Climate(CoatRun run, string about)
    {
        foreach ((LimitComparison check, int i) in CoatOperations.NotKept(run.Window.Checks))
        {
            yield return new PlanObjection(ObjectionKind.SprayWindow, about, WindowCodes[i], check);
        }

        bool[] said = new bool[CureCodes.Length];
        foreach ((LimitComparison cure, int i) in new[] { run.OnSurface.Checks, run.AtWarmest.Checks, run.InCup.Checks }
            .SelectMany(CoatOperations.NotKept))
        {
            if (!said[i])
            {
                said[i] = true;
                yield return new PlanObjection(ObjectionKind.CureTemperature, about, CureCodes[i], cure);
            }
        }
    }
}
