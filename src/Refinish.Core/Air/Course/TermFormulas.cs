using System.Collections.Generic;
using System.Globalization;

namespace Refinish.Air;

/// <summary>
/// The closed form of each term as expressions, at one number of air changes: its airborne part at a moment and the integral of that over a window.
/// They are the kernel's formulas, operation for operation.
/// </summary>
internal sealed class TermFormulas
{
    internal static readonly Source Box = Source.Derived("well-mixed room, V dC/dt = G − F C; steady spray, a part flashing, a first-order film; φ₁(z) = (exp(z) − 1)/z, φ₂(z) = (φ₁(z) − 1)/z");

    private readonly AirLoad load;
    private readonly TermAnswers answers;
    private readonly double changes;
    private readonly string symbol;
    private readonly string mark;
    private readonly bool shown;

    /// <summary>Formulas at given air changes.</summary>
    /// <param name="load">The terms.</param>
    /// <param name="answers">The kernel's answers at the same air changes.</param>
    /// <param name="changes">1/s.</param>
    /// <param name="symbol">How the air changes are written.</param>
    /// <param name="mark">What sets the symbols of the parts apart from those at other air changes; may be empty.</param>
    /// <param name="shown">Whether <see cref="Parts"/> stand before, so that the formulas may refer to them.</param>
    public TermFormulas(AirLoad load, TermAnswers answers, double changes, string symbol, string mark, bool shown)
    {
        this.load = load;
        this.answers = answers;
        this.changes = changes;
        this.symbol = symbol;
        this.mark = mark;
        this.shown = shown;
    }

    /// <summary>For each term, what is in the air when the last of it is on and what that adds up to.</summary>
    public IEnumerable<Workings> Parts()
    {
        for (int i = 0; i < load.Terms.Length; i++)
        {
            Pieces pieces = Of(i);
            yield return new Workings("Source " + Number(i) + mark + ": " + load.Terms[i].Name,
            [
                new("part in the air when the last of it is on", "u_T" + Number(i) + mark, pieces.Spraying(pieces.Spray), answers.AtEnd(i), Measure.Percent, Box),
                new("its time integral up to then", "U_T" + Number(i) + mark, pieces.SprayingTime(pieces.Spray), answers.UntilEnd(i), Measure.Minutes, Box),
            ]);
        }
    }

    /// <summary>Σ weight · airborne part at a time; adds a step for each term that has begun.</summary>
    public Expression Moment(Expression?[] weights, double time, List<WorkingStep> steps)
    {
        List<Expression> sum = [];
        for (int i = 0; i < weights.Length; i++)
        {
            if (weights[i] is Expression weight && Airborne(i, time, steps) is Expression part)
            {
                sum.Add(weight * part);
            }
        }

        return Expression.Sum(sum);
    }

    /// <summary>Σ weight · (integral up to the end − integral up to the beginning); adds the steps.</summary>
    public Expression Dose(Expression?[] weights, double from, double to, List<WorkingStep> steps)
    {
        List<Expression> sum = [];
        for (int i = 0; i < weights.Length; i++)
        {
            if (weights[i] is Expression weight && AirborneTime(i, to, "b", steps) is Expression until)
            {
                Expression? before = AirborneTime(i, from, "a", steps);
                sum.Add(weight * (before is null ? until : until - before));
            }
        }

        return Expression.Sum(sum);
    }

    private static string Number(int term) => (term + 1).ToString(CultureInfo.InvariantCulture);

    private Expression? Airborne(int i, double time, List<WorkingStep> steps)
    {
        double x = time - load.Timeline.Start(i);
        if (x <= 0)
        {
            return null;
        }

        Pieces pieces = Of(i);
        double spray = load.Timeline.Spray(i);
        Expression formula = x <= spray
            ? pieces.Spraying(Expression.Quantity("x_" + Number(i), x, Measure.Minutes))
            : pieces.Drying(AtEnd(i, pieces), Expression.Quantity("y_" + Number(i), x - spray, Measure.Minutes));
        WorkingStep step = new("part of " + load.Terms[i].Name + " in the air", "u_" + Number(i) + mark, formula, answers.Airborne(i, time), Measure.Percent, Box);
        steps.Add(step);
        return step.Result();
    }

    private Expression? AirborneTime(int i, double time, string suffix, List<WorkingStep> steps)
    {
        double x = time - load.Timeline.Start(i);
        if (x <= 0)
        {
            return null;
        }

        Pieces pieces = Of(i);
        double spray = load.Timeline.Spray(i);
        Expression until = shown ? Expression.Quantity("U_T" + Number(i) + mark, answers.UntilEnd(i), Measure.Minutes) : pieces.SprayingTime(pieces.Spray);
        Expression formula = x <= spray
            ? pieces.SprayingTime(Expression.Quantity("x_" + Number(i), x, Measure.Minutes))
            : until + pieces.DryingTime(AtEnd(i, pieces), Expression.Quantity("y_" + Number(i), x - spray, Measure.Minutes));
        WorkingStep step = new("time integral of that part up to t_" + suffix, "U_" + Number(i) + suffix + mark, formula, answers.AirborneTime(i, time), Measure.Minutes, Box);
        steps.Add(step);
        return step.Result();
    }

    private Expression AtEnd(int i, Pieces pieces) =>
        shown ? Expression.Quantity("u_T" + Number(i) + mark, answers.AtEnd(i), Measure.Percent) : pieces.Spraying(pieces.Spray);

    private Pieces Of(int i) => new(load.Timeline, i, changes, symbol);

    private sealed class Pieces
    {
        private readonly bool filmIsFaster;
        private readonly Expression changes;
        private readonly Expression flash;
        private readonly Expression tau;

        public Pieces(RoomTimeline line, int i, double airChanges, string changesSymbol)
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
