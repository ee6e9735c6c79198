using System;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class MinimumTests
{
    [Theory]
    [InlineData("parabola", 1.7, -3, 10, 8)]
    [InlineData("cosine", Math.PI, 1, 6, 20)]
    [InlineData("entropy", 0.36787944117144232, 0.01, 10, 30)]
    [InlineData("corner", 0.3, 0, 1, 60)]
    [InlineData("fall", 1, 0, 1, 60)]
    [InlineData("rise", 0, 0, 1, 60)]
    [Evidence(Basis.Independent, "closed forms: x ln x is least at 1/e")]
    public void The_least_place(string name, double place, double low, double high, int looks)
    {
        Counted function = new(name);
        double found = Minimum.Between(function, low, high);
        Numbers.Near(place, found, 4e-8 * Math.Max(1, Math.Abs(place)));
        Numbers.Near(function.At(place), function.At(found), name is "corner" or "fall" or "rise" ? 4e-8 : 4e-15);
        Assert.InRange(Counted.Looks(name, low, high), 3, looks);
    }

    private readonly struct Counted(string name) : IFunction
    {
        [ThreadStatic]
        private static int count;

        public static int Looks(string name, double low, double high)
        {
            count = 0;
            _ = Minimum.Between(new Counted(name), low, high);
            return count;
        }

        public double At(double x)
        {
            count++;
            return name switch
            {
                "parabola" => (x - 1.7) * (x - 1.7),
                "cosine" => Math.Cos(x),
                "entropy" => x * Math.Log(x),
                "corner" => Math.Abs(x - 0.3),
                "fall" => -x,
                _ => x,
            };
        }
    }
}
