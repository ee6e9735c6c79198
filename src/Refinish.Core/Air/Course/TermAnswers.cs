using System.Collections.Generic;

namespace Refinish.Air;

/// <summary>The room's answer to each term at fixed air changes, with what holds at the end of its application worked out once.</summary>
internal sealed class TermAnswers
{
    internal static readonly Source Box = Source.Derived(
        "well-mixed room, V dC/dt = G − F C; steady spray, a part flashing, a first-order film; φ₁(z) = (exp(z) − 1)/z, "
        + "φ₂(z) = (φ₁(z) − 1)/z");

    private readonly RoomTimeline line;
    private readonly double changes;
    private readonly string symbol;
    private readonly string mark;
    private readonly bool shown;
    private readonly double[] atEnd;
    private readonly double[] untilEnd;

    /// <summary>Answers at given air changes.</summary>
    /// <param name="line">The terms.</param>
    /// <param name="changes">1/s.</param>
    /// <param name="symbol">How the air changes are written.</param>
    /// <param name="mark">What sets the symbols of the parts apart from those at other air changes; may be empty.</param>
    /// <param name="shown">Whether a derivation has <see cref="Parts"/> before, so that formulas may refer to them.</param>
    public TermAnswers(RoomTimeline line, double changes, string symbol = "λ", string mark = "", bool shown = true)
    {
        this.line = line;
        this.changes = changes;
        this.symbol = symbol;
        this.mark = mark;
        this.shown = shown;
        atEnd = new double[line.Count];
        untilEnd = new double[line.Count];
        for (int i = 0; i < line.Count; i++)
        {
            atEnd[i] = Term(i).AtEnd.Value;
            untilEnd[i] = Term(i).UntilEnd.Value;
        }
    }

    /// <summary>For each term, what is in the air when the last of it is on and what that adds up to.</summary>
    public IEnumerable<Workings> Parts()
    {
        for (int i = 0; i < line.Count; i++)
        {
            Trace t = new();
            t.Step("part in the air when the last of it is on", "u_T" + Mark(i), Measure.Percent, Box, Term(i, t).AtEnd);
            t.Step("its time integral up to then", "U_T" + Mark(i), Measure.Minutes, Box, Term(i, t).UntilEnd);
            yield return t.Workings("Source " + Mark(i) + ": " + line.Name(i));
        }
    }

    /// <summary>Σ weight · airborne part at a time of the study.</summary>
    public Num Moment(TermWeights weights, double time, Trace? t = null) =>
        weights.Sum((Answers: this, time, t), static (of, i) => of.Answers.Airborne(i, of.time, of.t));

    /// <summary>Σ weight · integral of the airborne part over a window.</summary>
    public Num Dose(TermWeights weights, double from, double to, Trace? t = null) =>
        weights.Sum((Answers: this, from, to, t), static (of, i) => of.Answers.AirborneTime(i, of.from, of.to, of.t));

    /// <summary>Airborne part of a term at a time of the study; 0 before it begins.</summary>
    public Num Airborne(int i, double time, Trace? t = null)
    {
        double x = time - line.Start(i);
        if (x <= 0)
        {
            return 0;
        }

        double y = x - line.Spray(i);
        RoomTerm term = Term(i, t);
        Num part = y <= 0 ? term.Spraying(t.Given("x_", i + 1, x, Measure.Minutes))
            : term.Drying(t is null ? atEnd[i] : shown ? t.Given("u_T" + Mark(i), atEnd[i], Measure.Percent) : term.AtEnd,
                t.Given("y_", i + 1, y, Measure.Minutes));
        return t is null ? part : t.Step("part of " + line.Name(i) + " in the air", "u_" + Mark(i), Measure.Percent, Box, part);
    }

    /// <summary>Time integral of the airborne part of a term over a window.</summary>
    public Num AirborneTime(int i, double from, double to, Trace? t = null)
    {
        Num until = AirborneUntil(i, to, "b", t);
        Num before = AirborneUntil(i, from, "a", t);
        return before.Value == 0 ? until : until - before;
    }

    private Num AirborneUntil(int i, double time, string end, Trace? t)
    {
        double x = time - line.Start(i);
        if (x <= 0)
        {
            return 0;
        }

        double y = x - line.Spray(i);
        RoomTerm term = Term(i, t);
        Num part = y <= 0 ? term.SprayingTime(t.Given("x_", i + 1, x, Measure.Minutes))
            : (t is null ? untilEnd[i] : t.Given("U_T" + Mark(i), untilEnd[i], Measure.Minutes))
                + term.DryingTime(t is null ? atEnd[i] : t.Given("u_T" + Mark(i), atEnd[i], Measure.Percent),
                    t.Given("y_", i + 1, y, Measure.Minutes));
        return t is null ? part
            : t.Step("time integral of that part up to t_" + end, "U_" + Figures.Fixed(i + 1, 0) + end + mark, Measure.Minutes, Box, part);
    }

    /// <summary>What sets the symbols of this room apart from those of others; may be empty.</summary>
    public string RoomMark => mark;

    private RoomTerm Term(int i, Trace? t = null) => line.Term(i, t.Given(symbol, changes, Measure.AirChanges), t);

    private string Mark(int i) => Figures.Fixed(i + 1, 0) + mark;
}
