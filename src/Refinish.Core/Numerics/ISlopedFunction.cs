namespace Refinish.Numerics;

/// <summary>A function of one number that knows its slope; a struct, as <see cref="IFunction"/>.</summary>
internal interface ISlopedFunction
{
    double At(double x, out double slope);
}
