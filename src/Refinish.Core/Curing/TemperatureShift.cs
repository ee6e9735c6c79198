using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// How reactions quicken with warmth, as a law that can be passed about: a fixed factor for ten kelvins, Arrhenius' law, one of one's own,
/// or two of them that meet at a temperature.
/// </summary>
/// <remarks>
/// <para>Fixed factor: k(T)/k(T_ref) = Q^((T − T_ref)/10 K). The trade's rule of thumb is Q = 2; systems seen lie between about 1.5 and
/// 2.5 (second-hand, no standard).</para>
/// <para>Arrhenius: k(T)/k(T_ref) = exp(E/R (1/T_ref − 1/T)). Doubling from 20 to 30 °C is E = 51.2 kJ/mol.</para>
/// <para>In pieces, with the change at T_c: the law below up to T_c and the law above from there on, each counted from T_c, so that the
/// rate has no step there. A piece may itself be in pieces.</para>
/// <para>No law knows a product's limits: below its least temperature an epoxy may stop short of curing altogether.
/// <see cref="CureForecast"/> keeps to the limits.</para>
/// </remarks>
/// <example><code>
/// TemperatureShift rule = TemperatureShift.Doubling(2);
/// double factor = rule.RateFactor(Temperature.FromDegreesCelsius(15), Temperature.FromDegreesCelsius(25));   // 0.5: takes twice as long
/// TemperatureShift law = TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(55));
/// TemperatureShift pieces = TemperatureShift.InPieces(rule, Temperature.FromDegreesCelsius(20), TemperatureShift.Doubling(1.5));
/// double warm = pieces.RateFactor(Temperature.FromDegreesCelsius(30), Temperature.FromDegreesCelsius(10));   // 3 = 2 × 1.5
/// </code></example>
public sealed record TemperatureShift
{
    internal static readonly Bounds Thermometer = Bounds.Between(253.15, 333.15, Measure.Temperature);
    private static readonly string BetweenTheEnds =
        "between " + Measure.Temperature.Format(Thermometer.Minimum) + " and " + Measure.Temperature.Format(Thermometer.Maximum);

    private static readonly Source Rule = Source.CommonPractice("a fixed factor of the reaction rate for ten kelvins, 2 unless the data sheet tells otherwise");
    private static readonly Source Law = Source.Derived("Arrhenius' law with the gas constant of the SI (2019)");
    private static readonly Source Meeting = Source.Derived("two laws that meet at a temperature without a step");
    private static readonly Bounds Rates = Bounds.Between(1e-12, 1e12, Measure.Number);

    private readonly double ratePerTenKelvin;
    private readonly double activationEnergy;
    private readonly Func<Temperature, double>? own;
    private readonly string? name;
    private readonly double change;

    private TemperatureShift(double ratePerTenKelvin, double activationEnergy)
    {
        this.ratePerTenKelvin = ratePerTenKelvin;
        this.activationEnergy = activationEnergy;
        Source = ratePerTenKelvin == 0 ? Law : Rule;
    }

    private TemperatureShift(string name, Func<Temperature, double> own, Source source)
    {
        this.name = name;
        this.own = own;
        Source = source;
    }

    private TemperatureShift(TemperatureShift below, double change, TemperatureShift above)
    {
        Below = below;
        this.change = change;
        Above = above;
        Source = Meeting;
    }

    /// <summary>The factor for ten kelvins; <see langword="null"/> for other laws, where it depends on the temperature.</summary>
    public double? RatePerTenKelvin => ratePerTenKelvin > 0 ? ratePerTenKelvin : null;

    /// <summary>The activation energy of Arrhenius' law; <see langword="null"/> for other laws.</summary>
    public MolarEnergy? ActivationEnergy => IsArrhenius ? MolarEnergy.FromJoulesPerMole(activationEnergy) : null;

    /// <summary>Of a law in pieces, the law below the change; <see langword="null"/> otherwise.</summary>
    public TemperatureShift? Below { get; }

    /// <summary>Of a law in pieces, the law from the change on; <see langword="null"/> otherwise.</summary>
    public TemperatureShift? Above { get; }

    /// <summary>Of a law in pieces, the temperature at which they meet; <see langword="null"/> otherwise.</summary>
    public Temperature? ChangesAt => Below is null ? null : Temperature.FromKelvins(change);

    /// <summary>Where the law comes from.</summary>
    public Source Source { get; }

    private bool IsArrhenius => ratePerTenKelvin == 0 && own is null && Below is null;

    private double LastChange => Below is null ? double.NegativeInfinity : Math.Max(change, Above!.LastChange);

    private double FirstChange => Below is null ? double.PositiveInfinity : Math.Min(change, Below.FirstChange);

    /// <summary>The fixed factor for ten kelvins.</summary>
    /// <param name="ratePerTenKelvin">By which factor reactions quicken with ten kelvins more, 1 to 4.</param>
    /// <returns>The law.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 to 4.</exception>
    public static TemperatureShift Doubling(double ratePerTenKelvin) =>
        new(Guard.Within(ratePerTenKelvin, Bounds.Between(1, 4, Measure.Number)), 0);

    /// <summary>Arrhenius' law.</summary>
    /// <param name="activationEnergy">Activation energy, 0 to 200 kJ/mol; epoxies and urethanes lie about 40 to 70 kJ/mol.</param>
    /// <returns>The law.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 200 kJ/mol.</exception>
    public static TemperatureShift Arrhenius(MolarEnergy activationEnergy) =>
        new(0, Guard.Within(activationEnergy, Bounds.NotNegative(Measure.MolarEnergy, 200e3)));

    /// <summary>Two laws that meet at a temperature, such as Arrhenius' law with another activation energy above it.</summary>
    /// <param name="below">The law up to the change.</param>
    /// <param name="change">The temperature of the change, more than −20 and less than 60 °C.</param>
    /// <param name="above">The law from the change on.</param>
    /// <returns>The law; its rate has no step at the change, whatever the two laws say elsewhere.</returns>
    /// <exception cref="ArgumentNullException">A law is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The change is outside its range, or a piece that is itself in pieces changes where it does not hold.
    /// </exception>
    public static TemperatureShift InPieces(TemperatureShift below, Temperature change, TemperatureShift above)
    {
        Guard.NotNull(below);
        Guard.NotNull(above);
        double at = Guard.Within(change, Thermometer);
        Guard.Rule(at > Thermometer.Minimum && at < Thermometer.Maximum, nameof(change), at, Measure.Temperature, BetweenTheEnds);
        double last = below.LastChange;
        double first = above.FirstChange;
        Guard.Rule(last < at, nameof(below), last, Measure.Temperature, "a law whose changes lie below ", at);
        Guard.Rule(first > at, nameof(above), first, Measure.Temperature, "a law whose changes lie above ", at);
        return new TemperatureShift(below, at, above);
    }

    /// <summary>A law of one's own.</summary>
    /// <param name="name">What it is called; it stands for the law in derivations and texts.</param>
    /// <param name="rate">
    /// The rate at a temperature of −20 to 60 °C, in any unit: only ratios count. From 10⁻¹² to 10¹², always the same for the same
    /// temperature, and for times that are to shorten with warmth rising. It is asked once for each stretch of a history.
    /// </param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The law. Two such laws are equal when name, source and function are the same.</returns>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The rate is outside its range at −20, −15, … or 60 °C; what it is in between is looked at when it is asked for.
    /// </exception>
    public static TemperatureShift Own(string name, Func<Temperature, double> rate, Source source)
    {
        TemperatureShift law = new(Guard.Named(name), Guard.NotNull(rate), Guard.NotNull(source));
        double colder = 0;
        for (double kelvins = Thermometer.Minimum; kelvins <= Thermometer.Maximum; kelvins += 5)
        {
            double warmer = law.OwnRate(kelvins);
            if (warmer < colder)
            {
                throw new ArgumentException(
                    "rate falls from " + Figures.Significant(colder, 4) + " to " + Figures.Significant(warmer, 4) + " on the way to "
                        + Measure.Temperature.Format(kelvins) + "; allowed: a rate that never falls as it gets warmer.",
                    nameof(rate));
            }

            colder = warmer;
        }

        return law;
    }

    // A sheet may say that a stage takes longer when warm; nobody's law is to be refused for that.
    internal static TemperatureShift OfRows(string name, Func<Temperature, double> rate, Source source) => new(name, rate, source);

    /// <summary>How much faster reactions run at one temperature than at another.</summary>
    /// <param name="at">The temperature asked for, −20 to 60 °C.</param>
    /// <param name="reference">The temperature compared with, −20 to 60 °C.</param>
    /// <returns>The ratio of the rates: 1 at the reference, above 1 when warmer. Times divide by it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside −20 to 60 °C.</exception>
    public double RateFactor(Temperature at, Temperature reference) =>
        Factor(Guard.Within(at, Thermometer), Guard.Within(reference, Thermometer));

    /// <summary>How a rate factor follows.</summary>
    /// <param name="at">The temperature asked for, −20 to 60 °C.</param>
    /// <param name="reference">The temperature compared with, −20 to 60 °C.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside −20 to 60 °C.</exception>
    public Workings Workings(Temperature at, Temperature reference)
    {
        double t = Guard.Within(at, Thermometer);
        double from = Guard.Within(reference, Thermometer);
        return Trace.Of("Rate of reaction against temperature", trace => Factor(t, from, trace));
    }

    /// <summary>The law in one line.</summary>
    /// <returns>Text such as <c>rate × 2 for ten kelvins</c>.</returns>
    public override string ToString() => name is not null ? name
        : Below is not null ? Below + " below " + Measure.Temperature.Format(change) + ", " + Above + " above"
        : IsArrhenius ? "Arrhenius, " + Measure.MolarEnergy.Format(activationEnergy)
        : "rate × " + Figures.Significant(ratePerTenKelvin) + " for ten kelvins";

    /// <summary>
    /// The rates of many stretches. The logarithm of the law is linear in T or in 1/T, and a log moves little from line to line: near
    /// the last exponential
    /// taken, seven terms of its series give the next to the last digit.
    /// </summary>
    internal void Factors(ValueList<double> kelvins, double reference, double[] rates)
    {
        if (own is not null || Below is not null)
        {
            for (int i = 0; i < rates.Length; i++)
            {
                rates[i] = i > 0 && kelvins[i] == kelvins[i - 1] ? rates[i - 1] : Factor(kelvins[i], reference);
            }

            return;
        }

        double scale = IsArrhenius ? activationEnergy / CuringKernel.GasConstant : Math.Log(ratePerTenKelvin) / 10;
        double origin = IsArrhenius ? 1 / reference : reference;
        bool arrhenius = IsArrhenius;
        double anchor = double.NaN;
        double anchored = 0;
        for (int i = 0; i < rates.Length; i++)
        {
            double t = kelvins[i];
            double x = arrhenius ? scale * (origin - (1 / t)) : scale * (t - origin);
            double d = x - anchor;

            // The first term left out is d⁷/5040, below 2e-18. NaN takes the other branch.
            if (Math.Abs(d) < 0.01)
            {
                rates[i] = anchored * (1 + (d * (1 + (d * (0.5 + (d * ((1.0 / 6) + (d * ((1.0 / 24) + (d * ((1.0 / 120) + (d * (1.0 / 720)))))))))))));
            }
            else
            {
                anchor = x;
                anchored = Math.Exp(x);
                rates[i] = anchored;
            }
        }
    }

    internal double Factor(double t, double reference) => Formula(t, reference).Value;

    internal Num Factor(double t, double reference, Trace trace) =>
        trace.Step("rate against the reference", "f", Measure.Number, Source, Formula(t, reference, trace));

    internal Num Formula(double t, double reference, Trace? trace = null, string symbol = "T", string referenceSymbol = "T_ref")
    {
        if (Below is not null)
        {
            return (t < change) == (reference < change)
                ? Piece(t).Formula(t, reference, trace, symbol, referenceSymbol)
                : Piece(t).Formula(t, change, trace, symbol, "T_c")
                    * Piece(reference).Formula(change, reference, trace, "T_c", referenceSymbol);
        }

        if (own is not null)
        {
            return OwnRate(symbol, t, trace) / OwnRate(referenceSymbol, reference, trace);
        }

        // A difference of thermometer readings in one system, an absolute temperature in the other.
        Measure measure = IsArrhenius ? Measure.AbsoluteTemperature : Measure.Temperature;
        Num at = trace.Given(symbol, t, measure);
        Num from = trace.Given(referenceSymbol, reference, measure);
        return IsArrhenius
            ? CuringKernel.Arrhenius(trace.Given("E_a", activationEnergy, Measure.MolarEnergy), at, from, trace)
            : Num.Power(
                trace.Given("Q", ratePerTenKelvin, Measure.Number), (at - from) / trace.Given("10 K", 10, Measure.TemperatureDifference));
    }

    private TemperatureShift Piece(double t) => t < change ? Below! : Above!;

    private Num OwnRate(string symbol, double kelvins, Trace? trace) =>
        trace is null ? OwnRate(kelvins) : trace.Given("k(" + symbol + ")", OwnRate(kelvins), Measure.Number);

    private double OwnRate(double kelvins) => Guard.Within(own!(Temperature.FromKelvins(kelvins)), Rates, "rate");
}
