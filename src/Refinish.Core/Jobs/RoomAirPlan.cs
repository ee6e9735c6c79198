using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Estimating;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// The air of one room over a schedule: vapour of coats, promoters and chemicals of the preparation, flammability, exposure in the room,
/// mist of isocyanates, and what protection has to cover.
/// </summary>
public sealed class RoomAirPlan
{
    private static readonly TimeSpan LongestShift = TimeSpan.FromHours(16);
    private static readonly TimeSpan ShortestShift = TimeSpan.FromMinutes(15);
    // How far a well-mixed room may be off.
    private const double BoxModel = 2;

    private static readonly Source Flashing = Source.Derived("what misses the surface flashes, and a part of what lands");

    private static readonly Source NoMistLimit = Source.Supplied("no limit for the mist of polyisocyanates in the set that was chosen");

    private readonly CoatRun[] coats;

    /// <summary>Studies the air of a room.</summary>
    /// <param name="schedule">A schedule that was found.</param>
    /// <param name="room">Identifier of a room of its premises.</param>
    /// <exception cref="ArgumentNullException"><paramref name="schedule"/> is missing.</exception>
    /// <exception cref="ArgumentException">The premises have no such room, or nothing is done in it.</exception>
    public RoomAirPlan(CrewSchedule schedule, string room)
    {
        Schedule = Guard.NotNull(schedule);
        Guard.Named(room);
        Room = schedule.Work.Premises.Rooms.FirstOrDefault(one => one.Id == room) ?? throw new ArgumentException("room is '" + room + "', which the premises do not have.", nameof(room));
        if (!schedule.Work.Courses.TryGetValue(room, out RoomCourse? course))
        {
            throw new ArgumentException("room is '" + room + "', in which nothing is done.", nameof(room));
        }

        Shop shop = schedule.Work.Shop;
        ScheduledRun[] runs = [.. schedule.Runs.Where(run => run.Operation.Operation.Room == room)];
        ScheduledRun[] giving = [.. runs.Where(run => run.Run.GivesOff)];
        ScheduledOperation[] uses = [.. schedule.Operations.Where(operation => operation.Operation.Room == room && operation.Operation.Vapours.Count > 0)];
        AsksForAir = runs.Any(HasIsocyanate);
        Screens = new ValueList<IsocyanateScreen>(Mists(runs, shop));
        Unstated = new ValueList<LimitComparison>(NotStated(schedule, runs, shop));
        coats = [.. giving.Select(run => run.Run)];
        if (giving.Length + uses.Length > 0)
        {
            Zero = RoomAir.ZeroOf(schedule);
            Study = new AirStudy(
                RoomAir.RoomAt(Room, course), Room.Exhaust,
                [.. uses.SelectMany(use => Emissions(schedule, use, Zero)),
                    .. giving.SelectMany(run => RoomAir.Of(run.Run, run.SprayingFrom - Zero, shop))],
                Shift(schedule), shop.Limits);
            Humidity = Study.Humidity(course.AirOf(course.WarmestAir));
        }
    }

    /// <summary>The schedule, which names the operations whose identifiers the study's emissions bear.</summary>
    public CrewSchedule Schedule { get; }

    /// <summary>The room.</summary>
    public SiteRoom Room { get; }

    /// <summary>
    /// The instant from which the study counts, the same for all rooms of the schedule: when the first vapour is given off. Meaningless
    /// without a study.
    /// </summary>
    public DateTimeOffset Zero { get; }

    /// <summary>The study of all vapour in the room; <see langword="null"/> when nothing evaporates.</summary>
    public AirStudy? Study { get; }

    /// <summary>
    /// What the exhaust really moves, held against what keeps the vapour at the allowed share of its lower flammable limit if all solvent
    /// of a coat or a wipe came off while it is put on: the careful bound, which does not rest on how fast the film dries;
    /// <see langword="null"/> without a study.
    /// </summary>
    public LimitComparison? FlammableAirflow => field ??= Study is null ? null : Steady(Study);

    /// <summary>
    /// Relative humidity at the peak of the water that waterborne coats and cleaners give off, against 100 %; <see langword="null"/> when
    /// none states water among its solvents. Times and spray windows are not changed by it.
    /// </summary>
    public LimitComparison? Humidity { get; }

    /// <summary>
    /// Isocyanate mist of each coat that has any, where the shop states an airborne fraction; empty otherwise, which is not a pass.
    /// </summary>
    public IReadOnlyList<IsocyanateScreen> Screens { get; }

    /// <summary>Vapours and mists about which nothing is stated, so that they cannot be judged.</summary>
    public IReadOnlyList<LimitComparison> Unstated { get; }

    /// <summary>Comparisons of vapour and mist in this room that are beyond their limit or cannot be judged.</summary>
    public IReadOnlyList<ProtectionNeed> Protection => field ??= ProtectionNeed.Open(
        [
            .. Screens.Select(screen => Need(screen.Comparison)), .. Unstated.Select(Need),
            .. (Study?.Exposure ?? []).Select(exposure => Need(exposure.Comparison)),
            .. Study is null ? [] : (ProtectionNeed[])[Need(Study.StrictestLimit), Need(Study.ShortTermLimit)],
        ]);

    /// <summary>
    /// The need that decides in this room: mist of isocyanates that cannot be judged, for which no factor can be named, or else the need
    /// with the greatest ratio, so that a respirator whose factor reaches it reaches the others that can be judged; <see langword="null"/>
    /// when none is beyond its limit.
    /// </summary>
    public ProtectionNeed? Hardest => Protection.FirstOrDefault(need => need.Comparison.Outcome == ComparisonOutcome.CannotBeJudged && IsMist(need))
        ?? Protection.Where(need => need.Comparison.Outcome == ComparisonOutcome.Beyond).OrderByDescending(need => need.HazardRatio).FirstOrDefault();

    /// <summary>
    /// Whether a coat with isocyanates is sprayed here: their mist comes with the vapour, and nothing that only filters is proposed.
    /// </summary>
    public bool AsksForAir { get; }

    /// <summary>
    /// Whether the vapour of a solvent comes within a factor of two of what is listed as immediately dangerous to life or health, by the
    /// limits that the shop holds it against: the model of a room is no better than that factor.
    /// </summary>
    public bool IsImmediatelyDangerous =>
        Study?.Exposure.Any(one => one.Limit?.Kind == ExposureLimitKind.Idlh && one.Comparison.OfLimit >= 1 / BoxModel) == true;

    /// <summary>What can hurt in this air.</summary>
    public IReadOnlyList<Caution> Cautions => field ??= new ValueList<Caution>((Study?.Cautions ?? ValueList<Caution>.Empty)
        .Concat(FlammableAirflow is { IsAboutAtLimit: true } ? [Refinish.Cautions.NearFlammable] : ValueList<Caution>.Empty)
        .Concat(Screens.SelectMany(screen => screen.Cautions)).Distinct());

    /// <summary>How the vapour and the mist follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Air of " + Room.Name, [Study?.Workings(), .. Screens.Select(screen => screen.Workings())], [.. coats.Select(Flash)]);

    /// <summary>The room and its flammability.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Room.Name + ": " + (Study?.ToString() ?? "nothing evaporates");

    private LimitComparison Steady(AirStudy study)
    {
        double moved = Room.Exhaust.EffectiveFlow.CubicMetersPerSecond;
        double? needed = study.SteadyAirflowForFlammableLimit?.CubicMetersPerSecond;
        return new LimitComparison(
            "airflow really moved, against all solvent coming off while it is put on", moved, needed, LimitSense.AtLeast, Measure.Airflow,
            study.FlammableLimit.Source,
            moved >= needed ? null : "A stronger exhaust with its make-up air, a slower gun, or fewer fixtures at a time.")
        {
            Digits = AirStudy.ScreeningDigits,
            GoodToFactor = AirStudy.BoxFactor,
            Whose = study.FlammableLimit.Whose,
        };
    }

    private bool IsMist(ProtectionNeed need) => AsksForAir && (Screens.Any(screen => ReferenceEquals(screen.Comparison, need.Comparison)) || Unstated.Any(one => ReferenceEquals(one, need.Comparison)));

    private ProtectionNeed Need(LimitComparison comparison) => new(Room.Id, comparison, AsksForAir, IsImmediatelyDangerous);

    private static bool HasIsocyanate(ScheduledRun run) => run.Run.Layer.Product.IsocyanateFraction.DecimalFractions > 0;

    private static IEnumerable<Emission> Emissions(CrewSchedule schedule, ScheduledOperation use, DateTimeOffset zero)
    {
        (TimeSpan, TimeSpan)[] pieces = [.. use.Pieces.Select(piece => (piece.Start - zero, piece.End - piece.Start))];
        TimeSpan lies = LiesUntilScraped(schedule, use);
        return use.Operation.Vapours.SelectMany(vapour => RoomAir.Of(vapour.TakenOffAfter < lies ? vapour with { TakenOffAfter = lies } : vapour, pieces));
    }

    // Stripper works at least for its dwell, and lies there until somebody comes to scrape it off.
    private static TimeSpan LiesUntilScraped(CrewSchedule schedule, ScheduledOperation use)
    {
        ScheduledOperation? scraped = use.Operation.Kind != WorkKind.LayOnStripper ? null : schedule.Operations.FirstOrDefault(operation =>
            operation.Operation.Kind == WorkKind.Strip && operation.Start >= use.End && operation.Operation.Fixtures.Any(use.Operation.Fixtures.Contains));
        TimeSpan lies = scraped is null ? TimeSpan.Zero : scraped.Start - use.End;
        return lies < Evaporation.LongestLying ? lies : Evaporation.LongestLying;
    }

    private Func<Trace, Num> Flash(CoatRun run) => t => t.Step(
        "part of the solvent that flashes, " + run.Id, "f", Measure.Percent, Flashing, Air.SolventEmission.FlashOf(
            t.Given("η", run.Demand.Gun.TransferEfficiency.DecimalFractions, Measure.Percent),
            t.Given("f_l", Schedule.Work.Shop.FlashOfLanded.DecimalFractions, Measure.Percent)));

    private IEnumerable<IsocyanateScreen> Mists(ScheduledRun[] runs, Shop shop)
    {
        if (shop.AirborneFraction is not Ratio airborne)
        {
            yield break;
        }

        ExposureLimit? mist = shop.Limits.PolyisocyanateMist;
        foreach (ScheduledRun run in runs.Where(HasIsocyanate))
        {
            yield return new IsocyanateScreen
            {
                Room = Room.Room,
                Exhaust = Room.Exhaust,
                CoatingMass = run.Run.SprayedMass,
                SprayTime = run.Run.SprayTime,
                IsocyanateFraction = run.Run.Layer.Product.IsocyanateFraction,
                TransferEfficiency = run.Run.Demand.Gun.TransferEfficiency,
                AirborneFraction = airborne,
                Limit = mist?.MassConcentration,
                LimitSource = mist?.Source ?? NoMistLimit,
                Whose = mist?.Whose ?? shop.Limits.Whose,
            };
        }
    }

    private IEnumerable<LimitComparison> NotStated(CrewSchedule schedule, ScheduledRun[] runs, Shop shop)
    {
        if (shop.AirborneFraction is null && runs.Any(HasIsocyanate))
        {
            ExposureLimit? mist = shop.Limits.PolyisocyanateMist;
            yield return new LimitComparison(
                "polyisocyanate mist while spraying", null, mist?.MassConcentration?.KilogramsPerCubicMeter, LimitSense.AtMost,
                    Measure.MassConcentration,
                mist?.Source ?? NoMistLimit,
                    "state an airborne fraction; supplied air under a respiratory protection programme whatever it says")
            {
                Whose = mist?.Whose ?? shop.Limits.Whose,
            };
        }

        foreach (Refinish.Coatings.AdhesionPromoter promoter in schedule.Work.Procedures.Where(procedure => procedure.Fixture.Room == Room.Id)
            .Select(procedure => procedure.Promoter).OfType<Refinish.Coatings.AdhesionPromoter>().Where(promoter => promoter.Solvents.Count == 0).Distinct())
        {
            yield return Unknown("vapour of " + promoter.Name + " while it is wiped on", promoter.Source);
        }

        Operation[] here = [.. schedule.Operations.Select(operation => operation.Operation).Where(operation => operation.Room == Room.Id)];
        foreach (PrepChemical chemical in shop.Chemicals.Where(chemical => !chemical.IsVapourStated && here.Any(operation => ChemicalUse.Uses(operation, chemical))))
        {
            yield return Unknown("vapour of " + chemical.Name, chemical.Source);
        }

        Substrates.FillerProduct filler = shop.Filler.Product;
        if (filler.Chemistry != Substrates.FillerChemistry.Epoxy && here.Any(operation => operation.Materials.Any(need => need.Item == filler.Id)))
        {
            yield return Unknown("vapour of " + filler.Name + ", styrene where it is a polyester", filler.Source);
        }
    }

    private static LimitComparison Unknown(string subject, Source source) => new(subject, null, null, LimitSense.AtMost, Measure.MassConcentration, source);

    // The longest that one person is in the room on one day; whoever stands by is outside.
    private TimeSpan Shift(CrewSchedule schedule)
    {
        TimeSpan longest = RoomPresence.Of(schedule).Where(stay => stay.Room == Room.Id).GroupBy(stay => (stay.Person, stay.From.Date))
            .Select(day => day.Max(stay => stay.Until) - day.Min(stay => stay.From)).Append(ShortestShift).Max();
        return longest < LongestShift ? longest : LongestShift;
    }
}
