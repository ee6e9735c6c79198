using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>
/// The limits that a shop works under or compares with, as one set of data: exposure, flammability, volatile organic compounds, slip and
/// noise, each with whose it is, where it holds and as of when. <see cref="LimitSets"/> has some to choose from; two are joined, gaps of
/// one are filled from another, or a set is made from scratch.
/// </summary>
/// <remarks>
/// A set says what is compared, not what is lawful: which rules bind a job, the employer and the authority decide. What a set has no limit
/// for "cannot be judged".
/// </remarks>
/// <example><code>
/// LimitSet strict = LimitSets.Osha.JoinedWith(LimitSets.Niosh);            // of each substance and kind the lower one counts
/// LimitSet filled = LimitSets.Osha.FilledFrom(LimitSets.EuropeanUnion);    // European only where OSHA has none
/// string name = filled.Name;   // "OSHA, filled from European Union"
/// </code></example>
public sealed record LimitSet
{
    /// <summary>Registry number under which limits for the mist of polyisocyanates stand: polymers of hexamethylene diisocyanate.</summary>
    internal const string Polyisocyanates = "28182-81-2";

    /// <summary>Identifier of the set, without a slash.</summary>
    /// <exception cref="ArgumentException">Empty, or with a slash.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>Whose limits they are, as comparisons tell it.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>Where they hold.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Jurisdiction { get; init => field = Guard.Named(value); }

    /// <summary>As of when the set was put together, as text; each limit has its own date beside it.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string AsOf { get; init => field = Guard.Named(value); }

    /// <summary>
    /// Limits for what is breathed; none unless given. Of several for one substance and kind the lowest counts. A limit for the mist of
    /// polyisocyanates is one by mass for 28182-81-2.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<ExposureLimit> Exposure { get; init => field = Guard.List(value); }
    = ValueList<ExposureLimit>.Empty;

    /// <summary>
    /// How much of its lower flammable limit vapour may reach; <see langword="null"/>, unless given, for
    /// <see cref="FlammableShare.Quarter"/>, whose name comparisons then tell.
    /// </summary>
    public FlammableShare? Flammable { get; init; }

    /// <summary>
    /// The line to design for, at most <see cref="Flammable"/>: until vapour is below it nobody without supplied air is let in;
    /// <see langword="null"/>, unless given, for <see cref="FlammableShare.Tenth"/>, or for <see cref="Flammable"/> where that is less.
    /// </summary>
    public FlammableShare? FlammableDesign { get; init; }

    /// <summary>Limits on volatile organic compounds, all of which a product has to keep; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<VocLimit> Voc { get; init => field = Guard.List(value); }
    = ValueList<VocLimit>.Empty;

    /// <summary>What a floor that is to grip is measured against when it is finished; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<SlipClass> Slip { get; init => field = Guard.List(value); }
    = ValueList<SlipClass>.Empty;

    /// <summary>Limits and action values on a person's daily noise; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">One counts only noise that is above its own criterion level.</exception>
    public IReadOnlyList<NoiseLimit> Noise { get; init => field = new ValueList<NoiseLimit>(Guard.List(value).Select(NoiseLimit.Checked)); }
    = ValueList<NoiseLimit>.Empty;

    /// <summary>
    /// The limit for the mist of polyisocyanates while it is sprayed: the lowest by mass for 28182-81-2 that is not an average over eight
    /// hours, or that average where there is no other; <see langword="null"/> where the set has none.
    /// </summary>
    public ExposureLimit? PolyisocyanateMist => Exposure
        .Where(limit => limit.CasNumber == Polyisocyanates && limit.MassConcentration is not null)
        .OrderBy(limit => limit.Kind == ExposureLimitKind.Twa8h ? 1 : 0)
        .ThenBy(limit => limit.MassConcentration!.Value.KilogramsPerCubicMeter)
        .FirstOrDefault();

    /// <summary>All that both have: of each substance and kind the stricter counts, and each limit keeps its name.</summary>
    /// <param name="other">The other set.</param>
    /// <returns>A set under both names.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is missing.</exception>
    public LimitSet JoinedWith(LimitSet other)
    {
        Guard.NotNull(other);
        FlammableShare? flammable = Flammable is null && other.Flammable is null
            ? null
            : FlammableShare.Stricter(FlammableLine, other.FlammableLine);
        return new LimitSet
        {
            Id = Id + "-and-" + other.Id,
            Name = Name + " and " + other.Name,
            Jurisdiction = Either(Jurisdiction, other.Jurisdiction),
            AsOf = Either(AsOf, other.AsOf),
            Exposure = [.. Exposure.Concat(other.Exposure).Distinct()],
            Flammable = flammable,
            FlammableDesign = Within(FlammableShare.Stricter(FlammableDesign, other.FlammableDesign), flammable),
            Voc = [.. Voc.Concat(other.Voc).Distinct()],
            Slip = [.. Slip.Concat(other.Slip).Distinct()],
            Noise = [.. Noise.Concat(other.Noise).Distinct()],
        };
    }

    /// <summary>This set, and another's limits only for substances and subjects for which this one has none at all.</summary>
    /// <param name="other">The set that fills the gaps.</param>
    /// <returns>A set whose name says so.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is missing.</exception>
    public LimitSet FilledFrom(LimitSet other)
    {
        HashSet<string> known = new(
            Exposure.Where(limit =>
                limit.Kind != ExposureLimitKind.Idlh && (limit.VolumeFraction is not null || limit.MassConcentration is not null))
                .Select(limit => limit.CasNumber),
            StringComparer.Ordinal);
        Guard.NotNull(other);
        return this with
        {
            Id = Id + "-filled-from-" + other.Id,
            Name = Name + ", filled from " + other.Name,
            Jurisdiction = Either(Jurisdiction, other.Jurisdiction),
            AsOf = Either(AsOf, other.AsOf),
            Exposure = [.. Exposure, .. other.Exposure.Where(limit => !known.Contains(limit.CasNumber))],
            Flammable = Flammable ?? other.Flammable,
            FlammableDesign = Within(FlammableDesign ?? (Flammable is null ? other.FlammableDesign : null), Flammable ?? other.Flammable),
            Voc = Voc.Count > 0 ? Voc : other.Voc,
            Slip = Slip.Count > 0 ? Slip : other.Slip,
            Noise = Noise.Count > 0 ? Noise : other.Noise,
        };
    }

    /// <summary>Name, place and date.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Whose;

    internal string Whose => Whom.Of(Name, Jurisdiction, AsOf);

    internal FlammableShare FlammableLine => Flammable ?? FlammableShare.Quarter;

    internal FlammableShare FlammableDesignLine => FlammableDesign ?? FlammableShare.Stricter(FlammableLine, FlammableShare.Tenth)!;

    /// <summary>Refuses a design line above the limit.</summary>
    internal static LimitSet Checked(LimitSet? limits, string name)
    {
        Guard.NotNull(limits, name);
        double design = limits!.FlammableDesignLine.Fraction;
        double share = limits.FlammableLine.Fraction;
        Guard.Rule(design <= share, name, design, Measure.Percent, "a design line of at most the flammable share, ", share);
        return limits;
    }

    // A design line of one set may lie above the share of another: then there is none of its own.
    private static FlammableShare? Within(FlammableShare? design, FlammableShare? share) =>
        design is not null && design.Fraction > (share ?? FlammableShare.Quarter).Fraction ? null : design;

    private static string Either(string one, string other) => one == other ? one : one + "; " + other;
}
