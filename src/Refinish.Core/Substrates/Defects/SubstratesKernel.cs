using System;

namespace Refinish.Substrates;

/// <summary>
/// Cavities and filler in SI. Symbols: a mouth radius, h depth, l length, w width (m); V volume (m³); o overfill, s shrinkage, c waste (fractions).
/// </summary>
internal static class SubstratesKernel
{
    /// <summary>V = π h (3 a b + h²) / 6, the cap of a sphere that is stretched to an oval mouth of half axes a and b.</summary>
    public static double EllipsoidalCap(double length, double width, double depth) =>
        Math.PI * depth * ((3 * (length / 2 * (width / 2))) + (depth * depth)) / 6;

    /// <summary>V = κ (π l w / 4) h, a bowl with an elliptical mouth.</summary>
    public static double Bowl(double factor, double length, double width, double depth) => factor * (Math.PI * length * width / 4) * depth;

    /// <summary>V = κ w h l, a groove.</summary>
    public static double Groove(double factor, double length, double width, double depth) => factor * width * depth * length;

    /// <summary>V = π (d/2 + m)² h: a round place ground out with a margin m all round.</summary>
    public static double GroundOut(double diameter, double margin, double depth)
    {
        double radius = (diameter / 2) + margin;
        return Math.PI * (radius * radius) * depth;
    }

    /// <summary>V = t (A + P f / 2 + π f² / 3), a skim of thickness t that runs out to nothing over the width f around a convex patch.</summary>
    public static double FeatheredSkim(double length, double width, double thickness, double feather) =>
        thickness * ((length * width) + (2 * (length + width) * feather / 2) + (Math.PI * (feather * feather) / 3));

    /// <summary>V_applied = V (1 + o) / (1 − s).</summary>
    public static double Applied(double cavity, double overfill, double shrinkage) => cavity * (1 + overfill) / (1 - shrinkage);

    /// <summary>n = roundup(h / lift); a billionth is taken off so that three lifts of a third each stay three.</summary>
    public static double Lifts(double depth, double lift) => Math.Ceiling((depth / lift) - 1e-9);

    public static double Factor(BowlProfile profile) => profile switch
    {
        BowlProfile.Cone => 1.0 / 3,
        BowlProfile.Paraboloid => 0.5,
        BowlProfile.HalfEllipsoid => 2.0 / 3,
        _ => 1,
    };

    public static double Factor(GrooveProfile profile) => profile switch
    {
        GrooveProfile.Vee => 0.5,
        GrooveProfile.Round => Math.PI / 4,
        _ => 1,
    };
}
