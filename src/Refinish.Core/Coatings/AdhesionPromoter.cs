using System;
using System.Collections.Generic;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>A wipe that bonds the coating to glass or plastic. It leaves no measurable film; what matters is how far it goes and how soon the first coat has to follow.</summary>
public sealed record AdhesionPromoter
{
    private static readonly Bounds Times = Bounds.NotNegative(Measure.Minutes, 7 * 24 * 3600);

    private readonly TimeSpan flash;
    private readonly TimeSpan openTime;

    /// <summary>Generic name, such as "silane wipe".</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name
    {
        get;
        init => field = Guard.Named(value, nameof(Name));
    }

    /// <summary>Area wiped per volume, losses in the cloth included; more than zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Zero.</exception>
    public required SpreadingRate SpreadingRate
    {
        get;
        init
        {
            Guard.Within(value.SquareMetersPerCubicMeter, Bounds.Positive(Measure.SpreadingRate), nameof(SpreadingRate));
            field = value;
        }
    }

    /// <summary>How long it has to dry before the first coat, up to 7 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too long.</exception>
    public required TimeSpan Flash
    {
        get => flash;
        init
        {
            Guard.Within(value, Times, nameof(Flash));
            flash = value;
        }
    }

    /// <summary>How long after wiping the first coat has to be on, up to 7 days; else wipe again.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too long.</exception>
    public required TimeSpan OpenTime
    {
        get => openTime;
        init
        {
            Guard.Within(value, Times, nameof(OpenTime));
            openTime = value;
        }
    }

    /// <summary>The materials it is meant for.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required IReadOnlyList<FixtureMaterial> Materials
    {
        get;
        init => field = new ValueList<FixtureMaterial>(Guard.NotNull(value, nameof(Materials)));
    }

    /// <summary>Where the figures come from.</summary>
    public required Source Source
    {
        get;
        init => field = Guard.NotNull(value, nameof(Source));
    }

    /// <summary>The name.</summary>
    /// <returns><see cref="Name"/>.</returns>
    public override string ToString() => Name;
}
