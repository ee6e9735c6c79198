using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// One plan for one bathroom, made by <see cref="BathroomJob.Plan"/>: verdicts, areas, coats with mixing cards, times, air, price, comparison
/// with replacing, warranty reserve and handover. It joins the calculations of the floors below and adds none of its own.
/// </summary>
/// <remarks>
/// What stands in the way is listed in <see cref="Objections"/>; what rests on a missing part is then <see langword="null"/> rather than guessed.
/// A plan with objections is provisional: its timeline and price hold only once they are removed, and it has no <see cref="Handover"/>.
/// What breathing protection has to cover is listed in <see cref="Protection"/>; it does not stand in the way of the timeline, and no plan answers it.
/// </remarks>
public sealed class BathroomPlan
{
    private readonly JobSteps? steps;

    internal BathroomPlan(BathroomJob job)
    {
        Job = job;
        Fixtures = new ValueList<FixturePlan>(job.Fixtures.Select(fixture => new FixturePlan(fixture, job)));
        FixturePlan[] planned = [.. Fixtures.Where(fixture => fixture.IsPlanned)];
        if (planned.Length > 0)
        {
            CoatedArea = Area.FromSquareMeters(planned.Sum(fixture => fixture.CoatedArea.SquareMeters));
            Coats = new ValueList<CoatPlan>(CoatsOf(job, CoatedArea));
            Promoters = new ValueList<PromoterQuantity>(planned.Where(fixture => fixture.Promoter is not null).GroupBy(fixture => fixture.Promoter!)
                .Select(group => new PromoterQuantity(Area.FromSquareMeters(group.Sum(fixture => fixture.CoatedArea.SquareMeters)), group.Key)));
            Reserve = new WarrantyReserve(job.Warranty.Life, job.Warranty.Years, job.Warranty.CostPerClaim, job.Warranty.ClaimProbability, job.Warranty.DiscountRate);
            if (Coats.All(coat => coat.OnSurface.IsAvailable && coat.AtWarmest.IsAvailable && coat.Batches is { IsPossible: true }))
            {
                steps = new JobSteps(job, planned, Coats, CoatedArea);
                Schedule = steps.Impossible.Count > 0 || steps.Steps.Count == 0 ? null
                    : new JobSchedule(job.Start, job.Calendar ?? WorkCalendar.EveryDay(job.Hours, LocalClock.Fixed(job.Start.Offset)), steps.Steps, steps.Lags);
            }

            if (Schedule is { IsPossible: true })
            {
                Air = PlanAir.Study(this);
                IsocyanateScreens = new ValueList<IsocyanateScreen>(PlanAir.Screens(this));
                if (steps!.Missing.Count == 0)
                {
                    Price = new PriceEstimate(job.Prices, PlanPricing.Request(this, planned, steps));
                    NetByFixture = PlanPricing.ByFixture(this, planned);
                    Comparison = CompareWithReplacing();
                }
            }
        }

        Objections = new ValueList<PlanObjection>(PlanObjections.Of(this, steps));
        Protection = new ValueList<LimitComparison>(PlanAir.Protection(this));
        if (IsPossible)
        {
            Handover = HandoverOf(Schedule!);
        }

        Cautions = new ValueList<Caution>(PlanCautions.Of(this));
    }

    /// <summary>What was known and chosen.</summary>
    public BathroomJob Job { get; }

    /// <summary>Every fixture with its verdict, whether it is planned or not.</summary>
    public IReadOnlyList<FixturePlan> Fixtures { get; }

    /// <summary>Area of the planned fixtures; zero when none is planned.</summary>
    public Area CoatedArea { get; } = Area.FromSquareMeters(0);

    /// <summary>Promoter by kind.</summary>
    public IReadOnlyList<PromoterQuantity> Promoters { get; } = ValueList<PromoterQuantity>.Empty;

    /// <summary>The coats in order; empty when no fixture is planned.</summary>
    public IReadOnlyList<CoatPlan> Coats { get; } = ValueList<CoatPlan>.Empty;

    /// <summary>The timeline; <see langword="null"/> when a coat has no times or no batches.</summary>
    public JobSchedule? Schedule { get; }

    /// <summary>The air of the room over the promoter's wipe and the coats; <see langword="null"/> without a schedule, or when nothing evaporates.</summary>
    public AirStudy? Air { get; }

    /// <summary>
    /// What the exhaust really moves, held against what keeps the vapour at a quarter of its lower flammable limit if all solvent of a coat or a wipe came off
    /// while it is put on: the careful bound, which does not rest on how fast the film dries; <see langword="null"/> without an air study.
    /// </summary>
    public LimitComparison? FlammableAirflow => Air is null ? null : new LimitComparison(
        "airflow really moved, against all solvent coming off while it is put on",
        Job.Site.Exhaust.EffectiveFlow.CubicMetersPerSecond,
        Air.SteadyAirflowForFlammableLimit?.CubicMetersPerSecond,
        LimitSense.AtLeast,
        Measure.Airflow,
        Air.FlammableLimit.Source,
        "A stronger exhaust with its make-up air, a slower gun, or fewer fixtures at a time.");

    /// <summary>Isocyanate mist of each coat that has any, where the site gives an airborne fraction; empty otherwise, which is not a pass.</summary>
    public IReadOnlyList<IsocyanateScreen> IsocyanateScreens { get; } = ValueList<IsocyanateScreen>.Empty;

    /// <summary>Cost and price; <see langword="null"/> without a schedule or when a labour standard is missing.</summary>
    public PriceEstimate? Price { get; }

    /// <summary>
    /// The net price by fixture: each bears the hours of its own repairs and its consumables, and a part of everything else by coated area;
    /// <see langword="null"/> without a price.
    /// </summary>
    public PriceByFixture? NetByFixture { get; }

    /// <summary>Refinishing against replacing; <see langword="null"/> without a price or without an offer.</summary>
    public RefinishOrReplace? Comparison { get; }

    /// <summary>Warranty reserve for one fixture; <see langword="null"/> when no fixture is planned.</summary>
    public WarrantyReserve? Reserve { get; }

    /// <summary>Warranty reserve for all planned fixtures, each carrying its own risk; zero when none is planned.</summary>
    public decimal ReserveForAll => (Reserve?.Reserve ?? 0) * Fixtures.Count(fixture => fixture.IsPlanned);

    /// <summary>What the customer is told and what is kept; <see langword="null"/> while anything is objected to.</summary>
    public Handover? Handover { get; }

    /// <summary>Whether nothing stands in the way as far as this library can tell. It says nothing about safety.</summary>
    public bool IsPossible => Objections.Count == 0;

    /// <summary>
    /// What has to be done or found out before a planned fixture may be coated, from the verdicts: a plan with conditions is possible only once they are met.
    /// </summary>
    public IReadOnlyList<VerdictReason> Conditions => new ValueList<VerdictReason>(
        Fixtures.Where(fixture => fixture.IsPlanned).SelectMany(fixture => fixture.Verdict.Reasons.Where(reason => reason.Effect == Suitability.SuitableWithConditions)));

    /// <summary>What stands in the way, each with what would help.</summary>
    public IReadOnlyList<PlanObjection> Objections { get; }

    /// <summary>
    /// Exposure, mixture and mist comparisons that are beyond their limit, beyond first, or that cannot be judged: what the employer's respiratory protection
    /// programme has to cover. An empty list is no all-clear.
    /// </summary>
    public IReadOnlyList<LimitComparison> Protection { get; }

    /// <summary>What can hurt people in this job, what kills fastest first.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>What the plan takes for granted.</summary>
    public IReadOnlyList<string> Assumptions { get; } = new ValueList<string>(
    [
        "The room is held at the given temperature and humidity, day and night, until water may run, against the air that the fan brings in.",
        "One person works without breaks; drying runs beside the work, and waiting for it on site is not charged.",
        "Solvent of the sprayed coats and of the promoter's wipe is counted; cleaning wipes, cleaning of the gun and cups left open are not.",
        "A wipe gives off all that is poured for it, evenly over the wiping and then within minutes (2 min, invented).",
        "Overspray gives off its solvent at once and the film at the given time constant; the room is well mixed apart from the mixing factor.",
        "Volumes are additive on mixing.",
    ]);

    /// <summary>How every number of the plan follows, part by part.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => PlanWorkings.Of(this);

    /// <summary>The job and what stands in its way.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Job.Name + (IsPossible ? ": planned" : ": " + string.Join(" ", Objections.Select(objection => objection.ToString())));

    internal ScheduledStep TimeOf(string name) => Schedule!.Steps.First(step => step.Step.Name == name);

    private static IEnumerable<CoatPlan> CoatsOf(BathroomJob job, Area area)
    {
        // Numbered over the whole system, since one product may stand in two layers.
        Dictionary<string, int> all = job.System.Layers.GroupBy(layer => layer.Product.Name, StringComparer.Ordinal)
            .ToDictionary(product => product.Key, product => product.Sum(layer => layer.Coats), StringComparer.Ordinal);
        Dictionary<string, int> done = all.Keys.ToDictionary(name => name, _ => 0, StringComparer.Ordinal);
        foreach (CoatingLayer layer in job.System.Layers)
        {
            for (int coat = 1; coat <= layer.Coats; coat++)
            {
                string product = layer.Product.Name;
                done[product]++;
                yield return new CoatPlan(all[product] == 1 ? product : product + ", coat " + Figures.Fixed(done[product], 0), layer, area, job);
            }
        }
    }

    private Handover HandoverOf(JobSchedule schedule) =>
        new(Job, [.. Coats.Select(coat => (coat, TimeOf(coat.Name).End))], schedule.Steps[schedule.Steps.Count - 1].End, CoatedArea);

    private RefinishOrReplace? CompareWithReplacing()
    {
        if (Job.Replacement is not ReplacementOffer offer || Price?.Total is not decimal total || total <= 0)
        {
            return null;
        }

        int days = (int)Math.Ceiling((HandoverOf(Schedule!).WaterFrom - Schedule!.Steps[0].Start).TotalDays);
        return new RefinishOrReplace(
            new RenewalOption { Name = "refinishing", Parts = [new CostPart("refinishing, as quoted", total)], LifeYears = offer.RefinishLifeYears, DaysOutOfUse = days },
            offer.Replacement,
            offer.DiscountRate,
            Job.Prices.Currency,
            offer.CostPerDayOutOfUse);
    }
}
