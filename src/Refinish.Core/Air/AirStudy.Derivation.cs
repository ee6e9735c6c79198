using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Air;

/// <content>How the numbers of the study follow: the room, the coats, each substance, the mixture, the airflow that would do.</content>
public sealed partial class AirStudy
{
    private static readonly Source Sizing =
        Source.Derived("mixing factor times the fresh air that gives the air changes, less what infiltrates");

    /// <summary>How every number of this study follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        List<Workings> parts = [AirChangesWorkings(), .. Load.Merged.Select(careful => careful.Workings())];
        if (Changes > 0)
        {
            parts.AddRange(Shapes.Answers.Parts());
        }

        parts.AddRange(Substances.Select(air => air.Workings(this, Place, string.Empty)));
        if (Room.AirTemperature is Temperature temperature)
        {
            parts.AddRange(Substances.Select(air =>
                new SaturatedVapour(air.Solvent, temperature, Room.AirPressure, VapourPressures).Workings()));
        }

        if (Flammability.IsWhole)
        {
            Trace t = new();
            AgainstFlammability(t);
            parts.Add(t.Workings("Flammability"));
        }

        if (Strictest.IsWhole)
        {
            parts.Add(Strictest.Workings("Mixture index, lowest limits of the set", "mixture index, lowest limits of the set", "Em_low"));
        }

        if (!ShortTerm.IsEmpty)
        {
            parts.Add(ShortTerm.Workings("Mixture index, short-term limits", "mixture index, short-term limits", "Em_15"));
        }

        if (Strictest.IsWhole)
        {
            parts.Add(Trace.Of("Airflow for exposure", FlowForIndex));
        }

        return new Workings("Air of the room", [], parts);
    }

    internal Workings AirChangesWorkings() => Trace.Of("Air changes", [Room.Workings(), Exhaust.Workings()], FreshAir, AirChanges);

    internal Num Volume(Trace? t) => t.Given("V", RoomVolume, Measure.RoomVolume);

    private Num FreshAir(Trace? t = null) => t.Step(
        "fresh air that counts, with infiltration", "F", Measure.Airflow, Exhaust.Mixing,
        (t.Given("Q", Exhaust.EffectiveFlow.CubicMetersPerSecond, Measure.Airflow) + Infiltrated(t)) / Mixing(t));

    private Num AirChanges(Trace? t = null) =>
        t.Step("air changes that count", "λ", Measure.AirChanges, TermAnswers.Box, FreshAir(t) / Volume(t));

    private void AgainstFlammability(Trace t)
    {
        Num[] brought = Flammability.Brought(t);
        t.Step("peak of the sum of fractions", "Φ_peak", Measure.Percent, LeChatelier, Place.Moment(brought, Flammability.PeakAt, t));
        double changes = AirSizing.ForPeak(Load, Flammability.Weights, ShareAllowed * RoomVolume);
        if (changes > 0)
        {
            RoomHistory.Peak(new RoomPath(new RoomGrid(Load.Timeline, changes, 0), Flammability.Weights), out double at);
            Num needed = t.Step(
                "air changes that hold the peak at the share allowed, found by trial", "λ_q", Measure.AirChanges, Sizing,
                t.Given("λ_q", changes, Measure.AirChanges));
            t.Step(
                "check: the peak at those air changes", "Φ_q", Measure.Percent, LeChatelier,
                new TermAnswers(Load.Timeline, changes, "λ_q", "q", shown: false).Moment(brought, at, t) / Volume(t));
            t.Step("airflow for the share of the flammable limit allowed", "Q_q", Measure.Airflow, Sizing, FlowFor(needed, t));
        }
        else
        {
            t.Step("airflow for the share of the flammable limit allowed: none is needed", "Q_q", Measure.Airflow, Sizing, new Num(0));
        }

        SteadyFlow(brought, t);
    }

    /// <summary>What the exhaust has to move where nothing but the present release brings vapour, with what is left of the share.</summary>
    private Num SteadyFlow(TermWeights brought, Trace? t = null)
    {
        AirSizing.GreatestRelease(Load, Flammability.Weights, out double moment);
        Num greatest = t.Step(
            "air brought to its limit per time, all flashing", "G", Measure.Airflow, LeChatelier,
            AirSizing.ReleaseAt(Load, brought, moment, t));
        return t.Step(
            "steady airflow for the share of the flammable limit allowed", "Q_steady", Measure.Airflow, Sizing,
            AirKernel.FanFlow(greatest / t.Given("q", ShareAllowed, Measure.Percent) * Mixing(t), Infiltrated(t)));
    }

    private Num FlowForIndex(Trace? t = null)
    {
        double day = AirSizing.ForDose(Load, Strictest.Weights, shift, EightHours * RoomVolume);
        double quarter = AirSizing.ForDose(Load, ShortTerm.Weights, FifteenMinutes, FifteenMinutes * RoomVolume);
        Num first = t.Step(
            "air changes that hold the 8-hour index at 1, found by trial", "λ_8h", Measure.AirChanges, Sizing,
            t.Given("λ_8h", day, Measure.AirChanges));
        Num second = t.Step(
            "air changes that hold the short-term index at 1, found by trial", "λ_15", Measure.AirChanges, Sizing,
            t.Given("λ_15", quarter, Measure.AirChanges));
        return t.Step("airflow for mixture indices of 1", "Q_1", Measure.Airflow, Sizing, FlowFor(Num.Max(first, second), t));
    }

    private Num FlowFor(Num changes, Trace? t = null) => AirKernel.FanFlow(changes * Volume(t) * Mixing(t), Infiltrated(t));

    private Num Mixing(Trace? t) => t.Given("K", Exhaust.MixingFactor, Measure.Number);

    private Num Infiltrated(Trace? t) => t.Given("Q_inf", Room.Infiltration.CubicMetersPerSecond, Measure.Airflow);
}
