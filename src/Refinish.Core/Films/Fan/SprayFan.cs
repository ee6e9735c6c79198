using System;
using Refinish.Fixtures;
using Refinish.Numerics;

namespace Refinish.Films;

/// <summary>
/// A stroke made ready for the kernels, in the frame of the gun: X across the fan, Y along its height, Z along the aim, from the nozzle
/// at the start. Symbols: R from nozzle to triangle, n its normal, Q fluid rate, TE transfer efficiency, v speed, s way along the
/// stroke, L₀ reference distance, a and b half axes of the fan there. With ξ = L₀X/(aZ) and η = L₀Y/(bZ) the film is (Q TE / v) ∫ q(ξ,
/// η) L₀² (−n·R) / Z³ ds: pattern over solid angle, inverse square, cosine of incidence, without a root.
/// </summary>
internal sealed class SprayFan
{
    /// <summary>A Gaussian is left off where it has fallen to exp(−12.5): five standard deviations.</summary>
    private const double Cut = 12.5;

    private static readonly (double[] Abscissae, double[] Weights) ShortRule = Quadrature.Rule(10);
    private static readonly (double[] Abscissae, double[] Weights) LongRule = Quadrature.Rule(20);

    public SprayFan(SprayStroke stroke, FanPattern pattern, double landingRate)
    {
        Start = stroke.Start;
        Length = stroke.LengthSi;
        Travel = MeshPoint.Scaled(MeshPoint.Difference(stroke.End, stroke.Start), 1 / Length);
        AxisZ = MeshPoint.Scaled(stroke.Aim, 1 / stroke.Aim.Norm);
        MeshPoint across = MeshPoint.Cross(AxisZ, Travel);
        across = MeshPoint.Scaled(across, 1 / across.Norm);
        MeshPoint along = MeshPoint.Cross(across, AxisZ);
        double cos = Math.Cos(stroke.FanTurn.Radians);
        double sin = Math.Sin(stroke.FanTurn.Radians);
        AxisX = MeshPoint.Sum(MeshPoint.Scaled(across, cos), MeshPoint.Scaled(along, sin));
        AxisY = MeshPoint.Cross(AxisZ, AxisX);
        TravelX = MeshPoint.Dot(Travel, AxisX);
        TravelY = MeshPoint.Dot(Travel, AxisY);
        TravelZ = MeshPoint.Dot(Travel, AxisZ);

        // Four standard deviations are the width of a Gaussian; its half axis here is where it is left off.
        double reach = pattern.Shape == FanPatternShape.Gaussian ? Math.Sqrt(2 * Cut) / 2 : 1;
        double a = reach * pattern.Width.Meters / 2;
        double b = reach * pattern.Height.Meters / 2;
        ScaleX = pattern.ReferenceDistance.Meters / a;
        ScaleY = pattern.ReferenceDistance.Meters / b;
        Form = pattern.Shape;
        HalfSteps = -1;
        switch (pattern.Shape)
        {
            case FanPatternShape.Uniform: Factor = 1 / (4 * a * b);
                break;
            case FanPatternShape.Gaussian: Factor = Cut / (Math.PI * a * b * (1 - Math.Exp(-Cut)));
                Power = Cut;
                break;
            default: Power = pattern.Exponent - 1.5;
                Factor = (Power + 1) / (Math.PI * a * b);
                HalfSteps = 2 * Power == Math.Floor(2 * Power) ? (int)(2 * Power) : -1;
                break;
        }

        Factor *= landingRate / stroke.Speed.MetersPerSecond * pattern.ReferenceDistance.Meters * pattern.ReferenceDistance.Meters;
        (double[] rule, double[] weights) = pattern.Shape == FanPatternShape.Gaussian ? LongRule : ShortRule;
        Nodes = new double[rule.Length];
        Weights = new double[rule.Length];
        for (int i = 0; i < rule.Length; i++)
        {
            // u = (3t − t³)/2 makes half-integer powers at both ends of a chord analytic, so that few nodes are enough.
            double t = rule[i];
            Nodes[i] = t * (3 - (t * t)) / 2;
            Weights[i] = weights[i] * 1.5 * (1 - (t * t));
        }
    }

    public FanPatternShape Form { get; }

    public MeshPoint Start { get; }

    public MeshPoint Travel { get; }

    public MeshPoint AxisX { get; }

    public MeshPoint AxisY { get; }

    public MeshPoint AxisZ { get; }

    public double TravelX { get; }

    public double TravelY { get; }

    public double TravelZ { get; }

    public double Length { get; }

    public double ScaleX { get; }

    public double ScaleY { get; }

    public double Factor { get; }

    /// <summary>The m of (1 − ρ²)^m, or the 12.5 of exp(−12.5 ρ²).</summary>
    public double Power { get; }

    /// <summary>2 m when that is a whole number, else −1.</summary>
    public int HalfSteps { get; }

    public double[] Nodes { get; }

    public double[] Weights { get; }

    /// <summary>Coefficient of s² in ξ² + η² − 1 times Z²: positive when the gun does not travel into its own fan.</summary>
    public double Bend => (ScaleX * ScaleX * TravelX * TravelX) + (ScaleY * ScaleY * TravelY * TravelY) - (TravelZ * TravelZ);

    /// <summary>Whether nothing within a ball can be reached: each side of the fan is a plane that moves along the stroke.</summary>
    public bool Misses(double x, double y, double z, double radius)
    {
        double rx = x - Start.X;
        double ry = y - Start.Y;
        double rz = z - Start.Z;
        double px = ScaleX * ((rx * AxisX.X) + (ry * AxisX.Y) + (rz * AxisX.Z));
        double py = ScaleY * ((rx * AxisY.X) + (ry * AxisY.Y) + (rz * AxisY.Z));
        double pz = (rx * AxisZ.X) + (ry * AxisZ.Y) + (rz * AxisZ.Z);
        return pz + Math.Max(0, -TravelZ * Length) < -radius
            || Outside(px - pz, (ScaleX * TravelX) - TravelZ, ScaleX, radius)
            || Outside(-px - pz, (-ScaleX * TravelX) - TravelZ, ScaleX, radius)
            || Outside(py - pz, (ScaleY * TravelY) - TravelZ, ScaleY, radius)
            || Outside(-py - pz, (-ScaleY * TravelY) - TravelZ, ScaleY, radius);
    }

    private bool Outside(double height, double rate, double scale, double radius) =>
        height - Math.Max(0, rate * Length) > radius * Math.Sqrt(1 + (scale * scale));
}
