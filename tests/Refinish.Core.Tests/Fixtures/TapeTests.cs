using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class TapeTests
{
    private static readonly Length Eighth = Length.FromInches(0.125);

    [Fact]
    [Evidence(Basis.Independent, "Monte Carlo with 20 000 draws of all readings at once, seed 7: standard deviations of area and capacity agree to 3 % (their own noise is 0.5 %)")]
    public void Propagation_matches_Monte_Carlo()
    {
        RecessedBathtubMeasurements tape = Tapes.FiveFootTub();
        IReadOnlyList<TapeReading<RecessedBathtubMeasurements>> readings = TapeReadings.Of(tape, Eighth, ReadingSpread.Rectangular);
        Matches(tape, static tub => new RecessedBathtub(tub), readings, static random => (2 * random.NextDouble()) - 1);
        Matches(tape, static tub => new RecessedBathtub(tub), TapeReadings.Of(tape, Eighth, ReadingSpread.Triangular), static random => random.NextDouble() - random.NextDouble());
        OvalTubMeasurements oval = Tapes.Oval();
        Matches(oval, static tub => new OvalTub(tub), TapeReadings.Of(oval, Eighth, ReadingSpread.TwoSigma), Normal, 1500);

        static double Normal(Random random) => 0.5 * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }

    [Fact]
    [Evidence(Basis.Independent, "sensitivities of the worked tub in the design notes: 0.432 ft² for half an inch of depth, 0.084 for half an inch of mouth and head run together; a plain rectangle by hand")]
    public void Slopes_are_derivatives()
    {
        RecessedBathtubMeasurements tape = Tapes.FiveFootTub();
        FixtureUncertainty spread = FixtureUncertainty.Of(tape, static tub => new RecessedBathtub(tub), TapeReadings.Of(tape, Eighth, ReadingSpread.Rectangular));
        ReadingContribution depth = spread.Contributions.Single(reading => reading.Name == "Depth");
        Numbers.Near(0.432 * 144 / 0.5, depth.AreaPerLength.Inches, 0.4);
        Numbers.CanBeWritten(spread.Workings());
        Assert.Equal(12, spread.Contributions.Count);

        FlatPanelMeasurements panel = Tapes.Counter() with { BacksplashLength = Length.Zero, ExposedEdge = Length.Zero, CutOuts = [] };
        FixtureUncertainty flat = FixtureUncertainty.Of(panel, static p => new FlatPanel(p), TapeReadings.Of(panel, Eighth, ReadingSpread.Rectangular));
        Numbers.Close(25.5, flat.Contributions[0].AreaPerLength.Inches, 1e-8);
        double expected = 0.125 / Math.Sqrt(3) * Math.Sqrt((25.5 * 25.5) + (96 * 96));
        Numbers.Close(expected, flat.StandardUncertaintyOfArea.SquareInches, 1e-8);
        Assert.Null(flat.StandardUncertaintyOfCapacity);
        Numbers.Close(0.125 / Math.Sqrt(6), new TapeReading<string>("x", Eighth, ReadingSpread.Triangular, static _ => Length.Zero, static (s, _) => s).StandardUncertainty.Inches);
    }

    [Fact]
    [Evidence(Basis.Contract, "every list of readings moves its fixture, but for the thickness of an upstand, which covers as much top as it adds; a shape that ends is differentiated one-sided; a reading that cannot move at all says why")]
    public void Readings_move_their_fixtures()
    {
        foreach (FixtureKind kind in FixtureKind.All.Where(kind => kind.FixtureType.GetProperty("Measurements") is not null))
        {
            object tape = kind.FixtureType.GetProperty("Measurements")!.GetValue(Tapes.Of(kind))!;
            tape = tape is FlatPanelMeasurements panel ? panel with { ExposedEdge = Length.FromInches(90) } : tape;
            typeof(TapeTests).GetMethod(nameof(Moves), BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(tape.GetType())
                .Invoke(null, [tape, kind.FixtureType]);
        }

        RecessedBathtubMeasurements sharp = Tapes.FiveFootTub() with { CoveRadius = Length.Zero };
        TapeReading<RecessedBathtubMeasurements> cove = new("CoveRadius", Eighth, ReadingSpread.Rectangular, static t => t.CoveRadius, static (t, x) => t with { CoveRadius = x });
        Assert.True(FixtureUncertainty.Of(sharp, static t => new RecessedBathtub(t), [cove]).Contributions[0].AreaPerLength.Meters < 0, "a cove takes area off");
        TapeReading<RecessedBathtubMeasurements> alone = new("RimLength", Eighth, ReadingSpread.Rectangular, static t => t.RimLength, static (t, x) => t with { RimLength = x + Length.FromMeters(1) });
        Numbers.Refuses("HeadRun", () => FixtureUncertainty.Of(sharp, static t => new RecessedBathtub(t), [alone]));
        Numbers.Refuses("plusMinus", () => TapeReadings.Of(sharp, Length.FromMeters(-1), ReadingSpread.Rectangular));
        Assert.Throws<ArgumentException>(() => FixtureUncertainty.Of(sharp, static t => new RecessedBathtub(t), []));
        Assert.Contains("by which no kind", Assert.Throws<ArgumentException>(() => TapeReadings.Of("a tape", Eighth, ReadingSpread.Rectangular)).Message, StringComparison.Ordinal);
    }

    private static void Moves<T>(T tape, Type fixture)
        where T : class
    {
        IReadOnlyList<TapeReading<T>> readings = TapeReadings.Of(tape, Eighth, ReadingSpread.Rectangular);
        FixtureUncertainty spread = FixtureUncertainty.Of(tape, made => Made(fixture, made), readings);
        Assert.Equal(readings.Count, spread.Contributions.Count);
        Assert.NotEmpty(readings);
        Assert.All(spread.Contributions.Where(contribution => contribution.Name == "BacksplashThickness" && fixture == typeof(FlatPanel)), contribution => Numbers.Near(0, contribution.AreaPerLength.Meters, 1e-9));
        Assert.All(spread.Contributions.Where(contribution => contribution.Name != "BacksplashThickness"), contribution => Assert.True(contribution.AreaPerLength.Meters != 0 || contribution.CapacityPerLength.SquareMeters != 0, fixture.Name + "." + contribution.Name + " does nothing"));
        Numbers.CanBeWritten(spread.Workings());
    }

    private static IFixture Made(Type fixture, object tape)
    {
        try
        {
            return (IFixture)Activator.CreateInstance(fixture, tape)!;
        }
        catch (TargetInvocationException refusal) when (refusal.InnerException is ArgumentOutOfRangeException beyond)
        {
            throw new ArgumentOutOfRangeException(beyond.Message, beyond);
        }
    }

    private static void Matches<T>(T tape, Func<T, IFixture> make, IReadOnlyList<TapeReading<T>> readings, Func<Random, double> draw, int draws = 20_000)
        where T : class
    {
        FixtureUncertainty spread = FixtureUncertainty.Of(tape, make, readings);
        Random random = new(7);
        double[] areas = new double[draws];
        double[] waters = new double[draws];
        for (int i = 0; i < draws; i++)
        {
            T drawn = tape;
            foreach (TapeReading<T> reading in readings)
            {
                drawn = reading.With(drawn, reading.Value(drawn) + (reading.PlusMinus * draw(random)));
            }

            IFixture fixture = make(drawn);
            areas[i] = fixture.CoatedArea.SquareMeters;
            waters[i] = fixture.WaterCapacity!.Value.CubicMeters;
        }

        double tolerance = 4 / Math.Sqrt(2.0 * draws);
        Numbers.Close(Deviation(areas), spread.StandardUncertaintyOfArea.SquareMeters, Math.Max(0.03, tolerance));
        Numbers.Close(Deviation(waters), spread.StandardUncertaintyOfCapacity!.Value.CubicMeters, Math.Max(0.03, tolerance));

        static double Deviation(double[] values)
        {
            double mean = values.Average();
            return Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1));
        }
    }
}
