using System;
using System.Collections.Generic;
using System.Globalization;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>The derivation of one substance's peak and averages, in the room or in a zone of it, and of what its vapour weighs against limits.</summary>
internal static class SubstanceWorkings
{
    internal static readonly Source GasLaw = Source.Published("29 CFR 1910.1000, Table Z-1, footnotes", "24.45 L/mol at 25 °C and 760 mmHg; at other pressures by the ideal-gas law");

    private static readonly Source Shares = Source.Derived("share of the volatile mass, shares scaled to 100 %; of a film with two rates its part s or 1 − s");

    /// <summary>One substance at one place.</summary>
    public static Workings Of(AirStudy study, int substance, SubstanceAir air, AirPlace place, string where)
    {
        Solvent solvent = air.Solvent;
        double[] masses = study.Load.Masses(substance);
        List<WorkingStep> steps = [];
        Expression?[] terms = Masses(study, solvent, masses, steps);
        steps.Add(new("all of it", "m", Expression.Sum(AirPlace.Present(terms)), AirLoad.Total(masses), Measure.Mass, Shares));

        Expression peak = place.Moment(terms, air.PeakSeconds, steps);
        WorkingStep concentration = new("peak of " + solvent.Name, "C_peak", peak, air.PeakConcentration.KilogramsPerCubicMeter, Measure.MassConcentration, TermFormulas.Box);
        steps.Add(concentration);
        steps.Add(Fraction(concentration, "peak by volume", "c_peak", solvent, air.Peak.DecimalFractions));

        Expression quarter = place.Window(terms, air.FifteenMinutesEnd, AirStudy.FifteenMinutes, AirStudy.FifteenMinutes, steps);
        WorkingStep fifteen = new("largest average over 15 min", "C_15", quarter, air.FifteenMinuteConcentration.KilogramsPerCubicMeter, Measure.MassConcentration, TermFormulas.Box);
        steps.Add(fifteen);
        steps.Add(Fraction(fifteen, "15-minute average by volume", "c_15", solvent, air.FifteenMinuteAverage.DecimalFractions));

        Expression day = place.Window(terms, air.EightHoursEnd, study.ShiftSeconds, AirStudy.EightHours, steps);
        WorkingStep eight = new("worst shift over 8 h", "C_8h", day, air.EightHourConcentration.KilogramsPerCubicMeter, Measure.MassConcentration, AirStudy.TimeWeighted);
        steps.Add(eight);
        steps.Add(Fraction(eight, "8-hour average by volume", "c_8h", solvent, air.EightHourAverage.DecimalFractions));
        return new Workings(solvent.Name + where, steps);
    }

    /// <summary>Per term the volume of air that its vapour can bring to the limits.</summary>
    public static Expression[] Weights(AirStudy study, AirIndex index, Expression molarVolume, string limitSymbol, Source source, List<WorkingStep> steps)
    {
        Expression[] terms = new Expression[study.Load.Terms.Length];
        for (int i = 0; i < terms.Length; i++)
        {
            List<Expression> sum = [];
            for (int j = 0; j < study.Load.Solvents.Length; j++)
            {
                Solvent solvent = study.Load.Solvents[j];
                double mass = study.Load.Masses(j)[i];
                if (mass > 0 && index.Limits[j] is double limit && !double.IsInfinity(limit))
                {
                    Expression m = Expression.Quantity("m_" + solvent.Name, mass, Measure.Mass);
                    Expression molarMass = Expression.Quantity("M_" + solvent.Name, solvent.MolarMass.KilogramsPerMole, Measure.MolarMass);
                    Expression l = Expression.Quantity(limitSymbol + "_" + solvent.Name, limit, limitSymbol == "LFL" ? Measure.Percent : Measure.PartsPerMillion);
                    sum.Add(m * molarVolume / (molarMass * l));
                }
            }

            WorkingStep weight = new("air that " + study.Load.Terms[i].Name + " can bring to the limits", "a_" + Number(i), Expression.Sum(sum), index.Weights[i], Measure.RoomVolume, source);
            steps.Add(weight);
            terms[i] = weight.Result();
        }

        return terms;
    }

    public static Expression?[] Masses(AirStudy study, Solvent solvent, double[] masses, List<WorkingStep> steps)
    {
        Expression?[] terms = new Expression?[masses.Length];
        for (int i = 0; i < masses.Length; i++)
        {
            ReleaseTerm term = study.Load.Terms[i];
            Emission emission = study.Load.Owners[i];
            List<Expression> shares = [];
            Expression? own = null;
            foreach (SolventShare share in emission.Solvents)
            {
                Expression leaf = Expression.Quantity("w_" + share.Solvent.Name, share.MassFraction.DecimalFractions, Measure.Percent);
                shares.Add(leaf);
                own = string.Equals(share.Solvent.CasNumber, solvent.CasNumber, StringComparison.Ordinal) ? leaf : own;
            }

            if (own is not null)
            {
                Expression all = Expression.Quantity("M_" + Number(i), emission.VolatileMass.Kilograms, Measure.Mass);
                Expression part = all * own / Expression.Sum(shares);
                WorkingStep mass = new(solvent.Name + " from " + term.Name, "m_" + Number(i), term.ShareFormula is null ? part : part * term.ShareFormula, masses[i], Measure.Mass, Shares);
                steps.Add(mass);
                terms[i] = mass.Result();
            }
        }

        return terms;
    }

    public static WorkingStep Fraction(WorkingStep concentration, string name, string symbol, Solvent solvent, double value)
    {
        Expression molarMass = Expression.Quantity("M", solvent.MolarMass.KilogramsPerMole, Measure.MolarMass);
        Expression molarVolume = Expression.Quantity("V_m", AirKernel.MolarVolume, Measure.MolarVolume);
        return new(name, symbol, concentration.Result() * molarVolume / molarMass, value, Measure.PartsPerMillion, GasLaw);
    }

    private static string Number(int term) => (term + 1).ToString(CultureInfo.InvariantCulture);
}
