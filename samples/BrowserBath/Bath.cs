using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Substrates;

namespace Refinish.Samples.BrowserBath;

/// <summary>
/// One tub in the room and the air of one day, taken through the stages of the library as far as they go: procedure, work, times, air.
/// </summary>
/// <remarks>The shop is the library's invented one: replace it with yours and with the data sheets of what is in the van.</remarks>
public sealed class Bath
{
    // The sheet asks for no survey, and says so.
    private static readonly Survey NotSurveyed = new() { Material = FixtureMaterial.EnamelledCastIron, Defects = [] };

    public Bath(RecessedBathtub tub, SiteRoom room, DateTimeOffset start)
    {
        Tub = tub;
        Procedure = new Procedure(new FixtureJob { Id = "tub", Room = room.Id, Fixture = tub, Survey = NotSurveyed }, Shop.Generic);
        Work = new WorkList([Procedure], new Premises { Id = "home", Rooms = [room] }, Shop.Generic, start);
        Coats = CoatsOf(null);
        if (Coats.All(coat => coat.HasTimes))
        {
            Schedule = new CrewSchedule(Work);
            Coats = CoatsOf(Schedule);
        }

        if (Schedule is { IsPossible: true })
        {
            Air = new RoomAirPlan(Schedule, room.Id);
            WaterFrom = new Handover(Schedule).WaterFrom;
        }
    }

    public RecessedBathtub Tub { get; }

    public Procedure Procedure { get; }

    public WorkList Work { get; }

    public IReadOnlyList<Coat> Coats { get; }

    /// <summary>
    /// When everything is done and by whom; missing when a product gives no times at this temperature, or no cup fits its pot life.
    /// </summary>
    public CrewSchedule? Schedule { get; }

    /// <summary>The air of the room; missing without times.</summary>
    public RoomAirPlan? Air { get; }

    /// <summary>When water may run.</summary>
    public DateTimeOffset? WaterFrom { get; }

    /// <summary>What the air and the surface are held against, each comparison once.</summary>
    public IReadOnlyList<LimitComparison> Checks =>
        [.. Coats.SelectMany(coat => coat.Run.Window.Checks.Concat(coat.Run.OnSurface.Checks).Concat(coat.Run.InCup.Checks)).Distinct()];

    /// <summary>The vapour of all coats against the share of its lower flammable limit that the limits allow, and the fan against the careful bound.</summary>
    public IReadOnlyList<LimitComparison> Vapour => Air is { Study: AirStudy study, FlammableAirflow: LimitComparison flow }
        ? [study.FlammableLimit, flow] : [];

    /// <summary>Whether nothing is beyond its limit or unknown and the work has times.</summary>
    public bool IsFit =>
        Air is not null && Checks.Concat(Vapour).All(check => check.Outcome == ComparisonOutcome.Within) && !Objections().Any();

    public IReadOnlyList<Caution> Cautions =>
    [
        .. Refinish.Cautions.ForSpraying.Concat(Work.Operations.SelectMany(operation => operation.Cautions))
            .Concat(Coats.SelectMany(coat => coat.Run.Window.Cautions.Concat(coat.Run.OnSurface.Cautions))).Concat(Procedure.Cautions)
            .Concat(Air?.Cautions ?? []).Distinct(),
    ];

    /// <summary>What stands in the way beside the comparisons, in sentences.</summary>
    public IEnumerable<string> Objections() =>
        Procedure.SystemObjections.Concat(Procedure.Refusals)
            .Concat(Work.Objections.Concat(Schedule?.Objections ?? []).Select(objection => objection.ToString()))
            .Concat(Coats.SelectMany(coat => coat.Run.Cups.Objections.Select(objection => coat.Name + ": " + objection)));

    private IReadOnlyList<Coat> CoatsOf(CrewSchedule? schedule) => [.. Work.Runs.Select(run => new Coat(
        Work.Operations.First(operation => operation.Id == run.Id).Name, run,
        schedule?.Runs.FirstOrDefault(scheduled => scheduled.Run.Id == run.Id)))];
}
