namespace Refinish.Numerics;

/// <summary>A function of one number. A struct, so that the compiler sees what is called: no delegate, no closure, no allocation.</summary>
internal interface IFunction
{
    double At(double x);
}
