using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Films;

/// <summary>Where the least film cannot be reached, or was given up, and why.</summary>
/// <example><code>
/// foreach (StrokeShortfall place in proposal.Shortfalls)   // the proposal of StrokeSearch
/// {
///     string line = place.ToString();
/// }
/// </code></example>
public sealed record StrokeShortfall
{
    internal StrokeShortfall(FixtureZoneKind? zone, double area, MeshPoint about, string reason)
    {
        Zone = zone;
        Area = Area.FromSquareMeters(area);
        About = about;
        Reason = reason;
    }

    /// <summary>The zone; <see langword="null"/> for triangles without one.</summary>
    public FixtureZoneKind? Zone { get; }

    /// <summary>How much of it.</summary>
    public Area Area { get; }

    /// <summary>The triangle among them that gets least.</summary>
    public MeshPoint About { get; }

    /// <summary>Why, in words.</summary>
    public string Reason { get; }

    /// <summary>Where, how much and why in one line, in metric units.</summary>
    /// <returns>Text such as <c>Wall, 12 cm² about (1450 mm, 90 mm, 20 mm): no stroke reaches it</c>.</returns>
    public override string ToString() =>
        (Zone is FixtureZoneKind zone ? zone.ToString() : "No zone") + ", "
            + Measure.SmallArea.Format(Area.SquareMeters, DisplayUnits.Si, 3) + " about " + About + ": " + Reason;
}
