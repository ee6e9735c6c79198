using System;

namespace Refinish.Air;

/// <summary>
/// When which term is put on, in seconds, and the distinct rates at which films dry. Shared by every sum over the same terms.
/// </summary>
internal sealed class RoomTimeline
{
    private readonly ReleaseTerm[] terms;
    private readonly int[] film;

    public RoomTimeline(ReleaseTerm[] terms)
    {
        this.terms = terms;
        int count = terms.Length;
        EventTimes = new double[2 * count];
        Events = new int[2 * count];
        double[] constants = new double[count];
        for (int i = 0; i < count; i++)
        {
            EventTimes[2 * i] = terms[i].Start;
            EventTimes[(2 * i) + 1] = terms[i].End;
            Events[2 * i] = i;
            Events[(2 * i) + 1] = ~i;
            constants[i] = terms[i].TimeConstant;
        }

        Array.Sort(EventTimes, Events);

        // Slowest film first, so that the rates ascend.
        double[] distinct = Distinct(constants);
        Array.Reverse(distinct);
        TimeConstants = distinct;
        Rates = new double[distinct.Length];
        for (int g = 0; g < distinct.Length; g++)
        {
            Rates[g] = 1 / distinct[g];
        }

        film = new int[count];
        for (int i = 0; i < count; i++)
        {
            film[i] = Array.IndexOf(distinct, terms[i].TimeConstant);
        }
    }

    public int Count => terms.Length;

    /// <summary>The moments at which a term begins or ends, ascending, with repetitions.</summary>
    public double[] EventTimes { get; }

    /// <summary>In the same order which term it is: i when it begins, ~i when it ends.</summary>
    public int[] Events { get; }

    /// <summary>The distinct rates of the films, ascending.</summary>
    public double[] Rates { get; }

    /// <summary>Their time constants, in the same order.</summary>
    public double[] TimeConstants { get; }

    public double LastEnd => EventTimes[EventTimes.Length - 1];

    public double Spray(int term) => terms[term].Duration;

    public double Flash(int term) => terms[term].Flash;

    public int Film(int term) => film[term];

    public double Start(int term) => terms[term].Start;

    public string Name(int term) => terms[term].Name;

    /// <summary>The closed form of a term at given air changes.</summary>
    public RoomTerm Term(int term, Num changes, Trace? t = null) => new(
        changes,
        t.Given("f_", term + 1, terms[term].Flash, Measure.Percent),
        t.Given("T_", term + 1, terms[term].Duration, Measure.Minutes),
        t.Given("τ_", term + 1, terms[term].TimeConstant, Measure.Minutes));

    private static double[] Distinct(double[] values)
    {
        Array.Sort(values);
        int kept = 1;
        for (int i = 1; i < values.Length; i++)
        {
            if (values[i] != values[kept - 1])
            {
                values[kept++] = values[i];
            }
        }

        Array.Resize(ref values, kept);
        return values;
    }
}
