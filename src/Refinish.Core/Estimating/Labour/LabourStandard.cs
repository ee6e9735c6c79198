using System;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// How long a step takes one person: hours = fixed + per area × area + per unit × units, each a least, most likely and greatest value.
/// </summary>
/// <remarks>
/// The form, a time per task kept apart from travel and set-up, is that of public engineered performance standards; the numbers are the
/// shop's own. A standard is found either by its kind of work or by the defect that it mends, so it names one of the two.
/// </remarks>
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
    private readonly double oncePerVisit;
    private readonly double fromSize;

    // No time, said, is an answer; no time because nothing was said is a slip.
    private readonly bool isStated;

    /// <summary>Code, such as "L-31"; the standard's identity within a list.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public required string Code { get; init => field = Guard.Id(value); }

    /// <summary>What is done.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Description { get; init => field = Guard.Named(value); }

    /// <summary>
    /// Hours each time, whatever the size: for each operation, however many fixtures of a room it is done on, or for each defect; none when
    /// left out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public ThreePoint Fixed { get; init => field = Hours(value, nameof(Fixed), out isStated); }

    /// <summary>
    /// Hours for each square metre; none when left out. In a plan that is the coated area of the fixtures, of stripping, pitting and liners
    /// that of the defects, of grains that of the floor. Work and defects that are counted alone have no area: there a rate by area is
    /// refused.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public ThreePoint PerSquareMeter { get; init => field = Hours(value, nameof(PerSquareMeter), out isStated); }

    /// <summary>Hours for each <see cref="Unit"/>: a defect, a coat, a metre of joint; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public ThreePoint PerUnit { get; init => field = Hours(value, nameof(PerUnit), out isStated); }

    /// <summary>What <see cref="PerUnit"/> counts; "each" when left out.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Unit { get; init => field = Guard.Named(value); } = "each";

    /// <summary>
    /// Part of the hours per unit that is done once for all units of one operation in a visit, 0 to 100 %, such as fetching and putting
    /// away the tools; none when left out. Each unit after the first takes that much less: the second fixture of a room, the second chip.
    /// Trips, rooms and guns come one at a time; there it is refused.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio OncePerVisit
    {
        get => Ratio.FromDecimalFractions(oncePerVisit);
        init => oncePerVisit = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>
    /// Size of a defect from which this standard is taken rather than one for smaller ones of its kind: the diameter of a spot or burn, the
    /// length of a chip, patch, low spot or crack; 0 to 5 m; zero when left out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length FromSize
    {
        get => Length.FromMeters(fromSize);
        init => fromSize = Guard.Within(value, Bounds.NotNegative(Measure.Length, 5));
    }

    /// <summary>The kind of operation that this standard gives hours for; <see langword="null"/> for one that mends a defect.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public WorkKind? Work { get; init => field = value is WorkKind kind ? Guard.Defined(kind, nameof(Work)) : null; }

    /// <summary>
    /// The kind of defect, ready or of your own, that this step mends; <see langword="null"/> for one that belongs to an operation, see
    /// <see cref="Work"/>.
    /// </summary>
    public DefectKind? Repairs { get; init; }

    /// <summary>
    /// Whether the work is done at the site, where an occupied home, stairs or a missing window slow it down; <see langword="true"/> when
    /// left out. Driving is not.
    /// </summary>
    public bool IsOnSite { get; init; } = true;

    /// <summary>Where the hours come from.</summary>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// What in the standard itself could not be honoured by any task, as words behind its code; <see langword="null"/> when all can.
    /// </summary>
    internal string? Contradiction() =>
        !isStated ? "has no hours at all; give it Fixed, PerSquareMeter or PerUnit, or 0 h where it takes none"
        : Work is not null && Repairs is not null ? "names a kind of work and a defect; a standard is for one of them"
        : oncePerVisit > 0 && PerUnit.Maximum <= 0 ? "has OncePerVisit and no PerUnit, of which it is a part"
        : fromSize > 0 && Repairs is null ? "has a FromSize, which only a defect has"
        : null;

    internal double OncePerVisitFraction => oncePerVisit;

    internal double FromMeters => fromSize;

    /// <summary>Code and description.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Code + " " + Description;

    private static ThreePoint Hours(ThreePoint value, string name, out bool isStated)
    {
        Guard.Within(value.Minimum * 3600, Bounds.NotNegative(Measure.Hours), name);
        Guard.Within(value.Maximum * 3600, Bounds.NotNegative(Measure.Hours, 1e4 * 3600), name);
        isStated = true;
        return value;
    }
}
