using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Xunit;

namespace Refinish.Pictures.Tests;

/// <summary>A picture read back from its text, so that what it shows is judged by the file alone.</summary>
internal sealed class SvgFile
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public SvgFile(string text)
    {
        Root = XDocument.Parse(text).Root!;
        Texts = [.. Root.Descendants(Svg + "text").Select(SvgText.Of)];
        Width = SvgText.Number(Root, "width");
        Height = SvgText.Number(Root, "height");
    }

    public XElement Root { get; }

    public double Width { get; }

    public double Height { get; }

    public IReadOnlyList<SvgText> Texts { get; }

    /// <summary>Everything that is written, the wrapped lines of a paragraph joined again.</summary>
    public string AllWords => string.Join(" ", Texts.Select(text => text.Words));

    public string Title => Root.Element(Svg + "title")!.Value;

    public string Description => Root.Element(Svg + "desc")!.Value;

    public IEnumerable<XElement> Elements(string name) => Root.Descendants(Svg + name);

    public SvgText Text(string words) => Texts.First(text => text.Words == words);

    /// <summary>No text lies on another and none leaves the paper, but for a pixel. Each box is measured once, and words are made only for a failure.</summary>
    public void HoldsTextsApart(int width)
    {
        Assert.Equal(width, Width);
        SvgText[] texts = [.. Texts.Where(text => text.Words.Length > 0)];
        Assert.NotEmpty(texts);
        (double Left, double Top, double Right, double Bottom)[] boxes = [.. texts.Select(text => text.Box)];
        for (int i = 0; i < texts.Length; i++)
        {
            (double left, double top, double right, double bottom) = boxes[i];
            Assert.True(left >= -1 && top >= -1 && right <= width + 1 && bottom <= Height, texts[i] + " leaves the paper");
            for (int j = 0; j < i; j++)
            {
                bool apart = left >= boxes[j].Right - 1 || boxes[j].Left >= right - 1 || top >= boxes[j].Bottom - 1 || boxes[j].Top >= bottom - 1;
                if (!apart)
                {
                    Assert.Fail(texts[i] + " lies on " + texts[j]);
                }
            }
        }
    }

    /// <summary>Rectangles of a fill and an outline; either may be left open.</summary>
    public IEnumerable<(double X, double Y, double Width, double Height)> Rectangles(string? fill = null, string? stroke = null) => Elements("rect")
        .Where(element => (fill is null || (string?)element.Attribute("fill") == fill) && (stroke is null || (string?)element.Attribute("stroke") == stroke) && element.Attribute("x") is not null)
        .Select(element => (SvgText.Number(element, "x"), SvgText.Number(element, "y"), SvgText.Number(element, "width"), SvgText.Number(element, "height")));

    /// <summary>Points of every path of a stroke.</summary>
    public IEnumerable<(double X, double Y)[]> Paths(string stroke) => Elements("path")
        .Where(element => (string?)element.Attribute("stroke") == stroke)
        .Select(element => Regex.Matches((string)element.Attribute("d")!, @"[ML](-?[\d.]+) (-?[\d.]+)")
            .Select(match => (double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture), double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture)))
            .ToArray());

    /// <summary>The scale of an axis from two of its tick labels: what a place in pixels stands for.</summary>
    public static Func<double, double> Scale(double at1, double value1, double at2, double value2) => pixels => value1 + ((pixels - at1) * (value2 - value1) / (at2 - at1));

    public static Func<double, double> LogScale(double at1, double value1, double at2, double value2) => pixels => value1 * Math.Pow(value2 / value1, (pixels - at1) / (at2 - at1));
}
