using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class EmissionTests
{
    private static readonly Solvent Solvent = Solvents.ButylAcetate;

    [Fact]
    [Evidence(Basis.Independent, "a spill in a well-mixed room, exponentially falling emission: C = k M/(V (λ − k)) (e^(−kt) − e^(−λt)), the spill model of occupational hygiene; the wipe is made one second long")]
    public void A_sudden_wipe_is_the_spill_model()
    {
        WipeEmission spill = Rooms.Wipe(0, 1.0 / 60, 40, 2);
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 1), spill);
        double changes = study.AirChangesPerHour / 3600;
        double k = 1 / 120.0;
        foreach (double minutes in new[] { 1.0, 2, 5, 12, 30 })
        {
            double t = (minutes * 60) - 0.5;
            double expected = k * 0.040 / (9.06 * (changes - k)) * (Math.Exp(-k * t) - Math.Exp(-changes * t));
            Numbers.Close(expected, study.ConcentrationAt(Solvent, TimeSpan.FromMinutes(minutes)).KilogramsPerCubicMeter, 1e-5);
        }

        // It peaks at ln(k/λ)/(k − λ).
        Numbers.Near((Math.Log(k / changes) / (k - changes)) + 0.5, study.Substances[0].PeakAt!.Value.TotalSeconds, 1e-3);
    }

    [Property]
    [Evidence(Basis.Identity, "a film with two rates is two films with one: a coat with a tail and two coats of (1 − s) and s of its mass come to the same everywhere, and lose nothing")]
    public Property A_tail_is_a_second_film() => Prop.ForAll(
        ArbMap.Default.ArbFor<int>(),
        seed =>
        {
            Random random = new(seed);
            double slow = 0.01 + (0.98 * random.NextDouble());
            double hours = 0.5 + (20 * random.NextDouble());
            SolventEmission fast = Rooms.Coat(10, 6, 164, random.NextDouble(), 1 + (30 * random.NextDouble()));
            SolventEmission tailed = fast with { Tail = new FilmTail(Ratio.FromDecimalFractions(slow), TimeSpan.FromHours(hours)) };
            AirStudy one = Rooms.Study(Rooms.Bathroom, Rooms.Fan(60, 2), tailed);
            AirStudy two = Rooms.Study(
                Rooms.Bathroom,
                Rooms.Fan(60, 2),
                fast with { VolatileMass = Mass.FromGrams(164 * (1 - slow)) },
                fast with { VolatileMass = Mass.FromGrams(164 * slow), FilmTimeConstant = TimeSpan.FromHours(hours) });
            for (int i = 0; i < 20; i++)
            {
                TimeSpan time = TimeSpan.FromHours(30 * random.NextDouble());
                Numbers.Near(
                    two.ConcentrationAt(Solvent, time).KilogramsPerCubicMeter,
                    one.ConcentrationAt(Solvent, time).KilogramsPerCubicMeter,
                    1e-12 * one.Substances[0].PeakConcentration.KilogramsPerCubicMeter);
            }

            Numbers.Close(two.Substances[0].EightHourConcentration.KilogramsPerCubicMeter, one.Substances[0].EightHourConcentration.KilogramsPerCubicMeter, 1e-11);
            Numbers.Close(0.164, one.Substances[0].Released.Kilograms, 1e-12);
            MassBalance end = one.BalanceAt(Solvent, TimeSpan.FromDays(100));
            Numbers.Close(0.164, end.Removed.Kilograms, 1e-9);
            Numbers.CanBeWritten(one.Workings());
        });

    [Fact]
    [Evidence(Basis.Identity, "a slower tail never lets the room clear sooner")]
    public void A_tail_clears_later()
    {
        SolventEmission coat = Rooms.Coat(0, 6, 164, 0.4, 15);
        TimeSpan plain = Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), coat).TimeToReEntry()!.Value;
        TimeSpan tailed = Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), coat with { Tail = new FilmTail(Ratio.FromPercent(40), TimeSpan.FromHours(3)) }).TimeToReEntry()!.Value;
        Assert.True(tailed > plain + TimeSpan.FromMinutes(30));
    }

    [Property]
    [Evidence(Basis.Identity, "sprays, wipes and tails together: mass is conserved, averages stay below peaks, the workings hold")]
    public Property Mixed_sources_obey_the_laws() => Prop.ForAll(
        ArbMap.Default.ArbFor<int>(),
        seed =>
        {
            Random random = new(seed);
            AirStudy study = Rooms.Study(Rooms.Of(6 + (15 * random.NextDouble())), Rooms.Fan(5 * Math.Pow(60, random.NextDouble()), 2), Rooms.Mixed(random));
            foreach (SubstanceAir air in study.Substances)
            {
                MassBalance balance = study.BalanceAt(air.Solvent, TimeSpan.FromSeconds(random.NextDouble() * 30000));
                Numbers.Near(balance.Sprayed.Kilograms, (balance.InFilm + balance.InAir + balance.Removed).Kilograms, 1e-11 * air.Released.Kilograms);
                Assert.True(air.FifteenMinuteConcentration <= air.PeakConcentration * (1 + 1e-12));
                Assert.True(air.EightHourConcentration <= air.FifteenMinuteConcentration * (1 + 1e-12));
            }

            Numbers.CanBeWritten(study.Workings());
        });

    [Fact]
    [Evidence(Basis.Independent, "maxima of mixed sources against 30 000 samples for 40 random studies: none is above, and the nearest is close below")]
    public void Maxima_are_those_of_a_dense_sampling()
    {
        Random random = new(1010);
        for (int i = 0; i < 40; i++)
        {
            AirStudy study = Rooms.Study(Rooms.Of(6 + (15 * random.NextDouble())), Rooms.Fan(5 * Math.Pow(60, random.NextDouble()), 2), Rooms.Mixed(random));
            foreach (SubstanceAir air in study.Substances)
            {
                const double Step = 2;
                double[] values = [.. Enumerable.Range(0, 30000).Select(n => study.ConcentrationAt(air.Solvent, TimeSpan.FromSeconds(n * Step)).KilogramsPerCubicMeter)];
                double[] sums = new double[values.Length];
                for (int n = 1; n < values.Length; n++)
                {
                    sums[n] = sums[n - 1] + ((values[n - 1] + values[n]) / 2 * Step);
                }

                double Window(int length) => Enumerable.Range(0, values.Length).Max(n => sums[n] - (n >= length ? sums[n - length] : 0));
                Assert.True(values.Max() <= air.PeakConcentration.KilogramsPerCubicMeter * (1 + 1e-12));
                Numbers.Close(values.Max(), air.PeakConcentration.KilogramsPerCubicMeter, 0.02);
                Numbers.Close(Window(450) / 900, air.FifteenMinuteConcentration.KilogramsPerCubicMeter, 3e-4);
                Numbers.Close(Window(14400) / 28800, air.EightHourConcentration.KilogramsPerCubicMeter, 3e-4);
            }
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 2 m² at 20 µm and 30 mL in the rags are 70 mL; acetone 0.791 g/mL")]
    public void Wiped_mass_follows_by_hand()
    {
        SolventShare[] acetone = [Rooms.Share(Solvents.Acetone, 100)];
        Numbers.Close(70 * 0.791, WipeEmission.VolatileMassOf(Area.FromSquareMeters(2), Length.FromMicrometers(20), Volume.FromMilliliters(30), acetone).Grams);
        Numbers.Refuses("wetFilm", () => WipeEmission.VolatileMassOf(Area.FromSquareMeters(2), Length.FromMillimeters(2), Volume.Zero, acetone));
        Numbers.Refuses("WipeTime", () => _ = Rooms.Wipe(0, 0, 10, 2));
        Numbers.Refuses("EvaporationTime", () => _ = Rooms.Wipe(0, 5, 10, 0));
        Numbers.Refuses("fraction", () => _ = new FilmTail(Ratio.Zero, TimeSpan.FromHours(1)));
        Numbers.Refuses("fraction", () => _ = new FilmTail(Ratio.FromPercent(100), TimeSpan.FromHours(1)));
        Numbers.Refuses("timeConstant", () => _ = new FilmTail(Ratio.FromPercent(10), TimeSpan.FromDays(31)));
        Assert.Equal("wipe: 10 g from 0 min, wiped on in 5 min", Rooms.Wipe(0, 5, 10, 2).ToString());
    }

    [Fact]
    [Evidence(Basis.Identity, "infiltration counts as the same flow of a fan would: without any fan the room decays by it, and the fan asked for is smaller by it")]
    public void Infiltration_is_fresh_air_without_a_fan()
    {
        SolventEmission coat = Rooms.Coat(0, 6, 164, 0.4, 15);
        Room draughty = Rooms.Bathroom with { Infiltration = VolumeFlow.FromCubicFeetPerMinute(20) };
        AirStudy without = Rooms.Study(draughty, Rooms.Fan(0, 2), coat);
        AirStudy fanned = Rooms.Study(Rooms.Bathroom, Rooms.Fan(20, 2), coat);
        Numbers.Close(fanned.Substances[0].PeakConcentration.KilogramsPerCubicMeter, without.Substances[0].PeakConcentration.KilogramsPerCubicMeter);
        Assert.NotNull(without.TimeToReEntry());
        Assert.DoesNotContain(Cautions.NoAirflow, without.Cautions);

        // Once the film is empty only the air changes count.
        double first = without.ConcentrationAt(Solvent, TimeSpan.FromHours(30)).KilogramsPerCubicMeter;
        double second = without.ConcentrationAt(Solvent, TimeSpan.FromHours(31)).KilogramsPerCubicMeter;
        Numbers.Close(Math.Exp(-without.AirChangesPerHour), second / first, 1e-9);

        Numbers.Near(
            Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), coat).AirflowForExposureIndex!.Value.CubicFeetPerMinute - 20,
            Rooms.Study(draughty, Rooms.Fan(100, 2), coat).AirflowForExposureIndex!.Value.CubicFeetPerMinute,
            1e-6);
        Numbers.CanBeWritten(Rooms.Study(draughty, Rooms.Fan(100, 2), coat).Workings());
        Numbers.Refuses("Infiltration", () => _ = draughty with { Infiltration = VolumeFlow.FromCubicFeetPerMinute(-1) });
    }
}
