using System;

namespace Refinish.Air;

/// <summary>A time that a person spends in a room whose air is studied.</summary>
/// <example><code>
/// // the study of AirStudy
/// RoomStay spraying = new(study, TimeSpan.Zero, TimeSpan.FromMinutes(20));
/// </code></example>
public sealed record RoomStay
{
    /// <summary>Makes a stay.</summary>
    /// <param name="study">The air of the room.</param>
    /// <param name="from">When the person enters, counted from the zero of the study; 0 to 400 years and 60 days.</param>
    /// <param name="until">When the person leaves, counted alike; after <paramref name="from"/>, at most 400 years and 60 days.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range.</exception>
    public RoomStay(AirStudy study, TimeSpan from, TimeSpan until)
    {
        Study = Guard.NotNull(study);
        double entered = AirStudy.Time(from, nameof(from));
        double left = AirStudy.Time(until, nameof(until));
        Guard.Rule(left > entered, nameof(until), left, Measure.Hours, "after from, ", entered);
        From = from;
        Until = until;
    }

    /// <summary>The air of the room.</summary>
    public AirStudy Study { get; }

    /// <summary>When the person enters, counted from the zero of the study.</summary>
    public TimeSpan From { get; }

    /// <summary>When the person leaves, counted from the zero of the study.</summary>
    public TimeSpan Until { get; }

    /// <summary>How long it lasts.</summary>
    public TimeSpan Duration => Until - From;

    /// <summary>The times and the room.</summary>
    /// <returns>Text such as <c>0 h to 0.5 h in 2.4384 m × 1.524 m × 2.4384 m, 9.0614 m³</c>.</returns>
    public override string ToString() =>
        Measure.Hours.Format(From.TotalSeconds) + " to " + Measure.Hours.Format(Until.TotalSeconds) + " in " + Study.Room;
}
