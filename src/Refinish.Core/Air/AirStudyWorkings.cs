using System;
using System.Collections.Generic;
using System.Globalization;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>The derivation of a study: the room, the coats, each substance, the mixture, the airflow.</summary>
internal static class AirStudyWorkings
{
    private static readonly Source Shares = Source.Derived("share of the volatile mass, shares scaled to 100 %; of a film with two rates its part s or 1 − s");
    private static readonly Source Located = Source.Derived("located where the derivative is zero");
    private static readonly Source GasLaw = Source.Published("29 CFR 1910.1000, Table Z-1, footnotes", "24.45 L/mol at 25 °C and 760 mmHg; at other pressures by the ideal-gas law");
    private static readonly Source LeChatelier = Source.Derived("Le Chatelier's rule: each vapour's fraction of its own limit, added up");
    private static readonly Source Sizing = Source.Derived("mixing factor times the fresh air that gives the air changes, less what infiltrates");

    public static Workings Of(AirStudy study)
    {
        List<Workings> parts = [AirChanges(study), .. CoatTerms.Parts(study)];
        for (int j = 0; j < study.Substances.Count; j++)
        {
            parts.Add(Substance(study, j));
        }

        if (study.Flammability.IsWhole)
        {
            parts.Add(Flammability(study));
        }

        if (study.Osha.IsWhole)
        {
            parts.Add(new Workings("Mixture index, OSHA limits", Index(study, study.Osha, "mixture index, OSHA limits", "Em", study.ShiftSeconds, AirStudy.EightHours)));
        }

        if (study.Strictest.IsWhole)
        {
            parts.Add(new Workings("Mixture index, lowest limits known", Index(study, study.Strictest, "mixture index, lowest limits known", "Em_low", study.ShiftSeconds, AirStudy.EightHours)));
        }

        if (!study.ShortTerm.IsEmpty)
        {
            parts.Add(new Workings("Mixture index, short-term limits", Index(study, study.ShortTerm, "mixture index, short-term limits", "Em_15", AirStudy.FifteenMinutes, AirStudy.FifteenMinutes)));
        }

        if (study.Strictest.IsWhole)
        {
            parts.Add(ExposureAirflow(study));
        }

        return new Workings("Air of the room", [], parts);
    }

    private static Workings AirChanges(AirStudy study)
    {
        Expression fan = Expression.Quantity("Q", study.Exhaust.EffectiveFlow.CubicMetersPerSecond, Measure.Airflow);
                Expression mixing = Expression.Quantity("K", study.Exhaust.MixingFactor, Measure.Number);
        WorkingStep fresh = new("fresh air that counts, with infiltration", "F", (fan + Infiltration(study)) / mixing, study.FreshAirFlow.CubicMetersPerSecond, Measure.Airflow, Exhaust.Mixing);
        return new Workings(
            "Air changes",
            [fresh, new("air changes that count", "λ", fresh.Result() / Volume(study), study.Changes, Measure.AirChanges, CoatTerms.Box)],
            [study.Room.Workings(), study.Exhaust.Workings()]);
    }

    private static Workings Substance(AirStudy study, int substance)
    {
        SubstanceAir air = study.Substances[substance];
        Solvent solvent = air.Solvent;
        double[] masses = study.Load.Masses(substance);
        List<WorkingStep> steps = [];
        Expression[] terms = Masses(study, solvent, masses, steps);
        steps.Add(new("all of it", "m", Expression.Sum(Present(terms)), AirLoad.Total(masses), Measure.Mass, Shares));

        Expression peak = Moment(study, terms, air.PeakSeconds, steps) / Volume(study);
        WorkingStep concentration = new("peak of " + solvent.Name, "C_peak", peak, air.PeakConcentration.KilogramsPerCubicMeter, Measure.MassConcentration, CoatTerms.Box);
        steps.Add(concentration);
        steps.Add(Fraction(concentration, "peak by volume", "c_peak", solvent, air.Peak.DecimalFractions));

        Expression quarter = Window(study, terms, air.FifteenMinutesEnd, AirStudy.FifteenMinutes, AirStudy.FifteenMinutes, steps);
        WorkingStep fifteen = new("largest average over 15 min", "C_15", quarter, air.FifteenMinuteConcentration.KilogramsPerCubicMeter, Measure.MassConcentration, CoatTerms.Box);
        steps.Add(fifteen);
        steps.Add(Fraction(fifteen, "15-minute average by volume", "c_15", solvent, air.FifteenMinuteAverage.DecimalFractions));

        Expression day = Window(study, terms, air.EightHoursEnd, study.ShiftSeconds, AirStudy.EightHours, steps);
        WorkingStep eight = new("worst shift over 8 h", "C_8h", day, air.EightHourConcentration.KilogramsPerCubicMeter, Measure.MassConcentration, AirStudy.TimeWeighted);
        steps.Add(eight);
        steps.Add(Fraction(eight, "8-hour average by volume", "c_8h", solvent, air.EightHourAverage.DecimalFractions));
        return new Workings(solvent.Name, steps);
    }

    private static Expression[] Masses(AirStudy study, Solvent solvent, double[] masses, List<WorkingStep> steps)
    {
        Expression[] terms = new Expression[masses.Length];
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

    private static WorkingStep Fraction(WorkingStep concentration, string name, string symbol, Solvent solvent, double value)
    {
        Expression molarMass = Expression.Quantity("M", solvent.MolarMass.KilogramsPerMole, Measure.MolarMass);
        Expression molarVolume = Expression.Quantity("V_m", AirKernel.MolarVolume, Measure.MolarVolume);
        return new(name, symbol, concentration.Result() * molarVolume / molarMass, value, Measure.PartsPerMillion, GasLaw);
    }

    private static Workings Flammability(AirStudy study)
    {
        AirIndex index = study.Flammability;
        List<WorkingStep> steps = [];
        Expression pressure = Expression.Quantity("p", study.Room.AirPressure.Pascals, Measure.Pressure);
        WorkingStep molar = new(
            "molar volume at the room's pressure",
            "V_m",
            Expression.Quantity("V_m0", AirKernel.MolarVolume, Measure.MolarVolume) * Expression.Quantity("p_0", AirKernel.StandardPressure, Measure.Pressure) / pressure,
            index.MolarVolume,
            Measure.MolarVolume,
            GasLaw);
        steps.Add(molar);
        Expression[] terms = Weights(study, index, molar.Result(), "LFL", LeChatelier, steps);
        steps.Add(new("peak of the sum of fractions", "Φ_peak", Moment(study, terms, index.PeakAt, steps) / Volume(study), index.Peak, Measure.Percent, LeChatelier));

        Expression mixing = Expression.Quantity("K", study.Exhaust.MixingFactor, Measure.Number);
        Expression quarter = Expression.Quantity("q", AirStudy.QuarterOfLimit, Measure.Percent);
        double changes = AirSizing.ForPeak(study.Load, index.Weights, AirStudy.QuarterOfLimit * study.RoomVolume);
        if (changes > 0)
        {
            RoomHistory.Peak(new RoomPath(new RoomGrid(study.Load.Timeline, changes, 0), index.Weights), out double at);
            Expression needed = Expression.Quantity("λ_q", changes, Measure.AirChanges);
            steps.Add(new("air changes that hold the peak at a quarter, found by trial", "λ_q", needed, changes, Measure.AirChanges, Sizing));
            Expression held = CoatTerms.Moment(study, terms, new TermAnswers(study.Load.Timeline, changes), changes, "λ_q", at, steps) / Volume(study);
            steps.Add(new("check: the peak at those air changes", "Φ_q", held, AirLoad.Sum(index.Weights, new TermAnswers(study.Load.Timeline, changes), at) / study.RoomVolume, Measure.Percent, LeChatelier));
            steps.Add(new("airflow for a quarter of the flammable limit", "Q_q", FanFlow(study, needed, mixing), study.AirflowForFlammableLimit!.Value.CubicMetersPerSecond, Measure.Airflow, Sizing));
        }
        else
        {
            steps.Add(new("airflow for a quarter of the flammable limit: none is needed", "Q_q", Expression.Number(0), 0, Measure.Airflow, Sizing));
        }

        double release = AirSizing.GreatestRelease(study.Load, index.Weights);
        WorkingStep greatest = new("air brought to its limit per time, all flashing", "G", Release(study, terms, index.Weights, release), release, Measure.Airflow, LeChatelier);
        steps.Add(greatest);
        steps.Add(new("steady airflow for a quarter of the flammable limit", "Q_steady", Expression.Max((greatest.Result() / quarter * mixing) - Infiltration(study), Expression.Number(0)), study.SteadyAirflowForFlammableLimit!.Value.CubicMetersPerSecond, Measure.Airflow, Sizing));
        return new Workings("Flammability", steps);
    }

    private static Expression Release(AirStudy study, Expression[] terms, double[] weights, double greatest)
    {
        RoomTimeline line = study.Load.Timeline;
        double moment = 0;
        for (int s = 0; s < weights.Length; s++)
        {
            if (AirSizing.ReleaseAt(study.Load, weights, line.Start(s)) == greatest)
            {
                moment = line.Start(s);
            }
        }

        List<Expression> sum = [];
        for (int i = 0; i < weights.Length; i++)
        {
            double since = moment - line.Start(i);
            if (since >= 0)
            {
                Expression spray = Expression.Quantity("T_" + Number(i), line.Spray(i), Measure.Minutes);
                Expression film = Expression.Quantity("τ_" + Number(i), line.TimeConstant(i), Measure.Minutes);
                Expression flash = Expression.Quantity("f_" + Number(i), line.Flash(i), Measure.Percent);
                Expression x = Expression.Quantity("x_" + Number(i), since, Measure.Minutes);
                sum.Add(terms[i] * (since < line.Spray(i)
                    ? 1 / spray
                    : (1 - flash) * Expression.Phi1(-(spray / film)) / film * Expression.Exp(-((x - spray) / film))));
            }
        }

        return Expression.Sum(sum);
    }

    private static List<WorkingStep> Index(AirStudy study, AirIndex index, string name, string symbol, double window, double over)
    {
        List<WorkingStep> steps = [];
        Expression molar = Expression.Quantity("V_m", index.MolarVolume, Measure.MolarVolume);
        Expression[] terms = Weights(study, index, molar, "L", AirStudy.Additive, steps);
        Expression average = Window(study, terms, index.AverageMaximum.At, window, over, steps);
        steps.Add(new(name, symbol, average, index.Average, Measure.Number, AirStudy.Additive));
        return steps;
    }

    private static Workings ExposureAirflow(AirStudy study)
    {
        double day = AirSizing.ForDose(study.Load, study.Strictest.Weights, study.ShiftSeconds, AirStudy.EightHours * study.RoomVolume);
        double quarter = AirSizing.ForDose(study.Load, study.ShortTerm.Weights, AirStudy.FifteenMinutes, AirStudy.FifteenMinutes * study.RoomVolume);
        WorkingStep shift = new("air changes that hold the 8-hour index at 1, found by trial", "λ_8h", Expression.Quantity("λ_8h", day, Measure.AirChanges), day, Measure.AirChanges, Sizing);
        WorkingStep brief = new("air changes that hold the short-term index at 1, found by trial", "λ_15", Expression.Quantity("λ_15", quarter, Measure.AirChanges), quarter, Measure.AirChanges, Sizing);
        Expression mixing = Expression.Quantity("K", study.Exhaust.MixingFactor, Measure.Number);
        return new Workings("Airflow for exposure",
        [
            shift,
            brief,
            new("airflow for mixture indices of 1", "Q_1", FanFlow(study, Expression.Max(shift.Result(), brief.Result()), mixing), study.AirflowForExposureIndex!.Value.CubicMetersPerSecond, Measure.Airflow, Sizing),
        ]);
    }

    // Per coat the volume of air that its vapour can bring to the limits.
    private static Expression[] Weights(AirStudy study, AirIndex index, Expression molarVolume, string limitSymbol, Source source, List<WorkingStep> steps)
    {
        Expression[] terms = new Expression[study.Load.Terms.Length];
        for (int i = 0; i < terms.Length; i++)
        {
            List<Expression> sum = [];
            for (int j = 0; j < study.Load.Solvents.Length; j++)
            {
                Solvent solvent = study.Load.Solvents[j];
                double mass = study.Load.Masses(j)[i];
                if (mass > 0 && index.Limits[j] is double limit)
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

    private static Expression Moment(AirStudy study, Expression[] terms, double? at, List<WorkingStep> steps)
    {
        if (at is not double time)
        {
            return Expression.Sum(Present(terms));
        }

        steps.Add(new("time of the peak", "t", Expression.Quantity("t", time, Measure.Minutes), time, Measure.Minutes, Located));
        return CoatTerms.Moment(study, terms, study.Shapes.Answers, study.Changes, "λ", time, steps);
    }

    private static Expression Window(AirStudy study, Expression[] terms, double? end, double window, double over, List<WorkingStep> steps)
    {
        Expression spread = Expression.Quantity("T_avg", over, Measure.Hours);
        if (end is not double to)
        {
            return Expression.Sum(Present(terms)) * Expression.Quantity("T_w", window, Measure.Hours) / (Volume(study) * spread);
        }

        WorkingStep last = new("end of the worst window", "t_b", Expression.Quantity("t_b", to, Measure.Minutes), to, Measure.Minutes, Located);
        WorkingStep first = new("its beginning", "t_a", last.Result() - Expression.Quantity("T_w", window, Measure.Minutes), to - window, Measure.Minutes, Located);
        steps.Add(last);
        steps.Add(first);
        return CoatTerms.Dose(study, terms, to - window, to, steps) / (Volume(study) * spread);
    }

    private static List<Expression> Present(Expression[] terms)
    {
        List<Expression> present = [];
        foreach (Expression? term in terms)
        {
            if (term is not null)
            {
                present.Add(term);
            }
        }

        return present;
    }

    private static Expression FanFlow(AirStudy study, Expression changes, Expression mixing) =>
        Expression.Max((changes * Volume(study) * mixing) - Infiltration(study), Expression.Number(0));

    private static Expression Infiltration(AirStudy study) => Expression.Quantity("Q_inf", study.Room.Infiltration.CubicMetersPerSecond, Measure.Airflow);

    private static Expression Volume(AirStudy study) => Expression.Quantity("V", study.RoomVolume, Measure.RoomVolume);

    private static string Number(int coat) => (coat + 1).ToString(CultureInfo.InvariantCulture);
}
