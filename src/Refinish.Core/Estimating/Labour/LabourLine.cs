using System;

namespace Refinish.Estimating;

/// <summary>The hours of one task in an estimate of labour.</summary>
public sealed record LabourLine
{
    internal LabourLine(LabourTask task, double difficulty)
    {
        Task = task;
        HourRange = task.Standard.IsOnSite ? task.Hours.Times(difficulty) : task.Hours;
    }

    /// <summary>The task.</summary>
    public LabourTask Task { get; }

    /// <summary>Code of the standard.</summary>
    public string Code => Task.Standard.Code;

    /// <summary>What is done.</summary>
    public string Description => Task.Standard.Description;

    /// <summary>Least, most likely and greatest hours of one person.</summary>
    public ThreePoint HourRange { get; }

    /// <summary>PERT mean of the hours of one person.</summary>
    public TimeSpan Hours => Durations.FromHours(HourRange.Mean);

    /// <summary>Code, description and hours.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Code + " " + Description + ": " + Measure.Hours.Format(HourRange.Mean * 3600, figures: 3);
}
