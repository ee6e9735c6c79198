using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// What a product's wet film does before it sets: how far it can flow, what drives it to level, and how much sag and ripple are accepted.
/// </summary>
/// <remarks>
/// The ranges are those of <c>Refinish.Films.FlowWindow</c>, which judges a wet film with these figures. Fluidity and surface tension are
/// measured on the product as it is sprayed; no data sheet of the trade is known to print the fluidity, so the generic catalogue has none.
/// </remarks>
/// <example><code>
/// FlowFigures flow = new()
/// {
///     Fluidity = 200, SurfaceTension = ForcePerLength.FromMillinewtonsPerMeter(28), Source = Source.Supplied("test panel of the shop"),
/// };
/// CoatingProduct topcoat = GenericCatalogue.AcrylicUrethaneTopcoat with { Flow = flow };
/// </code></example>
public sealed record FlowFigures
{
    internal static readonly Bounds Fluidities = Bounds.Between(1e-3, 1e7, Measure.Fluidity);
    internal static readonly Bounds Sags = Bounds.Between(1e-4, 0.1, Measure.Length);
    internal static readonly Bounds Tensions = Bounds.Between(0.005, 0.1, Measure.SurfaceTension);
    internal static readonly Bounds Wavelengths = Bounds.Between(5e-5, 0.1, Measure.Length);
    internal static readonly Bounds Ripples = Bounds.Between(1e-3, 0.99, Measure.Number);
    internal static readonly Bounds YieldStresses = Bounds.NotNegative(Measure.Pressure, 1000);

    private readonly double fluidity;
    private readonly double tension;
    private readonly double sagAllowed = 5e-3;
    private readonly double wavelength = 3e-3;
    private readonly double rippleLeft = 0.1;
    private readonly double yieldStress;

    /// <summary>Integral of time over viscosity until the film sets, in 1/Pa, 0.001 to 10⁷.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double Fluidity { get => fluidity; init => fluidity = Guard.Within(value, Fluidities); }

    /// <summary>Surface tension of the wet coating, 5 to 100 mN/m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required ForcePerLength SurfaceTension
    {
        get => ForcePerLength.FromNewtonsPerMeter(tension);
        init => tension = Guard.Within(value, Tensions);
    }

    /// <summary>How far the surface may creep without being seen as a sag, 0.1 to 100 mm; 5 mm unless given (invented default).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length SagAllowed { get => Length.FromMeters(sagAllowed); init => sagAllowed = Guard.Within(value, Sags); }

    /// <summary>The ripple that has to level, crest to crest, 0.05 to 100 mm; 3 mm unless given (invented default).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length Wavelength { get => Length.FromMeters(wavelength); init => wavelength = Guard.Within(value, Wavelengths); }

    /// <summary>Part of the ripple that may be left, 0.001 to 0.99; 0.1 unless given (invented default).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double RippleLeft { get => rippleLeft; init => rippleLeft = Guard.Within(value, Ripples); }

    /// <summary>
    /// Stress below which the wet coating does not flow, 0 to 1000 Pa; none unless given. With one, the fluidity is that of the plastic
    /// viscosity.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Pressure YieldStress { get => Pressure.FromPascals(yieldStress); init => yieldStress = Guard.Within(value, YieldStresses); }

    /// <summary>Where fluidity and surface tension come from.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>Fluidity and surface tension in one line.</summary>
    /// <returns>Text such as <c>fluidity 200 1/Pa, 28 mN/m</c>.</returns>
    public override string ToString() =>
        "fluidity " + Measure.Fluidity.Format(fluidity, DisplayUnits.Si, 3) + ", "
        + Measure.SurfaceTension.Format(tension, DisplayUnits.Si, 3);
}
