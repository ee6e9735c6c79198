namespace Refinish.Coatings;

/// <summary>
/// One figure of a data sheet held against the same figure as it follows from others: both numbers, and how far apart they may lie.
/// </summary>
public sealed record DataSheetFinding
{
    internal DataSheetFinding(string code, string subject, double stated, double calculated, Measure measure, double agreement,
        Source source, string remedy)
    {
        Code = code;
        Subject = subject;
        Stated = stated;
        Calculated = calculated;
        Measure = measure;
        double off = System.Math.Abs(Off().Value);
        Comparison = new(
            subject + ", relative difference", off, agreement, LimitSense.AtMost, Measure.Percent, source,
            off <= agreement ? null : remedy);
    }

    /// <summary>
    /// Stable name: <c>weight-ratio/</c> and <c>volume-solids/</c> with a component's identity, <c>volume-solids</c>, <c>isocyanate</c>,
    /// <c>stoichiometry</c>.
    /// </summary>
    public string Code { get; }

    /// <summary>Which figure.</summary>
    public string Subject { get; }

    /// <summary>The figure as stated, in the SI base unit of <see cref="Measure"/>.</summary>
    public double Stated { get; }

    /// <summary>The figure as it follows from others, in the same unit.</summary>
    public double Calculated { get; }

    /// <summary>What kind of amount both are.</summary>
    public Measure Measure { get; }

    /// <summary>Their relative difference against what is taken as agreement.</summary>
    public LimitComparison Comparison { get; }

    /// <summary>Both numbers and how they compare.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Subject + ": stated " + Measure.Format(Stated, DisplayUnits.Si, 4) + ", follows as " + Measure.Format(Calculated, DisplayUnits.Si, 4) + " ("
        + Measure.Percent.Format(Off().Value, DisplayUnits.Si, 3) + ")";

    /// <summary>The relative difference as a step.</summary>
    internal Num Step(Trace t) => t.Step(Subject, "d", Measure.Percent, Comparison.Source, Off(t));

    private Num Off(Trace? t = null) => (t.Given("x_stated", Stated, Measure) / t.Given("x", Calculated, Measure)) - 1;
}
