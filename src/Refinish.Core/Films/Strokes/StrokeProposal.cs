using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// Strokes that reach the least film with the least coating among the ways that were tried, what they leave on the fixture, and where
/// they fall short.
/// </summary>
/// <remarks>
/// Within one way (overlap, edge rows, crossed or not) the speeds of the sides are the exact optimum of a linear programme: film is
/// linear in the time spent on each side. Which way is best is found by trying them all. A person with a good eye may do better with a
/// gun turned in the hand; a proposal is a start, to be proved on a test panel.
/// </remarks>
/// <example><code>
/// bool everywhere = proposal.Shortfalls.Count == 0; // the proposal of StrokeSearch
/// </code></example>
public sealed class StrokeProposal
{
    internal StrokeProposal(StrokePlan? plan, FilmMap? map, double overlap, bool crossed, IReadOnlyList<StrokeSide> sides, IReadOnlyList<StrokeShortfall> shortfalls, IReadOnlyList<string> tried)
    {
        Plan = plan;
        Map = map;
        Overlap = Ratio.FromDecimalFractions(overlap);
        IsCrossed = crossed;
        Sides = sides;
        Shortfalls = shortfalls;
        Tried = tried;
    }

    /// <summary>The strokes with their speeds; <see langword="null"/> when there is no room for a single one.</summary>
    public StrokePlan? Plan { get; }

    /// <summary>The film they leave; <see langword="null"/> without strokes.</summary>
    public FilmMap? Map { get; }

    /// <summary>The overlap that was chosen.</summary>
    public Ratio Overlap { get; }

    /// <summary>Whether each side is sprayed twice, the second time across the first.</summary>
    public bool IsCrossed { get; }

    /// <summary>The sides in the order in which they are sprayed.</summary>
    public IReadOnlyList<StrokeSide> Sides { get; }

    /// <summary>Where the least film is not reached, and why; empty when it is reached everywhere.</summary>
    public IReadOnlyList<StrokeShortfall> Shortfalls { get; }

    /// <summary>Every way that was tried, with what it would take, in words.</summary>
    public IReadOnlyList<string> Tried { get; }

    /// <summary>The choice in one line, in metric units.</summary>
    /// <returns>Text such as <c>34 strokes, 2.1 min of trigger, 378 mL; overlap 50 %; the least film is reached everywhere</c>.</returns>
    public override string ToString() => Plan is null || Map is null ? "no room for a stroke" : string.Format(
        CultureInfo.InvariantCulture,
        "{0}; overlap {1}{2}; {3}",
        Plan, Measure.Percent.Format(Overlap.DecimalFractions, DisplayUnits.Si, 3), IsCrossed ? ", crossed" : string.Empty,
        Shortfalls.Count == 0
            ? "the least film is reached everywhere"
            : "the least film is missed on " + Measure.Percent.Format(Map.Whole.UnderMinimum.DecimalFractions, DisplayUnits.Si, 3) + " of the area");
}
