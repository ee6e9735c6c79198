using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// A cure that its own products quicken, as epoxies with amines do: dα/dt = (k_1 + k_2 α^m) (1 − α)^n f_d, k_i = A_i e^(−E_i / R T),
/// α the conversion from 0 to 1, f_d the diffusion limit where one is given.
/// </summary>
/// <remarks>
/// <para>Law: M. R. Kamal and S. Sourour, Polymer Engineering and Science 13 (1973) 59; the limit see <see cref="DiffusionLimit"/>.
/// With k_2 = 0 it is a plain reaction of order n, with k_1 = 0 it needs some conversion to begin with.</para>
/// <para>The library ships no parameters: a set belongs to one resin, one hardener and one ratio. Sets are published for composite
/// resins; a maker of coatings may give theirs.</para>
/// </remarks>
/// <example><code>
/// CureReaction epoxy = new()
/// {
///     Factor = Frequency.FromHertz(3000),
///     ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(48),
///     AutocatalyticFactor = Frequency.FromHertz(1.2e5),
///     AutocatalyticActivationEnergy = MolarEnergy.FromKilojoulesPerMole(52),
///     AutocatalyticOrder = 1,
///     Order = 2,
///     Source = Source.Invented("an epoxy with an amine for this example"),
/// };
/// Frequency rate = epoxy.Rate(Temperature.FromDegreesCelsius(25), Ratio.FromPercent(10));
/// </code></example>
public sealed record CureReaction
{
    internal static readonly Bounds Thermometer = Bounds.Between(233.15, 573.15, Measure.Temperature);
    internal static readonly Bounds Energies = Bounds.NotNegative(Measure.MolarEnergy, 200e3);

    private static readonly Source Law = Source.Published("M. R. Kamal and S. Sourour, Polymer Engineering and Science 13 (1973)", "page 59");
    private static readonly Bounds Factors = Bounds.NotNegative(Measure.Rate, 1e20);

    /// <summary>A_1 of the reaction that needs no product, 0 to 1e20 per second.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Frequency Factor { get; init => field = Guard.Checked(value, Factors); }

    /// <summary>E_1, 0 to 200 kJ/mol.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required MolarEnergy ActivationEnergy { get; init => field = Guard.Checked(value, Energies); }

    /// <summary>A_2 of the reaction that its product quickens, 0 to 1e20 per second; zero for none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Frequency AutocatalyticFactor { get; init => field = Guard.Checked(value, Factors); }

    /// <summary>E_2, 0 to 200 kJ/mol.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required MolarEnergy AutocatalyticActivationEnergy { get; init => field = Guard.Checked(value, Energies); }

    /// <summary>m, how the product quickens it, 0 to 5.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double AutocatalyticOrder { get; init => field = Guard.Within(value, Bounds.NotNegative(Measure.Number, 5)); }

    /// <summary>n, how what is left slows it, 0.5 to 5.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double Order { get; init => field = Guard.Within(value, Bounds.Between(0.5, 5, Measure.Number)); }

    /// <summary>Other activation energies from a temperature on; <see langword="null"/> when the same hold throughout.</summary>
    public ActivationChange? Change { get; init; }

    /// <summary>How the glassy film stops it; <see langword="null"/> for none.</summary>
    public DiffusionLimit? Diffusion { get; init; }

    /// <summary>Where the parameters come from.</summary>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>dα/dt.</summary>
    /// <param name="temperature">−40 to 300 °C.</param>
    /// <param name="conversion">0 to 100 %.</param>
    /// <returns>Conversion gained per second.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Frequency Rate(Temperature temperature, Ratio conversion)
    {
        (double t, double alpha) = Checked(temperature, conversion);
        return Frequency.FromHertz(RateAt(t, alpha).Value);
    }

    /// <summary>How the rate follows.</summary>
    /// <param name="temperature">−40 to 300 °C.</param>
    /// <param name="conversion">0 to 100 %.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Workings Workings(Temperature temperature, Ratio conversion)
    {
        (double t, double alpha) = Checked(temperature, conversion);
        return Trace.Of("Rate of cure", trace => RateAt(t, alpha, trace));
    }

    /// <summary>The law in one line.</summary>
    /// <returns>Text such as <c>Kamal–Sourour, m 1, n 2, 48 kJ/mol and 52 kJ/mol</c>.</returns>
    public override string ToString() => "Kamal–Sourour, m " + Figures.Significant(AutocatalyticOrder) + ", n " + Figures.Significant(Order) + ", "
        + Measure.MolarEnergy.Format(ActivationEnergy.JoulesPerMole) + " and "
            + Measure.MolarEnergy.Format(AutocatalyticActivationEnergy.JoulesPerMole)
        + (Change is null ? string.Empty : ", " + Change) + (Diffusion is null ? string.Empty : ", " + Diffusion);

    /// <summary>Both factors zero is no reaction; called where a reaction is taken.</summary>
    internal void CheckReacts() =>
        Guard.Rule(Factor.Hertz + AutocatalyticFactor.Hertz > 0, nameof(Factor), Factor.Hertz, Measure.Rate,
            "more than 0 for this or AutocatalyticFactor");

    internal Num RateAt(double kelvins, double alpha, Trace? trace = null) =>
        trace.Step("rate of cure", "dα/dt", Measure.Rate, Law, Rate(First(kelvins, trace), Second(kelvins, trace), alpha, kelvins, trace));

    /// <summary>dα/dt from the two rate constants, which hold as long as the temperature does.</summary>
    internal Num Rate(Num first, Num second, double alpha, double kelvins, Trace? trace = null)
    {
        Num a = trace.Given("α", alpha, Measure.Percent);
        Num rate = (first + (second * Num.Power(a, trace.Given("m", AutocatalyticOrder, Measure.Number))))
            * Num.Power(1 - a, trace.Given("n", Order, Measure.Number));
        return Diffusion is DiffusionLimit glass ? rate * glass.Limit(a, kelvins, Source, trace) : rate;
    }

    internal Num First(double kelvins, Trace? trace = null) => trace.Step(
        "rate constant 1", "k_1", Measure.Rate, Source,
        Constant(
            kelvins, trace.Given("A_1", Factor.Hertz, Measure.Rate),
                trace.Given("E_1", ActivationEnergy.JoulesPerMole, Measure.MolarEnergy), "E_1'",
            Change?.Energy, trace));

    internal Num Second(double kelvins, Trace? trace = null) => trace.Step(
        "rate constant 2", "k_2", Measure.Rate, Source,
        Constant(
            kelvins, trace.Given("A_2", AutocatalyticFactor.Hertz, Measure.Rate),
                trace.Given("E_2", AutocatalyticActivationEnergy.JoulesPerMole, Measure.MolarEnergy),
            "E_2'", Change?.AutocatalyticEnergy, trace));

    // k = A e^(−E/RT), from the change on k(T_c) e^(E'/R (1/T_c − 1/T)).
    private Num Constant(double kelvins, Num factor, Num energy, string symbol, double? above, Trace? trace)
    {
        Num t = trace.Given("T", kelvins, Measure.AbsoluteTemperature);
        Num r = trace.Given("R", CuringKernel.GasConstant, Measure.MolarEntropy);
        if (Change is not ActivationChange change || kelvins < change.Kelvins)
        {
            return factor * Num.Exp(-(energy / (r * t)));
        }

        Num at = trace.Given("T_c", change.Kelvins, Measure.AbsoluteTemperature);
        return factor * Num.Exp(-(energy / (r * at)))
            * CuringKernel.Arrhenius(trace.Given(symbol, above!.Value, Measure.MolarEnergy), t, at, trace);
    }

    private static (double Kelvins, double Alpha) Checked(Temperature temperature, Ratio conversion) => (
        Guard.Within(temperature, Thermometer),
        Guard.Within(conversion, Bounds.NotNegative(Measure.Percent, 1)));
}
