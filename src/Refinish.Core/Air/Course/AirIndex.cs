using System;

namespace Refinish.Air;

/// <summary>The sum over substances of volume fraction over limit: Le Chatelier's for flammability, the mixture index for exposure.</summary>
internal sealed class AirIndex
{
    private const double Horizon = 60 * 86400;

    private readonly AirStudy study;
    private readonly double window;
    private readonly double over;

    public AirIndex(AirStudy study, double molarVolume, double?[] limits, double window, double over)
    {
        this.study = study;
        this.window = window;
        this.over = over;
        MolarVolume = molarVolume;
        Limits = limits;
        IsWhole = true;
        IsEmpty = true;
        foreach (double? limit in limits)
        {
            IsWhole &= limit is not null;
            IsEmpty &= limit is null || double.IsInfinity(limit.Value);
        }

        Weights = study.Load.Weights(molarVolume, limits);
    }

    public double MolarVolume { get; }

    /// <summary>Per substance, the limit by volume; infinite where none applies: a vapour that does not burn, or water.</summary>
    public double?[] Limits { get; }

    /// <summary>Whether every substance to which a limit applies has one.</summary>
    public bool IsWhole { get; }

    /// <summary>Whether no substance has one.</summary>
    public bool IsEmpty { get; }

    /// <summary>Per term, the volume of air that its vapour can bring to the limits.</summary>
    public double[] Weights { get; }

    public double Peak => PeakMaximum.Value;

    public double? PeakAt => PeakMaximum.At;

    /// <summary>The largest averaged index.</summary>
    public double Average => AverageMaximum.Value;

    public AirMaximum PeakMaximum => field ??= AirMaximum.Peak(study, Shape, Weights);

    public AirMaximum AverageMaximum => field ??= AirMaximum.Window(study, Shape, Weights, window, over);

    private AirShape Shape => field ??= study.Shapes.Of(Weights);

    public TimeSpan? TimeToFall(double level)
    {
        if (!IsWhole || study.Changes == 0)
        {
            return null;
        }

        double seconds = RoomHistory.TimeToFall(Path(), level * study.RoomVolume, Horizon);
        return double.IsNaN(seconds) ? null : Durations.FromSeconds(seconds);
    }

    public double GreatestFrom(double wait) => RoomHistory.GreatestFrom(Path(), wait) / study.RoomVolume;

    // Of these very weights, not of the shape that they share.
    private RoomPath Path() => new(study.Shapes.Grid(0), Weights);
}
