using System;

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

    public static double Reflectance(double index, double angle)
    {
        double cos = Math.Cos(angle);
        double sin = Math.Sin(angle);
        double root = Math.Sqrt((index * index) - (sin * sin));
        double across = (cos - root) / (cos + root);
        double along = ((index * index * cos) - root) / ((index * index * cos) + root);
        return ((across * across) + (along * along)) / 2;
    }

    public static Expression Formula(Expression index, Expression angle)
    {
        Expression cos = Expression.Cos(angle);
        Expression root = Expression.Sqrt(Expression.Square(index) - Expression.Square(Expression.Sin(angle)));
        Expression across = (cos - root) / (cos + root);
        Expression along = ((Expression.Square(index) * cos) - root) / ((Expression.Square(index) * cos) + root);
        return (Expression.Square(across) + Expression.Square(along)) / 2;
    }
}
