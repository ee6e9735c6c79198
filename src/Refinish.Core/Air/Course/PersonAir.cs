using System;
using System.Collections.Generic;
using System.Globalization;
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
            double average = stays.Sum(stay => Part(stay, solvent));
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
    public double Fraction(int substance) =>
        AirKernel.VolumeFraction(averages[substance], AirKernel.MolarVolume, Solvents[substance].MolarMass.KilogramsPerMole);

    /// <summary>Σ average over limit; substances without a limit are left out.</summary>
    public double Index(double?[] limits) => AirKernel.SumOfFractions([.. Enumerable.Range(0, Solvents.Length).Select(Fraction)], limits);

    public WorkingStep IndexStep(string name, double?[] limits) => new(
        "mixture index, " + name,
        "Em",
        Expression.Sum([.. Enumerable.Range(0, Solvents.Length).Where(j => !double.IsInfinity(limits[j]!.Value)).Select(j =>
            Expression.Quantity("c_" + Solvents[j].Name, Fraction(j), Measure.PartsPerMillion)
                / Expression.Quantity("L_" + Solvents[j].Name, limits[j]!.Value, Measure.PartsPerMillion))]),
        Index(limits),
        Measure.Number,
        AirStudy.Additive);

    /// <summary>The rooms and, for each substance, what the stays add to the average.</summary>
    public IEnumerable<Workings> Parts()
    {
        TermFormulas[] formulas = new TermFormulas[rooms.Length];
        for (int r = 0; r < rooms.Length; r++)
        {
            string mark = rooms.Length == 1 ? string.Empty : "_room" + Number(r);
            formulas[r] = new TermFormulas(rooms[r].Load, rooms[r].Shapes.Answers, rooms[r].Changes, "λ" + mark, mark, true);
            yield return AirStudyWorkings.AirChanges(rooms[r]);
            foreach (Workings part in formulas[r].Parts())
            {
                yield return part;
            }
        }

        foreach (CarefulSolvent careful in Merged)
        {
            yield return careful.Workings();
        }

        for (int j = 0; j < Solvents.Length; j++)
        {
            yield return Of(j, formulas);
        }
    }

    private Workings Of(int substance, TermFormulas[] formulas)
    {
        Solvent solvent = Solvents[substance];
        List<WorkingStep> steps = [];
        List<Expression> sum = [];
        for (int i = 0; i < stays.Length; i++)
        {
            AirStudy room = stays[i].Study;
            double part = Part(stays[i], solvent);
            if (part > 0)
            {
                Expression?[] masses = SubstanceWorkings.Masses(room, solvent, room.Load.Masses(room.Known(solvent)), steps);
                Expression integral = formulas[Array.IndexOf(rooms, room)]
                    .Dose(masses, stays[i].From.TotalSeconds, stays[i].Until.TotalSeconds, steps);
                WorkingStep stay = new(
                    "added by stay " + Number(i) + ", " + stays[i],
                    "C_" + Number(i),
                    integral / (Expression.Quantity("V", room.RoomVolume, Measure.RoomVolume)
                        * Expression.Quantity("T_avg", AirStudy.EightHours, Measure.Hours)),
                    part,
                    Measure.MassConcentration,
                    TermFormulas.Box);
                steps.Add(stay);
                sum.Add(stay.Result());
            }
        }

        WorkingStep average = new(
            "average over 8 h", "C_8h", Expression.Sum(sum), averages[substance], Measure.MassConcentration, AirStudy.TimeWeighted);
        steps.Add(average);
        steps.Add(SubstanceWorkings.Fraction(average, "8-hour average by volume", "c_8h", solvent, Fraction(substance)));
        return new Workings(solvent.Name, steps);
    }

    // 0 where the room does not release it and before its first release; the difference of two integrals may round below zero when the room
    // has long cleared.
    private static double Part(RoomStay stay, Solvent solvent)
    {
        AirLoad load = stay.Study.Load;
        int substance = load.IndexOf(solvent.CasNumber);
        if (substance < 0)
        {
            return 0;
        }

        double integral = AirLoad.Dose(load.Masses(substance), stay.Study.Shapes.Answers, stay.From.TotalSeconds, stay.Until.TotalSeconds);
        return Math.Max(integral / (stay.Study.RoomVolume * AirStudy.EightHours), 0);
    }

    private static string Number(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);
}
