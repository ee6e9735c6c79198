using UnitsNet;

namespace Refinish.Substrates;

/// <summary>
/// With what and how generously hollows are filled. The defaults are invented and marked so; a shop replaces them by its own.
/// </summary>
public sealed record FillerPolicy
{
    private static readonly Bounds Cuts = Bounds.NotNegative(Measure.Length, 0.1);
    private static readonly Bounds CutDepths = Defect.Depths(0.05);

    private readonly double overfill = 0.25;
    private readonly double waste = 0.15;
    private readonly double rustMargin = 12e-3;
    private readonly double rustDepth = 0.3e-3;
    private readonly double burnMargin = 5e-3;
    private readonly double burnDepth = 1e-3;
    private readonly double dryFilm = 100e-6;
    private readonly double sinkOfFilm = 0.25;

    /// <summary>The filler.</summary>
    public required FillerProduct Product { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// Cured filler above flush, per volume of the hollow, that is sanded off again; 25 % unless given (invented, within 20 to 40 % of
    /// common practice); 0 to 200 %.
    /// </summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Overfill
    {
        get => Ratio.FromDecimalFractions(overfill);
        init => overfill = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 2));
    }

    /// <summary>
    /// Share of the mix left on board and knife; 15 % unless given (invented, within 10 to 25 % of common practice); 0 to less than 90
    /// %.
    /// </summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Waste
    {
        get => Ratio.FromDecimalFractions(waste);
        init => waste = Guard.Within(value, Bounds.Below(0, 0.9, Measure.Percent));
    }

    /// <summary>How far around a rust spot the metal is ground bright; 12 mm unless given (from memory, unverified); 0 to 100 mm.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Length RustGrindingMargin { get => Length.FromMeters(rustMargin); init => rustMargin = Guard.Within(value, Cuts); }

    /// <summary>How deep a rust spot is ground; 0.3 mm unless given (invented); at least 1 µm and at most 50 mm.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Length RustGrindingDepth { get => Length.FromMeters(rustDepth); init => rustDepth = Guard.Within(value, CutDepths); }

    /// <summary>How far around a burn is cut; 5 mm unless given (invented); 0 to 100 mm.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Length BurnCuttingMargin { get => Length.FromMeters(burnMargin); init => burnMargin = Guard.Within(value, Cuts); }

    /// <summary>How deep a burn is cut; 1 mm unless given (invented); at least 1 µm and at most 50 mm.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Length BurnCuttingDepth { get => Length.FromMeters(burnDepth); init => burnDepth = Guard.Within(value, CutDepths); }

    /// <summary>
    /// Dry film of the whole system that has to hide a sunken fill; 100 µm unless given (invented); more than 0 and at most 1 m.
    /// </summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Length TotalDryFilm
    {
        get => Length.FromMeters(dryFilm);
        init => dryFilm = Guard.Within(value, Bounds.Positive(Measure.Film, 1));
    }

    /// <summary>
    /// Sink per dry film beyond which a second fill is due; 25 % unless given (invented); more than 0 and at most 1000 %.
    /// </summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio SinkPerDryFilm
    {
        get => Ratio.FromDecimalFractions(sinkOfFilm);
        init => sinkOfFilm = Guard.Within(value, Bounds.Positive(Measure.Percent, 10));
    }

    /// <summary>The defaults with a generic polyester filler: invented, to be replaced.</summary>
    public static FillerPolicy Generic { get; } = new() { Product = FillerProduct.GenericPolyester };

    /// <summary>The filler and the two allowances.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Product + ", " + Measure.Percent.Format(overfill) + " overfill, " + Measure.Percent.Format(waste) + " waste";
}
