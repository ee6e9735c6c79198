using System;
using Refinish.Air;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class AirClearingTests
{
    [Fact]
    [Evidence(Basis.Cited, "CDC, MMWR 43(RR-13) 1994, Table S3-1, all 26 rows, nine of them in CDC 2003, Table B.1 too: minutes to remove 90, 99 and 99.9 %; whole minutes, rounded")]
    public void Minutes_match_the_air_change_table()
    {
        int compared = 0;
        foreach (Table.Row row in Table.Read("air_change_removal.csv").Rows)
        {
            foreach ((string column, double removed) in new[] { ("min_90", 90.0), ("min_99", 99), ("min_999", 99.9) })
            {
                AirClearing clearing = AirClearing.At(Ratio.FromPercent(removed), row.Number("ach"));
                Numbers.Near(row.Number(column), clearing.Time.TotalMinutes, 0.5);
                Numbers.CanBeWritten(clearing.Workings());
                compared++;
            }
        }

        Assert.Equal(78, compared);
    }

    [Fact]
    [Evidence(Basis.Cited, "MMWR 43(RR-13) 1994, Table S3-1, notes: the time is multiplied by the mixing factor; 6 air changes, 99 %, factor 3: 3 × 46 min")]
    public void The_mixing_factor_multiplies_the_time()
    {
        AirClearing clearing = AirClearing.At(Ratio.FromPercent(99), 6) with { MixingFactor = 3 };
        Numbers.Near(3 * 46, clearing.Time.TotalMinutes, 1.5);
        Numbers.Close(18, (AirClearing.Within(Ratio.FromPercent(99), AirClearing.At(Ratio.FromPercent(99), 6).Time) with { MixingFactor = 3 }).AirChangesPerHour, 1e-6);
    }

    [Theory]
    [InlineData(50, 1, 1)]
    [InlineData(99, 6, 3)]
    [InlineData(99.99, 40, 10)]
    [Evidence(Basis.Identity, "of share, air changes and time any two give the third; ln 2 air changes halve a mixed room")]
    public void Any_two_give_the_third(double removed, double changes, double mixing)
    {
        AirClearing first = AirClearing.At(Ratio.FromPercent(removed), changes) with { MixingFactor = mixing };
        AirClearing second = AirClearing.Within(first.Removed, first.Time) with { MixingFactor = mixing };
        AirClearing third = AirClearing.After(first.Time, changes) with { MixingFactor = mixing };
        Numbers.Close(changes, second.AirChangesPerHour, 1e-6);
        Numbers.Close(removed, third.Removed.Percent, 1e-6);
        Numbers.Close(first.AirChanges, third.AirChanges, 1e-6);
        Numbers.CanBeWritten(second.Workings());
        Numbers.CanBeWritten(third.Workings());
        Numbers.Close(Math.Log(2), AirClearing.At(Ratio.FromPercent(50), 7).AirChanges, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 99 % of 10 m³ in half an hour is ln 100 · 2 = 9.2103 air changes an hour, 92.103 m³/h, less 10 m³/h that infiltrate; with mixing factor 3, 276.31 less 10")]
    public void The_fan_for_a_wanted_time_by_hand()
    {
        Room room = Rooms.Of(10) with { Infiltration = VolumeFlow.FromCubicMetersPerHour(10) };
        AirClearing clearing = AirClearing.Within(Ratio.FromPercent(99), TimeSpan.FromMinutes(30)) with { Room = room };
        Numbers.Near(82.103, clearing.FanFlow!.Value.CubicMetersPerHour, 5e-4);
        Numbers.Near(266.31, (clearing with { MixingFactor = 3 }).FanFlow!.Value.CubicMetersPerHour, 5e-3);
        Assert.Equal(VolumeFlow.Zero, (AirClearing.At(Ratio.FromPercent(99), 0.5) with { Room = room }).FanFlow);
        Assert.Null((clearing with { Room = null }).FanFlow);
        Numbers.CanBeWritten(clearing.Workings());
        Assert.Contains(Cautions.ClearingCountsNoSource, clearing.Cautions);
    }

    [Fact]
    [Evidence(Basis.Identity, "the door and the room study are one decay: a puff that all flashes clears in the study in the time of the door")]
    public void A_puff_in_the_study_clears_in_that_time()
    {
        Exhaust fan = Rooms.Fan(60, 2);
        AirStudy study = Rooms.Study(Rooms.Bathroom, fan, Rooms.Coat(0, 1.0 / 60, 10, 1, 15));
        AirClearing clearing = AirClearing.At(Ratio.FromPercent(90), fan.EffectiveFlow.CubicMetersPerHour / 9.06) with { MixingFactor = 2 };
        Numbers.Close(clearing.Time.TotalSeconds, study.TimeToClear(study.PeakFlammableFraction!.Value * 0.1)!.Value.TotalSeconds, 1e-6);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; text")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("removed", () => AirClearing.At(Ratio.FromPercent(100), 6));
        Numbers.Refuses("removed", () => AirClearing.Within(Ratio.Zero, TimeSpan.FromHours(1)));
        Numbers.Refuses("airChangesPerHour", () => AirClearing.At(Ratio.FromPercent(99), 0));
        Numbers.Refuses("airChangesPerHour", () => AirClearing.At(Ratio.FromPercent(99), double.NaN));
        Numbers.Refuses("time", () => AirClearing.After(TimeSpan.Zero, 6));
        Numbers.Refuses("MixingFactor", () => _ = AirClearing.At(Ratio.FromPercent(99), 6) with { MixingFactor = 0.5 });
        Assert.Equal("99 % removed in 46.052 min at 6 1/h, mixing factor 1", AirClearing.At(Ratio.FromPercent(99), 6).ToString());
    }
}
