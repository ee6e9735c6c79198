using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Air;
using Refinish.Estimating;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// The noise of one person's loud work on one day, against each noise limit of the shop's set, without hearing protection.
/// </summary>
/// <remarks>
/// Only a person's own work counts: who stands by outside, or works beside a grinder, hears it too. Fans and compressors are counted as far
/// as a level at the ear includes them. An operation counts from its start to its end, though no tool runs all of that time: the careful
/// side.
/// </remarks>
public sealed class DayNoise
{
    private DayNoise(Worker worker, DateTime day, IReadOnlyList<NoiseSpan> spans, IReadOnlyList<NoiseLimit> limits)
    {
        Worker = worker.Id;
        Day = day;
        Doses = new ValueList<NoiseDose>(limits.Select(limit => new NoiseDose(worker.Name, spans, limit)));
    }

    /// <summary>Identifier of the person.</summary>
    public string Worker { get; }

    /// <summary>The date by the clock of the site.</summary>
    public DateTime Day { get; }

    /// <summary>One dose for each noise limit of the set, in its order.</summary>
    public IReadOnlyList<NoiseDose> Doses { get; }

    /// <summary>Person, day and how many of the limits are exceeded or cannot be judged.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + ": " + Worker + ", "
        + Figures.Fixed(Doses.Count(dose => dose.Comparison.Outcome != ComparisonOutcome.Within), 0) + " of "
            + Figures.Fixed(Doses.Count, 0)
        + " noise limits exceeded, or cannot be judged";

    internal static IEnumerable<DayNoise> Of(JobPlan plan)
    {
        if (plan.Found is not CrewSchedule schedule || plan.Job.Shop.Limits.Noise.Count == 0)
        {
            yield break;
        }

        Dictionary<string, Worker> crew = schedule.Work.Shop.Crew.ToDictionary(worker => worker.Id, StringComparer.Ordinal);
        foreach (IGrouping<(DateTime Day, string Person),
            Stretch> day in schedule.Operations.SelectMany(one => Loud(one, schedule.Work.Shop))
            .GroupBy(one => (one.Day, one.Person)).OrderBy(day => day.Key.Day).ThenBy(day => day.Key.Person, StringComparer.Ordinal))
        {
            yield return new DayNoise(crew[day.Key.Person], day.Key.Day, [.. day.Select(one => one.Span)], plan.Job.Shop.Limits.Noise);
        }
    }

    // Of two people at a coat the first sprays and the other stands by.
    private static IEnumerable<Stretch> Loud(ScheduledOperation scheduled, Shop shop)
    {
        Operation operation = scheduled.Operation;
        Level? level = operation.SoundLevel ?? shop.Noise.FirstOrDefault(noise => noise.Work == operation.Kind)?.Level;
        if (operation.Kind == WorkKind.StandBy || (level is null && !operation.IsLoud && !operation.Sprays))
        {
            yield break;
        }

        foreach (string person in operation.Sprays ? scheduled.People.Take(1) : scheduled.People)
        {
            foreach (TimeInterval piece in scheduled.Pieces.Where(piece => piece.End > piece.Start))
            {
                yield return new Stretch(person, piece.Start.Date, new NoiseSpan(operation.Name, level, piece.End - piece.Start));
            }
        }
    }

    private readonly record struct Stretch(string Person, DateTime Day, NoiseSpan Span);
}
