using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// How old a film is, in hours at the reference temperature, after a history of temperatures: t_e = Σ f(T_i) Δt_i, with f the rate against
/// the reference.
/// A stage of the data sheet is reached when the equivalent age is the data sheet's time.
/// </summary>
/// <remarks>
/// The same sum as the equivalent age of concrete practice (ASTM C1074), with the coating's own law. It does not know the product's
/// temperature range;
/// <see cref="CureClock"/> does.
/// </remarks>
/// <example><code>
/// DateTimeOffset start = new(2026, 3, 3, 14, 0, 0, TimeSpan.Zero);
/// TemperatureHistory history = new(
///     start,
///     [
///         new TemperatureSegment(TimeSpan.FromHours(4), Temperature.FromDegreesCelsius(22)),
///         new TemperatureSegment(TimeSpan.FromHours(10), Temperature.FromDegreesCelsius(12)),
///         new TemperatureSegment(TimeSpan.FromHours(4), Temperature.FromDegreesCelsius(20)),
///     ]);
/// EquivalentAge age = new(history, TemperatureShift.Doubling(2), Temperature.FromDegreesCelsius(25));
/// TimeSpan atReference = age.Between(start, start.AddHours(18));                // 10.14 h
/// DateTimeOffset? water = age.InstantOf(start, TimeSpan.FromHours(24));         // null: not within this history
/// </code></example>
public sealed record EquivalentAge
{
    private static readonly Bounds Ages = Bounds.NotNegative(Measure.Hours, 3650.0 * 24 * 3600);
    private static readonly Source Sum = Source.Derived("rates add up over time");

    private static readonly Source Stopped = Source.Derived("nothing progresses below the temperature at which the product stops");

    // Follow from the inputs, which equality compares.
    private readonly double[] rates;

    /// <summary>Takes the history, the law and the reference; the law holds at every temperature.</summary>
    /// <param name="history">The temperatures.</param>
    /// <param name="shift">The law.</param>
    /// <param name="reference">The temperature whose hours are counted, −20 to 60 °C.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The reference is outside its range.</exception>
    public EquivalentAge(TemperatureHistory history, TemperatureShift shift, Temperature reference)
        : this(history, shift, reference, null)
    {
    }

    /// <summary>Takes the history, the law, the reference and where the law ends.</summary>
    /// <param name="history">The temperatures.</param>
    /// <param name="shift">The law.</param>
    /// <param name="reference">The temperature whose hours are counted, −20 to 60 °C.</param>
    /// <param name="stopsBelow">See <see cref="StopsBelow"/>, −20 to 60 °C.</param>
    /// <exception cref="ArgumentNullException">History or law is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public EquivalentAge(TemperatureHistory history, TemperatureShift shift, Temperature reference, Temperature? stopsBelow)
    {
        History = Guard.NotNull(history);
        Shift = Guard.NotNull(shift);
        Reference = Guard.Checked(reference, TemperatureShift.Thermometer);
        rates = new double[history.List.Count];
        shift.Factors(history.Kelvins, Reference.Kelvins, rates);
        if (stopsBelow is Temperature least)
        {
            StopsBelow = Guard.Checked(least, TemperatureShift.Thermometer, nameof(stopsBelow));
            for (int i = 0; i < rates.Length; i++)
            {
                rates[i] = IsStopped(history.Kelvins[i]) ? 0 : rates[i];
            }
        }
    }

    /// <summary>The temperatures.</summary>
    public TemperatureHistory History { get; }

    /// <summary>The law.</summary>
    public TemperatureShift Shift { get; }

    /// <summary>The temperature whose hours are counted.</summary>
    public Temperature Reference { get; }

    /// <summary>
    /// The temperature below which nothing progresses (rate 0), such as the lowest of the product's data sheet, −20 to 60 °C; <see
    /// langword="null"/>
    /// when the law holds at every temperature of the history. At this temperature itself the law holds.
    /// </summary>
    public Temperature? StopsBelow { get; }

    /// <summary>Whether history, law, reference and the temperature below which nothing progresses are equal.</summary>
    /// <param name="other">The age to compare with.</param>
    /// <returns><see langword="true"/> when they are.</returns>
    public bool Equals(EquivalentAge? other) =>
        other is not null && Reference.Kelvins == other.Reference.Kelvins && StopsBelow?.Kelvins == other.StopsBelow?.Kelvins
            && Shift.Equals(other.Shift) && History.Equals(other.History);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked(
        (History.GetHashCode() * 31) + (Shift.GetHashCode() * 17) + Reference.Kelvins.GetHashCode()
            + (StopsBelow?.Kelvins.GetHashCode() * 7 ?? 0));

    /// <summary>The age that a film gains between two instants.</summary>
    /// <param name="from">When it begins to count, within the history.</param>
    /// <param name="to">Until when, within the history and not before <paramref name="from"/>.</param>
    /// <returns>Time at the reference temperature with the same effect.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An instant is outside the history, or they are in the wrong order.</exception>
    public TimeSpan Between(DateTimeOffset from, DateTimeOffset to)
    {
        (long first, long last) = Interval(from, to);
        return Durations.FromSeconds(Seconds(first, last));
    }

    /// <summary>The first instant at which a film has gained an age.</summary>
    /// <param name="from">When it begins to count, within the history.</param>
    /// <param name="age">The age to be gained, 0 to 10 years of 365 days at the reference temperature.</param>
    /// <returns>
    /// The instant, with the offset of <paramref name="from"/>; <see langword="null"/> when the age is never reached: the known history
    /// (or the calendar,
    /// year 9999) ends before, or the last temperature holds on and is one at which nothing progresses.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="from"/> is outside the history, or the age outside its
    /// range.</exception>
    public DateTimeOffset? InstantOf(DateTimeOffset from, TimeSpan age)
    {
        Guard.Within(age, Ages);
        long first = History.TicksOf(from, nameof(from));
        return Solve(first, age.TotalSeconds) is Passage passage && passage.Ticks <= DateTime.MaxValue.Ticks - from.UtcTicks
            ? from.ToUniversalTime().AddTicks((long)passage.Ticks).ToOffset(from.Offset)
            : null;
    }

    /// <summary>
    /// The earliest instant from which a film gains at most an age until another instant: how early a step may end for its window to be
    /// still open.
    /// </summary>
    /// <param name="until">Until when the age is gained, within the history.</param>
    /// <param name="age">The age that may be gained, 0 to 10 years of 365 days at the reference temperature.</param>
    /// <returns>The instant, with the offset of <paramref name="until"/>; <see langword="null"/> when it lies before the known
    /// history.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="until"/> is outside the history, or the age outside its
    /// range.</exception>
    public DateTimeOffset? InstantBefore(DateTimeOffset until, TimeSpan age)
    {
        Guard.Within(age, Ages);
        long instant = TicksBefore(History.TicksOf(until, nameof(until)), age.TotalSeconds);
        return instant < 0 ? null : History.Start.ToUniversalTime().AddTicks(instant).ToOffset(until.Offset);
    }

    /// <summary>
    /// The latest instant from which a film gains at least an age until another instant: how late a step may end for what follows to find
    /// it dry.
    /// </summary>
    /// <param name="until">Until when the age is gained, within the history.</param>
    /// <param name="age">The age to be gained, 0 to 10 years of 365 days at the reference temperature.</param>
    /// <returns>
    /// The instant, with the offset of <paramref name="until"/>; <see langword="null"/> when the known history gains less before.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="until"/> is outside the history, or the age outside its
    /// range.</exception>
    public DateTimeOffset? LatestBefore(DateTimeOffset until, TimeSpan age)
    {
        double needed = Guard.Within(age, Ages);
        double gained = 0;
        long end = History.TicksOf(until, nameof(until));
        for (int i = History.SegmentAt(Math.Max(0, end - 1)); i >= 0 && gained < needed; i--)
        {
            long begin = History.BeginOf(i);
            double whole = (end - begin) / (double)TimeSpan.TicksPerSecond * rates[i];
            bool enough = gained + whole >= needed;
            end = enough ? Math.Max(begin, end - (long)Math.Ceiling((needed - gained) / rates[i] * TimeSpan.TicksPerSecond)) : begin;
            gained = enough ? needed : gained + whole;
        }

        return gained < needed ? null : History.Start.ToUniversalTime().AddTicks(end).ToOffset(until.Offset);
    }

    /// <summary>How the age between two instants follows, stretch by stretch.</summary>
    /// <param name="from">When it begins to count, within the history.</param>
    /// <param name="to">Until when, within the history and not before <paramref name="from"/>.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An instant is outside the history, or they are in the wrong order.</exception>
    public Workings Workings(DateTimeOffset from, DateTimeOffset to)
    {
        (long first, long last) = Interval(from, to);
        return Trace.Of("Equivalent age", t => t.Step("equivalent age", "t_e", Measure.Hours, Sum, Stretches(t, first, last)));
    }

    /// <summary>How the instant at which an age is gained follows.</summary>
    /// <param name="from">When it begins to count, within the history.</param>
    /// <param name="age">The age to be gained.</param>
    /// <returns>The derivation, ending in the time that has passed; when the known history ends before, ending in the age gained by
    /// then.</returns>
    /// <exception cref="ArgumentOutOfRangeException">As for <see cref="InstantOf"/>.</exception>
    public Workings WorkingsOfInstant(DateTimeOffset from, TimeSpan age)
    {
        Guard.Within(age, Ages);
        long first = History.TicksOf(from, nameof(from));
        if (Solve(first, age.TotalSeconds) is not Passage passage)
        {
            // When the last temperature holds on, nothing progresses at it.
            DateTimeOffset last = History.End ?? History.Start.AddTicks(History.BeginOf(rates.Length - 1));
            return Workings(from, last < from ? from : last);
        }

        Trace t = new();
        Num passed = Stretches(t, first, passage.LastStart);
        if (rates[passage.Segment] == 0)
        {
            passed = t.Given("t_before", passage.Seconds, Measure.Hours);
        }
        else
        {
            Num gained = t.Step("equivalent age before the last stretch", "t_e,before", Measure.Hours, Sum, passed);
            Num rate = Shift.Factor(History.List[passage.Segment].Kelvins, Reference.Kelvins, t);
            passed = t.Given("t_before", (passage.LastStart - first) / (double)TimeSpan.TicksPerSecond, Measure.Hours)
                + ((t.Given("t_e", age.TotalSeconds, Measure.Hours) - gained) / rate);
        }

        t.Step("time that has passed", "t", Measure.Hours, Sum, passed);
        return t.Workings("When an equivalent age is reached");
    }

    /// <summary>The law and the reference in one line.</summary>
    /// <returns>Text such as <c>hours at 25 °C, rate × 2 for ten kelvins</c>.</returns>
    public override string ToString() => "hours at " + Measure.Temperature.Format(Reference.Kelvins) + ", " + Shift
        + (StopsBelow is Temperature least ? ", nothing below " + Measure.Temperature.Format(least.Kelvins) : string.Empty);

    /// <summary>The greatest and the least rate of the history.</summary>
    internal (double Greatest, double Least) Rates()
    {
        double greatest = rates[0];
        double least = rates[0];
        for (int i = 1; i < rates.Length; i++)
        {
            greatest = Math.Max(greatest, rates[i]);
            least = Math.Min(least, rates[i]);
        }

        return (greatest, least);
    }

    /// <summary>
    /// As <see cref="InstantOf"/>, in universal ticks and without checks; <see cref="long.MaxValue"/> when the record does not tell.
    /// </summary>
    internal long TicksOf(long from, double age)
    {
        long first = from - History.Start.UtcTicks;
        return first >= 0 && (History.LastHoldsOn || first <= History.KnownTicks) && Solve(first, age) is Passage passage
            && passage.Ticks < long.MaxValue / 8
            ? from + (long)passage.Ticks
            : long.MaxValue;
    }

    /// <summary>
    /// As <see cref="InstantBefore"/>, in universal ticks and without checks; <see cref="long.MinValue"/> when the instant lies before the
    /// record,
    /// <see cref="long.MaxValue"/> when <paramref name="until"/> lies outside of it.
    /// </summary>
    internal long TicksUntil(long until, double age)
    {
        long last = until - History.Start.UtcTicks;
        if (last < 0 || (!History.LastHoldsOn && last > History.KnownTicks))
        {
            return long.MaxValue;
        }

        long found = TicksBefore(last, age);
        return found < 0 ? long.MinValue : History.Start.UtcTicks + found;
    }

    private (long First, long Last) Interval(DateTimeOffset from, DateTimeOffset to)
    {
        long first = History.TicksOf(from, nameof(from));
        long last = History.TicksOf(to, nameof(to));
        Guard.Rule(first <= last, nameof(to), (last - first) / (double)TimeSpan.TicksPerSecond, Measure.Hours, "at least 0 h after from");
        return (first, last);
    }

    private bool IsStopped(double kelvins) => kelvins < StopsBelow?.Kelvins;

    // The sum that the workings write out, on plain numbers: a log has thousands of stretches.
    private double Seconds(long first, long last)
    {
        double age = 0;
        long begin = first;
        for (int i = History.SegmentAt(first); begin < last; i++)
        {
            long end = Math.Min(History.EndOf(i), last);
            age += (end - begin) / (double)TimeSpan.TicksPerSecond * rates[i];
            begin = end;
        }

        return age;
    }

    private Passage? Solve(long first, double age)
    {
        double gained = 0;
        long begin = first;
        for (int i = History.SegmentAt(first); i < rates.Length; i++)
        {
            long end = History.EndOf(i);
            if (gained >= age)
            {
                return new Passage(i, begin, (begin - first) / (double)TimeSpan.TicksPerSecond);
            }

            if (rates[i] == 0 && end == long.MaxValue)
            {
                return null;
            }

            double whole = (end - begin) / (double)TimeSpan.TicksPerSecond * rates[i];
            if (end == long.MaxValue || gained + whole >= age)
            {
                return new Passage(i, begin, ((begin - first) / (double)TimeSpan.TicksPerSecond) + ((age - gained) / rates[i]));
            }

            gained += whole;
            begin = end;
        }

        return null;
    }

    // Ticks after the start of the history, rounded up so that no more than the age is gained; −1 when the history gains less before.
    private long TicksBefore(long last, double age)
    {
        double gained = 0;
        long end = last;
        for (int i = History.SegmentAt(Math.Max(0, last - 1)); i >= 0; i--)
        {
            long begin = History.BeginOf(i);
            double whole = (end - begin) / (double)TimeSpan.TicksPerSecond * rates[i];
            if (gained + whole > age)
            {
                return end - (long)Math.Floor((age - gained) / rates[i] * TimeSpan.TicksPerSecond);
            }

            gained += whole;
            end = begin;
        }

        return -1;
    }

    private Num Stretches(Trace t, long first, long last)
    {
        Num sum = 0;
        int count = 0;
        long begin = first;
        for (int i = History.SegmentAt(first); begin < last; i++)
        {
            long end = Math.Min(History.EndOf(i), last);
            string index = Figures.Significant(++count);
            Num time = t.Given("Δt_" + index, (end - begin) / (double)TimeSpan.TicksPerSecond, Measure.Hours);
            double kelvins = History.List[i].Kelvins;
            bool stopped = IsStopped(kelvins);
            sum += t.Step(
                "age gained in stretch " + index + (stopped ? ", too cold for anything to progress" : string.Empty),
                "t_e," + index,
                Measure.Hours,
                stopped ? Stopped : Shift.Source,
                time * (stopped ? t.Number(0) : Shift.Formula(kelvins, Reference.Kelvins, t, "T_" + index)));
            begin = end;
        }

        return sum;
    }

    private readonly struct Passage(int segment, long lastStart, double seconds)
    {
        public int Segment { get; } = segment;

        public long LastStart { get; } = lastStart;

        public double Seconds { get; } = seconds;

        // Rounded up, so that at the instant the age is reached and not a tick short.
        public double Ticks => Math.Ceiling(Seconds * TimeSpan.TicksPerSecond);
    }
}
