using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Threading;

namespace Refinish.Scheduling;

/// <summary>
/// The work on one property: steps in one or more rooms, the times to keep between them, one crew, its tools and its calendar.
/// <see cref="Solve()"/> finds when each step is done: on as few days as can be, then with the end as early as can be, or the other way
/// round.
/// </summary>
/// <remarks>
/// The order of work is found, not given: it follows from the lags, the crew, the tools and the rooms. A room is empty but for the sprayer
/// while a coat is sprayed and until it is clear; dust is kept from wet film in the same room; interruptible work stops at the end of a
/// shift, or when it cannot be done, only. The order in which steps are listed is one of the orders that are tried, so the result is never
/// worse than that. When end and days are settled, steps of a visit move later where that shortens it, so that nobody comes early to wait.
/// </remarks>
/// <example><code>
/// SiteWork work = new()
/// {
///     Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)),
///     Calendar = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)),
/// LocalClock.Fixed(TimeSpan.FromHours(1))),
///     Steps =
///     [
///         new SiteStep { Id = "prime", Duration = TimeSpan.FromHours(1), Room = "bathroom", Sprays = true, Clearing =
/// TimeSpan.FromHours(1) },
///         new SiteStep { Id = "topcoat", Duration = TimeSpan.FromHours(1), Room = "bathroom", Sprays = true, Clearing =
/// TimeSpan.FromHours(1) },
///     ],
///     Lags = [new StepLag("prime", "topcoat", TimeSpan.FromHours(2), TimeSpan.FromHours(24), "recoat window of the primer")],
/// };
/// DateTimeOffset done = work.Solve().Finish!.Value;   // 12:00
/// </code></example>
public sealed record SiteWork
{
    private static readonly Bounds Slacks = Bounds.NotNegative(Measure.Hours, 60 * 24 * 3600);

    /// <summary>Nothing starts before this instant; in the years 1900 to 8999.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required DateTimeOffset Start
    {
        get;
        init
        {
            if (value.UtcDateTime.Year is < 1900 or > 8999)
            {
                string text = value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
                throw new ArgumentOutOfRangeException(nameof(Start), text, "Start is " + text + "; allowed: the years 1900 to 8999.");
            }

            field = value;
        }
    }

    /// <summary>When the crew is on site.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required WorkCalendar Calendar { get; init => field = Guard.NotNull(value); }

    /// <summary>The steps in any order, with unique ids; 1 to 2000.</summary>
    /// <exception cref="ArgumentException">None is given or an entry is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are more than 2000.</exception>
    public required IReadOnlyList<SiteStep> Steps
    {
        get;
        init
        {
            ValueList<SiteStep> steps = Guard.List(value, 1);
            Guard.Count(steps.Count, 1, 2000, nameof(Steps));
            field = steps;
        }
    }

    /// <summary>Times to keep between steps, in any order; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<StepLag> Lags { get; init => field = Guard.List(value); } = ValueList<StepLag>.Empty;

    /// <summary>How many people the crew has, 1 to 20; 1 unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Crew { get; init => field = Guard.Count(value, 1, 20); } = 1;

    /// <summary>Tools of which there are more than one; a tool that is not listed is there once.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<SiteTool> Tools { get; init => field = Guard.List(value); } = ValueList<SiteTool>.Empty;

    /// <summary>What comes first; <see cref="SchedulePreference.FewestVisits"/> unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public SchedulePreference Prefers { get; init => field = Guard.Defined(value); } = SchedulePreference.FewestVisits;

    /// <summary>
    /// How much later than the end of the working day of the earliest end a schedule may end for the sake of fewer visits, 0 to 60 days; 7
    /// days unless given (invented: the same days come again a week later).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan VisitSlack
    {
        get;
        init
        {
            Guard.Within(value, Slacks);
            field = value;
        }
    } = TimeSpan.FromDays(7);

    /// <summary>Time on site is paid in whole blocks of this length; zero for as long as it takes.</summary>
    internal TimeSpan PaidBlock { get; init; }

    /// <summary>Finds a schedule with the usual effort.</summary>
    /// <returns>The schedule with what was proved about it; when there is none, what contradicts what.</returns>
    /// <exception cref="ArgumentException">Ids, lags, people or tools do not fit each other.</exception>
    public SiteSchedule Solve() => Solve(SearchEffort.Standard);

    /// <summary>Finds a schedule.</summary>
    /// <param name="effort">How far to search.</param>
    /// <returns>The schedule with what was proved about it; when there is none, what contradicts what.</returns>
    /// <exception cref="ArgumentException">Ids, lags, people or tools do not fit each other, or the effort is missing.</exception>
    public SiteSchedule Solve(SearchEffort effort) => Solve(effort, null, CancellationToken.None);

    /// <summary>Finds a schedule. The same work and effort give the same schedule everywhere.</summary>
    /// <param name="effort">How far to search.</param>
    /// <param name="progress">Told the part that is done, from 0 to 1, never falling; <see langword="null"/> for nobody.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>The schedule with what was proved about it; when there is none, what contradicts what.</returns>
    /// <exception cref="ArgumentException">
    /// Ids, lags, people or tools do not fit each other: an id stands twice, a lag refers to no listed step or has a most time after a step
    /// that may be interrupted, a step needs more people than the crew has, a tool is listed twice.
    /// </exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public SiteSchedule Solve(SearchEffort effort, IProgress<double>? progress, CancellationToken cancellation) =>
        new SiteSolver(this, Guard.NotNull(effort), progress, cancellation).Solve();

    /// <summary>Finds a schedule after one of the same work was found before a few steps or lags were added to it.</summary>
    /// <param name="earlier">The schedule without them; it is kept where they fit in.</param>
    /// <param name="effort">How far to search where they do not.</param>
    internal SiteSchedule SolveAfter(SiteSchedule earlier, SearchEffort effort) =>
        new SiteSolver(this, effort, null, CancellationToken.None) { Earlier = earlier }.Solve();

    /// <summary>The number of steps and of rooms.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Figures.Fixed(Steps.Count, 0) + " steps in "
            + Figures.Fixed(Steps.Select(step => step.Room).OfType<string>().Distinct(StringComparer.Ordinal).Count(), 0) + " rooms";
}
