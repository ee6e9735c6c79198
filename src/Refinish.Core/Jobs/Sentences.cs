namespace Refinish.Jobs;

/// <summary>Ends sentences.</summary>
internal static class Sentences
{
    public static string Closed(string text) => text.Length == 0 || text[text.Length - 1] == '.' ? text : text + ".";
}
