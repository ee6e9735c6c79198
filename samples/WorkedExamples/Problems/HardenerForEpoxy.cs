using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class HardenerForEpoxy : Problem
{
    public override string Floor => "Coatings";

    public override string Title => "How much hardener does an epoxy resin take?";

    public override string Question =>
        "A resin has an epoxide equivalent of 200 g/eq. The hardener is an amine of 103 g/mol with five active hydrogens. How many parts go to a hundred parts of resin by weight?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Resin consultant's page (kraska.biz): diethylenetriamine, 10.3 parts per hundred.";

    protected override Solution Work(Given given)
    {
        // shown
        MolarMass epoxideEquivalent = MolarMass.FromGramsPerMole(200);
        MolarMass molarMass = MolarMass.FromGramsPerMole(103);
        int activeSites = 5;
        // given
        given.Take(ref epoxideEquivalent, "grams of resin that hold one mole of epoxide");
        given.Take(ref molarMass, "molar mass of the amine");
        given.Take(ref activeSites, "active hydrogens of one molecule");
        // shown
        EpoxyAmine mix = new(epoxideEquivalent, EquivalentWeights.OfMolecule(molarMass, activeSites));
        double partsPerHundred = mix.PartsPerHundred;
        // end
        return new(mix.Workings(), [new("hardener to 100 of resin", Measure.Number, partsPerHundred, "10.3")]) { Cautions = mix.Cautions };
    }
}
