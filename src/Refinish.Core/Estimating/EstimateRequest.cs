using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>What a job takes, ready to be priced: labour, materials, fixtures, trips, options, and the concessions made.</summary>
public sealed record EstimateRequest
{
    /// <summary>The labour.</summary>
    public required LabourEstimate Labour { get; init => field = Guard.NotNull(value); }

    /// <summary>Hours that are paid and belong to no labour standard, such as waiting on site; none when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing, or two have one id and one worker.</exception>
    public IReadOnlyList<PaidTime> PaidTime
    {
        get;
        init => field = Unique.Ids(Guard.List(value), paid =>
            paid.Worker is null ? paid.Id : paid.Id + "/" + paid.Worker, nameof(PaidTime));
    } = ValueList<PaidTime>.Empty;

    /// <summary>The materials; needs of one item are bought together.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public required IReadOnlyList<MaterialNeed> Materials { get; init => field = Guard.List(value); }

    /// <summary>Fixtures in the job, 0 to 100 000; consumables are reckoned for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int Fixtures { get; init => field = Guard.Count(value, 0, 100_000); }

    /// <summary>Trips to the customer, 0 to 10 000; one when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Trips { get; init => field = Guard.Count(value, 0, 10_000); } = 1;

    /// <summary>The extras that the customer chose.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<OptionOrder> Options { get; init => field = Guard.List(value); } = ValueList<OptionOrder>.Empty;

    /// <summary>What is set aside for warranty claims on this job; none when left out. See <see cref="WarrantyReserve"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal WarrantyReserve { get; init => field = Money.Amount(value, nameof(WarrantyReserve)); }

    /// <summary>Hired equipment, other trades, allowances; none when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing, or two have one id.</exception>
    public IReadOnlyList<ExtraItem> Extras
    {
        get;
        init => field = Unique.Ids(Guard.List(value), extra => extra.Id, nameof(Extras));
    } = ValueList<ExtraItem>.Empty;

    /// <summary>Discount on the price after the minimum charge, before tax; <see langword="null"/>, none, when left out.</summary>
    public Discount? Discount { get; init; }

    /// <summary>Why the customer pays no tax or not every tax; <see langword="null"/>, no reason, when left out.</summary>
    public TaxExemption? Exemption { get; init; }

    /// <summary>
    /// Whether the target margin is to be left over everything, options at a fixed price and discount included. The net price is then the
    /// least amount that leaves it. Otherwise the margin is put on what has no fixed price, and the discount comes out of it.
    /// </summary>
    public bool HoldMargin { get; init; }

    /// <summary>Fixtures and hours.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Figures.Fixed(Fixtures, 0) + (Fixtures == 1 ? " fixture, " : " fixtures, ")
        + Measure.Hours.Format(Labour.Hours.TotalSeconds, figures: 3) + " of labour";
}
