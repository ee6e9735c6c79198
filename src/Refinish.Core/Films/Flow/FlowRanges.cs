using System;
using Refinish.Coatings;

namespace Refinish.Films;

/// <summary>Ranges that the flow calculations share.</summary>
internal static class FlowRanges
{
    public static readonly Bounds Slope = Bounds.Between(0, Math.PI / 2, Measure.Angle);
    public static readonly Bounds Density = Bounds.Between(500, 3000, Measure.Density);
    public static readonly Bounds Tension = FlowFigures.Tensions;
    public static readonly Bounds Viscosity = Bounds.Between(1e-4, 1e4, Measure.DynamicViscosity);
    public static readonly Bounds Wavelength = FlowFigures.Wavelengths;
    public static readonly Bounds Film = Bounds.Between(1e-6, 5e-3, Measure.Film);
    public static readonly Bounds YieldStress = FlowFigures.YieldStresses;
    public static readonly Bounds Duration = Bounds.Positive(Measure.Seconds, 7 * 86400);
}
