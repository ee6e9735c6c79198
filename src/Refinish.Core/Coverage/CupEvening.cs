using System;
using System.Collections.Generic;

namespace Refinish.Coverage;

/// <summary>
/// Evens out what is mixed in cups of several sizes: as much in all and as many batches of each cup, each a whole number of graduations
/// between its bounds, but no batch smaller than it has to be. A small rest is measured worse than equal parts.
/// </summary>
internal static class CupEvening
{
    // Graduations that meet within so many marks are moved from cup to cup; others, as millilitres and ounces, stay.
    private const int MostMarks = 1000;
    private const int Rounds = 4;

    public static List<CupShare> Of(List<CupShare> shares, UsableCup[] cups)
    {
        for (int round = 0; round < Rounds && shares.Count > 1; round++)
        {
            bool moved = false;
            for (int i = 0; i < shares.Count; i++)
            {
                for (int j = i + 1; j < shares.Count; j++)
                {
                    moved |= Even(shares, i, j, cups);
                }
            }

            if (!moved)
            {
                break;
            }
        }

        return shares;
    }

    private static bool Even(List<CupShare> shares, int i, int j, UsableCup[] cups)
    {
        (CupShare a, CupShare b) = (shares[i], shares[j]);
        (UsableCup cupA, UsableCup cupB) = (cups[a.Cup], cups[b.Cup]);
        if (Meeting(cupA.Step, cupB.Step) is not (int marksA, int marksB))
        {
            return false;
        }

        // What goes from a to b so that the batches of both hold alike, in steps that are whole graduations of both.
        double from = a.Graduations * cupA.Step;
        double into = b.Graduations * cupB.Step;
        double wanted = ((b.Batches * from) - (a.Batches * into)) / (a.Batches + b.Batches) / (marksA * cupA.Step);
        long most = Math.Min((a.Graduations - ((long)a.Batches * cupA.Least)) / marksA, (((long)b.Batches * cupB.Most) - b.Graduations) / marksB);
        long least = -Math.Min((((long)a.Batches * cupA.Most) - a.Graduations) / marksA, (b.Graduations - ((long)b.Batches * cupB.Least)) / marksB);
        long steps = Math.Max(least, Math.Min(most, (long)Math.Round(wanted, MidpointRounding.ToEven)));
        if (steps == 0)
        {
            return false;
        }

        shares[i] = new CupShare(a.Cup, a.Batches, a.Graduations - (steps * marksA));
        shares[j] = new CupShare(b.Cup, b.Batches, b.Graduations + (steps * marksB));
        return true;
    }

    private static (int First, int Second)? Meeting(double first, double second)
    {
        for (int marks = 1; marks <= MostMarks; marks++)
        {
            double other = Math.Round(marks * first / second);
            if (other >= 1 && other <= MostMarks && Math.Abs((other * second) - (marks * first)) <= 1e-12 * marks * first)
            {
                return (marks, (int)other);
            }
        }

        return null;
    }
}
