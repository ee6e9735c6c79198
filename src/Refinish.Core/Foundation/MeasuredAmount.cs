using System;
using UnitsNet;

namespace Refinish;

/// <summary>A number with the kind of amount that it is: a length, a share of air, an amount of money.</summary>
/// <remarks><see langword="default"/> is the pure number 0. Two are equal when their numbers in SI and their measures are.</remarks>
/// <example><code>
/// Source sheet = Source.Supplied("safety data sheet, section 8");
/// LimitComparison mist = LimitComparison.AtMost(
///     "mist", MassConcentration.FromMilligramsPerCubicMeter(0.4), MassConcentration.FromMilligramsPerCubicMeter(1), Measure.MassConcentration, sheet);
/// MeasuredAmount limit = mist.Limit!.Value;
/// string text = limit.ToString();                                           // "1 mg/m³"
/// double micrograms = limit.In(MassConcentrationUnit.MicrogramPerCubicMeter);   // 1000
/// </code></example>
public readonly record struct MeasuredAmount
{
    private readonly Measure? measure;

    /// <summary>Gives a number its kind.</summary>
    /// <param name="si">The number in the SI base unit of <paramref name="measure"/>.</param>
    /// <param name="measure">What kind of amount it is.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measure"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="si"/> is NaN or infinite.</exception>
    public MeasuredAmount(double si, Measure measure)
    {
        this.measure = Guard.NotNull(measure);
        Si = Guard.Within(si, Bounds.Between(double.MinValue, double.MaxValue, measure));
    }

    /// <summary>The number in the SI base unit of <see cref="Measure"/>.</summary>
    public double Si { get; }

    /// <summary>What kind of amount it is, and the units in which it is shown.</summary>
    public Measure Measure => measure ?? Measure.Number;

    /// <summary>The quantity of the units library; a pure number is a <see cref="Ratio"/>.</summary>
    /// <returns>The quantity, in an SI unit; <see langword="null"/> for what that library lacks, such as money or gloss.</returns>
    public IQuantity? ToQuantity() => Measure.Quantity?.Invoke(Si);

    /// <summary>The number in a unit of the units library, as <c>In(RatioUnit.PartPerMillion)</c>.</summary>
    /// <param name="unit">A unit of the kind of <see cref="ToQuantity"/>.</param>
    /// <returns>The number in that unit.</returns>
    /// <exception cref="ArgumentException">The unit is missing, or of another kind.</exception>
    public double In(Enum unit) => ToQuantity() is IQuantity quantity && Guard.NotNull(unit).GetType() == quantity.Unit.GetType()
        ? quantity.As(unit)
        : throw new ArgumentException("unit is " + unit.GetType().Name + "." + unit + "; allowed: a unit of " + Measure.Kind + ".", nameof(unit));

    /// <summary>The amount as text in metric units, in the invariant culture.</summary>
    /// <returns>Text such as <c>4.2 K</c>.</returns>
    public override string ToString() => ToString(DisplayUnits.Si);

    /// <summary>The amount as text with its unit, in the invariant culture.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text such as <c>7.56 Δ°F</c>.</returns>
    public string ToString(DisplayUnits system) => Measure.Format(Si, system);
}
