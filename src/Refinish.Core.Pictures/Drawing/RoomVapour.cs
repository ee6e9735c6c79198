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
    /// </summary>
    public TimeFold Shown()
    {
        double Sum(double hours)
        {
            TimeSpan time = TimeSpan.FromHours(hours);
            return Study!.Substances.Sum(substance => Study.ConcentrationAt(substance.Solvent, time).KilogramsPerCubicMeter);
        }

        double least = Study!.Substances.Sum(substance => substance.PeakConcentration.KilogramsPerCubicMeter) / 50;
        List<(double From, double Until)> spans = [];
        foreach (Emission emission in Emissions)
        {
            double from = Math.Max(0, Math.Floor(emission.Start.TotalHours * 2) / 2);
            double last = emission.End.TotalHours;
            double until = last + 1;
            while (until < last + 12 && Sum(until) > least)
            {
                until += 0.5;
            }

            until = Math.Ceiling(until * 2) / 2;
            if (spans.Count > 0 && from - spans[spans.Count - 1].Until <= 6)
            {
                spans[spans.Count - 1] = (spans[spans.Count - 1].From, Math.Max(spans[spans.Count - 1].Until, until));
            }
            else
            {
                spans.Add((spans.Count == 0 && from < 1 ? 0 : from, until));
            }
        }

        return new TimeFold(spans);
    }

    /// <summary>What vapour may do to fire: its peak against its limits, and the careful airflow.</summary>
    public IEnumerable<LimitComparison> Fire => airflow is null
        ? [Study!.FlammableLimit, Study.FlammableDesignLine]
        : [Study!.FlammableLimit, Study.FlammableDesignLine, airflow];

    /// <summary>
    /// Every comparison of the substance that comes to the largest part of one of its limits; without any limit, of the one with the
    /// highest peak.
    /// </summary>
    public IReadOnlyList<ExposureComparison> Worst
    {
        get
        {
            Solvent worst = Study!.Exposure
                .Where(exposure => exposure.Comparison.Limit > 0)
                .OrderByDescending(exposure => exposure.Comparison.Value / exposure.Comparison.Limit)
                .Select(exposure => exposure.Solvent)
                .FirstOrDefault() ?? Study.Substances.OrderByDescending(substance => substance.Peak.DecimalFractions).First().Solvent;
            return [.. Study.Exposure.Where(exposure => exposure.Solvent.CasNumber == worst.CasNumber)];
        }
    }

    /// <summary>What else is not within its limit or cannot be judged: mist of isocyanates, other substances, mixtures.</summary>
    public IEnumerable<LimitComparison> Others => Study is null ? open : open.Except(Worst.Select(exposure => exposure.Comparison));

    /// <summary>What is sprayed and wiped on, by start.</summary>
    public IEnumerable<Emission> Emissions => Study!.Emissions.OrderBy(emission => emission.Start);

    public string NameOf(Emission emission) => nameOf(emission.Name);
}
