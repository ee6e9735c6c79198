using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Substrates;

public class FillerTests
{
    private static readonly FillerPolicy Epoxy = new() { Product = FillerProduct.GenericEpoxy };

    private static Length Mm(double mm) => Length.FromMillimeters(mm);

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: 318.35 mm³ × 1.25 / (1 − s) / 0.85 with s 7 % and 2 %; sink 2 mm × s; no published source")]
    public void Mixed_filler_and_sink()
    {
        Chip chip = new(Mm(20), Mm(2));
        FillerVolume polyester = new(chip, FillerPolicy.Generic);
        FillerVolume epoxy = new(chip, Epoxy);
        Numbers.Near(503.4, polyester.Mixed.CubicMillimeters, 0.05);
        Numbers.Near(477.7, epoxy.Mixed.CubicMillimeters, 0.05);
        Numbers.Near(0.14, polyester.Sink.Millimeters, 1e-12);
        Numbers.Near(5.5, polyester.Sink.Mils, 0.05);
        Numbers.Near(1.6, epoxy.Sink.Mils, 0.05);
        Assert.Equal(ComparisonOutcome.Beyond, polyester.SinkAgainstFilm.Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, epoxy.SinkAgainstFilm.Outcome);
        Numbers.Near(5.88, FillerProduct.VolumeShrinkage(Ratio.FromPercent(2)).Percent, 0.005);
    }

    [Theory]
    [InlineData(2, 1)]
    [InlineData(3, 1)]
    [InlineData(3.1, 2)]
    [InlineData(9, 3)]
    [Evidence(Basis.Independent, "counted by hand for lifts of 3 mm")]
    public void Lifts_are_counted_up(double depth, int lifts) =>
        Assert.Equal(lifts, new FillerVolume(new Chip(Mm(40), Mm(depth)), FillerPolicy.Generic).Lifts);

    [Property]
    [Evidence(Basis.Identity, "conservation: what is laid in and shrinks is the hollow and what is sanded off; resin and hardener are the mix; workings hold to the kernel")]
    public void Filler_is_conserved(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        double d = 2 + (a.Get % 95);
        FillerPolicy policy = new()
        {
            Product = FillerProduct.GenericPolyester with { HardenerByMass = Ratio.FromPercent(1 + (b.Get % 150)), Shrinkage = Ratio.FromPercent(c.Get % 40) },
            Overfill = Ratio.FromPercent(b.Get % 90),
            Waste = Ratio.FromPercent(c.Get % 50),
        };
        FillerEstimate estimate = new(
            [new Chip(Mm(d), Mm(d / 3)), new RustSpot(Mm(d)), new Burn(Mm(d)), new WornPatch(Mm(2 * d), Mm(d), Mm(0.4)), new Crack(Mm(10 * d), Mm(1), Mm(2), false), new LooseTiles(2)],
            policy);
        foreach (FillerVolume item in estimate.Items)
        {
            Numbers.Close(
                item.Cavity.CubicMeters + item.SandedOff.CubicMeters,
                item.Applied.CubicMeters * (1 - policy.Product.Shrinkage.DecimalFractions),
                1e-12);
            Numbers.Close(item.Applied.CubicMeters, item.Mixed.CubicMeters * (1 - policy.Waste.DecimalFractions), 1e-12);
        }

        Numbers.Close(estimate.Mass.Kilograms, estimate.ResinMass.Kilograms + estimate.HardenerMass.Kilograms, 1e-12);
        Numbers.Close(policy.Product.HardenerByMass.DecimalFractions, estimate.HardenerMass.Kilograms / estimate.ResinMass.Kilograms, 1e-12);
        Assert.Single(estimate.NotFilled);
        Numbers.CanBeWritten(estimate.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "a wider or deeper defect, or one more, never takes less filler")]
    public void Worse_never_takes_less(PositiveInt a, PositiveInt b)
    {
        double d = 4 + (a.Get % 80);
        double h = d / 2 * (b.Get % 100 / 200.0 + 0.1);
        double Fill(params Defect[] defects) => new FillerEstimate(defects, FillerPolicy.Generic).Volume.CubicMeters;
        double chip = Fill(new Chip(Mm(d), Mm(h)));
        Assert.True(Fill(new Chip(Mm(d * 1.1), Mm(h))) >= chip);
        Assert.True(Fill(new Chip(Mm(d), Mm(Math.Min(d / 2, h * 1.1)))) >= chip);
        Assert.True(Fill(new Chip(Mm(d), Mm(h)), new RustSpot(Mm(d))) >= chip);
        Assert.True(Fill(new RustSpot(Mm(d + 1))) >= Fill(new RustSpot(Mm(d))));
        Assert.True(Fill(new WornPatch(Mm(d), Mm(d), Mm(h))) >= Fill(new WornPatch(Mm(d), Mm(d), Mm(h), BowlProfile.Cone)));
    }

    [Fact]
    [Evidence(Basis.Contract, "what filler does not mend is named, takes none and says so in the workings")]
    public void Other_remedies_take_no_filler()
    {
        FillerEstimate estimate = new([new Perforation(Mm(10)), new FlexingFloor(Mm(3))], FillerPolicy.Generic);
        Assert.Empty(estimate.Items);
        Assert.Equal(2, estimate.NotFilled.Count);
        Assert.Equal(0, estimate.Volume.CubicMeters);
        Assert.Equal(0, estimate.Lifts);
        Assert.Empty(estimate.Cautions);
        Numbers.CanBeWritten(estimate.Workings());
        FillerVolume none = new(new Perforation(Mm(10)), FillerPolicy.Generic);
        Assert.False(none.IsFilled);
        Assert.Equal(0, none.Sink.Meters);
        Numbers.CanBeWritten(none.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "cautions travel with the filler; defaults are visible as invented; ranges of the docstrings")]
    public void Cautions_standing_and_ranges()
    {
        FillerEstimate estimate = new([new Chip(Mm(20), Mm(2))], FillerPolicy.Generic);
        Assert.Contains(estimate.Cautions, caution => caution.Hazard == Hazard.SkinAndEyes);
        Assert.Equal(SourceKind.Invented, FillerProduct.GenericEpoxy.Source.Kind);
        Assert.Equal(SourceKind.Invented, FillerProduct.GenericPolyester.Source.Kind);
        Assert.Equal("0.5034 mL (0.90611 g) of polyester filler", estimate.ToString());
        Assert.Equal(estimate, new FillerEstimate([new Chip(Length.FromMeters(0.020), Length.FromMeters(0.002))], FillerPolicy.Generic));
        Numbers.Refuses("Shrinkage", () => _ = FillerProduct.GenericEpoxy with { Shrinkage = Ratio.FromPercent(50) });
        Numbers.Refuses("Waste", () => _ = Epoxy with { Waste = Ratio.FromPercent(90) });
        Numbers.Refuses("PotLife", () => _ = FillerProduct.GenericEpoxy with { PotLife = TimeSpan.Zero });
        Assert.Throws<ArgumentNullException>(() => new FillerEstimate(null!, Epoxy));
        Assert.Throws<ArgumentException>(() => new FillerEstimate([null!], Epoxy));
    }
}
