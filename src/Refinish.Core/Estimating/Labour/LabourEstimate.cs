using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>The hours of a job: PERT means that add up, and the spread of the sum when the tasks vary independently.</summary>
/// <remarks>
/// Hours are those of one person; a crew of several shares them. Times in which a coat dries are not labour.
/// Independence makes the spread of the sum a lower bound: a crowded bathroom slows every task at once.
/// </remarks>
/// <example><code>
/// LabourTask clear = new(LabourStandards.Clear, units: 1);
/// LabourTask coats = new(LabourStandards.SprayTopcoat, Area.FromSquareMeters(2.6), units: 0, times: 3);
/// double hours = new LabourEstimate([clear, coats]).Hours.TotalHours;   // 0.589
/// </code></example>
public sealed record LabourEstimate
{
    /// <summary>Adds up the hours.</summary>
    /// <param name="tasks">The tasks of the job.</param>
    /// <param name="difficulty">Factor on the work at the site, for an occupied home, stairs, no window; 1 unless given; 0.5 to 3.</param>
    /// <param name="crew">People at work, 1 to 100.</param>
    /// <exception cref="ArgumentException">A task is missing.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public LabourEstimate(IReadOnlyList<LabourTask> tasks, double difficulty = 1, int crew = 1)
    {
        Difficulty = Guard.Within(difficulty, Bounds.Between(0.5, 3, Measure.Number), nameof(difficulty));
        Crew = Guard.Count(crew, 1, 100, nameof(crew));
        Lines = new ValueList<LabourLine>(Guard.List(tasks, nameof(tasks)).Select(task => new LabourLine(task, difficulty)));
    }

    /// <summary>Factor on every task.</summary>
    public double Difficulty { get; }

    /// <summary>People at work.</summary>
    public int Crew { get; }

    /// <summary>The hours of each task, in the order given.</summary>
    public IReadOnlyList<LabourLine> Lines { get; }

    /// <summary>Mean hours of one person for everything.</summary>
    public TimeSpan Hours => Durations.FromHours(MeanHours);

    /// <summary>Mean hours on the clock when the crew shares the work evenly and nobody waits.</summary>
    public TimeSpan CrewHours => Durations.FromHours(MeanHours / Crew);

    /// <summary>Standard deviation by the classic PERT variance ((b − a)/6)², tasks independent.</summary>
    public TimeSpan ClassicDeviation => Durations.FromHours(Math.Sqrt(Lines.Sum(line => line.HourRange.ClassicVariance)));

    /// <summary>Standard deviation by the variance of the beta distribution (µ − a)(b − µ)/7, tasks independent.</summary>
    public TimeSpan BetaPertDeviation => Durations.FromHours(Math.Sqrt(Lines.Sum(line => line.HourRange.BetaPertVariance)));

    /// <summary>Standard deviation of the sum when every two tasks are equally correlated: √(Σσ² + ρ((Σσ)² − Σσ²)).</summary>
    /// <param name="reading">How the three points are read, and so which variance is meant.</param>
    /// <param name="correlation">Correlation ρ between every two tasks, 0 to 100 %; at 100 % all are slow on the same day.</param>
    /// <returns>The standard deviation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public TimeSpan Deviation(ThreePointReading reading, Ratio correlation)
    {
        Guard.Defined(reading, nameof(reading));
        double rho = Guard.Within(correlation, Bounds.NotNegative(Measure.Percent, 1), nameof(correlation));
        double sum = 0;
        double squares = 0;
        foreach (LabourLine line in Lines)
        {
            double deviation = line.HourRange.As(reading).StandardDeviation;
            sum += deviation;
            squares += deviation * deviation;
        }

        return Durations.FromHours(Math.Sqrt(squares + (rho * ((sum * sum) - squares))));
    }

    private double MeanHours => Lines.Sum(line => line.HourRange.Mean);

    /// <summary>How the hours follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression k = Expression.Quantity("k", Difficulty, Measure.Number);
        List<WorkingStep> steps = [];
        foreach (LabourLine line in Lines)
        {
            string symbol = "t_" + Figures.Fixed(steps.Count + 1, 0);
            steps.Add(new(line.Code + " " + line.Description, symbol, line.Task.Formula(k), line.HourRange.Mean * 3600, Measure.Hours, line.Task.Standard.Source));
        }

        Source independent = Source.Derived("variances of independent tasks add up");
        WorkingStep sum = new("mean hours of one person", "t", Expression.Sum(steps.Select(step => step.Result())), MeanHours * 3600, Measure.Hours, Source.Derived("means add up"));
        Expression classic = Expression.Sqrt(Expression.Sum(Lines.Select(line => Expression.Square((Hour("b", line.HourRange.Maximum) - Hour("a", line.HourRange.Minimum)) / 6))));
        Expression beta = Expression.Sqrt(Expression.Sum(Lines.Select(line => BetaVariance(line.HourRange))));
        steps.Add(sum);
        steps.Add(new("hours on the clock", "t_c", sum.Result() / Expression.Quantity("N", Crew, Measure.Number), MeanHours / Crew * 3600, Measure.Hours, Source.Derived("work shared evenly")));
        steps.Add(new("standard deviation, classic PERT", "σ_P", classic, Math.Sqrt(Lines.Sum(line => line.HourRange.ClassicVariance)) * 3600, Measure.Hours, independent));
        steps.Add(new("standard deviation, beta-PERT", "σ_B", beta, Math.Sqrt(Lines.Sum(line => line.HourRange.BetaPertVariance)) * 3600, Measure.Hours, independent));
        return new Workings("Labour", steps);
    }

    /// <summary>The hours in one line.</summary>
    /// <returns>Text such as <c>6.2 h of labour, standard deviation 0.41 h (beta-PERT)</c>.</returns>
    public override string ToString() =>
        Measure.Hours.Format(MeanHours * 3600, figures: 3) + " of labour, standard deviation " + Measure.Hours.Format(BetaPertDeviation.TotalSeconds, figures: 2) + " (beta-PERT)";

    // (µ − a)(b − µ)/7 with the mean written out, so that exact hours give zero to the last digit.
    private static Expression BetaVariance(ThreePoint hours)
    {
        Expression a = Hour("a", hours.Minimum);
        Expression m = Hour("m", hours.Mode);
        Expression b = Hour("b", hours.Maximum);
        return ((4 * (m - a)) + (b - a)) / 6 * (((4 * (b - m)) + (b - a)) / 6) / 7;
    }

    private static Expression Hour(string symbol, double hours) => Expression.Quantity(symbol, hours * 3600, Measure.Hours);
}
