using System.Collections.Generic;

namespace Refinish.Climate;

/// <summary>What has to hold before a time can be said in which a fixture comes to its temperatures; all in kelvins.</summary>
internal static class WarmUpChecks
{
    private const double LeastExcess = 0.1;

    private static readonly Source Excess =
        Source.Invented("0.1 K, finer than a contact thermometer reads; the law takes for ever over the last of it");

    private static readonly Source Stays = Source.Derived("a fixture ends at the temperature of its room");
    private static readonly Source Order = Source.Supplied("the highest temperature given");

    public static IReadOnlyList<LimitComparison> Of(double start, double room, double target, double? highest)
    {
        bool warm = start >= target;
        double least = warm ? 0 : LeastExcess;
        List<LimitComparison> checks =
        [
            new(
                "room above target", room - target, least, LimitSense.AtLeast, Measure.TemperatureDifference, warm ? Stays : Excess,
                room - target >= least ? null : "Heat the room " + (warm ? "to " : "above ") + Both(target + least) + "."),
        ];
        if (highest is double most)
        {
            checks.Add(new("highest above target", most - target, 0, LimitSense.AtLeast, Measure.TemperatureDifference, Order));
            if (start > most)
            {
                checks.Add(new(
                    "room below highest", most - room, LeastExcess, LimitSense.AtLeast, Measure.TemperatureDifference, Excess,
                    most - room >= LeastExcess ? null : "Cool the room below " + Both(most - LeastExcess) + "."));
            }
        }

        return new ValueList<LimitComparison>(checks);
    }

    private static string Both(double kelvins) =>
        Measure.Temperature.Format(kelvins) + " (" + Measure.Temperature.Format(kelvins, DisplayUnits.UsCustomary) + ")";
}
