using System;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class DormandPrinceTests
{
    [Fact]
    [Evidence(Basis.Independent, "a quarter turn in closed form; half of the step leaves a thirty-second of the error, as of fifth order")]
    public void Fifth_order()
    {
        Numbers.Near(5, Math.Log(Miss(20) / Miss(40), 2), 0.15);
        Assert.True(Miss(40) < 1e-8);
    }

    [Fact]
    [Evidence(Basis.Identity, "x′ = 1 and y′ = −2 are followed to the last digits, and no error is estimated")]
    public void Straight_lines()
    {
        Steady steady = default;
        double error = DormandPrince.Step(ref steady, 3, 1, 10, 1, out double x, out double y);
        Numbers.Close(4, x, 1e-15);
        Numbers.Close(4, y, 1e-14);
        Numbers.Near(0, error, 1e-14);
    }

    [Fact]
    [Evidence(Basis.Identity, "the estimate is above the true error of the step and of its order: 2 to the fifth to sixth for half a step")]
    public void The_estimate_bounds_the_error()
    {
        Turn turn = default;
        double error = DormandPrince.Step(ref turn, 0.2, 1, 0, 1, out double x, out double y);
        double missed = Math.Abs(x - Math.Cos(0.2)) + Math.Abs(y - Math.Sin(0.2));
        Assert.InRange(missed, 0, error);
        double half = DormandPrince.Step(ref turn, 0.1, 1, 0, 1, out _, out _);
        Assert.InRange(error / half, 30, 66);
    }

    [Theory]
    [InlineData(1, 0.9)]
    [InlineData(1e-9, 5)]
    [InlineData(32, 0.45)]
    [InlineData(1e12, 0.2)]
    [InlineData(double.NaN, 0.25)]
    [Evidence(Basis.Identity, "0.9 of the fifth root of what is allowed over what was found, within a fifth and five times")]
    public void The_next_step(double error, double times) => Numbers.Close(times * 7, DormandPrince.Next(7, error));

    private static double Miss(int steps)
    {
        Turn turn = default;
        double x = 1;
        double y = 0;
        for (int i = 0; i < steps; i++)
        {
            _ = DormandPrince.Step(ref turn, Math.PI / 2 / steps, x, y, 1, out x, out y);
        }

        return Math.Sqrt((x * x) + ((y - 1) * (y - 1)));
    }

    private struct Turn : IPlaneMotion
    {
        public readonly double Rates(double x, double y, out double ofY)
        {
            ofY = x;
            return -y;
        }
    }

    private struct Steady : IPlaneMotion
    {
        public readonly double Rates(double x, double y, out double ofY)
        {
            ofY = -2;
            return 1;
        }
    }
}
