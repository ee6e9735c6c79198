using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using MathNet.Numerics.OdeSolvers;
using MathNet.Numerics.LinearAlgebra;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class AirStudyProperties
{
    private static readonly Solvent[] Three = [Solvents.ButylAcetate, Solvents.Xylene, Solvents.Acetone];

    [Fact]
    [Evidence(Basis.Independent, "the differential equations of film and room, integrated by MathNet.Numerics 5.0 fourth-order Runge–Kutta between the kinks, for 40 random studies of one to five overlapping coats")]
    public void Concentrations_agree_with_a_differential_equation_solver()
    {
        Random random = new(20240508);
        for (int i = 0; i < 40; i++)
        {
            AirStudy study = Random(random);
            double volume = study.Room.Volume.CubicMeters;
            double changes = study.Exhaust.FreshAirFlow.CubicMetersPerSecond / volume;
            SolventEmission[] coats = [.. study.Emissions.Cast<SolventEmission>()];
            double[] kinks = [.. coats.SelectMany(coat => new[] { coat.Start.TotalSeconds, coat.End.TotalSeconds }).Append(0).Append(20000).Distinct().OrderBy(t => t).Where(t => t <= 20000)];

            // State: the film of each coat, then the room, all in kilograms of one substance.
            Vector<double> state = Vector<double>.Build.Dense(coats.Length + 1);
            for (int interval = 0; interval + 1 < kinks.Length; interval++)
            {
                double middle = (kinks[interval] + kinks[interval + 1]) / 2;
                Vector<double> Derivative(double time, Vector<double> y)
                {
                    Vector<double> dy = Vector<double>.Build.Dense(y.Count);
                    double release = 0;
                    for (int c = 0; c < coats.Length; c++)
                    {
                        bool spraying = coats[c].Start.TotalSeconds <= middle && middle < coats[c].End.TotalSeconds;
                        double mass = coats[c].VolatileMass.Kilograms * coats[c].Solvents.Where(s => s.Solvent == Three[0]).Sum(s => s.MassFraction.DecimalFractions);
                        double rate = spraying ? mass / coats[c].SprayTime.TotalSeconds : 0;
                        double flash = coats[c].FlashFraction.DecimalFractions;
                        double leaving = y[c] / coats[c].FilmTimeConstant.TotalSeconds;
                        dy[c] = ((1 - flash) * rate) - leaving;
                        release += (flash * rate) + leaving;
                    }

                    dy[coats.Length] = release - (changes * y[coats.Length]);
                    return dy;
                }

                int steps = (int)Math.Ceiling((kinks[interval + 1] - kinks[interval]) / 5) + 20;
                Vector<double>[] path = RungeKutta.FourthOrder(state, kinks[interval], kinks[interval + 1], steps, Derivative);
                state = path[^1];
                double exact = study.ConcentrationAt(Three[0], TimeSpan.FromSeconds(kinks[interval + 1])).KilogramsPerCubicMeter;
                Numbers.Near(state[coats.Length] / volume, exact, 2e-6 * study.Substances[0].PeakConcentration.KilogramsPerCubicMeter);
            }
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "maxima against 40 000 samples of the same history for 60 random studies: none is above, and the nearest is close below")]
    public void Maxima_are_those_of_a_dense_sampling()
    {
        Random random = new(7);
        for (int i = 0; i < 60; i++)
        {
            AirStudy study = Random(random);
            SubstanceAir air = study.Substances[0];
            const double Step = 2;
            double[] values = [.. Enumerable.Range(0, 40000).Select(n => study.ConcentrationAt(air.Solvent, TimeSpan.FromSeconds(n * Step)).KilogramsPerCubicMeter)];
            Numbers.Near(values.Max(), air.PeakConcentration.KilogramsPerCubicMeter, 0.01 * values.Max());
            Assert.True(values.Max() <= air.PeakConcentration.KilogramsPerCubicMeter * (1 + 1e-12));

            double[] sums = new double[values.Length];
            for (int n = 1; n < values.Length; n++)
            {
                sums[n] = sums[n - 1] + ((values[n - 1] + values[n]) / 2 * Step);
            }

            double Window(int length) => Enumerable.Range(0, values.Length).Max(n => sums[n] - (n >= length ? sums[n - length] : 0));
            Numbers.Close(Window(450) / 900, air.FifteenMinuteConcentration.KilogramsPerCubicMeter, 2e-4);
            Numbers.Close(Window(14400) / 28800, air.EightHourConcentration.KilogramsPerCubicMeter, 2e-4);
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "the search marches over intervals with exponentials at hand, the results and their derivations add up a closed form for each term: two ways to one number")]
    public void What_the_searches_march_over_is_what_the_terms_add_up_to()
    {
        Random random = new(11);
        for (int i = 0; i < 40; i++)
        {
            AirStudy study = Random(random);
            double[] masses = study.Load.Masses(0);
            foreach (double window in (double[])[0, 900, 14400])
            {
                RoomPath path = new(study.Shapes.Grid(window), masses);
                int knot = random.Next(path.Grid.Count);
                double y = random.NextDouble() * (knot < path.Last ? path.Grid.Lengths[knot] : 7200);
                double time = path.Grid.Times[knot] + y;
                double before = window > 0 ? time - window : 0;
                double air = study.Shapes.Answers.Moment(masses, time).Value - (window > 0 ? study.Shapes.Answers.Moment(masses, before).Value : 0);
                Numbers.Near(air, path.Air(knot, y), 1e-12 * masses.Sum());
                Numbers.Near(study.Shapes.Answers.Dose(masses, before, time).Value, path.Integral(knot, y), 1e-12 * masses.Sum() * (time + 1));
            }
        }
    }

    [Property]
    [Evidence(Basis.Identity, "conservation: sprayed = film + air + removed at every moment; in the end all of it has gone out of the room")]
    public Property Mass_is_conserved() => Studies((study, random) =>
    {
        foreach (SubstanceAir air in study.Substances)
        {
            MassBalance balance = study.BalanceAt(air.Solvent, TimeSpan.FromSeconds(random.NextDouble() * 30000));
            Numbers.Near(balance.Sprayed.Kilograms, (balance.InFilm + balance.InAir + balance.Removed).Kilograms, 1e-11 * air.Released.Kilograms);
            Assert.True(balance.InFilm.Kilograms >= 0 && balance.InAir.Kilograms >= -1e-15 && balance.Removed.Kilograms >= -1e-15);
            Numbers.Close(air.Released.Kilograms, study.BalanceAt(air.Solvent, TimeSpan.FromDays(110)).Removed.Kilograms, 1e-9);
        }
    });

    [Property]
    [Evidence(Basis.Identity, "an average is at most its peak, a longer average at most a shorter one, and the workings hold to the kernel")]
    public Property Averages_stay_below_peaks() => Studies((study, _) =>
    {
        foreach (SubstanceAir air in study.Substances)
        {
            Assert.True(air.FifteenMinuteConcentration.KilogramsPerCubicMeter <= air.PeakConcentration.KilogramsPerCubicMeter * (1 + 1e-12));
            Assert.True(air.EightHourConcentration.KilogramsPerCubicMeter <= air.FifteenMinuteConcentration.KilogramsPerCubicMeter * (1 + 1e-12));
            Assert.True(air.PeakAt > study.Emissions.Min(coat => coat.Start));
        }

        Numbers.CanBeWritten(study.Workings());
    });

    [Property]
    [Evidence(Basis.Identity, "more fan never gives more exposure, nor a later clearing")]
    public Property More_air_never_harms() => Studies((study, random) =>
    {
        Exhaust more = study.Exhaust with { LabelFlow = study.Exhaust.LabelFlow * (1 + (2 * random.NextDouble())) };
        AirStudy better = new(study.Room, more, study.Emissions, study.Shift);
        for (int j = 0; j < study.Substances.Count; j++)
        {
            AtMost(better.Substances[j].PeakConcentration.KilogramsPerCubicMeter, study.Substances[j].PeakConcentration.KilogramsPerCubicMeter);
            AtMost(better.Substances[j].FifteenMinuteConcentration.KilogramsPerCubicMeter, study.Substances[j].FifteenMinuteConcentration.KilogramsPerCubicMeter);
            AtMost(better.Substances[j].EightHourConcentration.KilogramsPerCubicMeter, study.Substances[j].EightHourConcentration.KilogramsPerCubicMeter);
        }

        AtMost(better.StrictestIndex!.Value, study.StrictestIndex!.Value);
        AtMost(better.PeakFlammableFraction!.Value.DecimalFractions, study.PeakFlammableFraction!.Value.DecimalFractions);
        TimeSpan? before = study.TimeToReEntry();
        Assert.True(before is null || better.TimeToReEntry() <= before + TimeSpan.FromMilliseconds(1));
    });

    [Property]
    [Evidence(Basis.Identity, "with the airflow that is said to be needed the peak is a quarter of the limit, and the steady one is never less")]
    public Property The_airflow_asked_for_does_it() => Studies((study, _) =>
    {
        VolumeFlow needed = study.AirflowForFlammableLimit!.Value;
        AtMost(needed.CubicMetersPerSecond, study.SteadyAirflowForFlammableLimit!.Value.CubicMetersPerSecond);
        if (needed.CubicMetersPerSecond is > 0 and < 10)
        {
            Numbers.Close(0.25, With(study, needed).PeakFlammableFraction!.Value.DecimalFractions, 1e-9);
        }

        VolumeFlow exposure = study.AirflowForExposureIndex!.Value;
        if (exposure.CubicMetersPerSecond is > 0 and < 10)
        {
            AirStudy enough = With(study, exposure);
            Numbers.Close(1, Math.Max(enough.StrictestIndex!.Value, enough.ShortTermIndex!.Value), 1e-9);
        }

        static AirStudy With(AirStudy study, VolumeFlow flow) => new(
            study.Room,
            study.Exhaust with { LabelFlow = flow, DeliveredFraction = Ratio.FromPercent(100) },
            study.Emissions,
            study.Shift);
    });

    [Property]
    [Evidence(Basis.Identity, "at the time to clear the air is at the level, and later below it; the index at re-entry is the criterion")]
    public Property Clearing_is_final() => Studies((study, random) =>
    {
        Ratio level = study.PeakFlammableFraction!.Value * (0.001 + (0.5 * random.NextDouble()));
        if (study.TimeToClear(level) is TimeSpan clear)
        {
            TimeSpan last = study.LastSprayEnds;
            double then = study.FlammableFractionAt(last + clear)!.Value.DecimalFractions;
            Assert.True(then <= level.DecimalFractions * (1 + 1e-6));
            Assert.True(clear == TimeSpan.Zero || then >= level.DecimalFractions * (1 - 1e-6));
            Assert.True(study.FlammableFractionAt(last + clear + TimeSpan.FromSeconds(3000 * random.NextDouble()))!.Value <= level * (1 + 1e-9));
        }

        if (study.TimeToReEntry(0.3) is TimeSpan back && back > TimeSpan.Zero)
        {
            Numbers.Close(0.3, study.ReEntry(back, 0.3).Value!.Value.Si, 1e-6);
            Assert.Equal(ComparisonOutcome.Within, study.ReEntry(back + TimeSpan.FromSeconds(1), 0.3).Outcome);
            Assert.Equal(ComparisonOutcome.Beyond, study.ReEntry(TimeSpan.FromTicks(back.Ticks * 9 / 10), 0.3).Outcome);
        }
    });

    [Property]
    [Evidence(Basis.Identity, "twice the solvent is twice everywhere; a study moved in time is the same study")]
    public Property Scales_and_shifts() => Studies((study, random) =>
    {
        TimeSpan later = TimeSpan.FromSeconds(Math.Round(5000 * random.NextDouble()));
        Emission[] moved = [.. study.Emissions.Select(coat => coat with { Start = coat.Start + later, VolatileMass = coat.VolatileMass * 2 })];
        AirStudy other = new(study.Room, study.Exhaust, moved, study.Shift);
        for (int j = 0; j < study.Substances.Count; j++)
        {
            Numbers.Close(2 * study.Substances[j].PeakConcentration.KilogramsPerCubicMeter, other.Substances[j].PeakConcentration.KilogramsPerCubicMeter, 1e-10);
            Numbers.Close(2 * study.Substances[j].FifteenMinuteConcentration.KilogramsPerCubicMeter, other.Substances[j].FifteenMinuteConcentration.KilogramsPerCubicMeter, 1e-10);
            Numbers.Close(2 * study.Substances[j].EightHourConcentration.KilogramsPerCubicMeter, other.Substances[j].EightHourConcentration.KilogramsPerCubicMeter, 1e-10);
        }
    });

    private static void AtMost(double smaller, double larger) => Assert.True(smaller <= larger * (1 + 1e-12), FormattableString.Invariant($"{smaller:R} is above {larger:R}"));

    private static Property Studies(Action<AirStudy, Random> check) => Prop.ForAll(
        ArbMap.Default.ArbFor<int>(),
        seed =>
        {
            Random random = new(seed);
            check(Random(random), random);
        });

    // One to five coats that may overlap, three solvents, films of 1 min to 2 h, 0.2 to 40 air changes an hour.
    private static AirStudy Random(Random random)
    {
        Room room = Rooms.Of(5 + (20 * random.NextDouble()));
        double mixing = 1 + (9 * random.NextDouble());
        double changes = 0.2 * Math.Pow(200, random.NextDouble());
        Exhaust fan = new()
        {
            LabelFlow = VolumeFlow.FromCubicMetersPerHour(changes * room.Volume.CubicMeters * mixing / 0.7),
            DeliveredFraction = Ratio.FromPercent(70),
            MixingFactor = mixing,
        };
        SolventEmission[] coats = new SolventEmission[random.Next(1, 6)];
        double shared = 1 + (60 * random.NextDouble());
        for (int i = 0; i < coats.Length; i++)
        {
            double first = 10 + (70 * random.NextDouble());
            double second = (100 - first) * random.NextDouble();
            coats[i] = Rooms.Coat(
                Math.Round(180 * random.NextDouble(), 2),
                Math.Round(0.5 + (20 * random.NextDouble()), 2),
                20 + (300 * random.NextDouble()),
                random.Next(4) switch { 0 => 0, 1 => 1, _ => random.NextDouble() },
                random.Next(2) == 0 ? shared : 1 + (119 * random.NextDouble()),
                [new(Three[0], Ratio.FromPercent(first)), new(Three[1], Ratio.FromPercent(second)), new(Three[2], Ratio.FromPercent(100 - first - second))]);
        }

        return new AirStudy(room, fan, coats, TimeSpan.FromHours(8));
    }

    [Fact]
    [Evidence(Basis.Contract, "one coat and its time to clear is asked for again and again while a schedule is searched: under 5 kB, emission not counted")]
    public void One_coat_and_its_time_to_clear_are_cheap()
    {
        Emission[] one = [Rooms.Coat(0, 6, 600, 0.4, 15, Rooms.Share(Three[0], 60), Rooms.Share(Three[1], 40))];
        Exhaust fan = Rooms.Fan(150, 3);
        Assert.True(Clear() > TimeSpan.Zero);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Clear();
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 1, 5120);

        TimeSpan? Clear() => new AirStudy(Rooms.Bathroom, fan, one, TimeSpan.FromHours(8)).TimeToClear(Ratio.FromPercent(10));
    }
}
