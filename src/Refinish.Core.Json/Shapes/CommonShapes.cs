using System.Collections.Generic;
using System.Linq;
using Refinish.Colours;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Sources and cautions, which travel with everything, and colours.</summary>
internal static class CommonShapes
{
    public static Shape<Source> Source { get; } = new OneOfShape<Source>("source")
        .Or("published", Published(), source => source.Kind == SourceKind.Published)
        .Or("derived", Unpublished("derivedSource", Refinish.Source.Derived), source => source.Kind == SourceKind.Derived)
        .Or("commonPractice", Unpublished("commonPracticeSource", Refinish.Source.CommonPractice),
            source => source.Kind == SourceKind.CommonPractice)
        .Or("fromMemory", Unpublished("fromMemorySource", Refinish.Source.FromMemory), source => source.Kind == SourceKind.FromMemory)
        .Or("invented", Unpublished("inventedSource", Refinish.Source.Invented), source => source.Kind == SourceKind.Invented)
        .Or("supplied", Unpublished("suppliedSource", Refinish.Source.Supplied), source => source.Kind == SourceKind.Supplied);

    private static readonly Audience[] Everybody = [Audience.Crew, Audience.Customer, Audience.Occupant];

    /// <summary>Whom a caution concerns, one by one.</summary>
    public static Shape<IReadOnlyList<Audience>> Audiences { get; } = List(new WordShape<Audience>(Everybody));

    public static ObjectShape<Caution> Caution { get; } = new Fields<Caution>("caution")
        .With("code", Text, it => it.Code, out Slot<string> code)
        .With("hazard", new WordShape<Hazard>(), it => it.Hazard, out Slot<Hazard> hazard)
        .With("sentence", Text, it => it.Sentence, out Slot<string> sentence)
        .With("decidedBy", Text, it => it.DecidedBy, out Slot<string> decidedBy)
        .With("source", Source, it => it.Source, out Slot<Source> source)
        .With("concerns", Audiences, Concerned, out Slot<IReadOnlyList<Audience>> concerns)
        .Making(v => new Caution(
            code(v), hazard(v), sentence(v), decidedBy(v), source(v), concerns(v).Aggregate(Audience.None, (all, one) => all | one)));

    public static ObjectShape<CieLab> Colour { get; } = new Fields<CieLab>("cieLab")
        .With("lightness", Number, it => it.L, out Slot<double> lightness)
        .With("a", Number, it => it.A, out Slot<double> a)
        .With("b", Number, it => it.B, out Slot<double> b)
        .Making(v => new CieLab(lightness(v), a(v), b(v)));

    public static Shape<IReadOnlyList<T>> List<T>(Shape<T> item) => new ListShape<T>(item);

    public static Audience[] Concerned(Caution caution) => Concerned(caution.Concerns);

    public static Audience[] Concerned(Audience concerns) => [.. Everybody.Where(one => concerns.HasFlag(one))];

    private static ObjectShape<Source> Published() => new Fields<Source>("publishedSource")
        .With("document", Text, it => it.Document, out Slot<string> document)
        .With("section", Text, it => it.Section!, out Slot<string> section)
        .Making(v => Refinish.Source.Published(document(v), section(v)));

    // What is practised, recalled, derived, invented or supplied stands in the same property as the title of a document.
    private static ObjectShape<Source> Unpublished(string name, System.Func<string, Source> make) => new Fields<Source>(name)
        .With("document", Text, it => it.Document, out Slot<string> document)
        .Making(v => make(document(v)));
}
