using System;
using System.Collections.Generic;

namespace Refinish.Jobs;

/// <summary>
/// One thing that differs between two plans: what it is about, its figures before and after, and what it does to the money and to the time.
/// </summary>
/// <remarks>Numbers stand in fields; <see cref="Sentence(DisplayUnits)"/> is made of them.</remarks>
public sealed record PlanChange
{
    internal PlanChange(string key, ChangeSubject subject, ChangeKind kind)
    {
        Key = key;
        Subject = subject;
        Kind = kind;
    }

    /// <summary>Identity within the list, formed from ids; the same when before and after are swapped.</summary>
    public string Key { get; }

    /// <summary>What it is about.</summary>
    public ChangeSubject Subject { get; }

    /// <summary>Whether it came, went or changed.</summary>
    public ChangeKind Kind { get; }

    /// <summary>Identifier of the fixture, material, option or other thing that it is about; empty for the job as a whole.</summary>
    public string About { get; init; } = string.Empty;

    /// <summary>Identifier of the fixture or room whose lines they are; <see langword="null"/> for the job as a whole.</summary>
    public string? Place { get; init; }

    /// <summary>
    /// Name of the fixture, or identifier of the room, whose lines they are; <see langword="null"/> for the job as a whole.
    /// </summary>
    public string? PlaceName { get; init; }

    /// <summary>What it is about, for people.</summary>
    public string Name { get; init; } = string.Empty;

    /// <summary>What moved the money, where the lines tell.</summary>
    public ChangeCause Cause { get; init; }

    /// <summary>Difference in what the customer pays.</summary>
    public decimal Price { get; init; }

    /// <summary>Difference in what the job costs the shop.</summary>
    public decimal Cost { get; init; }

    /// <summary>Code of the currency of all amounts; <see langword="null"/> when no money is concerned.</summary>
    public string? Currency { get; init; }

    /// <summary>Difference in time: hours of work, or how much later an instant is.</summary>
    public TimeSpan Time { get; init; }

    /// <summary>Quantity before, of lines that count the same; <see langword="null"/> where there is none.</summary>
    public decimal? QuantityBefore { get; init; }

    /// <summary>Quantity after; <see langword="null"/> where there is none.</summary>
    public decimal? QuantityAfter { get; init; }

    /// <summary>Symbol of the unit of both quantities; empty for a mere count or an amount of money.</summary>
    public string Unit { get; init; } = string.Empty;

    /// <summary>Rate before, where it is one for all lines; a share for a tax.</summary>
    public decimal? RateBefore { get; init; }

    /// <summary>Rate after, where it is one for all lines; a share for a tax.</summary>
    public decimal? RateAfter { get; init; }

    /// <summary>Amount before, of an item of the quote, a payment or the total; <see langword="null"/> where there is none.</summary>
    public decimal? AmountBefore { get; init; }

    /// <summary>Amount after, of an item of the quote, a payment or the total; <see langword="null"/> where there is none.</summary>
    public decimal? AmountAfter { get; init; }

    /// <summary>Whether a discount or a tax is in the prices of the items, so that it moves nothing beside them.</summary>
    public bool IsInPrices { get; init; }

    /// <summary>The instant before; <see langword="null"/> where there is none.</summary>
    public DateTimeOffset? InstantBefore { get; init; }

    /// <summary>The instant after; <see langword="null"/> where there is none.</summary>
    public DateTimeOffset? InstantAfter { get; init; }

    /// <summary>The objection, condition, gap or caution before; <see langword="null"/> where there is none.</summary>
    public PlanRemark? RemarkBefore { get; init; }

    /// <summary>The objection, condition, gap or caution after; <see langword="null"/> where there is none.</summary>
    public PlanRemark? RemarkAfter { get; init; }

    /// <summary>The lines of the estimate that moved; of shared costs, all that carry them.</summary>
    public IReadOnlyList<LineChange> Lines { get; init; } = ValueList<LineChange>.Empty;

    /// <summary>The change in words, with what it costs the shop: not for a customer.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>One sentence with a full stop.</returns>
    public string Sentence(DisplayUnits system) => ChangeText.Of(this, system, Refinish.Estimating.LineReader.Shop);

    /// <summary>The change in words.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <param name="reader">The shop, or a customer, who reads no cost and no rate.</param>
    /// <returns>One sentence with a full stop.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reader"/> is not a named value.</exception>
    public string Sentence(DisplayUnits system, Refinish.Estimating.LineReader reader) =>
        ChangeText.Of(this, system, Guard.Defined(reader));

    /// <summary>The sentence in metric units.</summary>
    /// <returns>See <see cref="Sentence(DisplayUnits)"/>.</returns>
    public override string ToString() => Sentence(DisplayUnits.Si);
}
