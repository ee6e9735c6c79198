using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Puts the table of one kind of rough fixture together; lengths in metres.</summary>
internal sealed class RoughKindBuilder(string id, string name, Type fixture)
{
    public static readonly Source Guess = Source.Invented("usual proportions of such fixtures, from no document");

    private static readonly Bounds AnyLength = Bounds.NotNegative(Measure.Length, 20);

    private readonly List<RoughReading> readings = [];
    private string[] closing = [];

    public RoughKindBuilder Needed(string reading, double least, double greatest) =>
        Add(reading, Measure.Length, Bounds.Between(least, greatest, Measure.Length), null);

    public RoughKindBuilder Usual(string reading, double least, double likely, double greatest, Source? source = null) => Add(
        reading, Measure.Length, AnyLength, ReadingAssumption.Usual(reading, Length.FromMeters(least), Length.FromMeters(likely),
            Length.FromMeters(greatest), source ?? Guess));

    /// <summary>A length that is taken as one value unless it is said otherwise.</summary>
    public RoughKindBuilder Fixed(string reading, double value, string why) => Usual(reading, value, value, value, Source.Invented(why));

    /// <summary>A length either way, 0 unless it is said otherwise.</summary>
    public RoughKindBuilder Shift(string reading, string why) => Add(
        reading, Measure.Length, Bounds.Between(-1, 1, Measure.Length), ReadingAssumption.Usual(reading, Length.Zero, Length.Zero,
            Length.Zero, Source.Invented(why)));

    public RoughKindBuilder Number(string reading, double least, double likely, double greatest, Source? source = null) =>
        Add(reading, Measure.Number, Bounds.NotNegative(Measure.Number, 1000), ReadingAssumption.Usual(reading, least, likely, greatest,
            source ?? Guess));

    public RoughKindBuilder Count(string reading, int usual, string why)
    {
        Number(reading, usual, usual, usual, Source.Invented(why));
        readings[readings.Count - 1].IsWhole = true;
        return this;
    }

    public RoughKindBuilder Turn(string reading, double least, double likely, double greatest) => Add(
        reading, Measure.Angle, Bounds.Between(0, 2 * Math.PI, Measure.Angle),
        ReadingAssumption.Usual(reading, Angle.FromDegrees(least), Angle.FromDegrees(likely), Angle.FromDegrees(greatest), Guess));

    public RoughKindBuilder Share(string reading, string of, double least, double likely, double greatest, Source? source = null) =>
        Add(reading, Measure.Length, AnyLength, ReadingAssumption.Share(reading, of, least, likely, greatest, source ?? Guess));

    public RoughKindBuilder ShareOfRest(string reading, string of, string less, double least, double likely, double greatest) =>
        Add(reading, Measure.Length, AnyLength, ReadingAssumption.ShareOfRest(reading, of, less, least, likely, greatest, Guess));

    public RoughKindBuilder Beyond(string reading, string of, double least, double likely, double greatest, Source? source = null) => Add(
        reading, Measure.Length, AnyLength, ReadingAssumption.Beyond(reading, of, Length.FromMeters(least), Length.FromMeters(likely),
            Length.FromMeters(greatest), source ?? Guess));

    /// <summary>What the last reading can be beside those that are known.</summary>
    public RoughKindBuilder Between(Func<KnownReadings, (double Low, double High)> limits)
    {
        readings[readings.Count - 1].Limits = limits;
        return this;
    }

    /// <summary>The whole is the sum of its parts: of all of them but one the last follows.</summary>
    public RoughKindBuilder Closing(string whole, params string[] parts)
    {
        closing = [whole, .. parts];
        return this;
    }

    /// <summary>The same rows for several kinds.</summary>
    public RoughKindBuilder With(Func<RoughKindBuilder, RoughKindBuilder> rows) => rows(this);

    public RoughKind Making(Func<KnownReadings, IFixture> make) => new(id, name, fixture, readings, closing, make);

    private RoughKindBuilder Add(string reading, Measure measure, Bounds allowed, ReadingAssumption? assumption)
    {
        readings.Add(new RoughReading(reading, measure, allowed, assumption));
        return this;
    }
}
