using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>How far area and capacity can be off because the tape readings can: first-order propagation of independent readings.</summary>
/// <remarks>
/// u(A)² = Σ (∂A/∂x_i · u(x_i))², with u(x) = a/√3, a/√6 or a/2 for a ± of a (<see cref="ReadingSpread"/>) and the derivatives by central differences over ± 10 µm,
/// one-sided where a shape ends (a cove of 0 cannot shrink). Holds while the fixture is nearly linear within the ±; a Monte Carlo run in the tests agrees to its own noise.
/// Source: JCGM 100:2008, 4.3.7, 4.3.9 and 5.1.2 (from memory, unverified).
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
    private static readonly Source Reading = Source.FromMemory("JCGM 100:2008, 4.3.7 and 4.3.9: standard uncertainty of a reading within ±");
    private static readonly Source Difference = Source.Derived("difference quotient over ± 10 µm, one-sided where the shape ends");

    private readonly double area;
    private readonly double? capacity;
    private readonly double areaSpread;
    private readonly double capacitySpread;
    private readonly ValueList<WorkingStep> steps;

    private FixtureUncertainty(double area, double? capacity, double areaSpread, double capacitySpread, IEnumerable<ReadingContribution> contributions, IEnumerable<WorkingStep> steps)
    {
        this.area = area;
        this.capacity = capacity;
        this.areaSpread = areaSpread;
        this.capacitySpread = capacitySpread;
        Contributions = new ValueList<ReadingContribution>(contributions);
        this.steps = new ValueList<WorkingStep>(steps);
    }

    /// <summary>The coated area.</summary>
    public Area CoatedArea => Area.FromSquareMeters(area);

    /// <summary>Its standard uncertainty.</summary>
    public Area StandardUncertaintyOfArea => Area.FromSquareMeters(areaSpread);

    /// <summary>The capacity; <see langword="null"/> for what holds no water.</summary>
    public Volume? WaterCapacity => capacity is double water ? Volume.FromCubicMeters(water) : null;

    /// <summary>Its standard uncertainty; <see langword="null"/> for what holds no water.</summary>
    public Volume? StandardUncertaintyOfCapacity => capacity is null ? null : Volume.FromCubicMeters(capacitySpread);

    /// <summary>What each reading adds, in the order in which they were given.</summary>
    public IReadOnlyList<ReadingContribution> Contributions { get; }

    /// <summary>Propagates the readings' ± through a fixture.</summary>
    /// <typeparam name="TMeasurements">The fixture's record of measurements.</typeparam>
    /// <param name="measurements">What the tape gave.</param>
    /// <param name="make">Works the fixture out.</param>
    /// <param name="readings">The readings that can be off; at least one.</param>
    /// <returns>Area, capacity and their standard uncertainties.</returns>
    /// <exception cref="ArgumentException">An argument is missing or a list is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The fixture cannot be, or a reading can be moved neither up nor down by 10 µm.</exception>
    public static FixtureUncertainty Of<TMeasurements>(TMeasurements measurements, Func<TMeasurements, IFixture> make, IEnumerable<TapeReading<TMeasurements>> readings)
        where TMeasurements : class
    {
        Guard.NotNull(measurements, nameof(measurements));
        Guard.NotNull(make, nameof(make));
        ValueList<TapeReading<TMeasurements>> list = Guard.List(readings, nameof(readings), 1);
        (double area, double? water) = Results(make(measurements));
        List<ReadingContribution> contributions = [];
        List<WorkingStep> steps = [];
        List<Expression> areas = [];
        List<Expression> waters = [];
        double areaSquares = 0;
        double waterSquares = 0;
        foreach (TapeReading<TMeasurements> reading in list)
        {
            double value = reading.Value(measurements).Meters;
            (double Area, double? Water, double At) high = Moved(Step) ?? (area, water, 0);
            (double Area, double? Water, double At) low = Moved(-Step) ?? (area, water, 0);
            double width = high.At - low.At;
            if (width == 0)
            {
                // Says why, in the fixture's own words.
                make(reading.With(measurements, Length.FromMeters(value + Step)));
            }

            double u = reading.StandardUncertainty.Meters;
            double areaSlope = (high.Area - low.Area) / width;
            double waterSlope = ((high.Water ?? 0) - (low.Water ?? 0)) / width;
            contributions.Add(new(reading.Name, u, areaSlope, waterSlope));
            areaSquares += areaSlope * u * (areaSlope * u);
            waterSquares += waterSlope * u * (waterSlope * u);

            string index = contributions.Count.ToString(CultureInfo.InvariantCulture);
            Expression across = Expression.Quantity("δ", width, Measure.Length);
            WorkingStep spread = new("standard uncertainty of " + reading.Name, "u_" + index, Expression.Quantity("a_" + index, reading.PlusMinus.Meters, Measure.Length) / reading.DivisorFormula, u, Measure.Length, Reading);
            WorkingStep slope = new("area per length of " + reading.Name, "c_" + index, (Expression.Quantity("A_+", high.Area, Measure.Area) - Expression.Quantity("A_−", low.Area, Measure.Area)) / across, areaSlope, Measure.Distance, Difference);
            steps.AddRange([spread, slope]);
            areas.Add(Expression.Square(slope.Result() * spread.Result()));
            if (water is not null)
            {
                WorkingStep fill = new("capacity per length of " + reading.Name, "v_" + index, (Expression.Quantity("V_+", high.Water ?? 0, Measure.Capacity) - Expression.Quantity("V_−", low.Water ?? 0, Measure.Capacity)) / across, waterSlope, Measure.Area, Difference);
                steps.Add(fill);
                waters.Add(Expression.Square(fill.Result() * spread.Result()));
            }

            (double Area, double? Water, double At)? Moved(double by)
            {
                try
                {
                    (double movedArea, double? movedWater) = Results(make(reading.With(measurements, Length.FromMeters(value + by))));
                    return (movedArea, movedWater, by);
                }
                catch (ArgumentOutOfRangeException)
                {
                    return null;
                }
            }
        }

        double areaSpread = Math.Sqrt(areaSquares);
        double waterSpread = Math.Sqrt(waterSquares);
        steps.Add(new("standard uncertainty of the coated area", "u_A", Expression.Sqrt(Expression.Sum(areas)), areaSpread, Measure.Area, Propagation));
        if (water is not null)
        {
            steps.Add(new("standard uncertainty of the capacity", "u_V", Expression.Sqrt(Expression.Sum(waters)), waterSpread, Measure.Capacity, Propagation));
        }

        return new FixtureUncertainty(area, water, areaSpread, waterSpread, contributions, steps);
    }

    /// <summary>How each slope and each standard uncertainty follows; the area and the capacity themselves are in the fixture's own derivation.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => new("Uncertainty of the tape", steps);

    /// <summary>Area and capacity with their standard uncertainties in one line, in metric units.</summary>
    /// <returns>Text such as <c>2.5724 m², u = 0.0061 m²; 219.8 L, u = 1.1 L</c>.</returns>
    public override string ToString()
    {
        string first = Measure.Area.Format(area) + ", u = " + Measure.Area.Format(areaSpread, figures: 2);
        return capacity is double water ? first + "; " + Measure.Capacity.Format(water) + ", u = " + Measure.Capacity.Format(capacitySpread, figures: 2) : first;
    }

    private static (double Area, double? Water) Results(IFixture fixture) => (fixture.CoatedArea.SquareMeters, fixture.WaterCapacity?.CubicMeters);
}
