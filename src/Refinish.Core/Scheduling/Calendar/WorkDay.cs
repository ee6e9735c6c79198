namespace Refinish.Scheduling;

/// <summary>A day of <see cref="Openings"/> with its first opening, its last close and the working time between them.</summary>
internal readonly record struct WorkDay(int Day, long Open, long Close, long Work);
