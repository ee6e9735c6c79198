using System;
using System.Collections.Generic;
using System.Globalization;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// A plot in the house's manner: thin axes, faint grid, everything labelled where it stands. The plotting library scales and draws it.
/// </summary>
internal sealed class Chart
{
    private readonly PlotModel model;

    public Chart(Axis across, Axis upright, OxyThickness margins)
    {
        model = new PlotModel
        {
            Culture = CultureInfo.InvariantCulture,
            PlotMargins = margins,
            Padding = new OxyThickness(0),
            TitlePadding = 0,
            PlotAreaBorderThickness = new OxyThickness(0),
            PlotAreaBorderColor = OxyColors.Transparent,
            Background = OxyColors.Transparent,
            TextColor = Ink.Note,
        };
        across.Position = AxisPosition.Bottom;
        upright.Position = AxisPosition.Left;
        model.Axes.Add(across);
        model.Axes.Add(upright);
    }

    /// <summary>An axis with ticks where the caller wants them, each with its label.</summary>
    public static Axis Scale(double from, double to, IEnumerable<(double At, string Label)> ticks, bool logarithmic = false)
    {
        Dictionary<double, string> labels = [];
        foreach ((double at, string label) in ticks)
        {
            labels[at] = label;
        }

        Axis axis = logarithmic ? new ListedLogarithmicAxis([.. labels.Keys]) : new ListedAxis([.. labels.Keys]);
        axis.LabelFormatter = value => labels.TryGetValue(value, out string? label) ? label : string.Empty;
        axis.Minimum = from;
        axis.Maximum = to;
        axis.MinimumPadding = 0;
        axis.MaximumPadding = 0;
        axis.FontSize = Page.Small;
        axis.TextColor = Ink.Note;
        axis.TicklineColor = Ink.Note;
        axis.AxislineColor = Ink.Note;
        axis.AxislineStyle = LineStyle.Solid;
        axis.MajorGridlineStyle = LineStyle.Solid;
        axis.MajorGridlineColor = Ink.Faint;
        axis.MajorTickSize = 4;
        axis.MinorTickSize = 0;
        axis.AxisTickToLabelDistance = 3;
        return axis;
    }

    /// <summary>An axis that only places; it shows nothing. It runs downwards when it ends below where it begins.</summary>
    public static Axis Hidden(double from, double to) => new LinearAxis
    {
        Minimum = Math.Min(from, to),
        Maximum = Math.Max(from, to),
        StartPosition = from <= to ? 0 : 1,
        EndPosition = from <= to ? 1 : 0,
        MinimumPadding = 0,
        MaximumPadding = 0,
        TickStyle = TickStyle.None,
        LabelFormatter = _ => string.Empty,
        AxislineStyle = LineStyle.None,
        TextColor = Ink.Note,
        TicklineColor = Ink.Note,
    };

    /// <summary>A step of 1, 2 or 5 times a power of ten that cuts a range into so many at most.</summary>
    public static double Step(double from, double to, int most)
    {
        double rough = (to - from) / Math.Max(1, most);
        decimal power = (decimal)Math.Pow(10, Math.Floor(Math.Log10(rough)));
        foreach (int times in (int[])[1, 2, 5])
        {
            if ((double)(times * power) >= rough * (1 - 1e-9))
            {
                return (double)(times * power);
            }
        }

        return (double)(10 * power);
    }

    /// <summary>Ticks at whole multiples of such a step.</summary>
    public static IEnumerable<double> Round(double from, double to, int most)
    {
        // Through decimal, so that 3 × 0.1 is 0.3 and carries that label.
        decimal step = (decimal)Step(from, to, most);
        for (decimal k = Math.Ceiling((decimal)(from / (double)step) - 1e-9m); (double)(k * step) <= to * (1 + 1e-12); k++)
        {
            yield return (double)(k * step);
        }
    }

    public void Line(IEnumerable<DataPoint> points, OxyColor colour, double width = 2, LineStyle style = LineStyle.Solid)
    {
        LineSeries line = new() { Color = colour, StrokeThickness = width, LineStyle = style, LineJoin = LineJoin.Round, MinimumSegmentLength = 0 };
        line.Points.AddRange(points);
        model.Series.Add(line);
    }

    /// <summary>Draws with the axes' own scales, under the lines or over them.</summary>
    public void Add(Action<Sheet, Func<double, double, ScreenPoint>> draw, bool below = false) =>
        model.Annotations.Add(new Drawn(draw) { Layer = below ? AnnotationLayer.BelowAxes : AnnotationLayer.AboveSeries });

    public void Draw(Page page, double height)
    {
        IPlotModel plot = model;
        plot.Update(true);
        if (model.GetLastPlotException() is Exception fault)
        {
            throw new InvalidOperationException("The plot could not be made.", fault);
        }

        plot.Render(page.Sheet, new OxyRect(page.Left, page.Y, page.Inside, height));
        if (model.GetLastPlotException() is Exception late)
        {
            throw new InvalidOperationException("The plot could not be drawn.", late);
        }

        page.Y += height;
    }

    private sealed class Drawn(Action<Sheet, Func<double, double, ScreenPoint>> draw) : Annotation
    {
        public override void Render(IRenderContext rc)
        {
            base.Render(rc);
            draw((Sheet)rc, (x, y) => new ScreenPoint(PlotModel.DefaultXAxis.Transform(x), PlotModel.DefaultYAxis.Transform(y)));
        }

        // It draws labels beside the plot area too.
        public override OxyRect GetClippingRect() => OxyRect.Everything;
    }

    private sealed class ListedAxis(IList<double> ticks) : LinearAxis
    {
        public override void GetTickValues(out IList<double> majorLabelValues, out IList<double> majorTickValues, out IList<double> minorTickValues)
        {
            majorLabelValues = ticks;
            majorTickValues = ticks;
            minorTickValues = [];
        }
    }

    private sealed class ListedLogarithmicAxis(IList<double> ticks) : LogarithmicAxis
    {
        public override void GetTickValues(out IList<double> majorLabelValues, out IList<double> majorTickValues, out IList<double> minorTickValues)
        {
            majorLabelValues = ticks;
            majorTickValues = ticks;
            minorTickValues = [];
        }
    }
}
