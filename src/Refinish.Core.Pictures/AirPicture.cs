using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using OxyPlot.Axes;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Jobs;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures;

/// <summary>What is in the air of the room over the coats: all vapour against its flammable limit, and the substance that comes to most of an exposure limit.</summary>
/// <remarks>
/// Every limit carries its authority and the time it is averaged over. The curve is the moment; the averages that a limit is meant for are listed below it with how far off they are.
/// The picture compares with limits and finds nothing safe: who decides is said on it.
/// </remarks>
/// <example><code>
/// Room bathroom = new(Length.FromFeet(8), Length.FromFeet(5), Length.FromFeet(8));
/// SolventEmission coat = new()
/// {
///     Name = "topcoat", Start = TimeSpan.Zero, SprayTime = TimeSpan.FromMinutes(6), VolatileMass = Mass.FromGrams(164),
///     Solvents = [new(GenericSolvents.ButylAcetate, Ratio.FromPercent(100))], FlashFraction = Ratio.FromPercent(40), FilmTimeConstant = TimeSpan.FromMinutes(15),
/// };
/// AirStudy study = new(bathroom, new Exhaust { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(250) }, [coat], TimeSpan.FromHours(8));
/// string svg = new AirPicture(study).ToSvg();
/// </code></example>
public sealed class AirPicture : Picture
{
    private const string Heading = "Vapour in the room";
    private const int Samples = 240;
    private static readonly double[] SecondsAfterStart = [0, 1, 5, 20, 60];
    private readonly AirStudy? study;
    private readonly BathroomPlan? plan;

    /// <summary>Pictures a study.</summary>
    /// <param name="study">The study.</param>
    /// <param name="title">What the picture is of.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="title"/> is empty.</exception>
    public AirPicture(AirStudy study, string title = Heading)
        : base(title) =>
        this.study = Given.NotNull(study, nameof(study));

    /// <summary>Pictures the air of a plan.</summary>
    /// <param name="plan">The plan; without an air study, the picture says so.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    public AirPicture(BathroomPlan plan)
        : base(Heading, Given.NotNull(plan, nameof(plan)).Job.Name)
    {
        this.plan = plan;
        study = plan.Air;
    }

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units)
    {
        if (study is null)
        {
            return "The air was not studied, which is no all-clear. " + string.Join(" ", Objections.Of(plan, units, hasResult: false));
        }

        return string.Join(" ", Fire(study).Concat(Worst(study).Select(exposure => exposure.Comparison)).Concat(Others(study)).Select(comparison => comparison.Sentence(units) + ".").Distinct())
            + " " + AirCautions.BreathingZone.Sentence + " Decided by: " + AirCautions.BreathingZone.DecidedBy + "."
            + string.Concat(Objections.Of(plan, units, hasResult: true).Select(line => " " + line));
    }

    private protected override void Draw(Page page)
    {
        foreach (string line in Objections.Of(plan, page.Units, study is not null))
        {
            page.Warning(line);
        }

        if (study is null)
        {
            page.Paragraph("The air was not studied. That is no all-clear.");
            return;
        }

        page.Note(
            "Room of " + Measure.RoomVolume.Format(study.Room.Volume.CubicMeters, page.Units, 3) + ", " + Measure.Airflow.Format(study.FreshAirFlow.CubicMetersPerSecond, page.Units, 3)
            + " of air that counts as fresh. Shaded, while it is sprayed or wiped on: "
            + string.Join("; ", study.Emissions.OrderBy(emission => emission.Start).Select((emission, i) => Figures.Fixed(i + 1, 0) + " " + emission.Name)) + ".");
        double end = End(study);
        Flammable(page, study, end);
        Exposed(page, study, end);
        page.Y += 4;
        LimitComparison[] others = [.. Others(study)];
        if (others.Length > 0)
        {
            page.SubHeading("Further: beyond a limit, or not to be judged");
            foreach (LimitComparison comparison in others)
            {
                Verdict(page, comparison);
            }
        }

        IEnumerable<Caution> cautions = study.Cautions.Except(AirCautions.ForSpraying).Concat(plan is { IsocyanateScreens.Count: > 0 } ? [AirCautions.SuppliedAir, AirCautions.BreathingZone] : [AirCautions.BreathingZone]);
        foreach (Caution caution in cautions.Distinct())
        {
            page.Warning(caution.Sentence + " Decided by: " + caution.DecidedBy + ".");
        }
    }

    private static IEnumerable<LimitComparison> Fire(AirStudy study) => [study.FlammableLimit, study.FlammableDesignLine];

    // Every comparison of the substance that comes to the largest part of one of its limits; without any limit, of the one with the highest peak.
    private static IEnumerable<ExposureComparison> Worst(AirStudy study)
    {
        Solvent worst = study.Exposure
            .Where(exposure => exposure.Comparison.Limit > 0)
            .OrderByDescending(exposure => exposure.Comparison.Value / exposure.Comparison.Limit)
            .Select(exposure => exposure.Solvent)
            .FirstOrDefault() ?? study.Substances.OrderByDescending(substance => substance.Peak.DecimalFractions).First().Solvent;
        return study.Exposure.Where(exposure => exposure.Solvent.CasNumber == worst.CasNumber);
    }

    // What else is not within its limit: mist of isocyanates and the other substances.
    private IEnumerable<LimitComparison> Others(AirStudy study) =>
        (plan?.Protection ?? study.Exposure.Select(exposure => exposure.Comparison))
            .Where(comparison => comparison.Outcome != ComparisonOutcome.Within)
            .Except(Worst(study).Select(exposure => exposure.Comparison));

    // Until all vapour is down to a fiftieth of its peak, at least an hour and at most half a day after the last coat.
    private static double End(AirStudy study)
    {
        double last = study.LastSprayEnds.TotalHours;
        double Sum(double hours) => study.Substances.Sum(substance => study.ConcentrationAt(substance.Solvent, TimeSpan.FromHours(hours)).KilogramsPerCubicMeter);
        double peak = study.Substances.Sum(substance => substance.PeakConcentration.KilogramsPerCubicMeter);
        double end = last + 1;
        while (end < last + 12 && Sum(end) > peak / 50)
        {
            end += 0.5;
        }

        return Math.Ceiling(end * 2) / 2;
    }

    // Close together where a spray begins: from next to nothing the curve rises steeply.
    private static IEnumerable<double> Times(AirStudy study, double end) =>
        Enumerable.Range(0, Samples + 1).Select(i => end * i / Samples)
            .Concat(study.Emissions.SelectMany(emission => SecondsAfterStart.Select(seconds => emission.Start.TotalHours + (seconds / 3600)).Concat([emission.End.TotalHours])))
            .Concat(study.Substances.Select(substance => substance.PeakAt?.TotalHours ?? 0))
            .Concat([study.PeakFlammableAt?.TotalHours ?? 0])
            .Where(hours => hours <= end)
            .Distinct()
            .OrderBy(hours => hours);

    private static Axis Across(Page page, double end) =>
        Chart.Scale(0, end, Chart.Round(0, end, page.IsNarrow ? 6 : 12).Select(at => (at, Figures.Significant(at, 3) + (at == 0 ? " h" : string.Empty))));

    private static OxyThickness Margins(Page page) => new(44, 20, page.IsNarrow ? 20 : 232, 26);

    private static void Flammable(Page page, AirStudy study, double end)
    {
        page.SubHeading("All vapour, share of the lower flammable limit");
        if (study.PeakFlammableFraction is not { } peak)
        {
            page.Warning(study.FlammableLimit.Sentence(page.Units) + ".");
            return;
        }

        List<LimitLine> limits = [.. Fire(study).Where(line => line.Limit is not null)
            .Select(line => new LimitLine(line.Limit!.Value, Measure.Percent.Format(line.Limit.Value, page.Units, 3) + ", " + line.Source.Document, [8, 4]))];
        double top = Math.Max(peak.DecimalFractions, limits.Max(line => line.Value)) * 1.12;
        Chart chart = new(
            Across(page, end),
            Chart.Scale(0, top, Chart.Round(0, top, 5).Select(at => (at, Figures.Significant(at * 100, 3) + " %"))),
            Margins(page));
        chart.Add((sheet, at) => Coats(page, sheet, at, study, 0, top), below: true);
        chart.Line(Times(study, end).Select(hours => new DataPoint(hours, study.FlammableFractionAt(TimeSpan.FromHours(hours))!.Value.DecimalFractions)), Ink.Blue);
        chart.Add((sheet, at) => Limits(page, sheet, at, limits, end, 0, top));
        double start = page.Y;
        chart.Draw(page, page.IsNarrow ? 170 : 200);
        Key(page, limits, start);
        foreach (LimitComparison line in Fire(study))
        {
            Verdict(page, line);
        }
    }

    private static void Exposed(Page page, AirStudy study, double end)
    {
        ExposureComparison[] comparisons = [.. Worst(study)];
        SubstanceAir air = study.Substances.First(substance => substance.Solvent.CasNumber == comparisons[0].Solvent.CasNumber);
        page.SubHeading(air.Solvent.Name + ", the substance nearest to or furthest beyond a limit");
        double perMass = air.PeakConcentration.KilogramsPerCubicMeter > 0 ? air.Peak.DecimalFractions / air.PeakConcentration.KilogramsPerCubicMeter : 0;
        List<LimitLine> limits = [.. comparisons.Where(exposure => exposure.Limit is not null && exposure.Comparison.Limit is not null)
            .GroupBy(exposure => (exposure.Comparison.Limit!.Value, Averaging(exposure.Limit!)))
            .OrderBy(group => group.Key.Value)
            .Select(group => new LimitLine(
                group.Key.Value,
                string.Join(" and ", group.Select(exposure => exposure.Limit!.Authority).Distinct()) + ", " + group.Key.Item2 + ": " + Measure.PartsPerMillion.Format(group.Key.Value, page.Units, 4),
                group.First().Limit!.Kind switch { ExposureLimitKind.Twa8h => [12, 4], ExposureLimitKind.Stel15min => [5, 3], _ => null }))];
        double most = Math.Max(air.Peak.DecimalFractions, limits.Select(line => line.Value).DefaultIfEmpty(0).Max());
        double least = Math.Min(air.Peak.DecimalFractions, limits.Select(line => line.Value).DefaultIfEmpty(air.Peak.DecimalFractions).Min()) / 12;
        if (most <= 0 || least <= 0)
        {
            page.Warning("None of it is released, or none of its limits is known.");
            return;
        }

        double low = least;
        double high = most * 1.5;
        Chart chart = new(Across(page, end), Chart.Scale(low, high, Decades(low, high).Select(at => (at, Figures.Significant(Measure.PartsPerMillion.Shown(at, page.Units), 4))), logarithmic: true), Margins(page));
        chart.Add((sheet, at) => Coats(page, sheet, at, study, low, high), below: true);
        chart.Line(
            Times(study, end).Select(hours => new DataPoint(hours, perMass * study.ConcentrationAt(air.Solvent, TimeSpan.FromHours(hours)).KilogramsPerCubicMeter)).Select(point => new DataPoint(point.X, Math.Max(point.Y, low * 1e-3))),
            Ink.Blue);
        chart.Add((sheet, at) =>
        {
            Limits(page, sheet, at, limits, end, low, high);
            sheet.Text(at(0, high).X - 6, at(0, high).Y - 10, Measure.PartsPerMillion.Symbol(page.Units), Ink.Note, Page.Small, HorizontalAlignment.Right);
        });
        double start = page.Y;
        chart.Draw(page, page.IsNarrow ? 200 : 230);
        Key(page, limits, start);
        page.Note("The scale is logarithmic. The curve is the moment; a limit is held against its own average, which is:");
        foreach (ExposureComparison exposure in comparisons)
        {
            Verdict(page, exposure.Comparison);
        }
    }

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

    private static void Coats(Page page, Sheet sheet, Func<double, double, ScreenPoint> at, AirStudy study, double low, double high)
    {
        int number = 0;
        double free = double.MinValue;
        foreach (Emission emission in study.Emissions.OrderBy(emission => emission.Start))
        {
            ScreenPoint from = at(emission.Start.TotalHours, high);
            ScreenPoint to = at(emission.End.TotalHours, low);
            sheet.Rectangle(from.X, from.Y, Math.Max(1.5, to.X - from.X), to.Y - from.Y, Ink.VermillionTint, OxyColors.Transparent);
            string name = Figures.Fixed(++number, 0);
            double x = Math.Max((from.X + to.X) / 2, free);
            sheet.Text(x, from.Y - 9, name, Ink.Line, Page.Small, HorizontalAlignment.Center);
            free = x + TextWidths.Of(name, Page.Small) + 4;
        }
    }

    private static void Limits(Page page, Sheet sheet, Func<double, double, ScreenPoint> at, List<LimitLine> limits, double end, double low, double high)
    {
        double room = page.Right - at(end, low).X - 12;
        IReadOnlyList<string>[] words = [.. limits.Select(line => TextWidths.Wrapped(line.Words, Page.Small, room))];
        double[] places = Labels.Apart([.. limits.Select(line => at(end, line.Value).Y)], !page.IsNarrow && words.Any(lines => lines.Count > 1) ? 31 : 16, at(end, high).Y, at(end, low).Y);
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
