using System;
using System.Collections.Generic;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>
/// The emissions of a study as numbers: mass of each substance from each term, and what those masses weigh against a set of limits.
/// A weight over the room's volume, times the airborne parts, is a concentration, a fraction of the flammable limit or an index.
/// </summary>
internal sealed class AirLoad
{
    private readonly double[][] masses;
    private readonly double[][] kept;

    public AirLoad(IReadOnlyList<Emission> emissions)
    {
        List<ReleaseTerm> terms = [];
        List<Emission> owners = [];
        foreach (Emission emission in emissions)
        {
            foreach (ReleaseTerm term in emission.Terms())
            {
                terms.Add(term);
                owners.Add(emission);
            }
        }

        Terms = [.. terms];
        Owners = [.. owners];
        List<Solvent> solvents = [];
        List<double[]> rows = [];
        List<CarefulSolvent>? sheets = null;
        for (int i = 0; i < Terms.Length; i++)
        {
            double all = Owners[i].VolatileMass.Kilograms;
            double sum = Emission.ShareSum(Owners[i].Solvents);
            foreach (SolventShare share in Owners[i].Solvents)
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

                rows[j][i] = all * share.MassFraction.DecimalFractions / sum * Terms[i].Share;
            }
        }

        Merged = sheets ?? [];
        foreach (CarefulSolvent careful in Merged)
        {
            solvents[IndexOf(solvents, careful.Figures.CasNumber)] = careful.Figures;
        }

        List<Solvent> still = [];
        List<double[]> lying = [];
        for (int j = solvents.Count - 1; j >= 0; j--)
        {
            if (!solvents[j].Volatility.IsVolatile)
            {
                still.Insert(0, solvents[j]);
                lying.Insert(0, rows[j]);
                solvents.RemoveAt(j);
                rows.RemoveAt(j);
            }
        }

        Solvents = [.. solvents];
        NotGivenOff = [.. still];
        masses = [.. rows];
        kept = [.. lying];
        Timeline = new RoomTimeline(Terms);
    }

    /// <summary>The pieces of the emissions that leave at one rate each.</summary>
    public ReleaseTerm[] Terms { get; }

    /// <summary>Which emission each of them is of.</summary>
    public Emission[] Owners { get; }

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

    /// <summary>Mass of one substance that is not volatile from each term.</summary>
    public double[] Kept(int substance) => kept[substance];

    /// <summary>Where a registry number stands among those that are not volatile; −1 when it is none of them.</summary>
    public int IndexOfKept(string casNumber) => IndexOf(NotGivenOff, casNumber);

    /// <summary>Where a registry number stands among the substances; −1 when it is not released.</summary>
    public int IndexOf(string casNumber) => IndexOf(Solvents, casNumber);

    /// <summary>
    /// For each term the volume of air that its vapour can bring to the limits: Σ m · V_m / (M · L); substances without a limit are left out.
    /// </summary>
    public double[] Weights(double molarVolume, double?[] limits)
    {
        double[] weights = new double[Terms.Length];
        for (int j = 0; j < Solvents.Length; j++)
        {
            if (limits[j] is double limit)
            {
                double molarMass = Solvents[j].MolarMass.KilogramsPerMole;
                for (int i = 0; i < weights.Length; i++)
                {
                    weights[i] += masses[j][i] * molarVolume / (molarMass * limit);
                }
            }
        }

        return weights;
    }

    /// <summary>A weighted sum of the airborne parts: the superposition of all terms.</summary>
    public static double Sum(double[] weights, TermAnswers answers, double time)
    {
        double sum = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            sum += weights[i] * answers.Airborne(i, time);
        }

        return sum;
    }

    /// <summary>The integral of that sum over a window.</summary>
    public static double Dose(double[] weights, TermAnswers answers, double from, double to)
    {
        double sum = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            sum += weights[i] * (answers.AirborneTime(i, to) - answers.AirborneTime(i, from));
        }

        return sum;
    }

    /// <summary>The masses put on and still in films at a time, beside what is in the air and gone.</summary>
    public MassBalance Balance(double[] masses, double time, double inAir, double removed)
    {
        double film = 0;
        for (int i = 0; i < masses.Length; i++)
        {
            film += masses[i] * AirKernel.Film(Timeline.Flash(i), Timeline.Spray(i), Timeline.TimeConstant(i), time - Timeline.Start(i));
        }

        return new MassBalance(Applied(masses, time), film, inAir, removed);
    }

    /// <summary>What has been put on of a substance that is not volatile: all of it lies in films and overspray.</summary>
    public MassBalance Kept(double[] masses, double time)
    {
        double applied = Applied(masses, time);
        return new MassBalance(applied, applied, 0, 0);
    }

    /// <summary>All weights together: what would be in the air if nothing left it.</summary>
    public static double Total(double[] weights)
    {
        double sum = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            sum += weights[i];
        }

        return sum;
    }

    private double Applied(double[] masses, double time)
    {
        double applied = 0;
        for (int i = 0; i < masses.Length; i++)
        {
            applied += masses[i] * Math.Min(Math.Max((time - Timeline.Start(i)) / Timeline.Spray(i), 0), 1);
        }

        return applied;
    }

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
