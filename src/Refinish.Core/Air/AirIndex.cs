using System;
using System.Linq;

namespace Refinish.Air;

/// <summary>The sum over substances of volume fraction over limit: Le Chatelier's for flammability, the mixture index for exposure.</summary>
internal sealed class AirIndex
{
    private const double Horizon = 60 * 86400;

    private readonly RoomHistory history;
    private readonly AirStudy study;
    private readonly AirMaximum peak;
    private readonly AirMaximum average;

    public AirIndex(AirStudy study, double molarVolume, double?[] limits, double window, double over)
    {
        this.study = study;
        MolarVolume = molarVolume;
        Limits = limits;
        IsWhole = limits.All(limit => limit is not null);
        IsEmpty = limits.All(limit => limit is null);
        Weights = study.Load.Weights(molarVolume, limits);
        history = new RoomHistory(study.Load.Timeline, study.Changes, Weights);
        peak = AirMaximum.Peak(study, history, Weights);
        average = AirMaximum.Window(study, history, Weights, window, over);
    }

    public double MolarVolume { get; }

    /// <summary>Per substance, the limit by volume.</summary>
    public double?[] Limits { get; }

    /// <summary>Whether every substance has a limit.</summary>
    public bool IsWhole { get; }

    /// <summary>Whether no substance has one.</summary>
    public bool IsEmpty { get; }

    /// <summary>Per coat, the volume of air that its vapour can bring to the limits.</summary>
    public double[] Weights { get; }

    public double Peak => peak.Value;

    public double? PeakAt => peak.At;

    /// <summary>The largest averaged index.</summary>
    public double Average => average.Value;

    public AirMaximum PeakMaximum => peak;

    public AirMaximum AverageMaximum => average;

    public TimeSpan? TimeToFall(double level)
    {
        if (!IsWhole)
        {
            return null;
        }

        double seconds = history.TimeToFall(level * study.RoomVolume, Horizon);
        return double.IsNaN(seconds) ? null : Durations.FromSeconds(seconds);
    }

    public double GreatestFrom(double wait) => history.GreatestFrom(wait) / study.RoomVolume;
}
