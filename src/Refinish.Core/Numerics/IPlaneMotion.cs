namespace Refinish.Numerics;

/// <summary>
/// Two numbers that change at rates which follow from their present values; a struct, as <see cref="IFunction"/>, that may remember.
/// </summary>
internal interface IPlaneMotion
{
    /// <summary>dx/dt, and dy/dt beside it.</summary>
    double Rates(double x, double y, out double ofY);
}
