using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// The overtime of one person over some days: which hours are paid at a multiple of the wage, and what they cost on top of it.
/// </summary>
/// <remarks>
/// Of each day the hours between one step and the next are paid at that step's factor. Of each week the same goes for the sum of the hours
/// that no day has paid as overtime already. Premium = Σ hours × (factor − 1) × wage: the hours themselves are paid as wages anyway. Only
/// the days handed in are counted; what the person works elsewhere in the same week has to be among them to count.
/// </remarks>
/// <example><code>
/// PaidDay[] week = [.. Enumerable.Range(1, 5).Select(day => new PaidDay(new DateTime(2026, 6, day), TimeSpan.FromHours(9.2)))];
/// OvertimeHours overtime = new(OvertimeRule.UsFederal, "ada", week);
/// TimeSpan hours = overtime.Overtime;      // 6 h of 46
/// decimal premium = overtime.Premium(12);  // 36
/// </code></example>
public sealed record OvertimeHours
{
    private readonly List<(DateTime Start, long Regular)> weeks = [];

    /// <summary>Applies a rule to the days of one person.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="worker">Id of the person.</param>
    /// <param name="days">Paid hours by day; entries of one date are added up.</param>
    /// <exception cref="ArgumentException"><paramref name="worker"/> is no identity, or an entry is missing.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public OvertimeHours(OvertimeRule rule, string worker, IReadOnlyList<PaidDay> days)
    {
        Rule = Guard.NotNull(rule, nameof(rule));
        Worker = Guard.Id(worker, nameof(worker));
        SortedDictionary<DateTime, long> dates = [];
        foreach (PaidDay day in Guard.List(days, nameof(days)))
        {
            dates.TryGetValue(day.Date, out long before);
            dates[day.Date] = before + day.Hours.Ticks;
        }

        Days = new ValueList<PaidDay>(dates.Select(day => new PaidDay(day.Key, TimeSpan.FromTicks(day.Value))));
        long regular = rule.Daily.Count > 0 ? rule.Daily[0].After.Ticks : long.MaxValue;
        foreach (KeyValuePair<DateTime, long> day in dates)
        {
            DateTime start = rule.WeekOf(day.Key);
            long counted = Math.Min(day.Value, regular);
            if (weeks.Count > 0 && weeks[weeks.Count - 1].Start == start)
            {
                counted += weeks[weeks.Count - 1].Regular;
                weeks.RemoveAt(weeks.Count - 1);
            }

            weeks.Add((start, counted));
        }

        Bands = new ValueList<OvertimeBand>(
            Of(rule.Daily, dates.Values, false)
                .Concat(Of(rule.Weekly, weeks.Select(week => week.Regular), true))
                .Where(band => band.Hours > TimeSpan.Zero));
        Overtime = TimeSpan.FromTicks(Bands.Sum(band => band.Hours.Ticks));
        PremiumHours = Bands.Sum(band => band.Premium);
    }

    /// <summary>The rule.</summary>
    public OvertimeRule Rule { get; }

    /// <summary>Id of the person.</summary>
    public string Worker { get; }

    /// <summary>Paid hours by day, in order of the days.</summary>
    public IReadOnlyList<PaidDay> Days { get; }

    /// <summary>Hours by the step that pays them; empty when there is no overtime.</summary>
    public IReadOnlyList<OvertimeBand> Bands { get; }

    /// <summary>Hours that are paid at more than the wage.</summary>
    public TimeSpan Overtime { get; }

    /// <summary>What is paid on top of the wage, in hours of the wage: Σ hours × (factor − 1).</summary>
    public decimal PremiumHours { get; }

    /// <summary>What is paid on top of the wage, exact.</summary>
    /// <param name="wage">Wage of one hour, 0 to 10⁹.</param>
    /// <returns>The premium, without burden.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public decimal Premium(decimal wage) => PremiumHours * Money.Amount(wage, nameof(wage));

    /// <summary>The premium as a line of paid time; <see langword="null"/> when there is no overtime.</summary>
    /// <param name="wage">Wage of one hour; <see langword="null"/> for that of the price book.</param>
    /// <returns>An entry with the id <c>overtime</c>, which is paid on top of hours that are counted already.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="wage"/> is negative or too large.</exception>
    public PaidTime? AsPaidTime(decimal? wage) => PremiumHours == 0
        ? null
        : new PaidTime(
            "overtime",
            "overtime premium, from the hours of this job alone: " + string.Join(", ", Bands.Select(band => band.ToString())),
            Durations.FromHours((double)PremiumHours))
        {
            Worker = Worker, Wage = wage, IsPremium = true,
        };

    /// <summary>How the hours of each step and the premium follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        List<WorkingStep> steps = [];
        List<Expression> premiums = [];
        Expression[] days = [.. Days.Select((day, i) =>
            Expression.Quantity("t_" + Figures.Fixed(i + 1, 0), day.Hours.TotalSeconds, Measure.Hours))];
        Expression[] regular = [.. weeks.Select(week => Expression.Sum(Days
            .Select((day, i) => (day, i))
            .Where(one => Rule.WeekOf(one.day.Date) == week.Start)
            .Select(one => Rule.Daily.Count > 0 ? Expression.Min(days[one.i], Hours("T_1", Rule.Daily[0].After)) : days[one.i])))];
        Add("day", Rule.Daily, days);
        Add("week", Rule.Weekly, regular);
        Expression premium = premiums.Count == 0 ? Expression.Number(0) : Expression.Sum(premiums);
        steps.Add(new("premium, in hours of the wage", "t_p", premium, (double)PremiumHours * 3600, Measure.Hours, Rule.Source));
        return new Workings("Overtime of " + Worker, steps);

        void Add(string word, IReadOnlyList<OvertimeStep> list, Expression[] hours)
        {
            for (int i = 0; i < list.Count && hours.Length > 0; i++)
            {
                Expression from = Hours("T", list[i].After);
                Expression beyond = Expression.Sum(hours.Select(all => Expression.Max(
                    0, (i + 1 < list.Count ? Expression.Min(all, Hours("T'", list[i + 1].After)) : all) - from)));
                double seconds = Bands
                    .Where(band => band.Step == list[i] && band.IsWeekly == (word == "week"))
                    .Sum(band => band.Hours.TotalSeconds);
                WorkingStep step = new(
                    "hours of the " + word + " " + list[i],
                    "t_" + word[0] + Figures.Fixed(i + 1, 0),
                    beyond,
                    seconds,
                    Measure.Hours,
                    Rule.Source);
                steps.Add(step);
                premiums.Add(step.Result() * (Expression.Quantity("f", (double)list[i].Factor, Measure.Number) - 1));
            }
        }
    }

    /// <summary>The person and the overtime.</summary>
    /// <returns>Text such as <c>ada: 6 h of the week at 1.5</c>.</returns>
    public override string ToString() =>
        Worker + ": " + (Bands.Count == 0 ? "no overtime" : string.Join(", ", Bands.Select(band => band.ToString())));

    /// <summary>Whether rule, person and days are the same; everything else follows from them.</summary>
    /// <param name="other">The overtime to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(OvertimeHours? other) => 
        other is not null && Worker == other.Worker && Rule.Equals(other.Rule) && Days.Equals(other.Days);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((StringComparer.Ordinal.GetHashCode(Worker) * 31) + Days.GetHashCode());

    private static IEnumerable<OvertimeBand> Of(IReadOnlyList<OvertimeStep> steps, IEnumerable<long> hours, bool isWeekly)
    {
        long[] all = [.. hours];
        for (int i = 0; i < steps.Count; i++)
        {
            long from = steps[i].After.Ticks;
            long until = i + 1 < steps.Count ? steps[i + 1].After.Ticks : long.MaxValue;
            yield return new OvertimeBand(steps[i], isWeekly, all.Sum(ticks => Math.Max(0, Math.Min(ticks, until) - from)));
        }
    }

    private static Expression Hours(string symbol, TimeSpan time) => Expression.Quantity(symbol, time.TotalSeconds, Measure.Hours);
}
