using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Climate;

/// <summary>
/// How long a cold fixture takes to reach spraying temperature in a warm room, as one lump of heat: T = T_r − (T_r − T_0) e^(−t/τ), τ = m c / (h A).
/// </summary>
/// <remarks>
/// <para>It holds where the wall conducts much better than the air brings heat: Biot number h s / k below 0.1, s the wall thickness (heat from one side).
/// Above it there is no time, and <see cref="Checks"/> says so: a plastic wall warms at its face first.</para>
/// <para>Source: lumped-capacitance method of heat-transfer textbooks. The room is taken to stay at its temperature. With h near 9 W/(m² K) for still air
/// and radiation (from memory, unverified) and twice that in the stream of a fan, a cast-iron bath takes about an hour; measure before you spray.</para>
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
/// </code></example>
public sealed record WarmUp
{
    // Strictly below 0.1, while a comparison holds at its limit.
    private const double BiotLimit = 0.09999999999999999;
    private const double LeastExcess = 0.1;

    private static readonly Bounds Thermometer = Bounds.Between(233.15, 333.15, Measure.Temperature);
    private static readonly Source Lumped = Source.Published("Incropera and DeWitt, Fundamentals of Heat and Mass Transfer", "lumped-capacitance method, Bi < 0.1 (section from memory)");

    private readonly double mass;
    private readonly double thickness;
    private readonly double heatTransfer;
    private readonly double area;
    private readonly double start;
    private readonly double room;
    private readonly double target;

    /// <summary>Mass of the fixture, more than 0 and at most 1000 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass Mass
    {
        get => Mass.FromKilograms(mass);
        init => mass = Guard.Within(value, Bounds.Positive(Measure.Weight, 1000), nameof(Mass));
    }

    /// <summary>What it is made of.</summary>
    public required FixtureThermalData Material
    {
        get;
        init => field = Guard.NotNull(value, nameof(Material));
    }

    /// <summary>Thickness of the wall, more than 0 and at most 0.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WallThickness
    {
        get => Length.FromMeters(thickness);
        init => thickness = Guard.Within(value, Bounds.Positive(Measure.Length, 0.5), nameof(WallThickness));
    }

    /// <summary>Heat transfer from air and radiation, more than 0 and at most 500 W/(m² K).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required HeatTransferCoefficient HeatTransfer
    {
        get => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(heatTransfer);
        init => heatTransfer = Guard.Within(value, Bounds.Positive(Measure.HeatTransfer, 500), nameof(HeatTransfer));
    }

    /// <summary>The area that the warm air reaches, more than 0 and at most 50 m²: the inside alone, or both sides of a free-standing bath.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Area Area
    {
        get => Area.FromSquareMeters(area);
        init => area = Guard.Within(value, Bounds.Positive(Measure.Area, 50), nameof(Area));
    }

    /// <summary>Temperature of the fixture now, −40 to 60 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Start
    {
        get => Temperature.FromKelvins(start);
        init => start = Guard.Within(value, Thermometer, nameof(Start));
    }

    /// <summary>Temperature of the room, −40 to 60 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Room
    {
        get => Temperature.FromKelvins(room);
        init => room = Guard.Within(value, Thermometer, nameof(Room));
    }

    /// <summary>Temperature to reach, −40 to 60 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Target
    {
        get => Temperature.FromKelvins(target);
        init => target = Guard.Within(value, Thermometer, nameof(Target));
    }

    /// <summary>Biot number h s / k: how much worse the wall conducts than the air brings heat.</summary>
    public double BiotNumber => heatTransfer * thickness / Conductivity;

    /// <summary>What has to hold for a time: a Biot number below 0.1, and a room at least 0.1 K above the target unless the fixture is there already.</summary>
    public IReadOnlyList<LimitComparison> Checks
    {
        get
        {
            LimitComparison biot = new(
                "Biot number", BiotNumber, BiotLimit, LimitSense.AtMost, Measure.Number, Lumped,
                BiotNumber <= BiotLimit ? null : "The face warms before the body does: no time is given. Measure the face.");
            LimitComparison warmth = new(
                "room above target", room - target, LeastExcess, LimitSense.AtLeast, Measure.TemperatureDifference,
                Source.Invented("0.1 K, finer than a contact thermometer reads; the law takes for ever over the last of it"),
                room - target >= LeastExcess ? null : "Heat the room above " + Measure.Temperature.Format(target + LeastExcess) + " (" + Measure.Temperature.Format(target + LeastExcess, DisplayUnits.UsCustomary) + ").");
            return new ValueList<LimitComparison>(IsWarm ? [biot] : [biot, warmth]);
        }
    }

    /// <summary>Whether a time can be given: every check is within.</summary>
    public bool IsAvailable => Checks.All(check => check.Outcome == ComparisonOutcome.Within);

    /// <summary>τ, after which 63 % of the difference is gone; <see langword="null"/> when the Biot number is 0.1 or more.</summary>
    public TimeSpan? TimeConstant => IsLumped ? Durations.FromSeconds(Tau) : null;

    /// <summary>Time until the target is reached, zero when the fixture is there already; <see langword="null"/> when <see cref="IsAvailable"/> is false.</summary>
    public TimeSpan? Time => IsAvailable ? Durations.FromSeconds(Seconds) : null;

    /// <summary>Heat that the fixture takes up to the target, m c (T_target − T_start); zero when it is there already.</summary>
    public Energy Heat => Energy.FromJoules(Joules);

    /// <summary>What goes with heating.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = ClimateCautions.Heating;

    private double SpecificHeat => Material.SpecificHeat.JoulesPerKilogramKelvin;

    private double Conductivity => Material.Conductivity.WattsPerMeterKelvin;

    private bool IsLumped => BiotNumber <= BiotLimit;

    private bool IsWarm => start >= target;

    private double Tau => mass * SpecificHeat / (heatTransfer * area);

    private double Seconds => IsWarm ? 0 : Tau * Math.Log((room - start) / (room - target));

    private double Joules => mass * SpecificHeat * Math.Max(0, target - start);

    /// <summary>Temperature of the fixture after a time in this room, whether it warms or cools; <see langword="null"/> when the Biot number is 0.1 or more.</summary>
    /// <param name="time">Time from now, 0 to 60 days.</param>
    /// <returns>T_room − (T_room − T_start) e^(−t/τ).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature? TemperatureAfter(TimeSpan time)
    {
        double seconds = Guard.Within(time, Bounds.NotNegative(Measure.Hours, 60 * 24 * 3600), nameof(time));
        return IsLumped ? Temperature.FromKelvins(room - ((room - start) * Math.Exp(-seconds / Tau))) : null;
    }

    /// <summary>How the Biot number, the heat and, where they can be given, the time constant and the time follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression m = Expression.Quantity("m", mass, Measure.Weight);
        Expression c = Expression.Quantity("c", SpecificHeat, Measure.SpecificHeat);
        Expression h = Expression.Quantity("h", heatTransfer, Measure.HeatTransfer);
        Expression t0 = Expression.Quantity("T_0", start, Measure.Temperature);
        Expression tr = Expression.Quantity("T_r", room, Measure.Temperature);
        Expression tt = Expression.Quantity("T_t", target, Measure.Temperature);
        List<WorkingStep> steps =
        [
            new(
                "Biot number",
                "Bi",
                h * Expression.Quantity("s", thickness, Measure.Length) / Expression.Quantity("k", Conductivity, Measure.Conductivity),
                BiotNumber,
                Measure.Number,
                Material.ConductivitySource),
            new("heat taken up", "Q", m * c * Expression.Max(0, tt - t0), Joules, Measure.Heat, Material.SpecificHeatSource),
        ];
        if (IsLumped)
        {
            WorkingStep tau = new("time constant", "τ", m * c / (h * Expression.Quantity("A", area, Measure.Area)), Tau, Measure.Minutes, Lumped);
            steps.Add(tau);
            if (IsAvailable)
            {
                steps.Add(new(
                    "time to reach the target", "t", IsWarm ? Expression.Number(0) : tau.Result() * Expression.Ln((tr - t0) / (tr - tt)), Seconds, Measure.Minutes, Lumped));
            }
        }

        return new Workings("Warming of a fixture", steps);
    }

    /// <summary>The time, or that there is none, in one line.</summary>
    /// <returns>Text such as <c>57.9 min from 10 °C to 18 °C in a room of 22 °C</c>.</returns>
    public override string ToString() =>
        (IsAvailable ? Measure.Minutes.Format(Seconds, DisplayUnits.Si, 3) : "no time can be given") + " from " + Measure.Temperature.Format(start)
        + " to " + Measure.Temperature.Format(target) + " in a room of " + Measure.Temperature.Format(room);
}
