using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using CsvHelper;
using CsvHelper.Configuration;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>The first line of a takeoff: where each column stands.</summary>
internal sealed class TakeoffHeader
{
    private static readonly CsvConfiguration OneLine = new(CultureInfo.InvariantCulture)
    {
        BufferSize = TakeoffReader.Longest, TrimOptions = TrimOptions.Trim,
        BadDataFound = _ => throw new RowException("the row", "a quotation mark stands where none may"),
    };

    private readonly string[] names;

    /// <summary>Reads the header.</summary>
    /// <exception cref="RowException">A column is missing or stands twice.</exception>
    public TakeoffHeader(string? line)
    {
        names = line is null ? [] : Split(line);
        foreach (string column in TakeoffRow.Columns)
        {
            int times = names.Count(name => name == column);
            if (times != 1)
            {
                string what = times == 0 ? "is missing" : "stands twice";
                throw new RowException(column, what + " in the header; it needs " + string.Join(", ", TakeoffRow.Columns));
            }
        }
    }

    /// <summary>The fields of a line by their columns.</summary>
    /// <exception cref="RowException">The line is too long or is no CSV.</exception>
    public IReadOnlyDictionary<string, string> FieldsOf(TakeoffLine line)
    {
        string[] fields = Split(line.Text
            ?? throw new RowException("the row",
                "has more than " + TakeoffReader.Longest.ToString(CultureInfo.InvariantCulture) + " characters"));
        return names.Zip(fields).Where(field => TakeoffRow.Columns.Contains(field.First))
            .ToDictionary(field => field.First, field => field.Second, StringComparer.Ordinal);
    }

    private static string[] Split(string line)
    {
        using CsvParser parser = new(new StringReader(line), OneLine);
        return parser.Read() ? parser.Record! : [];
    }
}
