using System;

namespace Refinish.Estimating;

/// <summary>Hours that are paid and belong to no labour standard: waiting on site, standing by, a half-day rounded up.</summary>
/// <example><code>
/// PaidTime wait = new() { Id = "wait-1-anna", Description = "waiting for the primer to flash", Time = TimeSpan.FromMinutes(40),
///     Worker = "anna", Wage = 28m };
/// </code></example>
public sealed record PaidTime
{
    private readonly double seconds;

    /// <summary>Identity, unique within a request.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>What is paid for.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Description { get; init => field = Guard.Named(value); }

    /// <summary>How long, 0 to 1 000 000 h of one person.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan Time
    {
        get => Durations.FromSeconds(seconds);
        init => seconds = Guard.Within(value, Bounds.NotNegative(Measure.Hours, 1e6 * 3600));
    }

    /// <summary>Wage for one hour, without burden; <see langword="null"/>, that of the price book, when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal? Wage { get; init => field = Money.Amount(value, nameof(Wage)); }

    /// <summary>Id of whoever is paid; <see langword="null"/>, nobody in particular, when left out.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public string? Worker { get; init => field = value is null ? null : Guard.Id(value); }

    /// <summary>Id of the fixture that it belongs to; <see langword="null"/>, none or several, when left out.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public string? Fixture { get; init => field = value is null ? null : Guard.Id(value); }

    /// <summary>Id of the room that it belongs to; <see langword="null"/>, none or several, when left out.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public string? Room { get; init => field = value is null ? null : Guard.Id(value); }

    /// <summary>
    /// Whether it is paid on top of hours that are counted already, as the premium of overtime is: it costs its wage and is no hour of
    /// overhead; <see langword="false"/> when left out.
    /// </summary>
    public bool IsPremium { get; init; }

    /// <summary>Id of the caller's own operation that is paid by the clock.</summary>
    internal string? Operation { get; init; }

    internal double Hours => seconds / 3600;

    /// <summary>What is paid for, and how long.</summary>
    /// <returns>Text such as <c>waiting for the primer to flash: 0.667 h</c>.</returns>
    public override string ToString() => Description + ": " + Measure.Hours.Format(seconds, figures: 3);
}
