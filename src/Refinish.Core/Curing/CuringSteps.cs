namespace Refinish.Curing;

internal static class CuringSteps
{
    /// <summary>How far a temperature is on the allowed side of its limit.</summary>
    public static WorkingStep Margin(LimitComparison check)
    {
        Expression value = Expression.Quantity("T", check.Value!.Value, check.Measure);
        Expression limit = Expression.Quantity("T_limit", check.Limit!.Value, check.Measure);
        return new WorkingStep(
            "margin, " + check.Subject,
            "m",
            check.Sense == LimitSense.AtLeast ? value - limit : limit - value,
            check.Margin!.Value,
            Measure.TemperatureDifference,
            check.Source);
    }
}
