using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class KitPurchaseTests
{
    private static MaterialPrice Kit(double millilitres, decimal price) => new("topcoat", Volume.FromMilliliters(millilitres), price);

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: 2490 mL from kits of 1183 mL at 78 and 4732 mL at 240: three small ones at 234; a large one at 240; no published source")]
    public void Three_small_kits_beat_one_large()
    {
        KitPurchase purchase = new(Volume.FromMilliliters(2490), [Kit(4732, 240), Kit(1183, 78)]);
        Assert.Equal(234m, purchase.Cost);
        Assert.Equal(3, Assert.Single(purchase.Lines).Quantity);
        Numbers.Near(3 * 1183 - 2490, purchase.LeftOver.In(LineUnit.Millilitre), 1e-9);
        Assert.Equal(240m, new KitPurchase(Volume.FromMilliliters(3550), [Kit(4732, 240), Kit(1183, 78)]).Cost);
    }

    [Property(MaxTest = 300)]
    [Evidence(Basis.Independent, "every combination of up to four sizes tried one by one, in whole millilitres")]
    public void As_cheap_as_trying_everything(int seed)
    {
        Random random = new(seed);
        int sizes = random.Next(1, 5);
        int[] volume = [.. Enumerable.Range(0, sizes).Select(_ => random.Next(200, 4000))];
        int[] price = [.. Enumerable.Range(0, sizes).Select(_ => random.Next(0, 200))];
        int need = random.Next(0, 9000);
        (int Cost, int Left) best = Cheapest(volume, price, need, 0, 0);
        KitPurchase purchase = new(Volume.FromMilliliters(need), [.. volume.Select((size, i) => Kit(size, price[i]))]);
        Assert.Equal(best.Cost, purchase.Cost);
        Numbers.Near(best.Left, purchase.LeftOver.In(LineUnit.Millilitre), 1e-6);
        Assert.True(purchase.IsProvenCheapest);
        Assert.True(purchase.Cost >= purchase.LeastPossible - 1e-9m);
        Assert.True(purchase.Bought.In(LineUnit.Millilitre) >= need - 1e-6);
        if (need > 0)
        {
            Numbers.CanBeWritten(purchase.Workings(Currency.Of("USD")));
            Numbers.Near((double)purchase.Cost, purchase.Workings(Currency.Of("USD")).Steps.Single(step => step.Symbol == "C").Value, 1e-9);
        }
    }

    [Property]
    [Evidence(Basis.Identity, "needing more never costs less; the order of the list does not matter; thirds make a whole")]
    public void Monotone_and_blind_to_order(PositiveInt need, PositiveInt more)
    {
        MaterialPrice[] kits = [Kit(946, 61.5m), Kit(3785, 199), Kit(473, 40)];
        double n = need.Get % 20_000;
        KitPurchase purchase = new(Volume.FromMilliliters(n), kits);
        Assert.True(new KitPurchase(Volume.FromMilliliters(n + (more.Get % 500)), kits).Cost >= purchase.Cost);
        Assert.Equal(purchase.Cost, new KitPurchase(Volume.FromMilliliters(n), [.. kits.AsEnumerable().Reverse()]).Cost);
        Assert.Equal(3, new KitPurchase(Volume.FromMilliliters(10 + n), [Kit((10 + n) / 3, 10)]).Lines[0].Quantity);
    }

    [Fact]
    [Evidence(Basis.Contract, "many sizes at one price per volume, and a need of hundreds of kits, are still answered at once")]
    public void Large_needs_are_answered()
    {
        MaterialPrice[] kits = [.. new[] { 1, 2, 4, 8, 16, 32 }.Select(k => Kit(250 * k, 10 * k))];
        KitPurchase purchase = new(Volume.FromMilliliters(777_777), kits);
        Assert.Equal(31_120m, purchase.Cost);
        Assert.True(purchase.IsProvenCheapest);
        Numbers.Near(778_000 - 777_777, purchase.LeftOver.In(LineUnit.Millilitre), 1e-3);
        MaterialPrice[] uneven = [Kit(473.176, 41.3m), Kit(946.353, 78.2m), Kit(3785.412, 281), Kit(1182.94, 90.55m), Kit(4731.765, 340)];
        Assert.True(new KitPurchase(Volume.FromLiters(950), uneven).Cost >= 950_000 / 4731.765m * 340);

        // Seven odd sizes at one price per volume: a sum that fits to the millilitre ends the search.
        MaterialPrice[] odd = [.. new[] { 1117, 1733, 2311, 2999, 3613, 4241, 4897 }.Select(ml => Kit(ml, ml / 20m))];
        KitPurchase fitting = new(Volume.FromMilliliters(812_571.5), odd);
        Assert.Equal(812_572 / 20m, fitting.Cost);
        Assert.True(fitting.IsProvenCheapest);
    }

    [Fact]
    [Evidence(Basis.Contract, "too many near equals to rule out: the best found is handed out and the purchase says so; a million kits are an answer")]
    public void An_early_stop_is_told()
    {
        KitPurchase many = new(Volume.FromLiters(999_999.9995), [Kit(1, 0.01m), Kit(1.0000001, 0.0100000011m)]);
        Assert.False(many.IsProvenCheapest);
        Assert.True(many.Cost >= many.LeastPossible);
        Assert.True(many.Cost <= many.LeastPossible * 1.001m);
        Assert.True(many.Bought.In(LineUnit.Litre) >= many.Need.In(LineUnit.Litre) - 1e-9);
        Assert.Equal(1_000_000, new KitPurchase(Volume.FromLiters(1000), [Kit(1, 5)]).Lines.Single().Quantity);
        MaterialPrice[] hundred = [.. Enumerable.Range(1, 100).Select(i => Kit(100 + (7 * i), 10 + (0.69m * i)))];
        KitPurchase wide = new(Volume.FromLiters(33), hundred);
        Assert.True(wide.Cost >= wide.LeastPossible && wide.Cost <= wide.LeastPossible * 1.01m);
    }

    [Fact]
    [Evidence(Basis.Contract, "of two prices for one size, in whatever unit, the lower counts, and a size has one line; kits at no cost are taken")]
    public void One_size_is_bought_at_one_price()
    {
        MaterialPrice[] gallons = [new("topcoat", Volume.FromUsGallons(1), 61m), new("topcoat", Volume.FromLiters(3.785411784), 60m), Kit(1000, 30)];
        KitPurchase two = new(Volume.FromUsGallons(2), gallons);
        Assert.Equal(60m, Assert.Single(two.Lines).Price.Price);
        Assert.Equal(120m, two.Cost);
        KitPurchase free = new(Volume.FromMilliliters(1001), [Kit(400, 0), Kit(900, 0)]);
        Assert.Equal(0m, free.Cost);
        Assert.True(free.IsProvenCheapest);
        Numbers.Near(199, free.LeftOver.In(LineUnit.Millilitre), 1e-6);
    }

    [Fact]
    [Evidence(Basis.Contract, "a purchase for the need of a job carries its item and name")]
    public void A_need_names_its_purchase()
    {
        KitPurchase purchase = new(new MaterialNeed("topcoat", "white topcoat", Volume.FromMilliliters(1500)), [Kit(1000, 50)]);
        Assert.Equal("topcoat", purchase.Item);
        Assert.Equal("Kits of white topcoat", purchase.Workings(Currency.Of("USD")).Title);
        Assert.Throws<ArgumentException>(() => new KitPurchase(new MaterialNeed("primer", "primer", Volume.Zero), [Kit(1000, 50)]));
    }

    [Fact]
    [Evidence(Basis.Contract, "nothing needed, nothing bought; bad input refused")]
    public void Edges()
    {
        KitPurchase nothing = new(Volume.Zero, [Kit(1000, 50)]);
        Assert.Empty(nothing.Lines);
        Assert.Equal(0, nothing.Cost);
        Assert.Equal("nothing to buy", nothing.ToString());
        Numbers.Refuses("need", () => _ = new KitPurchase(Volume.FromMilliliters(-1), [Kit(1000, 50)]));
        Numbers.Refuses("need", () => _ = new KitPurchase(Volume.FromCubicMeters(1001), [Kit(100, 50)]));
        Numbers.Refuses("size", () => _ = Kit(0, 5));
        Numbers.Refuses("price", () => _ = Kit(1, -5));
        Assert.Throws<ArgumentException>(() => new KitPurchase(Volume.Zero, []));
        Assert.Throws<ArgumentException>(() => new KitPurchase(Volume.Zero, [Kit(10, 1), new MaterialPrice("primer", Volume.FromLiters(1), 1)]));
        Assert.Equal(Kit(1000, 5), new MaterialPrice("topcoat", Volume.FromLiters(1), 5m));
    }

    private static (int Cost, int Left) Cheapest(int[] volume, int[] price, int open, int cost, int kit)
    {
        if (open <= 0)
        {
            return (cost, -open);
        }

        if (kit == volume.Length)
        {
            return (int.MaxValue, int.MaxValue);
        }

        (int Cost, int Left) best = (int.MaxValue, int.MaxValue);
        for (int n = 0; (n - 1) * volume[kit] < open; n++)
        {
            (int Cost, int Left) trial = Cheapest(volume, price, open - (n * volume[kit]), cost + (n * price[kit]), kit + 1);
            if (trial.CompareTo(best) < 0)
            {
                best = trial;
            }
        }

        return best;
    }
}
