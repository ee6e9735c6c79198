namespace Refinish.Air;

/// <summary>A largest value and when: at a moment, or over the window that ends there. No moment means that there is no airflow and the value is approached for ever.</summary>
internal readonly struct AirMaximum
{
    private AirMaximum(double value, double? at, double window)
    {
        Value = value;
        At = at;
        Length = window;
    }

    public double Value { get; }

    public double? At { get; }

    /// <summary>Length of the window; zero for a moment.</summary>
    public double Length { get; }

    /// <summary>The largest momentary value; taken from the superposition at the time that the history found.</summary>
    public static AirMaximum Peak(AirStudy study, RoomHistory history, double[] weights)
    {
        if (study.Changes == 0)
        {
            return new AirMaximum(AirLoad.Total(weights) / study.RoomVolume, null, 0);
        }

        history.Peak(out double at);
        return new AirMaximum(study.Load.Sum(weights, study.Changes, at) / study.RoomVolume, at, 0);
    }

    /// <summary>The largest dose over a window, spread over a time.</summary>
    public static AirMaximum Window(AirStudy study, RoomHistory history, double[] weights, double window, double over)
    {
        if (study.Changes == 0)
        {
            return new AirMaximum(AirLoad.Total(weights) * window / (study.RoomVolume * over), null, window);
        }

        history.WorstWindow(window, out double end);
        return new AirMaximum(study.Load.Dose(weights, study.Changes, end - window, end) / (study.RoomVolume * over), end, window);
    }
}
