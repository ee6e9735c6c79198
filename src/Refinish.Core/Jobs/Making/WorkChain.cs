using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>The order of the list as lags: what touches a fixture follows what touched it before.</summary>
internal static class WorkChain
{
    public static List<StepLag> Lags(WorkBuilder builder, IReadOnlyList<Procedure> procedures)
    {
        HashSet<string> ids = new(builder.Operations.Where(operation => operation.Beside is null).Select(operation => operation.Id), StringComparer.Ordinal);
        List<StepLag> lags = [];
        HashSet<(string, string)> pairs = [];
        foreach (StepLag wait in builder.Waits)
        {
            if (ids.Contains(wait.Before) && ids.Contains(wait.After) && wait.Before != wait.After)
            {
                lags.Add(wait);
                pairs.Add((wait.Before, wait.After));
            }
        }

        Dictionary<string, string> last = new(StringComparer.Ordinal);
        Dictionary<string, string> warming = new(StringComparer.Ordinal);
        List<string> before = [];
        foreach (Operation operation in builder.Operations)
        {
            if (operation.Beside is not null)
            {
                continue;
            }

            before.Clear();
            foreach (string fixture in Touched(operation, procedures))
            {
                // An operation may name a fixture twice.
                if (last.TryGetValue(fixture, out string? earlier) && earlier != operation.Id && !before.Contains(earlier))
                {
                    before.Add(earlier);
                }

                // A fixture warms by itself while it is cleaned; what needs it warm waits.
                if (operation.Kind == WorkKind.Warm)
                {
                    warming[fixture] = operation.Id;
                    continue;
                }

                last[fixture] = operation.Id;
                if (NeedsWarmth(operation.Kind) && warming.TryGetValue(fixture, out string? warm) && warming.Remove(fixture) && !before.Contains(warm))
                {
                    before.Add(warm);
                }
            }

            foreach (string earlier in before)
            {
                if (pairs.Add((earlier, operation.Id)))
                {
                    lags.Add(new StepLag(earlier, operation.Id, TimeSpan.Zero, null, "order of the work"));
                }
            }
        }

        return lags;
    }

    private static bool NeedsWarmth(WorkKind kind) => WorkOrder.Rank(kind) > WorkOrder.Rank(WorkKind.RinseAndDry);

    /// <summary>The fixtures that an operation touches: its own, all of its room, or all; cleaning the gun touches none.</summary>
    public static IEnumerable<string> Touched(Operation operation, IReadOnlyList<Procedure> procedures)
    {
        if (operation.Fixtures.Count > 0)
        {
            return operation.Fixtures;
        }

        return operation.Kind is WorkKind.CleanGun or WorkKind.StandBy ? []
            : procedures.Where(procedure => operation.Room is null || procedure.Fixture.Room == operation.Room)
                .Select(procedure => procedure.Fixture.Id);
    }
}
