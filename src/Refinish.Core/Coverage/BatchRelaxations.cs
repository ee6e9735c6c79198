using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Curing;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>For a plan that has no batch: what would have to change, each thing alone, so that the smallest batch fits.</summary>
internal sealed class BatchRelaxations(CupPlan plan)
{
    public IReadOnlyList<BatchRelaxation> Find()
    {
        List<BatchRelaxation> found = [];
        double residue = plan.Rules.Residue.CubicMeters;

        // Cups that hold their own smallest batch and deliver something of it, were there time enough.
        double[] smallest =
        [
            .. plan.Rules.Cups.Select(cup => SmallestThatDelivers(cup, residue) * cup.Graduation.CubicMeters)
                .Where(volume => volume > 0).OrderBy(volume => volume),
        ];
        if (smallest.Length > 0 && plan.SecondsToUse is double seconds)
        {
            InTime(found, smallest[0], seconds);
        }

        foreach (MixingCup cup in plan.Rules.Cups)
        {
            double limit = plan.SecondsToUse is double time ? plan.Use.CubicMetersPerSecond * Math.Max(0, time) : double.PositiveInfinity;
            double most = cup.MostGraduations(limit) * cup.Graduation.CubicMeters;
            if (most > residue && most < cup.Smallest.CubicMeters)
            {
                Add(found, "smallest batch in the " + cup + ", measured more finely or weighed,", cup.Smallest.CubicMeters, most, Measure.Liquid);
            }
        }

        return new ValueList<BatchRelaxation>(found.OrderBy(one => one.Effort));
    }

    private static int SmallestThatDelivers(MixingCup cup, double residue)
    {
        int least = (int)Math.Max(cup.LeastGraduations, Math.Floor((residue / cup.Graduation.CubicMeters) + CupSearch.Slack) + 1);
        return least <= cup.MostGraduations(double.PositiveInfinity) ? least : 0;
    }

    private static void Add(List<BatchRelaxation> found, string subject, double from, double to, Measure measure) =>
        found.Add(new(subject, from, to, measure, from > 0 && to > 0 ? Math.Abs(Math.Log(to / from)) : double.PositiveInfinity));

    private void InTime(List<BatchRelaxation> found, double volume, double seconds)
    {
        double share = plan.Rules.PotLifeShare.DecimalFractions;
        double pot = plan.PotLife!.Value.TotalSeconds;
        double induction = plan.Induction.TotalSeconds;
        double mixing = plan.Rules.MixingTime.TotalSeconds;
        double spraying = volume / plan.Use.CubicMetersPerSecond;
        if (seconds > 0)
        {
            Add(found, "spraying rate", plan.Use.CubicMetersPerSecond, volume / seconds, Measure.FluidRate);
        }

        double whole = induction + mixing + spraying;
        Add(found, "pot life, by a slower hardener or cooler cans,", pot, whole / share, Measure.Minutes);
        if (whole <= pot)
        {
            Add(found, "share of the pot life that is used", share, whole / pot, Measure.Percent);
        }

        double room = (share * pot) - induction - spraying;
        if (room > 0)
        {
            Add(found, "time for mixing", mixing, room, Measure.Minutes);
        }

        if (plan.InCup is CureForecast forecast)
        {
            Cooler(found, forecast, share, mixing + spraying);
        }
    }

    // s·t_pot/f − t_ind/f = t_mix + t_spray gives the rate f at which it would just do; its temperature is the root of a rising law.
    private static void Cooler(List<BatchRelaxation> found, CureForecast forecast, double share, double outsidePot)
    {
        double potAtReference = forecast.Times.PotLife!.Value.TotalSeconds;
        double rate = ((share * potAtReference) - forecast.Times.Induction.TotalSeconds) / outsidePot;
        double low = forecast.Times.MinimumTemperature.Kelvins;
        double high = forecast.Site.Kelvins;
        if (rate <= 0 || forecast.Shift.Factor(low, forecast.Times.ReferenceTemperature.Kelvins) > rate)
        {
            return;
        }

        double coolest = Roots.Enclose(
            new Given<(TemperatureShift Shift, double Reference, double Rate)>(
                (forecast.Shift, forecast.Times.ReferenceTemperature.Kelvins, rate),
                static (given, t) => given.Shift.Factor(t, given.Reference) - given.Rate),
            low,
            high).Lower;
        double effort = Math.Abs(Math.Log(forecast.RateFactor!.Value / rate));
        found.Add(new("temperature of the mix", forecast.Site.Kelvins, coolest, Measure.Temperature, effort));
    }
}
