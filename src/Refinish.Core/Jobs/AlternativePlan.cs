using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>An alternative, planned and held against the job as it stands. A difference is the alternative less the job.</summary>
public sealed class AlternativePlan
{
    internal AlternativePlan(JobPlan quoted, JobAlternative alternative)
    {
        Alternative = alternative;
        Quoted = quoted;
        PlanObjection[] misfits = [.. alternative.Misfits(quoted.Job)];
        Plan = misfits.Length > 0 ? null : alternative.Of(quoted.Job).Plan();
        Objections = Plan?.Objections ?? new ValueList<PlanObjection>(misfits);
    }

    /// <summary>The alternative.</summary>
    public JobAlternative Alternative { get; }

    /// <summary>The plan of the job as it stands.</summary>
    public JobPlan Quoted { get; }

    /// <summary>The plan of the alternative; <see langword="null"/> when it does not fit the job.</summary>
    public JobPlan? Plan { get; }

    /// <summary>The quote of the alternative; <see langword="null"/> while something stands in its way.</summary>
    public CustomerQuote? Quote => Plan?.Quote;

    /// <summary>What stands in the way of the alternative, or does not fit the job.</summary>
    public IReadOnlyList<PlanObjection> Objections { get; }

    /// <summary>Total with tax; <see langword="null"/> without a quote.</summary>
    public decimal? Total => Quote?.Total;

    /// <summary>Difference of the totals with tax; <see langword="null"/> without both quotes.</summary>
    public decimal? TotalDifference => Total - Quoted.Quote?.Total;

    /// <summary>Difference of the net prices; <see langword="null"/> without both quotes.</summary>
    public decimal? NetDifference => Quote?.Net - Quoted.Quote?.Net;

    /// <summary>Days out of use; <see langword="null"/> when they cannot be said.</summary>
    public int? DaysOutOfUse => Plan?.Handover?.DaysOutOfUse;

    /// <summary>Difference of the days out of use; <see langword="null"/> when they cannot be said of both.</summary>
    public int? DaysDifference => DaysOutOfUse - Quoted.Handover?.DaysOutOfUse;

    /// <summary>
    /// What the alternative changes, as between two revisions; <see cref="PlanChanges.For"/> gives what a customer reads, item by item.
    /// <see langword="null"/> when it does not fit the job.
    /// </summary>
    public PlanChanges? Changes => field ??= Plan is null ? null : PlanChanges.Between(Quoted, Plan);

    /// <summary>Name, total and difference.</summary>
    /// <returns>Text such as <c>without the sink: 812.30 USD, -120.00</c>.</returns>
    public override string ToString() => Alternative.Name + ": " + (Quote is not CustomerQuote quote
        ? "no quote. " + string.Join(" ", Objections.Select(objection => objection.ToString()))
        : quote.Currency.Text(quote.Total) + (TotalDifference is decimal difference ? ", " + (difference > 0 ? "+" : string.Empty)
            + quote.Currency.Number(difference) : string.Empty));
}
