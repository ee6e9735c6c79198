using System;
using System.Collections.Generic;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Climate;

/// <summary>
/// Whether water settles on a cold fixture while it lags behind the air of the room that warms it: how far its face is above the dew
/// point now and later, until when it is wet, and from when on it has the spread that a coating wants.
/// </summary>
/// <remarks>
/// The air keeps its state while the fixture warms. Water that condenses gives up its heat and warms the face a little sooner than
/// reckoned here; water that has settled still has to dry after the face has passed the dew point. Moisture from showers, wet masking
/// or an unvented burner raises the dew point: measure again.
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
/// CondensationRisk risk = new(tub, new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(60)));
/// TimeSpan? wet = risk.WetUntil;                  // 24 minutes: the iron is below the dew point of 13.9 °C
/// TimeSpan? ready = risk.SpreadFrom;              // 52 minutes: 3 K above it
/// </code></example>
public sealed record CondensationRisk
{
    private static readonly Source Lasting =
        Source.Derived("the required spread, and 0.1 K because the law takes for ever over the last of it");
    private const double LeastExcess = 0.1;

    private static readonly Source DewPoint = Source.Derived("water settles on what is colder than the dew point");

    /// <summary>
    /// Takes the warming and the air that warms; the surface has to be 3 K above the dew point, see
    /// <see cref="SprayLimits.MinimumSpreadAboveDewPoint"/>.
    /// </summary>
    /// <param name="warming">The fixture; its target and its highest temperature are not used.</param>
    /// <param name="air">The air of the room, at the temperature of <see cref="WarmUp.Room"/>.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The air has another temperature than the room, or the spread is outside its range.
    /// </exception>
    public CondensationRisk(WarmUp warming, MoistAir air)
        : this(warming, air, TemperatureDelta.FromKelvins(3))
    {
    }

    /// <summary>Takes the warming and the air that warms.</summary>
    /// <param name="warming">The fixture; its target and its highest temperature are not used.</param>
    /// <param name="air">The air of the room, at the temperature of <see cref="WarmUp.Room"/>.</param>
    /// <param name="spread">
    /// How far the surface has to be above the dew point, 0 to 20 K, see <see cref="SprayLimits.MinimumSpreadAboveDewPoint"/>.
    /// </param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The air has another temperature than the room, or the spread is outside its range.
    /// </exception>
    public CondensationRisk(WarmUp warming, MoistAir air, TemperatureDelta spread)
    {
        Warming = Guard.NotNull(warming);
        Air = Guard.NotNull(air);
        RequiredSpread = Guard.Checked(spread, Bounds.NotNegative(Measure.TemperatureDifference, 20));
        Guard.Rule(Math.Abs(air.Kelvins - Room) < 1e-6, nameof(air), air.Kelvins, Measure.Temperature, "the temperature of the room, ", Room);
    }

    /// <summary>The fixture and the room.</summary>
    public WarmUp Warming { get; }

    /// <summary>The air of the room.</summary>
    public MoistAir Air { get; }

    /// <summary>How far the surface has to be above the dew point.</summary>
    public TemperatureDelta RequiredSpread { get; }

    /// <summary>How far the face is above the dew point now; negative when water settles on it.</summary>
    public TemperatureDelta SpreadNow => TemperatureDelta.FromKelvins(Spread().Value);

    /// <summary>
    /// Until when the face is below the dew point, zero when it is not now; <see langword="null"/> when the room is not 0.1 K above the
    /// dew point, so that it stays wet.
    /// </summary>
    public TimeSpan? WetUntil => Reaching(Dew)?.Time;

    /// <summary>
    /// From when on the face has the required spread, zero when it has it now; <see langword="null"/> when this air never lets it, or takes
    /// it away again from a face that is warmer than the room.
    /// </summary>
    public TimeSpan? SpreadFrom => Reaching(Dew + RequiredSpread.Kelvins)?.Time;

    /// <summary>
    /// The highest relative humidity of the room at which nothing settles on the fixture as cold as it is now; 100 % when it is not
    /// colder than the room.
    /// </summary>
    public Ratio DryBelow => Ratio.FromDecimalFractions(HumidityForDry().Value);

    /// <summary>
    /// The face above the dew point now, and the room above the dew point by the required spread, without which waiting does not help.
    /// </summary>
    public IReadOnlyList<LimitComparison> Checks => new ValueList<LimitComparison>(
    [
        new(
            "face above dew point now", Spread().Value, 0, LimitSense.AtLeast, Measure.TemperatureDifference, DewPoint,
            Start >= Dew ? null : "Dry the air to " + Measure.Percent.Format(HumidityForDry().Value, DisplayUnits.Si, 3)
                + " relative humidity before it is warmed, or wipe the fixture dry when it has warmed."),
        new(
            "room above dew point", Room - Dew, RequiredSpread.Kelvins + LeastExcess, LimitSense.AtLeast, Measure.TemperatureDifference,
            Lasting,
            Room - Dew >= RequiredSpread.Kelvins + LeastExcess
                ? null : "Dry the air: its dew point is too near to its temperature for any surface to have the spread."),
    ]);

    /// <summary>What goes with heating.</summary>
    public IReadOnlyList<Caution> Cautions => Warming.Cautions;

    private double Dew => Air.DewPointKelvins;

    private double Start => Warming.Start.Kelvins;

    private double Room => Warming.Room.Kelvins;

    /// <summary>How far the face is above the dew point after a time.</summary>
    /// <param name="time">Time from now, 0 to 60 days.</param>
    /// <returns>The spread; negative while water settles.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TemperatureDelta SpreadAfter(TimeSpan time) => TemperatureDelta.FromKelvins(Warming.TemperatureAfter(time).Kelvins - Dew);

    /// <summary>How the spread, the humidity and the times follow.</summary>
    /// <returns>The derivation, with that of the air and those of the two warmings as parts.</returns>
    public Workings Workings()
    {
        List<Workings> parts = [Air.Workings()];
        Add("Warming to the dew point", Dew);
        Add("Warming to the required spread", Dew + RequiredSpread.Kelvins);
        return Trace.Of("Condensation while a fixture warms", parts, Spread, HumidityForDry);

        void Add(string title, double kelvins)
        {
            if (Reaching(kelvins) is WarmUp warming)
            {
                parts.Add(new Workings(title, warming.Workings().Steps));
            }
        }
    }

    /// <summary>The spread now and when it is there, in metric units.</summary>
    /// <returns>Text such as <c>-3.89 K above dew point now; wet for 23.7 min; spread of 3 K from 51.7 min</c>.</returns>
    public override string ToString() =>
        Measure.TemperatureDifference.Format(Spread().Value, DisplayUnits.Si, 3) + " above dew point now; "
        + (WetUntil is TimeSpan wet ? "wet for " + Measure.Minutes.Format(wet.TotalSeconds, DisplayUnits.Si, 3) : "wet until the air is drier")
        + "; spread of " + Measure.TemperatureDifference.Format(RequiredSpread.Kelvins)
        + (SpreadFrom is TimeSpan from ? " from " + Measure.Minutes.Format(from.TotalSeconds, DisplayUnits.Si, 3) : " not in this air");

    private Num Spread(Trace? t = null) => t.Step(
        "face above dew point now", "ΔT", Measure.TemperatureDifference, DewPoint,
        t.Given("T_0", Start, Measure.Temperature) - t.Given("T_d", Dew, Measure.Temperature));

    private Num HumidityForDry(Trace? t = null) => t.Step(
        "highest relative humidity that stays dry", "RH_dry", Measure.Percent, ClimateKernel.Ideal,
        Num.Min(
            1,
            ClimateKernel.SaturationStep(t, "saturation pressure at the face", "p_ws,0", "T_0", Start)
            / ClimateKernel.SaturationStep(t, "saturation pressure in the room", "p_ws,r", "T_r", Room)));

    // The warming to a temperature, which takes no time when face and room have it. None when only the face has it, or when the room is not
    // 0.1 K warmer.
    private WarmUp? Reaching(double kelvins) =>
        Start >= kelvins && Room >= kelvins ? Warming with { Target = Start <= Room ? Warming.Start : Warming.Room, Highest = null }
        : Room - kelvins < LeastExcess ? null
        : Warming with { Target = Temperature.FromKelvins(kelvins), Highest = null };
}
