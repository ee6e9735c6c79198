namespace Refinish.Air;

/// <summary>A place in the room: how a weighted sum of terms becomes a value there, and when that is largest.</summary>
internal abstract class AirPlace(AirStudy study)
{
    private static readonly Source Located = Source.Derived("located where the derivative is zero");

    private protected AirStudy Study => study;

    /// <summary>The largest value; with a window, the largest dose of one, spread over a time.</summary>
    public abstract AirMaximum Largest(double[] weights, double window = 0, double over = 1);

    /// <summary>The value at the moment of a peak; without one, what is approached for ever: all of it in the room.</summary>
    public Num Moment(TermWeights weights, double? at, Trace? t = null) => at is double time
        ? At(weights, t.Step("time of the peak", "t", Measure.Minutes, Located, t.Given("t", time, Measure.Minutes)).Value, t)
        : weights.Total / study.Volume(t);

    /// <summary>The dose of a window that ends at a time, spread over another.</summary>
    public Num Window(TermWeights weights, double? end, double window, double over, Trace? t = null)
    {
        Num spread = t.Given("T_avg", over, Measure.Hours);
        if (end is not double to)
        {
            return weights.Total * t.Given("T_w", window, Measure.Hours) / (study.Volume(t) * spread);
        }

        Num last = t.Step("end of the worst window", "t_b", Measure.Minutes, Located, t.Given("t_b", to, Measure.Minutes));
        Num first = t.Step("its beginning", "t_a", Measure.Minutes, Located, last - t.Given("T_w", window, Measure.Minutes));
        return Over(weights, first.Value, to, spread, t);
    }

    public abstract Num At(TermWeights weights, double time, Trace? t = null);

    private protected abstract Num Over(TermWeights weights, double from, double to, Num spread, Trace? t);

    private protected AirMaximum Value(double[] weights, double? at, double window, double over) =>
        new((window > 0 ? Window(weights, at, window, over) : Moment(weights, at)).Value, at);

    /// <summary>The well-mixed room.</summary>
    public sealed class WholeRoom(AirStudy study) : AirPlace(study)
    {
        public override AirMaximum Largest(double[] weights, double window = 0, double over = 1)
        {
            if (Study.Changes == 0)
            {
                return Value(weights, null, window, over);
            }

            AirMoment worst = Study.Shapes.Of(weights).Worst(window);
            Num sum = worst.Sum(weights);
            return new((window > 0 ? Spread(sum, over) : Mixed(sum)).Value, worst.At);
        }

        public override Num At(TermWeights weights, double time, Trace? t = null) =>
            Mixed(Study.Shapes.Answers.Moment(weights, time, t), t);

        private protected override Num Over(TermWeights weights, double from, double to, Num spread, Trace? t) =>
            Spread(Study.Shapes.Answers.Dose(weights, from, to, t), spread, t);

        private Num Mixed(Num inAir, Trace? t = null) => inAir / Study.Volume(t);

        private Num Spread(Num dose, Num over, Trace? t = null) => dose / (Study.Volume(t) * over);
    }

    /// <summary>One of two zones: a₁ times one room and a₂ times another.</summary>
    public sealed class Zone(AirStudy study, AirShapes fast, AirShapes slow, ZoneAnswer answer, string symbol) : AirPlace(study)
    {
        public override AirMaximum Largest(double[] weights, double window = 0, double over = 1)
        {
            RoomPath quick = new(fast.Grid(window), weights);
            new ZoneHistory(quick, new RoomPath(slow.Grid(window), weights), answer).Largest(out double at);
            AirMaximum found = Value(weights, at, window, over);
            AirMaximum inTheEnd = Value(weights, null, window, over);
            return Study.Changes == 0 && inTheEnd.Value > found.Value ? inTheEnd : found;
        }

        public override Num At(TermWeights weights, double time, Trace? t = null) =>
            (Fast(t) * fast.Answers.Moment(weights, time, t)) + (Slow(t) * slow.Answers.Moment(weights, time, t));

        /// <summary>The time integral over a window.</summary>
        public Num Dose(TermWeights weights, double from, double to, Trace? t = null) =>
            (Fast(t) * fast.Answers.Dose(weights, from, to, t)) + (Slow(t) * slow.Answers.Dose(weights, from, to, t));

        private protected override Num Over(TermWeights weights, double from, double to, Num spread, Trace? t) =>
            Dose(weights, from, to, t) / spread;

        private Num Fast(Trace? t) => t is null ? answer.Fast : t.Given("a_" + symbol + "1", answer.Fast, Measure.PerRoomVolume);

        private Num Slow(Trace? t) => t is null ? answer.Slow : t.Given("a_" + symbol + "2", answer.Slow, Measure.PerRoomVolume);
    }
}
