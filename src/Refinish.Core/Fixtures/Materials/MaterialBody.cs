using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What of a fixture has to warm: how its material takes up heat, how thick its wall usually is, how dense it is.</summary>
/// <remarks>Area times thickness times density is the mass that has to warm, where nobody weighed the fixture.</remarks>
/// <example><code>
/// MaterialBody iron = FixtureMaterial.EnamelledCastIron.Body!;
/// double millimetres = iron.UsualThickness.Millimeters;   // 6
/// </code></example>
public sealed record MaterialBody
{
    private readonly double thickness;
    private readonly double density;

    /// <summary>How it takes up and conducts heat; of enamel the metal below, of gelcoat the laminate.</summary>
    /// <exception cref="System.ArgumentNullException">Missing.</exception>
    public required FixtureThermalData Heat { get; init => field = Guard.NotNull(value); }

    /// <summary>Usual thickness of the wall, more than 0 and at most 0.5 m; measure where it counts.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length UsualThickness
    {
        get => Length.FromMeters(thickness);
        init => thickness = Guard.Within(value, Bounds.Positive(Measure.Length, 0.5));
    }

    /// <summary>Density, 50 to 25 000 kg/m³.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density Density
    {
        get => Density.FromKilogramsPerCubicMeter(density);
        init => density = Guard.Within(value, Bounds.Between(50, 25_000, Measure.Density));
    }

    /// <summary>Where thickness and density come from.</summary>
    /// <exception cref="System.ArgumentNullException">Missing.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>The three figures in one line.</summary>
    /// <returns>Text such as <c>cast iron: 530 J/(kg·K), 56 W/(m·K); 6 mm, 7200 kg/m³</c>.</returns>
    public override string ToString() => Heat + "; " + Measure.Length.Format(thickness) + ", " + Measure.Density.Format(density);

    internal static MaterialBody Usual(FixtureThermalData heat, double millimetres, double density) => new()
    {
        Heat = heat,
        UsualThickness = Length.FromMillimeters(millimetres),
        Density = Density.FromKilogramsPerCubicMeter(density),
        Source = Source.FromMemory("usual wall thickness and density of what a fixture is made of; measure where it counts"), };
}
