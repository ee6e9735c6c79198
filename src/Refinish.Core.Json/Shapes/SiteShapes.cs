using System;
using System.Collections.Generic;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Curing;
using Refinish.Jobs;
using Refinish.Scheduling;
using UnitsNet;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Premises, their rooms, and the climate in them.</summary>
internal static class SiteShapes
{
    public static ObjectShape<Room> Room { get; } = new Fields<Room>("room")
        .Readings(Refinish.Air.Room.Inputs, out Slot<InputValues> readings)
        .MakingTogether(
            () => new Room { Length = Length.FromMeters(3), Width = Length.FromMeters(2), Height = Length.FromMeters(2.5) },
            v => new Room(readings(v)));

    public static ObjectShape<Exhaust> Exhaust { get; } = new Fields<Exhaust>("exhaust")
        .Readings(Refinish.Air.Exhaust.Inputs, out Slot<InputValues> readings)
        .Making(v => new Exhaust(readings(v)));

    public static ObjectShape<MoistAir> Air { get; } = new Fields<MoistAir>("moistAir")
        .With("dryBulb", Quantities.Temperature, it => it.DryBulb, out Slot<Temperature> dryBulb)
        .With("relativeHumidity", Quantities.Percent, it => it.RelativeHumidity, out Slot<Ratio> relativeHumidity)
        .WithOr("pressure", Quantities.Pressure.OrNull(), it => it.Pressure, null, out Slot<Pressure?> pressure)
        .Making(v => pressure(v) is Pressure given
            ? new MoistAir(dryBulb(v), relativeHumidity(v), given) : new MoistAir(dryBulb(v), relativeHumidity(v)));

    public static ObjectShape<TemperatureSegment> Segment { get; } = new Fields<TemperatureSegment>("temperatureSegment")
        .With("duration", Quantities.Duration, it => it.Duration, out Slot<TimeSpan> duration)
        .With("temperature", Quantities.Temperature, it => it.Temperature, out Slot<Temperature> temperature)
        .Making(v => new TemperatureSegment(duration(v), temperature(v)));

    public static ObjectShape<TemperatureHistory> History { get; } = new Fields<TemperatureHistory>("temperatureHistory")
        .With("start", Times.Instant, it => it.Start, out Slot<DateTimeOffset> start)
        .With("segments", List(Segment), it => it.Segments, out Slot<IReadOnlyList<TemperatureSegment>> segments)
        .WithOr("lastHoldsOn", YesNo, it => it.LastHoldsOn, false, out Slot<bool> lastHoldsOn)
        .MakingTogether(
            () => TemperatureHistory.Constant(new DateTimeOffset(2000, 1, 3, 8, 0, 0, TimeSpan.Zero), Temperature.FromDegreesCelsius(20)),
            v => new TemperatureHistory(start(v), segments(v), lastHoldsOn(v)));

    public static OneOfShape<RoomClimate> Climate { get; } = new OneOfShape<RoomClimate>("roomClimate")
        .Or("held", Held(), climate => climate.Kind == RoomClimateKind.Held)
        .Or("daily", Daily(), climate => climate.Kind == RoomClimateKind.Daily)
        .Or("logged", Logged());

    public static ObjectShape<SiteRoom> SiteRoom { get; } = new Fields<SiteRoom>("siteRoom")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .MaybeOf("name", Text, it => Said.Name(it.Name, it.Id, it, one => one with { Name = one.Name }),
            (it, name) => it with { Name = name })
        .With("room", Room, it => it.Room, out Slot<Room> size)
        .With("exhaust", Exhaust, it => it.Exhaust, out Slot<Exhaust> exhaust)
        .With("climate", Climate, it => it.Climate, out Slot<RoomClimate> climate)
        .Making(v => new SiteRoom { Id = id(v), Room = size(v), Exhaust = exhaust(v), Climate = climate(v) });

    public static ObjectShape<Premises> Premises { get; } = new Fields<Premises>("premises")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .MaybeOf("name", Text, it => Said.Name(it.Name, it.Id, it, one => one with { Name = one.Name }),
            (it, name) => it with { Name = name })
        .With("rooms", List(SiteRoom), it => it.Rooms, out Slot<IReadOnlyList<SiteRoom>> rooms)
        .Optional("quietHours", List(CalendarShapes.Shift), it => it.QuietHours, (it, hours) => it with { QuietHours = hours })
        .Optional("closed", List(CalendarShapes.Interval), it => it.Closed, (it, closed) => it with { Closed = closed })
        .Optional("difficulty", Number, it => it.Difficulty, (it, factor) => it with { Difficulty = factor })
        .Making(v => new Premises { Id = id(v), Rooms = rooms(v) });

    private static ObjectShape<RoomClimate> Held() => new Fields<RoomClimate>("heldClimate")
        .With("air", Air, it => it.Air, out Slot<MoistAir> air)
        .With("surface", Quantities.Temperature, it => it.Surface, out Slot<Temperature> surface)
        .Making(v => RoomClimate.Held(air(v), surface(v)));

    private static ObjectShape<RoomClimate> Daily() => new Fields<RoomClimate>("dailyClimate")
        .With("mean", Air, it => it.Air, out Slot<MoistAir> mean)
        .With("surface", Quantities.Temperature, it => it.Surface, out Slot<Temperature> surface)
        .With("swing", Quantities.TemperatureDifference, it => it.Swing, out Slot<TemperatureDelta> swing)
        .With("warmest", Times.Clock, it => it.Warmest, out Slot<TimeSpan> warmest)
        .MakingTogether(
            () => RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(20), Ratio.FromPercent(50)),
                Temperature.FromDegreesCelsius(20)),
            v => RoomClimate.Daily(mean(v), surface(v), swing(v), warmest(v)));

    private static ObjectShape<RoomClimate> Logged() => new Fields<RoomClimate>("loggedClimate")
        .With("log", History, it => it.Log!, out Slot<TemperatureHistory> log)
        .With("dewPoint", Quantities.Temperature, it => it.DewPoint, out Slot<Temperature> dewPoint)
        .With("surface", Quantities.Temperature, it => it.Surface, out Slot<Temperature> surface)
        .MakingTogether(
            () => RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(20), Ratio.FromPercent(50)),
                Temperature.FromDegreesCelsius(20)),
            v => RoomClimate.Logged(log(v), dewPoint(v), surface(v)));
}
