namespace Refinish.Climate;

/// <summary>What would bring a reading within its limit, in words with numbers in both systems of units.</summary>
internal static class SprayRemedies
{
    public static string Spread(SprayWindow window) => window.LeastSurfaceTemperature is null
        ? "Dry the air to " + Percent(window.HumidityForSpread) + " relative humidity at its present temperature; the surface cannot be heated far enough within the product's limits."
        : "Heat the surface to " + Measure.Temperature.FormatBoth(window.NeededSurface) + ", or dry the air to " + Percent(window.HumidityForSpread)
            + " relative humidity at its present temperature, or wait until the surface has warmed.";

    public static string Humidity(SprayWindow window) =>
        "Dry the air to " + Percent(window.HumidityLimit) + " relative humidity at its present temperature"
        + (window.AirForHumidity is double t
            ? ", or heat it to " + Measure.Temperature.FormatBoth(t) + " without adding water (the dew point stays)."
            : "; heating alone would have to go beyond the product's limits.");

    public static string DryAir(SprayWindow window) =>
        "Moisten the air to " + Percent(window.LeastHumidity) + " relative humidity at its present temperature, or wait for damper air.";

    public static string ColdAir(SprayWindow window) =>
        "Heat the air to " + Measure.Temperature.FormatBoth(window.Least) + "; its relative humidity falls to " + Percent(HumidityAt(window, window.Least)) + " if no water is added.";

    public static string HotAir(SprayWindow window) => HumidityAt(window, window.Most) is < 1 and double humidity
        ? "Cool the air to " + Measure.Temperature.FormatBoth(window.Most) + " or wait; its relative humidity rises to " + Percent(humidity) + " if no water is taken out."
        : "Cool the air to " + Measure.Temperature.FormatBoth(window.Most) + " and dry it: it holds more water than air of that temperature can.";

    public static string ColdSurface(SprayWindow window) => window.LeastSurfaceTemperature is null
        ? "Heat the surface to " + Measure.Temperature.FormatBoth(window.Least) + ", and dry the air: at its present dew point no surface within the product's limits has the spread."
        : "Heat the surface to " + Measure.Temperature.FormatBoth(window.NeededSurface) + ", or wait until the room has warmed it.";

    public static string HotSurface(SprayWindow window) => "Let the surface cool to " + Measure.Temperature.FormatBoth(window.Most) + ".";

    private static double HumidityAt(SprayWindow window, double t) => window.Air.Vapour / ClimateKernel.SaturationPressure(t);

    private static string Percent(double humidity) => Measure.Percent.Format(humidity, DisplayUnits.Si, 3);
}
