// A portfolio of bathrooms, planned inside a database engine: the library is a pure function over immutable values, so it can stand
// in a SELECT.
//   dotnet run -c Release --project samples/Portfolio -- [buildings, 200] [bathrooms in each, 100]
// The rows lie in one Parquet file a building; DuckDB spreads the files over its threads and calls one whole plan a row.
// A plan in whose way something stands has no price here, and a bad row costs that row; both are counted apart, with the reason.
// Exit code 0: every way of adding gave the same total; 1: they differ; 2: the call is wrong.
using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using DuckDB.NET.Data;
using Refinish;
using Refinish.Jobs;
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
engine.RegisterScalarFunction<int?, int?, int?, int?, long?>("refinish_cents", Bathroom.Cents);
engine.RegisterScalarFunction<int?, int?, int?, int?, string>("refinish_why_not", Bathroom.WhyNot);

// Invented: each bathroom follows from its number. Some stand in damp air, some were measured with a digit too many, some not at all.
Run(string.Create(CultureInfo.InvariantCulture, $"""
    COPY (
      SELECT i // {each} AS building, 1480 + i * 7919 % 97 AS length, 
        CASE WHEN i % 211 = 7 THEN NULL ELSE (320 + i * 1299709 % 53) * CASE WHEN i % 97 = 5 THEN 10 ELSE 1 END END AS depth,
        i * 15485863 % 7 AS chips, CASE WHEN i % 41 = 3 THEN 96 ELSE 45 + i % 7 END AS humidity
      FROM range({buildings * each}) AS t(i)
    ) TO '{folder}' (FORMAT parquet, PARTITION_BY (building), OVERWRITE_OR_IGNORE)
    """));

const string Numbers = "length, depth, chips, humidity";
string rows = "SELECT building, " + string.Join(", ", Numbers.Split(", ").Select(number => number + "::INTEGER AS " + number))
    + " FROM read_parquet('" + folder + "/*/*.parquet', hive_partitioning = true)";
string total = "SELECT count(cents), sum(cents)::BIGINT, count(*) - count(cents) FROM (SELECT refinish_cents(" + Numbers
    + ") AS cents FROM (" + rows + "))";

// Compiled before anything is timed.
for (int i = 0; i < 1000; i++)
{
    Bathroom.Cents(1500, 330 + (i % 20), i % 7, 48);
}

Portfolio one = Timed("DuckDB, 1 thread", () => Planned(1));
Portfolio many = Timed("DuckDB, " + Environment.ProcessorCount.ToString(CultureInfo.InvariantCulture) + " threads",
    () => Planned(Environment.ProcessorCount));
Portfolio plain = Timed("PLINQ, the same rows backwards", () => Plain(Read(rows)));

Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{one.WithoutPrice} of {buildings * each} bathrooms have no price:"));
Query(
    "SELECT refinish_why_not(" + Numbers + ") AS reason, count(*) AS bathrooms FROM (" + rows + ") WHERE refinish_cents(" + Numbers
        + ") IS NULL GROUP BY reason ORDER BY bathrooms DESC, reason",
    reader => Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {reader.GetInt64(1)} {reader.GetString(0)}")));
Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
    $"{one.Priced} are priced, net {Amount(one.Cents)}. Dearest buildings:"));
Query(
    "SELECT building, sum(refinish_cents(" + Numbers + "))::BIGINT AS cents FROM (" + rows
        + ") GROUP BY building ORDER BY cents DESC, building LIMIT 3",
    reader => Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture, $"  {reader.GetInt64(0)}: {Amount(reader.GetInt64(1))}")));
JobPlan sound = Bathroom.Plan(1524, 340, 2, 48);
Console.WriteLine("Every price stands for people at work, and has to hold on site:");
foreach (PlannedCaution caution in sound.Cautions)
{
    Console.WriteLine("  ! " + caution);
}

foreach (PlanCondition condition in sound.Conditions)
{
    Console.WriteLine("  ? " + condition);
}

temporary.Delete(recursive: true);
if (one != many || one != plain)
{
    Console.Error.WriteLine("The totals differ: " + one + ", " + many + ", " + plain);
    return 1;
}

Console.WriteLine("The same total each time, to the cent.");
return 0;

Portfolio Planned(int threads)
{
    Run("SET threads = " + threads.ToString(CultureInfo.InvariantCulture));
    Portfolio? sum = null;
    Query(total, reader => sum = new Portfolio(reader.GetInt64(0), reader.GetInt64(1), reader.GetInt64(2)));
    return sum!;
}

static string Amount(long cents) => Shop.Generic.Prices.Currency.Text(cents * Shop.Generic.Prices.Currency.SmallestAmount);

static Portfolio Plain(IReadOnlyList<int?[]> bathrooms)
{
    long?[] cents = [.. bathrooms.Reverse().AsParallel().Select(row => Bathroom.Cents(row[0], row[1], row[2], row[3]))];
    return new Portfolio(cents.Count(one => one is not null), cents.Sum() ?? 0, cents.Count(one => one is null));
}

List<int?[]> Read(string sql)
{
    List<int?[]> list = [];
    Query(sql, reader => list.Add([.. Enumerable.Range(1, 4)
        .Select(column => reader.IsDBNull(column) ? (int?)null : reader.GetInt32(column))]));
    return list;
}

Portfolio Timed(string what, Func<Portfolio> run)
{
    long bytes = GC.GetTotalAllocatedBytes(precise: true);
    Stopwatch watch = Stopwatch.StartNew();
    Portfolio result = run();
    double seconds = watch.Elapsed.TotalSeconds;
    double kilobytes = (GC.GetTotalAllocatedBytes(precise: true) - bytes) / 1024.0 / (buildings * each);
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
        $"{what}: {buildings * each / seconds:F0} plans a second, {kilobytes:F0} kB allocated for each"));
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

/// <summary>What a portfolio comes to: bathrooms with a price, the sum of their cents, bathrooms without.</summary>
internal sealed record Portfolio(long Priced, long Cents, long WithoutPrice);
