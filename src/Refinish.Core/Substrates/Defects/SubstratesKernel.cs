using System;

namespace Refinish.Substrates;

/// <summary>
/// Cavities and filler in SI. Symbols: a mouth radius, h depth, l length, w width (m); V volume (m³); o overfill, s shrinkage, c waste
/// (fractions).
/// </summary>
internal static class SubstratesKernel
{
    /// <summary>V = π h (3 a b + h²) / 6, the cap of a sphere that is stretched to an oval mouth of half axes a and b.</summary>
    public static Num EllipsoidalCap(Num productOfHalfAxes, Num depth) =>
        Num.Pi * depth * ((3 * productOfHalfAxes) + Num.Square(depth)) / 6;

    /// <summary>V = κ (π l w / 4) h, a bowl with an elliptical mouth.</summary>
    public static Num Bowl(Num factor, Num length, Num width, Num depth) => factor * (Num.Pi * length * width / 4) * depth;

    /// <summary>V = κ w h l, a groove.</summary>
    public static Num Groove(Num factor, Num length, Num width, Num depth) => factor * width * depth * length;

    /// <summary>V = π (d/2 + m)² h: a round place ground out with a margin m all round.</summary>
    public static Num GroundOut(Num diameter, Num margin, Num depth) => Num.Pi * Num.Square((diameter / 2) + margin) * depth;

    /// <summary>
    /// V = t (A + P f / 2 + π f² / 3), a skim of thickness t that runs out to nothing over the width f around a convex patch.
    /// </summary>
    public static Num FeatheredSkim(Num length, Num width, Num thickness, Num feather) =>
        thickness * ((length * width) + (2 * (length + width) * feather / 2) + (Num.Pi * Num.Square(feather) / 3));

    /// <summary>V_applied = V (1 + o) / (1 − s).</summary>
    public static Num Applied(Num cavity, Num overfill, Num shrinkage) => cavity * (1 + overfill) / (1 - shrinkage);

    /// <summary>n = roundup(h / lift); a billionth is taken off so that three lifts of a third each stay three.</summary>
    public static Num Lifts(Num depth, Num lift) => Num.Ceiling((depth / lift) - 1e-9);

    public static double Factor(BowlProfile profile) => profile switch
    {
        BowlProfile.Cone => 1.0 / 3, BowlProfile.Paraboloid => 0.5, BowlProfile.HalfEllipsoid => 2.0 / 3, _ => 1, };

    public static double Factor(GrooveProfile profile) => profile switch
    {
        GrooveProfile.Vee => 0.5, GrooveProfile.Round => Math.PI / 4, _ => 1, };
}
