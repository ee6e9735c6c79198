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
    /// <summary>Applies a rule to the days of one person.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="worker">Id of the person.</param>
    /// <param name="days">Paid hours by day; entries of one date are added up.</param>
    /// <exception cref="ArgumentException"><paramref name="worker"/> is no identity, or an entry is missing.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public OvertimeHours(OvertimeRule rule, string worker, IReadOnlyList<PaidDay> days)
    {
        Rule = Guard.NotNull(rule);
        Worker = Guard.Id(worker);
        Days = new ValueList<PaidDay>(Guard.List(days)
            .GroupBy(day => day.Date)
            .OrderBy(date => date.Key)
            .Select(date => new PaidDay(date.Key, TimeSpan.FromTicks(date.Sum(day => day.Hours.Ticks)))));
        List<OvertimeBand> bands = [];
        AddBands(false, bands);
        AddBands(true, bands);
        Bands = new ValueList<OvertimeBand>(bands);
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
    /// <param name="wage">Wage of one hour, 0 to 10¹².</param>
    /// <returns>The premium, without burden.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public decimal Premium(decimal wage) => PremiumHours * Money.Amount(wage, nameof(wage));

    /// <summary>The premium as a line of paid time; <see langword="null"/> when there is no overtime.</summary>
    /// <param name="wage">Wage of one hour; <see langword="null"/> for that of the price book.</param>
    /// <returns>An entry with the id <c>overtime</c>, which is paid on top of hours that are counted already.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="wage"/> is negative or too large.</exception>
    public PaidTime? AsPaidTime(decimal? wage) => PremiumHours == 0
        ? null
        : new PaidTime
        {
            Id = "overtime",
            Description = "overtime premium, from the hours of this job alone: " + string.Join(", ", Bands.Select(band => band.ToString())),
            Time = Durations.FromHours((double)PremiumHours),
            Worker = Worker,
            Wage = wage,
            IsPremium = true,
        };

    /// <summary>How the hours of each step and the premium follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        Amount premium = Premium(true, Premium(false, 0, t), t);
        t.Step("premium, in hours of the wage", "t_p", Measure.Hours, Rule.Source, premium);
        return t.Workings("Overtime of " + Worker);
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

    private IReadOnlyList<OvertimeStep> Steps(bool isWeekly) => isWeekly ? Rule.Weekly : Rule.Daily;

    private void AddBands(bool isWeekly, List<OvertimeBand> bands)
    {
        for (int i = 0; i < Steps(isWeekly).Count; i++)
        {
            long ticks = (long)(Beyond(isWeekly, i).Value * TimeSpan.TicksPerSecond);
            if (ticks > 0)
            {
                bands.Add(new OvertimeBand(Steps(isWeekly)[i], isWeekly, ticks));
            }
        }
    }

    private Amount Premium(bool isWeekly, Amount sum, Trace t)
    {
        string word = isWeekly ? "week" : "day";
        for (int i = 0; i < Steps(isWeekly).Count && Days.Count > 0; i++)
        {
            OvertimeStep step = Steps(isWeekly)[i];
            Amount hours = t.Step("hours of the " + word + " " + step, "t_" + word[0] + Figures.Fixed(i + 1, 0), Measure.Hours, Rule.Source,
                Beyond(isWeekly, i, t));
            sum += hours * (t.Money("f", step.Factor, Measure.Number) - 1);
        }

        return sum;
    }

    // Of all days or weeks the hours between a step and the next, in seconds: decimals hold every tick.
    private Amount Beyond(bool isWeekly, int i, Trace? t = null)
    {
        IReadOnlyList<OvertimeStep> steps = Steps(isWeekly);
        Amount beyond = 0;
        for (int day = 0; day < Days.Count;)
        {
            Amount all = isWeekly ? Week(ref day, t) : Day(day++, t);
            beyond += Amount.Max(0, (i + 1 < steps.Count ? Amount.Min(all, Time("T'", steps[i + 1].After, t)) : all)
                - Time("T", steps[i].After, t));
        }

        return beyond;
    }

    // Of the week that begins with a day the hours that no day has paid as overtime.
    private Amount Week(ref int day, Trace? t)
    {
        Amount regular = 0;
        DateTime start = Rule.WeekOf(Days[day].Date);
        for (; day < Days.Count && Rule.WeekOf(Days[day].Date) == start; day++)
        {
            regular += Rule.Daily.Count == 0 ? Day(day, t) : Amount.Min(Day(day, t), Time("T_1", Rule.Daily[0].After, t));
        }

        return regular;
    }

    private Amount Day(int i, Trace? t) => Time(t is null ? string.Empty : "t_" + Figures.Fixed(i + 1, 0), Days[i].Hours, t);

    private static Amount Time(string symbol, TimeSpan time, Trace? t) =>
        t.Money(symbol, (decimal)time.Ticks / TimeSpan.TicksPerSecond, Measure.Hours);
}
