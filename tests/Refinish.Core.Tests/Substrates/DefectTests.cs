using System;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Substrates;

public class DefectTests
{
    private static Length Mm(double mm) => Length.FromMillimeters(mm);

    [Fact]
    [Evidence(Basis.Independent, "closed forms worked by hand: cap π·2(3·100+4)/6, lens π/8·150·100·0.4, groove ½·1.5·2·300, half ellipsoid ⅔π·20·12.5·1.5, half-round groove π/8·2²·300 mm³; no published source")]
    public void Hollows_have_the_volumes_of_solid_geometry()
    {
        Numbers.Near(318.35, new Chip(Mm(20), Mm(2)).CavityVolume.CubicMillimeters, 0.005);
        Numbers.Near(2356.2, new WornPatch(Mm(150), Mm(100), Mm(0.4)).CavityVolume.CubicMillimeters, 0.05);
        Numbers.Near(450, new Crack(Mm(300), Mm(1.5), Mm(2), false).CavityVolume.CubicMillimeters, 1e-9);
        Numbers.Near(785.4, new WornPatch(Mm(40), Mm(25), Mm(1.5), BowlProfile.HalfEllipsoid).CavityVolume.CubicMillimeters, 0.05);
        Numbers.Near(471.2, new Crack(Mm(300), Mm(2), Mm(1), false, GrooveProfile.Round).CavityVolume.CubicMillimeters, 0.05);
        Numbers.Near(49.01, new LowSpot(Mm(300), Mm(200), Mm(0.6), Mm(40)).CavityVolume.Milliliters, 0.005);
    }

    [Fact]
    [Evidence(Basis.Identity, "a cap as deep as its mouth is wide from the middle is half a sphere, ⅔πa³; a skim without a feather is a box")]
    public void Limits_are_known_solids()
    {
        Numbers.Close(2.0 / 3 * Math.PI * 1000, new Chip(Mm(20), Mm(10)).CavityVolume.CubicMillimeters);
        Numbers.Close(300 * 200 * 0.6, new LowSpot(Mm(300), Mm(200), Mm(0.6), Length.Zero).CavityVolume.CubicMillimeters);
    }

    [Fact]
    [Evidence(Basis.Independent, "the cap's volume as a sum of 200 000 discs of the sphere it is cut from; no published source")]
    public void A_chip_is_the_sum_of_its_slices()
    {
        const double a = 11;
        const double h = 3;
        double radius = ((a * a) + (h * h)) / (2 * h);
        double sum = 0;
        const int slices = 200_000;
        for (int i = 0; i < slices; i++)
        {
            double z = radius - h + ((i + 0.5) * h / slices);
            sum += Math.PI * ((radius * radius) - (z * z)) * h / slices;
        }

        Numbers.Close(sum, new Chip(Mm(2 * a), Mm(h)).CavityVolume.CubicMillimeters, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Independent, "the oval chip as a sum of 200 000 ellipses, cut from a sphere of mouth radius √(ab) stretched by √(a/b) one way and pressed by as much the other; no published source")]
    public void An_oval_chip_is_the_sum_of_its_slices()
    {
        const double a = 15;
        const double b = 6;
        const double h = 2;
        double mouth = Math.Sqrt(a * b);
        double radius = ((mouth * mouth) + (h * h)) / (2 * h);
        double stretch = Math.Sqrt(a / b);
        double sum = 0;
        const int slices = 200_000;
        for (int i = 0; i < slices; i++)
        {
            double z = radius - h + ((i + 0.5) * h / slices);
            double r = Math.Sqrt((radius * radius) - (z * z));
            sum += Math.PI * (r * stretch) * (r / stretch) * h / slices;
        }

        Numbers.Close(sum, new Chip(Mm(2 * a), Mm(2 * b), Mm(h)).CavityVolume.CubicMillimeters, 1e-9);
    }

    [Property]
    [Evidence(Basis.Identity, "an oval chip as wide as it is long is the round one; as deep as half its width it is half a sphere")]
    public void An_oval_chip_has_known_limits(PositiveInt size)
    {
        double k = 1 + (size.Get % 40 / 10.0);
        Assert.Equal(new Chip(Mm(10 * k), Mm(2 * k)), new Chip(Mm(10 * k), Mm(10 * k), Mm(2 * k)));
        Numbers.Close(2.0 / 3 * Math.PI * 4 * 4 * 4 * k * k * k, new Chip(Mm(8 * k), Mm(8 * k), Mm(4 * k)).CavityVolume.CubicMillimeters, 1e-12);

        Numbers.Refuses("depth", () => _ = new Chip(Mm(16 * k), Mm(4 * k), Mm(4 * k)));
    }

    [Property]
    [Evidence(Basis.Identity, "all volumes scale with the cube of the size")]
    public void Volumes_scale_with_the_cube(PositiveInt size)
    {
        double k = 1 + (size.Get % 40 / 10.0);
        Numbers.Close(k * k * k * new Chip(Mm(10), Mm(2)).CavityVolume.CubicMeters, new Chip(Mm(10 * k), Mm(2 * k)).CavityVolume.CubicMeters, 1e-12);
        Numbers.Close(k * k * k * new WornPatch(Mm(90), Mm(40), Mm(1)).CavityVolume.CubicMeters, new WornPatch(Mm(90 * k), Mm(40 * k), Mm(k)).CavityVolume.CubicMeters, 1e-12);
        Numbers.Close(k * k * k * new Crack(Mm(90), Mm(2), Mm(1), true).CavityVolume.CubicMeters, new Crack(Mm(90 * k), Mm(2 * k), Mm(k), true).CavityVolume.CubicMeters, 1e-12);
        Numbers.CanBeWritten(new FillerVolume(new LowSpot(Mm(100 * k), Mm(50), Mm(k), Mm(10)), FillerPolicy.Generic).Workings());
        Numbers.CanBeWritten(new FillerVolume(new Chip(Mm(10 * k), Mm(7 * k), Mm(k)), FillerPolicy.Generic).Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "the shallowest hollow takes one lift of the thickest filler and can be written: n = roundup(1e-6 m / 0.1 m) = 1, Δh = s h / n")]
    public void The_shallowest_hollow_takes_one_lift()
    {
        FillerPolicy policy = FillerPolicy.Generic with
        {
            Product = FillerPolicy.Generic.Product with { MaximumLift = Mm(100) },
            RustGrindingDepth = Mm(1e-3),
        };
        foreach (Defect defect in new Defect[] { new Chip(Mm(10), Mm(1e-3)), new RustSpot(Mm(10)), new LowSpot(Mm(100), Mm(50), Mm(1e-3), Mm(10)) })
        {
            FillerVolume filler = new(defect, policy);
            Assert.Equal(1, filler.Lifts);
            Numbers.Close(policy.Product.Shrinkage.DecimalFractions * 1e-6, filler.Sink.Meters, 1e-9);
            Numbers.CanBeWritten(filler.Workings());
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; a depth beyond the mouth's radius is a mix-up")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("depth", () => _ = new Chip(Mm(10), Mm(5.01)));
        Numbers.Refuses("depth", () => _ = new Chip(Mm(10), Length.FromMeters(1e-18)));
        Numbers.Refuses("depth", () => _ = new Chip(Mm(10), Mm(8), Mm(0.9e-3)));
        Numbers.Refuses("depth", () => _ = new Hollow(Volume.FromMilliliters(1), Mm(0.9e-3)));
        Numbers.Refuses("depth", () => _ = new Crack(Mm(10), Mm(2), Mm(0.9e-3), false));
        Numbers.Refuses("depth", () => _ = new WornPatch(Mm(20), Mm(10), Mm(0.9e-3)));
        Numbers.Refuses("thickness", () => _ = new LowSpot(Mm(20), Mm(10), Mm(0.9e-3), Mm(1)));
        Numbers.Refuses("RustGrindingDepth", () => _ = FillerPolicy.Generic with { RustGrindingDepth = Length.FromMeters(2.6e-19) });
        Numbers.Refuses("diameter", () => _ = new Chip(Mm(101), Mm(1)));
        Numbers.Refuses("diameter", () => _ = new Chip(Mm(0), Mm(1)));
        Numbers.Refuses("width", () => _ = new Chip(Mm(10), Mm(11), Mm(1)));
        Numbers.Refuses("length", () => _ = new Chip(Mm(101), Mm(11), Mm(1)));
        Numbers.Refuses("width", () => _ = new LowSpot(Mm(10), Mm(11), Mm(1), Mm(1)));
        Numbers.Refuses("area", () => _ = new Liner(Area.Zero, LinerState.Loose, false));
        Numbers.Refuses("state", () => _ = new Liner(Area.FromSquareMeters(1), (LinerState)9, false));
        Numbers.Refuses("volume", () => _ = new Hollow(Volume.Zero, Mm(1)));
        Numbers.Refuses("depth", () => _ = new Hollow(Volume.FromMilliliters(1), Mm(101)));
        Assert.Throws<ArgumentException>(() => DefectKind.Own("chip"));
        Assert.Throws<ArgumentException>(() => DefectKind.Own("a/b"));
        Assert.Throws<ArgumentException>(() => DefectKind.Own(new string('x', 81)));
        Numbers.Refuses("width", () => _ = new WornPatch(Mm(10), Mm(11), Mm(1)));
        Numbers.Refuses("depth", () => _ = new WornPatch(Mm(20), Mm(10), Mm(6)));
        Numbers.Refuses("profile", () => _ = new WornPatch(Mm(20), Mm(10), Mm(1), (BowlProfile)9));
        Numbers.Refuses("width", () => _ = new Crack(Mm(1), Mm(2), Mm(1), false));
        Numbers.Refuses("diameter", () => _ = new RustSpot(Mm(-1)));
        Numbers.Refuses("diameter", () => _ = new Burn(Length.FromMeters(1)));
        Numbers.Refuses("diameter", () => _ = new Perforation(Length.Zero));
        Numbers.Refuses("deflection", () => _ = new FlexingFloor(Length.Zero));
        Numbers.Refuses("ofArea", () => _ = new Crazing(Ratio.FromPercent(101)));
        Numbers.Refuses("area", () => _ = new PeelingCoat(Area.Zero, null));
        Numbers.Refuses("adhesion", () => _ = new PeelingCoat(Area.FromSquareMeters(1), (AdhesionGrade)7));
        Numbers.Refuses("joint", () => _ = new SiliconeResidue(Length.Zero));
        Numbers.Refuses("joint", () => _ = new GroutFailure(Length.FromKilometers(2)));
        Numbers.Refuses("count", () => _ = new LooseTiles(0));
        Numbers.Refuses("share", () => _ = new Pitting(Area.FromSquareMeters(1), Mm(1), Ratio.FromPercent(0)));
        Numbers.Refuses("depth", () => _ = new Pitting(Area.FromSquareMeters(1), Mm(11), Ratio.FromPercent(10)));
        Numbers.Refuses("feather", () => _ = new LowSpot(Mm(1), Mm(1), Mm(1), Mm(-1)));
    }

    [Fact]
    [Evidence(Basis.Contract, "text in either system; equality whatever the unit")]
    public void Describes_itself()
    {
        Assert.Equal("chip 20 mm across, 2 mm deep", new Chip(Mm(20), Mm(2)).ToString());
        Assert.Equal("chip 0.5 in across, 0.0625 in deep", new Chip(Length.FromInches(0.5), Length.FromInches(0.0625)).Describe(DisplayUnits.UsCustomary));
        Assert.Equal<Defect>(new Chip(Mm(25.4), Mm(2.54)), new Chip(Length.FromMeters(0.0254), Length.FromMeters(0.00254)));
        Assert.NotEqual<Defect>(new RustSpot(Mm(5)), new Burn(Mm(5)));
        Assert.Equal("old coat peels over 2 m², adhesion 3B", new PeelingCoat(Area.FromSquareMeters(2), AdhesionGrade.Grade3B).ToString());
        Assert.Equal("crazing over 30 % of the surface", new Crazing(Ratio.FromPercent(30)).ToString());
        Assert.Equal("pitting over 0.03 m², 0.3 mm deep, 20 % of it pits", new Pitting(Area.FromSquareCentimeters(300), Mm(0.3), Ratio.FromPercent(20)).ToString());
        Numbers.Near(1800, new Pitting(Area.FromSquareCentimeters(300), Mm(0.3), Ratio.FromPercent(20)).CavityVolume.CubicMillimeters, 1e-9);
        Assert.Equal("chip 30 mm by 12 mm, 2 mm deep", new Chip(Mm(30), Mm(12), Mm(2)).ToString());
        Assert.Equal("low spot 300 mm by 200 mm, skimmed 0.6 mm thick, feathered over 40 mm", new LowSpot(Mm(300), Mm(200), Mm(0.6), Mm(40)).ToString());
        Assert.Equal("liner over 2 m², water behind it, comes off", new Liner(Area.FromSquareMeters(2), LinerState.WaterBehind, true).ToString());
        Assert.Equal("1 loose tile", new LooseTiles(1).ToString());
        Numbers.Near(110, new Perforation(Mm(10)).PatchWidth.Millimeters, 1e-9);
    }
}
