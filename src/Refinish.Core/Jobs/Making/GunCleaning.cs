using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>The gun of one room, cleaned before another product and where the schedule asked for it.</summary>
internal static class GunCleaning
{
    private const string AnotherProduct = "gun cleaned before the next coat goes through it";

    /// <summary>Puts the cleanings behind the runs of one room, which are in the order of the coats.</summary>
    public static void Add(WorkBuilder builder, string room, List<CoatRun> runs)
    {
        for (int i = 0; i < runs.Count; i++)
        {
            CoatRun run = runs[i];
            CoatRun? after = i + 1 < runs.Count ? runs[i + 1] : null;
            if (after is not null && after.Layer.Product.Equals(run.Layer.Product) && !builder.Work.Needs.CleansAfter(run.Id))
            {
                continue;
            }

            string id = room + "/" + WorkOrder.Key(WorkKind.CleanGun) + "/" + Figures.Fixed(i + 1, 0);
            int at = builder.Operations.FindIndex(operation => operation.Id == run.Id) + 1;
            while (at < builder.Operations.Count && builder.Operations[at].Kind == WorkKind.Broadcast)
            {
                at++;
            }

            builder.Operations.Insert(at, WorkOrder.Begun(
                WorkKind.CleanGun, id, null,
                "clean gun, cups and strainers outdoors with the product's cleaner; rags and waste into closed metal cans") with
            {
                Labour = builder.Hours(room, WorkKind.CleanGun, Area.Zero, id),
                Tools = [CoatBuilder.SprayGunTool],
                Cautions = WorkCautions.Of(WorkKind.CleanGun, run.Layer.Product, overhead: false),
            });
            builder.Wait(run.Id, id, TimeSpan.Zero, builder.Shop.GunCleaningWithin, "gun cleaned before the mix sets");
            foreach (string next in builder.Work.Needs.Cleanings.Where(pair => pair.Run == run.Id && pair.Next != after?.Id)
                .Select(pair => pair.Next).Prepend(after?.Id).OfType<string>())
            {
                builder.Wait(id, next, TimeSpan.Zero, null, AnotherProduct);
            }
        }
    }
}
