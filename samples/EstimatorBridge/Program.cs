// A takeoff in, line items out: the bridge into a general contractor's estimating program. Rows stream, so a million take no more memory than ten.
//   EstimatorBridge takeoff.csv lines.csv errors.csv     a dash is standard input or output; see takeoff.csv here for the columns
//   EstimatorBridge --invent 1000000                     writes an invented takeoff
// Exit code 0: every row was priced or refused with reasons; 1: there are rows in errors.csv; 2: the call or the header is wrong.
using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using CsvHelper;
using CsvHelper.Configuration;
using Refinish;
using Refinish.Air;
using Refinish.Estimating;
using Refinish.Samples.EstimatorBridge;

// So many rows are priced at once, each on its own; what is held in memory is this block and no more.
const int Block = 1024;

if (args is ["--invent", string number] && int.TryParse(number, CultureInfo.InvariantCulture, out int wanted))
{
    using StreamWriter output = Writer("-");
    Invented.Write(output, wanted);
    return 0;
}

if (args.Length != 3)
{
    Console.Error.WriteLine("Usage: EstimatorBridge TAKEOFF LINES ERRORS (a dash is standard input or output) | --invent ROWS");
    return 2;
}

using StreamReader takeoff = args[0] == "-" ? new StreamReader(Console.OpenStandardInput()) : new StreamReader(args[0]);
bool broken = false;
using CsvReader rows = new(takeoff, new CsvConfiguration(CultureInfo.InvariantCulture) { BadDataFound = _ => broken = true });
rows.Read();
rows.ReadHeader();
if (TakeoffRow.Columns.Except(rows.HeaderRecord!).FirstOrDefault() is string missing)
{
    Console.Error.WriteLine("The takeoff has no column '" + missing + "'; it needs " + string.Join(", ", TakeoffRow.Columns) + ".");
    return 2;
}

Dictionary<string, int> places = rows.HeaderRecord!.Select((name, place) => (name, place)).ToDictionary(column => column.name, column => column.place);
using CsvWriter lines = new(Writer(args[1]), CultureInfo.InvariantCulture);
using CsvWriter errors = new(Writer(args[2]), CultureInfo.InvariantCulture);
Record(lines, "room", "fixture", "item", "description", "quantity", "unit", "unit cost", "amount", "currency", "note");
Record(errors, "line", "column", "what is wrong");

Stopwatch watch = Stopwatch.StartNew();
int read = 0, priced = 0, refused = 0, wrong = 0, items = 0;
decimal total = 0;
HashSet<string> cautions = [.. AirCautions.ForSpraying.Concat(AirCautions.ForIsocyanates).Select(Sentence)];
foreach ((int Line, string[]? Fields)[] block in Rows().Chunk(Block))
{
    foreach ((int line, FixtureEstimate? estimate, RowException? fault) in block.AsParallel().AsOrdered().Select(row => Estimate(row.Line, row.Fields)))
    {
        read++;
        if (fault is not null)
        {
            wrong++;
            Record(errors, line.ToString(CultureInfo.InvariantCulture), fault.Column, fault.Message);
        }
        else
        {
            Write(estimate!);
        }
    }
}

Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{read} rows: {priced} priced, {refused} refused, {wrong} wrong; {items} line items; total {total:F2} {Shop.Prices.Currency}"));
Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{read / watch.Elapsed.TotalSeconds:F0} rows a second; most memory {PeakMegabytes():F0} MB"));
foreach (string caution in cautions)
{
    Console.Error.WriteLine("! " + caution);
}

return wrong == 0 ? 0 : 1;

IEnumerable<(int Line, string[]? Fields)> Rows()
{
    while (rows.Read())
    {
        string[]? fields = rows.Parser.Record;
        yield return (rows.Parser.RawRow, broken ? null : fields);
        broken = false;
    }
}

(int Line, FixtureEstimate? Estimate, RowException? Fault) Estimate(int line, string[]? fields)
{
    try
    {
        return (line, FixtureEstimate.Of(TakeoffRow.Parse(Field)), null);
    }
    catch (RowException fault)
    {
        return (line, null, fault);
    }

    string Field(string column) => fields is null ? throw new RowException("the row", "a quotation mark stands where none may")
        : places[column] < fields.Length ? fields[places[column]].Trim()
        : throw new RowException(column, "is missing");
}

void Write(FixtureEstimate estimate)
{
    TakeoffRow row = estimate.Row;
    cautions.UnionWith(estimate.Verdict.Cautions.Select(Sentence));
    if (estimate.Price is not PriceEstimate price)
    {
        refused++;
        Record(lines, row.Room, row.Fixture, "REFUSED", "not to be refinished as it stands", "0", "fixture", "0.00", "0.00", Shop.Prices.Currency, estimate.Note);
        return;
    }

    priced++;
    total += price.Total!.Value;
    string note = estimate.Note;
    foreach (EstimateLine line in price.Lines.Where(line => line.Amount != 0))
    {
        items++;
        (string code, string description, string unit) = line.Unit == "kit" && line.Description.Split(", kit of")[0] is string drawn
            ? (Shop.MaterialCodes[drawn], drawn, "10 mL")
            : (line.Code, line.Description, line.Unit);
        Record(lines, row.Room, row.Fixture, code, description, Text(line.Quantity), unit, Text(line.Rate), Text(line.Amount), Shop.Prices.Currency, note);
        note = string.Empty;
    }
}

static string Sentence(Caution caution) => caution.Sentence + " (Decided by: " + caution.DecidedBy + ".)";

static string Text(decimal value) => value.ToString("0.00", CultureInfo.InvariantCulture);

static void Record(CsvWriter csv, params ReadOnlySpan<string> fields)
{
    foreach (string field in fields)
    {
        csv.WriteField(field);
    }

    csv.NextRecord();
}

static StreamWriter Writer(string file) => file == "-" ? new StreamWriter(Console.OpenStandardOutput()) : new StreamWriter(file);

static double PeakMegabytes()
{
    using Process self = Process.GetCurrentProcess();
    return self.PeakWorkingSet64 / 1048576.0;
}
