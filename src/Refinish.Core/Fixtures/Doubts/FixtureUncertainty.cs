using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>How far area and capacity can be off because the tape readings can: first-order propagation of independent readings.</summary>
/// <remarks>
/// u(A)² = Σ (∂A/∂x_i · u(x_i))², with u(x) = a/√3, a/√6 or a/2 for a ± of a (<see cref="ReadingSpread"/>) and the derivatives by
/// central differences over ± 10 µm, one-sided where a shape ends (a cove of 0 cannot shrink). Holds while the fixture is nearly linear
/// within the ±; a Monte Carlo run in the tests agrees to its own noise. Source: JCGM 100:2008, 4.3.7, 4.3.9 and 5.1.2 (from memory,
/// unverified).
/// </remarks>
/// <example><code>
/// RecessedBathtub tub = new(tape);                           // the tub of RecessedBathtubMeasurements
/// FixtureUncertainty spread = FixtureUncertainty.Of(tape, static t => new RecessedBathtub(t), TapeReadings.Of(tape, Length.FromInches(0.125), ReadingSpread.Rectangular));
/// double squareFeet = spread.StandardUncertaintyOfArea.SquareFeet;   // 0.09
/// </code></example>
public sealed record FixtureUncertainty
{
    /// <summary>Half of the central difference, in metres: small beside any fixture, large beside the last digits of its area.</summary>
    private const double Step = 1e-5;

    private static readonly Source Propagation = Source.FromMemory("JCGM 100:2008, 5.1.2: combined standard uncertainty of independent readings");

    private readonly double area;
    private readonly double? capacity;

    private FixtureUncertainty(double area, double? capacity, IEnumerable<ReadingContribution> contributions)
    {
        this.area = area;
        this.capacity = capacity;
        Contributions = new ValueList<ReadingContribution>(contributions);
    }

    /// <summary>The coated area.</summary>
    public Area CoatedArea => Area.FromSquareMeters(area);

    /// <summary>Its standard uncertainty.</summary>
    public Area StandardUncertaintyOfArea => Area.FromSquareMeters(AreaSpread().Value);

    /// <summary>The capacity; <see langword="null"/> for what holds no water.</summary>
    public Volume? WaterCapacity => capacity is double water ? Volume.FromCubicMeters(water) : null;

    /// <summary>Its standard uncertainty; <see langword="null"/> for what holds no water.</summary>
    public Volume? StandardUncertaintyOfCapacity => capacity is null ? null : Volume.FromCubicMeters(WaterSpread().Value);

    /// <summary>What each reading adds, in the order in which they were given.</summary>
    public IReadOnlyList<ReadingContribution> Contributions { get; }

    /// <summary>Propagates the readings' ± through a fixture.</summary>
    /// <typeparam name="TMeasurements">The fixture's record of measurements.</typeparam>
    /// <param name="measurements">What the tape gave.</param>
    /// <param name="make">Works the fixture out.</param>
    /// <param name="readings">The readings that can be off; at least one.</param>
    /// <returns>Area, capacity and their standard uncertainties.</returns>
    /// <exception cref="ArgumentException">An argument is missing or a list is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The fixture cannot be, or a reading can be moved neither up nor down by 10 µm.
    /// </exception>
    public static FixtureUncertainty Of<TMeasurements>(TMeasurements measurements, Func<TMeasurements, IFixture> make, IEnumerable<TapeReading<TMeasurements>> readings)
        where TMeasurements : class
    {
        Guard.NotNull(measurements);
        Guard.NotNull(make);
        ValueList<TapeReading<TMeasurements>> list = Guard.List(readings, 1);
        (double area, double? water) = Results(make(measurements));
        return new FixtureUncertainty(area, water, list.Select((reading, i) =>
        {
            double value = reading.Value(measurements).Meters;
            (double Area, double Water, double At) high = Moved(Step);
            (double Area, double Water, double At) low = Moved(-Step);
            if (high.At == low.At)
            {
                // Says why, in the fixture's own words.
                make(reading.With(measurements, Length.FromMeters(value + Step)));
            }

            return new ReadingContribution(i + 1, reading.Name, reading.PlusMinus.Meters, reading.Spread, high, low);

            (double Area, double Water, double At) Moved(double by)
            {
                try
                {
                    (double movedArea, double? movedWater) = Results(make(reading.With(measurements, Length.FromMeters(value + by))));
                    return (movedArea, movedWater ?? 0, by);
                }
                catch (ArgumentOutOfRangeException)
                {
                    return (area, water ?? 0, 0);
                }
            }
        }));
    }

    /// <summary>
    /// How each slope and each standard uncertainty follows; the area and the capacity themselves are in the fixture's own derivation.
    /// </summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => capacity is null
        ? Trace.Of("Uncertainty of the tape", AreaSpread) : Trace.Of("Uncertainty of the tape", AreaSpread, WaterSpread);

    /// <summary>Area and capacity with their standard uncertainties in one line, in metric units.</summary>
    /// <returns>Text such as <c>2.5724 m², u = 0.0061 m²; 219.8 L, u = 1.1 L</c>.</returns>
    public override string ToString()
    {
        string first = Measure.Area.Format(area) + ", u = " + Measure.Area.Format(StandardUncertaintyOfArea.SquareMeters, figures: 2);
        return capacity is double water
            ? first + "; " + Measure.Capacity.Format(water) + ", u = " + Measure.Capacity.Format(WaterSpread().Value, figures: 2)
            : first;
    }

    private Num AreaSpread(Trace? t = null) => t.Step("standard uncertainty of the coated area", "u_A", Measure.Area, Propagation,
        Num.Sqrt(Num.Sum(Contributions.Select(reading => Num.Square(reading.OfArea(t))))));

    private Num WaterSpread(Trace? t = null) => t.Step("standard uncertainty of the capacity", "u_V", Measure.Capacity, Propagation,
        Num.Sqrt(Num.Sum(Contributions.Select(reading => Num.Square(reading.OfWater(t))))));

    private static (double Area, double? Water) Results(IFixture fixture) => (fixture.CoatedArea.SquareMeters, fixture.WaterCapacity?.CubicMeters);
}
