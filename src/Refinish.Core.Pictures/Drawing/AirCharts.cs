using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using OxyPlot.Axes;
using Refinish.Air;

namespace Refinish.Pictures.Drawing;

/// <summary>The two charts of one room's air, each with its limits and how far off they are.</summary>
internal static class AirCharts
{
    private const int Samples = 240;
    private static readonly double[] SecondsAfterStart = [0, 1, 5, 20, 60];

    public static void Draw(Page page, RoomVapour room)
    {
        if (room.Study is not AirStudy study)
        {
            page.Paragraph("Nothing evaporates that is stated. That is no all-clear.");
            Further(page, room);
            return;
        }

        AirTimes times = new(page, room);
        page.Note(
            "Room of " + Measure.RoomVolume.Format(study.Room.Volume.CubicMeters, page.Units, 3) + ", "
                + Measure.Airflow.Format(study.FreshAirFlow.CubicMetersPerSecond, page.Units, 3)
            + " of air that counts as fresh. "
            + (times.Shown.Spans.Count > 1 ? "At a dotted line, the hours between are left out. " : string.Empty)
            + "Shaded, while it is sprayed or wiped on: "
            + string.Join("; ", room.Emissions.Select((emission, i) => (Name: room.NameOf(emission), Number: i + 1))
                .GroupBy(one => one.Name, one => one.Number)
                .Select(group => AirTimes.Numbers([.. group]) + " " + group.Key)) + ".");
        Flammable(page, room, study, times);
        Exposed(page, room, study, times);
        page.Y += 4;
        Further(page, room);
    }

    private static void Further(Page page, RoomVapour room)
    {
        LimitComparison[] others = [.. room.Others.GroupBy(comparison => comparison.Sentence(page.Units)).Select(same => same.First())];
        if (others.Length > 0)
        {
            page.SubHeading("Further: beyond a limit, or not to be judged");
            foreach (LimitComparison comparison in others)
            {
                Verdict(page, comparison);
            }
        }
    }

    // Close together where a spray begins: from next to nothing the curve rises steeply. One line for each span, none through a fold.
    private static IEnumerable<IEnumerable<DataPoint>> Curves(AirStudy study, TimeFold shown, Func<TimeSpan, double> value) =>
        shown.Spans.Select(span => (From: Math.Max(0, span.From), span.Until)).Select(span =>
        Enumerable.Range(0, Samples + 1).Select(i => span.From + ((span.Until - span.From) * i / Samples))
            .Concat(study.Emissions.SelectMany(emission => SecondsAfterStart.Select(seconds => emission.Start.TotalHours
                + (seconds / 3600)).Concat([emission.End.TotalHours])))
            .Concat(study.Substances.Select(substance => substance.PeakAt?.TotalHours ?? 0))
            .Concat([study.PeakFlammableAt?.TotalHours ?? 0])
            .Where(hours => hours >= span.From && hours <= span.Until)
            .Distinct()
            .OrderBy(hours => hours)
            .Select(hours => new DataPoint(shown.At(hours), value(TimeSpan.FromHours(hours)))));

    private static void Flammable(Page page, RoomVapour room, AirStudy study, AirTimes times)
    {
        page.SubHeading("All vapour, share of the lower flammable limit");
        if (study.PeakFlammableFraction is not { } peak)
        {
            page.Warning(study.FlammableLimit.Sentence(page.Units) + ".");
            return;
        }

        List<LimitLine> limits = [.. new[] { study.FlammableLimit, study.FlammableDesignLine }.Where(line => line.Limit is not null)
            .Select(line => new LimitLine(line.Limit!.Value.Si, Measure.Percent.Format(line.Limit.Value.Si, page.Units, 3) + ", "
                + line.Source.Document, [8, 4]))];
        double top = Math.Max(peak.DecimalFractions, limits.Max(line => line.Value)) * 1.12;
        Chart chart = new(
            times.Across(),
            Chart.Scale(0, top, Chart.Round(0, top, 5).Select(at => (at, Figures.Significant(at * 100, 3) + " %"))),
            times.Margins);
        chart.Add((sheet, at) => times.Draw(sheet, at, 0, top), below: true);
        foreach (IEnumerable<DataPoint> curve in Curves(study, times.Shown,
            time => Math.Max(0, study.FlammableFractionAt(time)!.Value.DecimalFractions)))
        {
            chart.Line(curve, Ink.Blue);
        }

        chart.Add((sheet, at) => Limits(page, sheet, at, limits, times.Shown, 0, top));
        double start = page.Y;
        chart.Draw(page, times.MarginHeight + (page.IsNarrow ? 124 : 154));
        Key(page, limits, start);
        foreach (LimitComparison line in room.Fire)
        {
            Verdict(page, line);
        }
    }

    private static void Exposed(Page page, RoomVapour room, AirStudy study, AirTimes times)
    {
        IReadOnlyList<ExposureComparison> comparisons = room.Worst;
        if (comparisons.Count == 0)
        {
            page.Note("Nothing is given off that is held against a limit of breathing.");
            return;
        }

        SubstanceAir air = study.Substances.First(substance => substance.Solvent.CasNumber == comparisons[0].Solvent.CasNumber);
        page.SubHeading(air.Solvent.Name + ", the substance nearest to or furthest beyond a limit");
        double perMass = air.PeakConcentration.KilogramsPerCubicMeter > 0
            ? air.Peak.DecimalFractions / air.PeakConcentration.KilogramsPerCubicMeter : 0;
        List<LimitLine> limits = [.. comparisons.Where(exposure => exposure.Limit is not null && exposure.Comparison.Limit is not null)
            .GroupBy(exposure => (exposure.Comparison.Limit!.Value.Si, Averaging(exposure.Limit!)))
            .OrderBy(group => group.Key.Si)
            .Select(group => new LimitLine(
                group.Key.Si,
                string.Join(" and ", group.Select(exposure => exposure.Limit!.Authority).Distinct()) + ", " + group.Key.Item2 + ": "
                    + Measure.PartsPerMillion.Format(group.Key.Si, page.Units, 4),
                Dashes(group.First().Limit!.Kind)))];
        double most = Math.Max(air.Peak.DecimalFractions, limits.Select(line => line.Value).DefaultIfEmpty(0).Max());
        double least = Math.Min(air.Peak.DecimalFractions, limits.Select(line => line.Value).DefaultIfEmpty(air.Peak.DecimalFractions)
            .Min()) / 12;
        if (most <= 0 || least <= 0)
        {
            page.Warning("None of it is released, or none of its limits is known.");
            return;
        }

        double low = least;
        double high = most * 1.5;
        Chart chart = new(times.Across(), Chart.Scale(low, high, Decades(low, high / 1.25)
            .Select(at => (at, Figures.Significant(Measure.PartsPerMillion.Shown(at, page.Units), 4))), logarithmic: true), times.Margins);
        chart.Add((sheet, at) => times.Draw(sheet, at, low, high), below: true);
        foreach (IEnumerable<DataPoint> curve in Curves(study, times.Shown, time => Math.Max(low * 1e-3,
            perMass * study.ConcentrationAt(air.Solvent, time).KilogramsPerCubicMeter)))
        {
            chart.Line(curve, Ink.Blue);
        }

        chart.Add((sheet, at) =>
        {
            Limits(page, sheet, at, limits, times.Shown, low, high);
            sheet.Text(at(0, high).X - 6, at(0, high).Y - 10, Measure.PartsPerMillion.Symbol(page.Units), Ink.Note, Page.Small,
                HorizontalAlignment.Right);
        });
        double start = page.Y;
        chart.Draw(page, times.MarginHeight + (page.IsNarrow ? 154 : 184));
        Key(page, limits, start);
        page.Note("The scale is logarithmic. The curve is the moment; a limit is held against its own average, which is:");
        foreach (ExposureComparison exposure in comparisons)
        {
            Verdict(page, exposure.Comparison);
        }
    }

    private static double[]? Dashes(ExposureLimitKind kind) => kind switch
    {
        ExposureLimitKind.Twa8h => [12, 4],
        ExposureLimitKind.Stel15min => [5, 3],
        _ => null,
    };

    private static IEnumerable<double> Decades(double low, double high)
    {
        for (int power = (int)Math.Floor(Math.Log10(low)); Math.Pow(10, power) <= high; power++)
        {
            foreach (int times in new[] { 1, 3 })
            {
                double at = (double)((decimal)times * (decimal)Math.Pow(10, power));
                if (at >= low && at <= high)
                {
                    yield return at;
                }
            }
        }
    }

    private static string Averaging(ExposureLimit limit) => limit.Kind switch
    {
        ExposureLimitKind.Twa8h => "8 h",
        ExposureLimitKind.Stel15min => "15 min",
        ExposureLimitKind.Ceiling => "ceiling, at any time",
        ExposureLimitKind.BriefPeak => "brief peak",
        _ => "at any time",
    };

    private static void Verdict(Page page, LimitComparison comparison)
    {
        if (comparison.Outcome == ComparisonOutcome.Within)
        {
            page.Note("· " + comparison.Sentence(page.Units) + ".");
        }
        else
        {
            page.Warning(comparison.Sentence(page.Units) + ".");
        }
    }

    private static void Limits(Page page, Sheet sheet, Func<double, double, ScreenPoint> at, List<LimitLine> limits, TimeFold shown,
        double low, double high)
    {
        double end = shown.Last;
        double room = page.Right - at(end, low).X - 12;
        IReadOnlyList<string>[] words = [.. limits.Select(line => TextWidths.Wrapped(line.Words, Page.Small, room))];
        double[] places = Labels.Apart([.. limits.Select(line => at(end, line.Value).Y)], !page.IsNarrow
            && words.Any(lines => lines.Count > 1) ? 31 : 16, at(end, high).Y, at(end, low).Y);
        for (int i = 0; i < limits.Count; i++)
        {
            ScreenPoint right = at(end, limits[i].Value);
            sheet.Line(at(0, limits[i].Value).X, right.Y, right.X, right.Y, Ink.Vermillion, 1.8, limits[i].Dashes);
            sheet.Line(right.X, right.Y, right.X + 8, places[i], Ink.Note);
            IReadOnlyList<string> label = page.IsNarrow ? [Letter(i)] : words[i];
            for (int k = 0; k < label.Count; k++)
            {
                sheet.Text(right.X + 11, places[i] + ((k - ((label.Count - 1) / 2.0)) * 15), label[k], Ink.Line, Page.Small);
            }
        }
    }

    private static string Letter(int i) => ((char)('a' + i)).ToString();

    // On a narrow page the lines carry letters and their words stand below.
    private static void Key(Page page, List<LimitLine> limits, double start)
    {
        if (page.IsNarrow && page.Y > start)
        {
            for (int i = 0; i < limits.Count; i++)
            {
                page.Paragraph(Letter(i) + "  " + limits[i].Words, Page.Small);
            }
        }
    }

    private sealed record LimitLine(double Value, string Words, double[]? Dashes);
}
