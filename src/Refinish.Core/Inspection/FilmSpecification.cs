using UnitsNet;

namespace Refinish.Inspection;

/// <summary>Between which dry films a finished system has to lie.</summary>
public sealed record FilmSpecification
{
    private static readonly Bounds Films = Bounds.Positive(Measure.Film, 1);

    /// <summary>Makes a specification.</summary>
    /// <param name="minimum">Least dry film of all coats together, more than 0 and at most 1 m.</param>
    /// <param name="maximum">Most dry film, not below the least and at most 1 m.</param>
    /// <param name="source">Who asks for it.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">
    /// An argument is outside its range, or the maximum is below the minimum.
    /// </exception>
    public FilmSpecification(Length minimum, Length maximum, Source source)
    {
        Minimum = Guard.Checked(minimum, Films);
        Maximum = Guard.Checked(maximum, Films);
        Guard.Rule(Maximum.Meters >= Minimum.Meters, nameof(maximum), Maximum.Meters, Measure.Film, "at least the minimum, ",
            Minimum.Meters);
        Source = Guard.NotNull(source);
    }

    /// <summary>Least dry film.</summary>
    public Length Minimum { get; }

    /// <summary>Most dry film.</summary>
    public Length Maximum { get; }

    /// <summary>Who asks for it.</summary>
    public Source Source { get; }

    /// <summary>The range in one line, in metric units.</summary>
    /// <returns>Text such as <c>95 µm to 185 µm</c>.</returns>
    public override string ToString() => Measure.Film.Format(Minimum.Meters) + " to " + Measure.Film.Format(Maximum.Meters);
}
