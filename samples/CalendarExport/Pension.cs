using System;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Samples.CalendarExport;

/// <summary>
/// A boarding house whose bathrooms are renewed one beside the other by one crew. House, hours, tubs and findings are invented.
/// </summary>
internal static class Pension
{
    /// <summary>
    /// Central European time of 2027 as data: clocks go forward on 28 March and back on 31 October, both at 1:00 universal time (Directive
    /// 2000/84/EC).
    /// </summary>
    public static LocalClock Clock { get; } = LocalClock.WithChanges(
        TimeSpan.FromHours(1),
        [
            new ClockChange(new DateTimeOffset(2027, 3, 28, 1, 0, 0, TimeSpan.Zero), TimeSpan.FromHours(2)),
            new ClockChange(new DateTimeOffset(2027, 10, 31, 1, 0, 0, TimeSpan.Zero), TimeSpan.FromHours(1)),
        ]);

    /// <summary>Monday to Friday, 8 to 17, without Good Friday and Easter Monday of 2027.</summary>
    public static WorkCalendar Calendar { get; } =
        WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), Clock,
            [new DateTime(2027, 3, 26), new DateTime(2027, 3, 29)]);

    /// <summary>Bathrooms with one tub each, starting in the week before the clocks go forward.</summary>
    public static Job Bathrooms(int count) => new()
    {
        Id = "pension-2027",
        Name = "Pension, " + count + " bathrooms (invented)",
        Shop = Shop.Generic with { Calendar = Calendar },
        Start = new DateTimeOffset(2027, 3, 22, 8, 0, 0, TimeSpan.FromHours(1)),
        Premises = new Premises { Id = "pension", Rooms = [.. Enumerable.Range(1, count)
            .Select(number => Bathroom("bath-" + number, "bathroom " + number))] },
        Fixtures = [.. Enumerable.Range(1, count).Select(number => Tub("tub-" + number, "bath-" + number))],
    };

    private static SiteRoom Bathroom(string id, string name) => new()
    {
        Id = id,
        Name = name,
        Room = new Room { Length = Length.FromMeters(2.4), Width = Length.FromMeters(1.9), Height = Length.FromMeters(2.5) },
        Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) },
        Climate = RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)),
            Temperature.FromDegreesCelsius(20)),
    };

    private static FixtureJob Tub(string id, string room) => new()
    {
        Id = id,
        Room = room,
        Fixture = new RecessedBathtub(new RecessedBathtubMeasurements
        {
            RimLength = Length.FromInches(53), RimWidth = Length.FromInches(23.5), RimCornerRadius = Length.FromInches(6),
            FloorLength = Length.FromInches(44), FloorWidth = Length.FromInches(19.5), FloorCornerRadius = Length.FromInches(5),
            Depth = Length.FromInches(13.25), HeadRun = Length.FromInches(7), FootRun = Length.FromInches(2),
                CoveRadius = Length.FromInches(2.5),
            OverallLength = Length.FromInches(60), OverallWidth = Length.FromInches(30), ApronHeight = Length.FromInches(14.5),
            DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
        }),
        Survey = new Survey
        {
            Material = FixtureMaterial.EnamelledSteel,
            Defects = [new Chip(Length.FromMillimeters(12), Length.FromMillimeters(1))],
            YearBuilt = 1995,
        },
    };
}
