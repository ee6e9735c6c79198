namespace Refinish.Json;

/// <summary>x</summary>
public static class RefinishJson
{
    /// <summary>x</summary>
    public static string JobSchema => string.Empty;
}
