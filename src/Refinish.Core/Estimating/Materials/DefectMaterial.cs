using System;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>What a kind of defect takes beside filler: a material, some for each defect and some for its area.</summary>
/// <example><code>
/// DefectMaterial stripper = new()
/// {
///     Repairs = DefectKind.PeelingCoat,
///     Item = "stripper",
///     Name = "paint stripper",
///     Coverage = SpreadingRate.FromSquareFeetPerUsGallon(67),
///     Source = Source.Supplied("own records"),
/// };
/// </code></example>
public sealed record DefectMaterial
{
    private readonly double each;
    private readonly double? density;

    /// <summary>The kind of defect, ready or of your own.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required DefectKind Repairs { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// The kind of work that takes it, where that is not the one that mends the defect anyway (<see cref="LabourStandards.WorkOf"/>): resin
    /// for the fabric over a crack goes with <see cref="WorkKind.ReinforceCrack"/>, which only some materials get.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public WorkKind? Work { get; init => field = value is WorkKind kind ? Guard.Defined(kind, nameof(Work)) : null; }

    /// <summary>Id of the material, as in the price book.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public required string Item { get; init => field = Guard.Id(value); }

    /// <summary>What people call it.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>Volume for each defect, whatever its size; 0 to 10 L; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Volume Each
    {
        get => Volume.FromCubicMeters(each);
        init => each = Guard.Within(value, Bounds.NotNegative(Measure.Capacity, 0.01));
    }

    /// <summary>
    /// How far the material goes over the area of the defect, 0.01 m²/L or more; <see langword="null"/>, no use by area, when left out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Less than 0.01 m²/L.</exception>
    public SpreadingRate? Coverage
    {
        get;
        init
        {
            if (value is SpreadingRate rate)
            {
                Guard.Within(rate.SquareMetersPerCubicMeter, SpreadingRate.OfUse, nameof(Coverage));
            }

            field = value;
        }
    }

    /// <summary>
    /// Density, 0.05 to 25 g/mL, with which it is bought by mass, as grout is; <see langword="null"/>, when left out: then by volume alone.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Density? Density
    {
        get => density is double known ? UnitsNet.Density.FromKilogramsPerCubicMeter(known) : null;
        init => density = MaterialNeed.Checked(value, nameof(Density));
    }

    /// <summary>Where the figures come from.</summary>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    internal double? KilogramsPerCubicMeter => density;

    internal WorkKind? TakenBy => Work ?? LabourStandards.WorkOf(Repairs);

    /// <summary>
    /// What of it could not be honoured, as words behind its item; <see langword="null"/> when all can. An own defect says itself which
    /// work it brings, and is counted.
    /// </summary>
    internal string? Contradiction() =>
        !Repairs.IsOwn ? null
        : Work is not null ? "names Work, which the own defect " + Repairs + " says itself"
        : Coverage is not null ? "has a Coverage, and the own defect " + Repairs + " is counted, not measured by area"
        : null;

    /// <summary>The material and its purpose.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + " for " + Repairs;
}
