using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What one tape reading does to area and capacity: its standard uncertainty, the slopes, and the parts it adds.</summary>
/// <example><code>
/// FlatPanel panel = new(tape);                               // the counter of FlatPanelMeasurements
/// FixtureUncertainty spread = FixtureUncertainty.Of(tape, static t => new FlatPanel(t), [new("Width", Length.FromInches(0.25), ReadingSpread.TwoSigma, static t => t.Width, static (t, x) => t with { Width = x })]);
/// double squareInches = spread.Contributions[0].Area.SquareInches;   // 12.0
/// </code></example>
public sealed record ReadingContribution
{
    private static readonly Source Reading =
        Source.FromMemory("JCGM 100:2008, 4.3.7 and 4.3.9: standard uncertainty of a reading within ±");
    private static readonly Source Difference = Source.Derived("difference quotient over ± 10 µm, one-sided where the shape ends");

    private readonly int number;
    private readonly double plusMinus;
    private readonly ReadingSpread spread;
    private readonly (double Area, double Water, double At) high;
    private readonly (double Area, double Water, double At) low;

    internal ReadingContribution(
        int number, string name, double plusMinus, ReadingSpread spread, (double Area, double Water, double At) high,
        (double Area, double Water, double At) low)
    {
        this.number = number;
        Name = name;
        this.plusMinus = plusMinus;
        this.spread = spread;
        this.high = high;
        this.low = low;
    }

    /// <summary>The measurement's name.</summary>
    public string Name { get; }

    /// <summary>The standard uncertainty of the reading.</summary>
    public Length StandardUncertainty => Length.FromMeters(Uncertainty().Value);

    /// <summary>How much the coated area grows per length of the reading, in square metres per metre.</summary>
    public Length AreaPerLength => Length.FromMeters(AreaSlope().Value);

    /// <summary>How much the capacity grows per length of the reading, in cubic metres per metre; 0 for what holds no water.</summary>
    public Area CapacityPerLength => Area.FromSquareMeters(WaterSlope().Value);

    /// <summary>The part this reading adds to the area's standard uncertainty, with the sign of the slope.</summary>
    public Area Area => Area.FromSquareMeters(OfArea().Value);

    /// <summary>The part this reading adds to the capacity's standard uncertainty, with the sign of the slope.</summary>
    public Volume Capacity => Volume.FromCubicMeters(OfWater().Value);

    /// <summary>The name and the part of the area in one line, in metric units.</summary>
    /// <returns>Text such as <c>Depth: 0.0055 m²</c>.</returns>
    public override string ToString() => $"{Name}: {Measure.Area.Format(OfArea().Value)}";

    /// <summary>The standard uncertainty of a reading within a ±.</summary>
    internal static Num Standard(Trace? t, Num plusMinus, ReadingSpread spread) => plusMinus / spread switch
    {
        ReadingSpread.Rectangular => Num.Sqrt(t.Number(3)), ReadingSpread.Triangular => Num.Sqrt(t.Number(6)), _ => 2, };

    internal Num OfArea(Trace? t = null) => AreaSlope(t) * Uncertainty(t);

    internal Num OfWater(Trace? t = null) => WaterSlope(t) * Uncertainty(t);

    internal Num Uncertainty(Trace? t = null) => Step(t, "standard uncertainty of ", "u_", Measure.Length, Reading, Standard(
        t, t is null ? plusMinus : t.Given("a_" + Number, plusMinus, Measure.Length), spread));

    internal Num AreaSlope(Trace? t = null) => Step(t, "area per length of ", "c_", Measure.Distance, Difference,
        (t.Given("A_+", high.Area, Measure.Area) - t.Given("A_−", low.Area, Measure.Area)) / Across(t));

    internal Num WaterSlope(Trace? t = null) => Step(t, "capacity per length of ", "v_", Measure.Area, Difference,
        (t.Given("V_+", high.Water, Measure.Capacity) - t.Given("V_−", low.Water, Measure.Capacity)) / Across(t));

    private string Number => Figures.Fixed(number, 0);

    private Num Across(Trace? t) => t.Given("δ", high.At - low.At, Measure.Length);

    private Num Step(Trace? t, string name, string symbol, Measure measure, Source source, Num formula) =>
        t is null ? formula : t.Step(name + Name, symbol + Number, measure, source, formula);
}
