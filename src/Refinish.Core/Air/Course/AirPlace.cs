using System.Collections.Generic;

namespace Refinish.Air;

/// <summary>Where in the room a derivation is about: how a weighted sum of terms becomes a value there, at a moment or over a window.</summary>
internal abstract class AirPlace
{
    private static readonly Source Located = Source.Derived("located where the derivative is zero");

    private readonly Expression room;

    private protected AirPlace(AirStudy study)
    {
        room = Expression.Quantity("V", study.RoomVolume, Measure.RoomVolume);
    }

    /// <summary>The value at the moment of a peak; without one, what is approached for ever: all of it in the room.</summary>
    public Expression Moment(Expression?[] weights, double? at, List<WorkingStep> steps)
    {
        if (at is not double time)
        {
            return Expression.Sum(Present(weights)) / room;
        }

        steps.Add(new("time of the peak", "t", Expression.Quantity("t", time, Measure.Minutes), time, Measure.Minutes, Located));
        return At(weights, time, steps);
    }

    /// <summary>The dose of a window that ends at a time, spread over another.</summary>
    public Expression Window(Expression?[] weights, double? end, double window, double over, List<WorkingStep> steps)
    {
        Expression spread = Expression.Quantity("T_avg", over, Measure.Hours);
        if (end is not double to)
        {
            return Expression.Sum(Present(weights)) * Expression.Quantity("T_w", window, Measure.Hours) / (room * spread);
        }

        WorkingStep last = new("end of the worst window", "t_b", Expression.Quantity("t_b", to, Measure.Minutes), to, Measure.Minutes, Located);
        WorkingStep first = new("its beginning", "t_a", last.Result() - Expression.Quantity("T_w", window, Measure.Minutes), to - window, Measure.Minutes, Located);
        steps.Add(last);
        steps.Add(first);
        return Over(weights, to - window, to, spread, steps);
    }

    public static List<Expression> Present(Expression?[] terms)
    {
        List<Expression> present = [];
        foreach (Expression? term in terms)
        {
            if (term is not null)
            {
                present.Add(term);
            }
        }

        return present;
    }

    private protected abstract Expression At(Expression?[] weights, double time, List<WorkingStep> steps);

    private protected abstract Expression Over(Expression?[] weights, double from, double to, Expression spread, List<WorkingStep> steps);

    /// <summary>The well-mixed room.</summary>
    public sealed class WholeRoom(AirStudy study, TermFormulas formulas) : AirPlace(study)
    {
        private protected override Expression At(Expression?[] weights, double time, List<WorkingStep> steps) =>
            formulas.Moment(weights, time, steps) / room;

        private protected override Expression Over(Expression?[] weights, double from, double to, Expression spread, List<WorkingStep> steps) =>
            formulas.Dose(weights, from, to, steps) / (room * spread);
    }

    /// <summary>One of two zones: a₁ times one room and a₂ times another.</summary>
    public sealed class Zone(AirStudy study, TermFormulas fast, TermFormulas slow, Expression a1, Expression a2) : AirPlace(study)
    {
        private protected override Expression At(Expression?[] weights, double time, List<WorkingStep> steps) =>
            (a1 * fast.Moment(weights, time, steps)) + (a2 * slow.Moment(weights, time, steps));

        private protected override Expression Over(Expression?[] weights, double from, double to, Expression spread, List<WorkingStep> steps) =>
            ((a1 * fast.Dose(weights, from, to, steps)) + (a2 * slow.Dose(weights, from, to, steps))) / spread;
    }
}
