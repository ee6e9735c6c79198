using System;

namespace Refinish.Json.Shapes;

/// <summary>Tells a name that was given from one that only repeats the identifier.</summary>
internal static class Said
{
    /// <param name="name">The name.</param>
    /// <param name="other">What it is when it is not given.</param>
    /// <param name="owner">Whose name it is.</param>
    /// <param name="named">The owner with the name given; equal to the owner only if it was given.</param>
    /// <returns>The name, or null when it was not given.</returns>
    public static string? Name<T>(string name, string other, T owner, Func<T, T> named)
        where T : class => name != other || named(owner).Equals(owner) ? name : null;
}
