using System;
using FsCheck.Xunit;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class EllipsoidTests
{
    [Theory]
    [InlineData(5, 3, 2, 134.7751767, 5e-8)]
    [InlineData(1, 2, 3, 48.8821463026, 5e-11)]
    [InlineData(3, 1, 2, 48.8821463026, 5e-11)]
    [InlineData(1.1, 1.2, 4.7, 54.6901240998, 5e-11)]
    [Evidence(Basis.Cited, "whole ellipsoids: 5-3-2 in Maplesoft's Maple help, page 'ellipsoid'; 1.1-1.2-4.7 after A. Dieckmann, The surface area of an ellipsoid, Universität Bonn 2003, and 1-2-3, both as printed by Albert Chan in a calculator forum, May 2021 (seen second-hand)")]
    public void Half_of_the_published_areas(double a, double b, double c, double whole, double tolerance) =>
        Numbers.Near(whole / 2, new HalfEllipsoid(a, b, c).Area().Value, tolerance);

    [Fact]
    [Evidence(Basis.Independent, "worked bowl 8.5 × 6.75 × 6 in of the design notes: 313.666 in², 721.0 in³ (derived, no published source)")]
    public void The_worked_bowl_comes_out()
    {
        HalfEllipsoid bowl = new(8.5, 6.75, 6);
        Numbers.Near(313.666, bowl.Area().Value, 5e-4);
        Numbers.Near(721.0, bowl.Capacity(6).Value, 0.05);
    }

    [Theory]
    [InlineData(1, 0.2)]
    [InlineData(1, 0.5)]
    [InlineData(1, 0.999)]
    [InlineData(1, 1)]
    [InlineData(1, 1.5)]
    [InlineData(0.3, 0.9)]
    [Evidence(Basis.Independent, "closed forms of oblate, spherical and prolate spheroids (elementary)")]
    public void Spheroids_have_closed_forms(double a, double c)
    {
        double e = Math.Sqrt(Math.Abs((a * a) - (c * c))) / Math.Max(a, c);
        double whole = e == 0 ? 4 * Math.PI * a * a
            : c < a ? (2 * Math.PI * a * a) + (Math.PI * c * c / e * Math.Log((1 + e) / (1 - e)))
            : 2 * Math.PI * a * (a + (c / e * Math.Asin(e)));
        Numbers.Close(whole / 2, new HalfEllipsoid(a, a, c).Area().Value, 1e-11);

        // The same solid lying down: its axis in plan.
        Numbers.Close(whole / 2, new HalfEllipsoid(c, a, a).Area().Value, 1e-11);
        Numbers.Close(whole / 2, new HalfEllipsoid(a, c, a).Area().Value, 1e-11);
    }

    [Theory]
    [InlineData(1, 6.283185307179586)]
    [InlineData(0.999, 6.278996936093318)]
    [InlineData(1.5, 8.459109081729984)]
    [Evidence(Basis.Cited, "ellipsoidal tank heads of diameter 2 (tests of the fluids library of C. Bell, commit 091070e, tests/test_geometry.py)")]
    public void Ellipsoidal_heads_match(double depth, double area) => Numbers.Close(area, new HalfEllipsoid(1, 1, depth).Area().Value, 1e-10);

    [Theory]
    [InlineData(2.54, 1.039370079, 0.062362205, 6.00394283477063)]
    [Evidence(Basis.Cited, "torispherical tank head (same tests): a cap of the dish and a knuckle, which is a part of a torus as a rolled rim is")]
    public void A_torispherical_head_is_a_cap_and_a_roll(double diameter, double dish, double knuckle, double area)
    {
        double half = Math.Asin((0.5 - knuckle) / (dish - knuckle));
        double cap = 2 * Math.PI * Math.Pow(dish * diameter, 2) * (1 - Math.Cos(half));

        // From the outer equator inwards by 90° less the cap's half angle: a half round less what lies inside of that.
        double tube = knuckle * diameter;
        double mouth = 2 * Math.PI * ((diameter / 2) - (2 * tube));
        double roll = new RimRoll(mouth, tube, Math.PI).Area().Value - new RimRoll(mouth, tube, (Math.PI / 2) + half).Area().Value;
        Numbers.Close(area, cap + roll, 1e-12);
    }

    [Property]
    [Evidence(Basis.Independent, "Carlson's R_G from R_F and R_D by duplication, coded in this test: S/2 = 2π R_G(a²b², a²c², b²c²)")]
    public void Any_bowl_matches_duplication(int seed)
    {
        Random random = new(seed);
        double a = 0.05 + (0.55 * random.NextDouble());
        double b = a * (0.6 + (0.4 * random.NextDouble()));
        double c = a * (0.25 + (0.75 * random.NextDouble()));
        Numbers.Close(ByDuplication(a, b, c), new HalfEllipsoid(a, b, c).Area().Value, 1e-10);
    }

    [Theory]
    [InlineData(0.6, 0.5, 0.04)]
    [InlineData(0.6, 0.05, 0.04)]
    [InlineData(0.6, 0.05, 0.4)]
    [InlineData(0.05, 0.05, 0.4)]
    [Evidence(Basis.Independent, "Carlson's duplication as above, at the corners of what the measurements allow: the stated error")]
    public void The_stated_error_holds_at_the_extremes(double a, double b, double c) =>
        Numbers.Close(ByDuplication(a, b, c), new HalfEllipsoid(a, b, c).Area().Value, 1e-8);

    [Fact]
    [Evidence(Basis.Independent, "mean slope of a half sphere: ∫ θ sin θ dθ over 0 … π/2 = 1 rad (elementary)")]
    public void A_half_sphere_slopes_by_one_radian_on_average()
    {
        HalfEllipsoid sphere = new(2, 2, 2);
        Numbers.Close(1, (sphere.Tilt() / sphere.Area()).Value);
        Numbers.Close(2 * Math.PI * 4, sphere.Area().Value);
        Numbers.Close(Math.PI * 1 * ((3 * 2) - 1) / 3, sphere.Capacity(1).Value);
    }

    private static double ByDuplication(double a, double b, double c)
    {
        double x = a * a * b * b;
        double y = a * a * c * c;
        double z = b * b * c * c;
        return Math.PI * ((z * Rf(x, y, z)) - ((x - z) * (y - z) * Rd(x, y, z) / 3) + Math.Sqrt(x * y / z));
    }

    private static double Rf(double x, double y, double z)
    {
        for (int i = 0; i < 60; i++)
        {
            double lambda = Math.Sqrt(x * y) + Math.Sqrt(y * z) + Math.Sqrt(z * x);
            (x, y, z) = ((x + lambda) / 4, (y + lambda) / 4, (z + lambda) / 4);
        }

        return 1 / Math.Sqrt(x);
    }

    private static double Rd(double x, double y, double z)
    {
        double sum = 0;
        double factor = 1;
        for (int i = 0; i < 60; i++)
        {
            double lambda = Math.Sqrt(x * y) + Math.Sqrt(y * z) + Math.Sqrt(z * x);
            sum += factor / (Math.Sqrt(z) * (z + lambda));
            factor /= 4;
            (x, y, z) = ((x + lambda) / 4, (y + lambda) / 4, (z + lambda) / 4);
        }

        return (3 * sum) + (factor / (x * Math.Sqrt(x)));
    }
}
