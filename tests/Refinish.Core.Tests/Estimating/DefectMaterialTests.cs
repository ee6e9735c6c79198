using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class DefectMaterialTests
{
    private static readonly Area Tub = Area.FromSquareMeters(2.6);

    private static readonly Defect[] Every =
    [
        new Chip(Mm(30), Mm(2)), new RustSpot(Mm(15)), new RustSpot(Mm(40)), new Crazing(Ratio.FromPercent(30)), new PeelingCoat(Area.FromSquareMeters(2), null),
        new SiliconeResidue(Length.FromMeters(3)), new GroutFailure(Length.FromMeters(2)), new Pitting(Area.FromSquareMeters(0.1), Mm(0.3), Ratio.FromPercent(20)), new Burn(Mm(12)),
    ];

    private static Length Mm(double mm) => Length.FromMillimeters(mm);

    [Fact]
    [Evidence(Basis.Independent, "by hand: 30 % of 2.6 m² at 150 ft²/gal = 0.05597 gal = 0.2119 L; rust 40 mm with 12 mm around: π 32² mm² = 32.17 cm² at 150 ft²/gal and 5 mL = 5.874 mL")]
    public void Materials_of_defects()
    {
        double Of(string item, params Defect[] defects) => DefectMaterials.For(defects, Tub).Single(need => need.Item == item).Amount.In(LineUnit.Millilitre);
        Numbers.Near(211.9, Of("sealing-primer", new Crazing(Ratio.FromPercent(30))), 0.05);
        Numbers.Near(5.874, Of("spot-primer", new RustSpot(Mm(40))), 5e-4);
        Assert.Empty(DefectMaterials.For([new Chip(Mm(30), Mm(2))], Tub));

        // Whether a crack is reinforced depends on what it is in, which nobody said here.
        Assert.Empty(DefectMaterials.For([new Crack(Mm(300), Mm(1), Mm(1), false)], Tub));
    }

    [Property]
    [Evidence(Basis.Identity, "the order of the survey does not matter; a further defect never takes less of anything")]
    public void Defects_add_up(int seed)
    {
        Random random = new(seed);
        Defect[] some = [.. Every.Where(_ => random.Next(2) == 0)];
        Defect[] shuffled = [.. some.OrderBy(_ => random.Next())];
        Assert.Equal(DefectMaterials.For(some, Tub), DefectMaterials.For(shuffled, Tub));
        Defect[] more = [.. some, Every[random.Next(Every.Length)]];
        foreach (MaterialNeed need in DefectMaterials.For(some, Tub))
        {
            Assert.True(DefectMaterials.For(more, Tub).Single(other => other.Item == need.Item).Amount.Volume >= need.Amount.Volume);
        }
    }

    [Property]
    [Evidence(Basis.Identity, "a further or larger defect never lowers hours, materials, cost or price")]
    public void A_worse_survey_never_lowers_the_price(int seed)
    {
        Random random = new(seed);
        Defect[] some = [.. Every.Where(_ => random.Next(2) == 0)];
        decimal Price(Defect[] defects) => new PriceEstimate(Book, new EstimateRequest
        {
            Labour = new LabourEstimate([new LabourTask { Standard = LabourStandards.SetUp, Units = 1 }, .. LabourStandards.ForDefects(defects)]),
            Materials = DefectMaterials.For(defects, Tub),
            Fixtures = 1,
        }).Total!.Value;
        Assert.True(Price([.. some, Every[random.Next(Every.Length)]]) >= Price(some));
        int size = 1 + random.Next(90);
        Assert.True(Price([.. some, new Chip(Mm(size + 10), Mm(0.5))]) >= Price([.. some, new Chip(Mm(size), Mm(0.5))]));
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; a caller's own figures replace the generic ones")]
    public void Refuses_what_cannot_be()
    {
        DefectMaterial own = DefectMaterials.Generic[0] with { Item = "own-primer", Name = "own primer", Each = Volume.FromMilliliters(8), Coverage = null };
        Numbers.Close(16, DefectMaterials.For(Every, Tub, [own]).Single().Amount.In(LineUnit.Millilitre), 1e-12);
        IReadOnlyList<MaterialNeed> much = DefectMaterials.For(
            [new Crazing(Ratio.FromPercent(100))], Area.FromSquareMeters(10_000));   // at 3.68136 m²/L
        Assert.Equal(2716, Math.Round(Assert.Single(much).Amount.In(LineUnit.Litre)));
        Assert.Equal(["spot-primer", "sealing-primer", "grout", "laminating-resin"], DefectMaterials.Generic.Select(standard => standard.Item));
        Numbers.Refuses("fixtureArea", () => DefectMaterials.For([], Area.Zero));
        Numbers.Refuses("Each", () => _ = own with { Each = Volume.FromLiters(11) });
        Numbers.Refuses("Work", () => _ = own with { Work = (WorkKind)99 });
        Assert.Throws<ArgumentNullException>(() => own with { Repairs = null! });
        Assert.Equal("own primer for RustSpot", own.ToString());
        Assert.All(DefectMaterials.Generic, standard => Assert.Equal(SourceKind.Invented, standard.Source.Kind));
    }

    private static PriceBook Book => new()
    {
        Currency = Currency.Of("USD"),
        LabourRate = 30m,
        TravelPerTrip = 25m,
        DisposalPerJob = 10m,
        ConsumablesPerFixture = 35m,
        Materials = [.. DefectMaterials.Generic.Select(standard => new MaterialPrice(standard.Item, Volume.FromMilliliters(250), 12m))],
        TargetMargin = new Margin(Ratio.FromPercent(40)),
    };
}
