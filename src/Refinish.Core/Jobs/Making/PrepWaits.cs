using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// Waits before the coats: chemicals that work, grout that dries, bare metal that must not rust, filler and resin that harden.
/// </summary>
internal sealed class PrepWaits(
    WorkBuilder builder, SiteRoom room, RoomCourse course, Procedure[] part, string suffix, Dictionary<string, double> surfaces)
{
    // Common practice, no source: within the hour.
    private static readonly TimeSpan BareMetal = TimeSpan.FromHours(1);

    public static bool HasNewGrout(Procedure procedure) => procedure.Defects.Any(defect => defect is GroutFailure or LooseTiles);

    public void Add()
    {
        foreach (Operation operation in builder.Operations.Where(operation => operation.Room == room.Id).ToArray())
        {
            if (ChemicalUse.WorksLongest(operation, builder.Shop) is PrepChemical chemical)
            {
                Holds(operation.Id, procedure => operation.Fixtures.Contains(procedure.Fixture.Id), chemical.Dwell!.Value, chemical.Name + " has worked");
            }
        }

        Holds(room.Id + "/" + WorkOrder.Key(WorkKind.Regrout), HasNewGrout, builder.Shop.GroutWait, "new grout dry");
        Metal();
        if (Find(WorkKind.SealCrazing) is string seal)
        {
            Holds(seal, procedure => procedure.Defects.Any(defect => defect is Crazing), builder.Shop.SpotPrimerWait, "sealing primer dry");
        }

        Hardening();
    }

    private static bool HasRust(Procedure procedure) => procedure.Defects.Any(defect => defect is RustSpot);

    private void Metal()
    {
        string ground = Id(WorkKind.GrindRust);
        bool apart = Find(WorkKind.SpotPrime) is not null;
        if (apart)
        {
            builder.Wait(ground, Id(WorkKind.SpotPrime), TimeSpan.Zero, BareMetal, "bright metal primed before it rusts again");
        }

        Holds(apart ? Id(WorkKind.SpotPrime) : ground, HasRust, builder.Shop.SpotPrimerWait, "spot primer dry");
    }

    // Filler and resin harden on the fixture, which may be colder than its room, as it was warmed; resin is taken to harden as the
    // shop's filler does.
    private void Hardening()
    {
        double coldest = Math.Min(course.ColdestSurface, part.Min(procedure => surfaces[procedure.Fixture.Id]));
        TimeSpan sandable = builder.Shop.Filler.Product.SandableAfter;
        if (Find(WorkKind.ReinforceCrack) is string fabric && Next(fabric, _ => true) is string over)
        {
            CureWait.Filler(builder, fabric, over, sandable, course, coldest, "resin over the crack hard");
        }

        if ((Find(WorkKind.SandFiller) ?? Find(WorkKind.Tack)) is string sanding)
        {
            foreach (IGrouping<string, FillerVolume> own in part
                .SelectMany(procedure => procedure.Filler.Items, (procedure, item) => (procedure.Fixture.Id, Item: item))
                .Where(pair => pair.Item.Defect is OwnDefect { Work: not null })
                .GroupBy(pair => DefectMending.IdOf(pair.Id, pair.Item.Defect), pair => pair.Item, StringComparer.Ordinal))
            {
                TimeSpan set = Durations.FromSeconds(Math.Min(sandable.TotalSeconds * own.Max(item => item.Lifts), 1e9));
                CureWait.Filler(
                    builder, own.Key, sanding, set, course, coldest, "filler of " + own.First().Defect.Name + " hard");
            }
        }

        // Earlier lifts harden within the work, so their waits are added to that of the last.
        int lifts = part.Max(procedure => procedure.Filler.Lifts);
        if (lifts > 0 && (Find(WorkKind.Fill) ?? Find(WorkKind.GrindRust)) is string filled && (Find(WorkKind.SandFiller) ?? Find(WorkKind.Tack)) is string sanded)
        {
            TimeSpan hard = Durations.FromSeconds(Math.Min(sandable.TotalSeconds * lifts, 1e9));
            string reason = "filler hard in " + Figures.Fixed(lifts, 0) + (lifts == 1 ? " lift" : " lifts");
            CureWait.Filler(builder, filled, sanded, hard, course, coldest, reason);
        }
    }

    private string Id(WorkKind kind) => room.Id + "/" + WorkOrder.Key(kind) + suffix;

    private string? Find(WorkKind kind) => new[] { Id(kind), room.Id + "/" + WorkOrder.Key(kind) }.FirstOrDefault(id => builder.Operations.Exists(operation => operation.Id == id));

    // The first operation after one that touches one of some fixtures waits for it.
    private void Holds(string id, Func<Procedure, bool> whom, TimeSpan wait, string reason)
    {
        if (Next(id, whom) is string next)
        {
            builder.Wait(id, next, wait, null, reason);
        }
    }

    private string? Next(string id, Func<Procedure, bool> whom)
    {
        HashSet<string> held = new(part.Where(whom).Select(procedure => procedure.Fixture.Id), StringComparer.Ordinal);
        int at = held.Count == 0 ? -1 : builder.Operations.FindIndex(operation => operation.Id == id);
        int next = at < 0 ? -1
            : builder.Operations.FindIndex(at + 1, operation =>
            operation.Beside is null && operation.Kind != WorkKind.Warm && operation.Fixtures.Any(held.Contains));
        return next < 0 ? null : builder.Operations[next].Id;
    }
}
