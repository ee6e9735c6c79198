using System;
using System.Linq;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class QuadratureTests
{
    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(32)]
    [Evidence(Basis.Identity, "n points are exact for polynomials up to degree 2n − 1: ∫ x^k from −1 to 1 is 2/(k + 1) for even k, 0 for odd; one degree more is not")]
    public void A_rule_is_exact_for_polynomials(int points)
    {
        (double[] abscissae, double[] weights) = Quadrature.Rule(points);
        Assert.Equal(points, abscissae.Length);
        double Moment(int k) => abscissae.Zip(weights, (x, w) => w * Math.Pow(x, k)).Sum();
        for (int k = 0; k < 2 * points; k++)
        {
            Numbers.Near(k % 2 == 0 ? 2.0 / (k + 1) : 0, Moment(k), 4e-15);
        }

        // The error of degree 2n is 2^(2n + 1) (n!)^4 / ((2n + 1) (2n)!²) of its leading term, from memory of any textbook; it underflows the digits beyond n = 20.
        double error = 2.0 / ((2 * points) + 1);
        for (int j = 1; j <= points; j++)
        {
            error *= 4.0 * j * j / ((points + j) * (points + j));
        }

        Numbers.Near(error, (2.0 / ((2 * points) + 1)) - Moment(2 * points), 1e-15);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(-2, 5)]
    [InlineData(3, -1)]
    [Evidence(Basis.Identity, "∫ e^x and ∫ x^63 in closed form, over any interval and backwards")]
    public void Closed_forms(double lower, double upper)
    {
        Numbers.Close(Math.Exp(upper) - Math.Exp(lower), Quadrature.GaussLegendre(Math.Exp, lower, upper), 1e-14);
        Numbers.Close(
            (Math.Pow(upper, 64) - Math.Pow(lower, 64)) / 64,
            Quadrature.GaussLegendre(63, static (in k, x) => Math.Pow(x, k), lower, upper), 1e-13);
        Assert.Equal(
            Quadrature.GaussLegendre(Math.Exp, lower, upper), Quadrature.GaussLegendre(0, static (in _, x) => Math.Exp(x), lower, upper));
    }
}
