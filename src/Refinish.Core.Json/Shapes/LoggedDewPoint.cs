using System;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>
/// The dew point of a logged climate, which the climate does not hand out: found from its air, and taken only if it makes an equal climate.
/// </summary>
internal static class LoggedDewPoint
{
    // The library keeps temperatures to 1e-10 K; the dew point of the air comes out within a few of these.
    private const double Step = 1e-10;
    private const int Nearby = 50;

    public static Temperature Of(RoomClimate climate)
    {
        double near = Math.Round(climate.Air.DewPoint.Kelvins, 10);
        for (int i = 0; i <= Nearby; i++)
        {
            foreach (int steps in (ReadOnlySpan<int>)[i, -i])
            {
                Temperature candidate = Temperature.FromKelvins(Math.Round(near + (steps * Step), 10));
                if (Makes(climate, candidate))
                {
                    return candidate;
                }
            }
        }

        throw new NotSupportedException(
            "A log whose air is saturated at its start has no form in JSON, because its dew point cannot be found; "
            + "begin the log where the air is warmer than its dew point.");
    }

    private static bool Makes(RoomClimate climate, Temperature dewPoint)
    {
        try
        {
            return RoomClimate.Logged(climate.Log!, dewPoint, climate.Surface).Equals(climate);
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
