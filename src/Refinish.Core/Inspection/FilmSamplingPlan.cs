using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>
/// How many spots or readings of the dry film, whichever a rule counts, a surface takes by its area, as data: so many up to each size, and
/// more for each further area.
/// </summary>
/// <example><code>
/// FilmSamplingPlan plan = FilmAcceptanceRules.SpotsWithinAFifth.Plan!;
/// int bathroom = plan.CountFor(Area.FromSquareMeters(12));      // 10
/// int hall = plan.CountFor(Area.FromSquareMeters(250));         // 25
/// </code></example>
public sealed record FilmSamplingPlan
{
    private readonly ValueList<double> sizes;
    private readonly ValueList<int> counts;

    /// <summary>Makes a plan.</summary>
    /// <param name="steps">Largest area and the count that it takes, at least one step, areas and counts rising, areas at most 10 000
    /// m².</param>
    /// <param name="furtherArea">Beyond the last step each area of this size, or part of it, takes more; more than 0 and at most 10 000
    /// m².</param>
    /// <param name="furtherCount">That many more, 1 to 1000.</param>
    /// <param name="source">Where the plan comes from.</param>
    /// <exception cref="ArgumentException">There is no step.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the steps do not rise.</exception>
    public FilmSamplingPlan(IEnumerable<KeyValuePair<Area, int>> steps, Area furtherArea, int furtherCount, Source source)
    {
        ValueList<KeyValuePair<Area, int>> list = Guard.List(steps, 1);
        sizes = new(list.Select(step => Guard.Within(step.Key, Bounds.Positive(Measure.Area, 10e3), nameof(steps))));
        counts = new(list.Select(step => Guard.Count(step.Value, 1, 1000, nameof(steps))));
        for (int i = 1; i < sizes.Count; i++)
        {
            Guard.Rule(sizes[i] > sizes[i - 1] && counts[i] >= counts[i - 1], nameof(steps), sizes[i], Measure.Area,
                "areas and counts that rise from step to step");
        }

        FurtherArea = Guard.Checked(furtherArea, Bounds.Positive(Measure.Area, 10e3));
        FurtherCount = Guard.Count(furtherCount, 1, 1000);
        Source = Guard.NotNull(source);
    }

    /// <summary>Largest area of each step and the count that it takes.</summary>
    public IReadOnlyList<KeyValuePair<Area, int>> Steps =>
        [.. sizes.Select((size, i) => new KeyValuePair<Area, int>(Area.FromSquareMeters(size), counts[i]))];

    /// <summary>Beyond the last step, the area that takes <see cref="FurtherCount"/> more.</summary>
    public Area FurtherArea { get; }

    /// <summary>How many more each further area takes.</summary>
    public int FurtherCount { get; }

    /// <summary>Where the plan comes from.</summary>
    public Source Source { get; }

    /// <summary>How many spots or readings a surface takes.</summary>
    /// <param name="area">Coated area, more than 0 and at most 10 000 m².</param>
    /// <returns>The count.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int CountFor(Area area)
    {
        // Square feet turned to square metres may stand a last digit above the step that they are.
        double size = Guard.Within(area, Bounds.Positive(Measure.Area, 10e3)) * (1 - 1e-12);
        int step = sizes.Count(one => one < size);
        return step < sizes.Count
            ? counts[step]
            : counts[step - 1] + (FurtherCount * (int)Math.Ceiling((size - sizes[step - 1]) / FurtherArea.SquareMeters));
    }

    /// <summary>The steps in one line, in metric units.</summary>
    /// <returns>Text such as <c>5 up to 10 m², 10 up to 20 m², 15 up to 100 m², then 5 for each 100 m²</c>.</returns>
    public override string ToString() =>
        string.Join(", ", sizes.Select((size, i) =>
            counts[i].ToString(CultureInfo.InvariantCulture) + " up to " + Measure.Area.Format(size)))
        + ", then " + FurtherCount.ToString(CultureInfo.InvariantCulture) + " for each " + Measure.Area.Format(FurtherArea.SquareMeters);
}
