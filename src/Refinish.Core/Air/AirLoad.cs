using System;
using System.Collections.Generic;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>
/// The coats of a study as numbers: mass of each substance from each coat, and what those masses weigh against a set of limits.
/// A weight over the room's volume, times the airborne parts, is a concentration, a fraction of the flammable limit or an index.
/// </summary>
internal sealed class AirLoad
{
    private readonly double[][] masses;

    public AirLoad(IReadOnlyList<SolventEmission> emissions)
    {
        Emissions = emissions;
        List<Solvent> solvents = [];
        List<double[]> rows = [];
        for (int i = 0; i < emissions.Count; i++)
        {
            SolventEmission emission = emissions[i];
            double sum = SolventEmission.ShareSum(emission.Solvents);
            foreach (SolventShare share in emission.Solvents)
            {
                int j = IndexOf(solvents, share.Solvent.CasNumber);
                if (j < 0)
                {
                    j = solvents.Count;
                    solvents.Add(share.Solvent);
                    rows.Add(new double[emissions.Count]);
                }
                else if (!solvents[j].Equals(share.Solvent))
                {
                    throw new ArgumentException("emissions holds two descriptions of " + share.Solvent + "; one substance needs one set of figures.", nameof(emissions));
                }

                rows[j][i] = emission.VolatileMass.Kilograms * share.MassFraction.DecimalFractions / sum;
            }
        }

        Solvents = [.. solvents];
        masses = [.. rows];
        Timeline = new RoomTimeline(emissions);
    }

    public IReadOnlyList<SolventEmission> Emissions { get; }

    public Solvent[] Solvents { get; }

    public RoomTimeline Timeline { get; }

    /// <summary>Mass of one substance from each coat.</summary>
    public double[] Masses(int substance) => masses[substance];

    /// <summary>Where a registry number stands among the substances; −1 when it is not released.</summary>
    public int IndexOf(string casNumber) => IndexOf(Solvents, casNumber);

    /// <summary>
    /// For each coat the volume of air that its vapour can bring to the limits: Σ m · V_m / (M · L); substances without a limit are left out.
    /// </summary>
    public double[] Weights(double molarVolume, double?[] limits)
    {
        double[] weights = new double[Emissions.Count];
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

    /// <summary>Airborne part of a coat at a time of the study.</summary>
    public double Airborne(int coat, double changes, double time) =>
        AirKernel.Airborne(changes, Timeline.Flash(coat), Timeline.Spray(coat), Timeline.TimeConstant(coat), time - Timeline.Start(coat));

    /// <summary>Its integral up to a time of the study.</summary>
    public double AirborneTime(int coat, double changes, double time) =>
        AirKernel.AirborneTime(changes, Timeline.Flash(coat), Timeline.Spray(coat), Timeline.TimeConstant(coat), time - Timeline.Start(coat));

    /// <summary>A weighted sum of the airborne parts: the superposition of all coats.</summary>
    public double Sum(double[] weights, double changes, double time)
    {
        double sum = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            sum += weights[i] * Airborne(i, changes, time);
        }

        return sum;
    }

    /// <summary>The integral of that sum over a window.</summary>
    public double Dose(double[] weights, double changes, double from, double to)
    {
        double sum = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            sum += weights[i] * (AirborneTime(i, changes, to) - AirborneTime(i, changes, from));
        }

        return sum;
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
