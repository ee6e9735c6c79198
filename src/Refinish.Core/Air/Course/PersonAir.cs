using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>
/// What a person breathes of each substance, averaged over eight hours: C = Σ over stays of ∫ c dt / T_avg, with c the concentration of the
/// room (kg/m³).
/// </summary>
internal sealed class PersonAir
{
    private readonly RoomStay[] stays;
    private readonly AirStudy[] rooms;
    private readonly double[] averages;

    public PersonAir(RoomStay[] stays)
    {
        this.stays = stays;
        rooms = [.. stays.Select(stay => stay.Study).Distinct()];
        List<Solvent> solvents = [];
        List<CarefulSolvent>? sheets = null;
        foreach (Solvent solvent in rooms.SelectMany(room => room.Load.Solvents))
        {
            Solvent? first = solvents.Find(known => string.Equals(known.CasNumber, solvent.CasNumber, StringComparison.Ordinal));
            if (first is null)
            {
                solvents.Add(solvent);
            }
            else
            {
                sheets = CarefulSolvent.Collect(sheets, first, solvent);
            }
        }

        Merged = sheets ?? [];
        List<Solvent> breathed = [];
        List<double> amounts = [];
        foreach (Solvent solvent in solvents)
        {
            double average = Average(solvent).Value;
            if (average > 0)
            {
                breathed.Add(Merged.Select(careful => careful.Figures)
                    .FirstOrDefault(figures => string.Equals(figures.CasNumber, solvent.CasNumber, StringComparison.Ordinal)) ?? solvent);
                amounts.Add(average);
            }
        }

        Solvents = [.. breathed];
        averages = [.. amounts];
    }

    /// <summary>The substances breathed, in the order in which the rooms name them.</summary>
    public Solvent[] Solvents { get; }

    private List<CarefulSolvent> Merged { get; }

    /// <summary>The eight-hour average of a substance by volume.</summary>
    public double Fraction(int substance) => AirKernel.FractionForLimits(averages[substance], Solvents[substance]).Value;

    /// <summary>Σ average over limit; substances without a limit are left out.</summary>
    public Num Index(double?[] limits, Trace? t = null) => t.Step(
        "mixture index, lowest limits of the set", "Em", Measure.Number, AirStudy.Additive,
        Num.Sum(Solvents, (Air: this, limits, t), static (solvent, j, of) => of.limits[j] is double limit && !double.IsInfinity(limit)
            ? of.t.Given("c_", solvent.Name, of.Air.Fraction(j), Measure.PartsPerMillion)
                / of.t.Given("L_", solvent.Name, limit, Measure.PartsPerMillion)
            : 0));

    /// <summary>The rooms and, for each substance, what the stays add to the average.</summary>
    public IEnumerable<Workings> Parts()
    {
        Dictionary<AirStudy, TermAnswers> answers = [];
        foreach (AirStudy room in rooms)
        {
            string mark = rooms.Length == 1 ? string.Empty : "_room" + Figures.Fixed(answers.Count + 1, 0);
            answers[room] = new TermAnswers(room.Load.Timeline, room.Changes, "λ" + mark, mark);
            yield return room.AirChangesWorkings();
            foreach (Workings part in answers[room].Parts())
            {
                yield return part;
            }
        }

        foreach (CarefulSolvent careful in Merged)
        {
            yield return careful.Workings();
        }

        foreach (Solvent solvent in Solvents)
        {
            Trace t = new();
            Num average = Average(solvent, answers, t);
            t.Step(
                "8-hour average by volume", "c_8h", Measure.PartsPerMillion, AirKernel.GasLaw,
                AirKernel.FractionForLimits(average, solvent, t));
            yield return t.Workings(solvent.Name);
        }
    }

    private Num Average(Solvent solvent, Dictionary<AirStudy, TermAnswers>? answers = null, Trace? t = null)
    {
        Num sum = 0;
        for (int i = 0; i < stays.Length; i++)
        {
            // The difference of two integrals may round below zero when the room has long cleared.
            Num added = Added(stays[i], solvent, stays[i].Study.Shapes.Answers, null);
            if (added.Value > 0)
            {
                sum += t is null ? added : t.Step(
                    "added by stay " + Figures.Fixed(i + 1, 0) + ", " + stays[i], "C_" + Figures.Fixed(i + 1, 0), Measure.MassConcentration,
                    TermAnswers.Box, Added(stays[i], solvent, answers![stays[i].Study], t));
            }
        }

        return t.Step("average over 8 h", "C_8h", Measure.MassConcentration, AirStudy.TimeWeighted, sum);
    }

    // 0 where the room does not release it and before its first release.
    private static Num Added(RoomStay stay, Solvent solvent, TermAnswers answers, Trace? t)
    {
        AirLoad load = stay.Study.Load;
        int substance = load.IndexOf(solvent.CasNumber);
        if (substance < 0)
        {
            return 0;
        }

        TermWeights masses = t is null ? load.Masses(substance) : load.Masses(solvent, t, answers.RoomMark);
        return answers.Dose(masses, stay.From.TotalSeconds, stay.Until.TotalSeconds, t)
            / (stay.Study.Volume(t) * t.Given("T_avg", AirStudy.EightHours, Measure.Hours));
    }
}
