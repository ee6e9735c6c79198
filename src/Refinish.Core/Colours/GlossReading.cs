using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Colours;

/// <summary>Specular gloss of a surface at 60°, and at 20 and 85° where those were read.</summary>
/// <remarks>
/// Read at 60° first; above 70 the 20° reading tells coats apart, below 10 the 85° reading (ISO 2813 and ASTM D523, from memory). Gloss
/// meters need a flat place of a few centimetres: on the curve of a basin they read low.
/// </remarks>
/// <example><code>
/// GlossReading reading = new() { At60 = 22, At85 = 35 };
/// IReadOnlyList&lt;GlossLevel&gt; levels = reading.LevelsOf(GlossLevels.Painting);      // levels 3 and 4
/// </code></example>
public sealed record GlossReading
{
    private static readonly Bounds Units = Bounds.Between(0, 2000, Measure.Gloss);

    /// <summary>Gloss at 60°, 0 to 2000 GU (above about 100 only over metal).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double At60 { get; init => field = Guard.Within(value, Units); }

    /// <summary>Gloss at 20°, 0 to 2000 GU; <see langword="null"/> when not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? At20 { get; init => field = value is double high ? Guard.Within(high, Units, nameof(At20)) : null; }

    /// <summary>Gloss at 85°, 0 to 2000 GU; <see langword="null"/> when not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? At85 { get; init => field = value is double low ? Guard.Within(low, Units, nameof(At85)) : null; }

    /// <summary>The angle to compare such surfaces at: 20° above 70 GU at 60°, 85° below 10, else 60°.</summary>
    public GlossAngle AngleToUse => At60 > 70 ? GlossAngle.Twenty : At60 < 10 ? GlossAngle.EightyFive : GlossAngle.Sixty;

    /// <summary>The reading at an angle.</summary>
    /// <param name="angle">The angle.</param>
    /// <returns>The reading; <see langword="null"/> when not read.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public double? At(GlossAngle angle) => Guard.Defined(angle) switch
    {
        GlossAngle.Twenty => At20,
        GlossAngle.EightyFive => At85,
        _ => At60,
    };

    /// <summary>The levels that the reading belongs to, in their order; bands overlap, so there may be several, or none.</summary>
    /// <param name="levels">Levels to look through, such as <see cref="GlossLevels.Painting"/>.</param>
    /// <returns>The levels.</returns>
    public IReadOnlyList<GlossLevel> LevelsOf(IEnumerable<GlossLevel> levels) => Find(levels, ComparisonOutcome.Within);

    /// <summary>The levels that can neither be given nor ruled out because a reading is missing.</summary>
    /// <param name="levels">Levels to look through.</param>
    /// <returns>The levels.</returns>
    public IReadOnlyList<GlossLevel> OpenLevelsOf(IEnumerable<GlossLevel> levels) => Find(levels, ComparisonOutcome.CannotBeJudged);

    /// <summary>The readings in one line.</summary>
    /// <returns>Text such as <c>60°: 22 GU, 85°: 35 GU</c>.</returns>
    public override string ToString() =>
        (At20 is double high ? "20°: " + Measure.Gloss.Format(high) + ", " : string.Empty) + "60°: " + Measure.Gloss.Format(At60)
        + (At85 is double low ? ", 85°: " + Measure.Gloss.Format(low) : string.Empty);

    private ValueList<GlossLevel> Find(IEnumerable<GlossLevel> levels, ComparisonOutcome outcome) =>
        new(Guard.List(levels).Where(level => level.Judge(this) == outcome));
}
