using System;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// Where coating goes that does not become film, each loss by itself. What the gun blows off the piece is the gun's own transfer
/// efficiency.
/// </summary>
/// <remarks>
/// Every loss is none unless given, so that nothing is added that nobody measured. Commonly 5 to 15 % stays in cup, hose and filter (common
/// practice, no source).
/// </remarks>
/// <example><code>
/// ApplicationLosses losses = new()
/// {
///     EdgeOverspray = Ratio.FromPercent(8), Residue = Ratio.FromPercent(5), HoldUp = Volume.FromMilliliters(40),
/// };
/// </code></example>
public sealed record ApplicationLosses
{
    private static readonly Bounds Shares = Bounds.NotNegative(Measure.Percent, 0.5);

    private readonly double edgeOverspray;
    private readonly double holdUp;
    private readonly double residue;
    private readonly double profileDepth;
    private readonly double profileFill = 1;
    private readonly double unusedPot;

    /// <summary>
    /// A start that a shop replaces by its own measurements: 8 % residue and 15 mL in hose and gun, both invented; no other loss.
    /// </summary>
    public static ApplicationLosses Generic { get; } = new() { Residue = Ratio.FromPercent(8), HoldUp = Volume.FromMilliliters(15) };

    /// <summary>Part of what leaves the gun that passes the edges of the piece, lead and lag of each stroke, 0 to 50 %; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio EdgeOverspray
    {
        get => Ratio.FromDecimalFractions(edgeOverspray);
        init => edgeOverspray = Guard.Within(value, Shares, nameof(EdgeOverspray));
    }

    /// <summary>Coating that fills hose and gun and is not sprayed out, once a coat, 0 to 5 L; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Volume HoldUp
    {
        get => Volume.FromCubicMeters(holdUp);
        init => holdUp = Guard.Within(value, Bounds.NotNegative(Measure.Liquid, 5e-3), nameof(HoldUp));
    }

    /// <summary>Part of what is poured that clings to cups, sticks and filter, 0 to 50 %; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Residue
    {
        get => Ratio.FromDecimalFractions(residue);
        init => residue = Guard.Within(value, Shares, nameof(Residue));
    }

    /// <summary>Depth of the roughness, peak to valley, that the first coat has to fill, 0 to 500 µm; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length ProfileDepth
    {
        get => Length.FromMeters(profileDepth);
        init => profileDepth = Guard.Within(value, Bounds.NotNegative(Measure.Film, 500e-6), nameof(ProfileDepth));
    }

    /// <summary>Part of that depth that is empty on average, 0 to 100 %; 100 % unless given, which overstates it (a blasting trade note counts the full depth).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio ProfileFill
    {
        get => Ratio.FromDecimalFractions(profileFill);
        init => profileFill = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1), nameof(ProfileFill));
    }

    /// <summary>Part of what is mixed that is thrown away unused, 0 to 50 %; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio UnusedPot
    {
        get => Ratio.FromDecimalFractions(unusedPot);
        init => unusedPot = Guard.Within(value, Shares, nameof(UnusedPot));
    }

    /// <summary>The shares in one line.</summary>
    /// <returns>Text such as <c>8 % past the edges, 40 mL in the hose, 5 % clings, 0 % unused</c>.</returns>
    public override string ToString() =>
        Measure.Percent.Format(edgeOverspray) + " past the edges, " + Measure.Liquid.Format(holdUp) + " in the hose, "
        + Measure.Percent.Format(residue) + " clings, " + Measure.Percent.Format(unusedPot) + " unused";
}
