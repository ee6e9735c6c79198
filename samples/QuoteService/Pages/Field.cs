using System.Collections.Generic;
using System.Globalization;
using System.Text.Json.Nodes;

namespace Refinish.Samples.QuoteService.Pages;

/// <summary>One line of the form: a number with its unit, a choice, a tick or a text. It knows where its value stands in the request.</summary>
public sealed class Field
{
    /// <summary>Name of the field in the form.</summary>
    public required string Name { get; init; }

    /// <summary>Name of the member in the request.</summary>
    public required string Member { get; init; }

    public required string Label { get; init; }

    public string Help { get; init; } = string.Empty;

    /// <summary>What kind of amount it is; none for anything but a number.</summary>
    public Measure? Measure { get; init; }

    /// <summary>The values to choose from, with their words; empty for a field to write into.</summary>
    public IReadOnlyList<(string Value, string Words)> Choices { get; init; } = [];

    public string Type { get; init; } = "text";

    public string Text { get; set; } = string.Empty;

    /// <summary>The JSON path of its value in the request; set when the request is made.</summary>
    public string Path { get; set; } = string.Empty;

    public string? Error { get; private set; }

    /// <summary>Writes the value into the request. What was left empty is left out; what is no number stays a text, for the library to refuse.</summary>
    public void Put(JsonObject owner, string path, DisplayUnits units)
    {
        Path = path + "." + Member;
        if (Text.Length > 0)
        {
            owner[Member] = Measure is null ? Choice() : new JsonObject { ["value"] = Number(), ["unit"] = Measure.Symbol(units) };
        }
    }

    /// <summary>Takes the first fault; about a number that is none, in words for someone who fills in a form.</summary>
    public void Refuse(string sentence) =>
        Error ??= Measure is null || IsNumber(out _) ? sentence : Text.Length == 0 ? "A number is needed here." : "“" + Text + "” is no number; write it like 12.5.";

    private JsonNode Choice() => Text switch
    {
        "true" => true,
        "false" => false,
        _ when Type == "number" && int.TryParse(Text, NumberStyles.None, CultureInfo.InvariantCulture, out int whole) => whole,
        _ => Text,
    };

    private JsonNode Number() => IsNumber(out double number) ? number : Text;

    private bool IsNumber(out double number) => double.TryParse(Text, NumberStyles.Float, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
}
