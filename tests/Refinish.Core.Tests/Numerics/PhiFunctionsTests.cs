using System;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class PhiFunctionsTests
{
    [Fact]
    [Evidence(Basis.Independent, "φ₁(−1) = 1 − 1/e and φ₂(−1) = 1/e by algebra; power series by hand at 10⁻³")]
    public void Phi_functions_keep_their_digits()
    {
        Numbers.Close(1 - Math.Exp(-1), PhiFunctions.Phi1(-1), 1e-15);
        Numbers.Close(Math.Exp(-1), PhiFunctions.Phi2(-1), 1e-15);
        Assert.Equal(1, PhiFunctions.Phi1(0));
        Assert.Equal(0.5, PhiFunctions.Phi2(0));
        double z = -1e-3;
        Numbers.Close(1 + (z / 2) + (z * z / 6) + (z * z * z / 24) + (z * z * z * z / 120), PhiFunctions.Phi1(z), 1e-15);
        Numbers.Close(0.5 + (z / 6) + (z * z / 24) + (z * z * z / 120), PhiFunctions.Phi2(z), 1e-13);
        Numbers.Close(1e-3, PhiFunctions.Phi1(-1000), 1e-15);
        for (double x = -60; x < 5; x += 0.01)
        {
            Numbers.Close(PhiFunctions.Phi1(x), 1 + (x * PhiFunctions.Phi2(x)), 1e-13);
        }
    }

    [Theory]
    [InlineData(-30, 0.0333333333333302141, 0.0322222222222223262)]
    [InlineData(-2, 0.432332358381693654, 0.283833820809153173)]
    [InlineData(-1, 0.632120558828557678, 0.367879441171442322)]
    [InlineData(-0.2, 0.906346234610090702, 0.468268826949546465)]
    [InlineData(-0.05, 0.975411509985719817, 0.491769800285603636)]
    [InlineData(-0.001, 0.999500166625008332, 0.499833374991668055)]
    [InlineData(1e-9, 1.0000000005, 0.500000000166666667)]
    [InlineData(0.05, 1.0254219275204808, 0.508438550409615879)]
    [InlineData(0.051, 1.02593908398439045, 0.508609489890008792)]
    [InlineData(0.2, 1.10701379080084918, 0.53506895400424585)]
    [InlineData(0.999, 1.71728218750607276, 0.718000187693766526)]
    [InlineData(1.001, 1.71928218769388477, 0.718563624069815035)]
    [InlineData(4, 13.3995375082860598, 3.09988437707151494)]
    [Evidence(Basis.Independent, "mpmath 1.3.0, (e^z − 1)/z and (φ₁ − 1)/z at 40 digits, on both sides of every change from series to quotient")]
    public void Both_functions(double z, double first, double second)
    {
        Numbers.Close(first, PhiFunctions.Phi1(z), 5e-15);
        Numbers.Close(second, PhiFunctions.Phi2(z), 5e-15);
        Numbers.Close(first, PhiFunctions.Phi1(z, Math.Exp(z)), 5e-15);
        Numbers.Close(second, PhiFunctions.Phi2(z, Math.Exp(z)), 2e-14);
    }
}
