using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// One piece of work or one wait on site: how long, in which room, with how many people and which tools, and what it does to the room.
/// </summary>
/// <example><code>
/// SiteStep coat = new()
/// {
///     Id = "bath-1/topcoat", Name = "bathroom 1: topcoat", Duration = TimeSpan.FromMinutes(40), Room = "bathroom 1",
///     Sprays = true, Clearing = TimeSpan.FromHours(1), DustFree = TimeSpan.FromHours(4), Tools = ["spray gun"],
/// };
/// </code></example>
public sealed record SiteStep
{
    private static readonly Bounds Times = Bounds.NotNegative(Measure.Hours, 60 * 24 * 3600);

    private string? name;

    /// <summary>What identifies the step, unique within its work; lags refer to it.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Id { get; init => field = Guard.Named(value); }

    /// <summary>What is done, in words for people; the <see cref="Id"/> unless given. Two steps may have the same.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Name { get => name ?? Id; init => name = Guard.Named(value); }

    /// <summary>How long it takes, 0 to 60 days; for interruptible work, working time.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan Duration { get; init => field = Checked(value, nameof(Duration)); }

    /// <summary>The room in which it is done; <see langword="null"/> for work outside the rooms.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string? Room { get; init => field = value is null ? null : Guard.Named(value); }

    /// <summary>
    /// How many of the crew it takes, 0 to 20; 1 unless given. With none it is a wait, which runs through nights and days off.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int People { get; init => field = Guard.Count(value, 0, 20); } = 1;

    /// <summary>
    /// Whether it may stop at the end of a shift and go on in the next, as masking may and a coat may not. Other work does not break into
    /// it.
    /// </summary>
    public bool IsInterruptible { get; init; }

    /// <summary>
    /// Whether it sprays, or gives off vapour as spraying does: nobody else is in the room from its start until the room is clear. Only
    /// another such step need not wait for <see cref="Clearing"/>, because whoever does it wears supplied air.
    /// </summary>
    public bool Sprays { get; init; }

    /// <summary>
    /// How long after spraying the room stays empty until it is clear, 0 to 60 days; from a study of the air, not from habit. All attended
    /// steps in the
    /// room wait for it but those that spray.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan Clearing { get; init => field = Checked(value, nameof(Clearing)); }

    /// <summary>Whether it raises dust, as sanding does.</summary>
    public bool RaisesDust { get; init; }

    /// <summary>How long after this step its film must be kept from dust raised in the same room, 0 to 60 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan DustFree { get; init => field = Checked(value, nameof(DustFree)); }

    /// <summary>Names of the tools it occupies, one of each; none unless given.</summary>
    /// <exception cref="ArgumentException">A name is empty or stands twice.</exception>
    public IReadOnlyList<string> Tools
    {
        get;
        init
        {
            ValueList<string> tools = Guard.List(value);
            foreach (string tool in tools)
            {
                Guard.Named(tool, nameof(Tools));
            }

            field = tools.Distinct(StringComparer.Ordinal).Count() == tools.Count ? tools
                : throw new ArgumentException("Tools of '" + Name + "' names a tool twice.", nameof(Tools));
        }
    } = ValueList<string>.Empty;

    /// <summary>
    /// Times when it cannot be done, in any order, overlapping or not; none unless given: quiet hours for loud work, hours in which air or
    /// surface lie
    /// outside the product's limits, days on which the customer does not want it. Work done in one go, and a wait, overlap none of them.
    /// Interruptible
    /// work stops and goes on after them, as it does overnight.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<TimeInterval> Unavailable { get; init => field = Guard.List(value); } = ValueList<TimeInterval>.Empty;

    /// <summary>Whether someone has to be there, within working hours.</summary>
    public bool IsAttended => People > 0;

    /// <summary>The name and the time.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + TimeConstraint.Hours(Duration);

    internal static Dictionary<string, int> Indexed(IReadOnlyList<SiteStep> steps, string name)
    {
        Dictionary<string, int> index = new(steps.Count, StringComparer.Ordinal);
        foreach (SiteStep step in steps)
        {
            if (index.ContainsKey(step.Id))
            {
                throw new ArgumentException("The step '" + step.Id + "' is listed twice.", name);
            }

            index.Add(step.Id, index.Count);
        }

        return index;
    }

    private static TimeSpan Checked(TimeSpan value, string name)
    {
        Guard.Within(value, Times, name);
        return value;
    }
}
