using System;
using Refinish.Air;

namespace Refinish.Jobs;

/// <summary>One room of premises in which fixtures are refinished: its size, its exhaust and its climate.</summary>
/// <example><code>
/// SiteRoom bath = new()
/// {
///     Id = "bath-1",
///     Room = new Room { Length = Length.FromMeters(2.6), Width = Length.FromMeters(2.1), Height = Length.FromMeters(2.5) },
///     Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) },
///     Climate = RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)), Temperature.FromDegreesCelsius(20)),
/// };
/// </code></example>
public sealed record SiteRoom
{

    /// <summary>Identifier, unique within the premises.</summary>
    /// <exception cref="ArgumentException">Empty, longer than 100 characters, or with a slash.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>Name for job sheets; the identifier unless given.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Name { get => field ?? Id; init => field = Guard.Named(value); }

    /// <summary>Length, width, height, air pressure and infiltration.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Room Room { get; init => field = Guard.NotNull(value); }

    /// <summary>The exhaust in this room.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Exhaust Exhaust { get; init => field = Guard.NotNull(value); }

    /// <summary>Air and surface temperature over the job.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required RoomClimate Climate { get; init => field = Guard.NotNull(value); }

    /// <summary>Name and size.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Room;
}
