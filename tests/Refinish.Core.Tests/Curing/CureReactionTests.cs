using System;
using System.Linq;
using System.Threading;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using MathNet.Numerics.OdeSolvers;
using Refinish.Curing;
using Refinish.Numerics;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Curing;

public class CureReactionTests
{
    private static readonly DateTimeOffset Five = new(2026, 3, 3, 17, 0, 0, TimeSpan.FromHours(-5));

    // One composite resin of the aerospace trade, cured at 180 °C; A in 1/s, E in J/mol.
    private static readonly CureReaction Published = new()
    {
        Factor = Frequency.Zero,
        ActivationEnergy = MolarEnergy.Zero,
        AutocatalyticFactor = Frequency.FromHertz(1.528e5),
        AutocatalyticActivationEnergy = MolarEnergy.FromJoulesPerMole(6.65e4),
        AutocatalyticOrder = 0.8129,
        Order = 2.736,
        Diffusion = new DiffusionLimit { Steepness = 43.09, CriticalConversionAtZero = -1.684, CriticalConversionPerKelvin = 5.475e-3 },
        Source = Source.FromMemory("P. Hubert and others, 33rd International SAMPE Technical Conference (2001): an amine-cured epoxy of composite practice"),
    };

    private static readonly CureReaction Invented = new()
    {
        Factor = Frequency.FromHertz(3000),
        ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(48),
        AutocatalyticFactor = Frequency.FromHertz(1.2e5),
        AutocatalyticActivationEnergy = MolarEnergy.FromKilojoulesPerMole(52),
        AutocatalyticOrder = 1,
        Order = 2,
        Source = Source.Invented("an epoxy with an amine for these tests"),
    };

    private static readonly DiffusionLimit Glass = new() { Steepness = 40, CriticalConversionAtZero = -1.5, CriticalConversionPerKelvin = 0.008 };

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static TemperatureSegment At(double hours, double celsius) => new(TimeSpan.FromHours(hours), C(celsius));

    private static double Part(NormalFloat x) => Math.Abs(x.Get) % 1;

    private static CureReaction Simple(double k1, double k2, double m, double n) => new()
    {
        Factor = Frequency.FromHertz(k1),
        ActivationEnergy = MolarEnergy.Zero,
        AutocatalyticFactor = Frequency.FromHertz(k2),
        AutocatalyticActivationEnergy = MolarEnergy.Zero,
        AutocatalyticOrder = m,
        Order = n,
        Source = Source.Invented("for this test"),
    };

    [Fact]
    [Evidence(Basis.Independent, "closed form of a first order with the energy 50 kJ/mol below 40 °C and 20 kJ/mol above, A = 3e4 per second: α = 1 − e^(−(k(30) 900 s + k(55) 600 s)), k(55) = k(40) e^(20 000/R (1/313.15 − 1/328.15)) by hand")]
    public void Another_energy_above_a_temperature()
    {
        CureReaction law = Simple(3e4, 0, 0, 1) with
        {
            ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(50),
            Change = new ActivationChange(C(40), MolarEnergy.FromKilojoulesPerMole(20), MolarEnergy.Zero),
        };
        const double gas = 8.31446261815324;
        double k30 = 3e4 * Math.Exp(-50000 / gas / 303.15);
        double k40 = 3e4 * Math.Exp(-50000 / gas / 313.15);
        double k55 = k40 * Math.Exp(20000 / gas * ((1 / 313.15) - (1 / 328.15)));
        Numbers.Close(k30 * 0.9, law.Rate(C(30), Ratio.FromPercent(10)).Hertz, 1e-12);
        Numbers.Close(k55 * 0.9, law.Rate(C(55), Ratio.FromPercent(10)).Hertz, 1e-12);
        Numbers.Close(law.Rate(C(40 - 1e-9), Ratio.Zero).Hertz, law.Rate(C(40), Ratio.Zero).Hertz, 1e-9);
        ConversionCurve curve = new(law, new TemperatureHistory(Five, [At(0.25, 30), At(1, 55)]), Five);
        Numbers.Near(1 - Math.Exp(-((k30 * 900) + (k55 * 600))), curve.ConversionAt(Five.AddSeconds(1500)).DecimalFractions, 1e-9);
        Numbers.CanBeWritten(law.Workings(C(30), Ratio.FromPercent(10)));
        Numbers.CanBeWritten(law.Workings(C(55), Ratio.FromPercent(10)));
        Assert.EndsWith("50 kJ/mol and 0 kJ/mol, 20 kJ/mol and 0 kJ/mol from 40 °C", law.ToString(), StringComparison.Ordinal);
        Numbers.Refuses("at", () => _ = new ActivationChange(C(301), MolarEnergy.Zero, MolarEnergy.Zero));
        MolarEnergy great = MolarEnergy.FromKilojoulesPerMole(201);
        Numbers.Refuses("activationEnergy", () => _ = new ActivationChange(C(30), great, MolarEnergy.Zero));
        Numbers.Refuses("autocatalyticActivationEnergy", () => _ = new ActivationChange(C(30), MolarEnergy.Zero, great));
    }

    [Property]
    [Evidence(Basis.Identity, "a change to the same energies changes nothing, at any temperature and conversion")]
    public void A_change_to_the_same_is_none(NormalFloat a, NormalFloat b)
    {
        ActivationChange none = new(C(45), Invented.ActivationEnergy, Invented.AutocatalyticActivationEnergy);
        CureReaction same = Invented with { Change = none };
        Temperature at = C(10 + (70 * Part(a)));
        Ratio conversion = Ratio.FromDecimalFractions(Part(b));
        Numbers.Close(Invented.Rate(at, conversion).Hertz, same.Rate(at, conversion).Hertz, 1e-12);
        Numbers.CanBeWritten(same.Workings(at, conversion));
    }

    [Theory]
    [InlineData(60, 0.0783250)]
    [InlineData(120, 0.1996171)]
    [InlineData(300, 0.7036050)]
    [InlineData(600, 0.9852368)]
    [Evidence(Basis.Independent, "closed form for m = n = 1: α = (1 − e^(−(k1+k2)t)) / (1 + (k2/k1) e^(−(k1+k2)t)), k1 0.001, k2 0.01 per second; seven decimals")]
    public void Autocatalysis_matches_the_closed_form(double seconds, double conversion)
    {
        ConversionCurve curve = new(Simple(0.001, 0.01, 1, 1), TemperatureHistory.Constant(Five, C(25)), Five);
        Numbers.Near(conversion, curve.ConversionAt(Five.AddSeconds(seconds)).DecimalFractions, 5e-8);
        double decay = Math.Exp(-0.011 * seconds);
        double exact = (1 - decay) / (1 + (10 * decay));
        Numbers.Near(exact, curve.ConversionAt(Five.AddSeconds(seconds)).DecimalFractions, 1e-10);
        Numbers.Near(seconds, (curve.InstantOf(Ratio.FromDecimalFractions(exact))!.Value - Five).TotalSeconds, 1e-5);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(1.5)]
    [InlineData(0.5)]
    [Evidence(Basis.Independent, "closed forms of a plain reaction of order n: 1 − e^(−kt); 1 − (1 + (n − 1) k t)^(−1/(n−1)), k 1e-4 per second; below first order it ends at 1/((1 − n) k)")]
    public void Orders_match_closed_forms(double order)
    {
        ConversionCurve curve = new(Simple(1e-4, 0, 0, order), TemperatureHistory.Constant(Five, C(25)), Five);
        foreach (double t in (double[])[100, 3000, 9000, 19000, 40000])
        {
            double bracket = 1 + ((order - 1) * 1e-4 * t);
            double exact = order == 1 ? 1 - Math.Exp(-1e-4 * t) : bracket <= 0 ? 1 : 1 - Math.Pow(bracket, -1 / (order - 1));
            Numbers.Near(exact, curve.ConversionAt(Five.AddSeconds(t)).DecimalFractions, 2e-9);
        }
    }

    [Theory]
    [InlineData(60)]
    [InlineData(40)]
    [Evidence(Basis.Independent, "a published parameter set with diffusion limit, integrated by MathNet.Numerics 5.0.0, RungeKutta.FourthOrder with 200 000 steps: conversions over 60 days to 1e-9")]
    public void Published_set_matches_another_integrator(double celsius)
    {
        double kelvins = celsius + 273.15;
        double k = 1.528e5 * Math.Exp(-6.65e4 / (8.31446261815324 * kelvins));
        double critical = -1.684 + (5.475e-3 * kelvins);
        const double start = 0.01;
        double[] other = RungeKutta.FourthOrder(
            start, 0, 60 * 86400, 200001, (t, a) => k * Math.Pow(a, 0.8129) * Math.Pow(1 - a, 2.736) / (1 + Math.Exp(43.09 * (a - critical))));
        ConversionCurve curve = new(Published, TemperatureHistory.Constant(Five, C(celsius)), Five, Ratio.FromDecimalFractions(start));
        for (int i = 1; i <= 10; i++)
        {
            Numbers.Near(other[i * 20000], curve.ConversionAt(Five.AddDays(6 * i)).DecimalFractions, 1e-9);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "time to a conversion as the integral ∫ dα / r(α) at one temperature, by Gauss–Legendre in pieces, instead of stepping; the invented law with its diffusion limit")]
    public void Times_match_the_integral_of_the_inverse_rate()
    {
        CureReaction law = Invented with { Diffusion = Glass };
        ConversionCurve curve = new(law, TemperatureHistory.Constant(Five, C(20)), Five);
        double seconds = 0;
        for (int i = 0; i < 90; i++)
        {
            seconds += Quadrature.GaussLegendre(a => 1 / law.Rate(C(20), Ratio.FromDecimalFractions(a)).Hertz, i / 100.0, (i + 1) / 100.0);
            Numbers.Close(seconds, (curve.InstantOf(Ratio.FromDecimalFractions((i + 1) / 100.0))!.Value - Five).TotalSeconds, 1e-7);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "a night of changing temperatures: MathNet.Numerics RungeKutta.FourthOrder stretch by stretch, 20 000 steps each, to 1e-10")]
    public void Histories_match_another_integrator()
    {
        (double Hours, double Celsius)[] night = [(1, 20), (14, 12), (10, 22)];
        TemperatureHistory history = new(Five, night.Select(stretch => At(stretch.Hours, stretch.Celsius)));
        ConversionCurve curve = new(Invented, history, Five);
        double alpha = 0;
        DateTimeOffset clock = Five;
        foreach ((double hours, double celsius) in night)
        {
            double rt = 8.31446261815324 * (celsius + 273.15);
            double k1 = 3000 * Math.Exp(-48000 / rt);
            double k2 = 1.2e5 * Math.Exp(-52000 / rt);
            double[] steps = RungeKutta.FourthOrder(alpha, 0, hours * 3600, 20001, (t, a) => (k1 + (k2 * a)) * (1 - a) * (1 - a));
            alpha = steps[^1];
            clock = clock.AddHours(hours);
            Numbers.Near(alpha, curve.ConversionAt(clock).DecimalFractions, 1e-10);
        }

        Assert.Null(curve.InstantOf(Ratio.FromDecimalFractions(alpha + 1e-6)));
        Assert.NotNull(curve.InstantOf(Ratio.FromDecimalFractions(alpha - 1e-6)));
    }

    [Property]
    [Evidence(Basis.Identity, "hotter never cures slower; conversion never falls; the instant of a conversion gives it back; a change of the clocks does not matter; workings hold to the kernel")]
    public void Conversion_is_monotone(NormalFloat a, NormalFloat b, NormalFloat c)
    {
        CureReaction law = Invented with { Diffusion = Glass, Order = 1 + (1.5 * Part(a)), AutocatalyticOrder = 0.3 + Part(b) };
        double cool = -5 + (30 * Part(c));
        TemperatureHistory history = new(Five, [At(5, cool), At(9, cool + 8), At(30, cool + 3)]);
        TemperatureHistory warmer = new(Five, [At(5, cool + 1), At(9, cool + 8.5), At(30, cool + 3)]);
        ConversionCurve curve = new(law, history, Five);
        double last = 0;
        for (int hour = 1; hour <= 44; hour += 3)
        {
            double now = curve.ConversionAt(Five.AddHours(hour)).DecimalFractions;
            Assert.True(now >= last && now <= 1);
            Assert.True(new ConversionCurve(law, warmer, Five).ConversionAt(Five.AddHours(hour)).DecimalFractions >= now - 1e-9);
            last = now;
        }

        DateTimeOffset reached = curve.InstantOf(Ratio.FromDecimalFractions(last / 2))!.Value;
        Numbers.Near(last / 2, curve.ConversionAt(reached).DecimalFractions, 1e-8);
        Assert.Equal(curve.ConversionAt(reached), curve.ConversionAt(reached.ToUniversalTime()));
        Numbers.CanBeWritten(curve.Workings(reached));
        Numbers.CanBeWritten(Published.Workings(C(100), Ratio.FromPercent(50)));
    }

    [Theory]
    [InlineData(0.2, 6.667)]
    [InlineData(0.5, 60.000)]
    [InlineData(0.8, 140.000)]
    [InlineData(0.9, 176.364)]
    [InlineData(1, 220)]
    [Evidence(Basis.Independent, "DiBenedetto with T_g0 −20 °C, T_g∞ 220 °C, λ 0.5, recomputed by hand from a published script's set; three decimals")]
    public void Glass_transition_matches(double conversion, double celsius)
    {
        GlassTransition glass = new(C(-20), C(220), 0.5);
        Numbers.Near(celsius, glass.At(Ratio.FromDecimalFractions(conversion)).DegreesCelsius, 0.0005);
        Numbers.Near(conversion, glass.ConversionAt(glass.At(Ratio.FromDecimalFractions(conversion)))!.Value.DecimalFractions, 1e-12);
        Numbers.CanBeWritten(glass.Workings(Ratio.FromDecimalFractions(conversion)));
    }

    [Fact]
    [Evidence(Basis.Independent, "a second set by hand, −15 °C, 160 °C, λ 0.4: 35.000 °C at 50 %, 121.957 °C at 90 %; ends at both ends, none outside")]
    public void Second_glass_transition_matches()
    {
        GlassTransition glass = new(C(-15), C(160), 0.4);
        Numbers.Near(35.000, glass.At(Ratio.FromPercent(50)).DegreesCelsius, 0.0005);
        Numbers.Near(121.957, glass.At(Ratio.FromPercent(90)).DegreesCelsius, 0.0005);
        Numbers.Near(-15, glass.At(Ratio.Zero).DegreesCelsius, 1e-9);
        Numbers.Near(160, glass.At(Ratio.FromPercent(100)).DegreesCelsius, 1e-9);
        Assert.Null(glass.ConversionAt(C(-16)));
        Assert.Null(glass.ConversionAt(C(161)));
        Assert.Equal("glass transition -15 °C to 160 °C, λ 0.4", glass.ToString());
        Numbers.Refuses("cured", () => _ = new GlassTransition(C(20), C(20), 0.5));
        Numbers.Refuses("lambda", () => _ = new GlassTransition(C(20), C(30), 0));
        Numbers.Refuses("conversion", () => _ = glass.At(Ratio.FromPercent(101)));
    }

    [Theory]
    [InlineData(4, 2, 1, 0.577350, 0.75)]
    [InlineData(4, 2, 0.9, 0.608581, double.NaN)]
    [InlineData(3, 2, 1, 0.707107, 0.833333)]
    [InlineData(6, 2, 1, 0.447214, double.NaN)]
    [Evidence(Basis.Independent, "closed forms by hand, six decimals: 1/√(r (f − 1)(g − 1)); Carothers with glycerol 2 to phthalic acid 3: f_avg 2.4, 0.8333 (Flory 0.7071, experiment about 0.76)")]
    public void Gel_points_match(double scarce, double other, double ratio, double early, double late)
    {
        GelPoint gel = new(scarce, other, ratio);
        Numbers.Near(early, gel.FloryStockmayer!.Value.DecimalFractions, 5e-7);
        if (!double.IsNaN(late))
        {
            Numbers.Near(late, gel.Carothers!.Value.DecimalFractions, 5e-7);
        }

        Assert.True(gel.FloryStockmayer!.Value.DecimalFractions < gel.Carothers!.Value.DecimalFractions);
        Numbers.CanBeWritten(gel.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "homopolymers: 1/(f − 1) = 0.5, 0.3333, 0.2 for f 3, 4, 6; two twofold parts make chains and never gel; too little of a hardener neither")]
    public void Homopolymers_and_chains()
    {
        Numbers.Near(0.5, GelPoint.Homopolymer(3).FloryStockmayer!.Value.DecimalFractions, 1e-12);
        Numbers.Near(0.3333, GelPoint.Homopolymer(4).FloryStockmayer!.Value.DecimalFractions, 5e-5);
        Numbers.Near(0.2, GelPoint.Homopolymer(6).FloryStockmayer!.Value.DecimalFractions, 1e-12);
        Assert.Null(new GelPoint(2, 2).FloryStockmayer);
        Assert.Null(new GelPoint(2, 2).Carothers);
        Assert.Null(new GelPoint(4, 2, 0.33).FloryStockmayer);
        Assert.NotNull(new GelPoint(4, 2, 0.34).FloryStockmayer);
        Assert.Equal("gels between 57.7 % and 75 %", new GelPoint(4, 2).ToString());
        Assert.Equal("does not gel", GelPoint.Homopolymer(2).ToString());
        Numbers.CanBeWritten(new GelPoint(2, 2).Workings());
        Numbers.CanBeWritten(GelPoint.Homopolymer(5).Workings());
        Numbers.Refuses("scarce", () => _ = new GelPoint(1, 2));
        Numbers.Refuses("other", () => _ = new GelPoint(2, 21));
        Numbers.Refuses("ratio", () => _ = new GelPoint(4, 2, 1.1));
        Numbers.Refuses("functionality", () => _ = GelPoint.Homopolymer(0));
    }

    [Fact]
    [Evidence(Basis.Identity, "at vitrification the glass transition has the film's temperature; a diffusion limit stops a cold film short; the limit is one half at its critical conversion")]
    public void A_cold_film_turns_glassy()
    {
        GlassTransition glass = new(C(-20), C(90), 0.5);
        ConversionCurve cold = new(Invented with { Diffusion = Glass }, TemperatureHistory.Constant(Five, C(10)), Five);
        DateTimeOffset vitrified = cold.InstantOfVitrification(glass)!.Value;
        Numbers.Near(10, glass.At(cold.ConversionAt(vitrified)).DegreesCelsius, 1e-6);
        Assert.Null(new ConversionCurve(Invented, TemperatureHistory.Constant(Five, C(10)), Five).InstantOfVitrification(new GlassTransition(C(-20), C(5), 0.5)));
        Assert.Null(cold.InstantOf(Ratio.FromPercent(99.9)));
        Assert.NotNull(new ConversionCurve(Invented, TemperatureHistory.Constant(Five, C(10)), Five).InstantOf(Ratio.FromPercent(99)));
        CureReaction law = Invented with { Diffusion = Glass };
        Ratio critical = Glass.CriticalConversion(C(10));
        Numbers.Close(Invented.Rate(C(10), critical).Hertz / 2, law.Rate(C(10), critical).Hertz, 1e-12);
        Assert.Equal("stops about -1.5 + 0.008 T, steepness 40", Glass.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "refusals, cancellation, a law that never starts, text; a week of minutes allocates no more than an hour")]
    public void Refuses_stops_and_prints()
    {
        TemperatureHistory known = new(Five, [At(4, 22)]);
        ConversionCurve curve = new(Invented, known, Five);
        Numbers.Refuses("instant", () => _ = curve.ConversionAt(Five.AddHours(5)));
        Numbers.Refuses("applied", () => _ = new ConversionCurve(Invented, known, Five.AddHours(-1)));
        Numbers.Refuses("firstConversion", () => _ = new ConversionCurve(Invented, known, Five, Ratio.FromPercent(100)));
        Numbers.Refuses("conversion", () => _ = curve.InstantOf(Ratio.FromPercent(100)));
        Numbers.Refuses("Factor", () => _ = new ConversionCurve(Simple(0, 0, 1, 1), known, Five));
        Numbers.Refuses("Factor", () => _ = Invented with { Factor = Frequency.FromHertz(-1) });
        Numbers.Refuses("Order", () => _ = Invented with { Order = 0.4 });
        Numbers.Refuses("AutocatalyticOrder", () => _ = Invented with { AutocatalyticOrder = -1 });
        Numbers.Refuses("temperature", () => _ = Invented.Rate(C(301), Ratio.Zero));
        Numbers.Refuses("Steepness", () => _ = Glass with { Steepness = 0 });
        Assert.Equal(0, new ConversionCurve(Published, known, Five).ConversionAt(Five.AddHours(4)).DecimalFractions);
        Assert.Throws<OperationCanceledException>(() => curve.ConversionAt(Five.AddHours(4), new CancellationToken(true)));
        Assert.Equal("Kamal–Sourour, m 1, n 2, 48 kJ/mol and 52 kJ/mol", Invented.ToString());
        Assert.Equal(new ConversionCurve(Invented, known, Five), new ConversionCurve(Invented, known, Five));

        TemperatureHistory week = new(Five, Enumerable.Range(0, 7 * 24 * 60).Select(i => new TemperatureSegment(TimeSpan.FromMinutes(1), C(15 + (i % 100 * 0.1)))));
        ConversionCurve log = new(Invented, week, Five);
        _ = log.ConversionAt(Five.AddDays(7));
        long before = GC.GetAllocatedBytesForCurrentThread();
        _ = log.ConversionAt(Five.AddDays(7));
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 200);
    }
}
