using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Json;

namespace Refinish.Samples.QuoteService;

/// <summary>
/// A quote: the plan of the job with the shop's prices of that day, when it was stored, and what comes out otherwise today.
/// </summary>
public sealed record Quote(Guid Id, DateTimeOffset Stored, JobPlan Plan, IReadOnlyList<ValueChange> Differences, PlanChanges? Changes = null)
{
    /// <summary>
    /// What the customer is offered; nothing while anything stands in the way, or once the stored results are no longer those of the
    /// library.
    /// </summary>
    public CustomerQuote? Offer => Plan.IsPossible && Differences.Count == 0 ? Plan.Quote : null;

    /// <summary>What is behind it, for the shop; none while there is no offer.</summary>
    public PriceEstimate? Price => Offer is null ? null : Plan.Price;

    /// <summary>What stands in the way of the price.</summary>
    internal IEnumerable<Answer.Objection> InTheWay(DisplayUnits units)
    {
        if (Differences.Count > 0)
        {
            yield return new(
                "drift", Plan.Job.Id, "Worked out again today, the job gives other results than were stored (" + Differences[0]
                    + "): the shop looks at this quote before it holds.");

            // What moved, as a customer may read it, item by item.
            foreach (PlanChange change in Changes?.For(LineReader.Customer).Changes ?? [])
            {
                yield return new("drift/" + change.Key, change.About.Length > 0 ? change.About : Plan.Job.Id, change.Sentence(units, LineReader.Customer));
            }
        }

        foreach (PlanObjection objection in Plan.Objections)
        {
            yield return new(objection.Id, objection.About, objection.Sentence(units));
        }
    }
}
