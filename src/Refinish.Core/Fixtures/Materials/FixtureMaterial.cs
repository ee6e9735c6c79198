using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>
/// What lies under the new coat: what the fixture is made of at its surface, or an old coating that stays on it. The ready ones are on this
/// type; a material of your own is made in the same way.
/// </summary>
/// <remarks>
/// Lists of materials (of a product, a promoter, a step, a chemical) are searched by <see cref="Id"/>. What goes on a material is the word
/// of the product: it lists the material, or the material says which listed one it bonds like (<see cref="BondsLike"/>).
/// </remarks>
/// <example><code>
/// FixtureMaterial pvc = new()
/// {
///     Id = "pvc-panel", Name = "PVC wall panel", Surface = MaterialSurface.Polymer,
///     BondsLike = FixtureMaterial.Acrylic, Source = Source.Supplied("adhesion panels, own records"),
/// };
/// bool etched = pvc.MayBeEtched;   // false
/// </code></example>
public sealed partial record FixtureMaterial
{
    /// <summary>Identifier, such as <c>acrylic</c>.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>The material as it stands in a sentence, such as <c>enamelled cast iron</c>.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>What cleaner, abrasive and coat meet.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required MaterialSurface Surface { get; init => field = Guard.Defined(value); }

    /// <summary>
    /// Where it comes from what is said of the material here, above all what it bonds like and whether acid may touch it.
    /// </summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>The metal that it is or has behind its face; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public MetalBelow Metal { get; init => field = Guard.Defined(value); }

    /// <summary>Whether it may be etched with acid; not when left out. Acid stays off everything of which nobody says so.</summary>
    public bool MayBeEtched { get; init; }

    /// <summary>Whether coatings can be made to hold on it where it stands; they can when left out.</summary>
    public bool BondsInTheField { get; init; } = true;

    /// <summary>
    /// The material that it bonds like: a product, a promoter or an abrading step stated for that one is taken as stated for this one,
    /// under the condition of a test spot. <see langword="null"/>, none, when left out. It says nothing of acid: see
    /// <see cref="MayBeEtched"/>.
    /// </summary>
    /// <exception cref="ArgumentException">Not known, an old coating, or a material that itself bonds like a third.</exception>
    public FixtureMaterial? BondsLike
    {
        get;
        init => field = value is null || (!value.IsUnknown && !value.IsOldCoating && value.BondsLike is null)
            ? value
            : throw new ArgumentException(
                "BondsLike is " + value.Name + "; allowed: what a fixture can be made of and does not itself bond like another material.",
                    nameof(BondsLike));
    }

    /// <summary>Whether solvents craze it where it is under stress, as acrylic; not when left out.</summary>
    public bool CrazesInSolvent { get; init; }

    /// <summary>
    /// Whether it is a sheet or laminate that flexes, so that a crack is reinforced before it is filled; not when left out.
    /// </summary>
    public bool IsFlexibleSheet { get; init; }

    /// <summary>Whether grout joints run through it; not when left out.</summary>
    public bool HasJoints { get; init; }

    /// <summary>How it is roughened; <see langword="null"/>, by <see cref="MayBeEtched"/> alone, when left out.</summary>
    public MaterialKeying? Keying { get; init; }

    /// <summary>What of it has to warm; <see langword="null"/>, not known, when left out: then no warming is planned.</summary>
    public MaterialBody? Body { get; init; }

    /// <summary>Whether a magnet sticks to it.</summary>
    public bool IsMagnetic => Metal is MetalBelow.CastIron or MetalBelow.SteelSheet;

    /// <summary>Whether it is an old coating that is kept: what lies under a new coat, not what a fixture is made of.</summary>
    public bool IsOldCoating => Id == OldCoating.Id;

    /// <summary>Whether nobody knows what it is.</summary>
    public bool IsUnknown => Surface == MaterialSurface.Unknown;

    /// <summary>The ready material of an identifier.</summary>
    /// <param name="id">Identifier, such as <c>acrylic</c>.</param>
    /// <returns>The material; <see langword="null"/> when no ready one has it.</returns>
    public static FixtureMaterial? TryFind(string id) => All.FirstOrDefault(material => material.Id == id);

    /// <summary>The name.</summary>
    /// <returns><see cref="Name"/>.</returns>
    public override string ToString() => Name;

    internal bool IsEnamelled => Surface == MaterialSurface.Enamel;

    internal MaterialKeying KeyedBy => Keying ?? (MayBeEtched ? Glassy : Plain);

    internal bool IsNamedIn(IReadOnlyList<FixtureMaterial> materials) => materials.Any(material => material.Id == Id);

    /// <summary>Whether a list of what something bonds to holds it, or what it bonds like.</summary>
    internal bool BondsAsNamedIn(IReadOnlyList<FixtureMaterial> materials) =>
        IsNamedIn(materials) || BondsLike?.IsNamedIn(materials) == true;
}
