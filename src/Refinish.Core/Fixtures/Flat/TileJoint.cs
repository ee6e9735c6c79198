using System;

namespace Refinish.Fixtures;

/// <summary>
/// The joints of a tiled wall in SI. l, w tile; j joint width; d recess depth. One module (l + j)(w + j) holds one tile and j (l + w + j) of joint.
/// Sharp: f = 1 + 2 d (l + w) / module, recess cross-section j d. Concave, an arc of half angle α = 2 arctan(2d / j) over the chord j:
/// s = j α / sin α, f = 1 + (s − j)(l + w + j) / module, cross-section (j / (2 sin α))² (α − sin α cos α).
/// </summary>
/// <remarks>Source: derived. The crossing of two joints is counted once, as part of the longer one; the same module stands in the common formula for grout quantity.</remarks>
internal readonly record struct TileJoint(double TileLength, double TileWidth, double Width, double Depth, JointProfile Profile)
{
    public double Module => (TileLength + Width) * (TileWidth + Width);

    /// <summary>Developed over flat area, 1 for a flush joint.</summary>
    public double RecessFactor => Profile == JointProfile.Sharp
        ? 1 + (2 * Depth * (TileLength + TileWidth) / Module)
        : 1 + ((Arc - Width) * (TileLength + TileWidth + Width) / Module);

    /// <summary>The joints' share of the flat area.</summary>
    public double Share => 1 - (TileLength * TileWidth / Module);

    /// <summary>Volume that fills the recess flush, per flat area.</summary>
    public double FlushFillPerArea => CrossSection * (TileLength + TileWidth + Width) / Module;

    public double HalfAngle => 2 * Math.Atan(2 * Depth / Width);

    public double Arc => Depth == 0 ? Width : Width * HalfAngle / Math.Sin(HalfAngle);

    private double CrossSection
    {
        get
        {
            if (Profile == JointProfile.Sharp || Depth == 0)
            {
                return Width * Depth;
            }

            double angle = HalfAngle;
            double radius = Width / (2 * Math.Sin(angle));
            return radius * radius * (angle - (Math.Sin(angle) * Math.Cos(angle)));
        }
    }
}
