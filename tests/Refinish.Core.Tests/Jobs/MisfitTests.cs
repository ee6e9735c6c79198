using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Air;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Data of one's own that do not fit are refused or objected to where they enter.</summary>
public class MisfitTests
{
    private static CoatingProduct Hardened(double isocyanatePercent) => OwnProducts.ThreePart with
    {
        Parts = [.. OwnProducts.ThreePart.Parts.Select(part => part.Component.IsocyanateContent is null ? part : new MixPart(
            part.Component with { IsocyanateContent = Ratio.FromPercent(isocyanatePercent) }, part.Parts))],
    };

    [Fact]
    [Evidence(Basis.Contract, "a lost digit in the isocyanate content is far from one to one and stands in the way; what makers do on purpose does not")]
    public void Chemistry_that_cannot_harden_is_objected_to()
    {
        Assert.Contains(OwnProducts.With(Hardened(1.65), 2, Ratio.FromPercent(10)).Plan().Objections, one => one.Id.Contains("stoichiometry"));
        Assert.DoesNotContain(OwnProducts.With(Hardened(16.5), 2, Ratio.FromPercent(10)).Plan().Objections, one => one.Id.Contains("stoichiometry"));
    }

    [Fact]
    [Evidence(Basis.Contract, "products are bought and recorded by their identity")]
    public void Two_products_with_one_identity_are_objected_to()
    {
        Job job = OwnProducts.With(OwnProducts.ThreePart, 2, Ratio.FromPercent(10));
        CoatingSystem other = OwnProducts.With(OwnProducts.ThreePart with { Name = "another (invented)" }, 2, Ratio.FromPercent(10)).Shop.System;
        JobPlan plan = (job with { Fixtures = [job.Fixtures[0], job.Fixtures[0] with { Id = "second", System = other }] }).Plan();
        Assert.Contains(plan.Objections, one => one.Id.EndsWith("/second/identity", StringComparison.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: a quarter is stricter than a half, and a set without a share stands for a quarter")]
    public void Joined_sets_are_never_laxer_than_one_of_them()
    {
        FlammableShare Share(double percent) => FlammableShare.Quarter with { Share = Ratio.FromPercent(percent) };
        LimitSet lax = Rooms.Set() with { Flammable = Share(50) };
        Assert.Equal(25, lax.JoinedWith(LimitSets.EuropeanUnion).Flammable!.Share.Percent, 9);
        Assert.Equal(25, LimitSets.EuropeanUnion.JoinedWith(lax).Flammable!.Share.Percent, 9);
        LimitSet joined = (Rooms.Set() with { FlammableDesign = Share(20) }).JoinedWith(Rooms.Set() with { Flammable = Share(5) });
        Assert.Equal(5, joined.Flammable!.Share.Percent, 9);
        Assert.NotNull(Shop.Generic with { Limits = joined });
    }

    [Theory]
    [Evidence(Basis.Independent, "check digit by hand: of 123-86-4, 1·6 + 2·8 + 3·3 + 4·2 + 5·1 = 44")]
    [InlineData("123-86-5")]
    [InlineData("123-86-4 ")]
    [InlineData("123864")]
    public void A_mistyped_registry_number_is_refused(string number)
    {
        Assert.Throws<ArgumentException>(() => Rooms.Limit("123-86-4", 20) with { CasNumber = number });
        Assert.Throws<ArgumentException>(() => Solvents.ButylAcetate with { CasNumber = number });
        Assert.Equal("123-86-4", Rooms.Limit("123-86-4", 20).CasNumber);
    }

    [Fact]
    [Evidence(Basis.Contract, "a ready material's identity stands for that material alone; a ceiling looks down")]
    public void A_material_and_a_ceiling_that_are_none_are_refused()
    {
        FixtureMaterial slate = new()
        {
            Id = FixtureMaterial.Acrylic.Id, Name = "waxed slate", Surface = MaterialSurface.FilledPolymer, Source = Source.Invented("a test"),
        };
        FixtureJob tub = InventedJobs.OccupiedHouse().Fixtures[0];
        Assert.Throws<ArgumentException>(() => tub with { Survey = new Survey { Material = slate, Defects = [] } });
        Numbers.Refuses("slopeFromHorizontal", () => _ = new ZonePart("ceiling", FixtureZoneKind.Ceiling, Area.FromSquareMeters(1.3), Angle.Zero));
        Assert.Equal(180, new ZonePart("ceiling", FixtureZoneKind.Ceiling, Area.FromSquareMeters(1.3), Angle.FromDegrees(180)).SlopeFromHorizontal.Degrees, 9);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 3 min at 125 dB is a dose of 80 % by the 5 dB rule, and beyond 115 dB all the same")]
    public void A_dose_within_is_no_pass_for_what_is_too_loud()
    {
        NoiseDose day = new("one", [new("tool", Level.FromDecibels(125), TimeSpan.FromMinutes(3))], NoiseLimits.OshaPermissible);
        Numbers.Close(0.8, day.Dose!.Value.DecimalFractions, 1e-9);
        Assert.Equal(ComparisonOutcome.Beyond, day.Loudest.Outcome);
        Numbers.Close(10, day.Loudest.Value!.Value.Si - day.Loudest.Limit!.Value.Si, 1e-9);
        Assert.Null(new NoiseDose("one", [new("tool", Level.FromDecibels(110), TimeSpan.FromHours(4))], NoiseLimits.NioshRecommended).LeastNoiseReductionRating);
        NoiseLimit upside = NoiseLimits.OshaPermissible with { CriterionLevel = Level.FromDecibels(85), Threshold = Level.FromDecibels(110) };
        Numbers.Refuses("Threshold", () => _ = new NoiseDose("one", [], upside));
        Numbers.Refuses("Threshold", () => _ = Rooms.Set() with { Noise = [NoiseLimits.NioshRecommended, upside] });
        NoiseLimit even = NoiseLimits.OshaPermissible with { CriterionLevel = Level.FromDecibels(85), Threshold = Level.FromDecibels(85) };
        Assert.Equal([even], (Rooms.Set() with { Noise = [even] }).Noise);
    }

    [Fact]
    [Evidence(Basis.Contract, "reactions run no slower when it gets warmer")]
    public void A_rate_that_falls_with_warmth_is_refused() =>
        Assert.Throws<ArgumentException>(() => TemperatureShift.Own("falling", t => 61 - t.DegreesCelsius, Source.Invented("a test")));
}
