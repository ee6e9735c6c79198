using System;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Jobs;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Samples.BathroomJob;

/// <summary>The invented guesthouse: rooms, exhaust, climate and the hours in which guests sleep.</summary>
internal static class ScenarioPremises
{
    /// <summary>Two bathrooms, the second without heating, and a kitchenette. Nothing loud before nine.</summary>
    public static Premises Guesthouse() => new()
    {
        Id = "guesthouse",
        Name = "Guesthouse at the old ferry",
        Difficulty = 1.1,
        QuietHours = [.. Enumerable.Range(1, 5).Select(day =>
            new WorkShift((DayOfWeek)day, new WorkingHours(TimeSpan.FromHours(7), TimeSpan.FromHours(9))))],
        Rooms =
        [
            Heated("bath-1", "bathroom 1", 2.6, 2.1),
            new SiteRoom
            {
                Id = "bath-2",
                Name = "bathroom 2, unheated",
                Room = new Room { Length = Length.FromMeters(2.9), Width = Length.FromMeters(2.2), Height = Length.FromMeters(2.5) },
                Exhaust = Fan(),
                // 14.5 to 19.5 °C over the day: the surface is warm enough from nine in the morning to nine in the evening.
                Climate = RoomClimate.Daily(
                    new MoistAir(Temperature.FromDegreesCelsius(17), Ratio.FromPercent(50)), Temperature.FromDegreesCelsius(16),
                    TemperatureDelta.FromKelvins(2.5), TimeSpan.FromHours(15)),
            },
            Heated("kitchenette", "kitchenette", 3.4, 2.4),
        ],
    };

    /// <summary>One heated bathroom.</summary>
    public static Premises OneBathroom() => new()
    {
        Id = "guesthouse", Name = "Guesthouse at the old ferry", Difficulty = 1.1, Rooms = [Heated("bath-3", "bathroom 3", 2.6, 2.1)],
    };

    private static SiteRoom Heated(string id, string name, double length, double width) => new()
    {
        Id = id,
        Name = name,
        Room = new Room { Length = Length.FromMeters(length), Width = Length.FromMeters(width), Height = Length.FromMeters(2.5) },
        Exhaust = Fan(),
        Climate = RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)),
            Temperature.FromDegreesCelsius(20)),
    };

    private static Exhaust Fan() => new() { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) };
}
