using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// Which paid hours of a day and of a week cost more than the wage. An hour that is paid as overtime of its day does not count again for
/// the week.
/// </summary>
/// <remarks>
/// Which rule applies is for the law of the place, the contract and whoever does the payroll: rules for a seventh day, for holidays, for
/// night work and for breaks that were missed are not here.
/// </remarks>
/// <example><code>
/// OvertimeRule rule = new()
/// {
///     Daily = [new(TimeSpan.FromHours(8), 1.5m), new(TimeSpan.FromHours(12), 2m)],
///     Weekly = [new(TimeSpan.FromHours(40), 1.5m)],
///     Source = Source.Supplied("our payroll"),
/// };
/// PaidDay[] days = [new(new DateTime(2026, 6, 1), TimeSpan.FromHours(13))];
/// decimal premium = new OvertimeHours(rule, "ada", days).Premium(20m);   // 60 = (4 h × 0.5 + 1 h × 1) × 20
/// </code></example>
public sealed record OvertimeRule
{
    /// <summary>
    /// The weekly rule of the United States: hours beyond 40 in a week of the employer's own choice at one and a half times the wage.
    /// States add rules of their own.
    /// </summary>
    public static OvertimeRule UsFederal { get; } = new()
    {
        Weekly = [new OvertimeStep(TimeSpan.FromHours(40), 1.5m)],
        WeekStarts = DayOfWeek.Sunday,
        Source = Source.Published(
            "29 CFR 778.110(a), 76 FR 18857 (5 April 2011), on 29 U.S.C. 207(a)(1)",
            "read in a reprint; that the week begins on Sunday is invented"),
    };

    /// <summary>Steps of one day, by rising hours and factors; none when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing, hours do not rise, a factor falls, or a step is beyond 24 h.</exception>
    public IReadOnlyList<OvertimeStep> Daily { get; init => field = Steps(value, 24, nameof(Daily)); } = ValueList<OvertimeStep>.Empty;

    /// <summary>Steps of one week, by rising hours and factors; none when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing, hours do not rise, or a factor falls.</exception>
    public IReadOnlyList<OvertimeStep> Weekly { get; init => field = Steps(value, 168, nameof(Weekly)); } = ValueList<OvertimeStep>.Empty;

    /// <summary>The day on which a week begins; Monday, as in ISO 8601, when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public DayOfWeek WeekStarts { get; init => field = Guard.Defined(value); } = DayOfWeek.Monday;

    /// <summary>Where the rule comes from.</summary>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    internal bool IsEmpty => Daily.Count + Weekly.Count == 0;

    /// <summary>The steps.</summary>
    /// <returns>Text such as <c>a day beyond 8 h at 1.5; a week beyond 40 h at 1.5</c>.</returns>
    public override string ToString() => IsEmpty
        ? "no overtime"
        : string.Join("; ", Daily.Select(step => "a day " + step).Concat(Weekly.Select(step => "a week " + step)));

    /// <summary>The first day of the week of a date.</summary>
    internal DateTime WeekOf(DateTime date) => date.AddDays(-(((int)date.DayOfWeek - (int)WeekStarts + 7) % 7));

    private static ValueList<OvertimeStep> Steps(IReadOnlyList<OvertimeStep> value, double most, string name)
    {
        ValueList<OvertimeStep> steps = Guard.List(value, name: name);
        for (int i = 0; i < steps.Count; i++)
        {
            if (steps[i].After.TotalHours > most)
            {
                throw new ArgumentException(name + " holds a step " + steps[i] + "; a day has 24 h.", name);
            }

            if (i > 0 && (steps[i].After <= steps[i - 1].After || steps[i].Factor < steps[i - 1].Factor))
            {
                throw new ArgumentException(
                    name + " holds the step " + steps[i] + " after the step " + steps[i - 1]
                        + "; hours have to rise and factors may not fall.",
                    name);
            }
        }

        return steps;
    }
}
