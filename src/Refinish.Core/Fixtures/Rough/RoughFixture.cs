using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A fixture of which two or three readings are known, as from a telephone call: the others are assumed by the proportions of its kind,
/// each with a least, a most likely and a greatest value. It is worked out as the ordinary fixture of its most likely readings, and
/// <see cref="AreaRange"/> says how far off that may be.
/// </summary>
/// <remarks>
/// <see cref="With(string, Length)"/> replaces one reading after another by what the tape gives; what was taken also cuts the bands of the
/// readings that it depends on, and a reading that follows from the others of its sum is worked out. Once all are taken it is the ordinary
/// fixture to the last digit. The assumed proportions are invented or common practice, see <see cref="RoughKind"/>; a fixture with parts
/// that its kind does not have, such as a niche in the tile, is handed in as the ordinary fixture when it was measured.
/// </remarks>
/// <example><code>
/// RoughFixture tub = RoughFixture.RecessedBathtub(Length.FromInches(60), Length.FromInches(30));
/// RoughFixture visited = tub.With("Depth", Length.FromInches(13.25)).With("ApronHeight", Length.FromInches(14.5));
/// bool known = visited.IsMeasured;   // false
/// </code></example>
public sealed partial record RoughFixture : IFixture
{
    private static readonly Source LeftOfBand = Source.Derived("what the readings that were taken leave of its band");

    private readonly RoughShape shape;

    private RoughFixture(RoughKind kind, IEnumerable<TakenReading> taken, IEnumerable<ReadingAssumption> own)
    {
        Kind = kind;
        Taken = new ValueList<TakenReading>(taken.OrderBy(reading => kind.Places[reading.Name]));
        OwnAssumptions = new ValueList<ReadingAssumption>(own.OrderBy(assumption => kind.Places[assumption.Reading]));
        shape = new RoughShape(kind, Taken, OwnAssumptions);
        Likely = shape.Likely();
    }

    /// <summary>The ± of a length that was said on the telephone and not measured: 13 mm (half an inch).</summary>
    /// <remarks>
    /// ASME A112.19.1-2013, 4.3.2, allows the length of an apron bathtub ± 13 mm (0.5 in); for other lengths the same is invented.
    /// </remarks>
    public static Length SaidPlusMinus => Length.FromMillimeters(13);

    /// <summary>The ± of a length that the tape gave: 3 mm (an eighth of an inch); invented.</summary>
    public static Length TapePlusMinus => Length.FromMillimeters(3);

    /// <summary>The kind of fixture.</summary>
    public RoughKind Kind { get; }

    /// <summary>The readings that were taken or said.</summary>
    public IReadOnlyList<TakenReading> Taken { get; }

    /// <summary>The assumptions of the caller in place of those of the kind; none unless given.</summary>
    public IReadOnlyList<ReadingAssumption> OwnAssumptions { get; }

    /// <summary>What stands in for the readings that were not taken.</summary>
    public IReadOnlyList<ReadingAssumption> Assumptions => new ValueList<ReadingAssumption>(
        Assumed.Select(place => shape.Assumption(place)).OfType<ReadingAssumption>());

    /// <summary>The ordinary fixture of the most likely readings.</summary>
    public IFixture Likely { get; }

    /// <summary>Whether every reading of the kind was taken, so that nothing is assumed.</summary>
    public bool IsMeasured => Taken.Count == shape.Count;

    /// <summary>Between which areas it may lie, and which reading is worth taking next.</summary>
    public AreaRange AreaRange => field ??= AreaRangeOf(null);

    /// <summary>
    /// The readings that were taken and lie outside what such fixtures are, so that the proportions of the others may not hold either.
    /// </summary>
    public IReadOnlyList<LimitComparison> UnusualReadings =>
        new ValueList<LimitComparison>(Compared().Where(comparison => comparison.Outcome == ComparisonOutcome.Beyond));

    /// <inheritdoc/>
    public string Description => Likely.Description + (IsMeasured ? string.Empty : string.Format(
        CultureInfo.InvariantCulture, ", from {0} of {1} readings", Taken.Count, shape.Count));

    /// <inheritdoc/>
    public IReadOnlyList<FixtureZone> Zones => Likely.Zones;

    /// <summary>The area that gets coated, with every open reading at its most likely value.</summary>
    public Area CoatedArea => Likely.CoatedArea;

    /// <inheritdoc/>
    public Length MaskedEdge => Likely.MaskedEdge;

    /// <inheritdoc/>
    public Volume? WaterCapacity => Likely.WaterCapacity;

    /// <inheritdoc/>
    public IReadOnlyList<SurfacePatch> Patches => Likely.Patches;

    /// <summary>Makes a fixture of any kind from readings.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="taken">The readings; at least those that the kind needs, none twice.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">
    /// A reading is not one of the kind, is given twice or in another kind of unit, or a needed one is missing.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A reading is outside what the proportions are made for, or readings cannot go together.
    /// </exception>
    public static RoughFixture Of(RoughKind kind, IEnumerable<TakenReading> taken) => Of(kind, taken, []);

    /// <summary>Makes a fixture of any kind from readings and assumptions of one's own.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="taken">The readings; at least those that the kind needs, none twice.</param>
    /// <param name="own">Assumptions in place of those of the kind; each rests on readings that stand before it in the kind's list.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">
    /// A reading or an assumption is not one of the kind, is given twice or in another kind of unit, or a needed reading is missing.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A reading is outside what the proportions are made for, or readings cannot go together.
    /// </exception>
    public static RoughFixture Of(RoughKind kind, IEnumerable<TakenReading> taken, IEnumerable<ReadingAssumption> own)
    {
        Guard.NotNull(kind);
        ValueList<TakenReading> readings = Guard.List(taken);
        ValueList<ReadingAssumption> assumptions = Guard.List(own);
        Once(readings.Select(reading => reading.Name), nameof(taken));
        Once(assumptions.Select(assumption => assumption.Reading), nameof(own));
        foreach (TakenReading reading in readings)
        {
            RoughReading known = kind.All[kind.PlaceOf(reading.Name, nameof(taken))];
            Fits(known, reading.Measure, nameof(taken));
            Guard.Within(reading.Value, known.Allowed, reading.Name);
            Guard.Rule(!known.IsWhole || reading.Value == Math.Floor(reading.Value), reading.Name, reading.Value, Measure.Number,
                "a whole number");
        }

        foreach (ReadingAssumption assumption in assumptions)
        {
            int place = kind.PlaceOf(assumption.Reading, nameof(own));
            Fits(kind.All[place], assumption.Form == AssumptionForm.Share ? Measure.Length : assumption.Measure, nameof(own));
            Earlier(kind, assumption.Of, place);
            Earlier(kind, assumption.Less, place);
        }

        string[] missing = [.. kind.Needed
            .Except(readings.Select(reading => reading.Name), StringComparer.Ordinal)
            .Except(assumptions.Select(assumption => assumption.Reading), StringComparer.Ordinal)];
        return missing.Length == 0
            ? new RoughFixture(kind, readings, assumptions)
            : throw new ArgumentException("taken lacks " + string.Join(" and ", missing) + ", which a " + kind.Name + " needs.",
                nameof(taken));
    }

    /// <summary>The same fixture with a length that the tape gave, ± <see cref="TapePlusMinus"/>.</summary>
    /// <param name="reading">Name of the reading.</param>
    /// <param name="value">The length.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentException">The kind has no such reading, or it is no length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The length is out of range, or cannot go together with the others that were taken.
    /// </exception>
    public RoughFixture With(string reading, Length value) => With(new TakenReading(reading, value, TapePlusMinus));

    /// <summary>The same fixture with a number: a count, a factor, an exponent.</summary>
    /// <param name="reading">Name of the reading.</param>
    /// <param name="value">The number.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentException">The kind has no such reading, or it is no number.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is out of range.</exception>
    public RoughFixture With(string reading, double value) => With(new TakenReading(reading, value));

    /// <summary>The same fixture with an angle.</summary>
    /// <param name="reading">Name of the reading.</param>
    /// <param name="value">The angle.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentException">The kind has no such reading, or it is no angle.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range.</exception>
    public RoughFixture With(string reading, Angle value) => With(new TakenReading(reading, value));

    /// <summary>The same fixture with a reading in place of an assumption or of an earlier reading.</summary>
    /// <param name="reading">The reading with its ±.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentNullException">It is missing.</exception>
    /// <exception cref="ArgumentException">The kind has no such reading, or it is of another kind of unit.</exception>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range, or cannot go together with the others that were taken.</exception>
    public RoughFixture With(TakenReading reading)
    {
        Guard.NotNull(reading);
        Kind.PlaceOf(reading.Name, nameof(reading));
        return Of(Kind, Taken.Where(taken => taken.Name != reading.Name).Append(reading), OwnAssumptions);
    }

    /// <summary>The same fixture with an assumption of one's own in place of the kind's.</summary>
    /// <param name="assumption">The assumption; it rests on readings that stand before it in the kind's list.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentNullException">It is missing.</exception>
    /// <exception cref="ArgumentException">The kind has no such reading, or it is of another kind of unit.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The most likely readings make no fixture.</exception>
    public RoughFixture Assuming(ReadingAssumption assumption)
    {
        Guard.NotNull(assumption);
        Kind.PlaceOf(assumption.Reading, nameof(assumption));
        return Of(Kind, Taken, OwnAssumptions.Where(own => own.Reading != assumption.Reading).Append(assumption));
    }

    /// <summary>Between which areas some of its zones may lie, and which reading is worth taking next.</summary>
    /// <param name="zones">The zones that are to be coated; all when <see langword="null"/>.</param>
    /// <returns>The range.</returns>
    public AreaRange AreaRangeOf(IReadOnlyList<FixtureZoneKind>? zones) => new RoughSearch(
        shape,
        zones is null
            ? static fixture => fixture.CoatedArea.SquareMeters
            : fixture => fixture.Zones.Where(zone => zones.Contains(zone.Kind)).Sum(zone => zone.Area.SquareMeters)).Range(Kind);

    /// <inheritdoc/>
    public TriangleMesh Tessellate(Length chordTolerance) => Likely.Tessellate(chordTolerance);

    /// <summary>How the most likely readings follow from those that were taken, and area, edges and capacity from them.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        double[] values = shape.Values(new double[shape.Count]);
        Trace t = new();
        t.Part(Likely.Workings());
        foreach (int place in Assumed)
        {
            RoughReading reading = Kind.All[place];
            ReadingAssumption assumption = shape.Assumption(place)!;
            Num formula = assumption.At(
                assumption.Form == AssumptionForm.Share ? t.Number(assumption.Likely) : Point(assumption.Likely), Named(assumption.Of),
                Named(assumption.Less));

            // What was taken beside it moved the value off its proportion.
            double value = values[place];
            bool holds = Math.Abs(formula.Value - value) <= 1e-12 * Math.Max(1, Math.Abs(value));
            t.Step(
                reading.Name + ", most likely", reading.Name, reading.Measure,
                holds ? assumption.Source : LeftOfBand, holds
                    ? formula : Point(value));

            Num Point(double at) => t.Given("p", at, reading.Measure);
        }

        return t.Workings("Readings of a " + Kind.Name);

        Num? Named(string? name) => name is null ? null : t.Given(name, values[Kind.Places[name]], Kind.All[Kind.Places[name]].Measure);
    }

    /// <summary>Whether the other is of the same kind, with the same readings and the same assumptions.</summary>
    /// <param name="other">The other fixture.</param>
    /// <returns><see langword="true"/> when it is.</returns>
    public bool Equals(RoughFixture? other) => other is not null && ReferenceEquals(Kind, other.Kind) && Taken.Equals(other.Taken)
        && OwnAssumptions.Equals(other.OwnAssumptions);

    /// <summary>A hash of kind and readings.</summary>
    /// <returns>The hash.</returns>
    public override int GetHashCode() => (StringComparer.Ordinal.GetHashCode(Kind.Id) * 397) ^ Taken.GetHashCode();

    /// <summary>The most likely fixture and what it rests on, in metric units.</summary>
    /// <returns>Text such as <c>recessed bathtub 1524 mm × 762 mm, from 2 of 18 readings: 2.62 m² coated</c>.</returns>
    public override string ToString() => Description + ": " + Measure.Area.Format(CoatedArea.SquareMeters, figures: 3) + " coated";

    /// <summary>The fixture that is behind a rough one, or the fixture itself.</summary>
    internal static IFixture Behind(IFixture fixture) => fixture is RoughFixture rough ? rough.Likely : fixture;

    /// <summary>The open readings with the three points that are drawn between.</summary>
    internal IEnumerable<(string Reading, double Least, double Likely, double Greatest)> Spreads() => shape.Open.Select(place =>
    {
        (double least, double likely, double greatest) = shape.Points(place);
        return (Kind.All[place].Name, least, likely, greatest);
    });

    /// <summary>The fixture with the open readings at drawn points, in their order from a place of the list on.</summary>
    internal IFixture Drawn(IReadOnlyList<double> points, int from)
    {
        double[] places = new double[shape.Count];
        for (int i = 0; i < shape.Open.Count; i++)
        {
            places[shape.Open[i]] = shape.PlaceOf(shape.Open[i], points[from + i]);
        }

        return shape.Make(places);
    }

    // The places of the readings that were not taken.
    private IEnumerable<int> Assumed => Enumerable.Range(0, shape.Count).Where(place => shape.Taken(place) is null);

    private IEnumerable<LimitComparison> Compared()
    {
        foreach (TakenReading reading in Taken)
        {
            int place = Kind.Places[reading.Name];
            if (reading.Value != 0 && shape.Usual(place) is (double least, double greatest))
            {
                yield return Held(LimitSense.AtLeast, least - reading.PlusMinus);
                yield return Held(LimitSense.AtMost, greatest + reading.PlusMinus);

                LimitComparison Held(LimitSense sense, double limit) => new(
                    reading.Name, reading.Value, limit, sense, reading.Measure, shape.Assumption(place)!.Source,
                    "take it again; if it stands, the proportions assumed for the others may not hold: take them too");
            }
        }
    }

    private static void Once(IEnumerable<string> names, string parameter)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (string name in names)
        {
            if (!seen.Add(name))
            {
                throw new ArgumentException(parameter + " names " + name + " twice.", parameter);
            }
        }
    }

    private static void Fits(RoughReading known, Measure measure, string parameter)
    {
        if (!known.Measure.Equals(measure))
        {
            throw new ArgumentException(parameter + " gives " + known.Name + " as a " + measure.Kind + "; it is a "
                + known.Measure.Kind + ".", parameter);
        }
    }

    private static void Earlier(RoughKind kind, string? reading, int place)
    {
        if (reading is not null && kind.PlaceOf(reading, "own") >= place)
        {
            throw new ArgumentException("own lets " + kind.All[place].Name
                + " rest on " + reading + ", which comes after it; before it come: " + string.Join(", ", kind.Readings.Take(place)) + ".",
                nameof(reading));
        }
    }
}
