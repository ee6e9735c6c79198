using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Estimating;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Takes the procedures of each room together into one list of operations, with the waits that they need.</summary>
internal sealed class WorkBuilder(WorkList work)
{
    private static readonly Source Protecting = Source.CommonPractice("protection of floor and exhaust before anything else");

    public List<Operation> Operations { get; } = [];

    /// <summary>Waits with a reason of their own; the plain order of operations is added at the end.</summary>
    public List<StepLag> Waits { get; } = [];

    public List<CoatRun> Runs { get; } = [];

    public List<PlanObjection> Objections { get; } = [];

    public Dictionary<string, RoomCourse> Courses { get; } = new(StringComparer.Ordinal);

    /// <summary>What each room gave.</summary>
    public Dictionary<string, RoomResult> Rooms { get; } = new(StringComparer.Ordinal);

    public WorkList Work => work;

    public Shop Shop => work.Shop;

    public double Difficulty => work.Premises.Difficulty;

    public void Build()
    {
        foreach (SiteRoom room in work.Premises.Rooms)
        {
            Procedure[] here = [.. work.Procedures.Where(procedure => procedure.Fixture.Room == room.Id).OrderBy(procedure => procedure.Fixture.Id, StringComparer.Ordinal)];
            if (here.Length > 0)
            {
                RoomResult? known = work.Rooms.TryGetValue(room.Id, out RoomResult? found) ? found : null;
                RoomCourse course = known?.Course ?? new RoomCourse(room.Climate, work.Start, Shop.Calendar);
                Courses.Add(room.Id, course);
                if (known?.Part.Holds(work.Needs) == true)
                {
                    known.Part.AddTo(this);
                    Rooms.Add(room.Id, known);
                    continue;
                }

                (int, int, int, int) before = Count;
                RoomMemo memo = new(known?.Memo);
                Build(room, course, here, memo);
                Rooms.Add(room.Id, new RoomResult(course, new RoomPart(this, before), memo));
            }
        }

        if (LabourStandards.For(WorkKind.Travel, Shop.Labour) is null)
        {
            Gap(ProcedureLabour.NoStandard("travel", WorkKind.Travel));
        }
        else if (Shop.Overtime is not null && work.TripTime is { Days: >= 1 } trip)
        {
            Gap(new PlanObjection(ObjectionKind.Labour, "travel", "time",
                "One trip takes " + CarefulTime.AtLeast(trip)
                    + " by the labour standard for travel; overtime is counted with trips of less than 24 h. "
                    + "Correct the standard, or leave Overtime out."));
        }

        foreach (PlanObjection gap in work.Procedures.SelectMany(procedure => procedure.LabourGaps))
        {
            Gap(gap);
        }

        if (Shop.StandsBy && Shop.Crew.Count < 2)
        {
            Objections.Add(new PlanObjection(
                ObjectionKind.StandBy, Shop.Crew[0].Id, string.Empty,
                "Nobody is there to stand by while a coat is sprayed or solvent is at work: the crew has one person. Bring a second person, or set StandsBy to false and agree with somebody outside the crew who stands by."));
        }
    }

    public IReadOnlyList<LabourTask> Hours(string about, WorkKind kind, Area area, string id)
    {
        if (LabourStandards.For(kind, Shop.Labour) is LabourStandard standard)
        {
            return [new LabourTask { Standard = standard, Area = area, Units = 1, Id = id }];
        }

        Gap(ProcedureLabour.NoStandard(about, kind));
        return [];
    }

    /// <summary>A wait in whole minutes.</summary>
    public void Wait(string before, string after, TimeSpan? least, TimeSpan? most, string reason) => Wait(
        before, after, CarefulTime.Up(least ?? TimeSpan.Zero), most is TimeSpan time ? CarefulTime.Down(time) : null, reason, null);

    /// <summary>
    /// A wait, by the clock or on a clock of its own. What closes beyond the longest wait of a schedule binds no schedule; what opens
    /// beyond it is objected to.
    /// </summary>
    public void Wait(string before, string after, TimeSpan least, TimeSpan? most, string reason, EquivalentAge? clock)
    {
        least = InSight(
            least, before, after, "Before '" + NameOf(after) + "' goes on after '" + NameOf(before) + "', the wait (" + reason + ")",
            "Warm the room, or take a product that is ready sooner");
        if (most < least)
        {
            Gap(new PlanObjection(
                ObjectionKind.Schedule, before, after,
                "'" + NameOf(after) + "' cannot follow '" + NameOf(before) + "' (" + reason
                    + "): in whole minutes, as work is laid out, it is at least " + CarefulTime.AtLeast(least) + " and at most "
                    + CarefulTime.AtMost(most.Value) + " later. Give times that hold a whole minute."));
            most = null;
        }

        Waits.Add(new StepLag(before, after, least, most <= StepLag.Longest ? most : null, reason, clock));
    }

    /// <summary>The time, as far as a schedule holds it; a longer one is objected to, and then there is no schedule.</summary>
    public TimeSpan InSight(TimeSpan time, string about, string code, string what, string remedy)
    {
        if (time <= StepLag.Longest)
        {
            return time;
        }

        Gap(TooLong(time, about, code, what, remedy));
        return StepLag.Longest;
    }

    public static PlanObjection TooLong(TimeSpan time, string about, string code, string what, string remedy) => new(
        ObjectionKind.Schedule, about, code, what + " takes " + CarefulTime.AtLeast(time) + "; allowed: at most "
            + CarefulTime.AtMost(StepLag.Longest) + ", the 60 days to which a schedule counts a wait or an operation. " + remedy + ".");

    private string NameOf(string id) => Operations.Find(operation => operation.Id == id)?.Name ?? id;

    private (int Operations, int Waits, int Runs, int Objections) Count => (Operations.Count, Waits.Count, Runs.Count, Objections.Count);

    private void Build(SiteRoom room, RoomCourse course, Procedure[] here, RoomMemo memo)
    {
        if (memo.Preparation is (RoomPart part, _))
        {
            part.AddTo(this);
        }
        else
        {
            (int, int, int, int) before = Count;
            Dictionary<string, double> surfaces = Prepare(room, course, here);
            memo.Preparation = (new RoomPart(this, before), surfaces);
        }

        new CoatBuilder(this, room, course, here, memo.Preparation.Value.Surfaces, memo).Build();
        Together(room, here, WorkOrder.AfterCoats, string.Empty);
        AfterWaits(room, here);
        RoomWatch.Over(this, room, course, memo);
    }

    // Everything before the first coat; returns the temperature of each fixture's surface.
    private Dictionary<string, double> Prepare(SiteRoom room, RoomCourse course, Procedure[] here)
    {
        SetUp(room, here);
        Dictionary<string, double> surfaces = new(StringComparer.Ordinal);
        foreach (WorkKind kind in WorkOrder.BeforeCoats.TakeWhile(kind => kind != WorkKind.Key))
        {
            if (kind == WorkKind.Warm)
            {
                foreach (Procedure procedure in here)
                {
                    surfaces.Add(procedure.Fixture.Id, Warming.SurfaceOf(procedure, room, course, this));
                }
            }
            else
            {
                Together(room, here, [kind], string.Empty);
            }
        }

        // New grout dries for a day: the fixtures that have it are abraded and filled apart, and hold up no others until the room is
        // tacked off.
        Procedure[] grouted = [.. here.Where(PrepWaits.HasNewGrout)];
        Procedure[] others = [.. here.Except(grouted)];
        (Procedure[] Fixtures, string Suffix)[] parts =
            [.. new[] { others, grouted }.Where(part => part.Length > 0).Select(part => (part, part == grouted && others.Length > 0 ? "/" + part[0].Fixture.Id : string.Empty))];
        foreach ((Procedure[] part, string suffix) in parts)
        {
            Together(
                room, part, WorkOrder.BeforeCoats.SkipWhile(kind => kind != WorkKind.Key).TakeWhile(kind => kind != WorkKind.Tack), suffix);
        }

        // From the last dust on the room goes together: nothing is coated while something beside it is still wet or dusty work.
        Together(room, here, WorkOrder.BeforeCoats.SkipWhile(kind => kind != WorkKind.Tack), string.Empty);

        foreach ((Procedure[] part, string suffix) in parts)
        {
            new PrepWaits(this, room, course, part, suffix, surfaces).Add();
        }

        return surfaces;
    }

    private void SetUp(SiteRoom room, Procedure[] here)
    {
        string id = room.Id + "/" + WorkOrder.Key(WorkKind.SetUp);
        Operations.Add(WorkOrder.Begun(
            WorkKind.SetUp, id, room.Id,
            "set up exhaust and make-up air, protect floor and way in, shut off flames and unplug what can spark") with
        {
            Fixtures = [.. here.Select(procedure => procedure.Fixture.Id)],
            IsInterruptible = true,
            Labour = Hours(room.Id, WorkKind.SetUp, Area.FromSquareMeters(here.Sum(procedure => procedure.SquareMeters)), id),
            Source = Protecting,
        });
    }

    // One kind of work on all fixtures of the room, or of a part of them, is one operation.
    private void Together(SiteRoom room, Procedure[] here, IEnumerable<WorkKind> kinds, string suffix)
    {
        foreach (WorkKind kind in kinds)
        {
            List<Operation> same = [];
            foreach (Operation operation in here.SelectMany(procedure => procedure.Common))
            {
                if (operation.Kind == kind)
                {
                    same.Add(operation);
                }
            }

            if (same.Count > 0)
            {
                Operations.Add(Merge.Of(room.Id + "/" + WorkOrder.Key(kind) + suffix, same));
            }

            foreach (Procedure procedure in here)
            {
                Operations.AddRange(procedure.Mendings.Count == 0 ? [] : procedure.Mendings.Where(operation => operation.Kind == kind));
                Operations.AddRange(OwnHours.Ordered(procedure.Fixture, kind, Shop, work.Procedures));
            }
        }
    }

    private void AfterWaits(SiteRoom room, Procedure[] here)
    {
        string demask = room.Id + "/" + WorkOrder.Key(WorkKind.Demask);
        string hard = Operations.Find(operation => operation.Room == room.Id && operation.Kind is WorkKind.FitTrim or WorkKind.Caulk)?.Id
            ?? room.Id + "/" + WorkOrder.Key(WorkKind.Inspect);
        RoomCourse course = Courses[room.Id];
        HashSet<string> done = new(StringComparer.Ordinal);
        for (int i = Runs.Count - 1; i >= 0; i--)
        {
            CoatRun run = Runs[i];
            Operation operation = Operations.Find(one => one.Id == run.Id)!;
            if (operation.Room != room.Id)
            {
                continue;
            }

            if (operation.Fixtures.Any(fixture => !done.Contains(fixture)))
            {
                CureWait.Touch(this, run, demask, course, "touch-dry before the masking comes off");
                foreach (string fixture in operation.Fixtures)
                {
                    done.Add(fixture);
                }
            }

            bool repeated = Runs.Skip(i + 1).Any(later => later.Layer.Product.Equals(run.Layer.Product) && operation.Fixtures.All(Operations.Find(one => one.Id == later.Id)!.Fixtures.Contains));
            if (!repeated)
            {
                CureWait.Water(this, run, hard, course, run.Layer.Product.Name + " hard enough to work on and for water");
            }
        }
    }

    private void Gap(PlanObjection gap)
    {
        if (!Objections.Exists(one => one.Id == gap.Id))
        {
            Objections.Add(gap);
        }
    }
}
