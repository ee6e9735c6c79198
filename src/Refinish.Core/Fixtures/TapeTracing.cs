using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>How the formulas of fixtures name what the tape gave.</summary>
internal static class TapeTracing
{
    /// <summary>A length.</summary>
    public static Num Tape(this Trace? trace, string symbol, Length length) => trace.Given(symbol, length.Meters, Measure.Length);

    /// <summary>A length of one of several, counted from 1 behind its symbol; no text is made without a trace.</summary>
    public static Num Tape(this Trace? trace, string symbol, int place, Length length) =>
        trace is null ? length.Meters : trace.Tape(symbol + Figures.Fixed(place + 1, 0), length);

    /// <summary>An area by elementary plane geometry.</summary>
    public static Num Area(this Trace? trace, string name, string symbol, Num area) =>
        trace.Step(name, symbol, Measure.Area, PlaneShapes.Elementary, area);

    /// <summary>The edge to be taped.</summary>
    public static Num Edge(this Trace? trace, Num edge) =>
        trace.Step("edge to be taped", "P_mask", Measure.Length, PlaneShapes.Elementary, edge);

    /// <summary>A slope that follows from how a surface lies, or that was measured.</summary>
    public static Num Lying(this Trace? trace, double slope) =>
        slope == 0 ? 0 : slope == Math.PI / 2 ? trace.Pi() / 2 : trace.Given("φ", slope, Measure.Angle);

    /// <summary>
    /// A sum over the entries of a list, which allocates nothing without a trace; entries of no part in it are not written.
    /// </summary>
    public static Num Total<T, TState>(this IReadOnlyList<T> list, TState state, Func<TState, T, int, Num> term)
    {
        Num sum = 0;
        for (int i = 0; i < list.Count; i++)
        {
            Num one = term(state, list[i], i);
            sum = one.IsTraced || one.Value != 0 ? sum + one : sum;
        }

        return sum;
    }
}
