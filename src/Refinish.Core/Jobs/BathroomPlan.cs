using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// One plan for one bathroom, made by <see cref="BathroomJob.Plan"/>: verdicts, areas, coats with mixing cards, times, air, price, comparison
/// with replacing, warranty reserve and handover. It joins the calculations of the floors below and adds none of its own.
/// </summary>
/// <remarks>
/// What stands in the way is listed in <see cref="Objections"/>; what rests on a missing part is then <see langword="null"/> rather than guessed.
/// </remarks>
public sealed class BathroomPlan
{
    private static readonly TimeSpan WorkingDay = TimeSpan.FromHours(8);

    private readonly JobSteps? steps;

    internal BathroomPlan(BathroomJob job)
    {
        Job = job;
        Fixtures = new ValueList<FixturePlan>(job.Fixtures.Select(fixture => new FixturePlan(fixture, job)));
        FixturePlan[] planned = [.. Fixtures.Where(fixture => fixture.IsPlanned)];
        Coats = ValueList<CoatPlan>.Empty;
        Promoters = ValueList<PromoterQuantity>.Empty;
        IsocyanateScreens = ValueList<IsocyanateScreen>.Empty;
        if (planned.Length > 0)
        {
            CoatedArea = Area.FromSquareMeters(planned.Sum(fixture => fixture.CoatedArea.SquareMeters));
            Coats = new ValueList<CoatPlan>(CoatsOf(job, CoatedArea));
            Promoters = new ValueList<PromoterQuantity>(planned.Where(fixture => fixture.Promoter is not null).GroupBy(fixture => fixture.Promoter!)
                .Select(group => new PromoterQuantity(Area.FromSquareMeters(group.Sum(fixture => fixture.CoatedArea.SquareMeters)), group.Key)));
            Reserve = new WarrantyReserve(job.Warranty.Life, job.Warranty.Years, job.Warranty.CostPerClaim, job.Warranty.ClaimProbability, job.Warranty.DiscountRate);
            if (Coats.All(coat => coat.OnSurface.IsAvailable && coat.Batches is { IsPossible: true }))
            {
                steps = new JobSteps(job, planned, Coats, CoatedArea);
                Schedule = steps.Impossible.Count > 0 ? null : new JobSchedule(job.Start, job.Hours, steps.Steps, steps.Lags);
            }

            if (Schedule is { IsPossible: true })
            {
                Air = AirOf(job, Coats, Schedule);
                IsocyanateScreens = new ValueList<IsocyanateScreen>(ScreensOf(job, Coats));
                Handover = new Handover(job, [.. Coats.Select(coat => (coat, TimeOf(coat.Name).End))], Schedule.Steps[Schedule.Steps.Count - 1].End, CoatedArea);
                Price = new PriceEstimate(job.Prices, RequestOf(planned));
                Comparison = CompareWithReplacing();
            }
        }

        Objections = new ValueList<string>(PlanObjections.Of(this, steps));
        Cautions = new ValueList<Caution>(PlanCautions.Of(this));
    }

    /// <summary>What was known and chosen.</summary>
    public BathroomJob Job { get; }

    /// <summary>Every fixture with its verdict, whether it is planned or not.</summary>
    public IReadOnlyList<FixturePlan> Fixtures { get; }

    /// <summary>Area of the planned fixtures; zero when none is planned.</summary>
    public Area CoatedArea { get; } = Area.FromSquareMeters(0);

    /// <summary>Promoter by kind.</summary>
    public IReadOnlyList<PromoterQuantity> Promoters { get; }

    /// <summary>The coats in order; empty when no fixture is planned.</summary>
    public IReadOnlyList<CoatPlan> Coats { get; }

    /// <summary>The timeline; <see langword="null"/> when a coat has no times or no batches.</summary>
    public JobSchedule? Schedule { get; }

    /// <summary>The air of the room over the coats; <see langword="null"/> without a schedule, or when nothing evaporates.</summary>
    public AirStudy? Air { get; }

    /// <summary>Isocyanate mist of each coat that has any, where the site gives an airborne fraction; empty otherwise, which is not a pass.</summary>
    public IReadOnlyList<IsocyanateScreen> IsocyanateScreens { get; }

    /// <summary>Cost and price; <see langword="null"/> without a schedule.</summary>
    public PriceEstimate? Price { get; }

    /// <summary>Refinishing against replacing; <see langword="null"/> without a price or without an offer.</summary>
    public RefinishOrReplace? Comparison { get; }

    /// <summary>Warranty reserve; <see langword="null"/> when no fixture is planned.</summary>
    public WarrantyReserve? Reserve { get; }

    /// <summary>What the customer is told and what is kept; <see langword="null"/> without a schedule.</summary>
    public Handover? Handover { get; }

    /// <summary>Whether nothing stands in the way as far as this library can tell. It says nothing about safety.</summary>
    public bool IsPossible => Objections.Count == 0;

    /// <summary>What stands in the way, each with what would help.</summary>
    public IReadOnlyList<string> Objections { get; }

    /// <summary>What can hurt people in this job.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>What the plan takes for granted.</summary>
    public IReadOnlyList<string> Assumptions { get; } = new ValueList<string>(
    [
        "The room is held at the given temperature and humidity, day and night, until water may run.",
        "One person works; drying runs beside the work.",
        "Solvent of the sprayed coats is counted; wipes, cleaning of the gun and cups left open are not.",
        "Overspray gives off its solvent at once and the film at the given time constant; the room is well mixed apart from the mixing factor.",
        "Volumes are additive on mixing.",
    ]);

    /// <summary>How every number of the plan follows, part by part.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => PlanWorkings.Of(this);

    /// <summary>The job and what stands in its way.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Job.Name + (IsPossible ? ": planned" : ": " + string.Join(" ", Objections));

    internal ScheduledStep TimeOf(string name) => Schedule!.Steps.First(step => step.Step.Name == name);

    private static IEnumerable<CoatPlan> CoatsOf(BathroomJob job, Area area)
    {
        foreach (CoatingLayer layer in job.System.Layers)
        {
            for (int coat = 1; coat <= layer.Coats; coat++)
            {
                string name = layer.Coats == 1 ? layer.Product.Name : layer.Product.Name + ", coat " + Figures.Fixed(coat, 0);
                yield return new CoatPlan(name, layer, area, job);
            }
        }
    }

    private static IEnumerable<IsocyanateScreen> ScreensOf(BathroomJob job, IReadOnlyList<CoatPlan> coats)
    {
        if (job.Site.AirborneFraction is not Ratio airborne)
        {
            yield break;
        }

        foreach (CoatPlan coat in coats.Where(coat => coat.Layer.Product.IsocyanateFraction.DecimalFractions > 0))
        {
            yield return new IsocyanateScreen
            {
                Room = job.Site.Room,
                Exhaust = job.Site.Exhaust,
                CoatingMass = Mass.FromKilograms(
                    coat.Quantity.SprayedVolume.CubicMeters / (1 + coat.Layer.Reducer.DecimalFractions) * coat.Layer.Product.MixedDensity.KilogramsPerCubicMeter),
                SprayTime = coat.Quantity.SprayTime,
                IsocyanateFraction = coat.Layer.Product.IsocyanateFraction,
                TransferEfficiency = job.Gun.TransferEfficiency,
                AirborneFraction = airborne,
                Limit = job.Site.IsocyanateLimit,
                LimitSource = job.Site.IsocyanateLimitSource,
            };
        }
    }

    private AirStudy? AirOf(BathroomJob job, IReadOnlyList<CoatPlan> coats, JobSchedule schedule)
    {
        CoatPlan[] evaporating = [.. coats.Where(coat => coat.Layer.Product.Solvents.Count > 0)];
        if (evaporating.Length == 0)
        {
            return null;
        }

        // Spraying comes last within a coat, after stand-in time and mixing.
        DateTimeOffset Spraying(CoatPlan coat) => TimeOf(coat.Name).End - coat.Quantity.SprayTime;
        DateTimeOffset first = Spraying(evaporating[0]);
        return new AirStudy(
            job.Site.Room with { AirTemperature = job.Site.Room.AirTemperature ?? job.Site.Air.DryBulb },
            job.Site.Exhaust,
            [.. evaporating.Select(coat => new SolventEmission
            {
                Name = coat.Name,
                Start = Spraying(coat) - first,
                SprayTime = coat.Quantity.SprayTime,
                VolatileMass = coat.VolatileMass,
                Solvents = coat.Layer.Product.Solvents,
                FlashFraction = Ratio.FromDecimalFractions(1 - job.Gun.TransferEfficiency.DecimalFractions),
                FilmTimeConstant = job.Site.FilmTimeConstant,
            })],
            WorkingDay);
    }

    private EstimateRequest RequestOf(FixturePlan[] planned)
    {
        List<LabourTask> tasks = [];
        int trips = Schedule!.Steps.Where(step => step.Step.IsAttended).SelectMany(step => step.Pieces).Select(piece => piece.Start.Date).Distinct().Count();
        if (JobSteps.Find(Job, LabourStandards.Travel) is LabourStandard travel)
        {
            tasks.Add(new LabourTask(travel, units: trips));
        }

        tasks.AddRange(steps!.TasksTogether());
        return new EstimateRequest
        {
            Labour = new LabourEstimate(tasks, Job.Difficulty),
            Materials = MaterialsOf(planned),
            Fixtures = planned.Length,
            Trips = trips,
            Options = Job.Options,
            WarrantyReserve = Reserve!.Reserve,
        };
    }

    private List<MaterialNeed> MaterialsOf(FixturePlan[] planned)
    {
        List<MaterialNeed> needs = [];
        foreach (CoatPlan coat in Coats)
        {
            double product = coat.Cups.Sum(cup => cup.LineAfterHardener.CubicMeters);
            needs.Add(new MaterialNeed(coat.Layer.Product.Name, Volume.FromCubicMeters(product)));
            if (coat.Layer.Product.Reducer is CoatingComponent reducer && coat.Layer.Reducer.DecimalFractions > 0)
            {
                needs.Add(new MaterialNeed(reducer.Name, Volume.FromCubicMeters(coat.Cups.Sum(cup => cup.ReducerVolume.CubicMeters))));
            }
        }

        needs.AddRange(Promoters.Select(wipe => new MaterialNeed(wipe.Promoter.Name, wipe.Volume)));
        double filler = planned.Sum(fixture => fixture.Filler.Volume.CubicMeters);
        if (filler > 0)
        {
            needs.Add(new MaterialNeed(Job.Filler.Product.Name, Volume.FromCubicMeters(filler)));
        }

        return needs;
    }

    private RefinishOrReplace? CompareWithReplacing()
    {
        if (Job.Replacement is not ReplacementOffer offer || Price?.Total is not decimal total || total <= 0)
        {
            return null;
        }

        int days = (int)Math.Ceiling((Handover!.WaterFrom - Schedule!.Steps[0].Start).TotalDays);
        return new RefinishOrReplace(
            new RenewalOption { Name = "refinishing", Parts = [new CostPart("refinishing, as quoted", total)], LifeYears = offer.RefinishLifeYears, DaysOutOfUse = days },
            offer.Replacement,
            offer.DiscountRate,
            Job.Prices.Currency,
            offer.CostPerDayOutOfUse);
    }
}
