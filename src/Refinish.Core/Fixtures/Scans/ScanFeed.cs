using System;
using System.Globalization;
using System.IO;
using System.Text;

namespace Refinish.Fixtures;

/// <summary>
/// Bytes of a caller's stream through one buffer, with the place in the file for messages. It reads forwards only and never more than
/// the stream holds; a count in a header asks for nothing here.
/// </summary>
internal sealed class ScanFeed
{
    /// <summary>The longest word a scan may hold; a longer run of letters is no scan.</summary>
    private const int LongestWord = 1 << 10;

    private static readonly double[] Tens = [1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22];

    private readonly Stream stream;
    private readonly byte[] buffer = new byte[1 << 16];
    private readonly byte[] word = new byte[LongestWord];
    private int start;
    private int end;
    private long before;
    private int wordLength;

    public ScanFeed(Stream stream)
    {
        this.stream = Guard.NotNull(stream);
        if (!stream.CanRead)
        {
            throw new ArgumentException("stream cannot be read from.", nameof(stream));
        }
    }

    /// <summary>How many bytes have been taken.</summary>
    public long Offset => before + start;

    /// <summary>The line that the next byte stands on, from 1; only where text is read.</summary>
    public long Line { get; private set; } = 1;

    public byte[] Buffer => buffer;

    public int Start => start;

    /// <summary>Bytes that can be taken without another read.</summary>
    public int Available => end - start;

    /// <summary>Whether at least so many bytes lie ready, after reading on if need be.</summary>
    public bool Ensure(int bytes)
    {
        if (end - start >= bytes)
        {
            return true;
        }

        Array.Copy(buffer, start, buffer, 0, end - start);
        before += start;
        end -= start;
        start = 0;
        while (end < bytes)
        {
            int read = stream.Read(buffer, end, buffer.Length - end);
            if (read <= 0)
            {
                return false;
            }

            end += read;
        }

        return true;
    }

    /// <summary>Reads on until the buffer is full or the stream ends, so that whole records can be taken in one go.</summary>
    public int Fill()
    {
        Ensure(buffer.Length);
        return Available;
    }

    public void Skip(int bytes) => start += bytes;

    /// <summary>The next byte of text, or −1 at the end.</summary>
    public int Next()
    {
        if (!Ensure(1))
        {
            return -1;
        }

        byte taken = buffer[start++];
        Line += taken == '\n' ? 1 : 0;
        return taken;
    }

    /// <summary>Takes the next word of the text; <see langword="false"/> at the end of the line (which is taken) or of the file.</summary>
    public bool WordOnLine()
    {
        wordLength = 0;
        while (Ensure(1))
        {
            byte at = buffer[start];
            if (at is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n')
            {
                if (wordLength > 0)
                {
                    return true;
                }

                Next();
                if (at == '\n')
                {
                    return false;
                }
            }
            else
            {
                if (wordLength == LongestWord)
                {
                    throw Wrong("a word is longer than 1024 characters");
                }

                word[wordLength++] = at;
                start++;
            }
        }

        return wordLength > 0;
    }

    /// <summary>Takes the next word, on whatever line; <see langword="false"/> at the end of the file.</summary>
    public bool Word()
    {
        while (!WordOnLine())
        {
            if (!Ensure(1))
            {
                return false;
            }
        }

        return true;
    }

    public void RestOfLine()
    {
        for (int taken = Next(); taken >= 0 && taken != '\n'; taken = Next())
        {
        }
    }

    public bool Is(string text)
    {
        if (text.Length != wordLength)
        {
            return false;
        }

        for (int i = 0; i < wordLength; i++)
        {
            if ((word[i] | 0x20) != (text[i] | 0x20))
            {
                return false;
            }
        }

        return true;
    }

    public string Text() => Encoding.ASCII.GetString(word, 0, wordLength);

    /// <summary>The word for a message, the first 40 characters of a longer one.</summary>
    public string Quoted() => wordLength > 40 ? "'" + Encoding.ASCII.GetString(word, 0, 40) + "…'" : "'" + Text() + "'";

    /// <summary>The word's length and one of its characters, for the corners of an OBJ face.</summary>
    public int Length => wordLength;

    public char At(int index) => (char)word[index];

    /// <summary>
    /// The word as a number: exact by one multiplication or division where 53 bits and 22 powers of ten hold it, else by the framework.
    /// </summary>
    public double Number()
    {
        int at = 0;
        bool minus = wordLength > 0 && word[0] == '-';
        at += minus || (wordLength > 0 && word[0] == '+') ? 1 : 0;
        ulong digits = 0;
        int taken = 0;
        int exponent = 0;
        bool any = false;
        bool point = false;
        for (; at < wordLength; at++)
        {
            byte c = word[at];
            if (c is >= (byte)'0' and <= (byte)'9')
            {
                any = true;
                if (taken < 18)
                {
                    digits = (digits * 10) + (ulong)(c - '0');
                    taken += digits == 0 ? 0 : 1;
                    exponent -= point ? 1 : 0;
                }
                else
                {
                    return Slow();
                }
            }
            else if (c == '.' && !point)
            {
                point = true;
            }
            else
            {
                break;
            }
        }

        if (!any)
        {
            return Slow();
        }

        if (at < wordLength)
        {
            if ((word[at] | 0x20) != 'e' || ++at == wordLength)
            {
                return Slow();
            }

            bool down = word[at] == '-';
            at += down || word[at] == '+' ? 1 : 0;
            int power = 0;
            int first = at;
            for (; at < wordLength && word[at] is >= (byte)'0' and <= (byte)'9' && power < 1000; at++)
            {
                power = (power * 10) + (word[at] - '0');
            }

            if (at < wordLength || at == first)
            {
                return Slow();
            }

            exponent += down ? -power : power;
        }

        if (digits > 1UL << 53 || exponent < -22 || exponent > 22)
        {
            return Slow();
        }

        double value = exponent < 0 ? digits / Tens[-exponent] : digits * Tens[exponent];
        return minus ? -value : value;
    }

    /// <summary>Refuses the line unless a condition holds.</summary>
    public void Require(bool holds, string what)
    {
        if (!holds)
        {
            throw Wrong(what);
        }
    }

    public FormatException Wrong(string what) => new($"Line {Line}: {what}.");

    public static FormatException WrongAt(long offset, string what) => new($"Byte {offset}: {what}.");

    private double Slow() =>
        double.TryParse(Text(), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && !double.IsNaN(value) && !double.IsInfinity(value)
            ? value : throw Wrong(Quoted() + " is not a finite number");
}
