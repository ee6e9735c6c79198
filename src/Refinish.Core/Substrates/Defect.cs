namespace Refinish.Substrates;

/// <summary>One thing found wrong with a fixture, with its size. The kinds are the sealed records of this namespace.</summary>
/// <remarks>Sizes are held in SI, so two equal defects are equal whatever unit they were measured in.</remarks>
/// <example><code>
/// Defect[] found = [new Chip(Length.FromMillimeters(20), Length.FromMillimeters(2)), new RustSpot(Length.FromMillimeters(15))];
/// </code></example>
public abstract record Defect
{
    // Closed on purpose: every rule and standard knows every kind.
    private protected Defect(DefectKind kind, string name)
    {
        Kind = kind;
        Name = name;
    }

    /// <summary>Which kind it is.</summary>
    public DefectKind Kind { get; }

    /// <summary>What it is called, in the trade's words.</summary>
    public string Name { get; }

    /// <summary>The defect with its sizes as text.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text such as <c>chip 20 mm across, 2 mm deep</c>.</returns>
    public abstract string Describe(DisplayUnits system);

    /// <summary>The defect with its sizes, in metric units.</summary>
    /// <returns>See <see cref="Describe"/>.</returns>
    public sealed override string ToString() => Describe(DisplayUnits.Si);

    /// <summary>The hollow that filler has to take up; <see langword="null"/> when this is not mended with filler.</summary>
    internal virtual Cavity? CavityUnder(FillerPolicy policy) => null;

    internal static string Mm(double metres, DisplayUnits system) => Measure.Length.Format(metres, system, 4);
}
