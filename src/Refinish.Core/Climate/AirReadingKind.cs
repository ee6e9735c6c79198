namespace Refinish.Climate;

/// <summary>What an instrument or a table tells about humid air.</summary>
public enum AirReadingKind
{
    /// <summary>Air temperature.</summary>
    DryBulb,

    /// <summary>Dew point; at and below 0.01 °C the frost point.</summary>
    DewPoint,

    /// <summary>Mass of water per mass of dry air.</summary>
    HumidityRatio,

    /// <summary>Relative humidity; over ice at and below 0.01 °C.</summary>
    RelativeHumidity,

    /// <summary>Temperature of a wetted bulb in moving air; at and below 0.01 °C of a bulb covered with ice.</summary>
    WetBulb,

    /// <summary>Enthalpy per mass of dry air, zero for dry air and liquid water at 0 °C.</summary>
    Enthalpy,

    /// <summary>Volume of the humid air per mass of dry air.</summary>
    SpecificVolume,
}
