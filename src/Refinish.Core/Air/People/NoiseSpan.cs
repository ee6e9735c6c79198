using System;
using UnitsNet;

namespace Refinish.Air;

/// <summary>A stretch of one person's day with one noise at the ear.</summary>
/// <example><code>
/// NoiseSpan sanding = new("sanding", Level.FromDecibels(97), TimeSpan.FromMinutes(40));
/// </code></example>
public sealed record NoiseSpan
{
    internal static readonly Bounds Levels = Bounds.Between(60, 140, Measure.SoundLevel);

    private readonly double? level;

    /// <summary>Notes a stretch of work at one level.</summary>
    /// <param name="work">What is done in it.</param>
    /// <param name="level">
    /// A-weighted level at the ear, 60 to 140 dB; <see langword="null"/> when it is loud and nobody has said how loud.
    /// </param>
    /// <param name="time">How long, more than 0 and at most 24 h.</param>
    /// <exception cref="ArgumentException"><paramref name="work"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public NoiseSpan(string work, Level? level, TimeSpan time)
    {
        Work = Guard.Named(work);
        this.level = level is Level known ? Guard.Within(known, Levels, nameof(level)) : null;
        Time = Guard.Time(time, Bounds.Positive(Measure.Hours, 24 * 3600));
    }

    /// <summary>What is done in it.</summary>
    public string Work { get; }

    /// <summary>A-weighted level at the ear; <see langword="null"/> when it is loud and nobody has said how loud.</summary>
    public Level? Level => level is double known ? UnitsNet.Level.FromDecibels(known) : null;

    /// <summary>How long.</summary>
    public TimeSpan Time { get; }

    /// <summary>Work, level and time.</summary>
    /// <returns>Text such as <c>sanding: 97 dB, 0.66667 h</c>.</returns>
    public override string ToString() =>
        Work + ": " + (level is double known ? Measure.SoundLevel.Format(known) : "level not known") + ", "
            + Measure.Hours.Format(Time.TotalSeconds);

    internal double? Decibels => level;
}
