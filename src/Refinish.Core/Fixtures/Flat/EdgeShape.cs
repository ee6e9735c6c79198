using System;

namespace Refinish.Fixtures;

/// <summary>
/// The section of a counter's edge in SI: developed length s, reach i from the outermost line inwards, first moment m = ∫ x ds about
/// that line, mean slope. T thickness, r radius. Square: s = T. Eased: s = T − r + πr/2, i = r, m = r²(π/2 − 1). Bullnose, R = T/2: s =
/// πR, i = R, m = R²(π − 2). Ogee, two quarter circles of R = T/2, point-symmetric about their joint: s = πR, i = 2R, m = πR². With
/// mitred corners the edge's line shortens by 2x for each corner that stands out, so that area = L s − 2 k m and the top loses L i − k
/// i².
/// </summary>
/// <remarks>Source: derived, elementary geometry.</remarks>
internal readonly record struct EdgeShape(EdgeProfile Profile, double Thickness, double Radius)
{
    public Num Developed(Trace? t = null) => Profile switch
    {
        EdgeProfile.Square => T(t), EdgeProfile.Eased => T(t) - R(t) + (Num.Pi * R(t) / 2), _ => Num.Pi * T(t) / 2, };

    public Num Reach(Trace? t = null) => Profile switch
    {
        EdgeProfile.Square => t.Number(0), EdgeProfile.Eased => R(t), EdgeProfile.Bullnose => T(t) / 2, _ => T(t), };

    public Num Moment(Trace? t = null) => Profile switch
    {
        EdgeProfile.Square => t.Number(0),
        EdgeProfile.Eased => Num.Square(R(t)) * ((t.Pi() / 2) - 1),
        EdgeProfile.Bullnose => Num.Square(T(t) / 2) * (t.Pi() - 2), _ => Num.Pi * Num.Square(T(t) / 2), };

    /// <summary>
    /// ∫ slope ds / s along a straight edge: upright faces 90°, a quarter circle 45° on average, the lower half of a bullnose beyond
    /// upright.
    /// </summary>
    public Num Slope(Trace? t = null) => Profile switch
    {
        EdgeProfile.Eased => ((t.Pi() / 2 * (T(t) - R(t))) + (Num.Square(t.Pi()) / 8 * R(t))) / Developed(t),
        EdgeProfile.Ogee => t.Pi() / 4, _ => t.Pi() / 2, };

    /// <summary>The shares of the developed length between which the section is smooth.</summary>
    public double[] Breaks() => Profile switch
    {
        EdgeProfile.Eased => [0, Math.PI * Radius / 2 / Developed().Value, 1], EdgeProfile.Ogee => [0, 0.5, 1], _ => [0, 1], };

    /// <summary>
    /// A point of the section by its share of the developed length from the top down: inwards from the outermost line, and below the
    /// top.
    /// </summary>
    public (double Inwards, double Down) At(double share)
    {
        double r = Profile == EdgeProfile.Eased ? Radius : Thickness / 2;
        double arc = share * Developed().Value;
        switch (Profile)
        {
            case EdgeProfile.Square: return (0, arc);
            case EdgeProfile.Eased: double quarter = Math.PI * r / 2;
                return arc >= quarter ? (0, r + arc - quarter) : (r * (1 - Math.Sin(arc / r)), r * (1 - Math.Cos(arc / r)));
            case EdgeProfile.Bullnose: double turn = Math.PI * share;
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

    private Num T(Trace? t) => t.Given("T", Thickness, Measure.Length);

    private Num R(Trace? t) => t.Given("r", Radius, Measure.Length);
}
