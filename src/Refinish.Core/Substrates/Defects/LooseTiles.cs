using System.Globalization;
using Refinish.Fixtures;

namespace Refinish.Substrates;

/// <summary>Tiles that sound hollow or move.</summary>
public sealed record LooseTiles : Defect
{
    /// <summary>Records them.</summary>
    /// <param name="count">How many, 1 to 10 000.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public LooseTiles(int count) : base(DefectKind.LooseTiles, "loose tiles") => Count = Guard.Count(count, 1, 10_000);

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => Count.ToString(CultureInfo.InvariantCulture) + (Count == 1 ? " loose tile" : " loose tiles");

    internal override int Number => Count;

    internal override bool Contradicts(FixtureMaterial material) => !material.HasJoints;
}
