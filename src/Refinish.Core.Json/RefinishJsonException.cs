using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json;

/// <summary>A document that cannot be read, with everything that is wrong with it.</summary>
/// <remarks>
/// It is a <see cref="JsonException"/>, so that whatever answers one (a web framework with its 400, for instance) answers this one too.
/// Inside a larger document that <see cref="JsonSerializer"/> reads, the paths are those of the larger document.
/// </remarks>
/// <example><code>
/// string found = string.Empty;
/// try
/// {
///     JobJson.Read("{ \"format\": \"refinish/job\", \"version\": 2, \"ruum\": \"bathroom 3\" }");
/// }
/// catch (RefinishJsonException refused)
/// {
///     found = refused.Faults[0].Path;                // "$.ruum"
/// }
/// </code></example>
public sealed class RefinishJsonException : JsonException
{
    private readonly IReadOnlyList<JsonFault> faults = [];
    private readonly bool isPart;

    /// <summary>Makes an exception without a document.</summary>
    public RefinishJsonException()
    {
    }

    /// <summary>Makes an exception without a document.</summary>
    /// <param name="message">The message.</param>
    public RefinishJsonException(string message)
        : base(message)
    {
    }

    /// <summary>Makes an exception without a document.</summary>
    /// <param name="message">The message.</param>
    /// <param name="innerException">What led to it.</param>
    public RefinishJsonException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    private RefinishJsonException(IReadOnlyList<JsonFault> faults, bool isPart, JsonException? syntax)
        : base(faults[0].ToString(), isPart ? null : faults[0].Path, syntax?.LineNumber, syntax?.BytePositionInLine, syntax)
    {
        this.faults = faults;
        this.isPart = isPart;
    }

    /// <summary>Everything that was found; at most 100.</summary>
    public IReadOnlyList<JsonFault> Faults => Outer is string outer ? [.. faults.Select(fault => fault.Within(outer))] : faults;

    /// <summary>The first fault with its path, and how many more there are.</summary>
    public override string Message => Faults.Count switch
    {
        0 => base.Message,
        1 => Faults[0].ToString(),
        int count => Faults[0] + " (and " + (count - 1).ToString(CultureInfo.InvariantCulture) + " more)",
    };

    // Where the value of a converter stands is known to the serialiser alone; it fills in a path that was left open.
    private string? Outer => isPart ? Path : null;

    internal static RefinishJsonException Of(IReadOnlyList<JsonFault> faults, JsonException? syntax = null) => new(faults, false, syntax);

    internal static RefinishJsonException Inside(IReadOnlyList<JsonFault> faults) => new(faults, true, null);
}
