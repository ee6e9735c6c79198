using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;

namespace Refinish.Tests.Support;

/// <summary>A check table: CSV whose first lines start with # and name the source, then a header, then rows.</summary>
internal sealed class Table
{
    private readonly string[] header;
    private readonly List<string[]> rows;

    private Table(string[] header, List<string[]> rows)
    {
        this.header = header;
        this.rows = rows;
    }

    public IEnumerable<Row> Rows => rows.Select(cells => new Row(header, cells));

    public static Table Read(string name)
    {
        List<string[]> lines = [.. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Tables", name))
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split(','))];
        return new Table(lines[0], lines.GetRange(1, lines.Count - 1));
    }

    internal sealed class Row(string[] header, string[] cells)
    {
        public IReadOnlyList<string> Header => header;

        public string this[string column] => cells[Array.IndexOf(header, column)];

        public double Number(string column) => double.Parse(this[column], CultureInfo.InvariantCulture);
    }
}
