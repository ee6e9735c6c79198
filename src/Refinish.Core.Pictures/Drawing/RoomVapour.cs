using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Jobs;

namespace Refinish.Pictures.Drawing;

/// <summary>The air of one room as the picture takes it, from a bare study or from a plan.</summary>
internal sealed class RoomVapour
{
    private static readonly int[] HoursApart = [1, 2, 3, 6];
    private readonly Func<string, string> nameOf;
    private readonly IReadOnlyList<LimitComparison> open;
    private readonly LimitComparison? airflow;

    public RoomVapour(AirStudy study)
    {
        Study = study;
        nameOf = name => name;
        open = [.. study.Exposure.Select(exposure => exposure.Comparison)
            .Where(comparison => comparison.Outcome != ComparisonOutcome.Within)];
        Cautions = [.. study.Cautions.Except(Refinish.Cautions.ForSpraying), Refinish.Cautions.BreathingZone];
    }

    /// <summary>Takes the air of a room.</summary>
    /// <param name="air">The room.</param>
    public RoomVapour(RoomAirPlan air)
    {
        Room = air.Room;
        Study = air.Study;
        Zero = air.Study is null ? null : air.Zero;
        nameOf = name => air.Schedule.TryFind(name)?.Operation.Name ?? name;
        open = [.. air.Protection.Select(need => need.Comparison)];
        airflow = air.FlammableAirflow;
        Cautions =
        [
            .. (air.Study?.Cautions ?? []).Except(Refinish.Cautions.ForSpraying),
            .. air.Screens.Count > 0 ? [Refinish.Cautions.SuppliedAir, Refinish.Cautions.BreathingZone] : new[] { Refinish.Cautions.BreathingZone },
        ];
    }

    /// <summary>The room of the premises; nothing for a bare study.</summary>
    public SiteRoom? Room { get; }

    public AirStudy? Study { get; }

    /// <summary>The instant from which the study counts, by the clock of the site; nothing for a bare study.</summary>
    public DateTimeOffset? Zero { get; }

    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>
    /// The hours of the study that are shown: from half an hour before something is sprayed or wiped on until all vapour is down to a
    /// fiftieth of its peak, at least an hour and at most half a day after. What lies between is folded when it is longer than six hours.
    /// By the clock, each part has two labelled hours or more, so that its scale can be read.
    /// </summary>
    /// <param name="width">Of the drawing, in pixels.</param>
    public TimeFold Shown(double width)
    {
        IReadOnlyList<(double From, double Until)> spans = Spans();
        double label = TextWidths.Of("00:00", Page.Small) + 8;
        foreach (int step in Zero is null ? [] : HoursApart)
        {
            TimeFold fold = new(
                Joined(spans.Select(span => Labelled(span, Zero!.Value.TimeOfDay.TotalHours, step))),
                width,
                label)
            {
                Step = step,
            };
            if (width / fold.Last * step >= label || step == HoursApart[HoursApart.Length - 1])
            {
                return fold;
            }
        }

        return new TimeFold(spans, width, label);
    }

    // Whole hours by the clock, and as many more, before or after, as bring in a second multiple of the step.
    private static (double From, double Until) Labelled((double From, double Until) span, double start, int step)
    {
        double from = Math.Floor(span.From + start);
        double until = Math.Ceiling(span.Until + start);
        int first = (int)Math.Floor(from / step);
        return Enumerable.Range(first, 2 + (int)((until - from) / step))
            .Select(i => (From: Math.Min(from, i * step), Until: Math.Max(until, (i + 1) * step)))
            .OrderBy(one => one.Until - one.From)
            .Select(one => (one.From - start, one.Until - start))
            .First();
    }

    private List<(double From, double Until)> Spans()
    {
        double Sum(double hours)
        {
            TimeSpan time = TimeSpan.FromHours(hours);
            return Study!.Substances.Sum(substance => Study.ConcentrationAt(substance.Solvent, time).KilogramsPerCubicMeter);
        }

        double least = Study!.Substances.Sum(substance => substance.PeakConcentration.KilogramsPerCubicMeter) / 50;
        List<(double From, double Until)> around = [];
        foreach (Emission emission in Emissions)
        {
            double from = Math.Max(0, Math.Floor(emission.Start.TotalHours * 2) / 2);
            double last = emission.End.TotalHours;
            double until = last + 1;
            while (until < last + 12 && Sum(until) > least)
            {
                until += 0.5;
            }

            around.Add((around.Count == 0 && from < 1 ? 0 : from, Math.Ceiling(until * 2) / 2));
        }

        return Joined(around);
    }

    // What is six hours apart or less is one.
    private static List<(double From, double Until)> Joined(IEnumerable<(double From, double Until)> around)
    {
        List<(double From, double Until)> spans = [];
        foreach ((double from, double until) in around)
        {
            if (spans.Count > 0 && from - spans[spans.Count - 1].Until <= 6)
            {
                spans[spans.Count - 1] = (spans[spans.Count - 1].From, Math.Max(spans[spans.Count - 1].Until, until));
            }
            else
            {
                spans.Add((from, until));
            }
        }

        return spans;
    }

    /// <summary>What vapour may do to fire: its peak against its limits, and the careful airflow.</summary>
    public IEnumerable<LimitComparison> Fire => airflow is null
        ? [Study!.FlammableLimit, Study.FlammableDesignLine]
        : [Study!.FlammableLimit, Study.FlammableDesignLine, airflow];

    /// <summary>
    /// Every comparison of the substance that comes to the largest part of one of its limits; without any limit, of the one with the
    /// highest peak; none where only water, or nothing, is given off.
    /// </summary>
    public IReadOnlyList<ExposureComparison> Worst
    {
        get
        {
            Solvent? worst = Study!.Exposure
                .Where(exposure => exposure.Comparison.Limit?.Si > 0)
                .OrderByDescending(exposure => exposure.Comparison.OfLimit)
                .Select(exposure => exposure.Solvent)
                .FirstOrDefault() ?? Study.Substances.Where(substance => !substance.Solvent.IsWater)
                    .OrderByDescending(substance => substance.Peak.DecimalFractions).FirstOrDefault()?.Solvent;
            return [.. Study.Exposure.Where(exposure => exposure.Solvent.CasNumber == worst?.CasNumber)];
        }
    }

    /// <summary>What else is not within its limit or cannot be judged: mist of isocyanates, other substances, mixtures.</summary>
    public IEnumerable<LimitComparison> Others => Study is null ? open : open.Except(Worst.Select(exposure => exposure.Comparison));

    /// <summary>What is sprayed and wiped on, by start.</summary>
    public IEnumerable<Emission> Emissions => Study!.Emissions.OrderBy(emission => emission.Start);

    public string NameOf(Emission emission) => nameOf(emission.Name);
}
