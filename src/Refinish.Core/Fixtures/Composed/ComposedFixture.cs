using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A fixture put together from measured parts by its kind: sinks with two bowls or an apron front, a corner sink, a vanity with its bowls,
/// bidet, toilet, urinal, a shower base with a seat, wall panels of a shower, its ceiling, doors and drawer fronts, a window sill, the feet
/// of a tub.
/// </summary>
/// <remarks>
/// <see cref="ComposedKind"/> says which readings are taken, what is coated and what is not. Faces, bowls, shells and frustums have closed
/// forms or quadratures of a stated error; the tests hold them to triangulation and to sums by hand. Holes lie where they usually do.
/// </remarks>
/// <example><code>
/// ComposedFixture sill = new(ComposedKind.WindowSill,
/// [
///     new("Length", Length.FromInches(40)), new("Depth", Length.FromInches(5)), new("EdgeHeight", Length.FromInches(0.75)),
///     new("OpenEnds", 2),
/// ]);
/// double squareInches = sill.CoatedArea.SquareInches;   // 237.5
/// Console.WriteLine(sill);
/// // window sill 1016 mm × 127 mm: 0.15323 m² coated
/// </code></example>
public sealed record ComposedFixture : IFixture
{
    private readonly Composition parts;
    private readonly double area;

    /// <summary>Works a fixture out.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="taken">The readings that were taken; those that the kind needs among them, none twice.</param>
    /// <exception cref="ArgumentException">
    /// An argument is missing, a reading that the kind needs is missing, the kind does not have it, it is of another kind of unit, or one
    /// is
    /// given twice.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is out of range, or two cannot go together; the message names
    /// it.</exception>
    public ComposedFixture(ComposedKind kind, IEnumerable<TakenReading> taken)
    {
        Kind = Guard.NotNull(kind);
        ValueList<TakenReading> list = Guard.List(taken);
        Taken = new ValueList<TakenReading>(list.OrderBy(reading => kind.PlaceOf(reading.Name, nameof(taken))));
        parts = new Composition(kind, Values(kind, Taken));
        Patches = parts.Patches;
        Zones = PatchLedger.Zones(Patches);
        area = PatchLedger.Coated(Patches);
        if (Patches.FirstOrDefault(patch => patch.Coated <= 0) is SurfacePatch bare)
        {
            Guard.Rule(false, nameof(taken), bare.Coated, Measure.Area, "openings that leave something of the " + bare.Name);
        }
    }

    /// <summary>The kind, which says what is measured, coated and left bare.</summary>
    public ComposedKind Kind { get; }

    /// <summary>How many pieces it is.</summary>
    internal double Count => Kind.Pieces is string pieces ? Taken.First(one => one.Name == pieces).Value : 1;

    /// <summary>The readings that were taken, in the kind's order.</summary>
    public IReadOnlyList<TakenReading> Taken { get; }

    /// <inheritdoc/>
    public string Description
    {
        get
        {
            string size = Kind.Name + " " + Measure.Length.Format(parts.Of(Kind.Size.First)) + " × "
                + Measure.Length.Format(parts.Of(Kind.Size.Second));
            return Kind.Pieces is string pieces ? Figures.Fixed(parts.Of(pieces), 0) + " × " + size : size;
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<FixtureZone> Zones { get; }

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(area);

    /// <inheritdoc/>
    public Length MaskedEdge => Length.FromMeters(parts.MaskedEdge);

    /// <inheritdoc/>
    public Volume? WaterCapacity => parts.Water is double held ? Volume.FromCubicMeters(held) : null;

    /// <inheritdoc/>
    public IReadOnlyList<SurfacePatch> Patches { get; }

    /// <summary>A reading, taken or not.</summary>
    /// <param name="reading">Its name.</param>
    /// <returns>The value in the SI base unit of its measure; what the kind says where it was not taken.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reading"/> is missing.</exception>
    /// <exception cref="ArgumentException">The kind has no such reading.</exception>
    public double Value(string reading) => parts.Of(Kind.Readings[Kind.PlaceOf(Guard.NotNull(reading), nameof(reading))].Name);

    /// <summary>The same fixture with one reading in place of what was taken.</summary>
    /// <param name="reading">The reading with its ±.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentException">It is missing, the kind has no such reading, or it is of another kind of unit.</exception>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range, or cannot go together with the others.</exception>
    public ComposedFixture With(TakenReading reading)
    {
        Guard.NotNull(reading);
        return new(Kind, Taken.Where(one => one.Name != reading.Name).Append(reading));
    }

    /// <inheritdoc/>
    /// <remarks>Pieces alike are drawn side by side; niches are drawn beside their wall.</remarks>
    public TriangleMesh Tessellate(Length chordTolerance) => parts.Mesh(chordTolerance);

    /// <inheritdoc/>
    public Workings Workings() => parts.Workings();

    /// <summary>Whether the other is of the same kind with the same readings.</summary>
    /// <param name="other">The other fixture.</param>
    /// <returns><see langword="true"/> when it is.</returns>
    public bool Equals(ComposedFixture? other) => other is not null && ReferenceEquals(Kind, other.Kind) && Taken.Equals(other.Taken);

    /// <summary>A hash of kind and readings.</summary>
    /// <returns>The hash.</returns>
    public override int GetHashCode() => (StringComparer.Ordinal.GetHashCode(Kind.Id) * 397) ^ Taken.GetHashCode();

    /// <summary>What it is, what gets coated and what it holds, in one line, in metric units.</summary>
    /// <returns>Text such as <c>window sill 1016 mm × 127 mm: 0.15323 m² coated</c>.</returns>
    public override string ToString() => PatchLedger.Told(this);

    private static Dictionary<string, double> Values(ComposedKind kind, IReadOnlyList<TakenReading> taken)
    {
        Dictionary<string, double> values = new(StringComparer.Ordinal);
        foreach (TakenReading reading in taken)
        {
            InputField known = kind.Reading(reading.Name);
            if (values.ContainsKey(reading.Name))
            {
                throw new ArgumentException("taken names " + reading.Name + " twice.", nameof(taken));
            }

            if (!known.Measure.Equals(reading.Measure))
            {
                throw new ArgumentException("taken gives " + reading.Name + " as a " + reading.Measure.Kind + "; it is a "
                    + known.Measure.Kind + ".",
                    nameof(taken));
            }

            values[reading.Name] = known.Checked(reading.Value);
        }

        string[] missing = [.. kind.Readings.Where(reading => reading.IsRequired && !values.ContainsKey(reading.Name)).Select(
            reading => reading.Name)];
        if (missing.Length > 0)
        {
            throw new ArgumentException("taken lacks " + string.Join(", ", missing) + ", which a " + kind.Name + " needs.", nameof(taken));
        }

        foreach (InputField reading in kind.Readings)
        {
            if (!values.ContainsKey(reading.Name))
            {
                values[reading.Name] = reading.Default!.Value;
            }
        }

        return values;
    }
}
