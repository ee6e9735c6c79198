using System;
using Refinish.Substrates;

namespace Refinish.Estimating;

/// <summary>
/// How long a step takes one person: hours = fixed + per area × area + per unit × units, each a least, most likely and greatest value.
/// </summary>
/// <remarks>The form, a time per task kept apart from travel and setup, is that of public engineered performance standards; the numbers are the shop's own.</remarks>
/// <example><code>
/// LabourStandard chips = new()
/// {
///     Code = "L-31",
///     Description = "fill and sand a chip",
///     PerUnit = ThreePoint.Exactly(0.08),
///     Unit = "each",
///     Repairs = DefectKind.Chip,
///     Source = Source.Supplied("own time sheets"),
/// };
/// </code></example>
public sealed record LabourStandard
{
    /// <summary>Code, such as "L-31".</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Code
    {
        get;
        init => field = Guard.Named(value, nameof(Code));
    }

    /// <summary>What is done.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Description
    {
        get;
        init => field = Guard.Named(value, nameof(Description));
    }

    /// <summary>Hours each time, whatever the size; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public ThreePoint Fixed
    {
        get;
        init => field = Hours(value, nameof(Fixed));
    }

    /// <summary>Hours for each square metre; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public ThreePoint PerSquareMeter
    {
        get;
        init => field = Hours(value, nameof(PerSquareMeter));
    }

    /// <summary>Hours for each <see cref="Unit"/>: a defect, a coat, a metre of joint; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public ThreePoint PerUnit
    {
        get;
        init => field = Hours(value, nameof(PerUnit));
    }

    /// <summary>What <see cref="PerUnit"/> counts; "each" when left out.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Unit
    {
        get;
        init => field = Guard.Named(value, nameof(Unit));
    } = "each";

    /// <summary>The kind of defect that this step mends; <see langword="null"/> when it belongs to every job.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public DefectKind? Repairs
    {
        get;
        init => field = value is DefectKind kind ? Guard.Defined(kind, nameof(Repairs)) : null;
    }

    /// <summary>Where the hours come from.</summary>
    public required Source Source
    {
        get;
        init => field = Guard.NotNull(value, nameof(Source));
    }

    /// <summary>Code and description.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Code + " " + Description;

    private static ThreePoint Hours(ThreePoint value, string name)
    {
        Guard.Within(value.Minimum * 3600, Bounds.NotNegative(Measure.Hours), name);
        Guard.Within(value.Maximum * 3600, Bounds.NotNegative(Measure.Hours, 1e4 * 3600), name);
        return value;
    }
}
