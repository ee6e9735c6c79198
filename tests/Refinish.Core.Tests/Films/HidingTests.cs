using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Colours;
using Refinish.Films;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Films;

public class HidingTests
{
    [Theory]
    [InlineData(0.95, 0.0013157895)]
    [InlineData(0.90, 0.0055555556)]
    [InlineData(0.80, 0.025)]
    [InlineData(0.50, 0.25)]
    [InlineData(0.30, 0.8166667)]
    [InlineData(0.10, 4.05)]
    [InlineData(0.04, 11.52)]
    [Evidence(Basis.Independent, "K/S = (1 − R∞)²/(2 R∞) worked apart from the code; and back to the reflectivity")]
    public void Reflectivity_and_absorption(double reflectivity, double ratio)
    {
        PaintOptics paint = PaintOptics.FromReflectivity(Ratio.FromDecimalFractions(reflectivity), ReciprocalLength.FromInverseMeters(1e5));
        Numbers.Near(ratio, paint.AbsorptionRatio, 5e-8 * Math.Max(1, ratio));
        Numbers.Close(reflectivity, paint.Reflectivity.DecimalFractions);
        Numbers.CanBeWritten(paint.Workings());
    }

    [Theory]
    [InlineData(0.002, 0.1, 50, 0.819002, 0.779304, 0.816556, 0.954379)]
    [InlineData(0.005, 0.08, 40, 0.703465, 0.665892, 0.714499, 0.931972)]
    [InlineData(0.02, 0.5, 10, 0.754343, 0.735029, 0.757180, 0.970746)]
    [InlineData(0.1, 0.2, 10, 0.381966, 0.378233, 0.387824, 0.975271)]
    [InlineData(0, 0.1, 50, 1, 0.833333, 0.900000, 0.925926)]
    [Evidence(Basis.Independent, "films over black and over white 0.80 calculated apart from the code with the hyperbolic cotangent form; six decimals")]
    public void Films_over_black_and_white(double k, double s, double film, double infinite, double black, double white, double contrast)
    {
        HidingFilm hiding = new(Paint(k, s), Length.FromMicrometers(film), Ratio.FromPercent(80));
        Numbers.Near(infinite, hiding.Optics.Reflectivity.DecimalFractions, 5.1e-7);
        Numbers.Near(black, hiding.OverBlack.DecimalFractions, 5.1e-7);
        Numbers.Near(white, hiding.OverWhite.DecimalFractions, 5.1e-7);
        Numbers.Near(contrast, hiding.ContrastRatio.DecimalFractions, 5.1e-7);
        Numbers.CanBeWritten(hiding.Workings());
    }

    [Theory]
    [InlineData(0.002, 0.1, 69.1091)]
    [InlineData(0.005, 0.08, 61.0603)]
    [InlineData(0.02, 0.5, 11.3042)]
    [InlineData(0.0005, 0.1, 93.0264)]
    [Evidence(Basis.Independent, "film at a contrast ratio of 0.98 over white 0.80 found apart from the code by root search; four decimals of a micrometre")]
    public void Films_that_hide(double k, double s, double micrometres)
    {
        HidingThickness complete = new(Paint(k, s));
        Numbers.Near(micrometres, complete.DryFilm.Micrometers, 5.1e-5);
        Numbers.CanBeWritten(complete.Workings());
        Assert.Equal((int)Math.Ceiling(micrometres / 25), complete.CoatsOf(Length.FromMicrometers(25)));
    }

    [Theory]
    [InlineData(0.85, 7.667)]
    [InlineData(0.88, 8.514)]
    [InlineData(0.90, 9.143)]
    [InlineData(0.92, 9.811)]
    [Evidence(Basis.Independent, "scattering power at a contrast ratio of 0.98, worked apart from the code; three decimals")]
    public void Scattering_power_that_hides(double reflectivity, double power)
    {
        PaintOptics paint = PaintOptics.FromReflectivity(Ratio.FromDecimalFractions(reflectivity), ReciprocalLength.FromInverseMeters(1e5));
        Numbers.Near(power, new HidingThickness(paint).DryFilm.Meters * 1e5, 5.1e-4);
    }

    [Property]
    [Evidence(Basis.Identity, "no film shows what lies below, a film without end its reflectivity; between them the way is monotone; layers of one paint add; the hiding film has its contrast ratio; contrast rises with the film")]
    public void Kubelka_munk_has_its_limits(byte a, byte b, byte c)
    {
        PaintOptics paint = Paint(a / 2000.0, 0.02 + (b / 300.0));
        Ratio below = Ratio.FromDecimalFractions(c / 255.0);
        double infinite = paint.Reflectivity.DecimalFractions;
        Numbers.Near(below.DecimalFractions, Over(0), 1e-12);
        if (a > 0)
        {
            Numbers.Near(infinite, Over(5000), 0.02);
        }

        double before = below.DecimalFractions;
        double contrast = 0;
        for (double film = 5; film <= 200; film += 15)
        {
            double seen = Over(film);
            Assert.True(Math.Abs(seen - infinite) <= Math.Abs(before - infinite) + 1e-12);
            before = seen;
            HidingFilm one = new(paint, Length.FromMicrometers(film), below);
            Assert.True(one.ContrastRatio.DecimalFractions >= contrast - 1e-12);
            contrast = one.ContrastRatio.DecimalFractions;
            HidingFilm upper = new(paint, Length.FromMicrometers(film), one.Reflectance);
            Numbers.Near(Over(2 * film), upper.Reflectance.DecimalFractions, 1e-12);
            Numbers.CanBeWritten(one.Workings());
        }

        HidingThickness hides = new(paint, Ratio.FromPercent(95), Ratio.FromPercent(80));
        if (hides.DryFilm.Millimeters < 5)
        {
            Numbers.Near(0.95, new HidingFilm(paint, hides.DryFilm, below).ContrastRatio.DecimalFractions, 1e-9);
        }

        double Over(double micrometres) => new HidingFilm(paint, Length.FromMicrometers(micrometres), below).Reflectance.DecimalFractions;
    }

    [Property]
    [Evidence(Basis.Independent, "the differential equation of Kubelka and Munk, dR/dX = S − 2 (K + S) R + S R², stepped by Runge and Kutta from what lies below")]
    public void Kubelka_munk_solves_its_equation(byte a, byte b)
    {
        double k = a / 3000.0;
        double s = 0.02 + (b / 500.0);
        double r = 0.35;
        const int Steps = 400;
        const double Film = 30;
        for (int i = 0; i < Steps; i++)
        {
            double h = Film / Steps;
            double k1 = Slope(r);
            double k2 = Slope(r + (h * k1 / 2));
            double k3 = Slope(r + (h * k2 / 2));
            double k4 = Slope(r + (h * k3));
            r += h * (k1 + (2 * k2) + (2 * k3) + k4) / 6;
        }

        Numbers.Near(r, new HidingFilm(Paint(k, s), Length.FromMicrometers(Film), Ratio.FromPercent(35)).Reflectance.DecimalFractions, 1e-8);

        double Slope(double x) => s - (2 * (k + s) * x) + (s * x * x);
    }

    [Property]
    [Evidence(Basis.Identity, "a drawdown of a calculated film gives its coefficients back; so do masstone and film over black; workings hold")]
    public void Drawdowns_give_the_coefficients_back(byte a, byte b, byte c)
    {
        PaintOptics paint = Paint(a / 5000.0, 0.02 + (b / 1000.0));
        Length film = Length.FromMicrometers(10 + (c / 10.0));
        HidingFilm seen = new(paint, film, Ratio.FromPercent(80));
        Drawdown card = new(film, seen.OverBlack, seen.OverWhite, Ratio.FromPercent(80));
        Assert.Null(card.Objection);
        Numbers.Near(paint.Scattering.InverseMeters, card.Optics!.Scattering.InverseMeters, 1e-6 * paint.Scattering.InverseMeters);
        Numbers.Near(paint.Absorption.InverseMeters, card.Optics.Absorption.InverseMeters, 1e-5 * paint.Scattering.InverseMeters);
        Numbers.CanBeWritten(card.Workings());
        if (a > 0)
        {
            PaintOptics other = PaintOptics.FromOverBlack(paint.Reflectivity, seen.OverBlack, film);
            Numbers.Near(paint.Scattering.InverseMeters, other.Scattering.InverseMeters, 1e-6 * paint.Scattering.InverseMeters);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "readings that no film can have give a reason and no coefficients")]
    public void Impossible_drawdowns_say_why()
    {
        Drawdown bright = new(Length.FromMicrometers(40), Ratio.FromPercent(60), Ratio.FromPercent(85), Ratio.FromPercent(80));
        Assert.Null(bright.Optics);
        Assert.StartsWith("the film is brighter over white", bright.Objection, StringComparison.Ordinal);
        Drawdown full = new(Length.FromMicrometers(400), Ratio.FromPercent(70), Ratio.FromPercent(70), Ratio.FromPercent(80));
        Assert.Null(full.Optics);
        Assert.StartsWith("the film hides the chart fully", full.Objection, StringComparison.Ordinal);
        Numbers.CanBeWritten(full.Workings());
    }

    [Theory]
    [InlineData(0.9, 0.791304)]
    [InlineData(0.5, 0.314286)]
    [InlineData(0.1, 0.080851)]
    [Evidence(Basis.Independent, "Saunderson with k₁ 0.04 and k₂ 0.60 worked apart from the code; six decimals; inside and measured undo each other; a white inside reads white")]
    public void Surfaces_add_and_take(double inside, double measured)
    {
        SurfaceReflection surface = new(Ratio.FromPercent(4), Ratio.FromPercent(60), glossIncluded: true);
        Ratio seen = surface.Measured(Ratio.FromDecimalFractions(inside));
        Numbers.Near(measured, seen.DecimalFractions, 5.1e-7);
        Numbers.Close(inside, surface.Inside(seen).DecimalFractions);
        Numbers.CanBeWritten(surface.Workings(Ratio.FromDecimalFractions(inside)));
        Numbers.Close(1, surface.Measured(Ratio.FromPercent(100)).DecimalFractions);
        SurfaceReflection excluded = new(Ratio.FromPercent(4), Ratio.FromPercent(60), glossIncluded: false);
        Numbers.Close(seen.DecimalFractions - 0.04, excluded.Measured(Ratio.FromDecimalFractions(inside)).DecimalFractions);
        Numbers.CanBeWritten(excluded.Workings(Ratio.FromDecimalFractions(inside)));
    }

    [Fact]
    [Evidence(Basis.Independent, "worked apart from the code: old green Y 0.20, primer R∞ 0.85 at S 2/mil × 1.2 mil gives 0.7074; topcoat 0.90 at 3.5/mil × 1.2 mil: 0.8483 (0.943), 0.8814 (0.9793), 0.8927 (0.9919, ΔL* 0.30); without primer three coats 0.8880 (0.9867); black 0.05: 0.8875; layers 8.4 over 0.05: 0.866772")]
    public void An_avocado_tub_takes_three_coats()
    {
        HidingPlan plan = Avocado();
        Numbers.Near(0.7074, plan.Ground.DecimalFractions, 5e-5);
        double[] seen = [.. plan.Coats.Select(coat => coat.Reflectance.DecimalFractions)];
        Numbers.Near(0.8483, seen[0], 5e-5);
        Numbers.Near(0.8814, seen[1], 5e-5);
        Numbers.Near(0.8927, seen[2], 5e-5);
        Numbers.Near(0.943, plan.Coats[0].Ratio.DecimalFractions, 5e-4);
        Numbers.Near(0.9793, plan.Coats[1].Ratio.DecimalFractions, 5e-5);
        Numbers.Near(0.9919, plan.Coats[2].Ratio.DecimalFractions, 5e-5);
        Numbers.Near(-0.30, plan.Coats[2].LightnessDifference, 0.01);
        Assert.Equal(3, plan.CoatsNeeded);
        Assert.Equal("hidden after 3 coats: 99.2 % of the full reflectance", plan.ToString());
        Numbers.CanBeWritten(plan.Workings());
        HidingPlan bare = plan with { Primer = null };
        Numbers.Near(0.8880, bare.Coats[2].Reflectance.DecimalFractions, 5e-5);
        Numbers.Near(0.9867, bare.Coats[2].Ratio.DecimalFractions, 5e-5);
        Numbers.CanBeWritten(bare.Workings());
        HidingPlan black = bare with { OldReflectance = Ratio.FromPercent(5) };
        Numbers.Near(0.8875, black.Coats[2].Reflectance.DecimalFractions, 5e-5);
        Numbers.Near(0.866772, new HidingFilm(plan.Topcoat, Length.FromMils(2.4), Ratio.FromPercent(5)).Reflectance.DecimalFractions, 5e-7);
    }

    [Fact]
    [Evidence(Basis.Contract, "a plan that does not hide says so with both numbers; a lightness tolerance can ask for more than the ratio")]
    public void A_plan_that_does_not_hide_says_so()
    {
        HidingPlan plan = Avocado() with { MostCoats = 2 };
        Assert.Null(plan.CoatsNeeded);
        Assert.Equal("not hidden after 2 coats: 97.93 % of the full reflectance, 98 % wanted; tint the primer towards the topcoat or choose another colour", plan.Objection);
        Assert.Equal(4, (Avocado() with { LightnessTolerance = 0.2 }).CoatsNeeded);
    }

    [Fact]
    [Evidence(Basis.Identity, "the colour tends to the new one coat by coat; a grey over a grey has the reflectance of the plan by Y; the same colour is hidden at once; a primer of the new colour saves a coat or none")]
    public void Strong_colours_are_hidden_coat_by_coat()
    {
        ColourHidingPlan plan = new()
        {
            OldColour = new CieLab(52, -8, 32),
            NewColour = new CieLab(95, -0.8, 2),
            Scattering = ReciprocalLength.FromInverseMils(3.5),
            CoatFilm = Length.FromMils(1.2),
        };
        for (int i = 1; i < plan.Coats.Count; i++)
        {
            Assert.True(plan.Coats[i].Difference < plan.Coats[i - 1].Difference);
        }

        int needed = plan.CoatsNeeded!.Value;
        Assert.True(plan.Coats[needed - 1].Difference <= 1 && plan.Coats[needed - 2].Difference > 1);
        Numbers.CanBeWritten(plan.Workings());
        ColourHidingPlan primed = plan with { PrimerColour = plan.NewColour, PrimerFilm = Length.FromMils(1.2) };
        Assert.Equal(needed - 1, primed.CoatsNeeded);
        Numbers.CanBeWritten(primed.Workings());
        Assert.Equal(1, (plan with { OldColour = plan.NewColour }).CoatsNeeded);

        double y = WhitePoint.D65.ToXyz(new CieLab(95, 0, 0))!.Value.Y / 100;
        double old = WhitePoint.D65.ToXyz(new CieLab(50, 0, 0))!.Value.Y / 100;
        HidingPlan grey = new()
        {
            OldReflectance = Ratio.FromDecimalFractions(old),
            Topcoat = PaintOptics.FromReflectivity(Ratio.FromDecimalFractions(y), plan.Scattering),
            CoatFilm = plan.CoatFilm,
        };
        ColourHidingPlan greys = plan with { OldColour = new CieLab(50, 0, 0), NewColour = new CieLab(95, 0, 0) };
        Numbers.Close(grey.Coats[1].Reflectance.DecimalFractions, greys.Coats[1].Reflectance.DecimalFractions, 1e-11);
        Numbers.Near(0, greys.Coats[1].Colour!.Value.Chroma, 1e-6);
        ColourHidingPlan unreal = plan with { OldColour = new CieLab(5, -100, 100) };
        Assert.Equal("the old colour cannot be that of a surface under D65, 2°", unreal.Objection);
        Assert.Empty(unreal.Coats);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 99 parts of K 0.00077778, S 0.14 and 1 part of K 2, S 0.02 per µm: K 0.02077, S 0.1388, K/S 0.149638, R∞ 1/(1.149638 + √(0.149638 × 2.149638)) = 0.5825; strength of (0.4 − 0.0055556)/(0.25 − 0.0055556)")]
    public void Tints_add_up()
    {
        PaintOptics white = PaintOptics.FromReflectivity(Ratio.FromPercent(90), ReciprocalLength.FromInverseMillimeters(140));
        TintBlend grey = new([new TintPart("white base", white, Ratio.FromPercent(99)), new TintPart("black tint", Paint(2, 0.02), Ratio.FromPercent(1))]);
        Numbers.Near(20.77, grey.Optics.Absorption.InverseMillimeters, 1e-5);
        Numbers.Near(138.8, grey.Optics.Scattering.InverseMillimeters, 1e-5);
        Numbers.Near(1 / (1.149640 + Math.Sqrt(0.149640 * 2.149640)), grey.Optics.Reflectivity.DecimalFractions, 1e-5);
        Numbers.CanBeWritten(grey.Workings());
        Numbers.Close(white.AbsorptionRatio, new TintBlend([new TintPart("white base", white, Ratio.FromPercent(7))]).Optics.AbsorptionRatio);

        // R∞ 0.5 is K/S 0.25; K/S 0.4 is R∞ 1.4 − √0.96.
        Ratio stronger = TintBlend.Strength(Ratio.FromPercent(50), Ratio.FromDecimalFractions(1.4 - Math.Sqrt(0.96)), Ratio.FromPercent(90));
        Numbers.Close((0.4 - (0.01 / 1.8)) / (0.25 - (0.01 / 1.8)), stronger.DecimalFractions, 1e-10);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges, text")]
    public void Refuses_what_cannot_be()
    {
        PaintOptics paint = Paint(0.005, 0.08);
        Numbers.Refuses("scattering", () => _ = new PaintOptics(ReciprocalLength.FromInverseMeters(1), ReciprocalLength.Zero));
        Numbers.Refuses("reflectivity", () => PaintOptics.FromReflectivity(Ratio.FromPercent(101), ReciprocalLength.FromInverseMeters(1e5)));
        Numbers.Refuses("overBlack", () => PaintOptics.FromOverBlack(Ratio.FromPercent(80), Ratio.FromPercent(81), Length.FromMicrometers(30)));
        Numbers.Refuses("below", () => _ = new HidingFilm(paint, Length.FromMicrometers(30), Ratio.FromPercent(120)));
        Numbers.Refuses("contrastRatio", () => _ = new HidingThickness(paint, Ratio.FromPercent(100), Ratio.FromPercent(80)));
        Numbers.Refuses("overWhite", () => _ = new Drawdown(Length.FromMicrometers(30), Ratio.FromPercent(70), Ratio.FromPercent(60), Ratio.FromPercent(80)));
        Numbers.Refuses("measured", () => new SurfaceReflection(Ratio.FromPercent(4), Ratio.FromPercent(60), true).Inside(Ratio.FromPercent(3)));
        Numbers.Refuses("MostCoats", () => _ = Avocado() with { MostCoats = 0 });
        Numbers.Refuses("sample", () => TintBlend.Strength(Ratio.FromPercent(50), Ratio.FromPercent(95), Ratio.FromPercent(90)));
        Assert.Throws<ArgumentException>(() => new TintBlend([]));
        Assert.Equal("K 0.005 1/µm, S 0.08 1/µm", paint.ToString());
        Assert.Equal("contrast ratio 98 % at 61.1 µm dry", new HidingThickness(paint).ToString());
        Assert.Equal(Avocado(), Avocado() with { MostCoats = 6 });
    }

    private static PaintOptics Paint(double k, double s) => new(ReciprocalLength.FromInverseMeters(k * 1e6), ReciprocalLength.FromInverseMeters(s * 1e6));

    private static HidingPlan Avocado() => new()
    {
        OldReflectance = Ratio.FromPercent(20),
        Topcoat = PaintOptics.FromReflectivity(Ratio.FromPercent(90), ReciprocalLength.FromInverseMils(3.5)),
        CoatFilm = Length.FromMils(1.2),
        Primer = PaintOptics.FromReflectivity(Ratio.FromPercent(85), ReciprocalLength.FromInverseMils(2)),
        PrimerFilm = Length.FromMils(1.2),
    };
}
