namespace Refinish;

/// <summary>An allowed range in the SI base unit of a <see cref="Refinish.Measure"/>, with open or closed ends.</summary>
internal readonly record struct Bounds(
    double Minimum, double Maximum, bool MinimumIncluded, bool MaximumIncluded, Measure Measure, string? Reason = null, double Real = 0)
{
    /// <summary>More than zero, at most <paramref name="maximum"/>.</summary>
    public static Bounds Positive(Measure measure, double maximum = double.PositiveInfinity) => new(0, maximum, false, true, measure);

    /// <summary>Zero or more, at most <paramref name="maximum"/>.</summary>
    public static Bounds NotNegative(Measure measure, double maximum = double.PositiveInfinity) => new(0, maximum, true, true, measure);

    /// <summary>
    /// None at all, or a real amount from <paramref name="least"/> on: what is written smaller than anything that is measured is a slip,
    /// and sums over its reciprocal are no numbers.
    /// </summary>
    public static Bounds NoneOrFrom(double least, Measure measure, double maximum) => new(0, maximum, true, true, measure, Real: least);

    /// <summary>Both ends allowed.</summary>
    public static Bounds Between(double minimum, double maximum, Measure measure) => new(minimum, maximum, true, true, measure);

    /// <summary>The lower end allowed, the upper end not: a fraction that must leave something over.</summary>
    public static Bounds Below(double minimum, double maximum, Measure measure) => new(minimum, maximum, true, false, measure);

    /// <summary>The lower end excluded, the upper end allowed.</summary>
    public static Bounds Above(double minimum, double maximum, Measure measure) => new(minimum, maximum, false, true, measure);

    /// <summary>The same range, with why it ends there for whoever is refused.</summary>
    public Bounds Because(string why) => this with { Reason = why };

    public bool Contains(double value)
    {
        // Written so that NaN fails every branch.
        bool lower = MinimumIncluded ? value >= Minimum : value > Minimum;
        bool upper = MaximumIncluded ? value <= Maximum : value < Maximum;
        return lower && upper && !double.IsInfinity(value) && !(value > 0 && value < Real);
    }

    public override string ToString()
    {
        string lower = Real > 0
            ? Measure.Format(0) + ", or at least " + Measure.Format(Real)
            : (MinimumIncluded ? "at least " : "more than ") + Measure.Format(Minimum);
        string range = double.IsInfinity(Maximum)
            ? lower
            : lower + " and " + (MaximumIncluded ? "at most " : "less than ") + Measure.Format(Maximum);
        return Reason is null ? range : range + ", " + Reason;
    }
}
