using System.Collections.Generic;
using System.Globalization;

namespace Refinish.Air;

/// <summary>The closed form of each term as expressions: its airborne part at a moment and the integral of that over a window.</summary>
internal static class CoatTerms
{
    internal static readonly Source Box = Source.Derived("well-mixed room, V dC/dt = G − F C; steady spray, a part flashing, a first-order film; φ₁(z) = (exp(z) − 1)/z, φ₂(z) = (φ₁(z) − 1)/z");

    /// <summary>For each term, what is in the air when the last of it is on and what that adds up to; not needed without airflow.</summary>
    public static IEnumerable<Workings> Parts(AirStudy study)
    {
        RoomTimeline line = study.Load.Timeline;
        for (int i = 0; study.Changes > 0 && i < study.Load.Terms.Length; i++)
        {
            Coat coat = new(line, i, study.Changes, "λ");
            double atEnd = AirKernel.Spraying(study.Changes, line.Flash(i), line.Spray(i), line.TimeConstant(i), line.Spray(i));
            double time = AirKernel.SprayingTime(study.Changes, line.Flash(i), line.Spray(i), line.TimeConstant(i), line.Spray(i));
            yield return new Workings("Source " + Number(i) + ": " + study.Load.Terms[i].Name,
            [
                new("part in the air when the last of it is on", "u_T" + Number(i), coat.Spraying(coat.Spray), atEnd, Measure.Percent, Box),
                new("its time integral up to then", "U_T" + Number(i), coat.SprayingTime(coat.Spray), time, Measure.Minutes, Box),
            ]);
        }
    }

    /// <summary>Σ weight · airborne part at a time; adds a step for each term that has begun.</summary>
    public static Expression Moment(AirStudy study, Expression[] terms, TermAnswers answers, double changes, string changesSymbol, double time, List<WorkingStep> steps)
    {
        List<Expression> sum = [];
        for (int i = 0; i < terms.Length; i++)
        {
            if (terms[i] is Expression term && Airborne(study, i, answers, changes, changesSymbol, time, steps) is Expression part)
            {
                sum.Add(term * part);
            }
        }

        return Expression.Sum(sum);
    }

    /// <summary>Σ weight · (integral up to the end − integral up to the beginning); adds the steps.</summary>
    public static Expression Dose(AirStudy study, Expression[] terms, double from, double to, List<WorkingStep> steps)
    {
        List<Expression> sum = [];
        for (int i = 0; i < terms.Length; i++)
        {
            if (terms[i] is Expression term && AirborneTime(study, i, to, "b", steps) is Expression until)
            {
                Expression? before = AirborneTime(study, i, from, "a", steps);
                sum.Add(term * (before is null ? until : until - before));
            }
        }

        return Expression.Sum(sum);
    }

    private static Expression? Airborne(AirStudy study, int i, TermAnswers answers, double changes, string changesSymbol, double time, List<WorkingStep> steps)
    {
        RoomTimeline line = study.Load.Timeline;
        double x = time - line.Start(i);
        if (x <= 0)
        {
            return null;
        }

        Coat coat = new(line, i, changes, changesSymbol);
        Expression since = Expression.Quantity("x_" + Number(i), x, Measure.Minutes);
        Expression formula;
        if (x <= line.Spray(i))
        {
            formula = coat.Spraying(since);
        }
        else
        {
            double atEnd = AirKernel.Spraying(changes, line.Flash(i), line.Spray(i), line.TimeConstant(i), line.Spray(i));
            Expression held = changes == study.Changes ? Expression.Quantity("u_T" + Number(i), atEnd, Measure.Percent) : coat.Spraying(coat.Spray);
            formula = coat.Drying(held, Expression.Quantity("y_" + Number(i), x - line.Spray(i), Measure.Minutes));
        }

        WorkingStep step = new("part of " + study.Load.Terms[i].Name + " in the air", "u_" + Number(i), formula, answers.Airborne(i, time), Measure.Percent, Box);
        steps.Add(step);
        return step.Result();
    }

    private static Expression? AirborneTime(AirStudy study, int i, double time, string suffix, List<WorkingStep> steps)
    {
        RoomTimeline line = study.Load.Timeline;
        double changes = study.Changes;
        double x = time - line.Start(i);
        if (x <= 0)
        {
            return null;
        }

        Coat coat = new(line, i, changes, "λ");
        Expression formula;
        if (x <= line.Spray(i))
        {
            formula = coat.SprayingTime(Expression.Quantity("x_" + Number(i), x, Measure.Minutes));
        }
        else
        {
            double atEnd = AirKernel.Spraying(changes, line.Flash(i), line.Spray(i), line.TimeConstant(i), line.Spray(i));
            double until = AirKernel.SprayingTime(changes, line.Flash(i), line.Spray(i), line.TimeConstant(i), line.Spray(i));
            Expression held = Expression.Quantity("u_T" + Number(i), atEnd, Measure.Percent);
            formula = Expression.Quantity("U_T" + Number(i), until, Measure.Minutes)
                + coat.DryingTime(held, Expression.Quantity("y_" + Number(i), x - line.Spray(i), Measure.Minutes));
        }

        WorkingStep step = new("time integral of that part up to t_" + suffix, "U_" + Number(i) + suffix, formula, study.Shapes.Answers.AirborneTime(i, time), Measure.Minutes, Box);
        steps.Add(step);
        return step.Result();
    }

    private static string Number(int coat) => (coat + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>The kernel's formulas in symbols, operation for operation.</summary>
    private sealed class Coat
    {
        private readonly bool filmIsFaster;
        private readonly Expression changes;
        private readonly Expression flash;
        private readonly Expression tau;

        public Coat(RoomTimeline line, int i, double airChanges, string changesSymbol)
        {
            filmIsFaster = airChanges <= 1 / line.TimeConstant(i);
            changes = Expression.Quantity(changesSymbol, airChanges, Measure.AirChanges);
            flash = Expression.Quantity("f_" + Number(i), line.Flash(i), Measure.Percent);
            tau = Expression.Quantity("τ_" + Number(i), line.TimeConstant(i), Measure.Minutes);
            Spray = Expression.Quantity("T_" + Number(i), line.Spray(i), Measure.Minutes);
        }

        public Expression Spray { get; }

        public Expression Spraying(Expression x) => ((x * Expression.Phi1(-(changes * x))) - ((1 - flash) * Lag(x))) / Spray;

        public Expression SprayingTime(Expression x) => ((x * x * Expression.Phi2(-(changes * x))) - ((1 - flash) * LagTime(x))) / Spray;

        public Expression Drying(Expression held, Expression y) => (held * Expression.Exp(-(changes * y))) + (FilmRate() * Lag(y));

        public Expression DryingTime(Expression held, Expression y) => (held * (y * Expression.Phi1(-(changes * y)))) + (FilmRate() * LagTime(y));

        private Expression FilmRate() => (1 - flash) * Expression.Phi1(-(Spray / tau)) / tau;

        private Expression Lag(Expression x) => filmIsFaster
            ? x * Expression.Exp(-(changes * x)) * Expression.Phi1(-(((1 / tau) - changes) * x))
            : x * Expression.Exp(-(x / tau)) * Expression.Phi1(-((changes - (1 / tau)) * x));

        private Expression LagTime(Expression x) => filmIsFaster
            ? ((x * Expression.Phi1(-(changes * x))) - Lag(x)) * tau
            : ((x * Expression.Phi1(-(x / tau))) - Lag(x)) / changes;
    }
}
