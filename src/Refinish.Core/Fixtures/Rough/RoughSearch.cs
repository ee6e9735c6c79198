using System;
using System.Collections.Generic;

namespace Refinish.Fixtures;

/// <summary>Looks for the least and the greatest area over the open readings of a rough fixture, and for what each of them does.</summary>
internal sealed class RoughSearch(RoughShape shape, Func<IFixture, double> areaOf)
{
    private static readonly Source PlusMinus = Source.Supplied("the ± of the reading");
    private const int Sweeps = 8;

    private static readonly double[] Ends = [-1, 1, 0];
    private static readonly double[] Quarters = [-0.5, 0.5];

    private readonly double likely = areaOf(shape.Likely());

    public AreaRange Range(RoughKind kind)
    {
        double[] middle = new double[shape.Count];
        double[] top = Best(1, Filled(1), Best(1, Filled(-1), Best(1, middle, middle)));
        double[] bottom = Best(-1, Filled(1), Best(-1, Filled(-1), Best(-1, middle, middle)));
        double greatest = At(top) ?? likely;
        double least = At(bottom) ?? likely;
        List<(int Place, double High, double Low)> without = [];
        foreach (int place in shape.Open)
        {
            double high = At(Climb(1, With(top, place, 0), place)) ?? likely;
            double low = At(Climb(-1, With(bottom, place, 0), place)) ?? likely;
            without.Add((place, high, low));

            // A search that starts elsewhere may come out further.
            greatest = Math.Max(greatest, high);
            least = Math.Min(least, low);
        }

        List<OpenReading> readings = [];
        foreach ((int place, double high, double low) in without)
        {
            RoughReading reading = kind.All[place];
            readings.Add(new OpenReading(
                reading.Name,
                shape.Taken(place) is not null,
                shape.BandAt(place),
                reading.Measure,
                (Alone(place, -1), Alone(place, 1), greatest - least - (high - low)),
                shape.Taken(place) is null ? shape.Assumption(place)!.Source : PlusMinus));
        }

        return new AreaRange(least, likely, greatest, readings);
    }

    private double[] Best(int sign, double[] start, double[] other)
    {
        double[] found = Climb(sign, start, -1);
        return (At(found) * sign ?? double.NegativeInfinity) > (At(other) * sign ?? double.NegativeInfinity) ? found : other;
    }

    // Each reading in turn to whichever end widens the range, until none does.
    private double[] Climb(int sign, double[] start, int kept)
    {
        double[] at = (double[])start.Clone();
        double best = At(at) * sign ?? double.NegativeInfinity;
        for (int sweep = 0; sweep < Sweeps && Sweep(Ends); sweep++)
        {
        }

        Sweep(Quarters);
        return at;

        bool Sweep(double[] candidates)
        {
            bool moved = false;
            foreach (int place in shape.Open)
            {
                foreach (double candidate in candidates)
                {
                    double before = at[place];
                    if (place == kept || candidate == before)
                    {
                        continue;
                    }

                    at[place] = candidate;
                    if (At(at) * sign is double area && area > best + (1e-12 * Math.Abs(best)))
                    {
                        best = area;
                        moved = true;
                    }
                    else
                    {
                        at[place] = before;
                    }
                }
            }

            return moved;
        }
    }

    private double Alone(int place, double at) => At(With(new double[shape.Count], place, at)) ?? likely;

    private double? At(double[] places) => shape.TryMake(places) is IFixture fixture ? areaOf(fixture) : null;

    private double[] Filled(double at)
    {
        double[] places = new double[shape.Count];
        foreach (int place in shape.Open)
        {
            places[place] = at;
        }

        return places;
    }

    private static double[] With(double[] places, int place, double at)
    {
        double[] other = (double[])places.Clone();
        other[place] = at;
        return other;
    }
}
