using System;

namespace Refinish.Pages;

internal static class Check
{
    public static void That(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new CheckFailed(otherwise);
        }
    }

    public static void Same(object expected, object found, string what) => That(Equals(expected, found), what + ": “" + found + "” where “" + expected + "” was expected");

    public static void Holds(string text, string part, string what) => That(text.Contains(part, StringComparison.Ordinal), what + ": “" + part + "” is not in “" + text + "”");
}

internal sealed class CheckFailed(string message) : Exception(message);
