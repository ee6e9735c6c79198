using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// What one person breathes along a day in one or several rooms, as averages over eight hours: the time integral of each room's
/// concentration over each stay, added up and divided by eight hours, 29 CFR 1910.1000(d)(1)(i). Time outside the stays counts as clean
/// air.
/// </summary>
/// <remarks>
/// The concentration is that of the well-mixed room: beside the gun it is higher, and nothing here counts a respirator. An eight-hour
/// average says nothing about short peaks; for those see <see cref="AirStudy.ShortTermLimit"/> and the peaks of each room.
/// </remarks>
/// <example><code>
/// // the study of AirStudy
/// RoomStay spraying = new(study, TimeSpan.Zero, TimeSpan.FromMinutes(20));
/// PersonExposure sprayer = new("sprayer", [spraying], LimitSets.Default);
/// LimitComparison strictest = sprayer.StrictestLimit;
/// </code></example>
public sealed class PersonExposure
{
    private readonly PersonAir air;

    /// <summary>Adds up what a person breathes.</summary>
    /// <param name="person">Who it is, such as "sprayer".</param>
    /// <param name="stays">
    /// The stays of one day, in any order. The studies of several rooms count their time from the same zero. Without stays nothing is
    /// breathed.
    /// </param>
    /// <param name="limits">The limits to compare with; those other than eight-hour averages are left aside.</param>
    /// <exception cref="ArgumentException"><paramref name="person"/> is empty, or a list holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A stay begins before another ends, or more than 24 h lie between the first entry and the last leaving.
    /// </exception>
    public PersonExposure(string person, IReadOnlyList<RoomStay> stays, LimitSet limits)
    {
        Person = Guard.Named(person);
        Stays = Guard.List(stays);
        Limits = LimitSet.Checked(limits, nameof(limits));
        RoomStay[] ordered = [.. Stays.OrderBy(stay => stay.From)];
        for (int i = 1; i < ordered.Length; i++)
        {
            Guard.Rule(
                ordered[i].From >= ordered[i - 1].Until, nameof(stays), ordered[i].From.TotalSeconds, Measure.Hours,
                "stays of which none begins before the one before it ends, here ", ordered[i - 1].Until.TotalSeconds);
        }

        if (ordered.Length > 0)
        {
            double day = (ordered[ordered.Length - 1].Until - ordered[0].From).TotalSeconds;
            Guard.Rule(
                day <= 24 * 3600, nameof(stays), day, Measure.Hours,
                "stays of one day, at most 24 h from the first entry to the last leaving");
        }

        air = new PersonAir(ordered);
    }

    /// <summary>Who it is.</summary>
    public string Person { get; }

    /// <summary>Where and when the person is.</summary>
    public IReadOnlyList<RoomStay> Stays { get; }

    /// <summary>The limits compared with.</summary>
    public LimitSet Limits { get; }

    /// <summary>
    /// The eight-hour average of each substance breathed against each of its eight-hour limits, by volume; one that cannot be judged where
    /// there is none. Empty when nothing is breathed.
    /// </summary>
    public IReadOnlyList<ExposureComparison> Exposure => field ??= Compare();

    /// <summary>
    /// The mixture index of the eight-hour averages over the lowest limit of the set for each substance against 1, 29 CFR
    /// 1910.1000(d)(2)(i); 0 when nothing is breathed. Cannot be judged when a substance breathed has no limit in the set, unless the
    /// others alone pass 1.
    /// </summary>
    public LimitComparison StrictestLimit => field ??= Mixture();

    /// <summary>How the averages and, where every limit is known, the indices follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        List<Workings> parts = [.. air.Parts()];
        double?[] lowest = Lowest();
        if (lowest.All(limit => limit is not null))
        {
            parts.Add(Trace.Of("Mixture index, lowest limits of the set", t => air.Index(lowest, t)));
        }

        return new Workings("What " + Person + " breathes", [], parts);
    }

    /// <summary>The person and the index over the lowest limits.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => StrictestLimit.ToString();

    private double?[] Lowest() => ExposureComparisons.Lowest(air.Solvents, Limits, ExposureLimitKind.Twa8h);

    private LimitComparison Mixture()
    {
        double?[] lowest = Lowest();
        string subject = "mixture index of 8-hour averages (" + Limits.Name + ")";
        double index = air.Index(lowest).Value;
        bool whole = lowest.All(limit => limit is not null);
        return MixtureIndex.Compare(Person + ": " + subject, index, whole, AirStudy.ScreeningDigits) with { Whose = Limits.Whose };
    }

    private ValueList<ExposureComparison> Compare()
    {
        List<ExposureComparison> comparisons = [];
        for (int j = 0; j < air.Solvents.Length; j++)
        {
            Solvent solvent = air.Solvents[j];
            if (solvent.IsWater)
            {
                continue;
            }

            double average = air.Fraction(j);
            int known = comparisons.Count;
            foreach (ExposureLimit limit in Limits.Exposure)
            {
                if (limit.Kind == ExposureLimitKind.Twa8h
                    && string.Equals(limit.CasNumber, solvent.CasNumber, StringComparison.Ordinal)
                    && limit.VolumeFractionOf(solvent.MolarMass)?.DecimalFractions is double fraction)
                {
                    comparisons.Add(new ExposureComparison(solvent, limit, ExposureComparisons.Compare(
                        Person + ": " + solvent.Name + ", 8-hour average, " + limit.Authority, average, fraction, limit.Source, limit.Whose,
                        average > fraction
                            ? "breathing protection by the employer's programme; less time in the room; less solvent at a time" : null)));
                }
            }

            if (comparisons.Count == known)
            {
                comparisons.Add(ExposureComparisons.Unlimited(Person + ": ", solvent, average, Limits));
            }
        }

        return new ValueList<ExposureComparison>(comparisons);
    }
}
