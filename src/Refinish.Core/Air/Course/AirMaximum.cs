namespace Refinish.Air;

/// <summary>
/// A largest value and when: at a moment, or over the window that ends there. No moment means that there is no airflow and the value is
/// approached for ever.
/// </summary>
internal sealed record AirMaximum(double Value, double? At);
