using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class CheapestKits : Problem
{
    public override string Floor => "Estimating";

    public override string Title => "Which cans to buy?";

    public override string Question =>
        "2490 mL of topcoat are needed. It comes in cans of 1183 mL at 78 and of 4732 mL at 240. Which to buy?";

    public override Backing Backing => Backing.WorkedApart;

    public override string Origin =>
        "By hand: three small ones at 234 beat a large one at 240; 3 · 1183 − 2490 = 1059 mL are left. Prices invented.";

    protected override Solution Work(Given given)
    {
        // shown
        Volume need = Volume.FromMilliliters(2490);
        decimal small = 78;
        decimal large = 240;
        // given
        given.Take(ref need, "topcoat that is needed");
        given.Take(ref small, "price of a can of 1183 mL");
        given.Take(ref large, "price of a can of 4732 mL");
        // shown
        KitPurchase purchase = new(need, [new("topcoat", Volume.FromMilliliters(4732), large), new("topcoat", Volume.FromMilliliters(1183), small)]);
        decimal cost = purchase.Cost;
        double leftOver = purchase.LeftOver.In(LineUnit.Millilitre);
        // end
        return new(purchase.Workings(Currency.Of("EUR")),
        [
            new("cost", Measure.Money(Currency.Of("EUR")), (double)cost, "234.00"),
            new("left over", Measure.Liquid, leftOver / 1e6, "1059"),
        ]);
    }
}
