using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>The operations that ride on a product, put after each of its coats.</summary>
internal static class CoatOperations
{
    // So that two of them in one plan cannot share an identifier: coats end in a product's identity, these in their own.
    public static string IdOf(CoatRun run, CoatOperation operation) => run.Id + "/" + operation.Id;

    /// <summary>Time of the operation after a run.</summary>
    public static TimeSpan TimeOf(CoatRun run, CoatOperation operation) => CarefulTime.Up(operation.TimeFor(run.Demand.Area));

    /// <summary>Puts them behind a coat, each waiting for the one before.</summary>
    public static void Add(WorkBuilder builder, CoatRun run, string room, IReadOnlyList<string> fixtures)
    {
        string before = run.Id;
        foreach (CoatOperation operation in run.Layer.Product.Operations)
        {
            string id = IdOf(run, operation);
            builder.Operations.Add(new Operation
            {
                Id = id,
                Kind = WorkKind.Other,
                Name = operation.Name,
                Instruction = operation.Instruction,
                Room = room,
                Fixtures = fixtures,
                People = operation.People,
                Time = builder.InSight(
                    TimeOf(run, operation), id, "long", "'" + operation.Name + "' after the coat of " + run.Layer.Product.Name,
                    "Look at its time for a square metre, or divide the fixture into two entries"),

                // Of a longer one the objection to the coat tells.
                DustFree = !operation.Cures ? TimeSpan.Zero : TouchDry(run) < StepLag.Longest ? TouchDry(run) : StepLag.Longest,
                Tools = operation.Tools,
                // It is done while the mist of the coat stands in the room.
                Cautions = [.. operation.Cautions.Concat(run.Layer.Product.Cautions).Append(Refinish.Cautions.Overspray).Distinct()],
                Source = operation.Source,
            });
            builder.Wait(
                before, id, operation.Wait, operation.Within, "'" + operation.Name + "' after the coat of " + run.Layer.Product.Name);
            before = id;
        }
    }

    /// <summary>From the last stroke until the film takes no more dust.</summary>
    public static TimeSpan DustFree(CoatRun run)
    {
        TimeSpan waits = TimeSpan.Zero;
        foreach (CoatOperation operation in run.Layer.Product.Curing is null ? [] : run.Layer.Product.Operations)
        {
            waits += operation.Wait + TimeOf(run, operation);
            if (operation.Cures)
            {
                break;
            }
        }

        return waits + TouchDry(run);
    }

    /// <summary>What is done in air or on a surface outside its conditions, where the climate of the room is held.</summary>
    public static IEnumerable<(CoatOperation Operation, LimitComparison Check, int Index)> Outside(CoatRun run)
    {
        foreach (CoatOperation operation in run.Layer.Product.Operations)
        {
            if (operation.Conditions is SprayLimits limits)
            {
                foreach ((LimitComparison check, int i) in NotKept(new SprayWindow(run.Air, run.OnSurface.Site, limits).Checks))
                {
                    yield return (operation, check, i);
                }
            }
        }
    }

    /// <summary>The checks that are not kept or cannot be judged, with their places.</summary>
    public static IEnumerable<(LimitComparison Check, int Index)> NotKept(IReadOnlyList<LimitComparison> checks) =>
        checks.Select((check, i) => (check, i)).Where(one => one.check.Outcome != ComparisonOutcome.Within);

    private static TimeSpan TouchDry(CoatRun run) => run.OnSurface.TouchDry ?? run.Layer.Product.Cure.TouchDry;
}
