using System;
using System.Collections.Generic;
using Refinish.Fixtures;
using UnitsNet;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Fixtures from two or three readings: the kind, what was taken, and assumptions where they are the caller's own.</summary>
internal static class RoughShapes
{
    public static OneOfShape<TakenReading> Taken { get; } = new OneOfShape<TakenReading>("takenReading")
        .Or("length", TakenLength(), reading => reading.Measure.Equals(Measure.Length))
        .Or("angle", TakenAngle(), reading => reading.Measure.Equals(Measure.Angle))
        .Or("number", TakenNumber());

    public static OneOfShape<ReadingAssumption> Assumption { get; } = new OneOfShape<ReadingAssumption>("readingAssumption")
        .Or("share", Share(), assumption => assumption.Form == AssumptionForm.Share)
        .Or("beyond", Beyond(), assumption => assumption.Form == AssumptionForm.Beyond)
        .Or(
            "usualLength",
            Usual("usualLengthAssumption", Quantities.Tape, si => Length.FromMeters(si), "Depth", 0, ReadingAssumption.Usual),
            assumption => assumption.Measure.Equals(Measure.Length))
        .Or(
            "usualAngle",
            Usual("usualAngleAssumption", Quantities.Angle, si => Angle.FromRadians(si), "RollTurn", 0, ReadingAssumption.Usual),
            assumption => assumption.Measure.Equals(Measure.Angle))
        .Or("usualNumber", Usual<double>("usualNumberAssumption", Number, si => si, "Feet", 4, ReadingAssumption.Usual));

    /// <summary>Assumptions of the kind are not written: they are the library's.</summary>
    public static ObjectShape<RoughFixture> Fixture { get; } = new Fields<RoughFixture>("roughFixture")
        .With("of", Kind(), it => it.Kind, out Slot<RoughKind> of)
        .With("taken", List(Taken), it => it.Taken, out Slot<IReadOnlyList<TakenReading>> taken)
        .WithOr("own", List(Assumption), it => it.OwnAssumptions, [], out Slot<IReadOnlyList<ReadingAssumption>> own)
        .MakingTogether(
            () => RoughFixture.RecessedBathtub(Length.FromInches(60), Length.FromInches(30)),
            v => RoughFixture.Of(of(v), taken(v), own(v)));

    private static ObjectShape<TakenReading> TakenLength() => new Fields<TakenReading>("takenLength")
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("value", Quantities.Tape, it => Length.FromMeters(it.Value), out Slot<Length> value)
        .With("plusMinus", Quantities.Tape, it => Length.FromMeters(it.PlusMinus), out Slot<Length> plusMinus)
        .Making(v => new TakenReading(name(v), value(v), plusMinus(v)));

    private static ObjectShape<TakenReading> TakenAngle() => new Fields<TakenReading>("takenAngle")
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("value", Quantities.Angle, it => Angle.FromRadians(it.Value), out Slot<Angle> value)
        .Making(v => new TakenReading(name(v), value(v)));

    private static ObjectShape<TakenReading> TakenNumber() => new Fields<TakenReading>("takenNumber")
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("value", Number, it => it.Value, out Slot<double> value)
        .Making(v => new TakenReading(name(v), value(v)));

    private static ObjectShape<ReadingAssumption> Share() => new Fields<ReadingAssumption>("shareAssumption")
        .With("reading", Text, it => it.Reading, out Slot<string> reading)
        .With("of", Text, it => it.Of!, out Slot<string> of)
        .WithOr("less", Text.OrNull(), it => it.Less, null, out Slot<string?> less)
        .With("least", Number, it => it.Least, out Slot<double> least)
        .With("likely", Number, it => it.Likely, out Slot<double> likely)
        .With("greatest", Number, it => it.Greatest, out Slot<double> greatest)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .MakingTogether(
            () => ReadingAssumption.Share("RimLength", "OverallLength", 0.8, 0.9, 1, Source.Invented("stand-in")),
            v => less(v) is string off
                ? ReadingAssumption.ShareOfRest(reading(v), of(v), off, least(v), likely(v), greatest(v), source(v))
                : ReadingAssumption.Share(reading(v), of(v), least(v), likely(v), greatest(v), source(v)));

    private static ObjectShape<ReadingAssumption> Beyond() => new Fields<ReadingAssumption>("beyondAssumption")
        .With("reading", Text, it => it.Reading, out Slot<string> reading)
        .With("of", Text, it => it.Of!, out Slot<string> of)
        .With("least", Quantities.Tape, Least, out Slot<Length> least)
        .With("likely", Quantities.Tape, Likely, out Slot<Length> likely)
        .With("greatest", Quantities.Tape, Greatest, out Slot<Length> greatest)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .MakingTogether(
            () => ReadingAssumption.Beyond("ApronHeight", "Depth", Length.Zero, Length.Zero, Length.Zero, Source.Invented("stand-in")),
            v => ReadingAssumption.Beyond(reading(v), of(v), least(v), likely(v), greatest(v), source(v)));

    private static ObjectShape<ReadingAssumption> Usual<T>(string name, Shape<T> shape, Func<double, T> from, string standIn, double common,
        Func<string, T, T, T, Source, ReadingAssumption> make) => new Fields<ReadingAssumption>(name)
        .With("reading", Text, it => it.Reading, out Slot<string> reading)
        .With("least", shape, it => from(it.Least), out Slot<T> least)
        .With("likely", shape, it => from(it.Likely), out Slot<T> likely)
        .With("greatest", shape, it => from(it.Greatest), out Slot<T> greatest)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .MakingTogether(
            () => make(standIn, from(common), from(common), from(common), Source.Invented("stand-in")),
            v => make(reading(v), least(v), likely(v), greatest(v), source(v)));

    private static Length Least(ReadingAssumption assumption) => Length.FromMeters(assumption.Least);

    private static Length Likely(ReadingAssumption assumption) => Length.FromMeters(assumption.Likely);

    private static Length Greatest(ReadingAssumption assumption) => Length.FromMeters(assumption.Greatest);

    private static NamedShape<RoughKind> Kind() => new(RoughKind.Kinds, kind => kind.Id);
}
