using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;

namespace Refinish;

/// <summary>
/// A copied, unchangeable list that is equal to another when its items are, so that records which hold lists stay values.
/// </summary>
internal sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    public static readonly ValueList<T> Empty = new([]);

    private readonly T[] items;

    public ValueList(IEnumerable<T> items) => this.items = [.. items];

    private ValueList(T[] items, bool _) => this.items = items;

    /// <summary>A list over an array that nobody else holds; it is not copied.</summary>
    public static ValueList<T> Owning(params T[] items) => new(items, true);

    public int Count => items.Length;

    public T this[int index] => items[index];

    public bool Equals(ValueList<T>? other) => other is not null && items.SequenceEqual(other.items);

    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    public override int GetHashCode()
    {
        int hash = 17;
        foreach (T item in items)
        {
            hash = unchecked((hash * 31) + (item is null ? 0 : EqualityComparer<T>.Default.GetHashCode(item)));
        }

        return hash;
    }

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();
}
