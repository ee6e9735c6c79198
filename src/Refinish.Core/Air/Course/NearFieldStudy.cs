using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// The same room in two zones: everything is released into the near field, where the person works, and passes from there to the rest of the
/// room, which the fresh air flushes. What is breathed over the tub is the near field's; the well-mixed room says less.
/// </summary>
/// <remarks>
/// Linear, solved exactly: the 2×2 system has two rates, and each zone is a sum of two one-box rooms (<see cref="AirStudy"/>), so peaks and
/// averages are located in closed form as there. The exhaust's mixing factor is kept; where the near field is the only unevenness, give the
/// exhaust a mixing factor of 1. A fan that draws straight from the near field is better than this.
/// </remarks>
/// <example><code>
/// // the study of AirStudy
/// NearField near = NearField.Box(Length.FromMeters(1.5), Length.FromMeters(0.75), Length.FromMeters(0.8), Speed.FromMetersPerSecond(0.1));
/// NearFieldStudy zones = new(study, near);
/// double there = zones.Substances[0].Near.FifteenMinuteAverage.PartsPerMillion;
/// </code></example>
public sealed class NearFieldStudy
{
    /// <summary>Divides a study's room.</summary>
    /// <param name="study">The room, its exhaust and its emissions.</param>
    /// <param name="nearField">The air around the source; at most half of the room.</param>
    /// <exception cref="ArgumentOutOfRangeException">The near field is larger than half of the room.</exception>
    public NearFieldStudy(AirStudy study, NearField nearField)
    {
        Study = Guard.NotNull(study);
        NearField = Guard.NotNull(nearField);
        double volume = nearField.Volume.CubicMeters;
        Guard.Rule(volume <= study.RoomVolume / 2, nameof(nearField), volume, Measure.RoomVolume, "at most half of the room, ", study.RoomVolume / 2);
        Zones = new Zones(study, nearField);
    }

    /// <summary>The room, its exhaust and its emissions.</summary>
    public AirStudy Study { get; }

    /// <summary>The air around the source.</summary>
    public NearField NearField { get; }

    /// <summary>The rest of the room.</summary>
    public Volume FarVolume => Volume.FromCubicMeters(Zones.FarVolume().Value);

    /// <summary>Each substance in both zones.</summary>
    public IReadOnlyList<ZoneAir> Substances => field ??= new ValueList<ZoneAir>(
        Enumerable.Range(0, Study.Load.Solvents.Length).Select(i =>
            new ZoneAir(new SubstanceAir(Study, i, Zones.Near), new SubstanceAir(Study, i, Zones.Far))));

    /// <summary>Each substance of the near field against each limit known for it; one that cannot be judged where there is none.</summary>
    public IReadOnlyList<ExposureComparison> Exposure => field ??= ExposureComparisons.Of([.. Substances.Select(air => air.Near)], Study.Limits);

    /// <summary>
    /// The largest fraction of the lower flammable limit in the near field; <see langword="null"/> when a limit is not known.
    /// </summary>
    public Ratio? PeakFlammableFraction => Study.Flammability.IsWhole ? Ratio.FromDecimalFractions(FlammablePeak.Value) : null;

    /// <summary>
    /// That against the share that the study's limits allow. Cannot be judged when a limit is not known, unless the others alone pass it.
    /// </summary>
    public LimitComparison FlammableLimit => AirStudy.FlammableAgainst(
        Study.Limits.FlammableLine, "peak of the vapour in the near field, of its lower flammable limit" + Study.FlammableOf,
        FlammablePeak.Value, Study.Flammability.IsWhole, "draw the air off where it is sprayed, less coating at a time") with
    {
        Digits = AirStudy.ScreeningDigits,
        GoodToFactor = AirStudy.BoxFactor,
    };

    /// <summary>
    /// The mixture index of the near field's worst fifteen minutes over the lowest short-term limit of the set for each substance; those
    /// without one are left out, <see langword="null"/> when none has one.
    /// </summary>
    public double? ShortTermIndex => Study.ShortTerm.IsEmpty ? null : ShortTermMaximum.Value;

    /// <summary>
    /// The mixture index of the near field's eight-hour averages over the lowest limit of the set for each substance;
    /// <see langword="null"/> when a substance has none.
    /// </summary>
    public double? StrictestIndex => Study.Strictest.IsWhole ? StrictestMaximum.Value : null;

    /// <summary>What to warn of: the study's, which hold here the more.</summary>
    public IReadOnlyList<Caution> Cautions
    {
        get
        {
            List<Caution> cautions = [.. Study.Cautions];
            if (FlammableLimit.Outcome == ComparisonOutcome.Beyond && !cautions.Contains(Refinish.Cautions.Flammable))
            {
                cautions.Insert(0, Refinish.Cautions.Flammable);
            }

            if (!cautions.Contains(Refinish.Cautions.ImmediatelyDangerous) && Exposure.Any(ExposureComparisons.IsImmediatelyDangerous))
            {
                cautions.Insert(0, Refinish.Cautions.ImmediatelyDangerous);
            }

            return new ValueList<Caution>(cautions);
        }
    }

    internal Zones Zones { get; }

    private AirMaximum FlammablePeak => field ??= Zones.Near.Largest(Study.Flammability.Weights);

    private AirMaximum ShortTermMaximum => field ??= Study.ShortTerm.AverageIn(Zones.Near);

    private AirMaximum StrictestMaximum => field ??= Study.Strictest.AverageIn(Zones.Near);

    /// <summary>The concentration in the near field at a time.</summary>
    /// <param name="solvent">A substance of the study, known by its registry number.</param>
    /// <param name="time">From the start of the study, 0 to 400 years and 60 days.</param>
    /// <returns>Mass in the volume of air.</returns>
    /// <exception cref="ArgumentException"><paramref name="solvent"/> is not released in the study.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is outside its range.</exception>
    public MassConcentration NearConcentrationAt(Solvent solvent, TimeSpan time) => At(Zones.Near, solvent, time);

    /// <summary>The concentration in the rest of the room at a time.</summary>
    /// <param name="solvent">A substance of the study, known by its registry number.</param>
    /// <param name="time">From the start of the study, 0 to 400 years and 60 days.</param>
    /// <returns>Mass in the volume of air.</returns>
    /// <exception cref="ArgumentException"><paramref name="solvent"/> is not released in the study.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is outside its range.</exception>
    public MassConcentration FarConcentrationAt(Solvent solvent, TimeSpan time) => At(Zones.Far, solvent, time);

    /// <summary>Where a substance is at a time: film, air of both zones, gone.</summary>
    /// <param name="solvent">A substance of the study, known by its registry number.</param>
    /// <param name="time">From the start of the study, 0 to 400 years and 60 days.</param>
    /// <returns>The masses.</returns>
    /// <exception cref="ArgumentException"><paramref name="solvent"/> is not released in the study.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is outside its range.</exception>
    public MassBalance BalanceAt(Solvent solvent, TimeSpan time)
    {
        double seconds = AirStudy.Time(time, nameof(time));
        if (Study.Load.IndexOfKept(Guard.NotNull(solvent).CasNumber) >= 0)
        {
            return Study.BalanceAt(solvent, time);
        }

        double[] masses = Study.Load.Masses(Study.Known(solvent));
        return Study.Load.Balance(
            masses, seconds,
            ((NearField.Volume.CubicMeters * Zones.Near.At(masses, seconds)) + (Zones.FarVolume() * Zones.Far.At(masses, seconds))).Value,
            (Study.FreshAirFlow.CubicMetersPerSecond * Zones.Far.Dose(masses, 0, seconds)).Value);
    }

    /// <summary>How every number of both zones follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        List<Workings> parts =
        [
            Study.AirChangesWorkings(),
            .. Study.Load.Merged.Select(careful => careful.Workings()),
            NearField.Workings(),
            Zones.Workings(),
            .. Zones.FastAnswers.Parts(),
            .. Zones.SlowAnswers.Parts(),
            .. Substances.SelectMany(air => (Workings[])
                [air.Near.Workings(Study, Zones.Near, ", near field"), air.Far.Workings(Study, Zones.Far, ", rest of the room")]),
        ];
        if (Study.Flammability.IsWhole)
        {
            parts.Add(Trace.Of("Flammability, near field", t => t.Step(
                "peak of the sum of fractions, near field", "Φ_N", Measure.Percent, AirStudy.LeChatelier,
                Zones.Near.Moment(Study.Flammability.Brought(t), FlammablePeak.At, t))));
        }

        if (Study.Strictest.IsWhole)
        {
            parts.Add(Study.Strictest.Workings(
                "Mixture index, lowest limits of the set, near field", "mixture index, lowest limits known, near field", "Em_N",
                Zones.Near, StrictestMaximum));
        }

        if (!Study.ShortTerm.IsEmpty)
        {
            parts.Add(Study.ShortTerm.Workings(
                "Mixture index, short-term limits, near field", "mixture index, short-term limits, near field", "Em_N15",
                Zones.Near, ShortTermMaximum));
        }

        return new Workings("Air of the near field and the room", [], parts);
    }

    /// <summary>The near field's peak against the flammable limit, or that it cannot be judged.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => FlammableLimit.ToString();

    private MassConcentration At(AirPlace zone, Solvent solvent, TimeSpan time) => MassConcentration.FromKilogramsPerCubicMeter(
        zone.At(Study.Load.Masses(Study.Known(solvent)), AirStudy.Time(time, nameof(time))).Value);
}
