namespace Refinish;

/// <summary>Whose limit it is, as comparisons tell it.</summary>
internal static class Whom
{
    public static string Of(string authority, string jurisdiction, string asOf) => authority + " (" + jurisdiction + "; " + asOf + ")";
}
