using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>
/// The emissions of a study as numbers: mass of each substance from each term. The masses, or what they weigh against a set of limits, over
/// the room's volume, times the airborne parts, are a concentration, a fraction of the flammable limit or an index.
/// </summary>
internal sealed class AirLoad
{
    internal static readonly Source Shares =
        Source.Derived("share of the volatile mass, shares scaled to 100 %; of a film with two rates its part s or 1 − s");

    private readonly double[][] masses;
    private readonly double[][] kept;

    public AirLoad(IReadOnlyList<Emission> emissions)
    {
        Terms = [.. emissions.SelectMany(emission => emission.Terms())];
        List<Solvent> solvents = [];
        List<double[]> rows = [];
        List<CarefulSolvent>? sheets = null;
        for (int i = 0; i < Terms.Length; i++)
        {
            Num sum = Emission.ShareSum(Terms[i].Emission.Solvents);
            foreach (SolventShare share in Terms[i].Emission.Solvents)
            {
                int j = IndexOf(solvents, share.Solvent.CasNumber);
                if (j < 0)
                {
                    j = solvents.Count;
                    solvents.Add(share.Solvent);
                    rows.Add(new double[Terms.Length]);
                }
                else
                {
                    sheets = CarefulSolvent.Collect(sheets, solvents[j], share.Solvent);
                }

                rows[j][i] = Terms[i].Mass(i, share, sum).Value;
            }
        }

        Merged = sheets ?? [];
        foreach (CarefulSolvent careful in Merged)
        {
            solvents[IndexOf(solvents, careful.Figures.CasNumber)] = careful.Figures;
        }

        bool[] leaves = [.. solvents.Select(solvent => solvent.Volatility.IsVolatile)];
        Solvents = [.. solvents.Where((_, j) => leaves[j])];
        NotGivenOff = [.. solvents.Where((_, j) => !leaves[j])];
        masses = [.. rows.Where((_, j) => leaves[j])];
        kept = [.. rows.Where((_, j) => !leaves[j])];
        Timeline = new RoomTimeline(Terms);
    }

    /// <summary>The pieces of the emissions that leave at one rate each.</summary>
    public ReleaseTerm[] Terms { get; }

    /// <summary>
    /// One description of each substance that evaporates: the first given, or the careful figures of those that differ.
    /// </summary>
    public Solvent[] Solvents { get; }

    /// <summary>The substances that are not volatile and stay in their films.</summary>
    public Solvent[] NotGivenOff { get; }

    /// <summary>The substances that came with descriptions that differ.</summary>
    public IReadOnlyList<CarefulSolvent> Merged { get; }

    public RoomTimeline Timeline { get; }

    /// <summary>Mass of one substance from each term.</summary>
    public double[] Masses(int substance) => masses[substance];

    /// <summary>The same with its derivation; the mark tells rooms apart where a person works in several.</summary>
    public Num[] Masses(Solvent solvent, Trace t, string mark = "") => [.. Terms.Select((term, i) =>
        term.Emission.Solvents.FirstOrDefault(one => string.Equals(one.Solvent.CasNumber, solvent.CasNumber, StringComparison.Ordinal))
            is SolventShare share
            ? t.Step(
                solvent.Name + " from " + term.Name, "m_" + Figures.Fixed(i + 1, 0) + mark, Measure.Mass, Shares,
                term.Mass(i, share, Emission.ShareSum(term.Emission.Solvents, t), t))
            : 0)];

    /// <summary>Mass of one substance that is not volatile from each term.</summary>
    public double[] Kept(int substance) => kept[substance];

    /// <summary>Where a registry number stands among those that are not volatile; −1 when it is none of them.</summary>
    public int IndexOfKept(string casNumber) => IndexOf(NotGivenOff, casNumber);

    /// <summary>Where a registry number stands among the substances; −1 when it is not released.</summary>
    public int IndexOf(string casNumber) => IndexOf(Solvents, casNumber);

    /// <summary>The masses put on and still in films at a time, beside what is in the air and gone.</summary>
    public MassBalance Balance(TermWeights masses, double time, double inAir, double removed) => new(
        Applied(masses, time),
        masses.Sum((Timeline, time), static (of, i) =>
            of.time - of.Timeline.Start(i) is double x && x > 0 ? of.Timeline.Term(i, 0).Film(x) : 0).Value,
        inAir,
        removed);

    /// <summary>What has been put on of a substance that is not volatile: all of it lies in films and overspray.</summary>
    public MassBalance Kept(double[] masses, double time)
    {
        double applied = Applied(masses, time);
        return new MassBalance(applied, applied, 0, 0);
    }

    private double Applied(TermWeights masses, double time) => masses.Sum((Timeline, time), static (of, i) =>
        Math.Min(Math.Max((of.time - of.Timeline.Start(i)) / of.Timeline.Spray(i), 0), 1)).Value;

    private static int IndexOf(IReadOnlyList<Solvent> solvents, string casNumber)
    {
        for (int j = 0; j < solvents.Count; j++)
        {
            if (string.Equals(solvents[j].CasNumber, casNumber, StringComparison.Ordinal))
            {
                return j;
            }
        }

        return -1;
    }
}
