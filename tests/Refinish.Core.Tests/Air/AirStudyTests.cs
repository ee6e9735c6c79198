using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class AirStudyTests
{
    [Theory]
    [InlineData(3, 3.0061)]
    [InlineData(6, 5.1273)]
    [InlineData(20, 1.4580)]
    [InlineData(60, 0.09721)]
    [Evidence(Basis.Independent, "one coat worked by hand with the closed form: M 164 g, V 9.06 m³, Q 150 cfm, K 2, f 0.4, film 1/15 min, spray 6 min; four to five figures")]
    public void Concentrations_match_the_worked_coat(double minutes, double gramsPerCubicMeter)
    {
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(150, 2), Rooms.Coat(0, 6, 164, 0.4, 15));
        double actual = study.ConcentrationAt(Solvents.ButylAcetate, TimeSpan.FromMinutes(minutes)).GramsPerCubicMeter;
        Numbers.Near(gramsPerCubicMeter, actual, minutes > 30 ? 5e-6 : 5e-5);
    }

    [Theory]
    [InlineData(100, 1, 4.367)]
    [InlineData(100, 3, 6.940)]
    [InlineData(300, 3, 4.367)]
    [Evidence(Basis.Independent, "the same coat, peaks for three fans; four figures")]
    public void Peaks_match_the_worked_coat(double cfm, double mixing, double gramsPerCubicMeter)
    {
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(cfm, mixing), Rooms.Coat(0, 6, 164, 0.4, 15));
        Numbers.Near(gramsPerCubicMeter, study.Substances[0].PeakConcentration.GramsPerCubicMeter, 5e-4);
    }

    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.1000(d)(2)(i), the regulation's example: 500/1000 + 45/200 + 40/200 = 0.925; no limit is exceeded")]
    public void Mixture_index_matches_the_regulations_example()
    {
        // Eight hours of steady spray after a long lead so that each average is the example's. One shift, perfect mixing, all flashing.
        (string Name, double Ppm, double Limit)[] example = [("B", 500, 1000), ("C", 45, 200), ("D", 40, 200)];
        AirStudy study = SteadyDay([.. example.Select(item => (item.Name, item.Ppm))], [.. example.Select(item => Rooms.Limit(item.Name, item.Limit))]);
        Numbers.Close(0.925, study.StrictestIndex!.Value, 1e-6);
        Assert.Equal(ComparisonOutcome.Within, study.StrictestLimit.Outcome);
    }

    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.1000(d)(1)(ii), the regulation's example: 2 h at 150, 2 h at 75, 4 h at 50 ppm is 81.25 ppm over eight hours")]
    public void Eight_hour_average_matches_the_regulations_example()
    {
        // A room with 1000 times the air a second holds steps so steep that only the durations count.
        Solvent substance = Rooms.Solvent("substance", 100);
        Room room = Rooms.Of(10);
        Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicMetersPerSecond(10), DeliveredFraction = Ratio.FromPercent(100), MixingFactor = 1 };
        SolventEmission[] coats =
        [
            Step(substance, 0, 120, 150),
            Step(substance, 120, 120, 75),
            Step(substance, 240, 240, 50),
        ];
        AirStudy study = new(room, fan, coats, TimeSpan.FromHours(8), Rooms.Set(Rooms.Limit("substance", 100)));

        // The air takes one second to follow each step: 1 s in 8 h.
        Numbers.Near(81.25, study.Substances[0].EightHourAverage.PartsPerMillion, 81.25 / 28800 * 3);
        Assert.Equal(ComparisonOutcome.Within, study.Exposure.Single().Comparison.Outcome);

        SolventEmission Step(Solvent solvent, double start, double minutes, double ppm)
        {
            double concentration = ppm * 1e-6 * 0.1 / 24.45e-3;
            return Rooms.Coat(start, minutes, concentration * 10 * minutes * 60 * 1000, 1, 15, Rooms.Share(solvent, 100));
        }
    }

    [Fact]
    [Evidence(Basis.Cited, "CDC, MMWR 43(RR-13) 1994, Table S3-1, all 26 rows: minutes to remove 90, 99 and 99.9 %; whole minutes, rounded")]
    public void Clearing_times_match_the_air_change_table()
    {
        int compared = 0;
        foreach (Table.Row row in Table.Read("air_change_removal.csv").Rows)
        {
            // A one-second puff, all of it flashing, into a room of 100 m³; the flow gives the air changes.
            double changes = row.Number("ach");
            Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicMetersPerHour(100 * changes), DeliveredFraction = Ratio.FromPercent(100), MixingFactor = 1 };
            AirStudy study = Rooms.Study(Rooms.Of(100), fan, Rooms.Coat(0, 1.0 / 60, 100, 1, 15));
            Ratio start = study.PeakFlammableFraction!.Value;
            foreach ((string column, double left) in new[] { ("min_90", 0.1), ("min_99", 0.01), ("min_999", 0.001) })
            {
                TimeSpan clear = study.TimeToClear(start * left)!.Value;
                Numbers.Near(row.Number(column), clear.TotalMinutes, 0.51);
                compared++;
            }
        }

        Assert.Equal(78, compared);
    }

    [Fact]
    [Evidence(Basis.Cited, "rEHS package, README: G 1.4 cfm into 75 000 ft³ with 2500 cfm for 11 min; 171.9 ppm is (1.4/2500)(1 − exp(−2500·11/75000)), worked by hand")]
    public void Constant_generation_matches_the_worked_example()
    {
        // Scaled to a room that is allowed: volume and flows by 1/200. Concentration does not change.
        double volume = 75000 / 200.0 * Math.Pow(0.3048, 3);
        double grams = 1.4 / 200 * 11 * Math.Pow(0.3048, 3) * 116.16 / 24.45e-3;
        AirStudy study = Rooms.Study(Rooms.Of(volume), Rooms.Fan(2500 / 200.0, 1), Rooms.Coat(0, 11, grams, 1, 15));
        Numbers.Near(171.9, study.Substances[0].Peak.PartsPerMillion, 0.05);
    }

    [Fact]
    [Evidence(Basis.Independent, "source-strength formula Q = 403 · SG · ER · 10⁶ · K/(M · C) of industrial-ventilation handbooks; 403 ft³/pint holds for 70 °F, so up to 1.5 % apart from 25 °C")]
    public void Steady_airflow_matches_the_source_strength_formula()
    {
        double pints = 188.7 / 473.176473;
        double cfm = 403 * 0.882 * (pints / 6) * 1e6 * 3 / (116.16 * (0.25 * 17000));
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(150, 3), Rooms.Coat(0, 6, 188.7 * 0.882, 1, 15));
        Numbers.Close(cfm, study.SteadyAirflowForFlammableLimit!.Value.CubicFeetPerMinute, 0.015);
    }

    [Fact]
    [Evidence(Basis.Identity, "without airflow all that evaporates stays: the peak is mass over volume, nothing clears and nothing is said about coming back")]
    public void Without_airflow_everything_stays()
    {
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(0, 3), Rooms.Coat(0, 6, 164, 0.4, 15), Rooms.Coat(60, 5, 100, 0, 40));
        Numbers.Close(264 / 9.06, study.Substances[0].PeakConcentration.GramsPerCubicMeter);
        Numbers.Close(264 / 9.06, study.Substances[0].EightHourConcentration.GramsPerCubicMeter);
        Numbers.Close(264 / 9.06, study.ConcentrationAt(Solvents.ButylAcetate, TimeSpan.FromDays(20)).GramsPerCubicMeter, 1e-9);
        Assert.Null(study.Substances[0].PeakAt);
        Assert.Null(study.TimeToClear(Ratio.FromPercent(1)));
        Assert.Null(study.TimeToReEntry());
        Assert.Equal(ComparisonOutcome.CannotBeJudged, study.ReEntry(TimeSpan.FromDays(1)).Outcome);
        Assert.Contains(study.Cautions, caution => caution.Sentence.StartsWith("No fan", StringComparison.Ordinal));
        Numbers.CanBeWritten(study.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "equal rates are the limit of nearly equal ones: air changes of 4 per hour and a film of 15 minutes")]
    public void Equal_rates_are_no_special_case()
    {
        Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicMetersPerHour(4 * 10), DeliveredFraction = Ratio.FromPercent(100), MixingFactor = 1 };
        double At(double film) => Rooms.Study(Rooms.Of(10), fan, Rooms.Coat(0, 6, 164, 0.4, film))
            .ConcentrationAt(Solvents.ButylAcetate, TimeSpan.FromMinutes(40)).GramsPerCubicMeter;
        double equal = At(15);
        Numbers.Close((At(15.001) + At(14.999)) / 2, equal, 1e-8);

        // t e^(−kt) by hand for the film, all in minutes: (f/T) and (1−f)/T parts over a spray of 6 min.
        double k = 1 / 15.0;
        double spray = (((1 - Math.Exp(-k * 6)) / k) - (0.6 * 6 * Math.Exp(-k * 6))) / 6;
        double film = 0.6 * (1 - Math.Exp(-k * 6)) / 6 * 34 * Math.Exp(-k * 34);
        Numbers.Close(164 / 10.0 * ((spray * Math.Exp(-k * 34)) + film), equal, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Independent, "Le Chatelier by hand: 60/25/15 % by mass of butyl acetate, xylene and methoxypropyl acetate; 1/Σ(y/LFL) with the catalogue's own limits")]
    public void Flammability_of_a_mixture_follows_le_chatelier()
    {
        SolventShare[] shares = [Rooms.Share(Solvents.ButylAcetate, 60), Rooms.Share(Solvents.Xylene, 25), Rooms.Share(Solvents.MethoxypropylAcetate, 15)];
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(0, 1), Rooms.Coat(0, 6, 100, 0.4, 15, shares));
        double a = 60 / 116.16;
        double b = 25 / 106.17;
        double c = 15 / 132.16;
        double limit = (a + b + c) / ((a / 0.017) + (b / 0.009) + (c / 0.015));
        double fraction = (a + b + c) * 24.45e-3 / 9.06 / limit;
        Numbers.Close(fraction, study.PeakFlammableFraction!.Value.DecimalFractions, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand, without airflow: butyl acetate over 200 ppm, xylene over 150 ppm, methoxypropyl acetate over 100 ppm; acetone has no short-term limit here")]
    public void Short_term_index_follows_by_hand()
    {
        SolventShare[] shares = [Rooms.Share(Solvents.ButylAcetate, 40), Rooms.Share(Solvents.Xylene, 30), Rooms.Share(Solvents.MethoxypropylAcetate, 20), Rooms.Share(Solvents.Acetone, 10)];
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(0, 1), Rooms.Coat(0, 6, 10, 0.4, 15, shares));
        double ppm = 10 / 9.06 * 24.45e-3 * 1e6;
        double expected = ppm * ((0.4 / 116.16 / 200) + (0.3 / 106.17 / 150) + (0.2 / 132.16 / 100));
        Numbers.Close(expected, study.ShortTermIndex!.Value);
        Assert.Equal(ComparisonOutcome.Beyond, study.ShortTermLimit.Outcome);
        Assert.Null(Rooms.Study(Rooms.Bathroom, Rooms.Fan(0, 1), Rooms.Coat(0, 6, 10, 0.4, 15, Rooms.Share(Solvents.Acetone, 100))).ShortTermIndex);
    }

    [Fact]
    [Evidence(Basis.Identity, "at four fifths of the pressure the same vapour is five quarters of the volume fraction; exposure limits stay at 760 mmHg")]
    public void Thin_air_brings_the_flammable_limit_nearer()
    {
        Room low = Rooms.Bathroom;
        Room high = low with { AirPressure = Pressure.FromPascals(0.8 * 101325) };
        SolventEmission coat = Rooms.Coat(0, 6, 164, 0.4, 15);
        AirStudy below = Rooms.Study(low, Rooms.Fan(150, 2), coat);
        AirStudy above = Rooms.Study(high, Rooms.Fan(150, 2), coat);
        Numbers.Close(1.25 * below.PeakFlammableFraction!.Value.DecimalFractions, above.PeakFlammableFraction!.Value.DecimalFractions);
        Assert.Equal(below.Substances[0].Peak.PartsPerMillion, above.Substances[0].Peak.PartsPerMillion);
    }

    [Fact]
    [Evidence(Basis.Contract, "a missing limit is never a pass: no flammable limit, no exposure limit")]
    public void Missing_limits_cannot_be_judged()
    {
        Solvent unknown = Rooms.Solvent("unheard of", 100, null);
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(150, 2), Rooms.Coat(0, 6, 20, 0.4, 15, Rooms.Share(unknown, 50), Rooms.Share(Solvents.Acetone, 50)));
        Assert.Equal(ComparisonOutcome.CannotBeJudged, study.FlammableLimit.Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, study.StrictestLimit.Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, study.Exposure.Single(exposure => exposure.Solvent == unknown).Comparison.Outcome);
        Assert.Null(study.PeakFlammableFraction);
        Assert.Null(study.AirflowForFlammableLimit);
        Assert.Null(study.SteadyAirflowForFlammableLimit);
        Assert.Null(study.AirflowForExposureIndex);
        Assert.Null(study.TimeToClear(Ratio.FromPercent(10)));
        Assert.Null(study.TimeToReEntry());
        Assert.Contains(study.Cautions, caution => caution.Sentence.Contains("Not known does not mean harmless", StringComparison.Ordinal));
        Numbers.CanBeWritten(study.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "what is known may already be too much, whatever the unknown part is")]
    public void A_known_part_beyond_the_limit_is_beyond_it()
    {
        Solvent unknown = Rooms.Solvent("unheard of", 100, null);
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(0, 2), Rooms.Coat(0, 6, 2000, 0.4, 15, Rooms.Share(unknown, 50), Rooms.Share(Solvents.Xylene, 50)));
        Assert.Equal(ComparisonOutcome.Beyond, study.FlammableLimit.Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, study.StrictestLimit.Outcome);
        Assert.Contains(study.Cautions, caution => caution.Hazard == Hazard.FireAndExplosion && caution.Sentence.Contains("Do not spray", StringComparison.Ordinal));
        Assert.Contains(study.Cautions, caution => caution.Sentence.Contains("immediately dangerous", StringComparison.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        SolventEmission coat = Rooms.Coat(0, 6, 164, 0.4, 15);
        Numbers.Refuses("Length", () => _ = new Room { Length = Length.FromMeters(0.1), Width = Length.FromMeters(2), Height = Length.FromMeters(2.4) });
        Numbers.Refuses("Height", () => _ = new Room { Length = Length.FromMeters(0.6), Width = Length.FromMeters(0.6), Height = Length.FromMeters(2.4) });
        Numbers.Refuses("LabelFlow", () => _ = new Exhaust() { LabelFlow = VolumeFlow.FromCubicMetersPerSecond(-1) });
        Numbers.Refuses("MixingFactor", () => _ = Rooms.Fan(100, 0.5));
        Numbers.Refuses("DeliveredFraction", () => _ = new Exhaust() { LabelFlow = VolumeFlow.Zero, DeliveredFraction = Ratio.Zero });
        Numbers.Refuses("SprayTime", () => _ = Rooms.Coat(0, 0, 164, 0.4, 15));
        Numbers.Refuses("FlashFraction", () => _ = Rooms.Coat(0, 6, 164, 1.1, 15));
        Numbers.Refuses("VolatileMass", () => _ = Rooms.Coat(0, 6, 0, 0.4, 15));
        Numbers.Refuses("Solvents", () => _ = Rooms.Coat(0, 6, 1, 0.4, 15, Rooms.Share(Solvents.Acetone, 90)));
        Numbers.Refuses("shift", () => _ = new AirStudy(Rooms.Bathroom, Rooms.Fan(1, 1), [coat], TimeSpan.FromMinutes(1)));
        Numbers.Refuses("criterion", () => _ = Rooms.Study(Rooms.Bathroom, Rooms.Fan(1, 1), coat).TimeToReEntry(0));
        Assert.Throws<ArgumentException>(() => _ = Rooms.Study(Rooms.Bathroom, Rooms.Fan(1, 1)));
        Assert.Throws<ArgumentException>(() => _ = Rooms.Study(Rooms.Bathroom, Rooms.Fan(1, 1), coat).ConcentrationAt(Solvents.Acetone, TimeSpan.Zero));
        Assert.Throws<ArgumentException>(() => _ = Rooms.Coat(0, 6, 1, 0.4, 15, Rooms.Share(Solvents.Acetone, 50), Rooms.Share(Solvents.Acetone, 50)));
    }

    // The wanted averages, held for 8 h by a fast fan; the lead-in of one second is left to the tolerance.
    private static AirStudy SteadyDay((string Name, double Ppm)[] substances, ExposureLimit[] limits)
    {
        // No airflow, one puff spread over the shift: the average is then exact, mass over volume times shift over eight hours.
        List<SolventShare> shares = [];
        double total = substances.Sum(item => item.Ppm);
        foreach ((string name, double ppm) in substances)
        {
            // Equal molar masses, so shares by mass are shares by volume.
            shares.Add(Rooms.Share(Rooms.Solvent(name, 100), 100 * ppm / total));
        }

        double grams = total * 1e-6 * 0.1 / 24.45e-3 * 10 * 1000;
        return new AirStudy(Rooms.Of(10), Rooms.Fan(0, 1), [Rooms.Coat(0, 1, grams, 1, 15, [.. shares])], TimeSpan.FromHours(8), Rooms.Set(limits));
    }
}
