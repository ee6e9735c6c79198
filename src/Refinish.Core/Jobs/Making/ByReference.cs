using System.Collections.Generic;
using System.Runtime.CompilerServices;

namespace Refinish.Jobs;

/// <summary>Compares by reference, where values that are equal may as well be made twice.</summary>
internal static class ByReference
{
    public static IEqualityComparer<T> Of<T>() where T : class => Comparer<T>.One;

    private sealed class Comparer<T> : IEqualityComparer<T>
        where T : class
    {
        public static readonly Comparer<T> One = new();

        public bool Equals(T? x, T? y) => ReferenceEquals(x, y);

        public int GetHashCode(T obj) => RuntimeHelpers.GetHashCode(obj);
    }
}
