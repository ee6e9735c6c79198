using System;

namespace Refinish.Inspection;

/// <summary>A published class of floors by their dynamic coefficient of friction, as data.</summary>
public sealed record SlipClass
{
    /// <summary>Makes a class.</summary>
    /// <param name="name">Name of the class.</param>
    /// <param name="least">Least dynamic coefficient of friction, more than 0 and at most 2.</param>
    /// <param name="isWet">Whether it is measured wet.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is outside its range.</exception>
    public SlipClass(string name, double least, bool isWet, Source source)
    {
        Name = Guard.Named(name, nameof(name));
        Least = Guard.Within(least, Bounds.Positive(Measure.Number, 2), nameof(least));
        IsWet = isWet;
        Source = Guard.NotNull(source, nameof(source));
    }

    /// <summary>Name of the class.</summary>
    public string Name { get; }

    /// <summary>Least dynamic coefficient of friction.</summary>
    public double Least { get; }

    /// <summary>Whether it is measured wet.</summary>
    public bool IsWet { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>The class in one line.</summary>
    /// <returns>Text such as <c>Interior, Wet: 0.42 or more, wet</c>.</returns>
    public override string ToString() => Name + ": " + Figures.Significant(Least) + " or more, " + (IsWet ? "wet" : "dry");
}
