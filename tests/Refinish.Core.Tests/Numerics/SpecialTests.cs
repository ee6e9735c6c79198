using System;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class SpecialTests
{
    [Theory]
    [InlineData(0.25, 0.770346547730996744)]
    [InlineData(1, 0.427583576155807004)]
    [InlineData(2, 0.255395676310505744)]
    [InlineData(5.9, 0.0943071361483270265)]
    [InlineData(6, 0.0927765678005383544)]
    [InlineData(6.1, 0.091294300368683835)]
    [InlineData(10, 0.0561409927438225859)]
    [InlineData(100, 0.0056416137829894329)]
    [InlineData(10000, 0.0000564189580726808412)]
    [Evidence(Basis.Independent, "mpmath 1.3.0, e^(x²) erfc x at 40 digits, on both sides of the change of method at 6")]
    public void Scaled_complementary_error_function(double x, double expected) => Numbers.Close(expected, Special.ScaledErfc(x), 1e-13);

    [Fact]
    [Evidence(Basis.Independent, "mpmath 1.3.0, gamma, loggamma, gammainc and betainc at 40 digits; MathNet.Numerics keeps 12 of them or more")]
    public void Functions_of_the_library_below()
    {
        Numbers.Close(9.51350769866873129, Special.Gamma(0.1), 2e-14);
        Numbers.Close(Math.Sqrt(Math.PI), Special.Gamma(0.5), 2e-14);
        Numbers.Close(2.6834373819557683, Special.Gamma(3.3), 2e-14);
        Numbers.Close(1799844.07893137243, Special.Gamma(10.7), 3e-14);
        Numbers.Close(2.2527126517342059, Special.LogGamma(0.1), 2e-14);
        Numbers.Close(14.4032105962985161, Special.LogGamma(10.7), 2e-14);
        Numbers.Close(0.527089256865538074, Special.UpperGamma(0.5, 0.2), 1e-13);
        Numbers.Close(0.406005849709838076, Special.UpperGamma(2, 2), 1e-13);
        Numbers.Close(0.017912404529843274, Special.UpperGamma(4.5, 10), 1e-13);
        Numbers.Close(0.929664933340605046, Special.UpperGamma(50, 40), 1e-13);
        Numbers.Close(0.471779999999999977, Special.Beta(2, 4, 0.3), 1e-13);
        Numbers.Close(0.5, Special.Beta(0.5, 0.5, 0.5), 1e-13);
        Numbers.Close(0.776172134316215668, Special.Beta(5, 1.5, 0.9), 1e-13);
        Numbers.Close(0.317304397874197373, Special.Beta(50, 0.5, 0.99), 5e-13);
    }
}
