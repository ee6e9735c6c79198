using System;
using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>
/// The derivation of a schedule: S start and E end of each step in hours after the start of the work, each from the step that drives it.
/// </summary>
internal static class SiteWorkings
{
    private static readonly Source Path = Source.Derived("longest path: a step starts when the last of the rules that hold it back is fulfilled; W waits for working hours and so as not to come early, N nights and days off within interruptible work");
    private static readonly Source Search = Source.Published("De Reyck and Herroelen, European Journal of Operational Research 111 (1998)", "branch and bound on precedence; bound proved by search");

    public static Workings Of(SiteSchedule schedule)
    {
        List<WorkingStep> steps = [];
        if (!schedule.IsPossible)
        {
            return new Workings("Schedule", steps);
        }

        DateTimeOffset origin = schedule.Work.Start;
        Dictionary<string, int> index = new(StringComparer.Ordinal);
        foreach (PlannedStep step in schedule.Steps)
        {
            index.Add(step.Step.Id, index.Count + 1);
        }

        double Since(DateTimeOffset time) => (time - origin).TotalSeconds;
        foreach (PlannedStep step in schedule.Steps)
        {
            string number = Figures.Fixed(index[step.Step.Id], 0);
            WorkingStep start = new("start: " + step.Driver, "S_" + number, StartOf(step, schedule, index, Since), Since(step.Start),
                Measure.Hours, Path);
            steps.Add(start);
            Expression end = start.Result() + Hours("d_" + number, step.Step.Duration);
            TimeSpan nights = step.End - step.Start - step.Step.Duration;
            steps.Add(new WorkingStep("end: " + step.Step.Name, "E_" + number, nights > TimeSpan.Zero ? end + Hours("N_" + number, nights)
                : end, Since(step.End), Measure.Hours, Path));
            if (step.RoomClear > step.End)
            {
                Expression clear = Expression.Quantity("E_" + number, Since(step.End), Measure.Hours)
                    + Hours("c_" + number, step.Step.Clearing);
                steps.Add(new WorkingStep("room clear: " + step.Step.Name, "C_" + number, clear, Since(step.RoomClear), Measure.Hours,
                    Path));
            }
        }

        AddProof(steps, schedule, index, Since);
        AddVisits(steps, schedule, index);
        return new Workings("Schedule", steps);
    }

    private static Expression StartOf(
        PlannedStep step, SiteSchedule schedule, Dictionary<string, int> index, Func<DateTimeOffset, double> since)
    {
        ChainLink link = step.Driver;
        Expression formula = 0;
        if (link.Driver is string driver)
        {
            string number = Figures.Fixed(index[driver], 0);
            PlannedStep other = schedule.Steps[index[driver] - 1];
            formula = link.Kind == ChainLinkKind.Window
                ? Expression.Quantity("S_" + number, since(other.Start), Measure.Hours) - Hours("max", link.Between) - Hours("d_"
                    + Figures.Fixed(index[step.Step.Id], 0), step.Step.Duration)
                : Expression.Quantity("E_" + number, since(other.End), Measure.Hours) + Hours("min", link.Between);
        }

        return link.Wait > TimeSpan.Zero ? formula + Hours("W", link.Wait) : formula;
    }

    private static void AddProof(
        List<WorkingStep> steps, SiteSchedule schedule, Dictionary<string, int> index, Func<DateTimeOffset, double> since)
    {
        Expression latest = 0;
        foreach (PlannedStep step in schedule.Steps)
        {
            Expression end = Expression.Quantity("E_" + Figures.Fixed(index[step.Step.Id], 0), since(step.End), Measure.Hours);
            latest = steps.Count == 0 ? end : step.End == schedule.Finish ? end : latest;
        }

        WorkingStep finish = new("end of the work: the last of all ends", "F", latest, since(schedule.Finish!.Value), Measure.Hours, Path);
        WorkingStep bound = new(
            "no such schedule ends sooner", "LB", Expression.Quantity("LB", since(schedule.FinishBound!.Value), Measure.Hours),
                since(schedule.FinishBound.Value), Measure.Hours, Search);
        WorkingStep gap = new("gap", "G", finish.Result() - bound.Result(), schedule.Gap!.Value.TotalSeconds, Measure.Hours,
            Source.Derived("difference"));
        steps.Add(finish);
        steps.Add(bound);
        steps.Add(gap);
        if (schedule.RelativeGap is UnitsNet.Ratio relative)
        {
            steps.Add(new WorkingStep("gap as part of the whole", "g", gap.Result() / finish.Result(), relative.DecimalFractions,
                Measure.Percent, Source.Derived("quotient")));
        }
    }

    private static void AddVisits(List<WorkingStep> steps, SiteSchedule schedule, Dictionary<string, int> index)
    {
        int day = 0;
        foreach (CrewVisit visit in schedule.Visits)
        {
            day++;
            List<Expression> turns = [];
            foreach (CrewTurn turn in visit.Turns)
            {
                Expression length = Hours("t_" + Figures.Fixed(index[turn.Step.Id], 0), turn.Piece.End - turn.Piece.Start);
                turns.Add(turn.Step.People == 1 ? length : length * Expression.Number(turn.Step.People));
            }

            steps.Add(new WorkingStep("worked on visit " + Figures.Fixed(day, 0), "A_" + Figures.Fixed(day, 0), Expression.Sum(turns),
                visit.Worked.TotalSeconds, Measure.Hours, Source.Derived("sum over the turns of the day")));
        }

        steps.Add(new WorkingStep("visits", "V", Expression.Number(day), schedule.Visits.Count, Measure.Number,
            Source.Derived("count of days with work")));
        steps.Add(new WorkingStep("no such schedule has fewer visits", "V_min", Expression.Number(schedule.VisitsBound),
            schedule.VisitsBound, Measure.Number, Search));
    }

    private static Expression Hours(string symbol, TimeSpan time) => Expression.Quantity(symbol, time.TotalSeconds, Measure.Hours);
}
