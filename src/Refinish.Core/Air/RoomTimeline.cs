using System;
using System.Collections.Generic;

namespace Refinish.Air;

/// <summary>When which coat is sprayed, in seconds, and the distinct rates at which films dry. Shared by every sum over the same coats.</summary>
internal sealed class RoomTimeline
{
    private readonly double[] start;
    private readonly double[] end;
    private readonly double[] spray;
    private readonly double[] flash;
    private readonly int[] film;

    public RoomTimeline(IReadOnlyList<SolventEmission> emissions)
    {
        int count = emissions.Count;
        start = new double[count];
        end = new double[count];
        spray = new double[count];
        flash = new double[count];
        film = new int[count];
        double[] knots = new double[2 * count];
        double[] constants = new double[count];
        for (int i = 0; i < count; i++)
        {
            SolventEmission emission = emissions[i];
            start[i] = emission.Start.TotalSeconds;
            end[i] = emission.End.TotalSeconds;
            spray[i] = emission.SprayTime.TotalSeconds;
            flash[i] = emission.FlashFraction.DecimalFractions;
            constants[i] = emission.FilmTimeConstant.TotalSeconds;
            knots[2 * i] = start[i];
            knots[(2 * i) + 1] = end[i];
        }

        Knots = Distinct(knots);
        double[] distinct = Distinct(constants);

        // Slowest film first, so that the rates ascend.
        Array.Reverse(distinct);
        TimeConstants = distinct;
        Rates = new double[distinct.Length];
        for (int g = 0; g < distinct.Length; g++)
        {
            Rates[g] = 1 / distinct[g];
        }

        for (int i = 0; i < count; i++)
        {
            film[i] = Array.IndexOf(distinct, emissions[i].FilmTimeConstant.TotalSeconds);
        }

        Coefficients = new double[distinct.Length + 1];
        Exponents = new double[distinct.Length + 1];
        Found = new double[distinct.Length + 1];
    }

    /// <summary>The moments at which a spray begins or ends, ascending.</summary>
    public double[] Knots { get; }

    /// <summary>The distinct rates of the films, ascending.</summary>
    public double[] Rates { get; }

    /// <summary>Their time constants, in the same order.</summary>
    public double[] TimeConstants { get; }

    /// <summary>Room to work in while one history is searched; a timeline serves one thread.</summary>
    public double[] Coefficients { get; }

    public double[] Exponents { get; }

    public double[] Found { get; }

    public bool Sprays(int coat, int knot) => start[coat] <= Knots[knot] && Knots[knot] < end[coat];

    public double Spray(int coat) => spray[coat];

    public double Flash(int coat) => flash[coat];

    public int Film(int coat) => film[coat];

    public double Start(int coat) => start[coat];

    public double TimeConstant(int coat) => TimeConstants[film[coat]];

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
