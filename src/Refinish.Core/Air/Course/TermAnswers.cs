namespace Refinish.Air;

/// <summary>The room's answer to each term at fixed air changes, with what holds at the end of its application worked out once.</summary>
internal sealed class TermAnswers
{
    private readonly RoomTimeline line;
    private readonly double changes;
    private readonly double[] atEnd;
    private readonly double[] untilEnd;
    private readonly double[] filmRate;

    public TermAnswers(RoomTimeline line, double changes)
    {
        this.line = line;
        this.changes = changes;
        int count = line.Count;
        atEnd = new double[count];
        untilEnd = new double[count];
        filmRate = new double[count];
        for (int i = 0; i < count; i++)
        {
            atEnd[i] = AirKernel.Spraying(changes, line.Flash(i), line.Spray(i), line.TimeConstant(i), line.Spray(i));
            untilEnd[i] = AirKernel.SprayingTime(changes, line.Flash(i), line.Spray(i), line.TimeConstant(i), line.Spray(i));
            filmRate[i] = AirKernel.FilmRate(line.Flash(i), line.Spray(i), line.TimeConstant(i));
        }
    }

    public double AtEnd(int term) => atEnd[term];

    public double UntilEnd(int term) => untilEnd[term];

    /// <summary>Airborne part of a term at a time of the study; 0 before it begins.</summary>
    public double Airborne(int term, double time)
    {
        double x = time - line.Start(term);
        double spray = line.Spray(term);
        double tau = line.TimeConstant(term);
        return x <= 0 ? 0
            : x <= spray ? AirKernel.Spraying(changes, line.Flash(term), spray, tau, x)
            : AirKernel.Drying(changes, filmRate[term], tau, atEnd[term], x - spray);
    }

    /// <summary>Its integral up to a time of the study.</summary>
    public double AirborneTime(int term, double time)
    {
        double x = time - line.Start(term);
        double spray = line.Spray(term);
        double tau = line.TimeConstant(term);
        return x <= 0 ? 0
            : x <= spray ? AirKernel.SprayingTime(changes, line.Flash(term), spray, tau, x)
            : untilEnd[term] + AirKernel.DryingTime(changes, filmRate[term], tau, atEnd[term], x - spray);
    }
}
