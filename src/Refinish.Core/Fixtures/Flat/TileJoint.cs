namespace Refinish.Fixtures;

/// <summary>
/// The joints of a tiled wall in SI. l, w tile; j joint width; d recess depth. One module (l + j)(w + j) holds one tile and j (l + w + j)
/// of joint. Sharp: f = 1 + 2 d (l + w) / module, recess cross-section j d. Concave, an arc of half angle α = 2 arctan(2d / j) over the
/// chord j: s = j α / sin α, f = 1 + (s − j)(l + w + j) / module, cross-section (j / (2 sin α))² (α − sin α cos α).
/// </summary>
/// <remarks>
/// Source: derived. The crossing of two joints is counted once, as part of the longer one; the same module stands in the common formula for
/// grout quantity.
/// </remarks>
internal readonly record struct TileJoint(double TileLength, double TileWidth, double Width, double Depth, JointProfile Profile)
{
    public static readonly Source Recess = Source.Derived("developed area of one module of tile and joint");

    public Num Module(Trace? t = null) =>
        t.Step("module of one tile and its joints", "A_1", Measure.SmallArea, Recess, (L(t) + J(t)) * (W(t) + J(t)));

    /// <summary>Developed over flat area, 1 for a flush joint.</summary>
    public Num RecessFactor(Trace? t = null) => t.Step("recess factor", "f", Measure.Number, Recess, 1 + (
        (Profile == JointProfile.Sharp ? 2 * D(t) * (L(t) + W(t)) : (Arc(t) - J(t)) * (L(t) + W(t) + J(t))) / Module(t)));

    /// <summary>The joints' share of the flat area.</summary>
    public Num Share(Trace? t = null) =>
        t.Step("joints' share of the flat area", "g", Measure.Percent, Recess, 1 - (L(t) * W(t) / Module(t)));

    /// <summary>Volume that fills the recess flush, per flat area.</summary>
    public Num FlushFillPerArea(Trace? t = null) => CrossSection(t) * (L(t) + W(t) + J(t)) / Module(t);

    public Num Arc(Trace? t = null)
    {
        Num angle = HalfAngle(t);
        return t.Step("joint's arc", "s", Measure.Length, Recess, Depth == 0 ? J(t) : J(t) * angle / Num.Sin(angle));
    }

    private Num HalfAngle(Trace? t) => t.Step("half angle of the joint's arc", "α", Measure.Angle, Recess, 2 * Num.Arctan(2 * D(t) / J(t)));

    private Num CrossSection(Trace? t)
    {
        if (Profile == JointProfile.Sharp || Depth == 0)
        {
            return J(t) * D(t);
        }

        Num angle = HalfAngle(t);
        return Num.Square(J(t) / (2 * Num.Sin(angle))) * (angle - (Num.Sin(angle) * Num.Cos(angle)));
    }

    private Num L(Trace? t) => t.Given("l", TileLength, Measure.Length);

    private Num W(Trace? t) => t.Given("w", TileWidth, Measure.Length);

    private Num J(Trace? t) => t.Given("j", Width, Measure.Length);

    private Num D(Trace? t) => t.Given("d", Depth, Measure.Length);
}
