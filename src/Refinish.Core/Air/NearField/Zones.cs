namespace Refinish.Air;

/// <summary>The two zones of a study as numbers: their rates, their answers to a release, and the values and maxima of weighted sums of its terms.</summary>
internal sealed class Zones
{
    private readonly AirLoad load;
    private readonly double roomVolume;

    public Zones(AirStudy study, NearField near)
    {
        load = study.Load;
        roomVolume = study.RoomVolume;
        double nearVolume = near.Volume.CubicMeters;
        double fresh = study.FreshAirFlow.CubicMetersPerSecond;
        FarVolume = roomVolume - nearVolume;
        Exchange = near.InterzonalFlow.CubicMetersPerSecond;
        P = Exchange / nearVolume;
        R = Exchange / FarVolume;
        Q = (Exchange + fresh) / FarVolume;
        FarChanges = fresh / FarVolume;
        Fast = NearFieldKernel.Fast(P, Q, R);
        Slow = NearFieldKernel.Slow(P, FarChanges, Fast);
        Near = new ZoneAnswer(
            NearFieldKernel.NearFast(P, Q, R, Fast, Slow, nearVolume),
            NearFieldKernel.NearSlow(P, Q, R, Fast, Slow, nearVolume),
            1 / nearVolume,
            Q / nearVolume);
        double c = NearFieldKernel.Far(R, Fast, Slow, nearVolume);
        Far = new ZoneAnswer(-c, c, 0, R / nearVolume);
        FastShapes = new AirShapes(load.Timeline, Fast);
        SlowShapes = new AirShapes(load.Timeline, Slow);
    }

    public double Exchange { get; }

    public double FarVolume { get; }

    public double P { get; }

    public double Q { get; }

    public double R { get; }

    public double FarChanges { get; }

    /// <summary>μ₁.</summary>
    public double Fast { get; }

    /// <summary>μ₂; 0 without airflow.</summary>
    public double Slow { get; }

    public ZoneAnswer Near { get; }

    public ZoneAnswer Far { get; }

    public TermAnswers FastAnswers => FastShapes.Answers;

    public TermAnswers SlowAnswers => SlowShapes.Answers;

    private AirShapes FastShapes { get; }

    private AirShapes SlowShapes { get; }

    /// <summary>The value of a weighted sum in a zone at a time.</summary>
    public double At(ZoneAnswer zone, double[] weights, double time) =>
        (zone.Fast * AirLoad.Sum(weights, FastAnswers, time)) + (zone.Slow * AirLoad.Sum(weights, SlowAnswers, time));

    /// <summary>Its integral over a window.</summary>
    public double Dose(ZoneAnswer zone, double[] weights, double from, double to) =>
        (zone.Fast * AirLoad.Dose(weights, FastAnswers, from, to)) + (zone.Slow * AirLoad.Dose(weights, SlowAnswers, from, to));

    public AirMaximum Peak(ZoneAnswer zone, double[] weights)
    {
        History(zone, weights, 0).Largest(out double at);
        double value = At(zone, weights, at);
        double everywhere = AirLoad.Total(weights) / roomVolume;
        return Slow == 0 && everywhere > value ? new AirMaximum(everywhere, null) : new AirMaximum(value, at);
    }

    public AirMaximum Window(ZoneAnswer zone, double[] weights, double window, double over)
    {
        History(zone, weights, window).Largest(out double end);
        double value = Dose(zone, weights, end - window, end) / over;
        double everywhere = AirLoad.Total(weights) * window / (roomVolume * over);
        return Slow == 0 && everywhere > value ? new AirMaximum(everywhere, null) : new AirMaximum(value, end);
    }

    private ZoneHistory History(ZoneAnswer zone, double[] weights, double window) =>
        new(new RoomPath(FastShapes.Grid(window), weights), new RoomPath(SlowShapes.Grid(window), weights), zone);
}
