using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Climate;
using UnitsNet;

namespace Refinish.Air;

/// <content>The study against its limits: flammability, exposure, saturation, the airflow that would do, and when people may be let in
/// again.</content>
public sealed partial class AirStudy
{
    private const double Tenth = 0.1;

    private static readonly Source CallersCriterion = Source.Supplied("the caller's criterion");
    private static readonly Source Household = Source.Invented("a tenth of the working limits for people who live there");
    private static readonly Source Condenses =
        Source.Derived("vapour pressure of the air and of the water given off, ideal gas, over saturation");
    private static readonly Source TemperatureUnknown = Source.Supplied("no temperature given for the room");

    internal const string BreatheProtected =
        "breathing protection by the employer's programme; less solvent at a time; more fresh air seldom suffices in a bathroom";

    /// <summary>
    /// The largest fraction of the lower flammable limit, all substances together (Le Chatelier); <see langword="null"/> when a limit is
    /// not known. Without airflow: when all has evaporated.
    /// </summary>
    public Ratio? PeakFlammableFraction => Flammability.IsWhole ? Ratio.FromDecimalFractions(Flammability.Peak) : null;

    /// <summary>When that peak is reached; <see langword="null"/> without airflow or when a limit is not known.</summary>
    public TimeSpan? PeakFlammableAt => Flammability.IsWhole && Flammability.PeakAt is double at ? Durations.FromSeconds(at) : null;

    /// <summary>
    /// The peak against the share of the lower flammable limit that <see cref="Limits"/> allow, a quarter where they say none. Cannot be
    /// judged when a limit is not known, unless the others alone pass it.
    /// </summary>
    public LimitComparison FlammableLimit => Flammable(Limits.FlammableLine, "peak of the vapour, of its lower flammable limit");

    /// <summary>The same peak against the line to design for, a tenth where <see cref="Limits"/> say none.</summary>
    public LimitComparison FlammableDesignLine =>
        Flammable(Limits.FlammableDesignLine, "peak of the vapour, of its lower flammable limit, design line");

    /// <summary>Each substance against each limit known for it; one that cannot be judged where there is none.</summary>
    public IReadOnlyList<ExposureComparison> Exposure => field ??= ExposureComparisons.Of(Substances, Limits);

    /// <summary>Vapour pressures by which saturation is judged.</summary>
    public IReadOnlyList<VapourPressureFit> VapourPressures { get; }

    /// <summary>
    /// Each substance's peak against its saturated vapour at the room's temperature: beyond it the model does not hold. Cannot be judged
    /// when the room's temperature is not given or no vapour pressure covers it. Of water what is given off counts, not what the air held
    /// before.
    /// </summary>
    public IReadOnlyList<LimitComparison> Saturation => field ??= SaturationComparisons();

    /// <summary>
    /// The mixture index of the eight-hour averages, Em = Σ C/L, over the lowest eight-hour limit that <see cref="Limits"/> have for each
    /// substance; <see langword="null"/> when they have none for one.
    /// </summary>
    public double? StrictestIndex => Strictest.IsWhole ? Strictest.Average : null;

    /// <summary>That index against 1. Cannot be judged when a substance has no limit in the set, unless the others alone pass 1.</summary>
    public LimitComparison StrictestLimit => IndexComparison(Strictest);

    /// <summary>
    /// The mixture index of the worst fifteen minutes over the lowest short-term limit of the set for each substance. Those without a
    /// short-term limit are left out; <see langword="null"/> when none has one.
    /// </summary>
    public double? ShortTermIndex => ShortTerm.IsEmpty ? null : ShortTerm.Average;

    /// <summary>That index against 1. It is usually the one that a bathroom fails, since a coat is sprayed in minutes.</summary>
    public LimitComparison ShortTermLimit => new(
        "mixture index of the worst fifteen minutes (" + Limits.Name + ")", ShortTermIndex, 1, LimitSense.AtMost, Measure.Number, Additive,
        ShortTermIndex > 1 ? BreatheProtected : null)
    {
        Digits = ScreeningDigits,
        Whose = Limits.Whose,
    };

    /// <summary>
    /// The flow the exhaust must really move (mixing factor included) so that the peak stays within <see cref="FlammableLimit"/>; zero when
    /// it does without a fan, <see langword="null"/> when a limit is not known. It is solved for anew at each call.
    /// </summary>
    public VolumeFlow? AirflowForFlammableLimit => Holding(ShareAllowed);

    /// <summary>
    /// The flow that would do so if the coats flashed as they are sprayed and spraying never ended: K · G / (the share of the limit that is
    /// allowed). Never less than <see cref="AirflowForFlammableLimit"/>.
    /// </summary>
    public VolumeFlow? SteadyAirflowForFlammableLimit => Flammability.IsWhole ? Flow(SteadyFlow(Flammability.Weights)) : null;

    /// <summary>
    /// The flow the exhaust must really move so that neither the mixture index of the lowest eight-hour limits of the set nor that of the
    /// short-term limits is above 1; zero when both are below without a fan, <see langword="null"/> when a substance has no eight-hour
    /// limit. In a bathroom it is usually far beyond any fan: then breathing protection has to do it.
    /// </summary>
    public VolumeFlow? AirflowForExposureIndex => Strictest.IsWhole ? Flow(FlowForIndex()) : null;

    /// <summary>
    /// The flow the exhaust must really move (mixing factor included) so that the peak stays at a share of the lower flammable limit.
    /// </summary>
    /// <param name="ofLowerFlammableLimit">
    /// The share, more than 0 and at most 100 %; a quarter is the usual limit, a tenth the line to design for.
    /// </param>
    /// <returns>The flow; zero when it does without a fan, <see langword="null"/> when a limit is not known.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ofLowerFlammableLimit"/> is outside its range.</exception>
    public VolumeFlow? AirflowToHold(Ratio ofLowerFlammableLimit) =>
        Holding(Guard.Within(ofLowerFlammableLimit, Bounds.Positive(Measure.Percent, 1)));

    /// <summary>How long after the last spray the air is at or below a fraction of the lower flammable limit for good.</summary>
    /// <param name="ofLowerFlammableLimit">The fraction, more than 0 and at most 100 %.</param>
    /// <returns>
    /// The time; <see langword="null"/> when it cannot be judged (no airflow, a limit not known) or is longer than 60 days.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ofLowerFlammableLimit"/> is outside its range.</exception>
    public TimeSpan? TimeToClear(Ratio ofLowerFlammableLimit) =>
        Flammability.TimeToFall(Guard.Within(ofLowerFlammableLimit, Bounds.Positive(Measure.Percent, 1)));

    /// <summary>How long after the last spray the momentary mixture index is at or below a tenth for good, which is invented.</summary>
    /// <inheritdoc cref="TimeToReEntry(double)"/>
    public TimeSpan? TimeToReEntry() => TimeToReEntry(Tenth);

    /// <summary>
    /// How long after the last spray the momentary mixture index, over the lowest eight-hour limit of the set for each substance, is at or
    /// below a criterion for good.
    /// </summary>
    /// <param name="criterion">
    /// The index to fall below, more than 0 and at most 1. A tenth is invented: limits are for healthy workers, not for a household.
    /// </param>
    /// <returns>
    /// The time; <see langword="null"/> when it cannot be judged (no airflow, a substance without limit) or is longer than 60 days.
    /// </returns>
    /// <remarks>
    /// A film gives off its last solvent more slowly than first order: the product's own hold time stands above this one.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="criterion"/> is outside its range.</exception>
    public TimeSpan? TimeToReEntry(double criterion) => Strictest.TimeToFall(Criterion(criterion));

    /// <summary>The largest momentary mixture index from a wait after the last spray onwards, against a tenth, which is invented.</summary>
    /// <inheritdoc cref="ReEntry(TimeSpan, double)"/>
    public LimitComparison ReEntry(TimeSpan wait) => ReEntry(wait, Tenth);

    /// <summary>The largest momentary mixture index from a wait after the last spray onwards, against a criterion.</summary>
    /// <param name="wait">Time after the end of the last spray, 0 to 60 days.</param>
    /// <param name="criterion">The index to be at or below, more than 0 and at most 1; a tenth is invented.</param>
    /// <returns>The comparison; it cannot be judged without airflow or when a substance has no limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public LimitComparison ReEntry(TimeSpan wait, double criterion)
    {
        double seconds = Guard.Within(wait, Bounds.NotNegative(Measure.Hours, 60 * 86400));
        return new LimitComparison(
            "mixture index " + Measure.Hours.Format(seconds) + " after the last spray",
            Changes > 0 && Strictest.IsWhole ? Strictest.GreatestFrom(seconds) : null, Criterion(criterion), LimitSense.AtMost,
            Measure.Number,
            criterion == Tenth ? Household : CallersCriterion,
            "wait longer with the fan running; the safety data sheet and the product's own hold time stand above this")
        {
            Digits = ScreeningDigits,
            Whose = "limits of " + Limits.Whose,
        };
    }

    /// <summary>
    /// The relative humidity that the water given off makes at its peak, against 100 %, where it condenses. A waterborne film hardly dries
    /// long before that: the product's own limit stands above this one.
    /// </summary>
    /// <param name="before">The air of the room without that water, which is also what the fan brings in.</param>
    /// <returns>The comparison; <see langword="null"/> when no water is given off.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="before"/> is missing.</exception>
    public LimitComparison? Humidity(MoistAir before)
    {
        double kelvins = Guard.NotNull(before).DryBulb.Kelvins;
        SubstanceAir? water = Substances.FirstOrDefault(one => one.Solvent.IsWater);
        if (water is null)
        {
            return null;
        }

        double given = water.PeakConcentration.KilogramsPerCubicMeter * AirKernel.GasConstant * kelvins
            / water.Solvent.MolarMass.KilogramsPerMole;
        double humidity = (before.VapourPressure.Pascals + given) / ClimateKernel.SaturationPressure(kelvins);
        return new LimitComparison(
            "relative humidity at the peak of the water given off", humidity, 1, LimitSense.AtMost, Measure.Percent, Condenses,
            humidity > 1 ? "more fresh air, fewer coats at a time: water condenses on the coldest surface and in the film" : null)
        {
            Digits = ScreeningDigits,
        };
    }

    private ValueList<LimitComparison> SaturationComparisons()
    {
        List<LimitComparison> comparisons = [];
        foreach (SubstanceAir air in Substances)
        {
            string subject = air.Solvent.Name + (air.Solvent.IsWater ? " given off" : string.Empty) + ", peak, of its saturated vapour";
            comparisons.Add(Room.AirTemperature is Temperature temperature
                ? new SaturatedVapour(air.Solvent, temperature, Room.AirPressure, VapourPressures).Compare(subject, air.PeakConcentration)
                : SaturatedVapour.Against(subject, air.PeakConcentration.KilogramsPerCubicMeter, null, TemperatureUnknown));
        }

        return new ValueList<LimitComparison>(comparisons);
    }

    private static double Criterion(double criterion) => Guard.Within(criterion, Bounds.Positive(Measure.Number, 1));

    /// <summary>Of which substances a fraction of the flammable limit speaks, where not of all.</summary>
    internal string FlammableOf => !Flammability.IsWhole ? KnownOnly : HoldsNonBurning ? ", of the substances that burn" : string.Empty;

    /// <summary>Whether a vapour other than water is said not to burn.</summary>
    internal bool HoldsNonBurning => Array.Exists(Load.Solvents, solvent => solvent.Flammability.IsNonBurning && !solvent.IsWater);

    /// <summary>What vapour may reach of its lower flammable limit.</summary>
    internal double ShareAllowed => Limits.FlammableLine.Fraction;

    internal static LimitComparison FlammableAgainst(FlammableShare line, string subject, double value, bool isWhole, string remedy) => new(
        subject, isWhole || value > line.Fraction ? value : null, line.Fraction, LimitSense.AtMost, Measure.Percent, line.Source,
        value > line.Fraction ? remedy : null)
    {
        Whose = line.Whose,
    };

    private LimitComparison IndexComparison(AirIndex index) =>
        MixtureIndex.Compare("mixture index of 8-hour averages (" + Limits.Name + ")", index.Average, index.IsWhole, ScreeningDigits) with
        {
            Whose = Limits.Whose,
        };

    private LimitComparison Flammable(FlammableShare line, string subject) => FlammableAgainst(
        line, subject + FlammableOf, Flammability.Peak, Flammability.IsWhole,
            "more fresh air, less coating at a time, more time between coats") with
    {
        Digits = ScreeningDigits,
        GoodToFactor = BoxFactor,
    };

    private VolumeFlow? Holding(double share) =>
        Flammability.IsWhole ? Flow(FlowFor(AirSizing.ForPeak(Load, Flammability.Weights, share * RoomVolume))) : null;

    private static VolumeFlow Flow(Num flow) => VolumeFlow.FromCubicMetersPerSecond(flow.Value);
}
