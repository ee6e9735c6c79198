using System;

namespace Refinish.Jobs;

/// <summary>What a plan says of one fixture in dates.</summary>
public sealed record FixtureFigures
{
    /// <summary>Identifier of the fixture.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Id { get; init => field = Guard.Named(value); }

    /// <summary>Name for people; the identifier unless given.</summary>
    public string Name { get => field ?? Id; init; }

    /// <summary>No water before this instant; <see langword="null"/> when it is not said.</summary>
    public DateTimeOffset? WaterFrom { get; init; }

    /// <summary>When it is fully cured; <see langword="null"/> when it is not said.</summary>
    public DateTimeOffset? FullCure { get; init; }

    /// <summary>When it is handed over; <see langword="null"/> when it is not said.</summary>
    public DateTimeOffset? HandedOver { get; init; }

    /// <summary>End of its warranty; <see langword="null"/> when it is not said.</summary>
    public DateTimeOffset? WarrantyUntil { get; init; }

    /// <summary>Name and the hold on water.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Name + (WaterFrom is DateTimeOffset from ? ", no water before " + ChangeText.Clock(from) : string.Empty);
}
