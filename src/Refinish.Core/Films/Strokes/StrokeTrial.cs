using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Threading;
using Refinish.Fixtures;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// One way of spraying a fixture: rows over each side, and the time on each side that reaches the minimum with the least coating.
/// </summary>
internal sealed class StrokeTrial
{
    /// <summary>A hair over the minimum, so that rounding in another order does not fall short of it.</summary>
    private const double Hair = 1 + 1e-7;

    public const string Unreached = "no stroke reaches it: it faces away, lies in a shadow, or there is no room for the gun";
    private const string TooThin = "even the slowest speed leaves less than the minimum";
    private const string GivenUp = "given up as tolerated: reaching it would cost more coating than the rest";

    private readonly StrokeSearch search;
    private readonly SprayFilmLimits limits;
    private readonly List<StrokeFace> sides = [];
    private readonly List<List<SprayStroke>> strokes = [];
    private readonly List<double[]> films = [];
    private readonly double[] volumes;
    private readonly double[] times;
    private readonly string?[] reasons;

    public StrokeTrial(StrokeSearch search, SprayFaces faces, List<StrokeFace> all, SprayFilmLimits limits, double overlap, double inset, bool crossed, CancellationToken cancellation)
    {
        this.search = search;
        this.limits = limits;
        Overlap = overlap;
        Inset = inset;
        Crossed = crossed;
        foreach (StrokeFace side in all)
        {
            List<SprayStroke> rows = side.Strokes(search.Pattern, search.Hand, overlap, inset, crossed);
            if (rows.Count > 0)
            {
                sides.Add(side);
                strokes.Add(rows);
                SprayFan[] fans = new StrokePlan(search.Gun, search.Pattern, rows).Fans();
                films.Add(SprayBuild.Films(faces, fans, SprayBuild.VectorIsSupported, -1, null, cancellation));
            }
        }

        double rate = search.Gun.FluidRate.CubicMetersPerSecond;
        volumes = [.. strokes.Select(rows => rows.Sum(stroke => rate * stroke.LengthSi / stroke.Speed.MetersPerSecond))];
        reasons = new string?[faces.Count];
        times = Times(faces, cancellation);
        Volume = volumes.Select((volume, k) => volume * times[k]).Sum();
    }

    public double Overlap { get; }

    public double Inset { get; }

    public bool Crossed { get; }

    /// <summary>Coating through the gun.</summary>
    public double Volume { get; }

    /// <summary>Area that cannot be brought to the minimum; what is given up as tolerated does not count.</summary>
    public double Short { get; private set; }

    public bool IsBetterThan(StrokeTrial? other) =>
        sides.Count > 0 && (other is null || Short < other.Short - 1e-9 || (Short < other.Short + 1e-9 && Volume < other.Volume));

    public IEnumerable<SprayStroke> Strokes() =>
        strokes.SelectMany((rows, k) => rows.Select(stroke => stroke with { Speed = Speed.FromMetersPerSecond(SpeedOf(k)) }));

    public IEnumerable<StrokeSide> Sides() =>
        sides.Select((side, k) => new StrokeSide(side.Zone, side.Side, strokes[k].Count, SpeedOf(k), volumes[k] * times[k]));

    /// <summary>What the map shows under the minimum, by zone and reason.</summary>
    public IEnumerable<StrokeShortfall> Shortfalls(FilmMap map, SprayFaces faces)
    {
        SortedDictionary<string, (FixtureZoneKind? Zone, string Reason, double Area, int Worst)> sums = new(StringComparer.Ordinal);
        for (int i = 0; i < faces.Count; i++)
        {
            int place = faces.Order[i];
            if (faces.Area[i] > 0 && map.Films[place] < limits.Minimum.Meters)
            {
                FixtureZoneKind? zone = map.Mesh.Triangles[place].Zone;
                string reason = reasons[i] ?? GivenUp;
                string key = string.Format(CultureInfo.InvariantCulture, "{0:D3} {1}", zone is FixtureZoneKind kind ? (int)kind : 999, reason);
                (FixtureZoneKind?, string, double Area, int Worst) sum = sums.TryGetValue(key, out var found) ? found : (zone, reason, 0, i);
                int worst = map.Films[place] < map.Films[faces.Order[sum.Worst]] ? i : sum.Worst;
                sums[key] = (zone, reason, sum.Area + faces.Area[i], worst);
            }
        }

        return sums.Values.Select(sum =>
            new StrokeShortfall(sum.Zone, sum.Area, new(faces.X[sum.Worst], faces.Y[sum.Worst], faces.Z[sum.Worst]), sum.Reason));
    }

    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} overlap, edge rows {1} of the fan inside{2}: {3}, {4} out of reach",
        Measure.Percent.Format(Overlap, DisplayUnits.Si, 3), Measure.Percent.Format(Inset, DisplayUnits.Si, 3),
        Crossed ? ", crossed" : string.Empty, Measure.Liquid.Format(Volume, DisplayUnits.Si, 4),
        Measure.SmallArea.Format(Short, DisplayUnits.Si, 3));

    // Time 1 is the speed of the hand.
    private double SpeedOf(int side) =>
        Math.Min(search.FastestSpeed.MetersPerSecond,
            Math.Max(search.SlowestSpeed.MetersPerSecond, search.Hand.Speed.MetersPerSecond / times[side]));

    private double[] Times(SprayFaces faces, CancellationToken cancellation)
    {
        double least = search.Hand.Speed.MetersPerSecond / search.FastestSpeed.MetersPerSecond;
        double most = search.Hand.Speed.MetersPerSecond / search.SlowestSpeed.MetersPerSecond;
        double minimum = limits.Minimum.Meters * Hair;
        double area = 0;
        bool[] asked = new bool[faces.Count];
        for (int i = 0; i < faces.Count; i++)
        {
            double sum = Film(i, null);
            asked[i] = faces.Area[i] > 0 && sum * most >= minimum;
            area += faces.Area[i];
            if (!asked[i] && faces.Area[i] > 0)
            {
                reasons[i] = sum == 0 ? Unreached : TooThin;
                Short += faces.Area[i];
            }
        }

        double allowance = search.ToleratedUnder.DecimalFractions * area;
        while (true)
        {
            (double[] found, List<int> rows) = Programme(asked, least, most, minimum, cancellation);
            if (allowance <= 0)
            {
                return found;
            }

            // The triangles that hold the others up are the ones just at the minimum.
            double given = 0;
            foreach (int i in rows)
            {
                if (asked[i] && Film(i, found) < minimum * (1 + 1e-6) && given + faces.Area[i] <= allowance)
                {
                    asked[i] = false;
                    given += faces.Area[i];
                }
            }

            if (given == 0)
            {
                return found;
            }

            allowance -= given;
        }
    }

    /// <summary>
    /// The least coating, and the triangles that had a say in it. Broken rows are added a few at a time, the thinnest first.
    /// </summary>
    private (double[] Times, List<int> Rows) Programme(bool[] asked, double least, double most, double minimum, CancellationToken cancellation)
    {
        DualSimplex programme = new(volumes);
        double[] unit = new double[volumes.Length];
        for (int k = 0; k < volumes.Length; k++)
        {
            unit[k] = -1;
            programme.Add(unit, least - most);
            unit[k] = 0;
        }

        List<int> rows = [];
        double[] found = new double[volumes.Length];
        double[] row = new double[volumes.Length];
        while (true)
        {
            cancellation.ThrowIfCancellationRequested();
            if (!programme.Solve())
            {
                throw new InvalidOperationException("The rules contradict each other although the slowest speed meets them all.");
            }

            double[] over = programme.Values();
            for (int k = 0; k < found.Length; k++)
            {
                found[k] = least + over[k];
            }

            // The thinnest triangle of each sixty-fourth of the mesh.
            int added = 0;
            int stride = Math.Max(1, asked.Length / 64);
            for (int first = 0; first < asked.Length; first += stride)
            {
                int thinnest = -1;
                double film = minimum * (1 - 1e-10);
                for (int i = first; i < Math.Min(asked.Length, first + stride); i++)
                {
                    if (asked[i] && Film(i, found) < film)
                    {
                        film = Film(i, found);
                        thinnest = i;
                    }
                }

                if (thinnest >= 0)
                {
                    double start = 0;
                    for (int k = 0; k < row.Length; k++)
                    {
                        // In parts of the minimum, so that the numbers are near one.
                        row[k] = films[k][thinnest] / minimum;
                        start += row[k] * least;
                    }

                    programme.Add(row, 1 - start);
                    rows.Add(thinnest);
                    added++;
                }
            }

            if (added == 0)
            {
                return (found, rows);
            }
        }
    }

    private double Film(int triangle, double[]? with)
    {
        double sum = 0;
        for (int k = 0; k < films.Count; k++)
        {
            sum += films[k][triangle] * (with is null ? 1 : with[k]);
        }

        return sum;
    }
}
