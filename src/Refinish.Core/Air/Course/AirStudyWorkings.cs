using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Refinish.Air;

/// <summary>The derivation of a study: the room, the coats, each substance, the mixture, the airflow.</summary>
internal static class AirStudyWorkings
{
    internal static readonly Source LeChatelier = Source.Derived("Le Chatelier's rule: each vapour's fraction of its own limit, added up");
    private static readonly Source Sizing = Source.Derived("mixing factor times the fresh air that gives the air changes, less what infiltrates");

    public static Workings Of(AirStudy study)
    {
        TermFormulas formulas = new(study.Load, study.Shapes.Answers, study.Changes, "λ", string.Empty, true);
        AirPlace room = new AirPlace.WholeRoom(study, formulas);
        List<Workings> parts = [AirChanges(study), .. study.Load.Merged.Select(careful => careful.Workings())];
        if (study.Changes > 0)
        {
            parts.AddRange(formulas.Parts());
        }

        for (int j = 0; j < study.Substances.Count; j++)
        {
            parts.Add(SubstanceWorkings.Of(study, j, study.Substances[j], room, string.Empty));
        }

        if (study.Room.AirTemperature is Temperature temperature)
        {
            foreach (SubstanceAir air in study.Substances)
            {
                parts.Add(new SaturatedVapour(air.Solvent, temperature, study.Room.AirPressure, study.VapourPressures).Workings());
            }
        }

        if (study.Flammability.IsWhole)
        {
            parts.Add(Flammability(study, room));
        }

        if (study.Strictest.IsWhole)
        {
            parts.Add(new Workings("Mixture index, lowest limits of the set",
                Index(room, study, study.Strictest, study.Strictest.AverageMaximum, "mixture index, lowest limits of the set", "Em_low",
                study.ShiftSeconds, AirStudy.EightHours)));
        }

        if (!study.ShortTerm.IsEmpty)
        {
            parts.Add(new Workings("Mixture index, short-term limits", Index(room, study, study.ShortTerm, study.ShortTerm.AverageMaximum, "mixture index, short-term limits", "Em_15", AirStudy.FifteenMinutes, AirStudy.FifteenMinutes)));
        }

        if (study.Strictest.IsWhole)
        {
            parts.Add(ExposureAirflow(study));
        }

        return new Workings("Air of the room", [], parts);
    }

    public static Workings AirChanges(AirStudy study)
    {
        Expression fan = Expression.Quantity("Q", study.Exhaust.EffectiveFlow.CubicMetersPerSecond, Measure.Airflow);
        Expression mixing = Expression.Quantity("K", study.Exhaust.MixingFactor, Measure.Number);
        WorkingStep fresh = new("fresh air that counts, with infiltration", "F", (fan + Infiltration(study)) / mixing, study.FreshAirFlow.CubicMetersPerSecond, Measure.Airflow, Exhaust.Mixing);
        return new Workings(
            "Air changes",
            [fresh, new("air changes that count", "λ", fresh.Result() / Volume(study), study.Changes, Measure.AirChanges, TermFormulas.Box)],
            [study.Room.Workings(), study.Exhaust.Workings()]);
    }

    /// <summary>Per term the volume of air that its vapour can bring to the lower flammable limit.</summary>
    public static Expression[] FlammabilityWeights(AirStudy study, List<WorkingStep> steps)
    {
        AirIndex index = study.Flammability;
        Expression pressure = Expression.Quantity("p", study.Room.AirPressure.Pascals, Measure.Pressure);
        WorkingStep molar = new(
            "molar volume at the room's pressure, at 25 °C or warmer",
            "V_m",
            Expression.Quantity("V_m0", AirKernel.MolarVolume, Measure.MolarVolume)
                * Expression.Quantity("p_0", AirKernel.StandardPressure, Measure.Pressure) / pressure * Expression.Quantity("T/T_0",
                    AirKernel.Warmth(study.Room), Measure.Number),
            index.MolarVolume,
            Measure.MolarVolume,
            SubstanceWorkings.GasLaw);
        steps.Add(molar);
        return SubstanceWorkings.Weights(study, index, molar.Result(), "LFL", LeChatelier, steps);
    }

    private static Workings Flammability(AirStudy study, AirPlace room)
    {
        AirIndex index = study.Flammability;
        List<WorkingStep> steps = [];
        Expression[] terms = FlammabilityWeights(study, steps);
        steps.Add(new("peak of the sum of fractions", "Φ_peak", room.Moment(terms, index.PeakAt, steps), index.Peak, Measure.Percent, LeChatelier));

        Expression mixing = Expression.Quantity("K", study.Exhaust.MixingFactor, Measure.Number);
        Expression quarter = Expression.Quantity("q", study.ShareAllowed, Measure.Percent);
        double changes = AirSizing.ForPeak(study.Load, index.Weights, study.ShareAllowed * study.RoomVolume);
        if (changes > 0)
        {
            RoomHistory.Peak(new RoomPath(new RoomGrid(study.Load.Timeline, changes, 0), index.Weights), out double at);
            TermAnswers answers = new(study.Load.Timeline, changes);
            Expression needed = Expression.Quantity("λ_q", changes, Measure.AirChanges);
            steps.Add(new("air changes that hold the peak at the share allowed, found by trial", "λ_q", needed, changes,
                Measure.AirChanges, Sizing));
            Expression held = new TermFormulas(study.Load, answers, changes, "λ_q", "q", false).Moment(terms, at, steps) / Volume(study);
            steps.Add(new("check: the peak at those air changes", "Φ_q", held, AirLoad.Sum(index.Weights, answers, at) / study.RoomVolume, Measure.Percent, LeChatelier));
            steps.Add(new("airflow for the share of the flammable limit allowed", "Q_q", FanFlow(study, needed, mixing),
                study.AirflowForFlammableLimit!.Value.CubicMetersPerSecond, Measure.Airflow, Sizing));
        }
        else
        {
            steps.Add(new("airflow for the share of the flammable limit allowed: none is needed", "Q_q", Expression.Number(0), 0,
                Measure.Airflow, Sizing));
        }

        double release = AirSizing.GreatestRelease(study.Load, index.Weights);
        WorkingStep greatest = new("air brought to its limit per time, all flashing", "G", Release(study, terms, index.Weights, release), release, Measure.Airflow, LeChatelier);
        steps.Add(greatest);
        steps.Add(new("steady airflow for the share of the flammable limit allowed", "Q_steady",
            Expression.Max((greatest.Result() / quarter * mixing) - Infiltration(study), Expression.Number(0)),
            study.SteadyAirflowForFlammableLimit!.Value.CubicMetersPerSecond, Measure.Airflow, Sizing));
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

    public static List<WorkingStep> Index(AirPlace room, AirStudy study, AirIndex index, AirMaximum maximum, string name, string symbol, double window, double over)
    {
        List<WorkingStep> steps = [];
        Expression molar = Expression.Quantity("V_m", index.MolarVolume, Measure.MolarVolume);
        Expression[] terms = SubstanceWorkings.Weights(study, index, molar, "L", AirStudy.Additive, steps);
        Expression average = room.Window(terms, maximum.At, window, over, steps);
        steps.Add(new(name, symbol, average, maximum.Value, Measure.Number, AirStudy.Additive));
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

    private static Expression FanFlow(AirStudy study, Expression changes, Expression mixing) =>
        Expression.Max((changes * Volume(study) * mixing) - Infiltration(study), Expression.Number(0));

    private static Expression Infiltration(AirStudy study) => Expression.Quantity("Q_inf", study.Room.Infiltration.CubicMetersPerSecond, Measure.Airflow);

    private static Expression Volume(AirStudy study) => Expression.Quantity("V", study.RoomVolume, Measure.RoomVolume);

    private static string Number(int coat) => (coat + 1).ToString(CultureInfo.InvariantCulture);
}
