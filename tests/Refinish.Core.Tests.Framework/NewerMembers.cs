// What the suite takes from newer frameworks and .NET Framework lacks; for the tests only, and each no longer than the test needs.
#pragma warning disable IDE0130 // They must live where the compiler looks.
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;

namespace System
{
    internal readonly struct Index(int value, bool fromEnd = false)
    {
        public static Index Start => new(0);

        public static Index End => new(0, true);

        public static implicit operator Index(int value) => new(value);

        public int GetOffset(int length) => fromEnd ? length - value : value;
    }

    internal readonly struct Range(Index start, Index end)
    {
        public Index Start => start;

        public Index End => end;

        public static Range StartAt(Index start) => new(start, Index.End);

        public static Range EndAt(Index end) => new(Index.Start, end);
    }

    internal static class NewerMembers
    {
        extension(ArgumentNullException)
        {
            public static void ThrowIfNull(object? argument)
            {
                if (argument is null)
                {
                    throw new ArgumentNullException(nameof(argument));
                }
            }
        }

        extension(Math)
        {
            public static double Clamp(double value, double least, double most) => Math.Min(Math.Max(value, least), most);
        }

        extension(Enum)
        {
            public static T[] GetValues<T>()
                where T : struct => [.. Enum.GetValues(typeof(T)).Cast<T>()];
        }

        extension(Array)
        {
            public static void Fill<T>(T[] array, T value)
            {
                for (int i = 0; i < array.Length; i++)
                {
                    array[i] = value;
                }
            }
        }

        extension(TimeSpan)
        {
            public static TimeSpan operator *(TimeSpan span, double factor) => TimeSpan.FromTicks((long)Math.Round(span.Ticks * factor));
        }

        extension(string text)
        {
            public static string Create(IFormatProvider culture, FormattableString said) => said.ToString(culture);

            public static string Join(char separator, params string[] parts) => string.Join(separator.ToString(), parts);

            public string ReplaceLineEndings(string ending) => text.Replace("\r\n", "\n").Replace("\n", ending);

            public bool Contains(string part, StringComparison comparison) => text.IndexOf(part, comparison) >= 0;

            public bool Contains(char part) => text.IndexOf(part) >= 0;

            public bool StartsWith(char start) => text.Length > 0 && text[0] == start;

            public bool EndsWith(char end) => text.Length > 0 && text[text.Length - 1] == end;

            public string Replace(string old, string now, StringComparison comparison) =>
                comparison == StringComparison.Ordinal ? text.Replace(old, now) : throw new NotSupportedException();

            public string[] Split(char separator, StringSplitOptions options) => text.Split([separator], options);

            public string[] Split(string separator, StringSplitOptions options = StringSplitOptions.None) => text.Split([separator], options);
        }

        extension<T>(IEnumerable<T> items)
        {
            public IEnumerable<T> Order() => items.OrderBy(item => item);

            public IEnumerable<T> Order(IComparer<T> comparer) => items.OrderBy(item => item, comparer);

            public T MaxBy<TKey>(Func<T, TKey> key) => items.OrderByDescending(key).First();

            public T MinBy<TKey>(Func<T, TKey> key) => items.OrderBy(key).First();

            public IEnumerable<(T First, TOther Second)> Zip<TOther>(IEnumerable<TOther> others) => items.Zip(others, (First, Second) => (First, Second));
        }

        extension<TKey, TValue>(Dictionary<TKey, TValue> dictionary)
        {
            public bool TryAdd(TKey key, TValue value)
            {
                if (dictionary.ContainsKey(key))
                {
                    return false;
                }

                dictionary.Add(key, value);
                return true;
            }
        }

        extension(StringBuilder builder)
        {
            public StringBuilder Append(IFormatProvider culture, FormattableString said) => builder.Append(said.ToString(culture));
        }

        extension(Stream stream)
        {
            public void Write(ReadOnlySpan<byte> bytes) => stream.Write(bytes.ToArray(), 0, bytes.Length);
        }
    }
}

namespace System.Buffers.Binary
{
    internal static class NewerBinary
    {
        extension(BinaryPrimitives)
        {
            public static void WriteSingleLittleEndian(Span<byte> to, float value) => BinaryPrimitives.WriteInt32LittleEndian(to, BitConverter.ToInt32(BitConverter.GetBytes(value), 0));

            public static void WriteSingleBigEndian(Span<byte> to, float value) => BinaryPrimitives.WriteInt32BigEndian(to, BitConverter.ToInt32(BitConverter.GetBytes(value), 0));
        }
    }
}

namespace System.Runtime.CompilerServices
{
    internal static class RuntimeHelpers
    {
        public static T[] GetSubArray<T>(T[] array, Range range)
        {
            int from = range.Start.GetOffset(array.Length);
            T[] part = new T[range.End.GetOffset(array.Length) - from];
            Array.Copy(array, from, part, 0, part.Length);
            return part;
        }
    }
}
