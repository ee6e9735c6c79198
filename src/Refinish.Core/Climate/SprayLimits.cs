using UnitsNet;

namespace Refinish.Climate;

/// <summary>Between which air and surface conditions a product may be applied, from its data sheet.</summary>
/// <example><code>
/// SprayLimits limits = new()
/// {
///     MinimumTemperature = Temperature.FromDegreesCelsius(16),
///     MaximumTemperature = Temperature.FromDegreesCelsius(32),
///     MaximumRelativeHumidity = Ratio.FromPercent(80),
///     Source = Source.Supplied("product data sheet"),
/// };
/// </code></example>
public sealed record SprayLimits
{
    private static readonly Bounds Thermometer = Bounds.Between(233.15, 333.15, Measure.Temperature);

    /// <summary>Lowest temperature of air and surface, −40 to 60 °C.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside −40 to 60 °C.</exception>
    public required Temperature MinimumTemperature { get; init => field = Guard.Checked(value, Thermometer); }

    /// <summary>Highest temperature of air and surface, −40 to 60 °C.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside −40 to 60 °C.</exception>
    public required Temperature MaximumTemperature { get; init => field = Guard.Checked(value, Thermometer); }

    /// <summary>Highest relative humidity of the air, more than 0 and at most 100 %.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio MaximumRelativeHumidity { get; init => field = Guard.Checked(value, Bounds.Positive(Measure.Percent, 1)); }

    /// <summary>
    /// Lowest relative humidity of the air, 0 to 100 %; 0, which asks for nothing, unless given. Products that cure with the moisture of
    /// the air state one.
    /// </summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio MinimumRelativeHumidity { get; init => field = Guard.Checked(value, Bounds.NotNegative(Measure.Percent, 1)); }

    /// <summary>How far the surface has to be above the dew point: 3 K unless the data sheet asks for more; 0 to 20 K.</summary>
    /// <remarks>
    /// The 3 °C are those of ISO 8502-4 (figure seen second-hand in galvanizing and paint-application handbooks, not in the standard
    /// itself).
    /// </remarks>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside 0 to 20 K.</exception>
    public TemperatureDelta MinimumSpreadAboveDewPoint
    {
        get;
        init => field = Guard.Checked(value, Bounds.NotNegative(Measure.TemperatureDifference, 20));
    }
    = TemperatureDelta.FromKelvins(3);

    /// <summary>Where the limits come from.</summary>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>The lowest of each has to be at most the highest; called when a product, its operation or a window takes them.</summary>
    internal void CheckOrder()
    {
        Guard.Rule(
            MinimumTemperature <= MaximumTemperature, nameof(MinimumTemperature), MinimumTemperature.Kelvins, Measure.Temperature,
            "at most MaximumTemperature, ", MaximumTemperature.Kelvins);
        Guard.Rule(
            MinimumRelativeHumidity <= MaximumRelativeHumidity, nameof(MinimumRelativeHumidity), MinimumRelativeHumidity.DecimalFractions,
            Measure.Percent, "at most MaximumRelativeHumidity, ", MaximumRelativeHumidity.DecimalFractions);
    }

    /// <summary>The limits in one line, in metric units.</summary>
    /// <returns>Text such as <c>16 °C to 32 °C, at most 80 %, 3 K above dew point</c>.</returns>
    public override string ToString() =>
        Measure.Temperature.Format(MinimumTemperature.Kelvins) + " to " + Measure.Temperature.Format(MaximumTemperature.Kelvins)
        + (MinimumRelativeHumidity.DecimalFractions > 0
            ? ", at least " + Measure.Percent.Format(MinimumRelativeHumidity.DecimalFractions) : string.Empty)
        + ", at most " + Measure.Percent.Format(MaximumRelativeHumidity.DecimalFractions) + " relative humidity, "
        + Measure.TemperatureDifference.Format(MinimumSpreadAboveDewPoint.Kelvins) + " above dew point";
}
