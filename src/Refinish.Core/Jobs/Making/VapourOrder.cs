using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>
/// The operations of a room that give off vapour, and how soon one may follow another: by the waits of the data sheets and the order of the
/// work on a fixture. Where nothing keeps two apart they may follow each other at once.
/// </summary>
internal sealed class VapourOrder
{
    // What has to lie this far back leaves nothing that counts: e⁻⁴⁰.
    private const double Forgotten = 40;

    private readonly WorkBuilder builder;
    private readonly List<Operation> all;
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);
    private readonly TimeSpan[] durations;
    private readonly List<int> giving = [];
    private readonly Dictionary<int, TimeSpan?[]> gaps = [];
    private readonly Dictionary<string, CoatRun> runs;
    private readonly List<StepLag>?[] waits;
    private readonly string[][] touched;

    public VapourOrder(WorkBuilder builder, string room)
    {
        this.builder = builder;
        runs = builder.Runs.Where(run => run.VolatileMass.Kilograms > 0).ToDictionary(run => run.Id, StringComparer.Ordinal);
        all = [.. builder.Operations.Where(operation => operation.Beside is null)];
        durations = [.. all.Select(operation => operation.DurationAt(builder.Difficulty))];
        waits = new List<StepLag>?[all.Count];
        touched = new string[all.Count][];
        for (int i = 0; i < all.Count; i++)
        {
            places.Add(all[i].Id, i);
            touched[i] = [.. WorkChain.Touched(all[i], builder.Work.Procedures)];
            if (all[i].Room == room && GivesOff(all[i]))
            {
                giving.Add(i);
            }
        }

        foreach (StepLag wait in builder.Waits)
        {
            if (places.ContainsKey(wait.Before) && places.TryGetValue(wait.After, out int after))
            {
                (waits[after] ??= []).Add(wait);
            }
        }

        foreach (int i in giving)
        {
            gaps.Add(i, After(i));
        }
    }

    public bool GivesOff(Operation operation) => operation.Vapours.Count > 0 || runs.ContainsKey(operation.Id);

    public CoatRun? RunOf(Operation operation) => runs.TryGetValue(operation.Id, out CoatRun? run) ? run : null;

    public TimeSpan DurationOf(Operation operation) => durations[places[operation.Id]];

    /// <summary>What may have given off vapour in the room before an operation began, with the least time between.</summary>
    public IEnumerable<(Operation Operation, TimeSpan Gap)> Before(Operation operation)
    {
        int at = places[operation.Id];
        foreach (int other in giving)
        {
            if (other == at || gaps[at][other] is not null)
            {
                continue;
            }

            TimeSpan gap = gaps[other][at] ?? TimeSpan.Zero;
            if (gap.TotalSeconds <= Forgotten * Slowest(all[other]))
            {
                yield return (all[other], gap);
            }
        }
    }

    // The film's own rate or an hour, which is slower than the air changes of a room in which anything is sprayed; slow films within
    // what a study holds.
    private double Slowest(Operation operation)
    {
        double constant = operation.Vapours.Where(vapour => vapour.TakenOffAfter is null).Select(vapour => vapour.TimeConstant)
            .Append(runs.ContainsKey(operation.Id) ? builder.Shop.FilmTimeConstant : TimeSpan.Zero).Max().TotalSeconds;
        return Math.Min(Math.Max(3600, constant), 12 * 3600);
    }

    // The least time from the end of one operation to the start of each that has to follow it; nothing for those that need not.
    private TimeSpan?[] After(int from)
    {
        TimeSpan?[] starts = new TimeSpan?[all.Count];
        Dictionary<string, TimeSpan> until = new(StringComparer.Ordinal);
        foreach (string fixture in touched[from])
        {
            until[fixture] = TimeSpan.Zero;
        }

        for (int i = from + 1; i < all.Count; i++)
        {
            TimeSpan? start = null;
            foreach (StepLag wait in waits[i] ?? [])
            {
                // Hours on a clock that follows the temperature are not known yet.
                TimeSpan least = wait.Clock is null ? wait.Minimum : TimeSpan.Zero;
                int before = places[wait.Before];
                TimeSpan? earliest = before == from ? least
                    : before < i && starts[before] is TimeSpan began ? began + durations[before] + least
                    : null;
                start = earliest is TimeSpan found && !(start >= found) ? found : start;
            }

            foreach (string fixture in touched[i])
            {
                start = until.TryGetValue(fixture, out TimeSpan free) && !(start >= free) ? free : start;
            }

            starts[i] = start;
            if (start is TimeSpan at)
            {
                foreach (string fixture in touched[i])
                {
                    until[fixture] = at + durations[i];
                }
            }
        }

        return starts;
    }
}
