using System;
using System.Globalization;

namespace Refinish.Estimating;

/// <summary>From how many paid hours of a day or a week on an hour is paid at a multiple of the wage.</summary>
/// <example><code>
/// OvertimeStep step = new(TimeSpan.FromHours(8), 1.5m);
/// </code></example>
public sealed record OvertimeStep
{
    private static readonly Bounds Limits = Bounds.NotNegative(Measure.Hours, 168 * 3600);

    /// <summary>Makes a step.</summary>
    /// <param name="after">Paid hours that go before it, 0 to 168 h; in a day at most 24 h.</param>
    /// <param name="factor">Multiple of the wage, more than 1 and at most 10.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public OvertimeStep(TimeSpan after, decimal factor)
    {
        Guard.Within(after, Limits);
        Guard.Rule(factor is > 1 and <= 10, nameof(factor), (double)factor, Measure.Number, "more than 1 and at most 10");
        After = after;
        Factor = factor;
    }

    /// <summary>Paid hours that go before it.</summary>
    public TimeSpan After { get; }

    /// <summary>Multiple of the wage.</summary>
    public decimal Factor { get; }

    /// <summary>Hours and factor.</summary>
    /// <returns>Text such as <c>beyond 8 h at 1.5</c>.</returns>
    public override string ToString() =>
        "beyond " + Measure.Hours.Format(After.TotalSeconds) + " at " + Factor.ToString("G29", CultureInfo.InvariantCulture);
}
