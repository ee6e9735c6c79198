using System;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class StudentTTests
{
    [Theory]
    [InlineData(0.5, 3, 0.764892328404345281)]
    [InlineData(0.9, 4, 2.13184678632665032)]
    [InlineData(0.95, 3, 3.18244630528370959)]
    [InlineData(0.95, 4, 2.77644510519779436)]
    [InlineData(0.95, 10, 2.22813885198627475)]
    [InlineData(0.95, 120, 1.97993040508244085)]
    [InlineData(0.99, 30, 2.74999565356722533)]
    [InlineData(0.999, 3, 12.9239786366874831)]
    [InlineData(0.999, 1000, 3.30028264842391291)]
    [Evidence(Basis.Independent, "mpmath 1.3.0, findroot on the incomplete beta function at 40 digits")]
    public void Quantiles(double confidence, int freedom, double expected) => Numbers.Close(expected, StudentT.Quantile(confidence, freedom), 2e-13);

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.95)]
    [InlineData(0.999)]
    [InlineData(0.99999)]
    [Evidence(Basis.Independent, "closed forms: tan(πγ/2) for one degree of freedom, γ√(2/(1 − γ²)) for two")]
    public void One_and_two_degrees_of_freedom(double confidence)
    {
        // A digit of γ is many of 1 − γ.
        double digits = 2e-13 + (4e-16 / (1 - confidence));
        Numbers.Close(Math.Tan(Math.PI * confidence / 2), StudentT.Quantile(confidence, 1), digits);
        Numbers.Close(confidence * Math.Sqrt(2 / (1 - (confidence * confidence))), StudentT.Quantile(confidence, 2), digits);
    }
}
