using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Refinish.Json.Shapes;

namespace Refinish.Json.Tests;

/// <summary>What an input is, which decides what its least and greatest values can be.</summary>
internal enum InputKind
{
    Quantity, Number, Count, Money, YesNo, Choice, Instant, Day, Clock, Offset,
}

/// <summary>One number, time or choice of a job, at the place of a document where it stands.</summary>
/// <param name="Name">Shape and field, such as <c>cureTimes.potLife</c>: the same wherever it stands.</param>
/// <param name="Path">The place, such as <c>$.catalogue.products[0].cure.potLife</c>.</param>
/// <param name="Choices">What may be chosen; empty for what is no choice.</param>
internal sealed partial record SweptInput(string Name, string Path, InputKind Kind, IReadOnlyList<string> Choices)
{
    /// <summary>How many objects and lists lie around it.</summary>
    public int Depth => Path.Count(sign => sign is '.' or '[');

    /// <summary>Every input of a job's document, in order. A list of values is one input, at its first value.</summary>
    public static IEnumerable<SweptInput> Of(JsonNode document)
    {
        foreach ((JsonObject owner, IFieldsShape shape, IField field, string path) in Walk.Fields(JobShapes.Job, document))
        {
            Shape inner = field.Shape;
            string at = path;
            JsonNode? value = owner[field.Name];
            while (value is not null && inner is IHolderShape or IThroughShape)
            {
                if (inner is IHolderShape holder && value is JsonArray list)
                {
                    at += "[0]";
                    value = list.Count > 0 ? list[0] : null;
                    inner = holder.Item;
                }
                else
                {
                    inner = inner is IHolderShape same ? same.Item : ((IThroughShape)inner).Inner;
                }
            }

            if (value is not null && KindOf(inner, out IReadOnlyList<string> choices) is InputKind kind && !(kind == InputKind.Choice && value is JsonObject))
            {
                yield return new SweptInput(shape.Name + "." + field.Name, at, kind, choices);
            }
        }
    }

    /// <summary>The name of every input that a job can have, whatever its kinds of fixtures, defects, clocks and sources.</summary>
    public static IReadOnlyCollection<string> All { get; } = new SortedSet<string>(
        Walk.Shapes(JobShapes.Job).OfType<IFieldsShape>().SelectMany(
            shape => shape.Fields.Where(field => KindOf(Innermost(field.Shape), out _) is not null).Select(field => shape.Name + "." + field.Name)));

    public static JsonNode? Get(JsonNode document, string path) =>
        Steps(path).Aggregate((JsonNode?)document, (node, step) => step is int index ? node!.AsArray()[index] : node!.AsObject()[(string)step]);

    public static void Set(JsonNode document, string path, JsonNode? value)
    {
        object[] steps = [.. Steps(path)];
        JsonNode owner = steps[..^1].Aggregate(document, (node, step) => step is int index ? node.AsArray()[index]! : node.AsObject()[(string)step]!);
        if (steps[^1] is int last)
        {
            owner.AsArray()[last] = value;
        }
        else
        {
            owner.AsObject()[(string)steps[^1]] = value;
        }
    }

    private static IEnumerable<object> Steps(string path) => Step().Matches(path).Select(
        step => step.Groups[1].Success ? (object)step.Groups[1].Value : int.Parse(step.Groups[2].Value, CultureInfo.InvariantCulture));

    private static Shape Innermost(Shape shape) => shape switch
    {
        IHolderShape holder => Innermost(holder.Item),
        IThroughShape through => Innermost(through.Inner),
        _ => shape,
    };

    private static InputKind? KindOf(Shape shape, out IReadOnlyList<string> choices)
    {
        choices = shape switch
        {
            FixedUnitShape => [],
            IWordShape words => words.Words,
            MaterialShape materials => [.. materials.StandIns.Select(material => material.Id)],
            IScalarShape { Keywords: var keywords } when keywords.StartsWith("\"enum\"", System.StringComparison.Ordinal) =>
                [.. JsonNode.Parse("{" + keywords + "}")!["enum"]!.AsArray().Select(word => (string)word!)],
            _ => [],
        };
        return shape switch
        {
            _ when choices.Count > 0 => InputKind.Choice,
            IQuantityShape => InputKind.Quantity,
            _ when ReferenceEquals(shape, Scalars.Number) => InputKind.Number,
            _ when ReferenceEquals(shape, Scalars.Count) => InputKind.Count,
            _ when ReferenceEquals(shape, Scalars.Money) => InputKind.Money,
            _ when ReferenceEquals(shape, Scalars.YesNo) => InputKind.YesNo,
            _ when ReferenceEquals(shape, Times.Instant) => InputKind.Instant,
            _ when ReferenceEquals(shape, Times.Day) => InputKind.Day,
            _ when ReferenceEquals(shape, Times.Clock) => InputKind.Clock,
            _ when ReferenceEquals(shape, Times.Offset) => InputKind.Offset,
            _ => null,
        };
    }

    [GeneratedRegex(@"\.([^.\[\]]+)|\[(\d+)\]")]
    private static partial Regex Step();
}
