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
/// LabourTask clear = new() { Standard = LabourStandards.Clear, Units = 1 };
/// LabourTask coats = new() { Standard = LabourStandards.SprayTopcoat, Area = Area.FromSquareMeters(2.6), Units = 0, Times = 3 };
/// double hours = new LabourEstimate([clear, coats]).Hours.TotalHours;   // 0.589
/// </code></example>
public sealed record LabourEstimate
{
    private static readonly Source Added = Source.Derived("means add up");
    private static readonly Source Evenly = Source.Derived("work shared evenly");
    private static readonly Source Independent = Source.Derived("variances of independent tasks add up");

    /// <summary>Adds up the hours of one person where nothing makes the work harder.</summary>
    /// <param name="tasks">The tasks of the job.</param>
    /// <exception cref="ArgumentException">A task is missing, or has no number for the hours of its standard.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> is missing.</exception>
    public LabourEstimate(IReadOnlyList<LabourTask> tasks) : this(tasks, 1, 1)
    {
    }

    /// <summary>Adds up the hours.</summary>
    /// <param name="tasks">The tasks of the job.</param>
    /// <param name="difficulty">Factor on the work at the site, for an occupied home, stairs, no window; 0.5 to 3.</param>
    /// <param name="crew">People at work, 1 to 100.</param>
    /// <exception cref="ArgumentException">A task is missing, or has no number for the hours of its standard.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public LabourEstimate(IReadOnlyList<LabourTask> tasks, double difficulty, int crew)
    {
        Difficulty = Guard.Within(difficulty, Bounds.Between(0.5, 3, Measure.Number));
        Crew = Guard.Count(crew, 1, 100);
        Lines = new ValueList<LabourLine>(LabourTask.Whole(tasks, nameof(tasks)).Select(task => new LabourLine(task, difficulty)));
    }

    /// <summary>Factor on every task.</summary>
    public double Difficulty { get; }

    /// <summary>People at work.</summary>
    public int Crew { get; }

    /// <summary>The hours of each task, in the order given.</summary>
    public IReadOnlyList<LabourLine> Lines { get; }

    /// <summary>Mean hours of one person for everything.</summary>
    public TimeSpan Hours => Durations.FromSeconds(All().Value);

    /// <summary>Mean hours on the clock when the crew shares the work evenly and nobody waits.</summary>
    public TimeSpan CrewHours => Durations.FromSeconds(Shared(All()).Value);

    /// <summary>Standard deviation by the classic PERT variance ((b − a)/6)², tasks independent.</summary>
    public TimeSpan ClassicDeviation => Durations.FromSeconds(Classic().Value);

    /// <summary>Standard deviation by the variance of the beta distribution (µ − a)(b − µ)/7, tasks independent.</summary>
    public TimeSpan BetaPertDeviation => Durations.FromSeconds(BetaPert().Value);

    /// <summary>Standard deviation of the sum when every two tasks are equally correlated: √(Σσ² + ρ((Σσ)² − Σσ²)).</summary>
    /// <param name="reading">How the three points are read, and so which variance is meant.</param>
    /// <param name="correlation">Correlation ρ between every two tasks, 0 to 100 %; at 100 % all are slow on the same day.</param>
    /// <returns>The standard deviation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public TimeSpan Deviation(ThreePointReading reading, Ratio correlation)
    {
        Guard.Defined(reading);
        double rho = Guard.Within(correlation, Bounds.NotNegative(Measure.Percent, 1));
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

    /// <summary>How the hours follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Labour", t => Shared(All(t), t), Classic, BetaPert);

    /// <summary>The hours in one line.</summary>
    /// <returns>Text such as <c>6.2 h of labour, standard deviation 0.41 h (beta-PERT)</c>.</returns>
    public override string ToString() =>
        Measure.Hours.Format(All().Value, figures: 3) + " of labour, standard deviation "
            + Measure.Hours.Format(BetaPert().Value, figures: 2) + " (beta-PERT)";

    private Num All(Trace? t = null) => t.Step("mean hours of one person", "t", Measure.Hours, Added,
        Num.Sum(Lines.Count, (Estimate: this, t), static (of, i) => of.Estimate.Mean(i, of.t)));

    private Num Mean(int i, Trace? t)
    {
        LabourLine line = Lines[i];
        Num mean = line.Task.Mean(t.Given("k", Difficulty, Measure.Number), t);
        return t is null
            ? mean
            : t.Step(line.Code + " " + line.Description, "t_" + Figures.Fixed(i + 1, 0), Measure.Hours, line.Task.Standard.Source, mean);
    }

    private Num Shared(Num all, Trace? t = null) =>
        t.Step("hours on the clock", "t_c", Measure.Hours, Evenly, all / t.Given("N", Crew, Measure.Number));

    private Num Classic(Trace? t = null) => t.Step("standard deviation, classic PERT", "σ_P", Measure.Hours, Independent, Num.Sqrt(
        Num.Sum(Lines.Count, (Lines, t), static (of, i) =>
            Num.Square(PertMoments.ClassicDeviation(Least(of.Lines[i], of.t), Most(of.Lines[i], of.t))))));

    private Num BetaPert(Trace? t = null) => t.Step("standard deviation, beta-PERT", "σ_B", Measure.Hours, Independent, Num.Sqrt(
        Num.Sum(Lines.Count, (Lines, t), static (of, i) =>
            PertMoments.BetaVariance(Least(of.Lines[i], of.t), Likely(of.Lines[i], of.t), Most(of.Lines[i], of.t)))));

    private static Num Least(LabourLine line, Trace? t) => t.Given("a", line.HourRange.Minimum * 3600, Measure.Hours);

    private static Num Likely(LabourLine line, Trace? t) => t.Given("m", line.HourRange.Mode * 3600, Measure.Hours);

    private static Num Most(LabourLine line, Trace? t) => t.Given("b", line.HourRange.Maximum * 3600, Measure.Hours);
}
