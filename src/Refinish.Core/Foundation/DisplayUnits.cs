namespace Refinish;

/// <summary>The units in which a number is shown to a person. It never changes what is calculated.</summary>
public enum DisplayUnits
{
    /// <summary>
    /// Metric units as the trade uses them: millimetres, micrometres, square metres, millilitres, grams, degrees Celsius.
    /// </summary>
    Si,

    /// <summary>US customary units: inches, mils, square feet, US fluid ounces, ounces, degrees Fahrenheit.</summary>
    UsCustomary,
}
