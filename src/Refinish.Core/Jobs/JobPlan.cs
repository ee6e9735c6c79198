using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// One plan for one job, made by <see cref="Job.Plan"/>, stage by stage: procedures, operations and runs of coating, schedule, air of each
/// room, costs and handover. It calls the stages in this order and adds nothing of its own.
/// </summary>
/// <remarks>
/// What stands in the way is listed in <see cref="Objections"/>; what rests on a missing part is then <see langword="null"/> rather than
/// guessed. A plan with objections is provisional: its times and price hold only once they are removed, and it has no
/// <see cref="Handover"/>, unless all that is objected to is that a fixture is left out: then times, price and handover are those of the
/// others. What breathing protection has to cover is listed in <see cref="Protection"/>; it does not stand in the way of the times, and no
/// plan answers it.
/// </remarks>
public sealed class JobPlan
{
    internal JobPlan(Job job)
    {
        Job = job;
        PlanBuilder builder = new(job);
        builder.Build();
        Procedures = new ValueList<Procedure>(builder.Procedures);
        Planned = new ValueList<Procedure>(builder.Planned);
        Work = builder.Work;
        Schedule = builder.Schedule;
        Air = new ValueList<RoomAirPlan>(builder.Air);
        Costs = builder.Costs;
        Comparison = builder.Comparison;
        Objections = new ValueList<PlanObjection>(builder.Objections);
        Handover = builder.Handover;
    }

    /// <summary>What was known and chosen.</summary>
    public Job Job { get; }

    /// <summary>The procedure of every fixture that could be judged, with its verdict, whether it is planned or not.</summary>
    public IReadOnlyList<Procedure> Procedures { get; }

    /// <summary>The procedures that are planned.</summary>
    public IReadOnlyList<Procedure> Planned { get; }

    /// <summary>The operations, waits and runs of coating; <see langword="null"/> when no fixture is planned.</summary>
    public WorkList? Work { get; }

    /// <summary>When each operation is done and by whom; <see langword="null"/> when a coat has no times or no batches.</summary>
    public CrewSchedule? Schedule { get; }

    /// <summary>The air room by room; empty without a schedule that was found.</summary>
    public IReadOnlyList<RoomAirPlan> Air { get; }

    /// <summary>
    /// Hours, materials, options and price; <see langword="null"/> without a schedule or when a labour standard is missing.
    /// </summary>
    public JobCosts? Costs { get; }

    /// <summary>Cost and price; <see langword="null"/> without <see cref="Costs"/>.</summary>
    public PriceEstimate? Price => Costs?.Price;

    /// <summary>Refinishing against replacing; <see langword="null"/> without a price or without an offer.</summary>
    public RefinishOrReplace? Comparison { get; }

    /// <summary>
    /// What the customer is told and what is kept; of the planned fixtures; <see langword="null"/> while anything is objected to other than
    /// a fixture that is left out.
    /// </summary>
    public Handover? Handover { get; }

    /// <summary>
    /// The quote for the customer, of the planned fixtures; <see langword="null"/> without a price, while anything is objected to other
    /// than a fixture that is left out (<see cref="Objections"/> then says why), and while readings look like another unit
    /// (<see cref="Doubts"/>): they are taken again first.
    /// </summary>
    public CustomerQuote? Quote =>
        field ??= Handover is not null && Price is { IsComplete: true } && !Doubts.Any(doubt => doubt.IsUnitMixUp)
        ? new CustomerQuote(this)
        : null;

    /// <summary>The operations; empty when no fixture is planned.</summary>
    public IReadOnlyList<Operation> Operations => Work?.Operations ?? ValueList<Operation>.Empty;

    /// <summary>The runs of coating with times and cups, by start; empty without a schedule that was found.</summary>
    public IReadOnlyList<ScheduledRun> Runs => Schedule?.Runs ?? ValueList<ScheduledRun>.Empty;

    /// <summary>Area of the planned fixtures; zero when none is planned.</summary>
    public Area CoatedArea => Area.FromSquareMeters(Planned.Sum(procedure => procedure.SquareMeters));

    /// <summary>
    /// Whether nothing stands in the way as far as this library can tell; the <see cref="Conditions"/> still have to be met. It says
    /// nothing about safety.
    /// </summary>
    public bool IsPossible => Objections.Count == 0;

    /// <summary>What stands in the way, each with what would help.</summary>
    public IReadOnlyList<PlanObjection> Objections { get; }

    /// <summary>What has to be done or found out before the plan holds, though nothing stands in its way.</summary>
    public IReadOnlyList<PlanCondition> Conditions => field ??= new ValueList<PlanCondition>(PlanConditions.Of(this));

    /// <summary>
    /// What about the readings is not what such fixtures are: of each fixture, of each against its defects, its room and what stands beside
    /// it. No doubt stands in the way of a plan; a mix-up of units is among the <see cref="Conditions"/> too. An empty list does not say
    /// that the readings are right.
    /// </summary>
    public IReadOnlyList<Doubt> Doubts => field ??= new ValueList<Doubt>(PlanDoubts.Of(Job));

    /// <summary>
    /// The reading of each planned rough fixture that is worth taking next, by the area that is coated, the one that narrows its area most
    /// first; empty when every fixture was measured. <see cref="JobRange.NextReading"/> says it by the price.
    /// </summary>
    public IReadOnlyList<NextReading> NextReadings => field ??= new ValueList<NextReading>(NextReading.Of(this));

    /// <summary>
    /// Volatile organic compounds of each product by its id, as applied and at the maker's greatest reducer, against the limit of the
    /// shop's set that it keeps least; where the set has none, against the one that the library remembers for tub and tile refinish
    /// coatings, whose source says how well it is known. Only a limit of the set stands in the way of a plan.
    /// </summary>
    public IReadOnlyDictionary<string, LimitComparison> Voc => field ??= (Work?.Runs ?? []).Select(run => run.Layer)
        .GroupBy(layer => layer.Product.Id, StringComparer.Ordinal)
        .ToDictionary(
            same => same.Key,
            same => same.Select(layer => VocComparison.Of(layer, Job.Shop.Limits)).OrderBy(LeastKept.Rank).First(),
            StringComparer.Ordinal);

    /// <summary>What each person breathes on each day, through the rooms they are in.</summary>
    public IReadOnlyList<DayExposure> Exposure => field ??= new ValueList<DayExposure>(DayExposure.Of(this));

    /// <summary>
    /// The noise of each person on each day with loud work, against each noise limit of the shop's set, without hearing protection; empty
    /// without a schedule that was found.
    /// </summary>
    public IReadOnlyList<DayNoise> Noise => field ??= new ValueList<DayNoise>(DayNoise.Of(this));

    /// <summary>
    /// Exposures of rooms and people that are beyond their limit, beyond first, or that cannot be judged: what the employer's respiratory
    /// protection programme has to cover. An empty list is no all-clear.
    /// </summary>
    public IReadOnlyList<ProtectionNeed> Protection => field ??= ProtectionNeed.Open(Air.SelectMany(room => room.Protection).Concat(Exposure.SelectMany(day => day.Protection)));

    /// <summary>
    /// What can hurt people in this job, each caution once with what brings it, what kills fastest first. It stands here because an
    /// operation, the survey of a fixture, a coat, the air of a room, an option or the handover brings it.
    /// </summary>
    public IReadOnlyList<PlannedCaution> Cautions => field ??= new ValueList<PlannedCaution>(PlanCautions.Of(this));

    /// <summary>
    /// What the plan rests on: the sources of every step of its <see cref="Workings"/>, of its verdicts, conditions, cautions and
    /// comparisons, and of what it was fed: kinds of work, labour standards, products and their times. Prices, wages, readings
    /// and the settings of the gun have no source of their own, so that invented ones among them, as in <see cref="Shop.Generic"/>, are
    /// not counted.
    /// </summary>
    public Provenance Provenance => field ??= new Provenance(PlanSources.Of(this));

    /// <summary>What the plan takes for granted.</summary>
    public IReadOnlyList<string> Assumptions { get; } = PlanAssumptions.All;

    /// <summary>The cautions that concern the crew, the customer or the occupants, in the same order.</summary>
    /// <param name="audience">Whom they concern; of several, those that concern any of them.</param>
    /// <returns>A part of <see cref="Cautions"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="audience"/> is nobody or somebody unnamed.</exception>
    public IReadOnlyList<PlannedCaution> CautionsFor(Audience audience)
    {
        Audience somebody = Caution.Somebody(audience, nameof(audience));

        // To people who live there the first thing to know is that they leave.
        return new ValueList<PlannedCaution>(Cautions.Where(planned => (planned.Caution.Concerns & somebody) != 0)
            .OrderBy(planned => somebody == Audience.Occupant && planned.Caution.Hazard == Hazard.Occupants ? 0 : 1));
    }

    /// <summary>How every number of the plan follows, stage by stage.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => PlanWorkings.Of(this);

    /// <summary>The job and what stands in its way.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Job.Name + (IsPossible ? ": planned" : ": " + string.Join(" ", Objections.Select(objection => objection.ToString())));

    /// <summary>The schedule, if one was found.</summary>
    internal CrewSchedule? Found => Schedule is { IsPossible: true } found ? found : null;
}
