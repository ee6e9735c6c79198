namespace Refinish.Fixtures;

/// <summary>The steps that state a slope which follows from how the zone lies and from nothing else.</summary>
internal static class ZoneSteps
{
    private static readonly Source Position = Source.Derived("how the zone lies");

    public static Num Level(Trace t, string zone, string symbol) =>
        t.Step("slope of zone " + zone + ", level", symbol, Measure.Angle, Position, t.Number(0));

    public static Num Upright(Trace t, string zone, string symbol) =>
        t.Step("slope of zone " + zone + ", upright", symbol, Measure.Angle, Position, t.Pi() / 2);
}
