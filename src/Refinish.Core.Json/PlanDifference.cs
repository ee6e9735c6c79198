namespace Refinish.Json;

/// <summary>
/// A stored result that is not what the same job gives now: another version of the library planned it, or someone changed it.
/// </summary>
public sealed record PlanDifference
{
    internal PlanDifference(string path, string? stored, string? now)
    {
        Path = path;
        Stored = stored;
        Now = now;
    }

    /// <summary>The place as a JSON path, such as <c>$.results.price.total</c>.</summary>
    public string Path { get; }

    /// <summary>The JSON that is stored; <see langword="null"/> when there is none.</summary>
    public string? Stored { get; }

    /// <summary>The JSON that the job gives now; <see langword="null"/> when there is none.</summary>
    public string? Now { get; }

    /// <summary>Path, what is stored and what is found now.</summary>
    /// <returns>One line of text, unless a text in it has more.</returns>
    public override string ToString() => Path + ": stored " + (Stored ?? "nothing") + ", now " + (Now ?? "nothing");
}
