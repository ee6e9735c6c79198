using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Substrates;

namespace Refinish.Jobs;

/// <summary>
/// The cautions of a plan, each said once, what kills fastest first: those that its operations, the surveys of its fixtures, its coats, the
/// air of its rooms, its options and its handover bring, and no others.
/// </summary>
internal sealed class PlanCautions(JobPlan plan)
{
    private readonly Dictionary<string, Operation> operations = plan.Operations.GroupBy(operation => operation.Id, StringComparer.Ordinal)
        .ToDictionary(same => same.Key, same => same.Last(), StringComparer.Ordinal);

    private readonly Dictionary<Caution, Entry> entries = [];
    private readonly List<Entry> order = [];

    public static IEnumerable<PlannedCaution> Of(JobPlan plan)
    {
        PlanCautions gathered = new(plan);
        gathered.Work();
        gathered.Surveys();
        gathered.Coats();
        gathered.Rest();
        List<string> known = [.. Cautions.All.Select(caution => caution.Code)];
        int Place(string code) => known.IndexOf(code) is int at and >= 0 ? at : known.Count;
        return gathered.order.OrderBy(entry => entry.Caution.Hazard).ThenBy(entry => Place(entry.Caution.Code)).Select(gathered.Planned);
    }

    private void Work()
    {
        foreach (Operation operation in plan.Operations)
        {
            Add(WorkCautions.Brought(operation), operation);
        }
    }

    private void Surveys()
    {
        foreach (Procedure procedure in plan.Procedures)
        {
            Caution[] found = [.. SurveyCautions.Found(procedure.Fixture.Survey)];
            Add(found, procedure.Fixture);
            foreach (Caution caution in found.Where(caution => caution.Hazard is Hazard.Lead or Hazard.Asbestos))
            {
                foreach (Operation operation in plan.Operations)
                {
                    if (operation.Fixtures.Contains(procedure.Fixture.Id) && Disturbs(operation))
                    {
                        Tie(entries[caution].Operations, operation.Id);
                    }
                }
            }

            Add(procedure.IsPlanned ? procedure.SlipFloor?.Cautions ?? [] : [], procedure.Fixture);
        }
    }

    private void Coats()
    {
        foreach (CoatRun run in plan.Work?.Runs ?? [])
        {
            Add(run.Window.Cautions.Concat(run.OnSurface.Cautions).Concat(run.InCup.Cautions).Concat(run.AtWarmest.Cautions)
                .Concat(run.Cups.Cautions), operations[run.Id]);
        }

        foreach (ScheduledRun run in plan.Runs)
        {
            Add(run.Window.Cautions.Concat(run.Cups.Cautions), run.Operation.Operation);
        }
    }

    private void Rest()
    {
        foreach (RoomAirPlan room in plan.Air)
        {
            foreach (Caution caution in room.Cautions)
            {
                Tie(Entered(caution).Rooms, room.Room.Id);
            }
        }

        foreach (Coverage.StockDraw draw in plan.Costs?.Draws ?? [])
        {
            foreach (CoatRun run in plan.Work!.Runs.Where(run => run.Layer.Product.Id == draw.Product.Id))
            {
                Add(draw.Cautions, operations[run.Id]);
            }
        }

        foreach (Caution caution in plan.Price?.Cautions ?? [])
        {
            Entered(caution);
        }

        foreach (Procedure handed in plan.Handover?.Fixtures.Select(fixture => fixture.Procedure) ?? [])
        {
            Add(plan.Handover!.Cautions.Where(caution => handed.CoatsFloor || !caution.Equals(Cautions.NewCoatSlip)), handed.Fixture);
        }
    }

    // What may hold lead or asbestos is cut, scraped, abraded or rinsed off.
    private static bool Disturbs(Operation operation) =>
        operation.RaisesDust
        || operation.Kind is WorkKind.Clear or WorkKind.Strip or WorkKind.Key or WorkKind.Regrout or WorkKind.RinseAndDry;

    private static void Tie(List<string> ids, string id)
    {
        if (!ids.Contains(id))
        {
            ids.Add(id);
        }
    }

    private void Add(IEnumerable<Caution> cautions, Operation operation)
    {
        foreach (Caution caution in cautions)
        {
            Entry entry = Entered(caution);
            Tie(entry.Operations, operation.Id);
            string[] bringing = [.. operation.Fixtures.Where(fixture => Brings(fixture, operation.Kind, caution))];
            foreach (string fixture in bringing.Length > 0 ? bringing : operation.Fixtures)
            {
                Tie(entry.Fixtures, fixture);
            }

            if (operation.Room is string room)
            {
                Tie(entry.Rooms, room);
            }
        }
    }

    // Work on several fixtures at once has the cautions of them all: the sink is etched, the plastic tub beside it is not.
    private bool Brings(string fixture, WorkKind kind, Caution caution) => plan.Planned.Any(procedure =>
        procedure.Fixture.Id == fixture && procedure.Operations.Any(own => own.Kind == kind && own.Cautions.Contains(caution)));

    private void Add(IEnumerable<Caution> cautions, FixtureJob fixture)
    {
        foreach (Caution caution in cautions)
        {
            Entry entry = Entered(caution);
            Tie(entry.Fixtures, fixture.Id);
            Tie(entry.Rooms, fixture.Room);
        }
    }

    private Entry Entered(Caution caution)
    {
        if (!entries.TryGetValue(caution, out Entry? entry))
        {
            entry = new Entry(caution);
            entries.Add(caution, entry);
            order.Add(entry);
        }

        return entry;
    }

    private PlannedCaution Planned(Entry entry) => new(
        entry.Caution,
        new ValueList<string>(entry.Operations),
        new ValueList<string>(entry.Fixtures),
        new ValueList<string>(entry.Rooms),
        new ValueList<string>(entry.Caution.Concerns.HasFlag(Audience.Crew) && plan.Schedule is CrewSchedule schedule
            ? schedule.Operations.Where(one => Concerns(entry, one.Operation)).SelectMany(one => one.People).Distinct()
            : []));

    // By operation where one brings it, else by fixture, else by room, else everybody.
    private static bool Concerns(Entry entry, Operation operation) =>
        entry.Operations.Count > 0 ? entry.Operations.Contains(operation.Id)
            : entry.Fixtures.Count > 0 ? operation.Fixtures.Any(entry.Fixtures.Contains)
            : entry.Rooms.Count == 0 || (operation.Room is string room && entry.Rooms.Contains(room));

    private sealed class Entry(Caution caution)
    {
        public Caution Caution { get; } = caution;

        public List<string> Operations { get; } = [];

        public List<string> Fixtures { get; } = [];

        public List<string> Rooms { get; } = [];
    }
}
