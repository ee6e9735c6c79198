using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>
/// Works the readings of a rough fixture out one after another, each between its least and its greatest at a place from −1 over 0, the most
/// likely, to 1. A reading that was taken is moved within its ±. What was taken cuts the bands of readings that it depends on.
/// </summary>
internal sealed class RoughShape
{
    /// <summary>
    /// How often a set of readings that makes no fixture is moved halfway to the most likely one before the most likely one is taken.
    /// </summary>
    private const int Halvings = 6;

    private readonly RoughKind kind;
    private readonly TakenReading?[] taken;
    private readonly ReadingAssumption?[] assumptions;
    private readonly int[] closing;

    public RoughShape(RoughKind kind, IEnumerable<TakenReading> readings, IEnumerable<ReadingAssumption> own)
    {
        this.kind = kind;
        taken = new TakenReading?[kind.All.Count];
        assumptions = [.. kind.All.Select(reading => reading.Assumption)];
        closing = [.. kind.Closing.Select(part => kind.Places[part])];
        foreach (ReadingAssumption assumption in own)
        {
            assumptions[kind.Places[assumption.Reading]] = assumption;
        }

        foreach (TakenReading reading in readings)
        {
            taken[kind.Places[reading.Name]] = reading;
        }

        Open = [.. Enumerable.Range(0, taken.Length).Where(i =>
            !Follows(i) && (taken[i] is TakenReading reading ? reading.PlusMinus > 0 : assumptions[i] is { IsExact: false }))];
    }

    public int Count => taken.Length;

    /// <summary>The places of the readings that are not exact.</summary>
    public IReadOnlyList<int> Open { get; }

    public TakenReading? Taken(int place) => taken[place];

    public ReadingAssumption? Assumption(int place) => assumptions[place];

    /// <summary>Least, most likely and greatest of what is drawn for an open reading, in the terms of its assumption.</summary>
    public (double Least, double Likely, double Greatest) Points(int place) => taken[place] is TakenReading reading
        ? (reading.Value - reading.PlusMinus, reading.Value, reading.Value + reading.PlusMinus)
        : (assumptions[place]!.Least, assumptions[place]!.Likely, assumptions[place]!.Greatest);

    /// <summary>The place from −1 to 1 of a drawn point.</summary>
    public double PlaceOf(int place, double point)
    {
        (double least, double likely, double greatest) = Points(place);
        double share = point <= likely ? (likely == least ? 0 : (point - likely) / (likely - least))
            : (point - likely) / (greatest - likely);
        return Math.Max(-1, Math.Min(1, share));
    }

    /// <summary>The fixture at given places; null when the readings make none.</summary>
    public IFixture? TryMake(double[] places)
    {
        try
        {
            return kind.Make(Values(places));
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    /// <summary>The fixture at given places, moved towards the most likely one until it can be.</summary>
    public IFixture Make(double[] places)
    {
        double[] at = (double[])places.Clone();
        for (int i = 0; i < Halvings; i++)
        {
            if (TryMake(at) is IFixture fixture)
            {
                return fixture;
            }

            for (int j = 0; j < at.Length; j++)
            {
                at[j] /= 2;
            }
        }

        return Likely();
    }

    /// <summary>The most likely fixture.</summary>
    public IFixture Likely() => kind.Make(Values(new double[Count]));

    /// <summary>The readings at given places.</summary>
    public double[] Values(double[] places)
    {
        double[] values = new double[Count];
        bool[] known = new bool[Count];
        for (int i = 0; i < Count; i++)
        {
            if (taken[i] is TakenReading reading)
            {
                values[i] = reading.Value + (places[i] * reading.PlusMinus);
                known[i] = true;
            }
        }

        Settle(values, known);
        KnownReadings readings = new(kind.Places, values, known);
        for (int i = 0; i < Count; i++)
        {
            if (!known[i])
            {
                values[i] = Closed(i, values, known) ?? At(Band(i, readings, values, known), places[i]);
                known[i] = true;
            }
        }

        return values;
    }

    /// <summary>Least, most likely and greatest of a reading with the others as they are.</summary>
    public (double Least, double Likely, double Greatest) BandAt(int place)
    {
        double[] places = new double[Count];
        double likely = Values(places)[place];
        places[place] = -1;
        double least = Values(places)[place];
        places[place] = 1;
        return (least, likely, Values(places)[place]);
    }

    /// <summary>
    /// What the assumption of a reading allows beside the most likely values of the others; null where nothing is assumed or it is left
    /// out.
    /// </summary>
    public (double Least, double Greatest)? Usual(int place)
    {
        if (assumptions[place] is not { IsExact: false } assumption || Follows(place))
        {
            return null;
        }

        double[] values = Values(new double[Count]);
        (double of, double less) = Bases(assumption, values);
        return (assumption.At(assumption.Least, of, less).Value, assumption.At(assumption.Greatest, of, less).Value);
    }

    // The last part of a sum of which everything was taken keeps the sum when the others move within their ±.
    private void Settle(double[] values, bool[] known)
    {
        if (closing.Length == 0 || !Array.TrueForAll(closing, place => known[place]))
        {
            return;
        }

        int last = closing[closing.Length - 1];
        double moved = 0;
        for (int i = 0; i < closing.Length - 1; i++)
        {
            double by = values[closing[i]] - taken[closing[i]]!.Value;
            moved += i == 0 ? by : -by;
        }

        values[last] = taken[last]!.Value + moved;
    }

    // Whether a reading follows from the others of its sum, so that it is not open itself: the last of those that were not taken, or the
    // last of all.
    private bool Follows(int place)
    {
        int last = -1;
        foreach (int part in closing)
        {
            last = taken[part] is null ? part : last;
        }

        return closing.Length > 0 && place == (last < 0 ? closing[closing.Length - 1] : last);
    }

    private double? Closed(int place, double[] values, bool[] known)
    {
        int at = Array.IndexOf(closing, place);
        if (at < 0 || !Array.TrueForAll(closing, part => part == place || known[part]))
        {
            return null;
        }

        double rest = values[closing[0]];
        for (int i = 1; i < closing.Length; i++)
        {
            rest += i == at ? 0 : at == 0 ? values[closing[i]] : -values[closing[i]];
        }

        return at == 0 ? rest - values[closing[0]] : Math.Abs(rest) < PlaneShapes.LastDigits ? 0 : rest;
    }

    private (double Least, double Likely, double Greatest) Band(int place, KnownReadings readings, double[] values, bool[] known)
    {
        ReadingAssumption assumption = assumptions[place]!;
        (double of, double less) = Bases(assumption, values);
        double likely = assumption.At(assumption.Likely, of, less).Value;
        (double Low, double High) band = (
            assumption.At(assumption.Least, of, less).Value, assumption.At(assumption.Greatest, of, less).Value);
        if (kind.All[place].Limits is { } limits)
        {
            (double low, double high) = limits(readings);
            band = (Math.Max(band.Low, low), Math.Min(band.High, high));

            // Nothing of the band can be: what can be and lies nearest, or, where nothing can be, what the fixture itself will refuse.
            double nearest = low <= high ? Math.Max(low, Math.Min(high, likely)) : likely;
            band = band.Low <= band.High ? band : (nearest, nearest);
        }

        // A reading that rests on this one and was taken says between what this one lies, unless it is none of the usual ones.
        foreach ((double Low, double High) told in Told(place, values, known))
        {
            (double Low, double High) both = (Math.Max(band.Low, told.Low), Math.Min(band.High, told.High));
            band = both.Low <= both.High ? both : band;
        }

        return (band.Low, Math.Max(band.Low, Math.Min(band.High, likely)), band.High);
    }

    private IEnumerable<(double Low, double High)> Told(int place, double[] values, bool[] known)
    {
        string name = kind.All[place].Name;
        for (int i = 0; i < Count; i++)
        {
            if (taken[i] is null || values[i] == 0 || assumptions[i] is not ReadingAssumption assumption)
            {
                continue;
            }

            bool isWhole = assumption.Of == name && (assumption.Less is null || known[kind.Places[assumption.Less]]);
            bool isTakenOff = assumption.Less == name && known[kind.Places[assumption.Of!]];
            (double of, double less) = isWhole || isTakenOff ? Bases(assumption, values) : (0, 0);
            if (isWhole && assumption.Form == AssumptionForm.Beyond)
            {
                yield return (values[i] - assumption.Greatest, values[i] - assumption.Least);
            }
            else if (isWhole && assumption.Greatest > 0)
            {
                yield return (less + (values[i] / assumption.Greatest), assumption.Least > 0 ? less + (values[i] / assumption.Least)
                    : double.PositiveInfinity);
            }
            else if (isTakenOff && assumption.Greatest > 0)
            {
                yield return (assumption.Least > 0 ? of - (values[i] / assumption.Least) : double.NegativeInfinity,
                    of - (values[i] / assumption.Greatest));
            }
        }
    }

    private (double Of, double Less) Bases(ReadingAssumption assumption, double[] values) => (
        assumption.Of is null ? 0 : values[kind.Places[assumption.Of]],
        assumption.Less is null ? 0 : values[kind.Places[assumption.Less]]);

    private static double At((double Least, double Likely, double Greatest) band, double place) =>
        place < 0 ? band.Likely + (place * (band.Likely - band.Least)) : band.Likely + (place * (band.Greatest - band.Likely));
}
