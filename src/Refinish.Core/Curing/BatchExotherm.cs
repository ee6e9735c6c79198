using System;
using System.Threading;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// A batch in its cup that heats itself: dT/dt = ΔT_ad dα/dt − (T − T_a)/τ, with ΔT_ad = ΔH / c the rise without loss and τ = m c / (h
/// A) the cup's time constant. The larger the batch, the longer τ and the shorter its life; a large one runs away.
/// </summary>
/// <remarks>
/// <para>One temperature for the whole batch, which flatters the middle of a thick one. The heat transfer is that of cup and air
/// together, about 5 to 10 W/(m² K) for a plastic cup in still air (from memory, unverified).</para>
/// <para>Runaway: once the batch is R T_a² / E above the air, a kelvin more quickens the reaction by more than it quickens the loss of heat
/// (N. N. Semenov, Zeitschrift für Physik 48 (1928) 571, from memory). <see cref="MassEffect"/> is this law's crude cousin.</para>
/// </remarks>
/// <example><code>
/// BatchExotherm cup = new()
/// {
///     Reaction = new CureReaction
///     {
///         Factor = Frequency.FromHertz(3000),
///         ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(48),
///         AutocatalyticFactor = Frequency.FromHertz(1.2e5),
///         AutocatalyticActivationEnergy = MolarEnergy.FromKilojoulesPerMole(52),
///         AutocatalyticOrder = 1,
///         Order = 2,
///         Source = Source.Invented("an epoxy with an amine for this example"),
///     },
///     Mass = Mass.FromKilograms(0.5),
///     SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(1800),
///     HeatOfReaction = SpecificEnergy.FromKilojoulesPerKilogram(350),
///     HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(7),
///     Area = Area.FromSquareMeters(0.035),
///     Start = Temperature.FromDegreesCelsius(25),
///     Air = Temperature.FromDegreesCelsius(25),
///     UsableTo = Ratio.FromPercent(20),
/// };
/// BatchCourse course = cup.Run();
/// TimeSpan? potLife = course.PotLife;
/// bool hot = course.SelfHeating.Outcome == ComparisonOutcome.Beyond;
/// </code></example>
public sealed record BatchExotherm
{
    private const double Longest = 30.0 * 24 * 3600;

    private static readonly Bounds Thermometer = TemperatureShift.Thermometer;
    private static readonly Source Balance = Source.Derived("heat balance of a batch at one temperature");
    private static readonly Source Semenov = Source.FromMemory("N. N. Semenov, Zeitschrift für Physik 48 (1928) 571: critical self-heating R T² / E");

    /// <summary>The law of cure.</summary>
    public required CureReaction Reaction
    {
        get;
        init
        {
            field = Guard.NotNull(value);
            field.CheckReacts();
        }
    }

    /// <summary>Mass of the batch, more than 0 and at most 100 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass Mass { get; init => field = Guard.Checked(value, Bounds.Positive(Measure.Weight, 100)); }

    /// <summary>Heat to warm a kilogram of the mix by a kelvin, 500 to 5000 J/(kg K).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required SpecificEntropy SpecificHeat
    {
        get;
        init => field = Guard.Checked(value, Bounds.Between(500, 5000, Measure.SpecificHeat));
    }

    /// <summary>
    /// Heat that a kilogram of the mix gives off in full cure, solvents and fillers counted in the mass; more than 0 and at most 1000
    /// kJ/kg.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required SpecificEnergy HeatOfReaction
    {
        get;
        init => field = SpecificEnergy.FromJoulesPerKilogram(Guard.Within(value, Bounds.Positive(Measure.SpecificEnergy, 1e6)));
    }

    /// <summary>Heat transfer from the batch to the air, 0 to 500 W/(m² K).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required HeatTransferCoefficient HeatTransfer
    {
        get;
        init => field = Guard.Checked(value, Bounds.NotNegative(Measure.HeatTransfer, 500));
    }

    /// <summary>The surface through which it loses heat, more than 0 and at most 10 m².</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Area Area { get; init => field = Guard.Checked(value, Bounds.Positive(Measure.Area, 10)); }

    /// <summary>Temperature of the fresh mix, −20 to 60 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Start { get; init => field = Guard.Checked(value, Thermometer); }

    /// <summary>Temperature of the air, −20 to 60 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Air { get; init => field = Guard.Checked(value, Thermometer); }

    /// <summary>
    /// The conversion up to which the mix can be applied, more than the first and less than 100 %: at the latest its gel point.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public required Ratio UsableTo { get; init => field = Guard.Checked(value, Bounds.Between(1e-6, 1 - 1e-6, Measure.Percent)); }

    /// <summary>Conversion of the fresh mix, 0 to less than 100 %; 0 unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio FirstConversion { get; init => field = Guard.Checked(value, Bounds.Below(0, 1, Measure.Percent)); }

    /// <summary>The rise of full cure when no heat is lost, ΔH / c.</summary>
    public TemperatureDelta AdiabaticRise => TemperatureDelta.FromKelvins(Rise().Value);

    /// <summary>
    /// τ, the time in which the cup loses 63 % of its warmth without reaction; <see langword="null"/> without heat transfer.
    /// </summary>
    public TimeSpan? TimeConstant => HeatTransfer.WattsPerSquareMeterKelvin > 0 ? Durations.FromSeconds(Tau().Value) : null;

    /// <summary>
    /// The self-heating above the air from which on the batch runs away, R T_a² / E with the larger of the law's activation energies;
    /// <see langword="null"/> when both are zero.
    /// </summary>
    public TemperatureDelta? CriticalSelfHeating => Energy > 0 ? TemperatureDelta.FromKelvins(Critical().Value) : null;

    private double Energy => Math.Max(
        Reaction.Factor.Hertz > 0 ? Reaction.ActivationEnergy.JoulesPerMole : 0,
        Reaction.AutocatalyticFactor.Hertz > 0 ? Reaction.AutocatalyticActivationEnergy.JoulesPerMole : 0);

    // At a maximum dT/dt is zero and falling, so the rate falls with conversion; colder and further on it still does unless the first
    // reaction freezes sooner than the second. Then no minimum can follow, and no second maximum.
    private bool HasOnePeak => Reaction.Factor.Hertz == 0 || Reaction.AutocatalyticFactor.Hertz == 0 || Reaction.AutocatalyticOrder == 0
        || Reaction.ActivationEnergy.JoulesPerMole <= Reaction.AutocatalyticActivationEnergy.JoulesPerMole;

    /// <summary>Follows the batch until it can get no hotter, thirty days at most.</summary>
    /// <returns>Pot life, hottest moment, and whether it ran away.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><see cref="UsableTo"/> is not above <see cref="FirstConversion"/>.</exception>
    public BatchCourse Run() => Run(CancellationToken.None);

    /// <summary>Follows the batch until it can get no hotter, thirty days at most.</summary>
    /// <param name="cancellation">Stops the integration.</param>
    /// <returns>Pot life, hottest moment, and whether it ran away.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><see cref="UsableTo"/> is not above <see cref="FirstConversion"/>.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public BatchCourse Run(CancellationToken cancellation)
    {
        Guard.Rule(UsableTo.DecimalFractions > FirstConversion.DecimalFractions, nameof(UsableTo), UsableTo.DecimalFractions,
            Measure.Percent, "more than FirstConversion");
        CureStepper life = Fresh();
        double? potLife = life.AdvanceToConversion(UsableTo.DecimalFractions, Longest, cancellation) ? life.Time : null;
        CureStepper hottest = Fresh();
        double rise = Rise().Value;
        CureStepper batch = hottest;
        while (batch.Time < Longest && batch.Kelvins + (rise * (1 - batch.Alpha)) > hottest.Kelvins)
        {
            CureStepper before = batch;
            batch.Advance(Longest, cancellation);
            CureStepper peak = batch;
            if (before.HeatingRate > 0 && batch.HeatingRate < 0)
            {
                double h = Roots.Rising(before, static (from, seconds) => -from.HeatingAfter(seconds), 0, batch.Time - before.Time);
                peak = before;
                peak.AdvanceBy(h);
            }

            if (peak.Kelvins > hottest.Kelvins)
            {
                hottest = peak;
            }

            if (before.HeatingRate > 0 && batch.HeatingRate < 0 && HasOnePeak)
            {
                break;
            }
        }

        double? critical = CriticalSelfHeating?.Kelvins;
        LimitComparison heating = new(
            "self-heating above the air",
            hottest.Kelvins - Air.Kelvins,
            critical,
            LimitSense.AtMost,
            Measure.TemperatureDifference,
            Semenov,
            hottest.Kelvins - Air.Kelvins > critical
                ? "Mix less at a time, or pour the mix into a shallow tray as soon as it is mixed." : null);
        return new BatchCourse(potLife, hottest.Kelvins, hottest.Time, hottest.Alpha, heating);
    }

    /// <summary>How the rise, the time constant and the critical self-heating follow; the course comes from integrating them.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Heat of a batch", Rise, t =>
            HeatTransfer.WattsPerSquareMeterKelvin > 0 ? Tau(t) : default, t => Energy > 0 ? Critical(t) : default);

    /// <summary>The batch in one line.</summary>
    /// <returns>Text such as <c>0.5 kg at 25 °C in air of 25 °C, rise without loss 194.44 K</c>.</returns>
    public override string ToString() =>
        Measure.Weight.Format(Mass.Kilograms) + " at " + Measure.Temperature.Format(Start.Kelvins) + " in air of "
            + Measure.Temperature.Format(Air.Kelvins) + ", rise without loss " + Measure.TemperatureDifference.Format(Rise().Value);

    private Num Rise(Trace? t = null) => t.Step(
        "rise without loss of heat", "ΔT_ad", Measure.TemperatureDifference, Balance,
        t.Given("ΔH", HeatOfReaction.JoulesPerKilogram, Measure.SpecificEnergy)
            / t.Given("c", SpecificHeat.JoulesPerKilogramKelvin, Measure.SpecificHeat));

    private Num Tau(Trace? t = null) => t.Step(
        "time constant of the cup", "τ", Measure.Minutes, Balance,
        t.Given("m", Mass.Kilograms, Measure.Weight) * t.Given("c", SpecificHeat.JoulesPerKilogramKelvin, Measure.SpecificHeat)
            / (t.Given("h", HeatTransfer.WattsPerSquareMeterKelvin, Measure.HeatTransfer) * t.Given("A", Area.SquareMeters, Measure.Area)));

    private Num Critical(Trace? t = null) => t.Step(
        "critical self-heating", "ΔT_c", Measure.TemperatureDifference, Semenov,
        t.Given("R", CuringKernel.GasConstant, Measure.MolarEntropy) * Num.Square(t.Given("T_a", Air.Kelvins, Measure.AbsoluteTemperature))
            / t.Given("E", Energy, Measure.MolarEnergy));

    private CureStepper Fresh()
    {
        CureStepper batch = new(Reaction, FirstConversion.DecimalFractions, Start.Kelvins);
        batch.SetHeat(Rise().Value, HeatTransfer.WattsPerSquareMeterKelvin > 0 ? 1 / Tau().Value : 0, Air.Kelvins);
        return batch;
    }
}
