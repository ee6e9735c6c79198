// A portfolio of bathrooms, planned inside a database engine: the library is a pure function over immutable values, so it can stand in a SELECT.
//   dotnet run -c Release --project samples/Portfolio -- [buildings, 200] [bathrooms in each, 100]
// The rows lie in one Parquet file a building; DuckDB spreads the files over its threads and calls one whole plan a row.
// Exit code 0: every way of adding gave the same total; 1: they differ; 2: the call is wrong.
using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using DuckDB.NET.Data;
using Refinish;
using Refinish.Samples.Portfolio;

int buildings = 200, each = 100;
if ((args.Length > 0 && !int.TryParse(args[0], CultureInfo.InvariantCulture, out buildings))
    || (args.Length > 1 && !int.TryParse(args[1], CultureInfo.InvariantCulture, out each))
    || buildings is < 1 or > 10_000 || each is < 1 or > 1000)
{
    Console.Error.WriteLine("Usage: Portfolio [buildings, 1 to 10000] [bathrooms in each, 1 to 1000]");
    return 2;
}

DirectoryInfo temporary = Directory.CreateTempSubdirectory("portfolio");
string folder = temporary.FullName;

using DuckDBConnection engine = new("Data Source=:memory:");
engine.Open();
engine.RegisterScalarFunction<int, int, int, int, long?>("refinish_cents", Bathroom.Cents);

// Invented: each bathroom follows from its number.
Run(string.Create(CultureInfo.InvariantCulture, $"""
    COPY (
      SELECT i // {each} AS building, 1480 + i * 7919 % 97 AS length, 720 + i * 104729 % 61 AS width, 320 + i * 1299709 % 53 AS depth, i * 15485863 % 7 AS chips
      FROM range({buildings * each}) AS t(i)
    ) TO '{folder}' (FORMAT parquet, PARTITION_BY (building), OVERWRITE_OR_IGNORE)
    """));

const string Rows = "SELECT building, length::INTEGER AS length, width::INTEGER AS width, depth::INTEGER AS depth, chips::INTEGER AS chips FROM read_parquet('FOLDER/*/*.parquet', hive_partitioning = true)";
string rows = Rows.Replace("FOLDER", folder, StringComparison.Ordinal);
string total = "SELECT count(cents), sum(cents)::BIGINT FROM (SELECT refinish_cents(length, width, depth, chips) AS cents FROM (" + rows + "))";

// Compiled before anything is timed.
for (int i = 0; i < 1000; i++)
{
    Bathroom.Cents(1500, 740, 330 + (i % 20), i % 7);
}

(long Planned, long Sum) one = Timed("DuckDB, 1 thread", () => Planned(1));
(long Planned, long Sum) many = Timed("DuckDB, " + Environment.ProcessorCount.ToString(CultureInfo.InvariantCulture) + " threads", () => Planned(Environment.ProcessorCount));
(long Planned, long Sum) plain = Timed("PLINQ, the same rows backwards", () => Plain(Read(rows)));

Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{one.Planned} of {buildings * each} bathrooms priced, net {one.Sum / 100m:N2} EUR"));
Console.WriteLine("Dearest buildings:");
Query("SELECT building, sum(refinish_cents(length, width, depth, chips))::BIGINT AS cents FROM (" + rows + ") GROUP BY building ORDER BY cents DESC, building LIMIT 3",
    reader => Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {reader.GetInt64(0)}: {reader.GetInt64(1) / 100m:N2} EUR")));
Console.WriteLine("Every price stands for people at work:");
foreach (Caution caution in Bathroom.Plan(1524, 762, 340, 2).Cautions)
{
    Console.WriteLine("  ! " + caution.Sentence + " (Decided by: " + caution.DecidedBy + ".)");
}

temporary.Delete(recursive: true);
if (one != many || one != plain)
{
    Console.Error.WriteLine("The totals differ: " + one + ", " + many + ", " + plain);
    return 1;
}

Console.WriteLine("The same total each time, to the cent.");
return 0;

(long, long) Planned(int threads)
{
    Run("SET threads = " + threads.ToString(CultureInfo.InvariantCulture));
    (long, long) sum = default;
    Query(total, reader => sum = (reader.GetInt64(0), reader.GetInt64(1)));
    return sum;
}

static (long, long) Plain(IReadOnlyList<int[]> bathrooms)
{
    long[] cents = [.. bathrooms.Reverse().AsParallel().Select(row => Bathroom.Cents(row[0], row[1], row[2], row[3])).OfType<long>()];
    return (cents.Length, cents.Sum());
}

List<int[]> Read(string sql)
{
    List<int[]> list = [];
    Query(sql, reader => list.Add([reader.GetInt32(1), reader.GetInt32(2), reader.GetInt32(3), reader.GetInt32(4)]));
    return list;
}

(long, long) Timed(string what, Func<(long, long)> run)
{
    long bytes = GC.GetTotalAllocatedBytes(precise: true);
    Stopwatch watch = Stopwatch.StartNew();
    (long, long) result = run();
    double seconds = watch.Elapsed.TotalSeconds;
    double kilobytes = (GC.GetTotalAllocatedBytes(precise: true) - bytes) / 1024.0 / (buildings * each);
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {buildings * each / seconds:F0} plans a second, {kilobytes:F0} kB allocated for each"));
    return result;
}

void Run(string sql)
{
    using DuckDBCommand command = engine.CreateCommand();
    command.CommandText = sql;
    command.ExecuteNonQuery();
}

void Query(string sql, Action<DuckDBDataReader> row)
{
    using DuckDBCommand command = engine.CreateCommand();
    command.CommandText = sql;
    using DuckDBDataReader reader = command.ExecuteReader();
    while (reader.Read())
    {
        row(reader);
    }
}
