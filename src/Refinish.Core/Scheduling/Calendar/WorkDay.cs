namespace Refinish.Scheduling;

/// <summary>A day of <see cref="Openings"/> with its first opening, its last close and the working time between them.</summary>
internal readonly struct WorkDay(int day, long open, long close, long work)
{
    public int Day { get; } = day;

    public long Open { get; } = open;

    public long Close { get; } = close;

    public long Work { get; } = work;
}
