namespace Refinish.Air;

/// <summary>A largest value and when: at a moment, or over the window that ends there. No moment means that there is no airflow and the value is approached for ever.</summary>
internal sealed class AirMaximum
{
    public AirMaximum(double value, double? at)
    {
        Value = value;
        At = at;
    }

    public double Value { get; }

    public double? At { get; }

    /// <summary>The largest momentary value; taken from the superposition at the time that the search found.</summary>
    public static AirMaximum Peak(AirStudy study, AirShape shape, double[] weights)
    {
        if (study.Changes == 0)
        {
            return new AirMaximum(AirLoad.Total(weights) / study.RoomVolume, null);
        }

        AirMoment peak = shape.Peak();
        return new AirMaximum(peak.Sum(weights) / study.RoomVolume, peak.At);
    }

    /// <summary>The largest dose over a window, spread over a time.</summary>
    public static AirMaximum Window(AirStudy study, AirShape shape, double[] weights, double window, double over)
    {
        if (study.Changes == 0)
        {
            return new AirMaximum(AirLoad.Total(weights) * window / (study.RoomVolume * over), null);
        }

        AirMoment worst = shape.Window(window);
        return new AirMaximum(worst.Sum(weights) / (study.RoomVolume * over), worst.At);
    }
}
