using Refinish.Air;
using Refinish.Climate;
using Refinish.Coverage;
using Refinish.Films;
using Refinish.Jobs;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>The room on the day, the gun, the cup, and the clock and calendar of the site.</summary>
internal static class SiteShapes
{
    public static ObjectShape<SprayGun> Gun { get; } = new Fields<SprayGun>("sprayGun")
        .With("fluidRate", Quantities.FluidRate, gun => gun.FluidRate, out Slot<VolumeFlow> fluidRate)
        .With("transferEfficiency", Quantities.Percent, gun => gun.TransferEfficiency, out Slot<Ratio> transferEfficiency)
        .Optional("triggerFraction", Quantities.Percent, gun => gun.TriggerFraction, (gun, share) => gun with { TriggerFraction = share })
        .Making(v => new SprayGun { FluidRate = fluidRate(v), TransferEfficiency = transferEfficiency(v) });

    public static ObjectShape<BatchRules> Batches { get; } = new Fields<BatchRules>("batchRules")
        .With("cupVolume", Quantities.Liquid, rules => rules.CupVolume, out Slot<Volume> cupVolume)
        .Optional("graduation", Quantities.Liquid, rules => rules.Graduation, (rules, step) => rules with { Graduation = step })
        .Optional("smallestBatch", Quantities.Liquid, rules => rules.SmallestBatch, (rules, volume) => rules with { SmallestBatch = volume })
        .Optional("potLifeShare", Quantities.Percent, rules => rules.PotLifeShare, (rules, share) => rules with { PotLifeShare = share })
        .Optional("mixingTime", Quantities.Duration, rules => rules.MixingTime, (rules, time) => rules with { MixingTime = time })
        .Making(v => new BatchRules { CupVolume = cupVolume(v) });

    public static ObjectShape<Room> Room { get; } = new Fields<Room>("room")
        .With("length", Quantities.Distance, room => room.Length, out Slot<Length> length)
        .With("width", Quantities.Distance, room => room.Width, out Slot<Length> width)
        .With("height", Quantities.Distance, room => room.Height, out Slot<Length> height)
        .Optional("airPressure", Quantities.Pressure, room => room.AirPressure, (room, pressure) => room with { AirPressure = pressure })
        .Optional("infiltration", Quantities.Airflow, room => room.Infiltration, (room, flow) => room with { Infiltration = flow })
        .Maybe("airTemperature", Quantities.Temperature, room => room.AirTemperature, (room, temperature) => room with { AirTemperature = temperature })
        .MakingTogether(
            () => new Room(Length.FromMeters(3), Length.FromMeters(2), Length.FromMeters(2.5)),
            v => new Room(length(v), width(v), height(v)));

    public static ObjectShape<Exhaust> Exhaust { get; } = new Fields<Exhaust>("exhaust")
        .With("labelFlow", Quantities.Airflow, exhaust => exhaust.LabelFlow, out Slot<VolumeFlow> labelFlow)
        .Optional("deliveredFraction", Quantities.Percent, exhaust => exhaust.DeliveredFraction, (exhaust, share) => exhaust with { DeliveredFraction = share })
        .Optional("mixingFactor", Scalars.Number, exhaust => exhaust.MixingFactor, (exhaust, factor) => exhaust with { MixingFactor = factor })
        .Making(v => new Exhaust { LabelFlow = labelFlow(v) });

    public static ObjectShape<MoistAir> Air { get; } = new Fields<MoistAir>("moistAir")
        .With("dryBulb", Quantities.Temperature, air => air.DryBulb, out Slot<Temperature> dryBulb)
        .With("relativeHumidity", Quantities.Percent, air => air.RelativeHumidity, out Slot<Ratio> relativeHumidity)
        .WithOr("pressure", Quantities.Pressure.OrNull(), air => air.Pressure, null, out Slot<Pressure?> pressure)
        .Making(v => new MoistAir(dryBulb(v), relativeHumidity(v), pressure(v)));

    public static ObjectShape<SiteConditions> Site { get; } = new Fields<SiteConditions>("siteConditions")
        .With("room", Room, site => site.Room, out Slot<Room> room)
        .With("exhaust", Exhaust, site => site.Exhaust, out Slot<Exhaust> exhaust)
        .With("air", Air, site => site.Air, out Slot<MoistAir> air)
        .With("surface", Quantities.Temperature, site => site.Surface, out Slot<Temperature> surface)
        .Maybe("airborneFraction", Quantities.Percent, site => site.AirborneFraction, (site, share) => site with { AirborneFraction = share })
        .Maybe("isocyanateLimit", Quantities.Concentration, site => site.IsocyanateLimit, (site, limit) => site with { IsocyanateLimit = limit })
        .Optional("isocyanateLimitSource", CommonShapes.Source, site => site.IsocyanateLimitSource, (site, source) => site with { IsocyanateLimitSource = source })
        .Optional("filmTimeConstant", Quantities.Duration, site => site.FilmTimeConstant, (site, time) => site with { FilmTimeConstant = time })
        .Making(v => new SiteConditions { Room = room(v), Exhaust = exhaust(v), Air = air(v), Surface = surface(v) });
}
