using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

/// <summary>Materials by volume, mass, area, length and piece, in kits and loose. All prices are invented.</summary>
public class MaterialPriceTests
{
    private static readonly LineUnit[] Sold =
    [
        LineUnit.Each, LineUnit.Millilitre, LineUnit.Litre, LineUnit.UsFluidOunce, LineUnit.UsQuart, LineUnit.UsGallon, LineUnit.Gram,
        LineUnit.Kilogram, LineUnit.Pound, LineUnit.Metre, LineUnit.Foot, LineUnit.SquareMetre, LineUnit.SquareFoot,
    ];

    [Fact]
    [Evidence(Basis.Independent, "by hand: 60 m² from rolls of 50 m² at 15.00 and 0.40 a m² loose: a roll and 10 m² cost 15 + 4 = 19, two rolls 30, loose alone 24; 85 m²: a roll and 35 m² cost 29, two rolls 30")]
    public void A_roll_and_the_rest_loose()
    {
        MaterialPrice[] film = [new("film", Area.FromSquareMeters(50), 15m), MaterialPrice.Loose("film", LineUnit.SquareMetre, 0.40m)];
        KitPurchase sixty = new(Area.FromSquareMeters(60), film);
        Assert.Equal(19m, sixty.Cost);
        Assert.Equal([(1m, LineUnit.Kit, 15m, "50-m2"), (10m, LineUnit.SquareMetre, 0.40m, "square-metre")],
            sixty.Lines.Select(line => (line.Quantity, line.Unit, line.Rate, line.Key)));
        Assert.Equal(["film, kit of 50 m²", "film, by the m²"], sixty.Lines.Select(line => line.Description));
        Assert.Equal(0, sixty.LeftOver.In(LineUnit.SquareMetre), 9);
        Assert.Equal(29m, new KitPurchase(Area.FromSquareMeters(85), film).Cost);
        Assert.Equal(30m, new KitPurchase(Area.FromSquareMeters(95), film).Cost);   // 15 + 45 × 0.40 = 33
        Assert.Equal(4m, new KitPurchase(Area.FromSquareMeters(10), film).Cost);
        Assert.Equal(15m, new KitPurchase(Area.FromSquareMeters(40), film).Cost);   // 16 loose
        Assert.True(sixty.IsProvenCheapest);
        Assert.Equal(18m, sixty.LeastPossible, 9);   // 60 × 15 / 50
        Numbers.CanBeWritten(sixty.Workings(Currency.Of("USD")));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 12.5 discs are 13; a box of ten at 6.00 and three at 0.75 cost 8.25, thirteen loose 9.75, two boxes 12")]
    public void Pieces_are_whole()
    {
        MaterialPrice[] discs = [MaterialPrice.Loose("disc", LineUnit.Each, 0.75m), new("disc", MaterialAmount.FromPieces(10), 6m)];
        KitPurchase purchase = new(MaterialAmount.FromPieces(12.5), discs);
        Assert.Equal(8.25m, purchase.Cost);
        Assert.Equal([("each", 3m, LineUnit.Each), ("10-each", 1m, LineUnit.Kit)], purchase.Lines.Select(line => (line.Key, line.Quantity, line.Unit)));
        Assert.Equal(0.5, purchase.LeftOver.Pieces!.Value, 9);
        Assert.Equal("disc, by the piece", purchase.Lines[0].Description);
        Numbers.CanBeWritten(purchase.Workings(Currency.Of("EUR")));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 500 mL at 1.6 g/mL are 0.8 kg; 5 kg at 30.00, or 9.00 a kg loose: 7.20; 2.4 kg at 1.2 g/mL are 2 L, two litres at 7.00 are 14.00")]
    public void A_density_turns_volume_and_mass_into_each_other()
    {
        MaterialNeed grout = new("grout", "grout", Volume.FromMilliliters(500), Density.FromGramsPerMilliliter(1.6));
        MaterialPrice[] byMass = [new("grout", Mass.FromKilograms(5), 30m), MaterialPrice.Loose("grout", LineUnit.Kilogram, 9m)];
        KitPurchase loose = new(grout, byMass);
        Assert.Equal(7.20m, loose.Cost);
        Assert.Equal((0.8m, LineUnit.Kilogram), (loose.Lines[0].Quantity, loose.Lines[0].Unit));
        Assert.Equal(500, loose.Bought.In(LineUnit.Millilitre), 6);
        Numbers.CanBeWritten(loose.Workings(Currency.Of("USD")));
        KitPurchase bag = new(grout, [byMass[0]]);
        Assert.Equal("5000-g", Assert.Single(bag.Lines).Key);
        Assert.Equal(5000 / 1.6 - 500, bag.LeftOver.In(LineUnit.Millilitre), 6);
        Numbers.CanBeWritten(bag.Workings(Currency.Of("USD")));
        MaterialNeed heavy = new("epoxy", "epoxy", Mass.FromKilograms(2.4), Density.FromGramsPerMilliliter(1.2));
        Assert.Equal(14m, new KitPurchase(heavy, [new("epoxy", Volume.FromLiters(1), 7m)]).Cost);

        // 0.8 kg by volume and mass on offer together: 1 L at 4.00 holds 1.6 kg.
        Assert.Equal(4m, new KitPurchase(grout, [.. byMass, new("grout", Volume.FromLiters(1), 4m)]).Cost);
    }

    [Fact]
    [Evidence(Basis.Contract, "what no price serves is a gap that says why and never costs nothing; a price that does not serve is told beside one that does")]
    public void What_cannot_be_bought_is_a_gap()
    {
        PriceEstimate Of(MaterialNeed need, params MaterialPrice[] prices) => new(
            new PriceBook { Currency = Currency.Of("USD"), DisposalPerJob = 0m, TravelPerTrip = 0m, Materials = prices },
            new EstimateRequest { Labour = new LabourEstimate([]), Materials = [need], Fixtures = 0 });
        MaterialPrice bag = new("grout", Mass.FromKilograms(5), 30m);
        MaterialNeed volume = new("grout", "grout", Volume.FromMilliliters(500));
        PriceEstimate unknown = Of(volume, bag);
        Assert.Equal("material/grout", Assert.Single(unknown.Gaps).Id);
        Assert.Contains("needed by volume and sold by mass, and its density is not known", unknown.Gaps[0].Missing, StringComparison.Ordinal);
        Assert.Null(unknown.Total);
        Assert.Equal(30m, Of(new("grout", "grout", Volume.FromMilliliters(500), Density.FromKilogramsPerLiter(1.6)), bag).Cost);
        PriceEstimate tape = Of(new MaterialNeed("tape", "tape", Length.FromMeters(30)), MaterialPrice.Loose("tape", LineUnit.Each, 3m), new("tape", Area.FromSquareMeters(2), 5m));
        Assert.Contains("needed by length and sold by the piece and by area, and nothing turns one into the other", Assert.Single(tape.Gaps).Missing, StringComparison.Ordinal);
        Assert.Contains("no price of it", Assert.Single(Of(volume).Gaps).Missing, StringComparison.Ordinal);
        KitPurchase both = new(volume, [bag, new("grout", Volume.FromLiters(1), 12m)]);
        Assert.Equal(12m, both.Cost);
        Assert.Equal([bag], both.Unused);
        Assert.Contains("density", Assert.Throws<ArgumentException>(() => new KitPurchase(volume, [bag])).Message, StringComparison.Ordinal);

        // Where one item is needed by area and by length, each is priced, or is a gap of its own.
        PriceEstimate two = new(
            new PriceBook { Currency = Currency.Of("USD"), DisposalPerJob = 0m, TravelPerTrip = 0m, Materials = [MaterialPrice.Loose("film", LineUnit.Each, 1m)] },
            new EstimateRequest
            {
                Labour = new LabourEstimate([]), Fixtures = 0,
                Materials = [new("film", "film", Area.FromSquareMeters(2)), new("film", "film", Length.FromMeters(2)), new("film", "film", Area.FromSquareMeters(1))],
            });
        Assert.Equal(["material/film", "material/film/length"], two.Gaps.Select(gap => gap.Id));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 300 mL and 0.48 kg at 1.6 g/mL are 600 mL together, whatever the order: one litre at 12.00, and not one for each")]
    public void Needs_of_one_item_are_bought_together()
    {
        MaterialNeed volume = new("grout", "grout", Volume.FromMilliliters(300));
        MaterialNeed mass = new("grout", "grout", Mass.FromKilograms(0.48), Density.FromKilogramsPerLiter(1.6));
        foreach (MaterialNeed[] needs in new[] { new[] { volume, mass }, [mass, volume] })
        {
            PriceEstimate estimate = new(
                new PriceBook { Currency = Currency.Of("USD"), DisposalPerJob = 0m, TravelPerTrip = 0m, Materials = [new("grout", Volume.FromLiters(1), 12m)] },
                new EstimateRequest { Labour = new LabourEstimate([]), Materials = needs, Fixtures = 0 });
            Assert.Equal(12m, estimate.Cost);
            Assert.Equal(600, Assert.Single(estimate.Purchases).Need.In(LineUnit.Millilitre), 6);
        }
    }

    [Property(MaxTest = 300)]
    [Evidence(Basis.Independent, "every combination of up to three kits by mass tried one by one in whole grams, the rest at the loose rate by volume through the density, in ten-thousandths of a litre")]
    public void As_cheap_as_trying_everything(int seed)
    {
        Random random = new(seed);
        int kits = random.Next(0, 4);
        int[] size = [.. Enumerable.Range(0, kits).Select(_ => random.Next(200, 4000))];
        int[] price = [.. Enumerable.Range(0, kits).Select(_ => random.Next(1, 200))];
        decimal loose = random.Next(1, 200) / 4m;
        int need = random.Next(0, 9000);

        // At 0.5 g/mL a gram is 2 mL, so that loose litres come out in ten-thousandths without rounding.
        decimal Cheapest(int kit, int open) => open <= 0 ? 0
            : kit == kits ? open * 0.002m * loose
            : Enumerable.Range(0, ((open + size[kit] - 1) / size[kit]) + 1).Min(n => (n * price[kit]) + Cheapest(kit + 1, open - (n * size[kit])));
        KitPurchase purchase = new(
            new MaterialNeed("x", "x", Mass.FromGrams(need), Density.FromGramsPerMilliliter(0.5)),
            [MaterialPrice.Loose("x", LineUnit.Litre, loose), .. size.Select((grams, i) => new MaterialPrice("x", Mass.FromGrams(grams), price[i]))]);
        Assert.Equal(Cheapest(0, need), purchase.Cost);
        Assert.Equal(purchase.Cost, purchase.Lines.Sum(line => line.Cost));
        Assert.True(purchase.IsProvenCheapest);
        Assert.True(purchase.Bought.In(LineUnit.Gram) >= need - 1e-6);
        Assert.True(purchase.Cost >= purchase.LeastPossible - 1e-9m);
        Assert.Equal(purchase.Lines.Count, purchase.Lines.Select(line => line.Key).Distinct().Count());
    }

    [Property(MaxTest = 60)]
    [Evidence(Basis.Independent, "forty sizes at once against the recursion cost(v) = min over sizes of price + cost(v − size), in whole millilitres")]
    public void Forty_sizes(int seed)
    {
        Random random = new(seed);
        int[] size = [.. Enumerable.Range(0, 40).Select(i => 50 + (i * 60) + random.Next(0, 60))];
        int[] price = [.. size.Select(ml => (int)(20 * Math.Pow(ml, 0.7)) + random.Next(0, 200))];
        int need = random.Next(1, 12_000);
        long[] cost = new long[need + 1];
        for (int v = 1; v <= need; v++)
        {
            cost[v] = Enumerable.Range(0, 40).Min(i => price[i] + cost[Math.Max(0, v - size[i])]);
        }

        KitPurchase purchase = new(Volume.FromMilliliters(need), [.. size.Select((ml, i) => new MaterialPrice("x", Volume.FromMilliliters(ml), price[i] / 100m))]);
        Assert.True(purchase.IsProvenCheapest);
        Assert.Equal(cost[need] / 100m, purchase.Cost);
    }

    [Property(MaxTest = 200)]
    [Evidence(Basis.Identity, "a price per US gallon costs as much as the same price per litre, within the ten-thousandths in which each is bought; more need never costs less; a further price never makes it dearer")]
    public void Units_needs_and_offers(PositiveInt a, PositiveInt b, int seed)
    {
        Random random = new(seed);
        double litres = a.Get % 20_000 / 1000.0;
        decimal gallon = 1 + (b.Get % 400);
        KitPurchase byGallon = new(Volume.FromLiters(litres), [MaterialPrice.Loose("x", LineUnit.UsGallon, gallon)]);
        KitPurchase byLitre = new(Volume.FromLiters(litres), [MaterialPrice.Loose("x", LineUnit.Litre, gallon / 3.785411784m)]);
        Assert.InRange(byGallon.Cost - byLitre.Cost, -0.0001m * gallon, 0.0001m * gallon);
        Assert.InRange(byLitre.Cost - byLitre.LeastPossible, -1e-9m, 0.0001m * gallon);

        List<MaterialPrice> offer = [MaterialPrice.Loose("x", LineUnit.Litre, random.Next(1, 3000) / 100m), new("x", Volume.FromMilliliters(random.Next(100, 4000)), random.Next(1, 90))];
        KitPurchase few = new(Volume.FromLiters(litres), offer);
        Assert.True(new KitPurchase(Volume.FromLiters(litres + random.Next(0, 2000) / 1000.0), offer).Cost >= few.Cost);
        offer.Insert(random.Next(0, 3), random.Next(2) == 0
            ? new("x", Volume.FromMilliliters(random.Next(100, 4000)), random.Next(1, 90))
            : MaterialPrice.Loose("x", LineUnit.UsQuart, random.Next(1, 3000) / 100m));
        KitPurchase more = new(Volume.FromLiters(litres), offer);
        Assert.True(more.Cost <= few.Cost);
        Assert.Equal(more.Cost, new KitPurchase(Volume.FromLiters(litres), [.. offer.AsEnumerable().Reverse()]).Cost);
    }

    [Property(MaxTest = 100)]
    [Evidence(Basis.Independent, "the staircase that simulations use agrees with a purchase made for each need, to the ten-thousandths of the loose unit")]
    public void The_staircase_is_the_purchase(int seed)
    {
        Random random = new(seed);
        decimal loose = random.Next(1, 2000) / 100m;
        MaterialPrice[] offer =
        [
            .. random.Next(5) == 0 ? [] : new[] { new MaterialPrice("x", Volume.FromMilliliters(random.Next(100, 4000)), random.Next(1, 60)), new("x", Volume.FromMilliliters(random.Next(100, 4000)), random.Next(1, 60)) },
            MaterialPrice.Loose("x", LineUnit.Litre, loose),
        ];
        KitStaircase staircase = new(new KitPurchase(Volume.FromLiters(1), offer), 2e-3, 9e-3);
        for (int i = 0; i < 20; i++)
        {
            double need = random.NextDouble() * 11e-3;
            Numbers.Near((double)new KitPurchase(Volume.FromCubicMeters(need), offer).Cost, staircase.CostOf(need), (double)loose * 1e-4 + 1e-9);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "an unrounded need is bought in ten-thousandths of the unit, up; rates may have more decimals than money; hundreds of loose millilitres too")]
    public void Loose_amounts_are_rounded_up()
    {
        KitPurchase purchase = new(Volume.FromMilliliters(1234.56789), [MaterialPrice.Loose("x", LineUnit.Litre, 12.3456m)]);
        Assert.Equal(1.2346m, Assert.Single(purchase.Lines).Quantity);
        Assert.Equal(1.2346m * 12.3456m, purchase.Cost);
        Assert.Equal("1.2346 L × x, per L, at 12.3456: 15.24187776; in all 15.24", purchase.ToString());
        Assert.Equal(1m, new KitPurchase(Volume.FromUsGallons(1), [MaterialPrice.Loose("x", LineUnit.UsGallon, 1m)]).Cost);
        Assert.Equal(3m, new KitPurchase(Length.FromFeet(3), [MaterialPrice.Loose("x", LineUnit.Foot, 1m)]).Cost);
        Assert.Equal(1_000_000_000m, new KitPurchase(Volume.FromCubicMeters(1000), [MaterialPrice.Loose("x", LineUnit.Millilitre, 1m)]).Cost);
    }

    [Fact]
    [Evidence(Basis.Contract, "amounts: equal by number in SI, shown with it, refused in another dimension; each unit of material is sold and no other")]
    public void Amounts_and_units()
    {
        Assert.Equal((MaterialAmount)Mass.FromGrams(1000), Mass.FromKilograms(1));
        Assert.NotEqual((MaterialAmount)Volume.FromLiters(1), Mass.FromKilograms(0.001));
        Assert.Equal(10.7639, MaterialAmount.FromArea(Area.FromSquareMeters(1)).In(LineUnit.SquareFoot), 4);   // 1 / 0.3048²
        Assert.Equal(2.20462, MaterialAmount.FromMass(Mass.FromKilograms(1)).In(LineUnit.Pound), 5);           // NIST SP 811, Appendix B
        Assert.Throws<InvalidOperationException>(() => MaterialAmount.FromPieces(2).In(LineUnit.Litre));
        Assert.Equal(["1.5 L", "2 kg", "3 m²", "4 m", "1 piece", "5 pieces"], new MaterialAmount[]
        {
            Volume.FromLiters(1.5), Mass.FromKilograms(2), Area.FromSquareMeters(3), Length.FromMeters(4), MaterialAmount.FromPieces(1), MaterialAmount.FromPieces(5),
        }.Select(amount => amount.ToString()));
        foreach (LineUnit unit in Enum.GetValues<LineUnit>())
        {
            if (Sold.Contains(unit))
            {
                Assert.Equal(unit, MaterialPrice.Loose("x", unit, 1m).Unit);
            }
            else
            {
                Numbers.Refuses("unit", () => _ = MaterialPrice.Loose("x", unit, 1m));
            }
        }

        Assert.Equal(Sold.Length, Sold.Select(unit => MaterialPrice.Loose("x", unit, 1m).ToString()).Distinct().Count());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("size", () => _ = new MaterialPrice("x", MaterialAmount.FromPieces(2.5), 1m));
        Numbers.Refuses("size", () => _ = new MaterialPrice("x", MaterialAmount.FromPieces(0), 1m));
        Numbers.Refuses("size", () => _ = new MaterialPrice("x", Mass.FromGrams(0.5), 1m));
        Numbers.Refuses("size", () => _ = new MaterialPrice("x", Area.FromSquareMeters(-1), 1m));
        Numbers.Refuses("size", () => _ = new MaterialPrice("x", MaterialAmount.FromPieces(double.NaN), 1m));
        Numbers.Refuses("price", () => _ = MaterialPrice.Loose("x", LineUnit.Litre, -1m));
        Numbers.Refuses("amount", () => _ = new MaterialNeed("x", "x", Length.FromMeters(-1)));
        Numbers.Refuses("amount", () => _ = new MaterialNeed("x", "x", MaterialAmount.FromPieces(1e7)));
        Numbers.Refuses("density", () => _ = new MaterialNeed("x", "x", Volume.FromLiters(1), Density.FromGramsPerMilliliter(0.01)));
        Assert.Throws<ArgumentException>(() => new MaterialNeed("x", "x", Area.FromSquareMeters(1), Density.FromGramsPerMilliliter(1)));
        Numbers.Refuses("need", () => _ = new KitPurchase(Mass.FromKilograms(2e6), [MaterialPrice.Loose("x", LineUnit.Kilogram, 1m)]));
        Assert.Equal("nothing to buy", new KitPurchase(Mass.Zero, [MaterialPrice.Loose("x", LineUnit.Kilogram, 1m)]).ToString());
    }
}
