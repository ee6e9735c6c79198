using System.Collections.Generic;

namespace Refinish.Curing;

/// <summary>One stage of a data sheet's table: its times at two or more temperatures.</summary>
/// <example><code>
/// StageTimes water = new(
///     CureStage.WaterService,
///     [
///         new TabulatedTime(Temperature.FromDegreesCelsius(15), TimeSpan.FromHours(36)),
///         new TabulatedTime(Temperature.FromDegreesCelsius(25), TimeSpan.FromHours(16)),
///     ]);
/// </code></example>
public sealed record StageTimes
{
    private readonly ValueList<TabulatedTime> times;

    /// <summary>Takes the stage and its times.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="times">At least two.</param>
    /// <exception cref="System.ArgumentException">Fewer than two times, or an empty entry.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="stage"/> is not a named value.</exception>
    public StageTimes(CureStage stage, IEnumerable<TabulatedTime> times)
    {
        Stage = Guard.Defined(stage);
        this.times = Guard.List(times, 2);
    }

    /// <summary>The stage.</summary>
    public CureStage Stage { get; }

    /// <summary>Its times.</summary>
    public IReadOnlyList<TabulatedTime> Times => times;

    /// <summary>The stage and its times in one line.</summary>
    /// <returns>Text such as <c>WaterService: 36 h at 15 °C, 16 h at 25 °C</c>.</returns>
    public override string ToString() => Stage.ToString() + ": " + string.Join(", ", times);
}
