using System.Collections.Generic;
using System.Linq;

namespace Refinish.Air;

/// <summary>The derivation of a near-field study: the zones and their rates, the terms at each rate, each substance in both zones, the mixture.</summary>
internal static class NearFieldWorkings
{
    private static readonly Source TwoZones = Source.Derived("two well-mixed zones, V_N dC_N/dt = G + β (C_F − C_N), V_F dC_F/dt = β (C_N − C_F) − F C_F: eigenvalues and residues of the 2×2 system");

    public static Workings Of(NearFieldStudy study)
    {
        AirStudy air = study.Study;
        Zones zones = study.Zones;
        TermFormulas fast = new(air.Load, zones.FastAnswers, zones.Fast, "μ_1", "f", true);
        TermFormulas slow = new(air.Load, zones.SlowAnswers, zones.Slow, "μ_2", "s", true);
        List<WorkingStep> rates = [];
        AirPlace near = new AirPlace.Zone(air, fast, slow, Rate("a_N1", zones.Near.Fast), Rate("a_N2", zones.Near.Slow));
        AirPlace far = new AirPlace.Zone(air, fast, slow, Rate("a_F1", zones.Far.Fast), Rate("a_F2", zones.Far.Slow));
        Rates(study, rates);
        List<Workings> parts =
        [
            AirStudyWorkings.AirChanges(air),
            .. air.Load.Merged.Select(careful => careful.Workings()),
            study.NearField.Workings(),
            new Workings("Zones", rates),
            .. fast.Parts(),
            .. slow.Parts(),
        ];
        for (int j = 0; j < study.Substances.Count; j++)
        {
            parts.Add(SubstanceWorkings.Of(air, j, study.Substances[j].Near, near, ", near field"));
            parts.Add(SubstanceWorkings.Of(air, j, study.Substances[j].Far, far, ", rest of the room"));
        }

        if (air.Flammability.IsWhole)
        {
            List<WorkingStep> steps = [];
            Expression[] terms = AirStudyWorkings.FlammabilityWeights(air, steps);
            steps.Add(new("peak of the sum of fractions, near field", "Φ_N", near.Moment(terms, study.FlammablePeak.At, steps), study.FlammablePeak.Value, Measure.Percent, AirStudyWorkings.LeChatelier));
            parts.Add(new Workings("Flammability, near field", steps));
        }

        if (air.Strictest.IsWhole)
        {
            parts.Add(new Workings("Mixture index, lowest limits of the set, near field",
                AirStudyWorkings.Index(near, air, air.Strictest, study.StrictestMaximum, "mixture index, lowest limits known, near field",
                "Em_N", air.ShiftSeconds, AirStudy.EightHours)));
        }

        if (!air.ShortTerm.IsEmpty)
        {
            parts.Add(new Workings("Mixture index, short-term limits, near field", AirStudyWorkings.Index(near, air, air.ShortTerm, study.ShortTermMaximum, "mixture index, short-term limits, near field", "Em_N15", AirStudy.FifteenMinutes, AirStudy.FifteenMinutes)));
        }

        return new Workings("Air of the near field and the room", [], parts);
    }

    private static Expression Rate(string symbol, double value) => Expression.Quantity(symbol, value, Measure.PerRoomVolume);

    private static void Rates(NearFieldStudy study, List<WorkingStep> steps)
    {
        Zones zones = study.Zones;
        Expression room = Expression.Quantity("V", study.Study.RoomVolume, Measure.RoomVolume);
        Expression nearVolume = Expression.Quantity("V_N", study.NearField.Volume.CubicMeters, Measure.RoomVolume);
        Expression beta = Expression.Quantity("β", zones.Exchange, Measure.Airflow);
        Expression fresh = Expression.Quantity("F", study.Study.FreshAirFlow.CubicMetersPerSecond, Measure.Airflow);
        Expression farVolume = Add("rest of the room", "V_F", room - nearVolume, zones.FarVolume, Measure.RoomVolume);
        Expression p = Add("near field, exchanges", "p", beta / nearVolume, zones.P, Measure.AirChanges);
        Expression r = Add("rest of the room, exchanges", "r", beta / farVolume, zones.R, Measure.AirChanges);
        Expression q = Add("rest of the room, exchanges and fresh air", "q", (beta + fresh) / farVolume, zones.Q, Measure.AirChanges);
        Expression flushed = Add("rest of the room, fresh air", "λ_F", fresh / farVolume, zones.FarChanges, Measure.AirChanges);
        Expression fast = Add("fast rate", "μ_1", (p + q + Expression.Sqrt(((p - q) * (p - q)) + (4 * p * r))) / 2, zones.Fast, Measure.AirChanges);
        Expression slow = Add("slow rate", "μ_2", p * flushed / fast, zones.Slow, Measure.AirChanges);
        bool nearIsFaster = zones.P >= zones.Q;
        Add("near field, at the fast rate", "a_N1", (nearIsFaster ? fast - q : p * r / (fast - p)) / ((fast - slow) * nearVolume), zones.Near.Fast, Measure.PerRoomVolume);
        Add("near field, at the slow rate", "a_N2", (nearIsFaster ? p * r / (p - slow) : q - slow) / ((fast - slow) * nearVolume), zones.Near.Slow, Measure.PerRoomVolume);
        Expression c = r / ((fast - slow) * nearVolume);
        Add("rest of the room, at the fast rate", "a_F1", -c, zones.Far.Fast, Measure.PerRoomVolume);
        Add("rest of the room, at the slow rate", "a_F2", c, zones.Far.Slow, Measure.PerRoomVolume);

        Expression Add(string name, string symbol, Expression formula, double value, Measure measure)
        {
            WorkingStep step = new(name, symbol, formula, value, measure, TwoZones);
            steps.Add(step);
            return step.Result();
        }
    }
}
