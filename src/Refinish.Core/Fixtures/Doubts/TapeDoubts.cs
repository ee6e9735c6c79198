using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A practitioner's second look at the tape: each reading of a fixture against what such fixtures are. What is unusual is said and not
/// corrected.
/// </summary>
/// <remarks>
/// Every reading is held against its band (<see cref="FixtureKind"/>). Where one factor between two units brings all unusual readings
/// back, that is one doubt about the unit. Where one reading is unusual, the slips are named that would explain it: units, a digit lost,
/// doubled or swapped, each only if it fits the band and the other readings. Then how readings go together: a cove with a third of the
/// depth, cut-outs with 40 % of the top, rim and deck of a recessed tub, its depth beside its apron; and the capacity with the label's, 15
/// % either way. A fixture without doubts may still be measured wrongly.
/// </remarks>
/// <example><code>
/// TiledSurround walls = new(tape);                           // the walls of TiledWallMeasurements
/// IReadOnlyList&lt;Doubt&gt; doubts = new TapeDoubts("surround", walls).Doubts;
/// bool measureAgain = doubts.Count &gt; 0;                      // false
/// </code></example>
public sealed class TapeDoubts
{
    private const string Again = "Measure it again before a price is told.";

    // So many of the readings may leave their bands while a change of unit brings back those that were outside: a tile's size is often
    // typed in another unit.
    private const double MayLeave = 0.15;

    // More than three guesses are none.
    private const int MostSlips = 3;

    private static readonly Source Label = Source.Invented("a label and a tape that agree within 15 % are taken to speak of the same tub");

    private static readonly Bounds Capacities = Bounds.Positive(Measure.Capacity, 10);
    private readonly IFixture fixture;

    /// <summary>Looks at a fixture.</summary>
    /// <param name="about">Identifier of the fixture, which the doubts carry.</param>
    /// <param name="fixture">The fixture.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="about"/> is empty.</exception>
    public TapeDoubts(string about, IFixture fixture)
    {
        About = Guard.Named(about);
        this.fixture = FixtureKind.Measured(Guard.NotNull(fixture));
    }

    /// <summary>Looks at a fixture and at the capacity on its label, which is held against the fixture's own to the rim.</summary>
    /// <param name="about">Identifier of the fixture, which the doubts carry.</param>
    /// <param name="fixture">The fixture.</param>
    /// <param name="labelledCapacity">The capacity on the label or in the maker's sheet, more than 0 and at most 10 m³.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="about"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="labelledCapacity"/> is outside its range.</exception>
    public TapeDoubts(string about, IFixture fixture, Volume labelledCapacity) : this(about, fixture)
    {
        Guard.Within(labelledCapacity, Capacities);
        LabelledCapacity = labelledCapacity;
    }

    /// <summary>The same where the label does not count to the rim.</summary>
    /// <param name="about">Identifier of the fixture, which the doubts carry.</param>
    /// <param name="fixture">The fixture.</param>
    /// <param name="labelledCapacity">The capacity on the label or in the maker's sheet, more than 0 and at most 10 m³.</param>
    /// <param name="measuredCapacity">
    /// The capacity from the tape to the level that the label means, usually the overflow, more than 0 and at most 10 m³.
    /// </param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="about"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A capacity is outside its range.</exception>
    public TapeDoubts(string about, IFixture fixture, Volume labelledCapacity, Volume measuredCapacity)
        : this(about, fixture, labelledCapacity)
    {
        Guard.Within(measuredCapacity, Capacities);
        MeasuredCapacity = measuredCapacity;
    }

    /// <summary>Identifier of the fixture.</summary>
    public string About { get; }

    /// <summary>The capacity on the label or in the maker's sheet; <see langword="null"/> when there is none.</summary>
    public Volume? LabelledCapacity { get; }

    /// <summary>
    /// The capacity from the tape to the level that the label means; <see langword="null"/> where that is the fixture's own to the rim.
    /// </summary>
    public Volume? MeasuredCapacity { get; }

    /// <summary>
    /// The doubts; none for a fixture of the caller's own type, of which this library knows no readings, unless its label speaks against
    /// it.
    /// </summary>
    public IReadOnlyList<Doubt> Doubts => field ??= new ValueList<Doubt>([.. OfReadings(), .. OfProportions(), .. OfCapacity()]);

    /// <summary>The doubts in one line, in metric units.</summary>
    /// <returns>Text such as <c>surround: no doubts</c>.</returns>
    public override string ToString() => Doubts.Count == 0 ? About + ": no doubts" : string.Join(" ", Doubts);

    /// <summary>Doubts about readings, of a fixture or of anything else that has bands.</summary>
    internal static IEnumerable<Doubt> OfReadings(string about, IReadOnlyList<TypedReading> readings)
    {
        TypedReading[] odd = [.. readings.Where(reading => !reading.IsUsual)];
        if (odd.Length > 1 && CommonSlips(readings, odd) is { Length: > 0 } common)
        {
            TypedReading worst = odd.OrderByDescending(reading => reading.Off).First();
            return
            [
                Of(DoubtKind.Unit, about, worst) with
                {
                    Slips = new ValueList<LikelySlip>(common.Take(MostSlips).Select(one =>
                        new LikelySlip(one.Slip, worst.Metres * one.Factor))),
                },
            ];
        }

        return odd.Select(reading => Of(DoubtKind.Reading, about, reading) with { Slips = Explaining(reading) });
    }

    private static Doubt Of(DoubtKind kind, string about, TypedReading reading) =>
        new(kind, about, reading.Path, reading.Words, kind == DoubtKind.Unit
            ? "Ask in which unit the lengths were read, or measure again before a price is told." : Again, reading.Usual.Source)
        {
            Value = reading.Metres, Least = reading.Usual.LeastMetres, Greatest = reading.Usual.GreatestMetres, };

    // The likeliest first: that in whose unit the most numbers look typed, then that which brings them nearest to the middle of their
    // bands.
    private static (ReadingSlip Slip, double Factor)[] CommonSlips(IReadOnlyList<TypedReading> readings, TypedReading[] odd) =>
    [
        .. Slips.Factors
            .Where(slip => odd.All(reading => reading.Usual.Holds(reading.Metres * slip.Factor))
                && readings.Count(reading => !reading.Usual.Holds(reading.Metres * slip.Factor)) <= MayLeave * readings.Count)
            .OrderByDescending(slip => odd.Count(reading => Slips.LooksTyped(reading.Metres, slip.TakenIn)))
            .ThenBy(slip => odd.Sum(reading => reading.FromMiddle(reading.Metres * slip.Factor)))
            .Select(slip => (slip.Slip, slip.Factor)),
    ];

    private static ValueList<LikelySlip> Explaining(TypedReading reading)
    {
        ValueList<LikelySlip> typed = Fitting(reading, Slips.LookingTyped(reading.Metres));
        return typed.Count > 0 ? typed : Fitting(reading, Slips.Others(reading.Metres));
    }

    private static ValueList<LikelySlip> Fitting(TypedReading reading, IEnumerable<LikelySlip> slips)
    {
        List<LikelySlip> found = [];
        foreach (LikelySlip slip in slips)
        {
            if (found.Count < MostSlips && reading.Usual.Holds(slip.Metres)
                && !found.Exists(other => Math.Abs(other.Metres - slip.Metres) < 1e-3 * slip.Metres) && reading.Fits(slip.Metres))
            {
                found.Add(slip);
            }
        }

        return new ValueList<LikelySlip>(found);
    }

    private IEnumerable<Doubt> OfReadings() => FixtureKind.Of(fixture) is { } kind ? OfReadings(About, [.. kind.Read(fixture)]) : [];

    private IEnumerable<Doubt> OfProportions() => (FixtureKind.Of(fixture)?.Proportions(fixture) ?? [])
        .Where(proportion => !proportion.Holds)
        .Select(proportion => new Doubt(DoubtKind.Proportion, About, proportion.Code, proportion.Words, proportion.Remedy,
            proportion.Source)
        {
            Value = proportion.Value, Least = proportion.Least, Greatest = proportion.Greatest, Measure = proportion.Measure,
        });

    private IEnumerable<Doubt> OfCapacity()
    {
        if (LabelledCapacity is not Volume label)
        {
            yield break;
        }

        double promised = label.CubicMeters;
        if ((MeasuredCapacity ?? fixture.WaterCapacity) is not Volume water)
        {
            yield return new Doubt(
                DoubtKind.Capacity, About, null, "a capacity on the label of what holds no water",
                    "Look whether the label belongs to this fixture.", Label);
        }
        else if (water.CubicMeters < 0.85 * promised || water.CubicMeters > 1.15 * promised)
        {
            yield return new Doubt(
                DoubtKind.Capacity, About, null, "capacity from the tape beside the label",
                    "Ask to which level the label counts, then measure again.", Label)
            {
                Value = water.CubicMeters, Least = 0.85 * promised, Greatest = 1.15 * promised, Measure = Measure.Capacity, };
        }
    }
}
