using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using Refinish.Coatings;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What was done, on record: what a later claim is judged by. It is compared with the plan, which says what is missing.</summary>
/// <remarks>
/// It holds no names of customers and no addresses; a shop links it to those by <see cref="Reference"/> in its own books.
/// </remarks>
public sealed record WarrantyRecord
{
    private readonly ValueList<double> films = ValueList<double>.Empty;

    /// <summary>Number of the job in the shop's books.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Reference { get; init => field = Guard.Named(value); }

    /// <summary>The batch numbers.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public required IReadOnlyList<BatchNumber> Batches { get; init => field = Guard.List(value); }

    /// <summary>The coats in order.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public required IReadOnlyList<CoatRecord> Coats { get; init => field = Guard.List(value); }

    /// <summary>Dry film found on each spot, without what was there before; each 0 to 5 mm; none when not measured.</summary>
    /// <exception cref="ArgumentException">The list is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside the range.</exception>
    public IReadOnlyList<Length> DryFilm
    {
        get => [.. films.Select(film => Length.FromMeters(film))];
        init => films = new ValueList<double>(Guard.List(value).Select(film =>
            Guard.Within(film, Bounds.NotNegative(Measure.Film, 0.005), nameof(DryFilm))));
    }

    /// <summary>Gauge that measured the dry film; <see langword="null"/> when none did.</summary>
    public string? Gauge { get; init; }

    /// <summary>Where the photographs before and after are kept; empty when there are none.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<string> Photographs { get; init => field = Guard.List(value); } = ValueList<string>.Empty;

    /// <summary>When the job was handed over; <see langword="null"/> when it was not yet.</summary>
    public DateTimeOffset? HandedOver { get; init; }

    /// <summary>Hour from which water was allowed, as the customer was told; <see langword="null"/> when nobody was.</summary>
    public DateTimeOffset? WaterFrom { get; init; }

    /// <summary>Who handed over; <see langword="null"/> when nobody did.</summary>
    public string? HandedOverBy { get; init; }

    /// <summary>What the record lacks for a later claim under a plan; empty when nothing is.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>One entry for each thing that is missing.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    public IReadOnlyList<string> MissingFor(JobPlan plan)
    {
        Guard.NotNull(plan);
        return new ValueList<string>(Missing(plan));
    }

    /// <summary>A job of this record in the books of claims: failed, or still good, on a day.</summary>
    /// <param name="day">The day of the failure, or the day on which it was last seen good; after the handover.</param>
    /// <param name="failed">Whether it failed.</param>
    /// <returns>The entry for a <see cref="WeibullFit"/>, its age in years of 365.25 days.</returns>
    /// <exception cref="InvalidOperationException">The job has not been handed over.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="day"/> is not after the handover.</exception>
    public LifeRecord AgeOn(DateTimeOffset day, bool failed)
    {
        DateTimeOffset start = HandedOver ?? throw new InvalidOperationException("The record has no handover, so that there is no age.");
        double days = (day - start).TotalDays;
        Guard.Rule(days > 0, nameof(day), days / 365.25, Measure.Years, "after the handover");
        return new LifeRecord(days / 365.25, failed);
    }

    /// <summary>The record as text.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Lines that end in a line feed.</returns>
    public string ToText(DisplayUnits system)
    {
        StringBuilder text = new();
        text.Append("Warranty record ").Append(Reference).Append('\n');
        foreach (BatchNumber batch in Batches)
        {
            text.Append("  batch of ").Append(batch).Append('\n');
        }

        foreach (CoatRecord coat in Coats)
        {
            text.Append("  ").Append(coat.Coat).Append(": ").Append(Clock(coat.Start)).Append(" to ").Append(Clock(coat.End)).Append(", ").Append(coat.By)
                .Append("; air ").Append(Measure.Temperature.Format(coat.Air.DryBulb.Kelvins, system, 3)).Append(", ")
                .Append(Measure.Percent.Format(coat.Air.RelativeHumidity.DecimalFractions, system, 3)).Append(" humidity, dew point ")
                .Append(Measure.Temperature.Format(coat.Air.DewPoint.Kelvins, system, 3)).Append("; surface ")
                .Append(Measure.Temperature.Format(coat.Surface.Kelvins, system, 3)).Append("; weighed ")
                .Append(string.Join(", ",
                    coat.Weighed.Select(one => Measure.Mass.Format(one.Mass.Kilograms, system, 4) + " " + one.Component)))
                .Append("; wet film ")
                .Append(coat.WetFilm is Length film ? Measure.Film.Format(film.Meters, system, 3) : "not measured").Append('\n');
        }

        text.Append("  dry film ").Append(films.Count == 0 ? "not measured" : string.Join(", ", films.Select(film => Measure.Film.Format(film, system, 3))))
            .Append(Gauge is null ? string.Empty : " with " + Gauge).Append('\n');
        text.Append("  photographs: ").Append(Photographs.Count == 0 ? "none" : string.Join(", ", Photographs)).Append('\n');
        text.Append("  handed over ").Append(HandedOver is DateTimeOffset day ? Clock(day) : "not yet")
            .Append(HandedOverBy is null ? string.Empty : " by " + HandedOverBy)
            .Append("; water allowed from ").Append(WaterFrom is DateTimeOffset water ? Clock(water) : "not told").Append('\n');
        return text.ToString();
    }

    /// <summary>Reference and number of coats.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => "record " + Reference + ", " + Figures.Fixed(Coats.Count, 0) + " coats";

    private static string Clock(DateTimeOffset time) => time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private IEnumerable<string> Missing(JobPlan plan)
    {
        foreach (CoatingProduct product in plan.Runs.Select(run => run.Run.Layer.Product).Distinct())
        {
            bool reduced = plan.Runs.Any(run => run.Run.Layer.Product.Equals(product) && run.Run.Layer.Reducer.DecimalFractions > 0);
            foreach (CoatingComponent component in product.Parts.Select(part => part.Component).Concat(reduced ? [product.Reducer!] : []))
            {
                if (!Batches.Any(batch => batch.Product == product.Id && batch.Component == component.Id))
                {
                    yield return "batch number of " + product.Name + ", " + component.Name;
                }
            }
        }

        foreach (ScheduledRun planned in plan.Runs)
        {
            CoatRecord? done = Coats.FirstOrDefault(coat => coat.Coat == planned.Run.Id);
            if (done is null)
            {
                yield return planned.Run.Id + ": time, who, air, surface and what was weighed";
                continue;
            }

            if (done.End <= done.Start)
            {
                yield return done.Coat + ": an end after its start";
            }

            foreach (CoatingComponent can in planned.Run.Layer.Product.Parts.Select(part => part.Component))
            {
                if (!done.Weighed.Any(one => one.Component == can.Id))
                {
                    yield return done.Coat + ": what was weighed of " + can.Name;
                }
            }

            if (done.WetFilm is null)
            {
                yield return done.Coat + ": wet film";
            }
        }

        if (plan.Handover is Handover handover && films.Count < handover.Spots)
        {
            yield return "dry film on " + Figures.Fixed(handover.Spots, 0) + " spots; " + Figures.Fixed(films.Count, 0) + " are on record";
        }

        foreach ((bool _, string gap) in OtherGaps().Where(gap => gap.IsMissing))
        {
            yield return gap;
        }
    }

    private (bool IsMissing, string What)[] OtherGaps() =>
    [
        (films.Count > 0 && Gauge is null, "gauge that measured the dry film"),
        (Photographs.Count == 0, "photographs before and after"),
        (HandedOver is null || HandedOverBy is null, "day of the handover and by whom"),
        (WaterFrom is null, "hour from which water was allowed, as told to the customer"),
    ];
}
