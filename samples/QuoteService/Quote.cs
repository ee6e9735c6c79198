using System;
using Refinish.Jobs;

namespace Refinish.Samples.QuoteService;

/// <summary>A quote: the job as it was asked for with the shop's prices of that day, and when it was stored. The plan follows from the job alone.</summary>
public sealed record Quote(Guid Id, DateTimeOffset Stored, BathroomJob Job)
{
    public BathroomPlan Plan { get; } = Job.Plan();
}
