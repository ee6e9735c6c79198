using System;
using System.Collections.Generic;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// A wipe that bonds the coating to glass or plastic. It leaves no measurable film; what matters is how far it goes and how soon the
/// first coat has to follow.
/// </summary>
public sealed record AdhesionPromoter
{
    private static readonly Bounds Times = Bounds.NotNegative(Measure.Minutes, 7 * 24 * 3600);

    // Invented: no wipe leaves a millimetre of liquid.
    private static readonly Bounds Rates = Bounds.Between(1000, double.PositiveInfinity, Measure.SpreadingRate);

    /// <summary>
    /// Identity by which it is found and joined; 1 to 100 characters, no '/', no control characters, no white space at either end.
    /// </summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    /// <exception cref="ArgumentException">Not an identity.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>Generic name, such as "silane wipe".</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>Area wiped per volume, losses in the cloth included; 1 m²/L or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Less.</exception>
    public required SpreadingRate SpreadingRate
    {
        get;
        init
        {
            Guard.Within(value.SquareMetersPerCubicMeter, Rates, nameof(SpreadingRate));
            field = value;
        }
    }

    /// <summary>How long it has to dry before the first coat, from the end of wiping; up to 7 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too long.</exception>
    public required TimeSpan Flash { get; init => field = Guard.Time(value, Times); }

    /// <summary>
    /// Within which the first coat has to be on, from the end of wiping to its last stroke, up to 7 days; else wipe again. Data sheets
    /// count so; one that counts from the end of drying is entered with <see cref="Flash"/> added to its figure. The place wiped first
    /// has then been open for longer, by the time that wiping takes: take that off where a data sheet counts from the wipe of each
    /// place.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too long.</exception>
    public required TimeSpan OpenTime { get; init => field = Guard.Time(value, Times); }

    /// <summary>
    /// How long a mixed or hydrolysed wipe may be used after mixing, up to 7 days; <see langword="null"/> for one that comes ready or
    /// when not stated.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too long.</exception>
    public TimeSpan? MixedLife { get; init => field = Guard.Time(value, Times); }

    /// <summary>The materials it is meant for.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required IReadOnlyList<FixtureMaterial> Materials { get; init => field = Guard.List(value); }

    /// <summary>
    /// What evaporates of it, as shares that add up to 100 %; empty when not stated, and then its vapour cannot be judged.
    /// All of what is wiped on is counted as evaporating: a wipe leaves no measurable film.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The shares do not add up to 100 % within 0.1 %.</exception>
    public IReadOnlyList<SolventShare> Solvents { get; init => field = SolventShare.Blend(value, nameof(Solvents)); }
    = ValueList<SolventShare>.Empty;

    /// <summary>Where the figures come from.</summary>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>The age of a mixed wipe against its life; it cannot be judged when no life is stated.</summary>
    /// <param name="sinceMixing">Time since mixing, 0 to 60 days.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public LimitComparison CompareAge(TimeSpan sinceMixing)
    {
        double age = Guard.Within(sinceMixing.TotalSeconds, Bounds.NotNegative(Measure.Hours, 60 * 86400), nameof(sinceMixing));
        return new(
            "age of the mixed " + Name, age, MixedLife?.TotalSeconds, LimitSense.AtMost, Measure.Hours, Source,
            age > (MixedLife?.TotalSeconds ?? double.PositiveInfinity) ? "Throw it away and mix anew." : null);
    }

    /// <summary>The time since the end of wiping against drying time and open time: the first coat goes on between the two.</summary>
    /// <param name="sinceWipe">Time since the end of wiping, 0 to 60 days.</param>
    /// <returns>Drying first, then open time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public IReadOnlyList<LimitComparison> CompareWindow(TimeSpan sinceWipe)
    {
        double since = Guard.Within(sinceWipe.TotalSeconds, Bounds.NotNegative(Measure.Hours, 60 * 86400), nameof(sinceWipe));
        return new ValueList<LimitComparison>(
        [
            new("drying of " + Name + ", from the end of wiping", since, Flash.TotalSeconds, LimitSense.AtLeast, Measure.Minutes, Source, since < Flash.TotalSeconds ? "Wait until it is dry." : null),
            new("open time of " + Name + ", from the end of wiping", since, OpenTime.TotalSeconds, LimitSense.AtMost, Measure.Minutes, Source, since > OpenTime.TotalSeconds ? "Wipe again." : null),
        ]);
    }

    /// <summary>The name.</summary>
    /// <returns><see cref="Name"/>.</returns>
    public override string ToString() => Name;
}
