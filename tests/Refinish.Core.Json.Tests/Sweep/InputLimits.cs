using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Refinish.Jobs;

namespace Refinish.Json.Tests;

/// <summary>
/// The least and the greatest value that a job takes for one of its inputs, found by asking: first beyond every range, then where the refusal
/// says that the range ends, and where it says nothing by powers of ten until one is refused, and halves between the last two.
/// </summary>
internal sealed partial class InputLimits
{
    private const int Halvings = 12;
    private static readonly string[] Lists = ["labour", "limits", "chemicals", "survey", "filler", "noise"];
    private static readonly string[] Tiny = ["1E-300", "1E-100", "1E-28", "1E-12"];
    private static readonly string[] Instants =
    [
        "0001-01-01T00:00:00+00:00", "1900-01-01T00:00:00+14:00", "1900-01-01T00:00:00+00:00", "1901-01-01T00:00:00+00:00",
        "9999-12-31T23:59:59-14:00", "9999-12-31T23:59:59+00:00", "2300-12-31T23:59:59-14:00", "2299-12-31T23:59:59+00:00", "2200-12-31T23:59:59-14:00",
    ];

    private static readonly string[] Days = ["0001-01-01", "1900-01-01", "1901-01-01", "9999-12-31", "2300-12-31", "2200-12-31"];
    private static readonly string[] Clocks = ["00:00", "00:00:00.0000001", "00:01", "24:00", "23:59:59.9999999", "23:59"];
    private static readonly string[] Offsets = ["-14:00", "-12:00", "+14:00", "+12:00"];

    private readonly JsonNode document;
    private readonly SweptInput input;
    private readonly JsonNode was;
    private string refusal = string.Empty;

    private InputLimits(JsonNode document, SweptInput input)
    {
        this.input = input;
        was = SweptInput.Get(document, input.Path)!.DeepClone();
        this.document = Shortened(document);
    }

    /// <summary>Values at the ends of what is legal, without the one that the document has.</summary>
    public static IReadOnlyList<JsonNode> Of(JsonNode document, SweptInput input)
    {
        InputLimits limits = new(document, input);
        return [.. limits.Ends().Where(value => !JsonNode.DeepEquals(value, limits.was)).DistinctBy(value => value.ToJsonString())];
    }

    // A document is read dozens of times: without the long lists of a shop, of which the library has its own, that takes a third.
    private JsonNode Shortened(JsonNode document)
    {
        JsonNode copy = document.DeepClone();
        foreach (string list in Lists.Where(list => !input.Path.StartsWith("$.shop." + list, StringComparison.Ordinal)))
        {
            copy["shop"]!.AsObject().Remove(list);
        }

        return JobJson.TryRead(JsonSerializer.SerializeToUtf8Bytes(copy), out Job? _, out _) ? copy : document.DeepClone();
    }

    private IEnumerable<JsonNode> Ends() => input.Kind switch
    {
        InputKind.YesNo => Legal([!(bool)was]),
        InputKind.Choice => Legal([.. Few(input.Choices).Select(word => JsonValue.Create(word))]),
        InputKind.Instant => FirstAndLast(Instants),
        InputKind.Day => FirstAndLast(Days),
        InputKind.Clock => FirstAndLast(Clocks),
        InputKind.Offset => FirstAndLast(Offsets),
        _ => [.. Greatest(), .. Least()],
    };

    // Of many words the ends and two between: a case takes 30 ms, and there are three hundred choices.
    private static IEnumerable<string> Few(IReadOnlyList<string> words) =>
        words.Count <= 4 ? words : new[] { 0, words.Count / 3, 2 * words.Count / 3, words.Count - 1 }.Select(i => words[i]);

    private IEnumerable<JsonNode> Legal(IReadOnlyList<JsonNode> values) => values.Where(value => IsLegal(value));

    // The texts stand from the earliest to the middle and from the latest to the middle.
    private JsonNode[] FirstAndLast(string[] texts)
    {
        int half = Array.FindIndex(texts, text => text[0] is '9' or '+' || text.StartsWith("24", StringComparison.Ordinal));
        return [.. Legal([.. texts[..half].Select(text => JsonValue.Create(text))]).Take(1), .. Legal([.. texts[half..].Select(text => JsonValue.Create(text))]).Take(1)];
    }

    private JsonNode[] Greatest() =>
        [IsLegal(Number(Beyond)) ? Number(Beyond) : Said(Most().Match(refusal)) ?? Search(step => Now + (Scale * step))];

    private IEnumerable<JsonNode> Least()
    {
        if (IsLegal(Number("-" + Beyond)))
        {
            return [Number("-" + Beyond)];
        }

        JsonNode? said = Said(Fewest().Match(refusal));
        bool zero = IsLegal(Number("0"));
        bool below = zero && (IsLegal(Number("-1E-09")) || IsLegal(Number("-1")));

        // Next to zero lies what rounds, divides and overflows.
        JsonNode? tiny = below || input.Kind == InputKind.Count || (zero && IsRounded) ? null : Tiny.Select(Number).FirstOrDefault(IsLegal);
        JsonNode? end = said ?? (zero && !below ? Number("0") : tiny is null ? Search(step => zero ? Now - (Scale * step) : Now / step) : null);
        return [.. new[] { end, tiny }.OfType<JsonNode>()];
    }

    private string Beyond => input.Kind switch
    {
        InputKind.Count => "2147483647",
        InputKind.Money => "79228162514264337593543950335",
        _ => "1.7976931348623157E+308",
    };

    // Money and times are whole numbers of their least parts, so that what is tiny is nothing.
    private bool IsRounded => input.Kind == InputKind.Money || (input.Kind == InputKind.Quantity && (string)was["unit"]! is "s" or "min" or "h" or "d");

    private double Now => input.Kind == InputKind.Quantity ? (double)was["value"]! : was.GetValue<JsonElement>().GetDouble();

    private double Scale => Math.Max(Math.Abs(Now), 1e-6);

    // A limit that is told in another unit than the document's is asked in its own.
    private JsonNode? Said(Match match)
    {
        if (!match.Success)
        {
            return null;
        }

        string number = match.Groups["number"].Value.Replace('−', '-').Replace(" ", string.Empty, StringComparison.Ordinal);
        JsonNode said = Number(number);
        if (input.Kind == InputKind.Quantity && match.Groups["unit"].Value is { Length: > 0 } unit)
        {
            said["unit"] = unit;
        }

        return IsLegal(said) ? said : null;
    }

    /// <param name="at">The value so many steps away.</param>
    private JsonNode Search(Func<double, double> at)
    {
        double good = Now;
        double bad = good;
        for (double step = 10; step < 1e300 && bad == good; step *= 10)
        {
            double next = at(step);
            (good, bad) = IsLegal(Number(Text(next))) ? (next, next) : (good, next);
        }

        for (int i = 0; i < Halvings && bad != good; i++)
        {
            double middle = good + ((bad - good) / 2);
            (good, bad) = IsLegal(Number(Text(middle))) ? (middle, bad) : (good, middle);
        }

        return Number(Text(good));
    }

    private JsonNode Number(string text)
    {
        JsonNode number = JsonNode.Parse(text)!;
        return input.Kind == InputKind.Quantity ? new JsonObject { ["value"] = number, ["unit"] = was["unit"]!.DeepClone() } : number;
    }

    private string Text(double value) =>
        (input.Kind == InputKind.Count ? Math.Round(value) : value).ToString(input.Kind == InputKind.Count ? "F0" : "R", CultureInfo.InvariantCulture);

    private bool IsLegal(JsonNode value)
    {
        SweptInput.Set(document, input.Path, value.DeepClone());
        bool isLegal = JobJson.TryRead(JsonSerializer.SerializeToUtf8Bytes(document), out Job? _, out IReadOnlyList<JsonFault> faults);
        refusal = isLegal ? string.Empty : faults[0].Sentence;
        return isLegal;
    }

    [GeneratedRegex(@"at most (?<number>[-−]?[0-9][0-9 ]*(\.[0-9]+)?)( (?<unit>[^ .;,()]+))?")]
    private static partial Regex Most();

    [GeneratedRegex(@"at least (?<number>[-−]?[0-9][0-9 ]*(\.[0-9]+)?)( (?<unit>[^ .;,()]+))?")]
    private static partial Regex Fewest();
}
