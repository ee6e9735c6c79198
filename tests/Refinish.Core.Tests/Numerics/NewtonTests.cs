using System;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class NewtonTests
{
    [Theory]
    [InlineData(0, 3, 1)]
    [InlineData(0, 1000, 999)]
    [InlineData(0, 1e6, 0.001)]
    [InlineData(1.41, 1.42, 1.415)]
    [Evidence(Basis.Independent, "√2 in closed form, from starts near and far")]
    public void Square_root(double low, double high, double start) =>
        Numbers.Close(Math.Sqrt(2), Newton.Rising(new Power(2, 2), low, high, start, 0, 4e-16), 2.3e-16);

    [Theory]
    [InlineData(-1, 30)]
    [InlineData(29, 30)]
    [Evidence(Basis.Independent, "ln 10⁶ in closed form; from −1 the first step leads to 2.7 million and is not taken")]
    public void A_step_out_of_the_bracket_is_not_taken(double start, double high) =>
        Numbers.Close(Math.Log(1e6), Newton.Rising(new Exponential(1e6), -2, high, start, 0, 4e-16), 4e-16);

    [Fact]
    [Evidence(Basis.Independent, "arctan x = 0, of which Newton's method without a bracket runs away from everywhere beyond 1.392")]
    public void Where_plain_steps_diverge() => Numbers.Near(0, Newton.Rising(new Arctangent(), -50, 60, 30, 1e-12, 0), 1e-12);

    [Fact]
    [Evidence(Basis.Identity, "at a ninefold root every step takes a ninth of the way; a step of the tolerance leaves eight of them")]
    public void A_flat_root() => Numbers.Near(1.3, Newton.Rising(new Flat(1.3, 9), 0, 4, 3.5, 1e-6, 0), 9e-6);

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [Evidence(Basis.Identity, "a root at an end of the bracket is found")]
    public void A_root_at_an_end(double root) => Numbers.Close(root, Newton.Rising(new Flat(root, 1), 2, 5, 3, 0, 4e-16), 4e-16);

    [Fact]
    [Evidence(Basis.Contract, "nothing is allocated")]
    public void Nothing_is_allocated()
    {
        _ = Newton.Rising(new Power(2, 2), 0, 3, 1, 0, 4e-16);
        long before = GC.GetAllocatedBytesForCurrentThread();
        _ = Newton.Rising(new Power(3, 2), 0, 3, 1, 0, 4e-16);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    private readonly struct Power(double of, int exponent) : ISlopedFunction
    {
        public double At(double x, out double slope)
        {
            slope = exponent * Math.Pow(x, exponent - 1);
            return Math.Pow(x, exponent) - of;
        }
    }

    private readonly struct Flat(double root, int exponent) : ISlopedFunction
    {
        public double At(double x, out double slope)
        {
            slope = exponent * Math.Pow(x - root, exponent - 1);
            return Math.Pow(x - root, exponent);
        }
    }

    private readonly struct Exponential(double of) : ISlopedFunction
    {
        public double At(double x, out double slope)
        {
            slope = Math.Exp(x);
            return slope - of;
        }
    }

    private readonly struct Arctangent : ISlopedFunction
    {
        public double At(double x, out double slope)
        {
            slope = 1 / (1 + (x * x));
            return Math.Atan(x);
        }
    }
}
