using System;

namespace Refinish.Fixtures;

/// <summary>
/// One reading of a kind of rough fixture: what it is, what stands in for it, and what it may be beside readings that are known.
/// </summary>
internal sealed class RoughReading(string name, Measure measure, Bounds allowed, ReadingAssumption? assumption)
{
    public string Name => name;

    public Measure Measure => measure;

    /// <summary>What a taken value may be; for a reading that has to be taken, what the proportions are made for.</summary>
    public Bounds Allowed => allowed;

    /// <summary>What stands in for it; null for a reading that has to be taken.</summary>
    public ReadingAssumption? Assumption => assumption;

    public bool IsWhole { get; set; }

    /// <summary>The least and the greatest that it can be beside what is known.</summary>
    public Func<KnownReadings, (double Low, double High)>? Limits { get; set; }
}
