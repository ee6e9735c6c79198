using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// Times in hours laid side by side, with what lies between them folded to a narrow gap: nights in which nothing happens.
/// </summary>
internal sealed class TimeFold
{
    private readonly (double From, double Until)[] spans;
    private readonly double gap;

    /// <summary>Takes the spans, in order and apart, and the width of the drawing with that of one gap, both in pixels.</summary>
    public TimeFold(IReadOnlyList<(double From, double Until)> spans, double width, double fold)
    {
        this.spans = [.. spans];

        // Many gaps share less than half of the width.
        double gaps = Math.Min((spans.Count - 1) * fold, 0.4 * width);
        gap = spans.Count < 2 ? 0 : spans.Sum(span => span.Until - span.From) * gaps / (width - gaps) / (spans.Count - 1);
    }

    /// <summary>Hours between the labels; nothing where the times do not lie in a calendar.</summary>
    public int? Step { get; init; }

    public IReadOnlyList<(double From, double Until)> Spans => spans;

    /// <summary>The place of the end.</summary>
    public double Last => Start(spans.Length - 1) + spans[spans.Length - 1].Until - spans[spans.Length - 1].From;

    /// <summary>The middles of the gaps.</summary>
    public IEnumerable<double> Gaps => Enumerable.Range(1, spans.Length - 1).Select(i => Start(i) - (gap / 2));

    /// <summary>The place of a time; within a gap, that of the end before it.</summary>
    public double At(double hours)
    {
        int i = Math.Max(0, Array.FindLastIndex(spans, span => span.From <= hours));
        return Start(i) + Math.Max(0, Math.Min(hours, spans[i].Until) - spans[i].From);
    }

    private double Start(int i) => spans.Take(i).Sum(span => span.Until - span.From) + (i * gap);
}
