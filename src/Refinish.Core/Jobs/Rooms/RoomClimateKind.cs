namespace Refinish.Jobs;

/// <summary>How the temperature of a room goes over the job.</summary>
public enum RoomClimateKind
{
    /// <summary>Held at one reading, day and night.</summary>
    Held,

    /// <summary>A daily swing about a mean.</summary>
    Daily,

    /// <summary>By a log or forecast with clock times.</summary>
    Logged,
}
