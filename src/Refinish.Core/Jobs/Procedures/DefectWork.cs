using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>
/// What is done about a defect of a caller's own: an operation of its own on the fixture, in the place of its kind of work. Hours,
/// materials and vapours are for one; a defect that counts several takes as many times.
/// </summary>
/// <remarks>
/// Hours come from <see cref="Hours"/>, from the shop's standard that <see cref="LabourCode"/> names, or else from the shop's standard for
/// the kind of the defect. Where none of the three gives any, the plan has an objection and no price.
/// </remarks>
/// <example><code>
/// DefectWork work = new()
/// {
///     Kind = WorkKind.Fill, Instruction = "drill out the loose inlay, bed it again in epoxy", Hours = ThreePoint.Exactly(0.5),
///     Source = Source.Supplied("own time sheets"),
/// };
/// </code></example>
public sealed record DefectWork
{
    // Warming is planned from temperatures; what is done on no single fixture has no place here.
    internal static readonly WorkKind[] Places =
        [.. WorkOrder.BeforeCoats.Concat(WorkOrder.AfterCoats).Where(kind => kind != WorkKind.Warm)];

    /// <summary>The kind of work: it gives the operation its place in the order and its general cautions.</summary>
    /// <exception cref="ArgumentException">A kind that is not done on a single fixture.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required WorkKind Kind
    {
        get;
        init => field = Places.Contains(Guard.Defined(value))
            ? value
            : throw new ArgumentException("Kind is " + value + "; allowed: " + string.Join(", ", Places) + ".", nameof(Kind));
    }

    /// <summary>What the crew reads.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Instruction { get; init => field = Guard.Named(value); }

    /// <summary>Where instruction and hours come from.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>Hours of one person for one, 0 to 1000 h; <see langword="null"/>, those of a standard of the shop, when left out.</summary>
    /// <exception cref="ArgumentException">There is a labour code already.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public ThreePoint? Hours
    {
        get;
        init
        {
            if (value is ThreePoint hours)
            {
                OneOfTwo(LabourCode is not null, nameof(Hours));
                Guard.Within(hours.Minimum * 3600, Bounds.NotNegative(Measure.Hours), nameof(Hours));
                Guard.Within(hours.Maximum * 3600, Bounds.NotNegative(Measure.Hours, 1000 * 3600), nameof(Hours));
            }

            field = value;
        }
    }

    /// <summary>
    /// Code of a standard of the shop that takes as long for one of its units; <see langword="null"/>, see <see cref="Hours"/>, when left
    /// out.
    /// </summary>
    /// <exception cref="ArgumentException">No identity, or there are hours already.</exception>
    public string? LabourCode
    {
        get;
        init
        {
            OneOfTwo(value is not null && Hours is not null, nameof(LabourCode));
            field = value is null ? null : Guard.Id(value);
        }
    }

    /// <summary>Materials for one, beside the filler of its hollow; none when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<MaterialNeed> Materials { get; init => field = Guard.List(value); } = ValueList<MaterialNeed>.Empty;

    /// <summary>
    /// What evaporates in the course of the work, for all together; none when left out. It goes into the air of the room.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<Evaporation> Vapours { get; init => field = Guard.List(value); } = ValueList<Evaporation>.Empty;

    /// <summary>Whether it raises dust and is loud, as grinding; not when left out.</summary>
    public bool RaisesDust { get; init; }

    /// <summary>Kind and instruction.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Kind + ": " + Instruction;

    internal bool IsBeforeSanding =>
        Array.IndexOf(WorkOrder.BeforeCoats, Kind) is >= 0 and int at && at <= Array.IndexOf(WorkOrder.BeforeCoats, WorkKind.Fill);

    private static void OneOfTwo(bool both, string name)
    {
        if (both)
        {
            throw new ArgumentException("Hours and LabourCode are both given; one of the two says how long it takes.", name);
        }
    }
}
