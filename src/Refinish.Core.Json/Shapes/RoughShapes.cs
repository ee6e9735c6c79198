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
        .Or("usualLength", UsualLength(), assumption => assumption.Measure.Equals(Measure.Length))
        .Or("usualAngle", UsualAngle(), assumption => assumption.Measure.Equals(Measure.Angle))
        .Or("usualNumber", UsualNumber());

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

    private static ObjectShape<ReadingAssumption> UsualLength() => new Fields<ReadingAssumption>("usualLengthAssumption")
        .With("reading", Text, it => it.Reading, out Slot<string> reading)
        .With("least", Quantities.Tape, Least, out Slot<Length> least)
        .With("likely", Quantities.Tape, Likely, out Slot<Length> likely)
        .With("greatest", Quantities.Tape, Greatest, out Slot<Length> greatest)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .MakingTogether(
            () => ReadingAssumption.Usual("Depth", Length.Zero, Length.Zero, Length.Zero, Source.Invented("stand-in")),
            v => ReadingAssumption.Usual(reading(v), least(v), likely(v), greatest(v), source(v)));

    private static ObjectShape<ReadingAssumption> UsualAngle() => new Fields<ReadingAssumption>("usualAngleAssumption")
        .With("reading", Text, it => it.Reading, out Slot<string> reading)
        .With("least", Quantities.Angle, it => Angle.FromRadians(it.Least), out Slot<Angle> least)
        .With("likely", Quantities.Angle, it => Angle.FromRadians(it.Likely), out Slot<Angle> likely)
        .With("greatest", Quantities.Angle, it => Angle.FromRadians(it.Greatest), out Slot<Angle> greatest)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .MakingTogether(
            () => ReadingAssumption.Usual("RollTurn", Angle.Zero, Angle.Zero, Angle.Zero, Source.Invented("stand-in")),
            v => ReadingAssumption.Usual(reading(v), least(v), likely(v), greatest(v), source(v)));

    private static ObjectShape<ReadingAssumption> UsualNumber() => new Fields<ReadingAssumption>("usualNumberAssumption")
        .With("reading", Text, it => it.Reading, out Slot<string> reading)
        .With("least", Number, it => it.Least, out Slot<double> least)
        .With("likely", Number, it => it.Likely, out Slot<double> likely)
        .With("greatest", Number, it => it.Greatest, out Slot<double> greatest)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .MakingTogether(
            () => ReadingAssumption.Usual("Feet", 4, 4, 4, Source.Invented("stand-in")),
            v => ReadingAssumption.Usual(reading(v), least(v), likely(v), greatest(v), source(v)));

    private static Length Least(ReadingAssumption assumption) => Length.FromMeters(assumption.Least);

    private static Length Likely(ReadingAssumption assumption) => Length.FromMeters(assumption.Likely);

    private static Length Greatest(ReadingAssumption assumption) => Length.FromMeters(assumption.Greatest);

    private static NamedShape<RoughKind> Kind() => new(RoughKind.Kinds, kind => kind.Id);
}
