using System;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class NormalScoreTests
{
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.6, 0.253347103135799799)]
    [InlineData(0.9, 1.28155156554460047)]
    [InlineData(0.925, 1.43953147093845592)]
    [InlineData(0.95, 1.64485362695147271)]
    [InlineData(0.975, 1.95996398454005424)]
    [InlineData(0.99, 2.3263478740408411)]
    [InlineData(1e-3, -3.09023230616781354)]
    [InlineData(1e-6, -4.75342430882289895)]
    [InlineData(1e-11, -6.70602315549513629)]
    [InlineData(1e-12, -7.03448382530113193)]
    [InlineData(1e-20, -9.26234008979840757)]
    [InlineData(1e-100, -21.2734535609653243)]
    [InlineData(1e-300, -37.0470962993611992)]
    [Evidence(Basis.Independent, "mpmath 1.3.0, findroot on erfc at 40 digits")]
    public void Quantiles(double chance, double score)
    {
        Numbers.Near(score, NormalScore.Of(chance), 1e-15 * Math.Max(1, Math.Abs(score)));
        Numbers.Close(chance, NormalScore.ChanceOf(score), 1e-15 * Math.Max(4, 2 * score * score));
    }

    [Fact]
    [Evidence(Basis.Identity, "the score is odd about one half, rises, and joins where the three approximations meet, at 0.075 and e^(−25)")]
    public void Symmetric_and_without_steps()
    {
        foreach (double u in (double[])[0.01, 0.0749999, 0.0750001, 0.3, 0.49])
        {
            Numbers.Near(-NormalScore.Of(u), NormalScore.Of(1 - u), 1e-14);
        }

        foreach (double seam in (double[])[0.075, Math.Exp(-25)])
        {
            double below = NormalScore.Of(seam * (1 - 1e-12));
            double above = NormalScore.Of(seam * (1 + 1e-12));
            Assert.InRange(above - below, 0, 3e-12);
        }
    }
}
