using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Curing;
using Refinish.Estimating;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Which work a job takes, in order, with the hours of its standards and the waits of its coats.</summary>
internal sealed class JobSteps
{
    public const string Return = "caulk, refit and inspect";
    public const string Wipe = "wipe on promoter";

    /// <summary>The temperature at which filler data sheets give their times; the trade's doubling rule shifts them.</summary>
    private static readonly Temperature FillerReference = Temperature.FromDegreesCelsius(25);

    private const string Mend = "mend: silicone, old coat, rust, grout, tiles";
    private const string Key = "etch or abrade, rinse and dry";
    private const string Fill = "fill chips and wear";
    private const string Tack = "sand and tack";
    private const string Demask = "demask and clean up";

    private readonly BathroomJob job;
    private readonly IReadOnlyList<FixturePlan> fixtures;
    private readonly Area area;
    private readonly List<StepLag> lags = [];

    public JobSteps(BathroomJob job, IReadOnlyList<FixturePlan> fixtures, IReadOnlyList<CoatPlan> coats, Area area)
    {
        this.job = job;
        this.fixtures = fixtures;
        this.area = area;
        if (Find(job, LabourStandards.Travel) is null)
        {
            Missing.Add(NoStandard(LabourStandards.Travel));
        }

        Work("set up, protect and mask", Count(LabourStandards.Setup));
        Work("take off hardware, cut out caulk", Count(LabourStandards.Clear));
        Work("clean twice: mineral and rust, then oils and soap", Area(LabourStandards.Clean));
        AddMending();
        Work(Key, Area(LabourStandards.Key), interruptible: false);
        AddFilling();
        Work(Tack, Area(LabourStandards.Tack));
        AddPromoter(coats);
        AddCoats(coats);
        Work(Demask, Count(LabourStandards.Demask));
        Lag(coats[coats.Count - 1].Name, Demask, coats[coats.Count - 1].OnSurface.TouchDry, null, "touch-dry before the masking comes off");
        Work(Return, Count(LabourStandards.Return));
        foreach (CoatPlan coat in coats.GroupBy(coat => coat.Layer).Select(layer => layer.Last()))
        {
            Lag(coat.Name, Return, coat.OnSurface.WaterService, null, coat.Layer.Product.Name + " hard enough to work on and for water");
        }
    }

    public List<ScheduleStep> Steps { get; } = [];

    /// <summary>The times to keep between steps that are there; a step without a labour standard is not, and is among <see cref="Missing"/>.</summary>
    public IEnumerable<StepLag> Lags => lags.Where(lag => Steps.Any(step => step.Name == lag.Before) && Steps.Any(step => step.Name == lag.After));

    /// <summary>What no schedule can mend.</summary>
    public List<string> Impossible { get; } = [];

    /// <summary>Labour tasks by code, travel left out: how often one travels follows from the schedule.</summary>
    public List<LabourTask> Tasks { get; } = [];

    /// <summary>The same tasks, those that repeat taken together: three coats are one line, not three.</summary>
    public IEnumerable<LabourTask> TasksTogether() => Tasks
        .GroupBy(task => (task.Standard, task.Area.SquareMeters, task.Units))
        .Select(same => new LabourTask(same.Key.Standard, same.First().Area, same.Key.Units, same.Sum(task => task.Times)));

    /// <summary>Standards that the job's list lacks.</summary>
    public List<string> Missing { get; } = [];

    /// <summary>The standard of the job's own list with this code.</summary>
    public static LabourStandard? Find(BathroomJob job, LabourStandard generic) => job.Labour.FirstOrDefault(standard => standard.Code == generic.Code);

    private static string NoStandard(LabourStandard generic) =>
        "There is no labour standard " + generic.Code + " (" + generic.Description + "), so there is no price.";

    private static bool ComesBeforeKeying(DefectKind kind) =>
        kind is DefectKind.SiliconeResidue or DefectKind.GroutFailure or DefectKind.LooseTiles or DefectKind.PeelingCoat or DefectKind.RustSpot;

    // What has to be off, sound or dry before the surface is etched or abraded, in the order of the preparation steps.
    private void AddMending()
    {
        Work(Mend, RepairsOf(ComesBeforeKeying));
        if (fixtures.Any(fixture => fixture.Job.Survey.Defects.Any(defect => defect.Kind is DefectKind.GroutFailure or DefectKind.LooseTiles)))
        {
            Lag(Mend, Key, job.GroutWait, null, "new grout dry");
        }
    }

    private void AddFilling()
    {
        List<LabourTask> tasks = RepairsOf(kind => !ComesBeforeKeying(kind));
        int repaired = fixtures.Count(fixture => LabourStandards.ForDefects(fixture.Job.Survey.Defects, job.Labour).Count > 0);
        if (repaired > 0)
        {
            tasks.InsertRange(0, Count(LabourStandards.RepairSetup, repaired));
        }

        Work(Fill, tasks);
        int lifts = fixtures.Max(fixture => fixture.Filler.Lifts);
        if (lifts > 0 && Steps.Count > 0)
        {
            // The last lift hardens before sanding; earlier lifts harden within the work, so their waits are added to it as well.
            double rate = TemperatureShift.Doubling(2).RateFactor(job.Site.Surface, FillerReference);
            TimeSpan hardening = Durations.FromSeconds(job.Filler.Product.SandableAfter.TotalSeconds * lifts / rate);
            Lag(Steps[Steps.Count - 1].Name, Tack, hardening, null, "filler hard in " + lifts.ToString(CultureInfo.InvariantCulture) + (lifts == 1 ? " lift" : " lifts"));
        }
    }

    private List<LabourTask> RepairsOf(Func<DefectKind, bool> which)
    {
        List<LabourTask> tasks = [];
        foreach (FixturePlan fixture in fixtures)
        {
            Defect[] defects = [.. fixture.Job.Survey.Defects.Where(defect => which(defect.Kind))];
            tasks.AddRange(LabourStandards.ForDefects(defects, job.Labour));

            // A hole or a flexing floor is another trade's work and has no standard anywhere; what the generic list has and the job's lacks is missing.
            foreach (Defect defect in LabourStandards.WithoutStandard(defects, job.Labour).Except(LabourStandards.WithoutStandard(defects)))
            {
                Missing.Add("There is no labour standard for a " + defect.Name + " of " + fixture.Job.Name + ", so there is no price.");
            }
        }

        return tasks;
    }

    private void AddPromoter(IReadOnlyList<CoatPlan> coats)
    {
        List<Coatings.AdhesionPromoter> wipes = [.. fixtures.Select(fixture => fixture.Promoter).OfType<Coatings.AdhesionPromoter>().Distinct()];
        if (wipes.Count == 0)
        {
            return;
        }

        // A step starts with opening the cans; the open time has to reach to its last stroke.
        CoatPlan first = coats[0];
        TimeSpan flash = wipes.Max(wipe => wipe.Flash);
        TimeSpan open = wipes.Min(wipe => wipe.OpenTime);
        Work(Wipe, Area(LabourStandards.Promote), interruptible: false);
        TimeSpan latest = open - DurationOf(first) - (Steps.Find(step => step.Name == Wipe)?.Duration ?? TimeSpan.Zero);
        if (latest < flash)
        {
            Impossible.Add(
                "The promoter stays open for " + Measure.Minutes.Format(open.TotalSeconds) + ", and wiping, drying, mixing and spraying "
                + first.Name + " take " + Measure.Minutes.Format((open - latest + flash).TotalSeconds, DisplayUnits.Si, 3) + ". Wipe and coat fixture by fixture.");
            return;
        }

        Lag(Wipe, first.Name, flash, latest, "open time of the promoter, from the first wipe to the last stroke");
    }

    private void AddCoats(IReadOnlyList<CoatPlan> coats)
    {
        for (int i = 0; i < coats.Count; i++)
        {
            CoatPlan coat = coats[i];
            Tasks.AddRange(Charged(coat));
            Steps.Add(new ScheduleStep(coat.Name, DurationOf(coat)));
            if (i > 0)
            {
                AddRecoat(coats[i - 1], coat);
            }
        }
    }

    // Opens after the last stroke of one coat; closes between its first stroke and the last stroke of the next.
    private void AddRecoat(CoatPlan under, CoatPlan over)
    {
        TimeSpan opens = under.OnSurface.RecoatOpens ?? TimeSpan.Zero;
        TimeSpan? closes = under.AtWarmest.RecoatCloses;
        TimeSpan? latest = closes - under.Quantity.SprayTime - DurationOf(over);
        if (latest < ToMinute(opens))
        {
            Impossible.Add(
                "The recoat window of " + under.Name + " is open from " + Measure.Hours.Format(opens.TotalSeconds, DisplayUnits.Si, 3) + " to "
                + Measure.Hours.Format((closes ?? TimeSpan.Zero).TotalSeconds, DisplayUnits.Si, 3) + ", too short to spray " + over.Name + " within it. Coat fewer fixtures at a time, or abrade between.");
            return;
        }

        Lag(under.Name, over.Name, opens, latest, "recoat window of " + under.Name + ", to the last stroke");
    }

    private List<LabourTask> SprayTasks(CoatPlan coat) =>
        Area(coat.Layer.Product.Role == Coatings.CoatingRole.Primer ? LabourStandards.Prime : LabourStandards.Topcoat);

    // When cans, cups and gun take longer than the standard, the longer time is worked and charged; it is a clock time, so difficulty is taken out again.
    private IEnumerable<LabourTask> Charged(CoatPlan coat)
    {
        List<LabourTask> tasks = SprayTasks(coat);
        return coat.Duration <= new LabourEstimate(tasks, job.Difficulty).Hours
            ? tasks
            : tasks.Select(task => new LabourTask(task.Standard with
            {
                Description = task.Standard.Description + ", by cups and gun",
                Fixed = ThreePoint.Exactly(ToMinute(coat.Duration).TotalHours / job.Difficulty),
                PerSquareMeter = ThreePoint.Exactly(0),
                Source = Source.Derived("stand-in time, mixing each cup and spraying"),
            }));
    }

    // Whichever is longer: what the labour standard says, or what cans, cups and gun take.
    private TimeSpan DurationOf(CoatPlan coat)
    {
        TimeSpan labour = new LabourEstimate(SprayTasks(coat), job.Difficulty).Hours;
        return ToMinute(labour > coat.Duration ? labour : coat.Duration);
    }

    private void Work(string name, List<LabourTask> tasks, bool interruptible = true)
    {
        Tasks.AddRange(tasks);
        if (tasks.Count > 0)
        {
            Steps.Add(new ScheduleStep(name, ToMinute(new LabourEstimate(tasks, job.Difficulty).Hours), attended: true, interruptible));
        }
    }

    // Kept even while the later step is still to be listed.
    private void Lag(string before, string after, TimeSpan? minimum, TimeSpan? maximum, string reason) =>
        lags.Add(new StepLag(before, after, ToMinute(minimum ?? TimeSpan.Zero), maximum is TimeSpan most ? TimeSpan.FromMinutes(Math.Floor(most.TotalMinutes + 1e-9)) : null, reason));

    private List<LabourTask> Count(LabourStandard generic) => Count(generic, fixtures.Count);

    private List<LabourTask> Count(LabourStandard generic, int units) => Task(generic, standard => new LabourTask(standard, units: units));

    private List<LabourTask> Area(LabourStandard generic) => Task(generic, standard => new LabourTask(standard, area));

    private List<LabourTask> Task(LabourStandard generic, Func<LabourStandard, LabourTask> make)
    {
        LabourStandard? standard = Find(job, generic);
        if (standard is null)
        {
            if (!Missing.Contains(NoStandard(generic)))
            {
                Missing.Add(NoStandard(generic));
            }

            return [];
        }

        return [make(standard)];
    }

    // Nobody keeps seconds on site. Work and least waits round up, most waits round down, so that every window is kept.
    private static TimeSpan ToMinute(TimeSpan time) => TimeSpan.FromMinutes(Math.Ceiling(time.TotalMinutes - 1e-9));
}
