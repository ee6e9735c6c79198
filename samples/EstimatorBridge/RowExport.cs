using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>What became of a row.</summary>
internal enum RowFate
{
    /// <summary>It has a price.</summary>
    Priced,

    /// <summary>It can be read, and something stands in the way of the work; no price.</summary>
    Objected,

    /// <summary>It cannot be read, or holds a value that cannot be.</summary>
    Wrong,
}

/// <summary>
/// The lines of one row: what stands in the way or what has to be met first, and then, if nothing stands in the way, what it costs.
/// </summary>
internal sealed record RowExport(RowFate Fate, IReadOnlyList<ExportLine> Lines, IReadOnlyList<Caution> Cautions)
{
    /// <summary>Any line of the file gets an export, however wrong it is.</summary>
    public static RowExport Of(TakeoffHeader header, TakeoffLine line)
    {
        IReadOnlyDictionary<string, string> fields = new Dictionary<string, string>();
        try
        {
            fields = header.FieldsOf(line);
            TakeoffRow row = TakeoffRow.Parse(fields);
            return Of(row, row.ToJob(line.Number).Plan()).Named(line.Number, fields);
        }
        catch (RowException fault)
        {
            return Wrong(fault.Column + ": " + fault.Message).Named(line.Number, fields);
        }
        catch (Exception refused) when (refused is ArgumentException or OverflowException)
        {
            return Wrong(TakeoffRow.Sentence(refused)).Named(line.Number, fields);
        }
    }

    private static RowExport Of(TakeoffRow row, JobPlan plan)
    {
        string hazards = string.Join(' ', plan.Cautions.Select(planned => planned.Caution.Hazard).Distinct());
        List<ExportLine> lines =
        [
            .. plan.Objections.Select(objection => new ExportLine(
                objection.Kind == ObjectionKind.FixtureLeftOut ? "REFUSED" : "OBJECTION", objection.Sentence(DisplayUnits.Si))),
            .. plan.Doubts.Select(doubt => new ExportLine("DOUBT", doubt.Sentence(DisplayUnits.Si) + ". " + doubt.Remedy)),
            .. plan.Conditions.Select(condition =>
                new ExportLine("CONDITION", condition.Sentence(DisplayUnits.Si) + ": " + condition.Remedy)),
        ];
        bool priced = plan is { IsPossible: true, Price.IsComplete: true };
        if (priced)
        {
            lines.Add(new ExportLine("CONDITION", Assumed.Note));
            lines.AddRange(plan.Price!.Lines.Where(line => line.Cost != 0 || line.Price != 0).Select(line => Sold(line, row.Count)));
        }

        return new RowExport(priced ? RowFate.Priced : RowFate.Objected, [.. lines.Select(line => line with { Hazards = hazards })],
            [.. plan.Cautions.Select(planned => planned.Caution)]);
    }

    // The line of one fixture times their number; the sums are then as many times those of one, to the cent.
    // The rate of a tax is no cost, so it has no column.
    private static ExportLine Sold(EstimateLine line, int count) => new(line.HostCode ?? line.Code, line.Description)
    {
        Key = line.Id,
        Category = line.Category.ToString(),
        Quantity = line.Quantity * count,
        Unit = line.Unit.Symbol(),
        UnitCost = line.Category is LineCategory.Tax or LineCategory.Discount ? 0 : line.Rate,
        Cost = line.Cost * count,
        Price = line.Price * count,
        Taxes = string.Join(' ', line.Taxes),
    };

    private static RowExport Wrong(string what) => new(RowFate.Wrong, [new ExportLine("WRONG", what)], []);

    private RowExport Named(int row, IReadOnlyDictionary<string, string> fields) => this with
    {
        Lines =
        [
            .. Lines.Select(line => line with
            {
                Row = row,
                Room = fields.GetValueOrDefault("room", string.Empty),
                Fixture = fields.GetValueOrDefault("fixture", string.Empty),
            }),
        ],
    };
}
