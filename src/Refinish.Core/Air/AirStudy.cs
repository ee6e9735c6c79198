using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// A room in which coats are sprayed and liquids wiped on, one after the other: what is in its air over time, and how that stands against
/// the flammable limit and against exposure limits. The well-mixed box, V dC/dt = G(t) − F C, solved exactly for any number of sources.
/// </summary>
/// <remarks>
/// Each coat has a closed form (steady spray, part flashing, first-order film) and coats add up. Maxima are located where derivatives
/// vanish, with the zeros counted, so no peak is missed between samples. Flammability of a mixture by Le Chatelier: the sum of volume
/// fraction over limit, at the room's pressure and at its temperature where that is above 25 °C, of the substances that burn; those that do
/// not are taken as air, which is the careful side of a rule for mixtures with them. Eight-hour average and mixture index: 29 CFR
/// 1910.1000(d)(1)(i) and (d)(2)(i); the average is the worst period of a shift's length, spread over eight hours. Infiltration is the
/// room's own, and comes on top of the fan. A screening, not a finding of compliance: the breathing zone beside the gun is richer than the
/// room, and a film's last solvent is slower than first order.
/// </remarks>
/// <example><code>
/// Room bathroom = new() { Length = Length.FromFeet(8), Width = Length.FromFeet(5), Height = Length.FromFeet(8) };
/// Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(250) };
/// SolventEmission coat = new()
/// {
///     Name = "topcoat", Start = TimeSpan.Zero, SprayTime = TimeSpan.FromMinutes(6), VolatileMass = Mass.FromGrams(164),
///     Solvents = [new(Solvents.ButylAcetate, Ratio.FromPercent(100))],
///     FlashFraction = Ratio.FromPercent(40), FilmTimeConstant = TimeSpan.FromMinutes(15),
/// };
/// AirStudy study = new(bathroom, fan, [coat], TimeSpan.FromHours(8));
/// LimitComparison fire = study.FlammableLimit;              // against a quarter of the lower flammable limit, or the set's own line
/// TimeSpan? back = study.TimeToReEntry(0.1);
/// </code></example>
public sealed partial class AirStudy
{
    /// <summary>29 CFR 1910.1000(d)(1)(i) divides by eight hours whatever the length of the shift.</summary>
    internal const double EightHours = 8 * 3600;
    internal const double FifteenMinutes = 15 * 60;
    internal const string KnownOnly = ", of the substances whose limit is known";

    internal static readonly Source LeChatelier = Source.Derived("Le Chatelier's rule: each vapour's fraction of its own limit, added up");
    internal static readonly Source TimeWeighted = Source.Published("29 CFR 1910.1000", "(d)(1)(i)");
    internal static readonly Source Additive = Source.Published("29 CFR 1910.1000", "(d)(2)(i)");

    /// <summary>What a model of a well-mixed room deserves.</summary>
    internal const int ScreeningDigits = 2;

    /// <summary>How well a box tells a real room.</summary>
    internal const double BoxFactor = 2;

    private readonly double shift;
    private readonly double freshAir;

    /// <summary>Studies a room against <see cref="LimitSets.Default"/>.</summary>
    /// <param name="room">The room.</param>
    /// <param name="exhaust">Its exhaust.</param>
    /// <param name="emissions">The coats, at least one, in any order; they may overlap.</param>
    /// <param name="shift">How long a person is in the room in a working day, 15 min to 16 h.</param>
    /// <exception cref="ArgumentException">There is no coat.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="shift"/> is outside its range.</exception>
    public AirStudy(Room room, Exhaust exhaust, IReadOnlyList<Emission> emissions, TimeSpan shift)
        : this(room, exhaust, emissions, shift, LimitSets.Default)
    {
    }

    /// <summary>Studies a room against a set of limits.</summary>
    /// <param name="room">The room.</param>
    /// <param name="exhaust">Its exhaust.</param>
    /// <param name="emissions">The coats, at least one, in any order; they may overlap.</param>
    /// <param name="shift">How long a person is in the room in a working day, 15 min to 16 h.</param>
    /// <param name="limits">The limits to compare with; a substance without one cannot be judged.</param>
    /// <exception cref="ArgumentException">There is no coat.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="shift"/> is outside its range, or the limits have a design line above their flammable share.
    /// </exception>
    public AirStudy(Room room, Exhaust exhaust, IReadOnlyList<Emission> emissions, TimeSpan shift, LimitSet limits)
        : this(room, exhaust, emissions, shift, limits, Air.VapourPressures.All)
    {
    }

    /// <summary>Studies a room against a set of limits.</summary>
    /// <param name="room">The room.</param>
    /// <param name="exhaust">Its exhaust.</param>
    /// <param name="emissions">The coats, at least one, in any order; they may overlap.</param>
    /// <param name="shift">How long a person is in the room in a working day, 15 min to 16 h.</param>
    /// <param name="limits">The limits to compare with; a substance without one cannot be judged.</param>
    /// <param name="vapourPressures">Vapour pressures by which saturation is judged.</param>
    /// <exception cref="ArgumentException">There is no coat.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="shift"/> is outside its range, or the limits have a design line above their flammable share.
    /// </exception>
    public AirStudy(
        Room room, Exhaust exhaust, IReadOnlyList<Emission> emissions, TimeSpan shift, LimitSet limits,
        IReadOnlyList<VapourPressureFit> vapourPressures)
    {
        Room = Guard.NotNull(room);
        Exhaust = Guard.NotNull(exhaust);
        Emissions = Guard.List(emissions, 1);
        this.shift = Guard.Within(shift, Bounds.Between(FifteenMinutes, 16 * 3600, Measure.Hours));
        Limits = LimitSet.Checked(limits, nameof(limits));

        VapourPressures = Guard.List(vapourPressures);
        Load = new AirLoad(Emissions);
        RoomVolume = room.Volume.CubicMeters;
        freshAir = FreshAir().Value;
        Changes = AirChanges().Value;
        Shapes = new AirShapes(Load.Timeline, Changes);
        Place = new AirPlace.WholeRoom(this);
    }

    /// <summary>The room.</summary>
    public Room Room { get; }

    /// <summary>Its exhaust.</summary>
    public Exhaust Exhaust { get; }

    /// <summary>The coats and whatever else gives off vapour.</summary>
    public IReadOnlyList<Emission> Emissions { get; }

    /// <summary>The limits compared with.</summary>
    public LimitSet Limits { get; }

    /// <summary>
    /// The substances whose descriptions differ from emission to emission, with the figures taken: the lowest molar mass, the lowest
    /// flammable limit and the highest vapour pressure that any description gives, with the first name and density. Empty when the
    /// descriptions of each registry number agree.
    /// </summary>
    public IReadOnlyList<Solvent> Merged => field ??= new ValueList<Solvent>(Load.Merged.Select(careful => careful.Figures));

    /// <summary>
    /// The substances that are not volatile: they stay in film and overspray and are in no figure of the air. <see cref="BalanceAt"/> says
    /// how much of each has been put on.
    /// </summary>
    public IReadOnlyList<Solvent> NotGivenOff => field ??= new ValueList<Solvent>(Load.NotGivenOff);

    /// <summary>How long a person is in the room in a working day.</summary>
    public TimeSpan Shift => Durations.FromSeconds(shift);

    /// <summary>When the last coat or liquid is on, from the start of the study.</summary>
    public TimeSpan LastSprayEnds => Emissions.Max(emission => emission.End);

    /// <summary>
    /// The flow of fresh air that counts in a well-mixed room: what the fan moves and what infiltrates, over the mixing factor.
    /// </summary>
    public VolumeFlow FreshAirFlow => VolumeFlow.FromCubicMetersPerSecond(freshAir);

    /// <summary>Air changes per hour that count: fresh-air flow over volume.</summary>
    public double AirChangesPerHour => Changes * 3600;

    /// <summary>
    /// The peak and averages of each substance that evaporates, water included, one for each registry number, in the order in which the
    /// coats name them.
    /// </summary>
    public IReadOnlyList<SubstanceAir> Substances => field ??= new ValueList<SubstanceAir>(
        Enumerable.Range(0, Load.Solvents.Length).Select(i => new SubstanceAir(this, i, Place)));

    /// <summary>What to warn of with these results.</summary>
    public IReadOnlyList<Caution> Cautions => field ??= ExposureComparisons.Cautions(this);

    internal AirLoad Load { get; }

    internal double RoomVolume { get; }

    /// <summary>λ, 1/s.</summary>
    internal double Changes { get; }

    internal double ShiftSeconds => shift;

    internal AirShapes Shapes { get; }

    /// <summary>The room as one place.</summary>
    internal AirPlace Place { get; }

    internal AirIndex Flammability => field ??= new AirIndex(
        this, [.. Load.Solvents.Select(solvent => solvent.IsWater ? double.PositiveInfinity : solvent.Flammability.InMixture)],
        shift, EightHours, isFlammability: true);

    internal AirIndex Strictest => field ??= new AirIndex(
        this, ExposureComparisons.Lowest(Load.Solvents, Limits, ExposureLimitKind.Twa8h), shift, EightHours, isFlammability: false);

    internal AirIndex ShortTerm => field ??= new AirIndex(
        this, ExposureComparisons.Lowest(Load.Solvents, Limits, ExposureLimitKind.Stel15min),
        FifteenMinutes, FifteenMinutes, isFlammability: false);

    /// <summary>The same room, exhaust and emissions against another set of limits.</summary>
    /// <param name="limits">The limits.</param>
    /// <returns>A study of its own.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="limits"/> is missing.</exception>
    public AirStudy Against(LimitSet limits) => new(Room, Exhaust, Emissions, Shift, limits, VapourPressures);

    /// <summary>The concentration of a substance at a time.</summary>
    /// <param name="solvent">A substance of this study, known by its registry number.</param>
    /// <param name="time">From the start of the study, 0 to 400 years and 60 days.</param>
    /// <returns>Mass in the volume of air.</returns>
    /// <exception cref="ArgumentException"><paramref name="solvent"/> is not released in this study.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is outside its range.</exception>
    public MassConcentration ConcentrationAt(Solvent solvent, TimeSpan time) =>
        MassConcentration.FromKilogramsPerCubicMeter(Place.At(Load.Masses(Known(solvent)), Time(time, nameof(time))).Value);

    /// <summary>The fraction of the lower flammable limit at a time, all substances together.</summary>
    /// <param name="time">From the start of the study, 0 to 400 years and 60 days.</param>
    /// <returns>The fraction; <see langword="null"/> when a limit is not known.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is outside its range.</exception>
    public Ratio? FlammableFractionAt(TimeSpan time)
    {
        double seconds = Time(time, nameof(time));
        return Flammability.IsWhole ? Ratio.FromDecimalFractions(Place.At(Flammability.Weights, seconds).Value) : null;
    }

    /// <summary>Where a substance is at a time: film, air, gone.</summary>
    /// <param name="solvent">A substance of this study, volatile or not, known by its registry number.</param>
    /// <param name="time">From the start of the study, 0 to 400 years and 60 days.</param>
    /// <returns>The masses; of what is not volatile all that has been put on counts as in the film.</returns>
    /// <exception cref="ArgumentException"><paramref name="solvent"/> is not released in this study.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is outside its range.</exception>
    public MassBalance BalanceAt(Solvent solvent, TimeSpan time)
    {
        double seconds = Time(time, nameof(time));
        int kept = Load.IndexOfKept(Guard.NotNull(solvent).CasNumber);
        if (kept >= 0)
        {
            return Load.Kept(Load.Kept(kept), seconds);
        }

        double[] masses = Load.Masses(Known(solvent));
        return Load.Balance(
            masses, seconds, Shapes.Answers.Moment(masses, seconds).Value, Changes * Shapes.Answers.Dose(masses, 0, seconds).Value);
    }

    /// <summary>The peak against the flammable limit, or that it cannot be judged.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => FlammableLimit.ToString();

    internal static double Time(TimeSpan time, string name) =>
        Guard.Within(time, Bounds.NotNegative(Measure.Hours, Emission.LongestStudy + (60 * 86400)), name);

    internal int Known(Solvent solvent)
    {
        int index = Load.IndexOf(Guard.NotNull(solvent).CasNumber);
        return index >= 0 ? index : throw new ArgumentException(solvent + " is not released in this study.", nameof(solvent));
    }
}
