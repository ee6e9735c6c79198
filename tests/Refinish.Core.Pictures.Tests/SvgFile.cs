using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;
using System.Xml.Linq;

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
