using System;

namespace Refinish.Numerics;

/// <summary>A function that is written in place: a static lambda and what it needs, so that no closure is made.</summary>
internal readonly struct Given<T>(T state, Func<T, double, double> function) : IFunction
{
    public double At(double x) => function(state, x);
}
