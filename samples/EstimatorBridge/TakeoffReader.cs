using System.Collections.Generic;
using System.IO;
using System.Text;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>
/// A takeoff line by line, one row a line. A quotation mark that is never closed so costs its own row and not all that follow, and a line
/// without an end costs no memory: what goes beyond <see cref="Longest"/> is read past.
/// </summary>
internal sealed class TakeoffReader(TextReader text)
{
    /// <summary>Characters of the longest line that is taken for a row.</summary>
    public const int Longest = 4096;

    private readonly char[] buffer = new char[16_384];
    private int at;
    private int filled;

    /// <summary>The lines with their numbers, counted from 1; no text for one that is too long.</summary>
    public IEnumerable<TakeoffLine> Lines()
    {
        StringBuilder line = new();
        for (int number = 1; ; number++)
        {
            bool whole = true;
            int next;
            while ((next = Next()) is not -1 and not '\n')
            {
                whole &= line.Length < Longest;
                if (whole)
                {
                    line.Append((char)next);
                }
            }

            if (next == -1 && line.Length == 0)
            {
                yield break;
            }

            yield return new TakeoffLine(number, whole ? line.ToString().TrimEnd('\r') : null);
            line.Clear();
        }
    }

    private int Next()
    {
        if (at == filled)
        {
            filled = text.Read(buffer, 0, buffer.Length);
            at = 0;
        }

        return filled == 0 ? -1 : buffer[at++];
    }
}

/// <summary>
/// One line of the takeoff and its number in the file; no text when it is longer than <see cref="TakeoffReader.Longest"/>.
/// </summary>
internal sealed record TakeoffLine(int Number, string? Text);
