using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Chemicals of the preparation: how much, what it gives off, what waits for it.</summary>
public class PrepChemicalTests
{
    private static readonly Room Bath = new() { Length = Length.FromMeters(2.5), Width = Length.FromMeters(1.5), Height = Length.FromMeters(2.4) };   // 9 m³

    private static readonly Exhaust Fan = new()
    {
        LabelFlow = VolumeFlow.FromCubicMetersPerHour(180), DeliveredFraction = Ratio.FromPercent(100), MixingFactor = 3,
    };

    private static PrepChemical Of(string id) => PrepChemicals.Generic.Single(chemical => chemical.Id == id);

    [Fact]
    [Evidence(Basis.Independent, "by hand: 2 m² = 21.528 ft² of stripper at 1.5 gal for 100 ft² = 0.32292 US gal = 1.2224 L, of which "
        + "1.05 kg/L × 45 % = 577.6 g are solvent; 3 m of joint at 50 mL and 20 mL = 170 mL of silicone remover, 0.86 × 90 % = 131.58 g")]
    public void Amounts_come_out_as_by_hand()
    {
        Volume stripper = Of("stripper").Amount(Area.FromSquareMeters(2), Length.FromMeters(3));
        Numbers.Near(1222.4, stripper.Milliliters, 0.05);
        Numbers.Near(577.6, Of("stripper").Vapour(stripper)!.Mass.Grams, 0.05);
        Volume remover = Of("silicone-remover").Amount(Area.FromSquareMeters(2), Length.FromMeters(3));
        Numbers.Close(170, remover.Milliliters);
        Numbers.Close(131.58, Of("silicone-remover").Vapour(remover)!.Mass.Grams);
        Assert.Null(Of("descaler").Vapour(Volume.FromLiters(1)));
        Assert.Null(Of("degreaser").Vapour(Volume.FromLiters(1)));
        Assert.All(PrepChemicals.Generic, chemical => Assert.True(chemical.IsVapourStated));
        Assert.All(PrepChemicals.Generic, chemical => Assert.Equal(SourceKind.Invented, chemical.Source.Kind));
    }

    [Fact]
    [Evidence(Basis.Contract, "no exception for methylene chloride; ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => _ = Of("stripper") with
        {
            Solvents = [new SolventShare(Solvents.BenzylAlcohol, Ratio.FromPercent(98)), new SolventShare(Solvents.MethyleneChloride, Ratio.FromPercent(2))],
        });
        Assert.Equal("Solvents", refused.ParamName);
        Assert.Contains("methylene chloride", refused.Message, StringComparison.Ordinal);
        Assert.Contains("40 CFR 751 subpart B", refused.Message, StringComparison.Ordinal);
        foreach (WorkKind kind in new[] { WorkKind.SprayTopcoat, WorkKind.Promote, WorkKind.CleanGun, WorkKind.Warm, WorkKind.Caulk })
        {
            Numbers.Refuses("For", () => _ = Of("stripper") with { For = kind });
        }

        Numbers.Refuses("Density", () => _ = Of("stripper") with { Density = Density.FromGramsPerMilliliter(0.2) });
        Numbers.Refuses("VolatileFraction", () => _ = Of("stripper") with { VolatileFraction = Ratio.FromPercent(101) });
        Numbers.Refuses("Dwell", () => _ = Of("stripper") with { Dwell = TimeSpan.FromHours(25) });
        Numbers.Refuses("TimeConstant", () => _ = Of("stripper") with { TimeConstant = TimeSpan.Zero });
        Numbers.Refuses("Each", () => _ = Of("stripper") with { Each = Volume.FromLiters(11) });
        Numbers.Refuses("PerMeterOfJoint", () => _ = Of("stripper") with { PerMeterOfJoint = Volume.FromLiters(-1) });
        Numbers.Refuses("Solvents", () => _ = Of("stripper") with { Solvents = [new SolventShare(Solvents.Acetone, Ratio.FromPercent(90))] });
        Numbers.Refuses("area", () => Of("stripper").Amount(Area.FromSquareMeters(-1), Length.Zero));
        Numbers.Refuses("TakenOffAfter", () => _ = Of("stripper").Vapour(Volume.FromLiters(1))! with { TakenOffAfter = TimeSpan.FromHours((14 * 24) + 1) });
        Assert.Throws<ArgumentException>(() => _ = InventedJobs.Shop with { Chemicals = [Of("stripper"), Of("stripper")] });
    }

    [Theory]
    [InlineData("silicone-remover", 0.17, 40)]
    [InlineData("stripper", 1.6, 90)]
    [InlineData("alcohol-wipe", 0.09, 20)]
    [Evidence(Basis.Independent, "film and air of a box of 9 m³ with 60 m³/h of fresh air, stepped by a tenth of a second: what is taken off gives "
        + "off mass over time constant for as long as it lies, a wipe all of it by its film")]
    public void A_puff_comes_out_as_stepped(string id, double litres, double minutes)
    {
        PrepChemical chemical = Of(id);
        Evaporation vapour = chemical.Vapour(Volume.FromLiters(litres))!;
        AirStudy study = new(Bath, Fan, [.. RoomAir.Of(vapour, [(TimeSpan.Zero, TimeSpan.FromMinutes(minutes))])], TimeSpan.FromHours(8));

        double grams = litres * 1000 * chemical.Density.GramsPerMilliliter * chemical.VolatileFraction!.Value.DecimalFractions;
        double tau = chemical.TimeConstant.TotalSeconds;
        double work = minutes * 60;
        double lies = work + (chemical.Dwell?.TotalSeconds ?? 0);
        const double Step = 0.1;
        double film = 0;
        double air = 0;
        double gone = 0;
        double peak = 0;
        for (double t = 0; t < lies + 7200; t += Step)
        {
            double fresh = t < work ? grams / work : 0;
            double release = chemical.Dwell is null ? film / tau : t < lies ? grams / tau : 0;
            film += Step * (fresh - (chemical.Dwell is null ? release : 0));
            gone += Step * air * 60 / 9 / 3600;
            air += Step * (release - (air * 60 / 9 / 3600));
            peak = Math.Max(peak, air / 9);
        }

        SubstanceAir substance = study.Substances.Single();
        Numbers.Close(peak, substance.PeakConcentration.GramsPerCubicMeter, 2e-3);
        Numbers.Close(chemical.Dwell is null ? grams : grams * lies / tau, substance.Released.Grams, 1e-9);
        Numbers.Close(substance.Released.Grams, gone + air + (chemical.Dwell is null ? film : 0), 1e-3);
    }

    [Fact]
    [Evidence(Basis.Identity, "more of a chemical, and one that is more volatile or dries faster, never lowers the peak; what is taken off never gives off more than "
        + "it holds, and pieces of work add up to the whole")]
    public void More_never_makes_less()
    {
        Random random = new(7);
        for (int i = 0; i < 60; i++)
        {
            PrepChemical chemical = PrepChemicals.Generic[new[] { 0, 1, 4 }[random.Next(3)]];
            double litres = 0.02 + (3 * random.NextDouble());
            TimeSpan minutes = TimeSpan.FromMinutes(random.Next(1, 400));
            double Peak(PrepChemical of, double amount) => new AirStudy(
                Bath, Fan, [.. RoomAir.Of(of.Vapour(Volume.FromLiters(amount))!, [(TimeSpan.Zero, minutes)])], TimeSpan.FromHours(8)).Substances[0].PeakConcentration.KilogramsPerCubicMeter;
            double peak = Peak(chemical, litres);
            Assert.True(Peak(chemical, litres * 1.3) >= peak);
            Assert.True(Peak(chemical with { VolatileFraction = Ratio.FromPercent(95) }, litres) >= peak * (1 - 1e-9));
            Assert.True(Peak(chemical with { TimeConstant = TimeSpan.FromTicks(chemical.TimeConstant.Ticks / 3) }, litres) >= peak * (1 - 1e-9));

            Evaporation vapour = chemical.Vapour(Volume.FromLiters(litres))!;
            double all = RoomAir.Of(vapour, [(TimeSpan.Zero, minutes), (TimeSpan.FromHours(20), minutes)]).Sum(one => one.VolatileMass.Grams);
            Assert.True(all <= vapour.Mass.Grams * (1 + 1e-9));
            if (vapour.TakenOffAfter is null)
            {
                Numbers.Close(vapour.Mass.Grams, all, 1e-9);
            }
        }

        Evaporation overDays = Of("alcohol-wipe").Vapour(Volume.FromLiters(1))!;
        Numbers.Close(overDays.Mass.Grams, RoomAir.Of(overDays, [(TimeSpan.Zero, TimeSpan.FromHours(60))]).Sum(one => one.VolatileMass.Grams), 1e-9);
    }

    [Fact]
    [Evidence(Basis.Contract, "chemicals ride on their operations and are bought; an acid only where acid may be used; what is released in the room is what the "
        + "operations hold, less what is taken off again")]
    public void Chemicals_ride_on_their_operations()
    {
        JobPlan plan = InventedJobs.OccupiedHouse().Plan();
        Refinish.Jobs.Operation Find(string id) => plan.Operations.Single(operation => operation.Id == id);
        Assert.Contains(Find("bath/remove-silicone").Materials, need => need.Item == "silicone-remover" && Math.Abs(need.Amount.In(LineUnit.Millilitre) - 140) < 1e-9);
        Assert.Contains(Find("bath/descale").Materials, need => need.Item == "descaler");
        Assert.Empty(Find("bath/descale").Vapours);
        Assert.Contains(Find("bath/descale").Cautions, caution => caution.Code == "acid-cleaner");
        Assert.Contains(plan.Price!.Purchases, kit => kit.Item == "degreaser");

        ScheduledOperation remove = plan.Schedule!.TryFind("bath/remove-silicone")!;
        SubstanceAir limonene = plan.Air[0].Study!.Substances.Single(air => air.Solvent.CasNumber == Solvents.Limonene.CasNumber);
        Numbers.Close(140 * 0.86 * 0.9 * ((remove.End - remove.Start).TotalHours + 0.5) / 4, limonene.Released.Grams, 1e-9);
        SubstanceAir alcohol = plan.Air[0].Study!.Substances.Single(air => air.Solvent.CasNumber == Solvents.Isopropanol.CasNumber);
        Numbers.Close(plan.Operations.SelectMany(operation => operation.Vapours).Where(vapour => vapour.Solvents[0].Solvent.CasNumber == Solvents.Isopropanol.CasNumber)
            .Sum(vapour => vapour.Mass.Grams), alcohol.Released.Grams, 1e-9);

        Job job = InventedJobs.OccupiedHouse();
        FixtureJob plastic = job.Fixtures[0] with { Survey = new Survey { Material = FixtureMaterial.Acrylic, Defects = [], YearBuilt = 1995 } };
        JobPlan mild = (job with { Shop = job.Shop with { System = GenericCatalogue.ClearedPlastic }, Fixtures = [plastic] }).Plan();
        Assert.Empty(mild.Operations.Single(operation => operation.Id == "bath/descale").Materials);
    }

    [Fact]
    [Evidence(Basis.Contract, "a chemical or filler whose vapour is not stated cannot be judged; one without solvent is no question")]
    public void What_is_not_stated_cannot_be_judged()
    {
        Job job = InventedJobs.OccupiedHouse();
        IEnumerable<string> Unstated(Shop shop) => (job with { Shop = shop }).Plan().Air[0].Unstated.Select(one => one.Subject);
        Assert.Empty(Unstated(job.Shop));
        PrepChemical quiet = Of("degreaser") with { Name = "secret cleaner", VolatileFraction = null };
        Assert.Contains("vapour of secret cleaner", Unstated(job.Shop with { Chemicals = [quiet] }));
        PrepChemical half = quiet with { VolatileFraction = Ratio.FromPercent(5) };
        Assert.Contains("vapour of secret cleaner", Unstated(job.Shop with { Chemicals = [half] }));
        Assert.Empty(Unstated(job.Shop with { Chemicals = [quiet with { For = WorkKind.Strip }] }));
        Assert.Contains(
            Unstated(job.Shop with { Filler = job.Shop.Filler with { Product = FillerProduct.GenericPolyester } }), subject => subject.Contains("styrene", StringComparison.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "the dwell belongs to the product: it is scraped off after it, the next work waits for the air as well, and somebody stands by; a "
        + "chemical that is not used makes nobody wait")]
    public void The_next_work_waits_for_the_dwell()
    {
        Job job = InventedJobs.OccupiedHouse();
        Survey peeling = job.Fixtures[0].Survey with { Defects = [new PeelingCoat(Area.FromSquareMeters(0.4), AdhesionGrade.Grade2B)], PreviouslyRefinished = true, OldCoatAdhesion = AdhesionGrade.Grade2B };
        JobPlan Stripped(TimeSpan dwell) => (job with
        {
            Shop = job.Shop with { Chemicals = [Of("stripper") with { Dwell = dwell }] },
            Fixtures = [job.Fixtures[0] with { Survey = peeling }],
        }).Plan();
        foreach (int hours in new[] { 1, 3, 20 })
        {
            JobPlan plan = Stripped(TimeSpan.FromHours(hours));
            ScheduledOperation laid = plan.Schedule!.TryFind("bath/lay-on-stripper")!;
            ScheduledOperation strip = plan.Schedule.TryFind("bath/strip")!;
            ScheduledOperation next = plan.Schedule.TryFind("bath/descale")!;
            Assert.True(strip.Start - laid.End >= TimeSpan.FromHours(hours));
            Assert.True(laid.Operation.Clearing >= TimeSpan.FromHours(hours));
            Assert.True(next.Start >= strip.End + strip.Operation.Clearing || next.People.All(strip.People.Contains));
            Assert.Contains(plan.Operations, operation => operation.Beside == "bath/lay-on-stripper" && operation.Kind == WorkKind.StandBy);
            Assert.Contains(plan.Operations, operation => operation.Beside == "bath/strip" && operation.Kind == WorkKind.StandBy);
        }

        // Laid on in the afternoon and left over night it gives off its vapour all night: mass over time constant, by the hours between.
        JobPlan night = Stripped(TimeSpan.FromHours(8));
        TimeSpan lies = night.Schedule!.TryFind("bath/strip")!.Start - night.Schedule.TryFind("bath/lay-on-stripper")!.Start;
        Assert.True(lies > TimeSpan.FromHours(12));
        Refinish.Air.Emission[] lying = [.. night.Air[0].Study!.Emissions.Where(emission => emission.Name == Of("stripper").Name && emission.Start < lies)];
        Mass whole = night.Operations.Single(operation => operation.Id == "bath/lay-on-stripper").Vapours.Single().Mass;
        Numbers.Close(whole.Grams * lies.TotalHours / 48, lying.Sum(emission => emission.VolatileMass.Grams), 1e-3);

        JobPlan plain = (job with { Shop = job.Shop with { Chemicals = [.. PrepChemicals.Generic.Where(chemical => chemical.Id != "silicone-remover")] } }).Plan();
        Assert.DoesNotContain(plain.Operations, operation => operation.Beside == "bath/remove-silicone");
        Assert.Equal(TimeSpan.Zero, plain.Operations.Single(operation => operation.Id == "bath/remove-silicone").Clearing);
    }
}
