namespace Refinish.Colours;

/// <summary>Fresnel reflection of unpolarised light at a clear smooth surface, from air.</summary>
internal static class GlossKernel
{
    /// <summary>Index of the black glass that reads 100 at every angle; ISO 2813 and ASTM D523, at 587.6 nm.</summary>
    public const double StandardIndex = 1.567;

    public static double Degrees(GlossAngle angle) => angle switch
    {
        GlossAngle.Twenty => 20,
        GlossAngle.EightyFive => 85,
        _ => 60,
    };

    public static double Radians(GlossAngle angle) => Degrees(angle) * ColourKernel.Degree;

    public static Num Reflectance(Num index, Num angle)
    {
        Num cos = Num.Cos(angle);
        Num root = Num.Sqrt(Num.Square(index) - Num.Square(Num.Sin(angle)));
        Num across = (cos - root) / (cos + root);
        Num along = ((Num.Square(index) * cos) - root) / ((Num.Square(index) * cos) + root);
        return (Num.Square(across) + Num.Square(along)) / 2;
    }

    public static Num Gloss(Num reflectance, Num standard) => 100 * reflectance / standard;
}
