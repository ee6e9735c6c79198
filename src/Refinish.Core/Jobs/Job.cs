using System;
using System.Collections.Generic;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>
/// One quote: a shop, premises, their fixtures and a start. <see cref="Plan"/> makes everything else: verdicts, operations, mixing, times,
/// air, price and handover.
/// </summary>
/// <remarks>
/// See <c>samples/OneTub</c> for the shortest whole quote and <c>samples/BathroomJob</c> for a guesthouse of three rooms.
/// </remarks>
public sealed record Job
{

    /// <summary>Identifier of the job.</summary>
    /// <exception cref="ArgumentException">Empty, longer than 100 characters, or with a slash.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>Name for job sheets; the identifier unless given.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Name { get => field ?? Id; init => field = Guard.Named(value); }

    /// <summary>The shop.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Shop Shop { get; init => field = Guard.NotNull(value); }

    /// <summary>The premises.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Premises Premises { get; init => field = Guard.NotNull(value); }

    /// <summary>The fixtures, at least one, with unique identifiers; each names a room of the premises.</summary>
    /// <exception cref="ArgumentException">None is given, an entry is missing, or two have one identifier.</exception>
    public required IReadOnlyList<FixtureJob> Fixtures
    {
        get;
        init => field = Unique.Ids(Guard.List(value, 1), fixture => fixture.Id, nameof(Fixtures));
    }

    /// <summary>
    /// Work starts not before this instant, in the years 1900 to 2200 of universal time. Times of day are read on the clock of the shop's
    /// calendar.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside those years.</exception>
    public required DateTimeOffset Start
    {
        get;
        init
        {
            Guard.Count(value.UtcDateTime.Year, 1900, 2200, nameof(Start));
            field = value;
        }
    }

    /// <summary>What the customer wants on given days; nothing unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<DayRequest> Days { get; init => field = Guard.List(value); } = ValueList<DayRequest>.Empty;

    /// <summary>Changes of the caller to the list of operations, in order; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<OperationChange> Changes { get; init => field = Guard.List(value); } = ValueList<OperationChange>.Empty;

    /// <summary>Opened kits that may be used up within their shelf life; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<OpenedKit> Stock { get; init => field = Guard.List(value); } = ValueList<OpenedKit>.Empty;

    /// <summary>Hired equipment, other trades, allowances; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing, or two have one identifier.</exception>
    public IReadOnlyList<ExtraItem> Extras { get; init => field = Unique.Ids(Guard.List(value), extra => extra.Id, nameof(Extras)); }
    = ValueList<ExtraItem>.Empty;

    /// <summary>What was agreed with the customer: discount, exemption from tax, payments, validity; nothing unless given.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public QuoteTerms Terms { get; init => field = Guard.NotNull(value); } = QuoteTerms.None;

    /// <summary>
    /// Other ways to do the job, priced beside it by <see cref="QuoteAlternatives"/>; none unless given. <see cref="Plan"/> plans the job
    /// as it stands, and objects to an alternative that does not fit it.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing, or two have one identifier.</exception>
    public IReadOnlyList<JobAlternative> Alternatives
    {
        get;
        init => field = Unique.Ids(Guard.List(value), alternative => alternative.Id, nameof(Alternatives));
    }
    = ValueList<JobAlternative>.Empty;

    /// <summary>What replacing would take; <see langword="null"/> when it is not to be compared.</summary>
    public ReplacementOffer? Replacement { get; init; }

    /// <summary>Makes the plan. It never throws for a job whose parts could be made: what cannot be done is among its objections.</summary>
    /// <returns>The plan.</returns>
    public JobPlan Plan() => new(this);

    /// <summary>Name and number of fixtures.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Figures.Fixed(Fixtures.Count, 0) + (Fixtures.Count == 1 ? " fixture" : " fixtures");
}
