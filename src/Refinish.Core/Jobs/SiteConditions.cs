using System;
using Refinish.Air;
using Refinish.Climate;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>The bathroom on the day: its size, its exhaust, its air, and the coldest surface that gets coated.</summary>
/// <remarks>The room is taken to be held at this temperature, day and night, from the first coat until water may run.</remarks>
public sealed record SiteConditions
{
    private readonly double surface;
    private readonly double? airborneFraction;
    private readonly double? isocyanateLimit;

    /// <summary>Inside dimensions of the room.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Room Room
    {
        get;
        init => field = Guard.NotNull(value, nameof(Room));
    }

    /// <summary>The fan that is set up for the job.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Exhaust Exhaust
    {
        get;
        init => field = Guard.NotNull(value, nameof(Exhaust));
    }

    /// <summary>Temperature and humidity of the air while spraying and curing.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required MoistAir Air
    {
        get;
        init => field = Guard.NotNull(value, nameof(Air));
    }

    /// <summary>Temperature of the coldest surface to be coated, −20 to 60 °C; measured, not taken from the air.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Surface
    {
        get => Temperature.FromKelvins(surface);
        init => surface = Guard.Within(value, Bounds.Between(253.15, 333.15, Measure.Temperature), nameof(Surface));
    }

    /// <summary>
    /// Part of the overspray of an isocyanate coating that stays in the air as mist, 0 to 100 %. Nobody has measured it for this trade;
    /// without it the mist cannot be judged.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? AirborneFraction
    {
        get => airborneFraction is double fraction ? Ratio.FromDecimalFractions(fraction) : null;
        init => airborneFraction = value is Ratio fraction ? Guard.Within(fraction, Bounds.Positive(Measure.Percent, 1), nameof(AirborneFraction)) : null;
    }

    /// <summary>Limit for polyisocyanate mist where the job is, more than 0; <see langword="null"/> when none is known there, and then the mist cannot be judged.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public MassConcentration? IsocyanateLimit
    {
        get => isocyanateLimit is double limit ? MassConcentration.FromKilogramsPerCubicMeter(limit) : null;
        init => isocyanateLimit = value is MassConcentration limit ? Guard.Within(limit, Bounds.Positive(Measure.MassConcentration, 1), nameof(IsocyanateLimit)) : null;
    }

    /// <summary>Where <see cref="IsocyanateLimit"/> comes from.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public Source IsocyanateLimitSource
    {
        get;
        init => field = Guard.NotNull(value, nameof(IsocyanateLimitSource));
    }
    = Source.Supplied("no limit given");

    /// <summary>Time constant of the drying film, 1 s to 30 days; 15 min unless given, which is invented.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan FilmTimeConstant
    {
        get;
        init
        {
            Guard.Within(value, Bounds.Between(1, 30 * 86400, Measure.Minutes), nameof(FilmTimeConstant));
            field = value;
        }
    }
    = SolventEmission.AssumedFilmTimeConstant;

    /// <summary>Room, air and surface in one line, in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Room + "; " + Air + "; surface " + Measure.Temperature.Format(surface);
}
