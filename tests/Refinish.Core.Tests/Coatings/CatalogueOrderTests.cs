using System.Linq;
using Refinish.Coatings;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coatings;

/// <summary>The order of the trade and the limit of volatile organic compounds, over every system of the invented catalogue.</summary>
public class CatalogueOrderTests
{
    [Fact]
    [Evidence(Basis.Contract, "clean, key, neutralise and rinse, filler, promoter, primer, finish, clear: no system of the catalogue breaks the order of the trade")]
    public void No_sequence_breaks_the_order()
    {
        SystemStepKind[] order =
        [
            SystemStepKind.Clean, SystemStepKind.Etch, SystemStepKind.Abrade, SystemStepKind.RinseAndDry, SystemStepKind.Filler,
            SystemStepKind.AdhesionPromoter, SystemStepKind.Primer, SystemStepKind.Topcoat, SystemStepKind.ClearCoat,
        ];
        Assert.Equal(GenericCatalogue.Systems.Count, GenericCatalogue.Systems.Select(system => system.Id).Distinct().Count());
        foreach (CoatingSystem system in GenericCatalogue.Systems)
        {
            SystemStep[] steps = [.. system.Steps.Where(step => step.Kind is not SystemStepKind.SlipResistantBroadcast)];
            int[] places = [.. steps.Select(step => System.Array.IndexOf(order, step.Kind))];
            Assert.Equal(places.OrderBy(place => place), places);
            Assert.All(places, place => Assert.True(place >= 0));
            for (int i = 0; i < steps.Length; i++)
            {
                if (steps[i].Kind == SystemStepKind.Etch)
                {
                    Assert.Equal(SystemStepKind.RinseAndDry, steps[i + 1].Kind);
                    Assert.Contains("neutralise", steps[i + 1].Name, System.StringComparison.Ordinal);
                }
            }

            FixtureMaterial suits = system.Steps.First(step => step.Promoter is not null).Materials[0];
            Assert.Empty(system.ObjectionsFor(suits));
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "an etchant that is not rinsed off before the next step is objected to")]
    public void An_etchant_that_stays_is_objected_to()
    {
        CoatingSystem tub = GenericCatalogue.SlipResistantTub;
        CoatingSystem left = new("left", "etchant left on", tub.Steps.Where(step => step.Kind != SystemStepKind.RinseAndDry), null, tub.Source);
        Assert.Contains(left.ObjectionsFor(FixtureMaterial.EnamelledSteel), objection => objection.Contains("neutralised"));
    }

    // By hand from the cans: primer (2·1500·0.211 + 990·0.372)/3 = 333.8 g/L, with 5 % of 860 g/L 358.8; topcoat
    // (4·1280·0.299 + 1050·0.25)/5 = 358.7, with 5 % of 880 g/L 383.5 (0.05 % of the reducer is water).
    [Fact]
    [Evidence(Basis.Independent, "by hand from densities and solids of the cans")]
    public void The_high_solids_system_stays_within_the_limit()
    {
        foreach (VocLimit limit in VocLimits.All)
        {
            var voc = GenericCatalogue.HighSolidsSystem.Voc(limit);
            Numbers.Near(358.8, voc["high-solids-primer"].Value!.Value.Si, 0.1);
            Numbers.Near(383.5, voc["high-solids-topcoat"].Value!.Value.Si, 0.1);
            Assert.All(voc.Values, comparison => Assert.Equal(ComparisonOutcome.Within, comparison.Outcome));
            Assert.All(voc.Values, comparison => Assert.Equal(limit.Source, comparison.Source));
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "a system beyond the limit says so by product, with the limit's source")]
    public void The_others_say_that_they_do_not()
    {
        foreach (CoatingSystem system in GenericCatalogue.Systems.Where(system => system.Id != "high-solids"))
        {
            Assert.All(system.Voc(VocLimits.SouthCoast1113).Values, comparison => Assert.Equal(ComparisonOutcome.Beyond, comparison.Outcome));
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "the data sheets of the high-solids products are at one with themselves")]
    public void High_solids_data_agree()
    {
        foreach (CoatingProduct product in new[] { GenericCatalogue.HighSolidsPrimer, GenericCatalogue.HighSolidsTopcoat })
        {
            DataSheetCheck check = new(product);
            Assert.Empty(check.Contradictions);
            Assert.True(check.Findings.Count >= 3);
        }
    }
}
