using System.Globalization;
using UnitsNet;

namespace Refinish.Films;

/// <summary>One step of sanding or polishing and how much of the mean film it takes.</summary>
/// <example><code>
/// RemovalStep flatten = RemovalStep.Flatten("wet sand flat, P1500", Length.FromMicrometers(10));    // wet sand flat, P1500: 5 µm
/// RemovalStep polish = RemovalStep.TakeOff("polish out the P1500 scratches", Length.FromMicrometers(2), Source.Invented("a trial on a panel replaces it"));
/// </code></example>
public sealed record RemovalStep
{
    private static readonly Source Texture = Source.Derived("sanding a texture with as much above its mean plane as below down to its valleys takes half of peak to valley off the mean film");
    private static readonly Source Difference = Source.Derived("film before less film after");
    private static readonly Source Balance = Source.Derived("mass of coating removed over its density and the area");

    private readonly Way way;
    private readonly double first;
    private readonly double second;
    private readonly double third;

    private RemovalStep(string name, Way way, double first, double second, double third, Source source)
    {
        Name = Guard.Named(name);
        this.way = way;
        this.first = first;
        this.second = second;
        this.third = third;
        Source = Guard.NotNull(source);
    }

    private enum Way
    {
        TakenOff,
        Flattened,
        Measured,
        Weighed,
    }

    /// <summary>What is done.</summary>
    public string Name { get; }

    /// <summary>Mean film that it takes.</summary>
    public Length Depth => Length.FromMeters(Taken().Value);

    /// <summary>What the depth rests on.</summary>
    public Source Source { get; }

    /// <summary>A known depth, such as that of scratches that have to be polished out.</summary>
    /// <param name="name">What is done.</param>
    /// <param name="depth">Depth, 0 to 1 mm.</param>
    /// <param name="source">What the depth rests on.</param>
    /// <returns>The step.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public static RemovalStep TakeOff(string name, Length depth, Source source) =>
        new(name, Way.TakenOff, Guard.Within(depth, Bounds.NotNegative(Measure.Film, 1e-3)), 0, 0, source);

    /// <summary>
    /// Sanding an orange peel flat, down to its valleys: half of peak to valley for a texture that is alike above and below its mean.
    /// </summary>
    /// <param name="name">What is done.</param>
    /// <param name="peakToValley">Height of the texture from valley to peak, 0 to 1 mm.</param>
    /// <returns>The step.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public static RemovalStep Flatten(string name, Length peakToValley) =>
        new(name, Way.Flattened, Guard.Within(peakToValley, Bounds.NotNegative(Measure.Film, 1e-3)), 0, 0, Texture);

    /// <summary>What two gauge readings at one place say.</summary>
    /// <param name="name">What was done.</param>
    /// <param name="before">Film before, 0 to 5 mm.</param>
    /// <param name="after">Film after, 0 to 5 mm, not above the film before.</param>
    /// <returns>The step.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public static RemovalStep Measured(string name, Length before, Length after)
    {
        double thick = Guard.Within(before, Bounds.NotNegative(Measure.Film, 5e-3));
        double thin = Guard.Within(after, Bounds.NotNegative(Measure.Film, 5e-3));
        Guard.Rule(thin <= thick, nameof(after), thin, Measure.Film, "at most the film before, ", thick);
        return new(name, Way.Measured, thick, thin, 0, Difference);
    }

    /// <summary>What the mass of dry coating removed from a panel or an area says.</summary>
    /// <param name="name">What was done.</param>
    /// <param name="removed">Mass of dry coating removed, 0 to 10 kg.</param>
    /// <param name="density">Density of the dry film, 0.5 to 5 g/mL.</param>
    /// <param name="area">Area sanded, from 1 cm² to 100 m².</param>
    /// <returns>The step.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public static RemovalStep Weighed(string name, Mass removed, Density density, Area area) => new(
        name,
        Way.Weighed,
        Guard.Within(removed, Bounds.NotNegative(Measure.Mass, 10)),
        Guard.Within(density, Bounds.Between(500, 5000, Measure.Density)),
        Guard.Within(area, Bounds.Between(1e-4, 100, Measure.Area)),
        Balance);

    /// <summary>The step in one line, in metric units.</summary>
    /// <returns>Text such as <c>wet sand flat, P1500: 5 µm</c>.</returns>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "{0}: {1}", Name, Measure.Film.Format(Depth.Meters));

    internal Num Taken(Trace? t = null) => way switch
    {
        Way.Flattened => t.Given("R_z", first, Measure.Film) / 2,
        Way.Measured => t.Given("d_before", first, Measure.Film) - t.Given("d_after", second, Measure.Film),
        Way.Weighed => t.Given("m", first, Measure.Mass) / (t.Given("ρ", second, Measure.Density) * t.Given("A", third, Measure.Area)),
        _ => t.Given("d", first, Measure.Film),
    };
}
