using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures.Drafting;

/// <summary>A dimension line with its place: how many lines out from the view, and from where to where its label runs along the side, in pixels.</summary>
internal sealed record PlacedDimension(Dimension Dimension, int Level, double From, double To, double LabelFrom, double LabelTo, string Text)
{
    private const double Apart = 8;

    /// <summary>
    /// The dimension lines of one side, the shortest nearest to the view, each on the first level on which neither its line nor its label meets another.
    /// A label that does not fit between the ticks stands beyond them, towards the middle.
    /// </summary>
    public static IReadOnlyList<PlacedDimension> Of(IEnumerable<Dimension> dimensions, double scale, double side, DisplayUnits units)
    {
        List<PlacedDimension> placed = [];
        foreach (Dimension dimension in dimensions.OrderBy(dimension => dimension.Span).ThenBy(dimension => dimension.From))
        {
            string text = (dimension.Words + " " + Measure.Length.Format(dimension.Length, units, 4)).Replace(' ', '\u00A0');
            double label = TextWidths.Of(text, Page.Small);
            double from = dimension.From * scale;
            double to = dimension.To * scale;
            double middle = (from + to) / 2;
            bool inside = to - from >= label + 18;
            double start = inside ? middle - (label / 2) : middle < side / 2 ? to + Apart : from - Apart - label;
            double left = Math.Min(from, start) - Apart;
            double right = Math.Max(to, start + label) + Apart;
            int level = 0;
            while (placed.Any(other => other.Level == level && Math.Min(other.From, other.LabelFrom) < right && Math.Max(other.To, other.LabelTo) > left))
            {
                level++;
            }

            placed.Add(new PlacedDimension(dimension, level, from, to, start, start + label, text));
        }

        return placed;
    }
}
