using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using OxyPlot.Axes;
using Refinish.Curing;
using Refinish.Jobs;
using Refinish.Pictures.Drawing;
using UnitsNet;

namespace Refinish.Pictures;

/// <summary>
/// When a coat is touch dry, when its recoat window opens and closes, when it takes water and when it is cured, as bands over time; with a
/// law of its chemistry, the conversion above them.
/// </summary>
/// <remarks>
/// Time is logarithmic, from minutes to weeks. A forecast outside the data sheet's temperatures has no times; the picture then says by how
/// much.
/// </remarks>
/// <example><code>
/// CureTimes times = new()
/// {
///     ReferenceTemperature = Temperature.FromDegreesCelsius(25), MinimumTemperature = Temperature.FromDegreesCelsius(10), MaximumTemperature = Temperature.FromDegreesCelsius(35),
///     PotLife = TimeSpan.FromHours(2), TouchDry = TimeSpan.FromHours(1), RecoatOpens = TimeSpan.FromHours(4), RecoatCloses = TimeSpan.FromHours(24),
///     WaterService = TimeSpan.FromHours(24), FullCure = TimeSpan.FromDays(7), Source = Source.Supplied("product data sheet"),
/// };
/// string svg = new CurePicture(new CureForecast(times, Temperature.FromDegreesCelsius(22)), "topcoat").ToSvg();
/// </code></example>
public sealed class CurePicture : Picture
{
    private const string Heading = "From wet to cured";
    private const int Samples = 160;
    private readonly IReadOnlyList<Coat> coats;
    private readonly ConversionCurve? conversion;
    private readonly JobPlan? plan;

    /// <summary>Pictures one forecast.</summary>
    /// <param name="forecast">The times at the site.</param>
    /// <param name="coating">What the coating is called.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="coating"/> is empty.</exception>
    public CurePicture(CureForecast forecast, string coating)
        : base(Heading, Given.Named(coating, nameof(coating)))
    {
        Given.NotNull(forecast, nameof(forecast));
        coats = [new Coat(coating, forecast, forecast, forecast)];
    }

    /// <summary>Pictures one forecast, and above its bands how far the chemistry goes.</summary>
    /// <param name="forecast">The times at the site.</param>
    /// <param name="coating">What the coating is called.</param>
    /// <param name="conversion">The conversion over time by a law of the chemistry.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="coating"/> is empty.</exception>
    public CurePicture(CureForecast forecast, string coating, ConversionCurve conversion)
        : this(forecast, coating) =>
        this.conversion = Given.NotNull(conversion, nameof(conversion));

    /// <summary>
    /// Pictures every coating of a plan: on the surface at its temperature, in the cup at the air's, and the window's end as the plan keeps
    /// it. A coating that meets other temperatures in another room is shown for each.
    /// </summary>
    /// <param name="plan">The plan; without coats, the picture says what stands in the way.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    public CurePicture(JobPlan plan)
        : base(Heading, Given.NotNull(plan, nameof(plan)).Job.Name)
    {
        this.plan = plan;
        coats = plan.Work is null ? [] : [.. Coatings(plan.Work)];
    }

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units) =>
        (coats.Count == 0 ? "There is no coat. " : "Stages of cure after the coat is on. ")
        + string.Join(" ", coats.Select(coat => coat.Name + At(coat, units) + (coat.Stages.Count > 0
            ? ": " + string.Join("; ", coat.Stages.Select(stage => stage.Name + " " + stage.Words(units))) + "."
            : ": no times. " + string.Join(" ", Outside(coat, units)))))
        + (conversion is null ? string.Empty : " Above, the conversion of the chemistry: " + string.Join(", ", Milestones(LastHour)
            .Select(point => Clock.Span(Durations(point.Hours)) + " " + Percent(point.Alpha))) + ".")
        + string.Concat(Objections.Of(plan, units, coats.Count > 0).Select(line => " " + line));

    private double LastHour => coats.SelectMany(coat => coat.Stages).Select(stage => stage.Last).DefaultIfEmpty(168).Max();

    private protected override void Draw(Page page)
    {
        if (coats.Count == 0)
        {
            page.Paragraph("There is no coat to forecast.");
        }

        page.Warnings(Objections.Of(plan, page.Units, coats.Count > 0));

        Coat[] timed = [.. coats.Where(coat => coat.Stages.Count > 0)];
        double first = timed.SelectMany(coat => coat.Stages).Select(stage => stage.First).DefaultIfEmpty(0.25).Min();
        if (conversion is not null)
        {
            Conversion(page, Math.Min(first, 0.25), LastHour);
        }

        foreach (Coat coat in coats)
        {
            page.SubHeading(coat.Name + At(coat, page.Units));
            page.Warnings(Outside(coat, page.Units));

            if (coat.Stages.Count > 0)
            {
                Bands(page, coat, conversion is null ? first : Math.Min(first, 0.25), LastHour);
            }
        }

        if (timed.Length > 0)
        {
            page.Note("Time since the coat was put on; pot life since it was mixed. The times are the data sheet's, moved to the temperature of the heading."
                + (timed.SelectMany(coat => coat.Stages).Any(stage => stage.Elsewhere is not null)
                    ? " Where another stands behind a time, it is that of the air: of the mix in its cup, and where a window closes first." : string.Empty)
                + " Colder, all are longer. The data sheet decides."
                + (coats.Any(coat => coat.Varies)
                    ? " Where the temperature varies, the window closes as in the warmest working hour;"
                        + " the schedule follows the hours themselves."
                    : string.Empty));
        }
    }

    // Runs of one product at the same temperatures are one picture; rooms are named where it takes more than one.
    private static IEnumerable<Coat> Coatings(WorkList work)
    {
        Dictionary<string, string?> rooms = new(StringComparer.Ordinal);
        foreach (Operation operation in work.Operations)
        {
            rooms[operation.Id] = operation.Room;
        }

        foreach (IGrouping<string, CoatRun> product in work.Runs.GroupBy(run => run.Layer.Product.Id, StringComparer.Ordinal))
        {
            CoatRun[][] climates = [.. product.GroupBy(run => (run.OnSurface, run.AtWarmest, run.InCup)).Select(group => group.ToArray())];
            foreach (CoatRun[] climate in climates)
            {
                CoatRun run = climate[0];
                string?[] ids = [.. climate.Select(one => rooms.TryGetValue(one.Id, out string? id) ? id : null)];
                SiteRoom[] here = [.. work.Premises.Rooms.Where(room => ids.Contains(room.Id))];
                string where = climates.Length > 1 && here.Length > 0 ? ", " + string.Join(", ", here.Select(room => room.Name)) + ","
                    : string.Empty;
                yield return new Coat(run.Layer.Product.Name + where, run.OnSurface, run.AtWarmest, run.InCup)
                {
                    Varies = here.Any(room => room.Climate.Kind != RoomClimateKind.Held),
                };
            }
        }
    }

    private static TimeSpan Durations(double hours) => TimeSpan.FromHours(hours);

    private static string Percent(double alpha) => Measure.Percent.Format(alpha, DisplayUnits.Si, 3);

    private static string At(Coat coat, DisplayUnits units) =>
        " at " + Measure.Temperature.Format(coat.Surface.Site.Kelvins, units, 3) + (coat.Varies ? ", the coldest of working hours"
            : string.Empty);

    private static IEnumerable<string> Outside(Coat coat, DisplayUnits units) =>
        coat.Surface.Checks.Where(check => check.Outcome != ComparisonOutcome.Within).Select(check => "There are no times: "
            + check.Sentence(units) + ".");

    private OxyThickness Margins(Page page, double bottom) => new(!page.IsNarrow ? 150 : conversion is null ? 10 : 42, 4, page.IsNarrow
        ? 8 : 16, bottom);

    private void Conversion(Page page, double first, double last)
    {
        page.SubHeading("Conversion of the chemistry");
        Axis across = TimeAxis.Logarithmic(first, last, page.Inside - Margins(page, 0).Left - Margins(page, 0).Right);
        Chart chart = new(across, Chart.Scale(0, 1, new[] { 0, 0.25, 0.5, 0.75, 1 }.Select(at => (at, Figures.Fixed(at * 100, 0) + " %"))),
            Margins(page, 26));
        List<DataPoint> points = [];
        for (int i = 0; i <= Samples; i++)
        {
            double hours = across.Minimum * Math.Pow(across.Maximum / across.Minimum, (double)i / Samples);
            if (Alpha(hours) is double alpha)
            {
                points.Add(new DataPoint(hours, alpha));
            }
        }

        chart.Line(points, Ink.Blue);
        (double Hours, double Alpha)[] marks = [.. Milestones(last)];
        chart.Add((sheet, at) =>
        {
            foreach ((double hours, double alpha) in marks)
            {
                ScreenPoint point = at(hours, alpha);
                sheet.Circle(point.X, point.Y, 3.5, Ink.Paper, Ink.Blue, 1.6);
                bool above = alpha < 0.8;
                sheet.Text(point.X - 7, point.Y + (above ? -9 : 13), Percent(alpha), Ink.Line, Page.Small, above
                    ? HorizontalAlignment.Right : HorizontalAlignment.Left);
            }
        });
        chart.Draw(page, page.IsNarrow ? 150 : 190);
    }

    private IEnumerable<(double Hours, double Alpha)> Milestones(double last)
    {
        foreach (double hours in new double[] { 4, 24, 168 })
        {
            if (hours <= last && Alpha(hours) is double alpha)
            {
                yield return (hours, alpha);
            }
        }
    }

    private double? Alpha(double hours)
    {
        DateTimeOffset instant = conversion!.Applied + Durations(hours);
        bool known = conversion.History.LastHoldsOn || instant <= conversion.History.End;
        return known ? conversion.ConversionAt(instant).DecimalFractions : null;
    }

    private void Bands(Page page, Coat coat, double first, double last)
    {
        const double row = 26;
        double height = page.IsNarrow ? 40 : row;
        List<Stage> stages = coat.Stages;
        Chart chart = new(TimeAxis.Logarithmic(first, last, page.Inside - Margins(page, 0).Left - Margins(page, 0).Right),
            Chart.Hidden(stages.Count, 0), Margins(page, 26));
        chart.Add((sheet, at) =>
        {
            for (int i = 0; i < stages.Count; i++)
            {
                Stage stage = stages[i];
                double top = at(1, i).Y + (page.IsNarrow ? 19 : 6);
                double bar = at(1, i + 1).Y - top - (page.IsNarrow ? 4 : 6);
                double left = page.Left + Margins(page, 0).Left;
                double right = page.Right - Margins(page, 0).Right;
                double from = stage.From is double opens ? at(opens, 0).X : left;
                double to = stage.To is double closes ? at(closes, 0).X : right;
                (OxyColor fill, OxyColor line) = stage.IsWindow ? (Ink.GreenTint, Ink.Green) : stage.To is null ? (Ink.BlueTint, Ink.Blue)
                    : (Ink.VermillionTint, Ink.Vermillion);
                sheet.Rectangle(from, top, to - from, bar, fill, line, 0.8);
                if (stage.To is not null && !stage.IsWindow)
                {
                    sheet.Hatch(from, top, to - from, bar, line, 6);
                }

                if (stage.From is not null)
                {
                    sheet.Line(from, top - 2, from, top + bar + 2, line, 2);
                }

                if (stage.To is not null)
                {
                    sheet.Line(to, top - 2, to, top + bar + 2, line, 2);
                }

                if (page.IsNarrow)
                {
                    sheet.Text(page.Left, at(1, i).Y + 10, stage.Name + ": " + stage.Words(page.Units), Ink.Line, Page.Small);
                    continue;
                }

                sheet.Text(left - 8, top + (bar / 2), stage.Name, Ink.Line, Page.Normal, HorizontalAlignment.Right);
                string said = stage.Words(page.Units);
                double width = TextWidths.Of(said, Page.Small) + 8;
                double words = stage.To is not null && to + width < right ? to + 6 : from - width > left ? from - width + 2 : from + 6;
                bool onBar = words >= from && words < to;
                if (onBar)
                {
                    sheet.Rectangle(words - 2, top + 1, width - 2, bar - 2, fill, OxyColors.Transparent);
                }

                sheet.Text(words, top + (bar / 2), said, Ink.Line, Page.Small);
            }
        });
        chart.Draw(page, (stages.Count * height) + 30);
    }

    private sealed record Stage(string Name, TimeSpan? Opens, TimeSpan? Closes, bool IsWindow)
    {
        public double? From => Hours(Opens);

        public double? To => Hours(Closes);

        public double First => From ?? To ?? 1;

        public double Last => To ?? From ?? 1;

        /// <summary>The temperature in kelvins for which the end is, when it is not that of the heading.</summary>
        public double? Elsewhere { get; init; }

        public string Words(DisplayUnits units) =>
            (Opens is TimeSpan opens && Closes is TimeSpan closes ? Clock.AtLeast(opens) + " to " + Clock.AtMost(closes)
            : Closes is TimeSpan until ? "until " + Clock.AtMost(until)
            : "from " + Clock.AtLeast(Opens!.Value) + " on")
            + (Elsewhere is double kelvins ? " at " + Measure.Temperature.Format(kelvins, units, 3) : string.Empty);

        // A log scale has no zero; a stage that begins at once begins with the first minute.
        private static double? Hours(TimeSpan? time) => time is TimeSpan known ? Math.Max(known.TotalHours, 1 / 60.0) : null;
    }

    private sealed record Coat
    {
        public Coat(string name, CureForecast surface, CureForecast warmest, CureForecast cup)
        {
            Name = name;
            Surface = surface;
            List<Stage> stages = [];
            Add("pot life, mixed", null, cup.PotLife, Elsewhere(cup));
            Add("touch dry", surface.TouchDry, null, null);
            Add(warmest.RecoatCloses is null ? "recoat" : "recoat window", surface.RecoatOpens, warmest.RecoatCloses,
                warmest.RecoatCloses is null ? null : Elsewhere(warmest), window: true);
            Add("water", surface.WaterService, null, null);
            Add("full cure", surface.FullCure, null, null);
            Stages = stages;

            double? Elsewhere(CureForecast forecast) => forecast.Site.Kelvins == surface.Site.Kelvins ? null : forecast.Site.Kelvins;

            void Add(string words, TimeSpan? from, TimeSpan? to, double? elsewhere, bool window = false)
            {
                if (surface.IsAvailable && (from ?? to) is not null)
                {
                    stages.Add(new Stage(words, from, to, window) { Elsewhere = elsewhere });
                }
            }
        }

        public string Name { get; }

        public CureForecast Surface { get; }

        /// <summary>Whether the room follows the day or a record, so that one temperature is only its bound.</summary>
        public bool Varies { get; init; }

        public List<Stage> Stages { get; }
    }
}
