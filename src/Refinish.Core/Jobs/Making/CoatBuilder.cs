using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Promoters and coats of one room: what is sprayed together, the windows between, the gun cleaned and somebody standing by.</summary>
internal sealed class CoatBuilder(WorkBuilder builder, SiteRoom room, RoomCourse course, Procedure[] here, Dictionary<string, double> surfaces)
{
    /// <summary>The tool that every coat occupies.</summary>
    public const string SprayGunTool = "spray-gun";

    /// <summary>Why a gun is cleaned between products.</summary>
    public static readonly Source GunCleaning = Source.CommonPractice("the gun is cleaned before the mix sets in it");

    private static readonly TimeSpan WhileWet = TimeSpan.FromMinutes(10);
    private static readonly Source ByClock = Source.Derived("stand-in time, mixing each cup and spraying");

    private readonly Dictionary<string, CoatRun> last = new(StringComparer.Ordinal);
    private readonly List<CoatRun> runs = [];
    private readonly PromoterWipes promoters = new(builder, room.Id);
    private readonly Dictionary<CoatingLayer, string> instructions = new(ByReference.Of<CoatingLayer>());

    public void Build()
    {
        int most = here.Max(procedure => procedure.Coats.Count);
        for (int number = 1; number <= most; number++)
        {
            List<List<Procedure>> groups = [];
            foreach (Procedure procedure in here.Where(procedure => procedure.Coats.Count >= number))
            {
                List<Procedure>? home = groups.Find(group => IsAlike(group[0], procedure, number));
                if (home is null)
                {
                    groups.Add([procedure]);
                }
                else
                {
                    home.Add(procedure);
                }
            }

            foreach (List<Procedure> group in groups)
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

        CleanGuns();
    }

    private static bool IsAlike(Procedure one, Procedure other, int number) =>
        one.Coats[number - 1].Layer.Equals(other.Coats[number - 1].Layer) && one.Gun.Equals(other.Gun) && one.Losses.Equals(other.Losses);

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
        foreach ((Operation wipe, AdhesionPromoter promoter) in wipes)
        {
            builder.Operations.Add(wipe);
            TimeSpan latest = promoter.OpenTime - duration - wipe.DurationAt(builder.Difficulty);
            if (latest < promoter.Flash)
            {
                builder.Objections.Add(new PlanObjection(
                    ObjectionKind.Schedule, run.Id, "open-time",
                    promoter.Name + " stays open for " + Measure.Minutes.Format(promoter.OpenTime.TotalSeconds) + ", and wiping, drying, mixing and spraying take "
                    + Measure.Minutes.Format((promoter.OpenTime - latest + promoter.Flash).TotalSeconds, DisplayUnits.Si, 3)
                    + ". Take a faster gun, a promoter that stays open longer, or divide the fixture into two entries."));
                builder.Wait(wipe.Id, run.Id, promoter.Flash, null, "promoter dry");
                continue;
            }

            builder.Wait(wipe.Id, run.Id, promoter.Flash, latest, "open time of the promoter, from the first wipe to the last stroke");
        }

        Add(group, run, 1);
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
        bool goesOn = number > 1 && group.TrueForAll(procedure => last[procedure.Fixture.Id].Layer.Product.Equals(product) && StaysInHose(last[procedure.Fixture.Id]));
        if (number > 1 && (losses.ProfileDepth.Meters > 0 || (goesOn && losses.HoldUp.CubicMeters > 0)))
        {
            losses = losses with { ProfileDepth = Length.Zero, HoldUp = goesOn ? Volume.Zero : losses.HoldUp };
        }

        List<CoatedSurface> coated = [];
        foreach (Procedure procedure in group)
        {
            coated.AddRange(procedure.Surfaces);
        }

        return new CoatRun(id, coated, coat.Layer, group[0].Gun, losses, builder.Shop.Cups, course.AirOf(course.WarmestAir), Temperature.FromKelvins(surface));
    }

    // The hose stays filled where the next coat may follow within the share of the pot life that is used.
    private static bool StaysInHose(CoatRun under) => under.InCup.PotLife is not TimeSpan life
        || under.OnSurface.RecoatOpens?.TotalSeconds <= life.TotalSeconds * under.Cups.Rules.PotLifeShare.DecimalFractions;

    private void Add(List<Procedure> group, CoatRun run, int number)
    {
        PlannedCoat coat = group[0].Coats[number - 1];
        TimeSpan duration = DurationOf(run, group, number);
        CoatingProduct product = coat.Layer.Product;
        builder.Operations.Add(new Operation
        {
            Id = run.Id,
            Kind = coat.Kind,
            Name = product.Name + (group[0].Coats.Count(other => other.Layer.Product.Equals(product)) > 1 ? ", coat " + Figures.Fixed(group[0].Coats.Count(other => other.Layer.Product.Equals(product) && other.Number <= number), 0) : string.Empty),
            Instruction = InstructionOf(coat.Layer),
            Room = room.Id,
            Fixtures = [.. group.Select(procedure => procedure.Fixture.Id)],
            Labour = LabourOf(run, group, number),
            Time = duration,
            Sprays = true,
            Clearing = RoomAir.ClearingAfter(run, room, course, builder.Shop),
            DustFree = run.OnSurface.TouchDry ?? product.Cure.TouchDry,
            Tools = [SprayGunTool],
            Cautions = WorkCautions.Of(coat.Kind, product, group.Exists(procedure => procedure.CoatsWallTile)),
            Source = product.Source,
        });
        if (builder.Shop.StandsBy && builder.Shop.Crew.Count > 1)
        {
            builder.Operations.Add(StandBy(run, duration));
        }

        foreach (CoatRun under in group.Select(procedure => last.TryGetValue(procedure.Fixture.Id, out CoatRun? before) ? before : null).OfType<CoatRun>().Distinct())
        {
            Recoat(under, run, duration);
        }

        Procedure[] grains = [.. group.Where(procedure => procedure.Coats[number - 1].TakesGrains)];
        if (grains.Length > 0)
        {
            Operation broadcast = Merge.Of(
                room.Id + "/" + WorkOrder.Key(WorkKind.Broadcast) + "/" + Figures.Fixed(number, 0),
                [.. grains.SelectMany(procedure => procedure.Operations.Where(operation => operation.Kind == WorkKind.Broadcast))]);
            builder.Operations.Add(broadcast with { Sprays = false });
            builder.Wait(run.Id, broadcast.Id, TimeSpan.Zero, WhileWet, "grains fall into a wet coat");
        }

        foreach (Procedure procedure in group)
        {
            last[procedure.Fixture.Id] = run;
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
            text = "mix as the card says and spray " + Measure.Film.FormatBoth(layer.DryFilmPerCoat.Meters) + " dry, " + Measure.Film.FormatBoth(wet) + " wet";
            instructions.Add(layer, text);
        }

        return text;
    }

    private Operation StandBy(CoatRun run, TimeSpan duration) => new()
    {
        Id = run.Id + "/" + WorkOrder.Key(WorkKind.StandBy),
        Kind = WorkKind.StandBy,
        Name = WorkOrder.Label(WorkKind.StandBy),
        Instruction = "stand outside the room within sight or call of the sprayer, watch the fan and the air supply, call for help; do not go in without supplied air",
        Room = room.Id,
        Beside = run.Id,
        Time = duration,
        Cautions = [.. WorkCautions.Of(WorkKind.StandBy), .. run.Layer.Product.Hardener is null ? [] : new[] { Cautions.Sensitised }],
        Source = Cautions.NeverAlone.Source,
    };

    // Opens after the last stroke of one coat; closes between its first stroke and the last stroke of the next.
    private void Recoat(CoatRun under, CoatRun over, TimeSpan duration)
    {
        TimeSpan opens = under.OnSurface.RecoatOpens ?? TimeSpan.Zero;
        TimeSpan? latest = under.AtWarmest.RecoatCloses - under.SprayTime - duration;
        if (course.IsHeld && latest < Minutes.Up(opens))
        {
            builder.Objections.Add(new PlanObjection(
                ObjectionKind.Schedule, over.Id, "recoat/" + under.Id,
                "The recoat window of " + under.Layer.Product.Name + " is open from " + Measure.Hours.Format(opens.TotalSeconds, DisplayUnits.Si, 3) + " to "
                + Measure.Hours.Format((under.AtWarmest.RecoatCloses ?? TimeSpan.Zero).TotalSeconds, DisplayUnits.Si, 3) + ", too short to spray the next coat within it. Coat fewer fixtures at a time, or abrade between."));
            latest = null;
        }

        builder.Waits.Add(CureWait.Opens(under, over, latest, course));
        if (CureWait.Closes(under, over, duration, course) is StepLag closes)
        {
            builder.Waits.Add(closes);
        }
    }

    private TimeSpan DurationOf(CoatRun run, List<Procedure> group, int number)
    {
        TimeSpan labour = Durations.FromHours(LabourHours(group, number));
        return Minutes.Up(labour > run.Duration ? labour : run.Duration);
    }

    private double LabourHours(List<Procedure> group, int number) =>
        LabourStandards.For(group[0].Coats[number - 1].Kind, builder.Shop.Labour) is LabourStandard standard ? TaskOf(standard, group, null).Hours.Mean * builder.Difficulty : 0;

    private static LabourTask TaskOf(LabourStandard standard, List<Procedure> group, string? id) =>
        new(standard, Area.FromSquareMeters(group.Sum(procedure => procedure.SquareMeters)), group.Count, 1) { Id = id };

    // When cans, cups and gun take longer than the standard, the longer time is worked and charged; it is a clock time, so difficulty is taken out again.
    private List<LabourTask> LabourOf(CoatRun run, List<Procedure> group, int number)
    {
        if (LabourStandards.For(group[0].Coats[number - 1].Kind, builder.Shop.Labour) is not LabourStandard standard)
        {
            return [];
        }

        LabourTask task = TaskOf(standard, group, run.Id);
        TimeSpan clock = Minutes.Up(run.Duration);
        return clock.TotalHours <= task.Hours.Mean * builder.Difficulty
            ? [task]
            : [new LabourTask(
                standard with
                {
                    Code = standard.Code + "-clock",
                    Description = standard.Description + ", by cups and gun",
                    Fixed = ThreePoint.Exactly(0),
                    PerSquareMeter = ThreePoint.Exactly(0),
                    PerUnit = ThreePoint.Exactly(1),
                    OncePerVisit = Ratio.Zero,
                    Unit = "h",
                    Source = ByClock,
                },
                Area.Zero,
                clock.TotalHours / builder.Difficulty,
                1) { Id = run.Id }];
    }

    private void CleanGuns()
    {
        for (int i = 0; i < runs.Count; i++)
        {
            CoatRun run = runs[i];
            if (i + 1 < runs.Count && runs[i + 1].Layer.Product.Equals(run.Layer.Product))
            {
                continue;
            }

            string id = room.Id + "/" + WorkOrder.Key(WorkKind.CleanGun) + "/" + Figures.Fixed(i + 1, 0);
            LabourStandard? standard = builder.Standard(room.Id, WorkKind.CleanGun);
            int at = builder.Operations.FindIndex(operation => operation.Id == run.Id) + 1;
            while (at < builder.Operations.Count && builder.Operations[at].Kind is WorkKind.StandBy or WorkKind.Broadcast)
            {
                at++;
            }

            builder.Operations.Insert(at, new Operation
            {
                Id = id,
                Kind = WorkKind.CleanGun,
                Name = WorkOrder.Label(WorkKind.CleanGun),
                Instruction = "clean gun, cups and strainers outdoors with the product's cleaner; rags and waste into closed metal cans",
                Labour = standard is null ? [] : [new LabourTask(standard, Area.Zero, 1, 1) { Id = id }],
                Tools = [SprayGunTool],
                Cautions = WorkCautions.Of(WorkKind.CleanGun, run.Layer.Product, overhead: false),
                Source = GunCleaning,
            });
            builder.Wait(run.Id, id, TimeSpan.Zero, builder.Shop.GunCleaningWithin, "gun cleaned before the mix sets");
            if (i + 1 < runs.Count)
            {
                builder.Wait(id, runs[i + 1].Id, TimeSpan.Zero, null, "another product in the gun");
            }
        }
    }
}
