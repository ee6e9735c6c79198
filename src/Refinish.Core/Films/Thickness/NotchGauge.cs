using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Films;

/// <summary>A notch gauge (wet-film comb): teeth that stand off the surface by known heights, between two feet that stand on it.</summary>
/// <remarks>
/// Press it square into the film at once after laying, along and not across a curve, and look which teeth are wetted. The film lies
/// between the highest wetted tooth and the next dry one (ASTM D4414 and a finishing guidebook, read second-hand). It leaves marks:
/// read on the masking, on a witness panel, or where the film still closes.
/// </remarks>
/// <example><code>
/// NotchGauge gauge = new([Length.FromMils(1), Length.FromMils(2), Length.FromMils(3), Length.FromMils(4), Length.FromMils(5)]);
/// FilmInterval wet = gauge.Read(3).Wet;        // 76.2 µm to 101.6 µm: three teeth are wetted, the fourth is dry
/// </code></example>
public sealed record NotchGauge
{
    /// <summary>Makes a gauge.</summary>
    /// <param name="teeth">Heights of the teeth, rising, at least two, each more than 0 and at most 5 mm.</param>
    /// <exception cref="ArgumentException">Fewer than two teeth.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A tooth is outside its range or not higher than the one before.</exception>
    public NotchGauge(IEnumerable<Length> teeth)
    {
        Heights = new(Guard.List(teeth, 2).Select(tooth => Guard.Within(tooth, Bounds.Positive(Measure.Film, 5e-3), nameof(teeth))));
        for (int i = 1; i < Heights.Count; i++)
        {
            Guard.Rule(Heights[i] > Heights[i - 1], nameof(teeth), Heights[i], Measure.Film,
                "more than the tooth before, ", Heights[i - 1]);
        }
    }

    /// <summary>Heights of the teeth, rising.</summary>
    public IReadOnlyList<Length> Teeth => [.. Heights.Select(tooth => Length.FromMeters(tooth))];

    internal ValueList<double> Heights { get; }

    /// <summary>What a number of wetted teeth says.</summary>
    /// <param name="wettedTeeth">Teeth that are wetted, counted from the lowest; 0 to the number of teeth.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a count of this gauge's teeth.</exception>
    public NotchReading Read(int wettedTeeth) => new(this, wettedTeeth);

    /// <summary>What the highest wetted tooth says.</summary>
    /// <param name="highestWetted">The height that stands at the highest wetted tooth; it has to be one of this gauge's.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The gauge has no tooth of this height, to a millionth of it.</exception>
    public NotchReading Read(Length highestWetted)
    {
        double height = Guard.Within(highestWetted, Bounds.Positive(Measure.Film, 5e-3));
        int wetted = Heights.Count(tooth => tooth <= height * (1 + 1e-6));
        bool isTooth = wetted > 0 && height - Heights[wetted - 1] <= 1e-6 * height;
        if (!isTooth)
        {
            string teeth = string.Join(", ", Heights.Select(tooth => Measure.Film.Format(tooth)));
            Guard.Rule(false, nameof(highestWetted), height, Measure.Film, "a tooth of this gauge, " + teeth);
        }

        return new(this, wetted);
    }

    /// <summary>The gauge in one line, in metric units.</summary>
    /// <returns>Text such as <c>5 teeth from 25.4 µm to 127 µm</c>.</returns>
    public override string ToString() =>
        Figures.Fixed(Heights.Count, 0) + " teeth from " + Measure.Film.Format(Heights[0]) + " to "
        + Measure.Film.Format(Heights[Heights.Count - 1]);
}
