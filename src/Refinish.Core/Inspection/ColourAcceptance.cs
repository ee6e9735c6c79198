using System;
using System.Collections.Generic;
using Refinish.Colours;

namespace Refinish.Inspection;

/// <summary>The colour of a finish held against a reference by CIEDE2000.</summary>
/// <remarks>
/// Tolerances are a matter of contract: 1 for a touch-up and 2 from fixture to fixture are invented here as a start. A match under one
/// lamp may be none under another, and white coatings yellow.
/// </remarks>
/// <example><code>
/// ColourAcceptance test = ColourAcceptance.FixtureToFixture(new ColourDifference(new CieLab(94.2, -0.6, 1.8), new CieLab(93.8, -0.7, 2.4)));
/// bool matches = test.Comparison.Outcome == ComparisonOutcome.Within;
/// </code></example>
public sealed record ColourAcceptance
{
    private static readonly Source Start = Source.Invented("tolerance of ΔE00 1 for a touch-up and 2 from fixture to fixture, to be replaced by the contract");

    /// <summary>Holds a difference against a tolerance.</summary>
    /// <param name="difference">Reference and sample.</param>
    /// <param name="tolerance">Largest ΔE00, 0.05 to 50.</param>
    /// <param name="source">Who wants it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is outside its range.</exception>
    public ColourAcceptance(ColourDifference difference, double tolerance, Source source)
    {
        Difference = Guard.NotNull(difference);
        Tolerance = Guard.Within(tolerance, Bounds.Between(0.05, 50, Measure.Number));
        Source = Guard.NotNull(source);
    }

    /// <summary>Reference and sample.</summary>
    public ColourDifference Difference { get; }

    /// <summary>Largest ΔE00.</summary>
    public double Tolerance { get; }

    /// <summary>Who wants it.</summary>
    public Source Source { get; }

    /// <summary>ΔE00 against the tolerance.</summary>
    public LimitComparison Comparison => new("colour difference ΔE00", Difference.Ciede2000, Tolerance, LimitSense.AtMost, Measure.Number, Source, Direction());

    /// <summary>Against the start value for a touch-up, 1.</summary>
    /// <param name="difference">Reference and sample.</param>
    /// <returns>The acceptance.</returns>
    public static ColourAcceptance TouchUp(ColourDifference difference) => new(difference, 1, Start);

    /// <summary>Against the start value from fixture to fixture, 2.</summary>
    /// <param name="difference">Reference and sample.</param>
    /// <returns>The acceptance.</returns>
    public static ColourAcceptance FixtureToFixture(ColourDifference difference) => new(difference, 2, Start);

    /// <summary>The difference in one line.</summary>
    /// <returns>Text such as <c>ΔE00 0.7, 2 allowed: the sample is darker</c>.</returns>
    public override string ToString() =>
        "ΔE00 " + Figures.Significant(Difference.Ciede2000, 3) + ", " + Figures.Significant(Tolerance, 3) + " allowed: " + Direction();

    // The greatest of the three parts tells what to do about it.
    private string Direction()
    {
        double l = Math.Abs(Difference.DeltaL);
        double a = Math.Abs(Difference.DeltaA);
        double b = Math.Abs(Difference.DeltaB);
        return l == 0 && a == 0 && b == 0 ? "the sample is the same"
            : l >= a && l >= b ? Difference.DeltaL > 0 ? "the sample is lighter" : "the sample is darker"
            : a >= b ? Difference.DeltaA > 0 ? "the sample is redder" : "the sample is greener"
            : Difference.DeltaB > 0 ? "the sample is yellower" : "the sample is bluer";
    }
}
