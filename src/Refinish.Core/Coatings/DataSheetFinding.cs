namespace Refinish.Coatings;

/// <summary>One figure of a data sheet held against the same figure as it follows from others: both numbers, and how far apart they may lie.</summary>
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
        Comparison = new(
            subject + ", relative difference", System.Math.Abs((stated / calculated) - 1), agreement, LimitSense.AtMost, Measure.Percent, source,
            System.Math.Abs((stated / calculated) - 1) <= agreement ? null : remedy);
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
        + Measure.Percent.Format((Stated / Calculated) - 1, DisplayUnits.Si, 3) + ")";

    /// <summary>The relative difference as a step.</summary>
    internal WorkingStep Step() => new(
        Subject,
        "d",
        (Expression.Quantity("x_stated", Stated, Measure) / Expression.Quantity("x", Calculated, Measure)) - 1,
        (Stated / Calculated) - 1,
        Measure.Percent,
        Comparison.Source);
}
