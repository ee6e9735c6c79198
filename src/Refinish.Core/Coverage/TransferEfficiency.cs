using UnitsNet;

namespace Refinish.Coverage;

/// <summary>Part of the sprayed solids that lands, for one way of spraying, as one source prints it.</summary>
public sealed record TransferEfficiency
{
    /// <summary>Makes an entry.</summary>
    /// <param name="method">The way of spraying.</param>
    /// <param name="low">Lower end, 5 to 100 %.</param>
    /// <param name="high">Upper end, from the lower end to 100 %.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="System.ArgumentException"><paramref name="method"/> is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException">A number is outside its range.</exception>
    public TransferEfficiency(string method, Ratio low, Ratio high, Source source)
    {
        Method = Guard.Named(method);
        Low = Guard.Checked(low, Bounds.Between(0.05, 1, Measure.Percent));
        High = Guard.Checked(high, Bounds.Between(Low.DecimalFractions, 1, Measure.Percent));
        Source = Guard.NotNull(source);
    }

    /// <summary>The way of spraying.</summary>
    public string Method { get; }

    /// <summary>Lower end.</summary>
    public Ratio Low { get; }

    /// <summary>Upper end.</summary>
    public Ratio High { get; }

    /// <summary>The middle of the two.</summary>
    public Ratio Middle => Ratio.FromDecimalFractions((Low.DecimalFractions + High.DecimalFractions) / 2);

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>Method and range.</summary>
    /// <returns>Text such as <c>air-assisted airless, 60 % to 80 %</c>.</returns>
    public override string ToString() =>
        Method + ", " + Measure.Percent.Format(Low.DecimalFractions)
            + (High.DecimalFractions > Low.DecimalFractions ? " to " + Measure.Percent.Format(High.DecimalFractions) : string.Empty);
}
