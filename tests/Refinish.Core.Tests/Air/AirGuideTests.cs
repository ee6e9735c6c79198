using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

/// <summary>The worked example of docs/air.md, as it stands there.</summary>
public class AirGuideTests
{
    [Theory]
    [InlineData("OSHA PEL", 13, 3, 0)]
    [InlineData("NIOSH REL", 19, 1, 2)]
    [InlineData("NIOSH IDLH", 10, 0, 2)]
    [InlineData("EU indicative limit", 2, 4, 16)]
    [InlineData("EU binding limit", 0, 2, 0)]
    [InlineData("UK workplace exposure limit", 0, 0, 25)]
    [InlineData("Oregon OSHA PEL", 0, 2, 0)]
    [Evidence(Basis.Contract, "the guide's table of how well the limits were looked up is that of the data")]
    public void The_guides_table_of_standing_is_current(string authority, int seen, int secondHand, int fromMemory)
    {
        ExposureLimit[] limits = [.. PublishedLimits.All.Where(limit => limit.Authority == authority)];
        Assert.Equal(seen, limits.Count(limit => limit.Standing == Standing.Seen));
        Assert.Equal(secondHand, limits.Count(limit => limit.Standing == Standing.SecondHand));
        Assert.Equal(fromMemory, limits.Count(limit => limit.Standing == Standing.FromMemory));
    }

    [Fact]
    [Evidence(Basis.Independent, "the guide's numbers by hand: closed form of one coat at 6 min, M/F over eight hours, M/F + M/β in the near field, and Simpson's rule over the hand formula for the fifteen minutes; as many figures as the guide prints")]
    public void The_worked_example_of_the_guide()
    {
        Room bathroom = new() { Length = Length.FromMeters(2.265), Width = Length.FromMeters(1.6), Height = Length.FromMeters(2.5), AirTemperature = Temperature.FromDegreesCelsius(22) };
        Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(250), MixingFactor = 2 };
        SolventEmission coat = new()
        {
            Name = "topcoat",
            Start = TimeSpan.Zero,
            SprayTime = TimeSpan.FromMinutes(6),
            VolatileMass = Mass.FromGrams(164),
            Solvents = [new(Solvents.ButylAcetate, Ratio.FromPercent(100))],
            FlashFraction = Ratio.FromPercent(40),
            FilmTimeConstant = TimeSpan.FromMinutes(15),
        };
        AirStudy study = new(bathroom, fan, [coat], TimeSpan.FromHours(8));
        NearFieldStudy zones = new(study, NearField.Hemisphere(Length.FromMeters(0.8), Speed.FromMetersPerSecond(0.1)));

        // By hand, in grams, cubic metres and minutes: 75 cfm of fresh air count, 9.06 m³.
        const double Ppm = 24.45e3 / 116.16;
        double fresh = 75 * Math.Pow(0.3048, 3);
        double exchange = 0.5 * 2 * Math.PI * 0.64 * 0.1 * 60;
        double l = fresh / 9.06;
        const double K = 1 / 15.0;
        double Spraying(double t) => 164 / (9.06 * 6) * (((1 - Math.Exp(-l * t)) / l) - (0.6 * (Math.Exp(-K * t) - Math.Exp(-l * t)) / (l - K)));
        double After(double t) => (Spraying(6) * Math.Exp(-l * (t - 6)))
            + (0.6 * 164 * (1 - Math.Exp(-K * 6)) / (9.06 * 6 * (l - K)) * (Math.Exp(-K * (t - 6)) - Math.Exp(-l * (t - 6))));
        double peak = Spraying(6) * Ppm;
        double dayNear = 164 * ((1 / fresh) + (1 / exchange)) / 480 * Ppm;
        double day = 164 / fresh / 480 * Ppm;
        double quarter = Enumerable.Range(0, 300).Max(n => Dose(n / 60.0, (n / 60.0) + 15)) / 15 * Ppm;
        Numbers.Near(1079, peak, 0.5);
        Numbers.Near(33.9, day, 0.05);
        Numbers.Near(39.8, dayNear, 0.05);
        Numbers.Near(686.3, quarter, 0.05);

        SubstanceAir air = study.Substances[0];
        Numbers.Near(1079, air.Peak.PartsPerMillion, 0.5);
        Numbers.Near(33.9, air.EightHourAverage.PartsPerMillion, 0.05);
        Numbers.Near(686.3, air.FifteenMinuteAverage.PartsPerMillion, 0.05);
        Numbers.Near(39.8, zones.Substances[0].Near.EightHourAverage.PartsPerMillion, 0.05);
        Numbers.Near(6.3, study.PeakFlammableFraction!.Value.Percent, 0.05);
        Assert.Equal(ComparisonOutcome.Within, study.FlammableLimit.Outcome);
        Assert.Equal(ComparisonOutcome.Within, study.Against(LimitSets.Osha).StrictestLimit.Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, study.ShortTermLimit.Outcome);
        Assert.Equal(ComparisonOutcome.Within, study.Saturation.Single().Outcome);

        double Dose(double from, double to)
        {
            const int Steps = 3000;
            double sum = 0;
            for (int i = 0; i <= Steps; i++)
            {
                double t = from + ((to - from) * i / Steps);
                sum += (i is 0 or Steps ? 1 : i % 2 == 1 ? 4 : 2) * (t <= 6 ? Spraying(t) : After(t));
            }

            return sum * (to - from) / Steps / 3;
        }
    }

    [Theory]
    [InlineData(0.1, 1340, 810, 39.8)]
    [InlineData(0.05, 1599, 938, 45.8)]
    [Evidence(Basis.Independent, "the guide's near-field rows by hand: film, near and far field stepped by Runge and Kutta's fourth order, the fifteen minutes by trapezoids, M/F + M/β for the day; as many figures as the guide prints")]
    public void The_near_field_rows_of_the_guide(double speed, double peak, double quarter, double day)
    {
        Room bathroom = new() { Length = Length.FromMeters(2.265), Width = Length.FromMeters(1.6), Height = Length.FromMeters(2.5), AirTemperature = Temperature.FromDegreesCelsius(22) };
        SolventEmission coat = new()
        {
            Name = "topcoat",
            Start = TimeSpan.Zero,
            SprayTime = TimeSpan.FromMinutes(6),
            VolatileMass = Mass.FromGrams(164),
            Solvents = [new(Solvents.ButylAcetate, Ratio.FromPercent(100))],
            FlashFraction = Ratio.FromPercent(40),
            FilmTimeConstant = TimeSpan.FromMinutes(15),
        };
        Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(250), MixingFactor = 2 };
        AirStudy study = new(bathroom, fan, [coat], TimeSpan.FromHours(8));
        SubstanceAir air = new NearFieldStudy(study, NearField.Hemisphere(Length.FromMeters(0.8), Speed.FromMetersPerSecond(speed))).Substances[0].Near;

        // By hand, in grams, cubic metres and minutes.
        const double Ppm = 24.45e3 / 116.16;
        const double Step = 0.01;
        double fresh = 75 * Math.Pow(0.3048, 3);
        double exchange = 0.5 * 2 * Math.PI * 0.64 * speed * 60;
        double nearVolume = 2 * Math.PI / 3 * Math.Pow(0.8, 3);
        double farVolume = 9.06 - nearVolume;
        double[] state = new double[3];
        double[] near = new double[6001];
        double[] dose = new double[6001];
        for (int i = 0; i < 6000; i++)
        {
            double sprayed = i < 600 ? 164 / 6.0 : 0;
            double[] first = Change(state, sprayed);
            double[] second = Change(Ahead(state, first, Step / 2), sprayed);
            double[] third = Change(Ahead(state, second, Step / 2), sprayed);
            double[] fourth = Change(Ahead(state, third, Step), sprayed);
            state = [.. state.Select((value, n) => value + (Step / 6 * (first[n] + (2 * second[n]) + (2 * third[n]) + fourth[n])))];
            near[i + 1] = state[1];
            dose[i + 1] = dose[i] + (Step / 2 * (near[i] + near[i + 1]));
        }

        Numbers.Near(peak, near.Max() * Ppm, 0.5);
        Numbers.Near(quarter, Enumerable.Range(0, 4501).Max(i => dose[i + 1500] - dose[i]) / 15 * Ppm, 0.5);
        Numbers.Near(day, 164 * ((1 / fresh) + (1 / exchange)) / 480 * Ppm, 0.05);
        Numbers.Near(peak, air.Peak.PartsPerMillion, 0.5);
        Numbers.Near(quarter, air.FifteenMinuteAverage.PartsPerMillion, 0.5);
        Numbers.Near(day, air.EightHourAverage.PartsPerMillion, 0.05);

        double[] Change(double[] at, double sprayed) =>
        [
            (0.6 * sprayed) - (at[0] / 15),
            ((0.4 * sprayed) + (at[0] / 15) + (exchange * (at[2] - at[1]))) / nearVolume,
            ((exchange * (at[1] - at[2])) - (fresh * at[2])) / farVolume,
        ];

        static double[] Ahead(double[] from, double[] change, double time) => [.. from.Select((value, n) => value + (time * change[n]))];
    }
}
