
namespace Refinish.Json;

/// <summary>One thing that is wrong with a document, and where.</summary>
/// <example><code>
/// bool read = JobJson.TryRead("{ \"format\": \"refinish/job\", \"version\": 7 }", out _, out IReadOnlyList&lt;JsonFault&gt; faults);
/// string where = faults[0].Path;                     // "$.version"
/// JsonFaultKind what = faults[0].Kind;               // JsonFaultKind.UnknownVersion
/// </code></example>
public sealed record JsonFault
{
    internal JsonFault(string path, JsonFaultKind kind, string sentence)
    {
        Path = path;
        Kind = kind;
        Sentence = sentence;
    }

    /// <summary>
    /// The place as a JSON path, such as <c>$.fixtures[0].fixture.rimLength.value</c>; a missing field is named as if it were there.
    /// </summary>
    public string Path { get; }

    /// <summary>What is wrong.</summary>
    public JsonFaultKind Kind { get; }

    /// <summary>One plain sentence; for a value out of range it names value, unit and the allowed range.</summary>
    public string Sentence { get; }

    /// <summary>Path and sentence.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Path + ": " + Sentence;

    /// <summary>The same fault when the document is a part of a larger one.</summary>
    internal JsonFault Within(string outer) => new(outer + Path[1..], Kind, Sentence);
}
