using System;
using Refinish.Air;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>How loud a kind of work is at the ear of whoever does it.</summary>
/// <example><code>
/// WorkNoise sanding = new(WorkKind.Key, "our sander (invented)", Level.FromDecibels(84), Source.Supplied("read at the ear, 2027-01-15"));
/// </code></example>
public sealed record WorkNoise
{
    private readonly double level;

    /// <summary>States how loud a tool is at the ear of whoever uses it.</summary>
    /// <param name="work">The kind of work.</param>
    /// <param name="tool">The tool that makes it.</param>
    /// <param name="level">A-weighted level at the ear while it is done, 60 to 140 dB.</param>
    /// <param name="source">Where it comes from: a reading, the tool's maker, a list.</param>
    /// <exception cref="ArgumentException"><paramref name="tool"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The kind is not a named one, or the level is outside its range.</exception>
    public WorkNoise(WorkKind work, string tool, Level level, Source source)
    {
        Work = Guard.Defined(work);
        Tool = Guard.Named(tool);
        this.level = Guard.Within(level, NoiseSpan.Levels);
        Source = Guard.NotNull(source);
    }

    /// <summary>Operations of this kind are done at the level.</summary>
    public WorkKind Work { get; }

    /// <summary>The tool that makes it.</summary>
    public string Tool { get; }

    /// <summary>A-weighted level at the ear while it is done.</summary>
    public Level Level => Level.FromDecibels(level);

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>Tool and level.</summary>
    /// <returns>Text such as <c>hand-held sander: 97 dB</c>.</returns>
    public override string ToString() => Tool + ": " + Measure.SoundLevel.Format(level, DisplayUnits.Si, 3);
}
