using System;
using System.Collections.Generic;
using Refinish.Coverage;
using Refinish.Films;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>The gun, what is lost around it, and the cups.</summary>
internal static class GunShapes
{
    public static ObjectShape<SprayGun> Gun { get; } = new Fields<SprayGun>("sprayGun")
        .Readings(SprayGun.Inputs, out Slot<InputValues> readings)
        .Making(v => new SprayGun(readings(v)));

    public static ObjectShape<ApplicationLosses> Losses { get; } = new Fields<ApplicationLosses>("applicationLosses")
        .Readings(ApplicationLosses.Inputs, out Slot<InputValues> readings)
        .Making(v => new ApplicationLosses(readings(v)));

    public static ObjectShape<MixingCup> Cup { get; } = new Fields<MixingCup>("mixingCup")
        .With("capacity", Liquid, it => it.Capacity, out Slot<Volume> capacity)
        .With("graduation", Liquid, it => it.Graduation, out Slot<Volume> graduation)
        .With("smallest", Liquid, it => it.Smallest, out Slot<Volume> smallest)
        .MakingTogether(
            () => new MixingCup(Volume.FromMilliliters(600), Volume.FromMilliliters(5), Volume.FromMilliliters(50)),
            v => new MixingCup(capacity(v), graduation(v), smallest(v)));

    public static ObjectShape<CupRules> Cups { get; } = new Fields<CupRules>("cupRules")
        .With("cups", List(Cup), it => it.Cups, out Slot<IReadOnlyList<MixingCup>> cups)
        .Optional("potLifeShare", Percent, it => it.PotLifeShare, (it, share) => it with { PotLifeShare = share })
        .Optional("mixingTime", Quantities.Duration, it => it.MixingTime, (it, time) => it with { MixingTime = time })
        .Optional("residue", Liquid, it => it.Residue, (it, volume) => it with { Residue = volume })
        .Optional("equalBatches", YesNo, it => it.EqualBatches, (it, said) => it with { EqualBatches = said })
        .Making(v => new CupRules { Cups = cups(v) });
}
