using System;

namespace Refinish.Fixtures;

/// <summary>
/// The section of a counter's edge in SI: developed length s, reach i from the outermost line inwards, first moment m = ∫ x ds about that line, mean slope.
/// T thickness, r radius. Square: s = T. Eased: s = T − r + πr/2, i = r, m = r²(π/2 − 1). Bullnose, R = T/2: s = πR, i = R, m = R²(π − 2).
/// Ogee, two quarter circles of R = T/2, point-symmetric about their joint: s = πR, i = 2R, m = πR².
/// With mitred corners the edge's line shortens by 2x for each corner that stands out, so that area = L s − 2 k m and the top loses L i − k i².
/// </summary>
/// <remarks>Source: derived, elementary geometry.</remarks>
internal readonly record struct EdgeShape(EdgeProfile Profile, double Thickness, double Radius)
{
    private double Half => Thickness / 2;

    public double Developed => Profile switch
    {
        EdgeProfile.Square => Thickness,
        EdgeProfile.Eased => Thickness - Radius + (Math.PI * Radius / 2),
        _ => Math.PI * Half,
    };

    public double Reach => Profile switch
    {
        EdgeProfile.Square => 0,
        EdgeProfile.Eased => Radius,
        EdgeProfile.Bullnose => Half,
        _ => 2 * Half,
    };

    public double Moment => Profile switch
    {
        EdgeProfile.Square => 0,
        EdgeProfile.Eased => Radius * Radius * ((Math.PI / 2) - 1),
        EdgeProfile.Bullnose => Half * Half * (Math.PI - 2),
        _ => Math.PI * (Half * Half),
    };

    /// <summary>∫ slope ds / s along a straight edge: upright faces 90°, a quarter circle 45° on average, the lower half of a bullnose beyond upright.</summary>
    public double Slope => Profile switch
    {
        EdgeProfile.Eased => ((Math.PI / 2 * (Thickness - Radius)) + (Math.PI * Math.PI / 8 * Radius)) / Developed,
        EdgeProfile.Ogee => Math.PI / 4,
        _ => Math.PI / 2,
    };

    /// <summary>The shares of the developed length between which the section is smooth.</summary>
    public double[] Breaks() => Profile switch
    {
        EdgeProfile.Eased => [0, (Math.PI * Radius / 2) / Developed, 1],
        EdgeProfile.Ogee => [0, 0.5, 1],
        _ => [0, 1],
    };

    /// <summary>A point of the section by its share of the developed length from the top down: inwards from the outermost line, and below the top.</summary>
    public (double Inwards, double Down) At(double share)
    {
        double r = Profile == EdgeProfile.Eased ? Radius : Half;
        double arc = share * Developed;
        switch (Profile)
        {
            case EdgeProfile.Square:
                return (0, arc);
            case EdgeProfile.Eased:
                double quarter = Math.PI * r / 2;
                return arc >= quarter ? (0, r + arc - quarter) : (r * (1 - Math.Sin(arc / r)), r * (1 - Math.Cos(arc / r)));
            case EdgeProfile.Bullnose:
                double turn = Math.PI * share;
                return (r * (1 - Math.Sin(turn)), r * (1 - Math.Cos(turn)));
            default:
                // Hollow quarter about (2R, … ) seen from outside, then the round one.
                double upper = Math.Min(share, 0.5) * Math.PI;
                double lower = Math.Max(0, share - 0.5) * Math.PI;
                return share <= 0.5
                    ? ((2 * r) - (r * (1 - Math.Cos(upper))), r * Math.Sin(upper))
                    : (r - (r * Math.Sin(lower)), r + (r * (1 - Math.Cos(lower))));
        }
    }

    public Expression DevelopedFormula(Expression thickness, Expression radius) => Profile switch
    {
        EdgeProfile.Square => thickness,
        EdgeProfile.Eased => thickness - radius + (Expression.Pi() * radius / 2),
        _ => Expression.Pi() * thickness / 2,
    };

    public Expression ReachFormula(Expression thickness, Expression radius) => Profile switch
    {
        EdgeProfile.Square => 0,
        EdgeProfile.Eased => radius,
        EdgeProfile.Bullnose => thickness / 2,
        _ => thickness,
    };

    public Expression MomentFormula(Expression thickness, Expression radius) => Profile switch
    {
        EdgeProfile.Square => 0,
        EdgeProfile.Eased => Expression.Square(radius) * ((Expression.Pi() / 2) - 1),
        EdgeProfile.Bullnose => Expression.Square(thickness / 2) * (Expression.Pi() - 2),
        _ => Expression.Pi() * Expression.Square(thickness / 2),
    };

    public Expression SlopeFormula(Expression thickness, Expression radius) => Profile switch
    {
        EdgeProfile.Eased => ((Expression.Pi() / 2 * (thickness - radius)) + (Expression.Square(Expression.Pi()) / 8 * radius)) / DevelopedFormula(thickness, radius),
        EdgeProfile.Ogee => Expression.Pi() / 4,
        _ => Expression.Pi() / 2,
    };
}
