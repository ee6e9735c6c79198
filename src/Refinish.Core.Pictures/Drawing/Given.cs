using System;

namespace Refinish.Pictures.Drawing;

/// <summary>The one place where arguments are checked.</summary>
internal static class Given
{
    public static T NotNull<T>(T? value, string name)
        where T : class =>
        value ?? throw new ArgumentNullException(name);

    public static string Named(string? value, string name) =>
        string.IsNullOrWhiteSpace(NotNull(value, name)) ? throw new ArgumentException(name + " is empty; a name or text is needed.", name) : value!;
}
