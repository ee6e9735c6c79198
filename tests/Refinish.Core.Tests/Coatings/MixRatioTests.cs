using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coatings;

public class MixRatioTests
{
    private static readonly Density Base = Density.FromGramsPerMilliliter(1.20);
    private static readonly Density Hardener = Density.FromGramsPerMilliliter(1.05);

    [Fact]
    [Evidence(Basis.Independent, "by hand: 4 × 1.20 g to 1 × 1.05 g is 100 : 21.875; no published source")]
    public void Four_to_one_by_volume_is_not_100_to_25_by_weight() =>
        Numbers.Close(21.875, new MixRatio(4, 1).HardenerPer100Base(Base, Hardener));

    [Property]
    [Evidence(Basis.Identity, "volume → weight → volume gives the ratio back; the fractions add up to one")]
    public void Ratios_round_trip(byte a, byte b)
    {
        MixRatio ratio = new(a + 1, b + 1);
        MixRatio back = MixRatio.FromWeight(100, ratio.HardenerPer100Base(Base, Hardener), Base, Hardener);
        Numbers.Close(ratio.BaseParts / ratio.HardenerParts, back.BaseParts / back.HardenerParts);
        Numbers.Close(1, ratio.BaseFraction.DecimalFractions + ratio.HardenerFraction.DecimalFractions);
    }

    [Fact]
    [Evidence(Basis.Contract, "parts of zero, negative and NaN are refused; the default is one part")]
    public void Refuses_parts_that_cannot_be()
    {
        Numbers.Refuses("baseParts", () => _ = new MixRatio(0, 1));
        Numbers.Refuses("hardenerParts", () => _ = new MixRatio(4, 0));
        Numbers.Refuses("hardenerParts", () => _ = new MixRatio(4, double.NaN));
        Numbers.Refuses("baseDensity", () => MixRatio.FromWeight(4, 1, Density.Zero, Hardener));
        Assert.Equal("one part", MixRatio.OnePart.ToString());
        Assert.Equal("4 : 1", new MixRatio(4, 1).ToString());
        Numbers.Close(1, default(MixRatio).BaseFraction.DecimalFractions);
    }
}
