using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// A room in which coats are sprayed and liquids wiped on, one after the other: what is in its air over time, and how that stands against the flammable limit
/// and against exposure limits. The well-mixed box, V dC/dt = G(t) − F C, solved exactly for any number of sources.
/// </summary>
/// <remarks>
/// Each coat has a closed form (steady spray, part flashing, first-order film) and coats add up. Maxima are located where derivatives
/// vanish, with the zeros counted, so no peak is missed between samples. Flammability of a mixture by Le Chatelier: the sum of volume
/// fraction over limit, at the room's pressure. Eight-hour average and mixture index: 29 CFR 1910.1000(d)(1)(i) and (d)(2)(i); the average is the
/// worst period of a shift's length, spread over eight hours. Infiltration is the room's own, and comes on top of the fan.
/// A screening, not a finding of compliance: the breathing zone beside the gun is richer than the room, and a film's last solvent is slower than first order.
/// </remarks>
/// <example><code>
/// Room bathroom = new(Length.FromFeet(8), Length.FromFeet(5), Length.FromFeet(8));
/// Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(250) };
/// SolventEmission coat = new()
/// {
///     Name = "topcoat", Start = TimeSpan.Zero, SprayTime = TimeSpan.FromMinutes(6), VolatileMass = Mass.FromGrams(164),
///     Solvents = [new(GenericSolvents.ButylAcetate, Ratio.FromPercent(100))],
///     FlashFraction = Ratio.FromPercent(40), FilmTimeConstant = TimeSpan.FromMinutes(15),
/// };
/// AirStudy study = new(bathroom, fan, [coat], TimeSpan.FromHours(8));
/// LimitComparison fire = study.FlammableLimit;              // against a quarter of the lower flammable limit
/// TimeSpan? back = study.TimeToReEntry(0.1);
/// </code></example>
public sealed class AirStudy
{
    /// <summary>29 CFR 1910.1000(d)(1)(i) divides by eight hours whatever the length of the shift.</summary>
    internal const double EightHours = 8 * 3600;
    internal const double FifteenMinutes = 15 * 60;
    internal const double QuarterOfLimit = 0.25;

    internal static readonly Source TimeWeighted = Source.Published("29 CFR 1910.1000", "(d)(1)(i)");
    internal static readonly Source Additive = Source.Published("29 CFR 1910.1000", "(d)(2)(i)");
    internal static readonly Source Quarter = Source.Published("International Mechanical Code", "502.7.3.3: at most 25 % of the lower flammable limit; the same in WAC 296-835-11010 for dip tanks");
    internal static readonly Source Tenth = Source.Published("WAC 296-304-03009", "(2): below 10 % of the lower explosive limit, spray painting in ships");

    private const string OshaLimit = "OSHA PEL";
    private const string BreatheProtected = "breathing protection by the employer's programme; less solvent at a time; more fresh air seldom suffices in a bathroom";

    private readonly double shift;
    private readonly double freshAir;

    /// <summary>Studies a room against <see cref="PublishedLimits"/>.</summary>
    /// <param name="room">The room.</param>
    /// <param name="exhaust">Its exhaust.</param>
    /// <param name="emissions">The coats, at least one, in any order; they may overlap.</param>
    /// <param name="shift">How long a person is in the room in a working day, 15 min to 16 h.</param>
    /// <exception cref="ArgumentException">There is no coat, or one registry number has two descriptions.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="shift"/> is outside its range.</exception>
    public AirStudy(Room room, Exhaust exhaust, IReadOnlyList<Emission> emissions, TimeSpan shift)
        : this(room, exhaust, emissions, shift, PublishedLimits.All)
    {
    }

    /// <summary>Studies a room against the caller's own limits.</summary>
    /// <param name="room">The room.</param>
    /// <param name="exhaust">Its exhaust.</param>
    /// <param name="emissions">The coats, at least one, in any order; they may overlap.</param>
    /// <param name="shift">How long a person is in the room in a working day, 15 min to 16 h.</param>
    /// <param name="limits">The limits to compare with; a substance without one cannot be judged.</param>
    /// <exception cref="ArgumentException">There is no coat, or one registry number has two descriptions.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="shift"/> is outside its range.</exception>
    public AirStudy(Room room, Exhaust exhaust, IReadOnlyList<Emission> emissions, TimeSpan shift, IReadOnlyList<ExposureLimit> limits)
    {
        Room = Guard.NotNull(room, nameof(room));
        Exhaust = Guard.NotNull(exhaust, nameof(exhaust));
        Emissions = Guard.List(emissions, nameof(emissions), 1);
        this.shift = Guard.Within(shift, Bounds.Between(FifteenMinutes, 16 * 3600, Measure.Hours), nameof(shift));
        Limits = Guard.List(limits, nameof(limits));

        Load = new AirLoad(Emissions);
        RoomVolume = room.Volume.CubicMeters;
        freshAir = AirKernel.FreshAir(exhaust.EffectiveFlow.CubicMetersPerSecond, room.Infiltration.CubicMetersPerSecond, exhaust.MixingFactor);
        Changes = freshAir / RoomVolume;
        Shapes = new AirShapes(Load.Timeline, Changes);
    }

    /// <summary>The room.</summary>
    public Room Room { get; }

    /// <summary>Its exhaust.</summary>
    public Exhaust Exhaust { get; }

    /// <summary>The coats and whatever else gives off vapour.</summary>
    public IReadOnlyList<Emission> Emissions { get; }

    /// <summary>The limits compared with.</summary>
    public IReadOnlyList<ExposureLimit> Limits { get; }

    /// <summary>How long a person is in the room in a working day.</summary>
    public TimeSpan Shift => Durations.FromSeconds(shift);

    /// <summary>When the last coat or liquid is on, from the start of the study.</summary>
    public TimeSpan LastSprayEnds => Emissions.Max(emission => emission.End);

    /// <summary>The flow of fresh air that counts in a well-mixed room: what the fan moves and what infiltrates, over the mixing factor.</summary>
    public VolumeFlow FreshAirFlow => VolumeFlow.FromCubicMetersPerSecond(freshAir);

    /// <summary>Air changes per hour that count: fresh-air flow over volume.</summary>
    public double AirChangesPerHour => Changes * 3600;

    /// <summary>Each substance's peak and averages, in the order in which the coats name them.</summary>
    public IReadOnlyList<SubstanceAir> Substances => field ??= new ValueList<SubstanceAir>(Enumerable.Range(0, Load.Solvents.Length).Select(Study));

    /// <summary>
    /// The largest fraction of the lower flammable limit, all substances together (Le Chatelier); <see langword="null"/> when a limit is not known.
    /// Without airflow: when all has evaporated.
    /// </summary>
    public Ratio? PeakFlammableFraction => Flammability.IsWhole ? Ratio.FromDecimalFractions(Flammability.Peak) : null;

    /// <summary>When that peak is reached; <see langword="null"/> without airflow or when a limit is not known.</summary>
    public TimeSpan? PeakFlammableAt => Flammability.IsWhole && Flammability.PeakAt is double at ? Durations.FromSeconds(at) : null;

    /// <summary>The peak against a quarter of the lower flammable limit. Cannot be judged when a limit is not known, unless the others alone pass it.</summary>
    public LimitComparison FlammableLimit => Flammable(QuarterOfLimit, "peak of the vapour, of its lower flammable limit", Quarter);

    /// <summary>The same peak against a tenth, the line to design for.</summary>
    public LimitComparison FlammableDesignLine => Flammable(0.1, "peak of the vapour, of its lower flammable limit, design line", Tenth);

    /// <summary>Each substance against each limit known for it; one that cannot be judged where there is none.</summary>
    public IReadOnlyList<ExposureComparison> Exposure => field ??= ExposureComparisons.Of(Substances, Limits);

    /// <summary>
    /// The mixture index of the eight-hour averages over the OSHA limits, Em = Σ C/L; <see langword="null"/> when a substance has no OSHA limit.
    /// </summary>
    public double? AdditiveIndex => Osha.IsWhole ? Osha.Average : null;

    /// <summary>That index against 1. Cannot be judged when a substance has no OSHA limit, unless the others alone pass 1.</summary>
    public LimitComparison AdditiveLimit => IndexComparison(Osha, "mixture index of the OSHA limits, 8-hour averages");

    /// <summary>
    /// The mixture index over the lowest eight-hour limit known for each substance, whoever set it; <see langword="null"/> when a substance has none.
    /// </summary>
    public double? StrictestIndex => Strictest.IsWhole ? Strictest.Average : null;

    /// <summary>That index against 1.</summary>
    public LimitComparison StrictestLimit => IndexComparison(Strictest, "mixture index of the lowest limits known, 8-hour averages");

    /// <summary>
    /// The mixture index of the worst fifteen minutes over the lowest short-term limit known for each substance. Those without a short-term
    /// limit are left out; <see langword="null"/> when none has one.
    /// </summary>
    public double? ShortTermIndex => ShortTerm.IsEmpty ? null : ShortTerm.Average;

    /// <summary>That index against 1. It is usually the one that a bathroom fails, since a coat is sprayed in minutes.</summary>
    public LimitComparison ShortTermLimit => new(
        "mixture index of the lowest short-term limits known, worst fifteen minutes",
        ShortTermIndex,
        1,
        LimitSense.AtMost,
        Measure.Number,
        Additive,
        ShortTermIndex > 1 ? BreatheProtected : null);

    /// <summary>
    /// The flow the exhaust must really move (mixing factor included) so that the peak stays at a quarter of the lower flammable limit;
    /// zero when it does without a fan, <see langword="null"/> when a limit is not known. It is solved for anew at each call.
    /// </summary>
    public VolumeFlow? AirflowForFlammableLimit =>
        Flammability.IsWhole ? Flow(AirSizing.ForPeak(Load, Flammability.Weights, QuarterOfLimit * RoomVolume)) : null;

    /// <summary>
    /// The flow that would do so if the coats flashed as they are sprayed and spraying never ended: K · G / (25 % of the limit).
    /// Never less than <see cref="AirflowForFlammableLimit"/>.
    /// </summary>
    public VolumeFlow? SteadyAirflowForFlammableLimit =>
        Flammability.IsWhole ? Flow(AirSizing.GreatestRelease(Load, Flammability.Weights) / QuarterOfLimit / RoomVolume) : null;

    /// <summary>
    /// The flow the exhaust must really move so that neither the mixture index of the lowest eight-hour limits known nor that of the short-term
    /// limits is above 1; zero when both are below without a fan, <see langword="null"/> when a substance has no eight-hour limit.
    /// In a bathroom it is usually far beyond any fan: then breathing protection has to do it.
    /// </summary>
    public VolumeFlow? AirflowForExposureIndex =>
        Strictest.IsWhole
            ? Flow(Math.Max(
                AirSizing.ForDose(Load, Strictest.Weights, shift, EightHours * RoomVolume),
                AirSizing.ForDose(Load, ShortTerm.Weights, FifteenMinutes, FifteenMinutes * RoomVolume)))
            : null;

    /// <summary>What to warn of with these results.</summary>
    public IReadOnlyList<Caution> Cautions => field ??= ExposureComparisons.Cautions(this);

    internal AirLoad Load { get; }

    internal double RoomVolume { get; }

    /// <summary>λ, 1/s.</summary>
    internal double Changes { get; }

    internal double ShiftSeconds => shift;

    internal AirShapes Shapes { get; }

    internal AirIndex Flammability => field ??= new AirIndex(
        this,
        AirKernel.MolarVolume * AirKernel.StandardPressure / Room.AirPressure.Pascals,
        [.. Load.Solvents.Select(solvent => solvent.LowerFlammableLimit?.DecimalFractions)],
        shift,
        EightHours);

    internal AirIndex Osha => field ??= new AirIndex(this, AirKernel.MolarVolume, ExposureComparisons.Lowest(Load.Solvents, Limits, ExposureLimitKind.Twa8h, OshaLimit), shift, EightHours);

    internal AirIndex Strictest => field ??= new AirIndex(this, AirKernel.MolarVolume, ExposureComparisons.Lowest(Load.Solvents, Limits, ExposureLimitKind.Twa8h, null), shift, EightHours);

    internal AirIndex ShortTerm => field ??= new AirIndex(this, AirKernel.MolarVolume, ExposureComparisons.Lowest(Load.Solvents, Limits, ExposureLimitKind.Stel15min, null), FifteenMinutes, FifteenMinutes);

    /// <summary>The concentration of a substance at a time.</summary>
    /// <param name="solvent">A substance of this study, known by its registry number.</param>
    /// <param name="time">From the start of the study, 0 to 120 days.</param>
    /// <returns>Mass in the volume of air.</returns>
    /// <exception cref="ArgumentException"><paramref name="solvent"/> is not released in this study.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is outside its range.</exception>
    public MassConcentration ConcentrationAt(Solvent solvent, TimeSpan time) =>
        MassConcentration.FromKilogramsPerCubicMeter(AirLoad.Sum(Load.Masses(Known(solvent)), Shapes.Answers, Time(time, nameof(time))) / RoomVolume);

    /// <summary>The fraction of the lower flammable limit at a time, all substances together.</summary>
    /// <param name="time">From the start of the study, 0 to 120 days.</param>
    /// <returns>The fraction; <see langword="null"/> when a limit is not known.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is outside its range.</exception>
    public Ratio? FlammableFractionAt(TimeSpan time)
    {
        double seconds = Time(time, nameof(time));
        return Flammability.IsWhole ? Ratio.FromDecimalFractions(AirLoad.Sum(Flammability.Weights, Shapes.Answers, seconds) / RoomVolume) : null;
    }

    /// <summary>Where a substance is at a time: film, air, gone.</summary>
    /// <param name="solvent">A substance of this study, known by its registry number.</param>
    /// <param name="time">From the start of the study, 0 to 120 days.</param>
    /// <returns>The masses.</returns>
    /// <exception cref="ArgumentException"><paramref name="solvent"/> is not released in this study.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is outside its range.</exception>
    public MassBalance BalanceAt(Solvent solvent, TimeSpan time)
    {
        double[] masses = Load.Masses(Known(solvent));
        double seconds = Time(time, nameof(time));
        return Load.Balance(masses, seconds, AirLoad.Sum(masses, Shapes.Answers, seconds), Changes * AirLoad.Dose(masses, Shapes.Answers, 0, seconds));
    }

    /// <summary>How long after the last spray the air is at or below a fraction of the lower flammable limit for good.</summary>
    /// <param name="ofLowerFlammableLimit">The fraction, more than 0 and at most 100 %.</param>
    /// <returns>The time; <see langword="null"/> when it cannot be judged (no airflow, a limit not known) or is longer than 60 days.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ofLowerFlammableLimit"/> is outside its range.</exception>
    public TimeSpan? TimeToClear(Ratio ofLowerFlammableLimit) =>
        Flammability.TimeToFall(Guard.Within(ofLowerFlammableLimit, Bounds.Positive(Measure.Percent, 1), nameof(ofLowerFlammableLimit)));

    /// <summary>
    /// How long after the last spray the momentary mixture index, over the lowest eight-hour limit known for each substance, is at or below a criterion for good.
    /// </summary>
    /// <param name="criterion">The index to fall below, more than 0 and at most 1. A tenth is invented: limits are for healthy workers, not for a household.</param>
    /// <returns>The time; <see langword="null"/> when it cannot be judged (no airflow, a substance without limit) or is longer than 60 days.</returns>
    /// <remarks>A film gives off its last solvent more slowly than first order: the product's own hold time stands above this one.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="criterion"/> is outside its range.</exception>
    public TimeSpan? TimeToReEntry(double criterion = 0.1) => Strictest.TimeToFall(Criterion(criterion));

    /// <summary>The largest momentary mixture index from a wait after the last spray onwards, against a criterion.</summary>
    /// <param name="wait">Time after the end of the last spray, 0 to 60 days.</param>
    /// <param name="criterion">The index to be at or below, more than 0 and at most 1; a tenth is invented.</param>
    /// <returns>The comparison; it cannot be judged without airflow or when a substance has no limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public LimitComparison ReEntry(TimeSpan wait, double criterion = 0.1)
    {
        double seconds = Guard.Within(wait, Bounds.NotNegative(Measure.Hours, 60 * 86400), nameof(wait));
        return new LimitComparison(
            "mixture index " + Measure.Hours.Format(seconds) + " after the last spray",
            Changes > 0 && Strictest.IsWhole ? Strictest.GreatestFrom(seconds) : null,
            Criterion(criterion),
            LimitSense.AtMost,
            Measure.Number,
            criterion == 0.1 ? Source.Invented("a tenth of the working limits for people who live there") : Source.Supplied("the caller's criterion"),
            "wait longer with the fan running; the safety data sheet and the product's own hold time stand above this");
    }

    /// <summary>How every number of this study follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => AirStudyWorkings.Of(this);

    /// <summary>The peak against the flammable limit, or that it cannot be judged.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => FlammableLimit.ToString();

    private static double Criterion(double criterion) => Guard.Within(criterion, Bounds.Positive(Measure.Number, 1), nameof(criterion));

    internal static double Time(TimeSpan time, string name) => Guard.Within(time, Bounds.NotNegative(Measure.Hours, 120 * 86400), name);

    private static LimitComparison IndexComparison(AirIndex index, string subject) => new(
        index.IsWhole ? subject : subject + ", of the substances whose limit is known",
        index.IsWhole || index.Average > 1 ? index.Average : null,
        1,
        LimitSense.AtMost,
        Measure.Number,
        Additive,
        index.Average > 1 ? BreatheProtected : null);

    private LimitComparison Flammable(double limit, string subject, Source source) => new(
        Flammability.IsWhole ? subject : subject + ", of the substances whose limit is known",
        Flammability.IsWhole || Flammability.Peak > limit ? Flammability.Peak : null,
        limit,
        LimitSense.AtMost,
        Measure.Percent,
        source,
        Flammability.Peak > limit ? "more fresh air, less coating at a time, more time between coats" : null);

    private SubstanceAir Study(int substance)
    {
        double[] masses = Load.Masses(substance);
        AirShape shape = Shapes.Of(masses);
        AirMaximum peak = AirMaximum.Peak(this, shape, masses);
        AirMaximum quarter = AirMaximum.Window(this, shape, masses, FifteenMinutes, FifteenMinutes);
        AirMaximum day = AirMaximum.Window(this, shape, masses, shift, EightHours);
        return new SubstanceAir(Load.Solvents[substance], AirLoad.Total(masses), peak, quarter, day);
    }

    private VolumeFlow Flow(double changes) => VolumeFlow.FromCubicMetersPerSecond(
        AirKernel.FanFlow(changes, RoomVolume, Exhaust.MixingFactor, Room.Infiltration.CubicMetersPerSecond));

    internal int Known(Solvent solvent)
    {
        int index = Load.IndexOf(Guard.NotNull(solvent, nameof(solvent)).CasNumber);
        return index >= 0 ? index : throw new ArgumentException(solvent + " is not released in this study.", nameof(solvent));
    }
}
