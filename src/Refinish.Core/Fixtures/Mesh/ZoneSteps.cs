using System;

namespace Refinish.Fixtures;

/// <summary>The steps that state a slope which follows from how the zone lies and from nothing else.</summary>
internal static class ZoneSteps
{
    private static readonly Source Position = Source.Derived("how the zone lies");

    public static WorkingStep Level(string zone, string symbol) =>
        new("slope of zone " + zone + ", level", symbol, Expression.Number(0), 0, Measure.Angle, Position);

    public static WorkingStep Upright(string zone, string symbol) =>
        new("slope of zone " + zone + ", upright", symbol, Expression.Pi() / 2, Math.PI / 2, Measure.Angle, Position);
}
