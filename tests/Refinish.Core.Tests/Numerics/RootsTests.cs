using System;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class RootsTests
{
    private const double Digit = 2.3e-16;

    /// <summary>Rising functions with the root in closed form, their bracket, and at most how many looks they may take.</summary>
    public static TheoryData<string, double, double, double, int> Rising => new()
    {
        { "line", 3.7, 0, 10, 5 },
        { "square", Math.Sqrt(2), 0, 2, 16 },
        { "cosine", 0.73908513321516064166, 0, 1, 14 },
        { "exponential", Math.Log(1e6), 0, 100, 40 },
        { "steep", 0.25, 0, 1, 70 },
        { "flat", 0.3, -1, 2, 150 },
        { "tangent", 0.86033358901937976, 0, Math.PI / 2, 40 },
        { "second tangent", 3.4256184594817282, Math.PI, 3 * Math.PI / 2, 40 },
        { "tiny", 1e-12, 0, 1, 100 },
        { "far", 1e9, -1, 1e12, 80 },
    };

    [Theory]
    [MemberData(nameof(Rising))]
    [Evidence(Basis.Independent, "closed forms; x = cos x and x tan x = 1 by mpmath 1.3.0, findroot at 40 digits")]
    public void A_rising_function_is_zero_there(string name, double root, double low, double high, int looks)
    {
        int count = 0;
        double found = Roots.Rising(0, (_, x) => Looked(name, x, ref count), low, high);

        // The ninth power is zero to the last digit over 1e-36 of the bracket and underflows beside its root only far nearer than a digit.
        Numbers.Close(root, found, 2 * Digit);
        Assert.InRange(count, 2, looks);
    }

    [Theory]
    [MemberData(nameof(Rising))]
    [Evidence(Basis.Identity, "the bracket holds the root, has a sign change between its ends, and ends are neighbours or the root itself; a falling function as well")]
    public void The_bracket_closes(string name, double root, double low, double high, int looks)
    {
        // Not up to the pole, beyond which rounding puts the end.
        double end = name.Contains("tangent", StringComparison.Ordinal) ? high - 1e-9 : high;
        foreach (int sign in (int[])[1, -1])
        {
            int count = 0;
            Given<int> function = new(sign, (side, x) => side * Looked(name, x, ref count));
            Enclosure sharp = Roots.Enclose(function, low, end);
            Assert.InRange(sharp.Upper - sharp.Lower, 0, Digit * Math.Abs(sharp.Upper));
            Assert.InRange(sharp.Nearest, sharp.Lower, sharp.Upper);
            Assert.InRange(count, 2, looks);
            Enclosure loose = Roots.Enclose(function, low, end, Roots.OfMaximum);
            Assert.InRange(loose.Upper - loose.Lower, 0, 2.1e-9 * Math.Abs(root));
            Assert.True(loose.Lower <= root * (1 + Digit) && root <= loose.Upper * (1 + Digit));
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "a root at an end is that end, and so is one that rounding puts a digit outside")]
    public void A_root_at_an_end()
    {
        Assert.Equal(2, Roots.Rising(2.0, static (at, x) => x - at, 2, 5));
        Assert.Equal(5, Roots.Rising(5.0, static (at, x) => x - at, 2, 5));
        Numbers.Close(5, Roots.Rising(5 + 1e-15, static (at, x) => x - at, 2, 5), Digit);
        Numbers.Close(2, Roots.Rising(2 - 1e-15, static (at, x) => x - at, 2, 5), 2 * Digit);
        Given<double> falling = new(2 - 1e-15, static (at, x) => at - x);
        Assert.Equal(2, Roots.Enclose(falling, 2, 5).Upper);
        Given<double> late = new(5 + 1e-15, static (at, x) => at - x);
        Assert.Equal(5, Roots.Enclose(late, 2, 5).Lower);
    }

    [Fact]
    [Evidence(Basis.Identity, "a function that leaps over zero has no root; the bracket closes on the leap")]
    public void A_leap_is_enclosed()
    {
        Given<double> leap = new(Math.PI, static (at, x) => x < at ? -1 : 1e300);
        Enclosure found = Roots.Enclose(leap, 0, 10);
        Assert.True(found.Lower < Math.PI && found.Upper == Math.PI);
        Assert.Equal(found.Lower, found.Nearest);
    }

    [Fact]
    [Evidence(Basis.Identity, "random cubics that rise: the sign changes between the neighbours found, and no more looks than bisection takes")]
    public void Random_cubics()
    {
        Random random = new(7);
        int most = 0;
        int all = 0;
        for (int i = 0; i < 500; i++)
        {
            double root = 20 * (random.NextDouble() - 0.5);
            double bend = Math.Pow(10, (6 * random.NextDouble()) - 3);
            int count = 0;
            Given<(double Root, double Bend)> cubic = new((root, bend), (given, x) =>
            {
                count++;
                double d = x - given.Root;
                return (d * d * d) + (given.Bend * d);
            });
            Enclosure found = Roots.Enclose(cubic, -11, 12);
            Assert.True(found.Lower <= root && root <= found.Upper);
            most = Math.Max(most, count);
            all += count;
        }

        Assert.InRange(most, 2, 54);
        Assert.InRange(all / 500.0, 2, 16);
    }

    [Fact]
    [Evidence(Basis.Contract, "a search allocates nothing: neither by a struct nor by a static lambda")]
    public void Nothing_is_allocated()
    {
        _ = Both(2);
        long before = GC.GetAllocatedBytesForCurrentThread();
        double sum = Both(3);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Numbers.Close(2 * Math.Sqrt(3), sum, 1e-15);
    }

    private static double Both(double of) => Roots.Rising(of, static (at, x) => (x * x) - at, 0, of) + Roots.Enclose(new Square(of), 0, of).Nearest;

    private static double Looked(string name, double x, ref int count)
    {
        count++;
        return name switch
        {
            "line" => (2 * x) - 7.4,
            "square" => (x * x) - 2,
            "cosine" => x - Math.Cos(x),
            "exponential" => Math.Exp(x) - 1e6,
            "steep" => Math.Atan(1e12 * (x - 0.25)),
            "flat" => Math.Pow(x - 0.3, 9),
            "tangent" or "second tangent" => (x * Math.Tan(x)) - 1,
            "tiny" => Math.Log((x + 1e-300) / 1e-12),
            _ => x - 1e9,
        };
    }

    private readonly struct Square(double of) : IFunction
    {
        public double At(double x) => (x * x) - of;
    }
}
