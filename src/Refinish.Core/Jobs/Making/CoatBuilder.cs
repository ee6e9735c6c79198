using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Promoters and coats of one room: what is sprayed together, and the windows between.</summary>
internal sealed class CoatBuilder(
    WorkBuilder builder, SiteRoom room, RoomCourse course, Procedure[] here, Dictionary<string, double> surfaces, RoomMemo memo)
{
    /// <summary>The tool that every coat occupies.</summary>
    public const string SprayGunTool = "spray-gun";

    private static readonly TimeSpan WhileWet = TimeSpan.FromMinutes(10);
    private static readonly TimeSpan WipeHolds = TimeSpan.FromHours(4);

    private readonly Dictionary<string, CoatRun> last = new(StringComparer.Ordinal);
    private readonly List<CoatRun> runs = [];
    private readonly PromoterWipes promoters = new(builder, room.Id);
    private readonly Dictionary<CoatingLayer, string> instructions = new(ByReference.Of<CoatingLayer>());

    public void Build()
    {
        foreach (int number in Enumerable.Range(1, here.Max(procedure => procedure.Coats.Count)))
        {
            foreach (List<Procedure> group in here.Where(procedure => procedure.Coats.Count >= number)
                .GroupBy(procedure => (procedure.Coats[number - 1].Layer, procedure.Gun, procedure.Losses)).Select(alike => alike.ToList()))
            {
                if (number == 1)
                {
                    First(group);
                }
                else
                {
                    Add(group, Run(group, number), number);
                }
            }
        }

        GunCleaning.Add(builder, room.Id, runs);
    }

    // Wiped and primed together where the open times allow it; otherwise promoter by promoter, otherwise fixture by fixture.
    private void First(List<Procedure> group)
    {
        CoatRun all = Run(group, 1);
        List<(Operation Wipe, AdhesionPromoter Promoter)> wipes = promoters.Of(group, alone: false);
        if (promoters.Fit(all, wipes))
        {
            Together(group, all, wipes);
            return;
        }

        foreach (IGrouping<AdhesionPromoter?, Procedure> one in group.GroupBy(procedure => procedure.Promoter))
        {
            List<Procedure> same = [.. one];
            CoatRun run = Run(same, 1);
            wipes = promoters.Of(same, alone: false);
            if (promoters.Fit(run, wipes) || same.Count == 1)
            {
                Together(same, run, wipes);
                continue;
            }

            foreach (Procedure procedure in same)
            {
                Together([procedure], Run([procedure], 1), promoters.Of([procedure], alone: true));
            }
        }
    }

    private void Together(List<Procedure> group, CoatRun run, List<(Operation Wipe, AdhesionPromoter Promoter)> wipes)
    {
        TimeSpan duration = DurationOf(run, group, 1);
        string first = wipes.Count > 0 ? wipes[0].Wipe.Id : run.Id;
        if (builder.Work.Needs.WipesBefore(run.Id))
        {
            WipeAgain(group, run, first);
        }

        if (builder.Shop.LongestAfterKey is TimeSpan longest)
        {
            foreach (Operation keyed in builder.Operations.Where(operation => operation.Kind == WorkKind.Key
                && group.Exists(procedure => operation.Fixtures.Contains(procedure.Fixture.Id))))
            {
                builder.Wait(keyed.Id, first, TimeSpan.Zero, longest, "the shop's longest wait after abrading or etching");
            }
        }

        foreach ((Operation wipe, AdhesionPromoter promoter) in wipes)
        {
            builder.Operations.Add(wipe);
            TimeSpan latest = promoter.OpenTime - duration;
            bool isOpen = latest >= promoter.Flash;
            builder.Wait(wipe.Id, run.Id, promoter.Flash, isOpen ? latest : null, isOpen
                ? "open time of " + promoter.Name + ", from the end of wiping until the cans are opened"
                : promoter.Name + " dry, from the end of wiping");
            if (!isOpen)
            {
                builder.Objections.Add(new PlanObjection(
                    ObjectionKind.Schedule, run.Id, "open-time",
                    promoter.Name + " stays open for " + CarefulTime.AtMost(promoter.OpenTime)
                    + " from the end of wiping, and drying, mixing and spraying take " + CarefulTime.AtLeast(duration + promoter.Flash)
                    + ". Take a faster gun, a promoter that stays open longer, or divide the fixture into two entries."));
            }
        }

        Add(group, run, 1);
    }

    // A night has passed since the surface was abraded; the wipe belongs to the day of the promoter.
    private void WipeAgain(List<Procedure> group, CoatRun run, string next)
    {
        string id = run.Id + "/" + WorkOrder.Key(WorkKind.WipeAgain);
        Operation wipe = WorkOrder.Begun(
            WorkKind.WipeAgain, id, room.Id,
            "wipe with the solvent that the system allows, fresh cloths; repeat the water-break test and dry; abrade again where water breaks");
        builder.Operations.Add(Merge.Of(id, [.. group.Select(procedure => ChemicalUse.On(
            wipe with
            {
                Fixtures = [procedure.Fixture.Id],
                Labour = builder.Hours(room.Id, WorkKind.WipeAgain, procedure.CoatedArea, id),
            },
            procedure))]));
        builder.Wait(id, next, TimeSpan.Zero, WipeHolds, "surface still clean from the wipe");
    }

    private CoatRun Run(List<Procedure> group, int number)
    {
        PlannedCoat coat = group[0].Coats[number - 1];
        CoatingProduct product = coat.Layer.Product;
        string id = room.Id + "/coat/" + Figures.Fixed(number, 0) + "/" + product.Id;
        if (here.Any(other => !group.Contains(other) && other.Coats.Count >= number && other.Coats[number - 1].Layer.Product.Id == product.Id))
        {
            id += "/" + group.Select(procedure => procedure.Fixture.Id).OrderBy(one => one, StringComparer.Ordinal).First();
        }

        double surface = group.Min(procedure => surfaces[procedure.Fixture.Id]);
        ApplicationLosses losses = group[0].Losses;
        bool goesOn = number > 1 && !builder.Work.Needs.FillsHoseFor(id)
            && group.TrueForAll(procedure => GoesOn(last[procedure.Fixture.Id], product));
        if (number > 1 && (losses.ProfileDepth.Meters > 0 || (goesOn && losses.HoldUp.CubicMeters > 0)))
        {
            losses = losses with { ProfileDepth = Length.Zero, HoldUp = goesOn ? Volume.Zero : losses.HoldUp };
        }

        return memo.Run(id, group, losses, surface, () => new CoatRun(
            id, [.. group.SelectMany(procedure => procedure.Surfaces)], coat.Layer, group[0].Gun, losses, builder.Shop.Cups,
                course.AirOf(course.WarmestAir), Temperature.FromKelvins(surface)));
    }

    private bool GoesOn(CoatRun under, CoatingProduct product) =>
        under.Layer.Product.Equals(product) && StaysInHose(under) && !builder.Work.Needs.CleansAfter(under.Id);

    // The hose stays filled where the next coat may follow within the share of the pot life that is used.
    private static bool StaysInHose(CoatRun under) => under.InCup.PotLife is not TimeSpan life
        || under.OnSurface.RecoatOpens?.TotalSeconds <= life.TotalSeconds * under.Cups.Rules.PotLifeShare.DecimalFractions;

    private void Add(List<Procedure> group, CoatRun run, int number)
    {
        PlannedCoat coat = group[0].Coats[number - 1];
        TimeSpan duration = DurationOf(run, group, number);
        CoatingProduct product = coat.Layer.Product;
        PlannedCoat[] same = [.. group[0].Coats.Where(other => other.Layer.Product.Equals(product))];
        string[] fixtures = [.. group.Select(procedure => procedure.Fixture.Id)];
        builder.Operations.Add(new Operation
        {
            Id = run.Id,
            Kind = coat.Kind,
            Name = product.Name + (same.Length > 1 ? ", coat " + Figures.Fixed(same.Count(other => other.Number <= number), 0) : string.Empty),
            Instruction = InstructionOf(coat.Layer),
            Room = room.Id,
            Fixtures = fixtures,
            Labour = HoursOf(run, group, number) is LabourTask task ? [task] : [],
            Time = duration,
            Sprays = true,
            DustFree = builder.InSight(
                CoatOperations.DustFree(run), run.Id, "dust", "Until dust no longer sticks to " + product.Name + ", it",
                "Warm the room, or take a product that dries sooner"),
            Tools = [SprayGunTool],
            Cautions = WorkCautions.Of(coat.Kind, product, group.Exists(procedure => procedure.IsOverhead)),
            Source = product.Source,
        });
        foreach (CoatRun under in group.Select(procedure =>
            last.TryGetValue(procedure.Fixture.Id, out CoatRun? before) ? before : null).OfType<CoatRun>().Distinct())
        {
            Recoat(under, run, duration);
        }

        Procedure[] grains = [.. group.Where(procedure => procedure.Coats[number - 1].TakesGrains)];
        if (grains.Length > 0)
        {
            string id = room.Id + "/" + WorkOrder.Key(WorkKind.Broadcast) + "/" + Figures.Fixed(number, 0);
            Operation broadcast = Merge.Of(
                builder.Operations.Exists(operation => operation.Id == id) ? id + "/" + product.Id : id,
                [.. grains.SelectMany(procedure => procedure.Common.Where(operation => operation.Kind == WorkKind.Broadcast))]);
            builder.Operations.Add(broadcast with { Sprays = false });
            builder.Wait(run.Id, broadcast.Id, TimeSpan.Zero, WhileWet, "grains fall into a wet coat");
        }

        CoatOperations.Add(builder, run, room.Id, fixtures);
        foreach (string fixture in fixtures)
        {
            last[fixture] = run;
        }

        runs.Add(run);
        builder.Runs.Add(run);
    }

    // Coats of one layer read alike, so that their texts are made once.
    private string InstructionOf(CoatingLayer layer)
    {
        if (!instructions.TryGetValue(layer, out string? text))
        {
            double wet = new Films.WetFilm(layer.DryFilmPerCoat, layer.Product.VolumeSolids, layer.Reducer).Thickness.Meters;
            text = "mix as the card says and spray " + Measure.Film.FormatBoth(layer.DryFilmPerCoat.Meters) + " dry, "
                + Measure.Film.FormatBoth(wet) + " wet"
                + (layer.Coats == 1 ? string.Empty
                    : ", one of " + Figures.Fixed(layer.Coats, 0) + " such coats, " + Measure.Film.FormatBoth(layer.TotalDryFilm.Meters)
                    + " dry in all");
            instructions.Add(layer, text);
        }

        return text;
    }


    // Opens after the last stroke of one coat; closes between its first stroke and the last stroke of the next. Where an operation cures
    // the coat, its end and its beginning stand for the strokes.
    private void Recoat(CoatRun under, CoatRun over, TimeSpan duration)
    {
        TimeSpan opens = under.OnSurface.RecoatOpens ?? TimeSpan.Zero;
        TimeSpan between = duration
            + (under.Layer.Product.Curing is CoatOperation cure ? CoatOperations.TimeOf(under, cure) : under.SprayTime);
        TimeSpan? latest = under.AtWarmest.RecoatCloses - between;
        if (course.IsHeld && latest < CarefulTime.Up(opens))
        {
            builder.Objections.Add(new PlanObjection(
                ObjectionKind.Schedule, over.Id, "recoat/" + under.Id,
                "The recoat window of " + under.Layer.Product.Name + " is open from " + CarefulTime.AtLeast(opens) + " after its last stroke to "
                + CarefulTime.AtMost(under.AtWarmest.RecoatCloses ?? TimeSpan.Zero) + " after its first, too short to spray the next coat within it. Coat fewer fixtures at a time, or abrade between."));
            latest = null;
        }

        CureWait.Opens(builder, under, over, latest, course);
        CureWait.Closes(builder, under, over, between, course);
    }

    private TimeSpan DurationOf(CoatRun run, List<Procedure> group, int number)
    {
        TimeSpan labour = Durations.FromHours((HoursOf(run, group, number)?.Hours.Mean ?? 0) * builder.Difficulty);
        return builder.InSight(
            CarefulTime.Up(labour > run.Duration ? labour : run.Duration), run.Id, "long",
            "Mixing and spraying " + run.Layer.Product.Name + " in one go",
            "Look at its stand-in time, the cups, the flow of the gun and the hours of the work, or divide the fixture into two entries");
    }

    private LabourTask? HoursOf(CoatRun run, List<Procedure> group, int number) =>
        LabourStandards.For(group[0].Coats[number - 1].Kind, builder.Shop.Labour) is LabourStandard standard
            
            ? new LabourTask
            {
                Standard = standard,
                Area = Area.FromSquareMeters(group.Sum(procedure => procedure.SquareMeters)),
                Units = group.Count,
                Id = run.Id,
            }
            : null;
}
