using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Climate;

/// <summary>
/// How long a fixture takes to reach spraying temperature in its room, warming or, with <see cref="Highest"/>, cooling: as one lump of heat
/// where its wall conducts well, else as a plane wall that warms at its face first.
/// </summary>
/// <remarks>
/// <para>Biot number Bi = h L / k, L the wall thickness (half of it when both faces meet the air). Below 0.1 one lump: T = T_r − (T_r −
/// T_0) e^(−t/τ), τ = m c / (h A). From 0.1 on the plane wall: T = T_r − (T_r − T_0) Σ C_n e^(−ζ_n² Fo) cos(ζ_n x), ζ_n tan ζ_n = Bi,
/// C_n = 4 sin ζ_n / (2 ζ_n + sin 2ζ_n), Fo = t / (τ Bi); x is 1 at the face and 0 at the back (or the middle), which loses no
/// heat.</para>
/// <para>Sources: lumped-capacitance method of heat-transfer textbooks; H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids,
/// 2nd ed., section 3.11. The room is taken to stay at its temperature and the mass to lie behind the heated area. With h near 9 W/(m²
/// K) for still air and radiation (from memory, unverified) and twice that in the stream of a fan, a cast-iron bath takes about an
/// hour; measure before you spray.</para>
/// </remarks>
/// <example><code>
/// WarmUp tub = new()
/// {
///     Mass = Mass.FromKilograms(136),
///     Material = FixtureThermalData.CastIron,
///     WallThickness = Length.FromMillimeters(6),
///     HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(9),
///     Area = Area.FromSquareMeters(2.2),
///     Start = Temperature.FromDegreesCelsius(10),
///     Room = Temperature.FromDegreesCelsius(22),
///     Target = Temperature.FromDegreesCelsius(18),
/// };
/// TimeSpan? time = tub.Time;                 // about 67 minutes
/// WarmUp shell = tub with
/// {
///     Mass = Mass.FromKilograms(15),
///     Material = FixtureThermalData.Acrylic,
///     WallThickness = Length.FromMillimeters(6),
/// };
/// TimeSpan? face = shell.Time;               // 20.9 minutes
/// TimeSpan? throughout = shell.TimeThroughout;
/// double first = (double)tub.PowerAfter(TimeSpan.Zero).Watts;             // 237.6 W at the beginning
/// double flux = tub.HeatFluxAfter(time!.Value).WattsPerSquareMeter;       // 36 W/m² when it has 18 °C
/// double taken = tub.HeatTakenAfter(time.Value).Kilojoules;               // as much as tub.Heat
/// </code></example>
public sealed record WarmUp
{
    // Strictly below 0.1, while a comparison holds at its limit.
    private const double BiotLimit = 0.09999999999999999;

    private static readonly Bounds Thermometer = Bounds.Between(233.15, 333.15, Measure.Temperature);
    private static readonly Source Behind = Source.Derived("τ Bi = L²/a when the mass lies behind the area");
    private static readonly Source Lumped = Source.Published("Incropera and DeWitt, Fundamentals of Heat and Mass Transfer", "lumped-capacitance method, Bi < 0.1 (section from memory)");

    /// <summary>Mass of the fixture, more than 0 and at most 1000 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass Mass { get; init => field = Guard.Checked(value, Bounds.Positive(Measure.Weight, 1000)); }

    /// <summary>What it is made of.</summary>
    public required FixtureThermalData Material { get; init => field = Guard.NotNull(value); }

    /// <summary>Thickness of the wall, more than 0 and at most 0.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WallThickness { get; init => field = Guard.Checked(value, Bounds.Positive(Measure.Length, 0.5)); }

    /// <summary>Heat transfer from air and radiation, more than 0 and at most 500 W/(m² K).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required HeatTransferCoefficient HeatTransfer
    {
        get;
        init => field = Guard.Checked(value, Bounds.Positive(Measure.HeatTransfer, 500));
    }

    /// <summary>
    /// The area of one face of the wall, more than 0 and at most 50 m²; with <see cref="AirBehind"/> the other face is as large.
    /// </summary>
    /// <remarks>The mass lies behind this area: mass over density and area is the wall thickness.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Area Area { get; init => field = Guard.Checked(value, Bounds.Positive(Measure.Area, 50)); }

    /// <summary>Temperature of the fixture now, −40 to 60 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Start { get; init => field = Guard.Checked(value, Thermometer); }

    /// <summary>Temperature of the room, −40 to 60 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Room { get; init => field = Guard.Checked(value, Thermometer); }

    /// <summary>Lowest temperature that the fixture has to have, −40 to 60 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Target { get; init => field = Guard.Checked(value, Thermometer); }

    /// <summary>
    /// Highest temperature that the fixture may have, −40 to 60 °C; a hotter one has to cool to it first. <see langword="null"/>, as unless
    /// given, when there is none.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature? Highest
    {
        get;
        init => field = value is Temperature given ? Guard.Checked(given, Thermometer, nameof(Highest)) : null;
    }

    /// <summary>
    /// Whether air reaches the back of the wall as well, as with a free-standing bath; otherwise the back loses and gains nothing. It
    /// halves the depth that heat has to go and doubles the area through which it goes.
    /// </summary>
    public bool AirBehind { get; init; }

    /// <summary>
    /// Biot number h L / k: how much worse the wall conducts than the air brings heat; L is the thickness, or half of it with
    /// <see cref="AirBehind"/>.
    /// </summary>
    public double BiotNumber => Biot().Value;

    /// <summary>One lump below a Biot number of 0.1, a plane wall from there on.</summary>
    public WarmUpMethod Method => IsLumped ? WarmUpMethod.Lumped : WarmUpMethod.Slab;

    /// <summary>
    /// What has to hold for a time. The room is at least 0.1 K above the target, or, when the fixture has the target already, at least as
    /// warm, since it would cool again; with <see cref="Highest"/>, that is at least the target, and a room in which a hotter fixture cools
    /// is at least 0.1 K below it.
    /// </summary>
    public IReadOnlyList<LimitComparison> Checks => WarmUpChecks.Of(Start.Kelvins, Room.Kelvins, Target.Kelvins, Highest?.Kelvins);

    /// <summary>Whether a time can be given: every check is within.</summary>
    public bool IsAvailable => Checks.All(check => check.Outcome == ComparisonOutcome.Within);

    /// <summary>
    /// After which 63 % of the difference is gone: τ of the lump; for the plane wall that of its slowest term, L² / (a ζ_1²), which
    /// governs all but the beginning.
    /// </summary>
    public TimeSpan TimeConstant => Durations.FromSeconds((IsLumped ? Tau() : SlowestTerm()).Value);

    /// <summary>
    /// Time until the face that is to be sprayed has warmed to <see cref="Target"/> or cooled to <see cref="Highest"/>; zero when it lies
    /// between them already and this room does not cool it below the target; <see langword="null"/> when <see cref="IsAvailable"/> is
    /// false.
    /// </summary>
    public TimeSpan? Time => IsAvailable ? Durations.FromSeconds(FaceTime().Value) : null;

    /// <summary>Time until the last place of the wall does, its back or its middle; the same as <see cref="Time"/> for a lump.</summary>
    /// <remarks>
    /// Between the two times the face has the temperature but the wall behind still draws heat: it cools again when the heat is taken
    /// away.
    /// </remarks>
    public TimeSpan? TimeThroughout => IsAvailable ? Durations.FromSeconds((IsLumped ? FaceTime() : BackTime()).Value) : null;

    /// <summary>Heat that the fixture takes up to the target, m c (T_target − T_start); zero when it is there already.</summary>
    public Energy Heat => Energy.FromJoules(HeatTaken().Value);

    /// <summary>What goes with heating.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = Refinish.Cautions.ForHeating;

    private bool IsLumped => BiotNumber <= BiotLimit;

    private bool IsWarm => Start.Kelvins >= Target.Kelvins;

    private bool IsHot => Start.Kelvins > Highest?.Kelvins;

    private bool IsThere => IsWarm && !IsHot;

    // The temperature at which waiting ends.
    private double Goal => Highest?.Kelvins is double most && IsHot ? most : Target.Kelvins;

    // What is left of the first difference when waiting ends.
    private double Left => (Room.Kelvins - Goal) / (Room.Kelvins - Start.Kelvins);

    /// <summary>Temperature of the face after a time in this room, whether it warms or cools.</summary>
    /// <param name="time">Time from now, 0 to 60 days.</param>
    /// <returns>The temperature of the face; of the whole wall for a lump.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature TemperatureAfter(TimeSpan time) => Temperature.FromKelvins(After(time, true));

    /// <summary>
    /// Temperature of the last place to warm after a time in this room: the back, or the middle with <see cref="AirBehind"/>.
    /// </summary>
    /// <param name="time">Time from now, 0 to 60 days.</param>
    /// <returns>The temperature; the same as <see cref="TemperatureAfter"/> for a lump.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature BackTemperatureAfter(TimeSpan time) => Temperature.FromKelvins(After(time, false));

    /// <summary>
    /// Heat that flows into each square metre of the face after a time, h (T_r − T_face); negative while the fixture cools. It is largest
    /// at the beginning.
    /// </summary>
    /// <param name="time">Time from now, 0 to 60 days.</param>
    /// <returns>The heat flux.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public HeatFlux HeatFluxAfter(TimeSpan time) =>
        HeatFlux.FromWattsPerSquareMeter(HeatTransfer.WattsPerSquareMeterKelvin * (Room.Kelvins - After(time, true)));

    /// <summary>
    /// Heat that the fixture draws from the room at a moment, <see cref="HeatFluxAfter"/> over every face that air reaches; negative
    /// while it cools.
    /// </summary>
    /// <param name="time">Time from now, 0 to 60 days.</param>
    /// <returns>The power. A heater has to give it on top of what the room itself loses, or the room does not stay at its
    /// temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Power PowerAfter(TimeSpan time) =>
        Power.FromWatts(HeatTransfer.WattsPerSquareMeterKelvin * Warmed().Value * (Room.Kelvins - After(time, true)));

    /// <summary>Heat that the fixture has taken up by a time, the sum of <see cref="PowerAfter"/> until then; negative when it has
    /// cooled.</summary>
    /// <param name="time">Time from now, 0 to 60 days.</param>
    /// <returns>
    /// m c (T − T_0) of a lump; of a plane wall m c (T_r − T_0) (1 − Σ C_n e^(−ζ_n² Fo) sin ζ_n / ζ_n), which is more than
    /// <see cref="Heat"/>
    /// when the face has its temperature before the back.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Energy HeatTakenAfter(TimeSpan time)
    {
        double seconds = Seconds(time);
        double tau = Tau().Value;
        double taken = IsLumped
            ? seconds / tau * PhiFunctions.Phi1(-seconds / tau)
            : SlabKernel.Taken(BiotNumber, seconds / DiffusionTime().Value);
        return Energy.FromJoules(HeatCapacity(null).Value * (Room.Kelvins - Start.Kelvins) * taken);
    }

    /// <summary>How the Biot number, the heat and, where they can be given, the time constant and the time follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Warming of a fixture", Biot, HeatTaken, Tau,
        t => IsLumped ? default : SlowestTerm(t),
        t => IsAvailable ? FaceTime(t) : default,
        t => IsAvailable && !IsLumped ? BackTime(t) : default);

    /// <summary>The time, or that there is none, in one line.</summary>
    /// <returns>Text such as <c>57.9 min from 10 °C to 18 °C in a room of 22 °C</c>.</returns>
    public override string ToString() =>
        (IsAvailable ? Measure.Minutes.Format(FaceTime().Value, DisplayUnits.Si, 3) : "no time can be given")
        + " from " + Measure.Temperature.Format(Start.Kelvins)
        + " to " + Measure.Temperature.Format(Goal) + " in a room of " + Measure.Temperature.Format(Room.Kelvins);

    private static double Seconds(TimeSpan time) => Guard.Within(time, Bounds.NotNegative(Measure.Hours, 60 * 24 * 3600));

    private double After(TimeSpan time, bool face)
    {
        double seconds = Seconds(time);
        if (IsLumped)
        {
            return Room.Kelvins - ((Room.Kelvins - Start.Kelvins) * Math.Exp(-seconds / Tau().Value));
        }

        double fourier = seconds / DiffusionTime().Value;
        double left = face ? SlabKernel.Face(BiotNumber, fourier) : SlabKernel.Back(BiotNumber, fourier);
        return Room.Kelvins - ((Room.Kelvins - Start.Kelvins) * left);
    }

    private Num Biot(Trace? t = null) => t.Step(
        "Biot number", "Bi", Measure.Number, Material.ConductivitySource,
        Transfer(t) * t.Given("L", AirBehind ? WallThickness.Meters / 2 : WallThickness.Meters, Measure.Length)
            / t.Given("k", Material.Conductivity.WattsPerMeterKelvin, Measure.Conductivity));

    private Num HeatTaken(Trace? t = null) => t.Step(
        "heat taken up", "Q", Measure.Heat, Material.SpecificHeatSource,
        HeatCapacity(t) * Num.Max(0, t.Given("T_t", Target.Kelvins, Measure.Temperature) - First(t)));

    private Num Tau(Trace? t = null) => t.Step(
        "time constant of one lump", "τ", Measure.Minutes, Lumped,
            HeatCapacity(t) / (Transfer(t) * Warmed(t)));

    private Num Warmed(Trace? t = null)
    {
        Num face = t.Given("A", Area.SquareMeters, Measure.Area);
        return AirBehind ? 2 * face : face;
    }

    // The area times the depth carries the mass.
    private Num DiffusionTime(Trace? t = null) =>
        t.Step("time of a Fourier number of one, L²/a", "t_L", Measure.Minutes, Behind, Tau(t) * Biot(t));

    private Num SlowestTerm(Trace? t = null) => t.Step(
        "time constant of the slowest term", "τ_1", Measure.Minutes, SlabKernel.Carslaw,
        DiffusionTime(t) / Num.Square(t is null ? SlabKernel.Eigenvalue(BiotNumber, 1) : SlabKernel.EigenvalueStep(t, BiotNumber, 1)));

    private Num FaceTime(Trace? t = null) => !IsLumped
        ? WallTime("time until the face has it", "t_face", true, t)
        : t.Step(
            IsHot ? "time to cool to the highest temperature" : "time to reach the target", "t", Measure.Minutes, Lumped,
            IsThere ? t.Number(0) : Tau(t) * Num.Ln((Ambient(t) - First(t)) / (Ambient(t) - Wanted(t))));

    private Num BackTime(Trace? t = null) => WallTime("time until the back has it", "t_back", false, t);

    private Num WallTime(string name, string symbol, bool face, Trace? t)
    {
        if (IsThere)
        {
            return t.Step(name, symbol, Measure.Minutes, SlabKernel.Carslaw, t.Number(0));
        }

        double seconds = DiffusionTime().Value * SlabKernel.Fourier(BiotNumber, Left, face);
        return t is null ? seconds : SlabKernel.TimeStep(
            t, name, symbol, DiffusionTime(t), BiotNumber, (Wanted(t) - First(t)) / (Ambient(t) - First(t)), seconds, face);
    }

    private Num HeatCapacity(Trace? t) =>
        t.Given("m", Mass.Kilograms, Measure.Weight) * t.Given("c", Material.SpecificHeat.JoulesPerKilogramKelvin, Measure.SpecificHeat);

    private Num Transfer(Trace? t) => t.Given("h", HeatTransfer.WattsPerSquareMeterKelvin, Measure.HeatTransfer);

    private Num First(Trace? t) => t.Given("T_0", Start.Kelvins, Measure.Temperature);

    private Num Ambient(Trace? t) => t.Given("T_r", Room.Kelvins, Measure.Temperature);

    private Num Wanted(Trace? t) => t.Given(IsHot ? "T_h" : "T_t", Goal, Measure.Temperature);
}
