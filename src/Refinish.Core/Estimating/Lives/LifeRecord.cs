using System;

namespace Refinish.Estimating;

/// <summary>What the books say about one job, or several alike: failed at an age, or still good when last heard of (censored).</summary>
/// <example><code>
/// LifeRecord[] records = [new LifeRecord(3.4, failed: true), new LifeRecord(5, failed: false, count: 40)];
/// </code></example>
public sealed record LifeRecord
{
    /// <summary>Makes a record of one job.</summary>
    /// <param name="ageYears">Age at failure, or age at which it was still good; more than 0 and at most 10⁶ years.</param>
    /// <param name="failed">Whether it failed at that age.</param>
    /// <exception cref="ArgumentOutOfRangeException">The age is outside its range.</exception>
    public LifeRecord(double ageYears, bool failed) : this(ageYears, failed, 1)
    {
    }

    /// <summary>Makes a record.</summary>
    /// <param name="ageYears">Age at failure, or age at which it was still good; more than 0 and at most 10⁶ years.</param>
    /// <param name="failed">Whether it failed at that age.</param>
    /// <param name="count">Jobs alike, 1 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public LifeRecord(double ageYears, bool failed, int count)
    {
        AgeYears = Guard.Within(ageYears, Bounds.Positive(Measure.Years, 1e6));
        Failed = failed;
        Count = Guard.Count(count, 1, 1_000_000);
    }

    /// <summary>Age at failure, or age at which it was still good, in years.</summary>
    public double AgeYears { get; }

    /// <summary>Whether it failed at that age.</summary>
    public bool Failed { get; }

    /// <summary>Jobs alike.</summary>
    public int Count { get; }

    /// <summary>The record in words.</summary>
    /// <returns>Text such as <c>40 still good at 5 years</c>.</returns>
    public override string ToString() => Figures.Fixed(Count, 0) + (Failed ? " failed at " : " still good at ") + Measure.Years.Format(AgeYears);
}
