namespace Refinish.Jobs;

/// <summary>Begins and ends sentences.</summary>
internal static class Sentences
{
    public static string Begun(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text.Substring(1);

    public static string Closed(string text) => text.Length == 0 || text[text.Length - 1] == '.' ? text : text + ".";
}
