using System;
using System.Collections.Generic;
using Refinish.Coverage;
using Refinish.Films;
using UnitsNet;

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
        .With("capacity", Quantities.Liquid, cup => cup.Capacity, out Slot<Volume> capacity)
        .With("graduation", Quantities.Liquid, cup => cup.Graduation, out Slot<Volume> graduation)
        .With("smallest", Quantities.Liquid, cup => cup.Smallest, out Slot<Volume> smallest)
        .MakingTogether(
            () => new MixingCup(Volume.FromMilliliters(600), Volume.FromMilliliters(5), Volume.FromMilliliters(50)),
            v => new MixingCup(capacity(v), graduation(v), smallest(v)));

    public static ObjectShape<CupRules> Cups { get; } = new Fields<CupRules>("cupRules")
        .With("cups", CommonShapes.List(Cup), rules => rules.Cups, out Slot<IReadOnlyList<MixingCup>> cups)
        .Optional("potLifeShare", Quantities.Percent, rules => rules.PotLifeShare, (rules, share) => rules with { PotLifeShare = share })
        .Optional("mixingTime", Quantities.Duration, rules => rules.MixingTime, (rules, time) => rules with { MixingTime = time })
        .Optional("residue", Quantities.Liquid, rules => rules.Residue, (rules, volume) => rules with { Residue = volume })
        .Optional("equalBatches", Scalars.YesNo, rules => rules.EqualBatches, (rules, said) => rules with { EqualBatches = said })
        .Making(v => new CupRules { Cups = cups(v) });
}
