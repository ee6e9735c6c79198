using System.Collections.Generic;
using OxyPlot;

namespace Refinish.Pictures.Drafting;

/// <summary>A line in metres and how it is drawn.</summary>
internal sealed record Outline(IReadOnlyList<DataPoint> Points, Stroke Stroke);
