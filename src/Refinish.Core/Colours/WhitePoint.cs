namespace Refinish.Colours;

/// <summary>The tristimulus values of the perfect white under an illuminant for an observer, Y = 100.</summary>
/// <remarks>
/// Values as tabulated in ASTM E308 for CIE illuminants (from memory; those of D65, 2°, give the example in the documentation of
/// MATLAB's xyz2lab to its four decimals, and D50, 2°, stands there to four digits). The four here are a start: a colorimeter's manual
/// states which pair it reports.
/// </remarks>
/// <example><code>
/// CieLab colour = new CieXyz(25, 40, 10).ToLab(WhitePoint.D65);       // L* 69.47, a* -48.05, b* 57.13
/// </code></example>
public sealed record WhitePoint
{
    private static readonly Source E308 = Source.FromMemory("ASTM E308, tristimulus values of CIE illuminants");

    /// <summary>Makes a white point.</summary>
    /// <param name="name">Illuminant and observer.</param>
    /// <param name="x">X, 50 to 150.</param>
    /// <param name="z">Z, 10 to 200.</param>
    /// <param name="source">Where the values come from.</param>
    /// <exception cref="System.ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException">A value is outside its range.</exception>
    public WhitePoint(string name, double x, double z, Source source)
    {
        Name = Guard.Named(name);
        X = Guard.Within(x, Bounds.Between(50, 150, Measure.Number));
        Z = Guard.Within(z, Bounds.Between(10, 200, Measure.Number));
        Source = Guard.NotNull(source);
    }

    /// <summary>Average daylight of 6504 K, 2° observer.</summary>
    public static WhitePoint D65 { get; } = new("D65, 2°", 95.047, 108.883, E308);

    /// <summary>Horizon daylight of 5003 K, 2° observer.</summary>
    public static WhitePoint D50 { get; } = new("D50, 2°", 96.422, 82.521, E308);

    /// <summary>Average daylight of 6504 K, 10° observer, usual for paint.</summary>
    public static WhitePoint D65TenDegrees { get; } = new("D65, 10°", 94.811, 107.304, E308);

    /// <summary>Horizon daylight of 5003 K, 10° observer.</summary>
    public static WhitePoint D50TenDegrees { get; } = new("D50, 10°", 96.72, 81.427, E308);

    /// <summary>Illuminant and observer.</summary>
    public string Name { get; }

    /// <summary>X of the white.</summary>
    public double X { get; }

    /// <summary>Y of the white: 100.</summary>
    public double Y { get; } = 100;

    /// <summary>Z of the white.</summary>
    public double Z { get; }

    /// <summary>Where the values come from.</summary>
    public Source Source { get; }

    /// <summary>The tristimulus values of a colour under this white.</summary>
    /// <param name="colour">The colour, measured for this white.</param>
    /// <returns>
    /// The values; <see langword="null"/> when no surface can have them: one is below zero or above what <see cref="CieXyz"/> holds.
    /// </returns>
    public CieXyz? ToXyz(CieLab colour)
    {
        double fy = (colour.L + 16) / 116;
        double x = X * LabKernel.Inverse(fy + (colour.A / 500));
        double y = Y * LabKernel.Inverse(fy);
        double z = Z * LabKernel.Inverse(fy - (colour.B / 200));
        return CieXyz.Holds(x) && CieXyz.Holds(y) && CieXyz.Holds(z) ? new CieXyz(x, y, z) : null;
    }

    /// <summary>The white in one line.</summary>
    /// <returns>Text such as <c>D65, 2°: 95.047, 100, 108.883</c>.</returns>
    public override string ToString() => Name + ": " + Figures.Significant(X) + ", 100, " + Figures.Significant(Z);
}
