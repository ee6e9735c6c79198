using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>The promoters of one room: what is wiped together, and whether each stays open until its coat is on.</summary>
internal sealed class PromoterWipes(WorkBuilder builder, string room)
{
    // The one that stays open longest goes first.
    public List<(Operation Wipe, AdhesionPromoter Promoter)> Of(List<Procedure> group, bool alone)
    {
        List<(Operation, AdhesionPromoter)> wipes = [];
        foreach (IGrouping<AdhesionPromoter, Procedure> same in group.Where(procedure => procedure.Promoter is not null)
            .GroupBy(procedure => procedure.Promoter!).OrderByDescending(same => same.Key.OpenTime).ThenBy(same => same.Key.Id, StringComparer.Ordinal))
        {
            AdhesionPromoter promoter = same.Key;
            string id = room + "/" + WorkOrder.Key(WorkKind.Promote) + "/" + promoter.Id;
            if (alone || builder.Operations.Exists(operation => operation.Id == id))
            {
                id += "/" + same.First().Fixture.Id;
            }

            Operation merged = Merge.Of(
                id,
                [.. same.SelectMany(procedure => procedure.Common.Where(operation => operation.Kind == WorkKind.Promote))]);
            wipes.Add((promoter.Solvents.Count == 0 ? merged : merged with
            {
                Vapours =
                [
                    new Evaporation
                    {
                        Name = promoter.Name,
                        Mass = WipeEmission.VolatileMassOf(
                            Area.FromSquareMeters(same.Sum(procedure => procedure.SquareMeters)), Length.FromMeters(1 / promoter.SpreadingRate.SquareMetersPerCubicMeter), Volume.Zero, promoter.Solvents),
                        Solvents = promoter.Solvents,
                    },
                ],
            }, promoter));
        }

        return wipes;
    }

    // Each promoter has to stay open, from the end of its wipe, over the wipes that follow, the last one's drying, and the coat.
    public bool Fit(CoatRun run, List<(Operation Wipe, AdhesionPromoter Promoter)> wipes)
    {
        TimeSpan coat = CarefulTime.Up(run.Duration);
        TimeSpan following = TimeSpan.Zero;
        for (int i = wipes.Count - 1; i >= 0; i--)
        {
            (Operation wipe, AdhesionPromoter promoter) = wipes[i];
            TimeSpan needed = following + wipes[wipes.Count - 1].Promoter.Flash;
            if (promoter.OpenTime - coat < (needed > promoter.Flash ? needed : promoter.Flash))
            {
                return false;
            }

            following += wipe.DurationAt(builder.Difficulty);
        }

        return true;
    }
}
