using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>The coats of one fixture in order, and the slip-resistant grains between two of them.</summary>
internal sealed class CoatList(Procedure procedure)
{
    private readonly FixtureJob fixture = procedure.Fixture;

    public List<PlannedCoat> Coats { get; } = [];

    public List<string> Refusals { get; } = [];

    public SlipResistantFloor? SlipFloor { get; private set; }

    public void Make()
    {
        List<CoatingLayer> coats = [];
        List<(int Into, SystemStep Step)> broadcasts = [];
        foreach (SystemStep step in procedure.System.Steps)
        {
            coats.AddRange(Enumerable.Repeat(step.Layer!, step.Layer?.Coats ?? 0));
            if (step.Kind == SystemStepKind.SlipResistantBroadcast && coats.Count > 0)
            {
                broadcasts.Add((coats.Count - 1, step));
            }
        }

        HashSet<int> grains = [.. broadcasts.Select(one => one.Into)];
        foreach ((int into, SystemStep step) in broadcasts)
        {
            Grains(step.Additive!, step.BroadcastRate!.Value, Ratio.FromPercent(20), coats.Skip(into));
        }

        FixtureOption? slip = fixture.Options.FirstOrDefault(option => option.Kind == FixtureOptionKind.SlipResistantFloor);
        if (slip is not null && grains.Count > 0)
        {
            Refusals.Add("The system " + procedure.System.Name + " already has a slip-resistant floor, so that " + slip.Code + " would be a second one.");
        }
        else if (slip is not null && (coats.Count < 2 || coats[coats.Count - 2].Product.Role < CoatingRole.Topcoat))
        {
            Refusals.Add("The grains of " + slip.Code + " need two coats over the primer, one to fall into and one to lock them in.");
        }
        else if (slip is not null)
        {
            grains.Add(coats.Count - 2);
            Grains(slip.Additive!, slip.Rate, slip.Loss, coats.Skip(coats.Count - 2));
        }

        for (int i = 0; i < coats.Count; i++)
        {
            Coats.Add(new PlannedCoat(coats[i], i + 1, grains.Contains(i)));
        }
    }

    // The film around the grains is the coat they fall into and all that follow.
    private void Grains(SlipAdditive additive, AreaDensity rate, Ratio loss, IEnumerable<CoatingLayer> around)
    {
        double floor = fixture.ShareFraction * fixture.Fixture.Zones
            .Where(zone => zone.Kind == FixtureZoneKind.Floor && (fixture.Zones is null || fixture.Zones.Contains(zone.Kind)))
            .Sum(zone => zone.Area.SquareMeters);
        if (floor <= 0)
        {
            Refusals.Add("There is no floor among the zones of " + fixture.Name + " for slip-resistant grains.");
            return;
        }

        double densest = SlipResistantFloor.Densest(additive);
        if (rate.KilogramsPerSquareMeter > densest)
        {
            Refusals.Add(Measure.ArealMass.Format(rate.KilogramsPerSquareMeter, DisplayUnits.Si, 3) + " of " + additive.Name + " do not fit side by side on the floor of "
                + fixture.Name + "; broadcast at most " + Measure.ArealMass.Format(densest, DisplayUnits.Si, 3) + ", or other grains.");
            return;
        }

        double film = around.Sum(layer => layer.DryFilmPerCoat.Meters);
        SlipFloor = new SlipResistantFloor(Area.FromSquareMeters(floor), additive, rate, Length.FromMeters(film), loss);
    }
}
