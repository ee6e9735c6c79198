// A takeoff in, line items out: the bridge into a general contractor's estimating program. Rows stream: a million take the memory of ten.
//   EstimatorBridge takeoff.csv lines.csv     a dash is standard input or output; see takeoff.csv here for the columns
//   EstimatorBridge --invent 1000000          writes an invented takeoff
// Every row of the takeoff has lines in the export: WRONG when it cannot be read; REFUSED or OBJECTION when something stands in the way,
// and then no price; otherwise CONDITION for what has to be met first, and then what it costs. The last lines, CAUTION, say in sentences
// what can hurt.
// Exit code 0: every row was read; 1: there are wrong rows; 2: the call or the header is wrong.
using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using CsvHelper;
using Refinish;
using Refinish.Samples.EstimatorBridge;

// So many rows are planned at once, each on its own; what is held in memory is this block and no more.
const int Block = 256;

if (args is ["--invent", string number] && int.TryParse(number, CultureInfo.InvariantCulture, out int wanted))
{
    using StreamWriter output = Writer("-");
    Invented.Write(output, wanted);
    return 0;
}

if (args.Length != 2)
{
    Console.Error.WriteLine("Usage: EstimatorBridge TAKEOFF LINES (a dash is standard input or output) | --invent ROWS");
    return 2;
}

try
{
    using StreamReader takeoff = args[0] == "-" ? new StreamReader(Console.OpenStandardInput()) : new StreamReader(args[0]);
    IEnumerator<TakeoffLine> file = new TakeoffReader(takeoff).Lines().GetEnumerator();
    TakeoffHeader header = new(file.MoveNext() ? file.Current.Text : null);
    using CsvWriter lines = new(Writer(args[1]), CultureInfo.InvariantCulture);
    return Export(header, Rest(file), lines);
}
catch (RowException wrong)
{
    Console.Error.WriteLine(wrong.Column + " " + wrong.Message + ".");
    return 2;
}
catch (Exception unreachable) when (unreachable is IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine(unreachable.Message);
    return 2;
}

static int Export(TakeoffHeader header, IEnumerable<TakeoffLine> rows, CsvWriter lines)
{
    Stopwatch watch = Stopwatch.StartNew();
    int[] fates = new int[Enum.GetValues<RowFate>().Length];
    int items = 0;
    decimal cost = 0;
    decimal price = 0;
    Dictionary<string, Caution> cautions = new(StringComparer.Ordinal);
    ExportLine.WriteHeader(lines);
    foreach (TakeoffLine[] block in rows.Where(row => row.Text != string.Empty).Chunk(Block))
    {
        foreach (RowExport row in block.AsParallel().AsOrdered().Select(line => RowExport.Of(header, line)))
        {
            fates[(int)row.Fate]++;
            foreach (ExportLine line in row.Lines)
            {
                line.Write(lines);
                items += line.Key.Length == 0 ? 0 : 1;
                cost += line.Cost;
                price += line.Price;
            }

            foreach (Caution caution in row.Cautions)
            {
                cautions.TryAdd(caution.Code, caution);
            }
        }
    }

    foreach (Caution caution in cautions.Values)
    {
        new ExportLine("CAUTION", caution.ToString()) { Hazards = caution.Hazard.ToString("G") }.Write(lines);
    }

    using Process self = Process.GetCurrentProcess();
    Currency currency = Assumed.Shop.Prices.Currency;
    string sums = "cost " + currency.Number(cost) + ", price " + currency.Text(price);
    string not = FormattableString.Invariant($"{Of(RowFate.Objected)} with objections, {Of(RowFate.Wrong)} wrong");
    Say($"{fates.Sum()} rows: {Of(RowFate.Priced)} priced, {not}; {items} items; {sums}");
    Say($"{fates.Sum() / watch.Elapsed.TotalSeconds:F0} rows a second; most memory {self.PeakWorkingSet64 / 1048576.0:F0} MB");
    return Of(RowFate.Wrong) == 0 ? 0 : 1;

    int Of(RowFate fate) => fates[(int)fate];
}

static void Say(FormattableString sentence) => Console.Error.WriteLine(FormattableString.Invariant(sentence));

static IEnumerable<TakeoffLine> Rest(IEnumerator<TakeoffLine> file)
{
    using (file)
    {
        while (file.MoveNext())
        {
            yield return file.Current;
        }
    }
}

static StreamWriter Writer(string file) => file == "-" ? new StreamWriter(Console.OpenStandardOutput()) : new StreamWriter(file);
