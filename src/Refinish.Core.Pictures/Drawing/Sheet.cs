using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using OxyPlot;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// What the plotting library draws on: every call becomes one SVG element in the colours of <see cref="Ink"/>. Light shades are written
/// as attributes, dark ones in a style block that only takes hold when the reader's system asks for dark, so a viewer without styles
/// still shows the light picture.
/// </summary>
internal sealed class Sheet : ClippingRenderContext
{
    private readonly StringBuilder body = new();
    private readonly bool[] used = new bool[Ink.Count];
    private readonly PictureTheme theme;
    private OxyRect? clip;

    public Sheet(PictureTheme theme)
    {
        this.theme = theme;
        RendersToScreen = false;
    }

    public void Line(double x1, double y1, double x2, double y2, OxyColor colour, double width = 1, double[]? dashes = null) =>
        DrawLine([new ScreenPoint(x1, y1), new ScreenPoint(x2, y2)], colour, width, EdgeRenderingMode.Automatic, dashes, LineJoin.Miter);

    public void Rectangle(double left, double top, double width, double height, OxyColor fill, OxyColor stroke, double thickness = 1) =>
        DrawRectangle(new OxyRect(left, top, Math.Max(0, width), Math.Max(0, height)), fill, stroke, thickness, EdgeRenderingMode.Automatic);

    public void Circle(double x, double y, double radius, OxyColor fill, OxyColor stroke, double thickness = 1) =>
        DrawEllipse(new OxyRect(x - radius, y - radius, 2 * radius, 2 * radius), fill, stroke, thickness, EdgeRenderingMode.Automatic);

    public void Text(
        double x,
        double y,
        string text,
        OxyColor colour,
        double size,
        HorizontalAlignment across = HorizontalAlignment.Left,
        VerticalAlignment along = VerticalAlignment.Middle,
        bool bold = false,
        double rotation = 0) =>
        DrawText(new ScreenPoint(x, y), text, colour, string.Empty, size, bold ? FontWeights.Bold : FontWeights.Normal, rotation, across, along, null);

    /// <summary>
    /// Slanted lines inside a rectangle, drawn one by one: a pattern would need a name that can clash where several pictures stand on
    /// one page.
    /// </summary>
    public void Hatch(double left, double top, double width, double height, OxyColor colour, double spacing = 7, bool falling = false, double thickness = 1)
    {
        if (width <= 0 || height <= 0)
        {
            return;
        }

        List<ScreenPoint> ends = [];
        for (double at = spacing / 2; at < width + height; at += spacing)
        {
            // The line x + y = at, in the rectangle's own axes.
            double x1 = Math.Min(at, width);
            double x2 = Math.Max(0, at - height);
            ends.Add(new ScreenPoint(left + (falling ? width - x1 : x1), top + at - x1));
            ends.Add(new ScreenPoint(left + (falling ? width - x2 : x2), top + at - x2));
        }

        DrawLineSegments(ends, colour, thickness, EdgeRenderingMode.Automatic, null, LineJoin.Miter);
    }

    public override void DrawLine(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[]? dashArray, LineJoin lineJoin)
    {
        if (points.Count < 2 || !Visible(stroke, thickness))
        {
            return;
        }

        StringBuilder path = clip is null ? Path(points) : new();
        if (clip is OxyRect window)
        {
            bool joined = false;
            for (int i = 1; i < points.Count; i++)
            {
                if (Clipping.Segment(window, points[i - 1], points[i]) is (ScreenPoint from, ScreenPoint to))
                {
                    if (!joined)
                    {
                        Point(path, 'M', from);
                    }

                    Point(path, 'L', to);
                    joined = to.Equals(points[i]);
                }
                else
                {
                    joined = false;
                }
            }
        }

        if (path.Length > 0)
        {
            Element("path", null, stroke, thickness, " d=\"" + path + "\"" + Dashes(dashArray) + Joins(lineJoin));
        }
    }

    public override void DrawLineSegments(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[]? dashArray, LineJoin lineJoin)
    {
        if (points.Count < 2 || !Visible(stroke, thickness))
        {
            return;
        }

        StringBuilder path = new();
        for (int i = 0; i + 1 < points.Count; i += 2)
        {
            if (clip is not OxyRect window)
            {
                Point(path, 'M', points[i]);
                Point(path, 'L', points[i + 1]);
            }
            else if (Clipping.Segment(window, points[i], points[i + 1]) is (ScreenPoint from, ScreenPoint to))
            {
                Point(path, 'M', from);
                Point(path, 'L', to);
            }
        }

        if (path.Length > 0)
        {
            Element("path", null, stroke, thickness, " d=\"" + path + "\"" + Dashes(dashArray));
        }
    }

    public override void DrawPolygon(IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[]? dashArray, LineJoin lineJoin)
    {
        // Nothing of ours draws a polygon within a clip: outlines of fixtures lie on the page itself.
        if (points.Count < 3)
        {
            return;
        }

        Element("path", fill, stroke, thickness, " d=\"" + Path(points).Append('Z') + "\"" + Dashes(dashArray) + Joins(lineJoin));
    }

    public override void DrawRectangle(OxyRect rectangle, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
        OxyRect shown = clip is OxyRect window ? rectangle.Intersect(window) : rectangle;
        if (shown.Width >= 0 && shown.Height >= 0)
        {
            Element("rect", fill, stroke, thickness, string.Format(
                CultureInfo.InvariantCulture, " x=\"{0}\" y=\"{1}\" width=\"{2}\" height=\"{3}\"", Number(shown.Left), Number(shown.Top), Number(shown.Width), Number(shown.Height)));
        }
    }

    public override void DrawEllipse(OxyRect rect, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode) =>
        Element("ellipse", fill, stroke, thickness, string.Format(
            CultureInfo.InvariantCulture,
            " cx=\"{0}\" cy=\"{1}\" rx=\"{2}\" ry=\"{3}\"",
            Number(rect.Left + (rect.Width / 2)),
            Number(rect.Top + (rect.Height / 2)),
            Number(rect.Width / 2),
            Number(rect.Height / 2)));

    public override void DrawText(
        ScreenPoint p,
        string text,
        OxyColor fill,
        string fontFamily,
        double fontSize,
        double fontWeight,
        double rotation,
        HorizontalAlignment horizontalAlignment,
        VerticalAlignment verticalAlignment,
        OxySize? maxSize)
    {
        if (string.IsNullOrEmpty(text) || fill.IsInvisible())
        {
            return;
        }

        // From the point to the baseline, across the text's own axis: capitals and digits stand 0.73 of the size high.
        double down = fontSize * (verticalAlignment switch { VerticalAlignment.Top => 0.8, VerticalAlignment.Middle => 0.36, _ => -0.2 });
        double turn = rotation * Math.PI / 180;
        string x = Number(p.X - (down * Math.Sin(turn)));
        string y = Number(p.Y + (down * Math.Cos(turn)));
        string place = " x=\"" + x + "\" y=\"" + y + "\""
            + (horizontalAlignment == HorizontalAlignment.Left ? string.Empty : horizontalAlignment == HorizontalAlignment.Center ? " text-anchor=\"middle\"" : " text-anchor=\"end\"")
            + " font-size=\"" + Number(fontSize) + "\""
            + (fontWeight > FontWeights.Normal ? " font-weight=\"600\"" : string.Empty)
            + (rotation == 0 ? string.Empty : " transform=\"rotate(" + Number(rotation) + " " + x + " " + y + ")\"");
        body.Append("<text").Append(Paint(fill, null, 0)).Append(place).Append('>').Append(Xml.Escaped(text)).Append("</text>\n");
    }

    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) =>
        string.IsNullOrEmpty(text) ? new OxySize(0, 0) : new OxySize(TextWidths.Of(text, fontSize, fontWeight > FontWeights.Normal), fontSize * 1.2);

    /// <summary>The whole picture.</summary>
    public string ToSvg(double width, double height, string title, string description)
    {
        Use(Ink.Paper);
        StringBuilder text = new();
        string size = "viewBox=\"0 0 " + Number(width) + " " + Number(height) + "\" width=\"" + Number(width) + "\" height=\"" + Number(height) + "\"";
        string name = theme switch { PictureTheme.Light => "light", PictureTheme.Dark => "dark", _ => "follow" };
        text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" ").Append(size)
            .Append(" role=\"img\" class=\"refinish-").Append(name).Append("\" font-family=\"system-ui,sans-serif\">\n")
            .Append("<title>").Append(Xml.Escaped(title)).Append("</title>\n<desc>").Append(Xml.Escaped(description)).Append("</desc>\n");
        if (theme == PictureTheme.Follow)
        {
            text.Append("<style>@media (prefers-color-scheme:dark){\n");
            for (int i = 0; i < used.Length; i++)
            {
                if (used[i])
                {
                    string number = i.ToString(CultureInfo.InvariantCulture);
                    text.Append(".refinish-follow .f").Append(number).Append("{fill:").Append(Ink.Shown(i, dark: true))
                        .Append("}.refinish-follow .s").Append(number).Append("{stroke:").Append(Ink.Shown(i, dark: true)).Append("}\n");
                }
            }

            text.Append("}</style>\n");
        }

        text.Append("<rect").Append(Paint(Ink.Paper, null, 0)).Append(" width=\"").Append(Number(width)).Append("\" height=\"").Append(Number(height)).Append("\"/>\n");
        return text.Append(body).Append("</svg>\n").ToString();
    }

    protected override void SetClip(OxyRect clippingRectangle) => clip = clippingRectangle;

    protected override void ResetClip() => clip = null;

    private static bool Visible(OxyColor stroke, double thickness) => thickness > 0 && !stroke.IsInvisible();

    private static void Point(StringBuilder path, char verb, ScreenPoint point) => path.Append(verb).Append(Number(point.X)).Append(' ').Append(Number(point.Y));

    private static string Dashes(double[]? dashes) =>
        dashes is null || dashes.Length == 0 ? string.Empty : " stroke-dasharray=\"" + string.Join(" ", dashes.Select(Number)) + "\"";

    private static string Joins(LineJoin join) => join == LineJoin.Round ? " stroke-linejoin=\"round\"" : string.Empty;

    private static StringBuilder Path(IList<ScreenPoint> points)
    {
        StringBuilder path = new();
        for (int i = 0; i < points.Count; i++)
        {
            Point(path, i == 0 ? 'M' : 'L', points[i]);
        }

        return path;
    }

    // Hundredths of a pixel are enough, and the same on every runtime.
    private static string Number(double value)
    {
        string text = value.ToString("F2", CultureInfo.InvariantCulture).TrimEnd('0').TrimEnd('.');
        return text == "-0" ? "0" : text;
    }

    private void Element(string name, OxyColor? fill, OxyColor stroke, double thickness, string place)
    {
        bool filled = fill is OxyColor inside && !inside.IsInvisible();
        bool lined = Visible(stroke, thickness);
        if (filled || lined)
        {
            body.Append('<').Append(name).Append(Paint(filled ? fill : null, lined ? stroke : null, thickness)).Append(place).Append("/>\n");
        }
    }

    private string Paint(OxyColor? fill, OxyColor? stroke, double thickness)
    {
        StringBuilder text = new();
        int inside = fill is OxyColor f ? Use(f) : -1;
        int line = stroke is OxyColor s ? Use(s) : -1;
        if (theme == PictureTheme.Follow)
        {
            string classes = (inside >= 0 ? "f" + inside.ToString(CultureInfo.InvariantCulture) : string.Empty)
                + (inside >= 0 && line >= 0 ? " " : string.Empty)
                + (line >= 0 ? "s" + line.ToString(CultureInfo.InvariantCulture) : string.Empty);
            text.Append(" class=\"").Append(classes).Append('"');
        }

        bool dark = theme == PictureTheme.Dark;
        text.Append(" fill=\"").Append(inside >= 0 ? Ink.Shown(inside, dark) : "none").Append('"');
        if (line >= 0)
        {
            text.Append(" stroke=\"").Append(Ink.Shown(line, dark)).Append('"');
            if (thickness != 1)
            {
                text.Append(" stroke-width=\"").Append(Number(thickness)).Append('"');
            }
        }

        return text.ToString();
    }

    private int Use(OxyColor colour)
    {
        int number = Ink.Number(colour);
        used[number] = true;
        return number;
    }
}
