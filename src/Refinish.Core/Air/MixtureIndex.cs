using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Air;

/// <summary>
/// Several vapours measured in the same air, added up as parts of their limits: E_m = C_1/L_1 + C_2/L_2 + …, 29 CFR 1910.1000(d)(2)(i).
/// Above 1 the mixture is beyond what is allowed, even where each substance alone is within its limit.
/// </summary>
/// <remarks>
/// The regulation adds all of them. The American Conference of Governmental Industrial Hygienists adds those with a like effect on the
/// body (from memory); which those are is for an industrial hygienist. All readings are of one kind: an average over eight hours is not
/// added to one over fifteen minutes.
/// </remarks>
/// <example><code>
/// ExposureLimit Osha(string cas) =&gt; PublishedLimits.All.First(one =&gt; one.CasNumber == cas
///     &amp;&amp; one.Authority == "OSHA PEL" &amp;&amp; one.Kind == ExposureLimitKind.Twa8h);
/// MixtureIndex air = new(
/// [
///     new(Osha(Solvents.Acetone.CasNumber), Ratio.FromPartsPerMillion(400)),
///     new(Osha(Solvents.ButylAcetate.CasNumber), Ratio.FromPartsPerMillion(90)),
/// ]);
/// double? index = air.Value;      // 1 = 400/1000 + 90/150
/// </code></example>
public sealed record MixtureIndex
{
    private readonly ValueList<ExposureReading> readings;
    private readonly bool isWhole = true;

    /// <summary>Adds up readings.</summary>
    /// <param name="readings">At least one, one for each substance, their limits all of one kind.</param>
    /// <exception cref="ArgumentException">
    /// There is no reading, a substance comes twice, two limits are of different kinds, or a limit is of a kind that the rule does not add:
    /// <see cref="ExposureLimitKind.Idlh"/> and <see cref="ExposureLimitKind.BriefPeak"/>.
    /// </exception>
    public MixtureIndex(IReadOnlyList<ExposureReading> readings)
    {
        this.readings = Guard.List(readings, 1);
        HashSet<string> known = new(StringComparer.Ordinal);
        foreach (ExposureReading reading in this.readings)
        {
            isWhole &= reading.LimitValue is not null;
            if (!known.Add(reading.CasNumber))
            {
                throw new ArgumentException("readings has " + reading.Substance + " twice; allowed: one reading for each substance.",
                    nameof(readings));
            }

            if (reading.Limit is ExposureLimit limit)
            {
                Kind ??= limit.Kind;
                Check(limit, Kind.Value, nameof(readings));
            }
        }
    }

    /// <summary>One reading for each substance, in the order given.</summary>
    public IReadOnlyList<ExposureReading> Readings => readings;

    /// <summary>Over which time the limits are meant; <see langword="null"/> when no reading has a limit.</summary>
    public ExposureLimitKind? Kind { get; }

    /// <summary>The index; <see langword="null"/> when a substance has no limit.</summary>
    public double? Value => isWhole ? Sum().Value : null;

    /// <summary>
    /// The index against 1, with whose limits it was taken over. It cannot be judged when a substance has no limit, unless the others alone
    /// pass 1.
    /// </summary>
    public LimitComparison Comparison => Compare("mixture index of the readings" + Over, Sum().Value, isWhole, 4);

    /// <summary>What to warn of.</summary>
    public IReadOnlyList<Caution> Cautions => new ValueList<Caution>(
        isWhole ? [Refinish.Cautions.ReadingIsAMoment] : [Refinish.Cautions.LimitUnknown, Refinish.Cautions.ReadingIsAMoment]);

    private string Over => readings.Any(reading => reading.Limit is not null)
        ? " over " + string.Join(" and ",
            readings.Select(reading => reading.Limit?.Authority).OfType<string>().Distinct(StringComparer.Ordinal))
        : string.Empty;

    // What has no limit is left out.
    private Num Sum(Trace? t = null) => t.Step(
        isWhole ? "mixture index" : "mixture index of those with a limit", "E_m", Measure.Number, AirStudy.Additive,
        Num.Sum(readings, t, static (reading, i, t) => reading.LimitValue is null ? 0 : t is null ? reading.Part(i, t) : t.Step(
            reading.Substance + ", of its limit", "E_" + Figures.Fixed(i + 1, 0), Measure.Number, AirStudy.Additive, reading.Part(i, t))));

    /// <summary>How the index follows.</summary>
    /// <returns>The derivation; without steps when no reading has a limit.</returns>
    public Workings Workings() => Trace.Of("Mixture index", readings.Any(reading => reading.OfLimit is not null) ? [Sum] : []);

    /// <summary>The index against 1.</summary>
    /// <returns>Text such as <c>mixture index of the readings over OSHA PEL: 0.925; limit at most 1; 0.075 within</c>.</returns>
    public override string ToString() => Comparison.ToString();

    /// <summary>An index of this kind against 1; it cannot be judged when a limit is missing, unless the others alone pass 1.</summary>
    internal static LimitComparison Compare(string subject, double index, bool isWhole, int digits) => new(
        isWhole ? subject : subject + ", of the substances whose limit is known", isWhole || index > 1 ? index : null, 1, LimitSense.AtMost,
        Measure.Number, AirStudy.Additive, index > 1 ? AirStudy.BreatheProtected : null)
    {
        Digits = digits,
    };

    private static void Check(ExposureLimit limit, ExposureLimitKind kind, string name)
    {
        if (limit.Kind is ExposureLimitKind.Idlh or ExposureLimitKind.BriefPeak)
        {
            throw new ArgumentException(name + " has " + limit + ", whose kind is not added up; allowed: averages and ceilings.", name);
        }

        if (limit.Kind != kind)
        {
            throw new ArgumentException(name + " has limits of different kinds; allowed: one kind, such as averages over eight hours.",
                name);
        }
    }
}
