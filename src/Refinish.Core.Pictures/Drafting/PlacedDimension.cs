using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures.Drafting;

/// <summary>
/// A dimension line with its place: how many lines out from the view, and from where to where its label runs along the side, in pixels.
/// A numbered one carries a number instead of its label, which stands in the key.
/// </summary>
internal sealed record PlacedDimension(Dimension Dimension, int Level, double From, double To, double LabelFrom, double LabelTo, string Text, bool IsNumbered)
{
    private const double Number = 20;
    private const double Apart = 8;

    /// <summary>
    /// The dimension lines of one side, the shortest nearest to the view, each on the first level on which neither its line nor its
    /// label meets another. A label that does not fit between the ticks stands beyond them, towards the middle, if it is level; if it
    /// would stand upright there, a number does instead.
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
            bool numbered = !inside && dimension.Side is (Side.Left or Side.Right);
            if (numbered)
            {
                label = Number;
                inside = to - from >= label + 6;
            }

            double start = inside ? middle - (label / 2) : middle < side / 2 ? to + Apart : from - Apart - label;
            PlacedDimension found = new(dimension, 0, from, to, start, start + label, text, numbered);
            while (placed.Any(found.Meets))
            {
                found = found with { Level = found.Level + 1 };
            }

            placed.Add(found);
        }

        return placed;
    }

    // Lines that only touch make a chain; labels keep clear of everything.
    private bool Meets(PlacedDimension other)
    {
        return Level == other.Level
            && (Overlap(From, To, other.From, other.To, -0.5) || Overlap(LabelFrom, LabelTo, other.From, other.To, 4)
                || Overlap(From, To, other.LabelFrom, other.LabelTo, 4) || Overlap(LabelFrom, LabelTo, other.LabelFrom, other.LabelTo, Apart));

        static bool Overlap(double a, double b, double c, double d, double apart) => a < d + apart && c < b + apart;
    }
}
