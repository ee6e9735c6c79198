using System;
using System.Collections.Generic;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Curing;
using Refinish.Jobs;
using Refinish.Scheduling;
using UnitsNet;

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
        .With("dryBulb", Quantities.Temperature, air => air.DryBulb, out Slot<Temperature> dryBulb)
        .With("relativeHumidity", Quantities.Percent, air => air.RelativeHumidity, out Slot<Ratio> relativeHumidity)
        .WithOr("pressure", Quantities.Pressure.OrNull(), air => air.Pressure, null, out Slot<Pressure?> pressure)
        .Making(v => pressure(v) is Pressure given
            ? new MoistAir(dryBulb(v), relativeHumidity(v), given) : new MoistAir(dryBulb(v), relativeHumidity(v)));

    public static ObjectShape<TemperatureSegment> Segment { get; } = new Fields<TemperatureSegment>("temperatureSegment")
        .With("duration", Quantities.Duration, segment => segment.Duration, out Slot<TimeSpan> duration)
        .With("temperature", Quantities.Temperature, segment => segment.Temperature, out Slot<Temperature> temperature)
        .Making(v => new TemperatureSegment(duration(v), temperature(v)));

    public static ObjectShape<TemperatureHistory> History { get; } = new Fields<TemperatureHistory>("temperatureHistory")
        .With("start", Times.Instant, history => history.Start, out Slot<DateTimeOffset> start)
        .With("segments", CommonShapes.List(Segment), history => history.Segments, out Slot<IReadOnlyList<TemperatureSegment>> segments)
        .WithOr("lastHoldsOn", Scalars.YesNo, history => history.LastHoldsOn, false, out Slot<bool> lastHoldsOn)
        .MakingTogether(
            () => TemperatureHistory.Constant(new DateTimeOffset(2000, 1, 3, 8, 0, 0, TimeSpan.Zero), Temperature.FromDegreesCelsius(20)),
            v => new TemperatureHistory(start(v), segments(v), lastHoldsOn(v)));

    public static OneOfShape<RoomClimate> Climate { get; } = new OneOfShape<RoomClimate>("roomClimate")
        .Or("held", Held(), climate => climate.Kind == RoomClimateKind.Held)
        .Or("daily", Daily(), climate => climate.Kind == RoomClimateKind.Daily)
        .Or("logged", Logged());

    public static ObjectShape<SiteRoom> SiteRoom { get; } = new Fields<SiteRoom>("siteRoom")
        .With("id", Scalars.Text, room => room.Id, out Slot<string> id)
        .MaybeOf("name", Scalars.Text, room => Said.Name(room.Name, room.Id, room, one => one with { Name = one.Name }),
            (room, name) => room with { Name = name })
        .With("room", Room, room => room.Room, out Slot<Room> size)
        .With("exhaust", Exhaust, room => room.Exhaust, out Slot<Exhaust> exhaust)
        .With("climate", Climate, room => room.Climate, out Slot<RoomClimate> climate)
        .Making(v => new SiteRoom { Id = id(v), Room = size(v), Exhaust = exhaust(v), Climate = climate(v) });

    public static ObjectShape<Premises> Premises { get; } = new Fields<Premises>("premises")
        .With("id", Scalars.Text, premises => premises.Id, out Slot<string> id)
        .MaybeOf("name", Scalars.Text, premises => Said.Name(premises.Name, premises.Id, premises, one => one with { Name = one.Name }),
            (premises, name) => premises with { Name = name })
        .With("rooms", CommonShapes.List(SiteRoom), premises => premises.Rooms, out Slot<IReadOnlyList<SiteRoom>> rooms)
        .Optional("quietHours", CommonShapes.List(CalendarShapes.Shift), premises => premises.QuietHours,
            (premises, hours) => premises with { QuietHours = hours })
        .Optional("closed", CommonShapes.List(CalendarShapes.Interval), premises => premises.Closed,
            (premises, closed) => premises with { Closed = closed })
        .Optional("difficulty", Scalars.Number, premises => premises.Difficulty,
            (premises, factor) => premises with { Difficulty = factor })
        .Making(v => new Premises { Id = id(v), Rooms = rooms(v) });

    private static ObjectShape<RoomClimate> Held() => new Fields<RoomClimate>("heldClimate")
        .With("air", Air, climate => climate.Air, out Slot<MoistAir> air)
        .With("surface", Quantities.Temperature, climate => climate.Surface, out Slot<Temperature> surface)
        .Making(v => RoomClimate.Held(air(v), surface(v)));

    private static ObjectShape<RoomClimate> Daily() => new Fields<RoomClimate>("dailyClimate")
        .With("mean", Air, climate => climate.Air, out Slot<MoistAir> mean)
        .With("surface", Quantities.Temperature, climate => climate.Surface, out Slot<Temperature> surface)
        .With("swing", Quantities.TemperatureDifference, climate => climate.Swing, out Slot<TemperatureDelta> swing)
        .With("warmest", Times.Clock, climate => climate.Warmest, out Slot<TimeSpan> warmest)
        .MakingTogether(
            () => RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(20), Ratio.FromPercent(50)),
                Temperature.FromDegreesCelsius(20)),
            v => RoomClimate.Daily(mean(v), surface(v), swing(v), warmest(v)));

    private static ObjectShape<RoomClimate> Logged() => new Fields<RoomClimate>("loggedClimate")
        .With("log", History, climate => climate.Log!, out Slot<TemperatureHistory> log)
        .With("dewPoint", Quantities.Temperature, LoggedDewPoint.Of, out Slot<Temperature> dewPoint)
        .With("surface", Quantities.Temperature, climate => climate.Surface, out Slot<Temperature> surface)
        .MakingTogether(
            () => RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(20), Ratio.FromPercent(50)),
                Temperature.FromDegreesCelsius(20)),
            v => RoomClimate.Logged(log(v), dewPoint(v), surface(v)));
}
