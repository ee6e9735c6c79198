using System;
using System.Collections.Generic;
using OxyPlot;
using Refinish.Fixtures;

namespace Refinish.Pictures.Drafting;

/// <summary>Views of sinks. Where holes lie is not measured; they are drawn where they usually are.</summary>
internal static class SinkDrafts
{
    public static Blueprint Of(PedestalSink sink, DisplayUnits units)
    {
        PedestalSinkMeasurements tape = sink.Measurements;
        double length = tape.Outline.Length.Meters;
        double width = tape.Outline.Width.Meters;
        double bowl = tape.BowlLength.Meters;
        double across = tape.BowlWidth.Meters;
        double hole = tape.FaucetHoles > 0 ? tape.FaucetHoleDiameter.Meters : 0;

        // The bowl lies to the front as far as a rim of a few centimetres allows; the faucet stands behind it.
        double bowlY = Math.Max(across / 2, width - (across / 2) - Math.Min(0.04, (width - across) / 2));
        View plan = new View("From above, front below", length, width)
            .Body(Outline(tape.Outline))
            .Hollow(Shape.Ellipse(length / 2, bowlY, bowl, across))
            .Measured(Side.Top, 0, length, width / 2, "over all", tape.Outline.Length)
            .Measured(Side.Bottom, (length - bowl) / 2, (length + bowl) / 2, bowlY, "bowl", tape.BowlLength)
            .Measured(Side.Right, 0, width, length / 2, "width over all", tape.Outline.Width)
            .Measured(Side.Left, bowlY - (across / 2), bowlY + (across / 2), length / 2, "bowl width", tape.BowlWidth)
            .Zone(FixtureZoneKind.Rim, length * 0.1, width / 2)
            .Zone(FixtureZoneKind.Bowl, length / 2, bowlY + (across / 4));
        double contact = Math.Min(tape.WallContact.Meters, length);
        if (tape.WallContact.Meters > 0)
        {
            plan.Wall([new((length - contact) / 2, 0), new((length + contact) / 2, 0)])
                .Point((length - contact) / 2, 0, Words.Length("along the wall, taped", tape.WallContact, units), -150);
        }

        Drain(plan, length / 2, bowlY, tape.DrainDiameter, units, 180);
        double behind = (bowlY - (across / 2)) / 2;
        for (int i = 0; i < tape.FaucetHoles && hole > 0; i++)
        {
            plan.Edge(Shape.Ellipse((length / 2) + ((i - ((tape.FaucetHoles - 1) / 2.0)) * Math.Max(0.1, 1.5 * hole)), behind, hole, hole), closed: true);
        }

        if (hole > 0)
        {
            plan.Point(
                (length / 2) + ((tape.FaucetHoles - 1) / 2.0 * Math.Max(0.1, 1.5 * hole)),
                behind,
                Words.Length(tape.FaucetHoles == 1 ? "faucet hole, diameter" : Figures.Fixed(tape.FaucetHoles, 0) + " faucet holes, diameter", tape.FaucetHoleDiameter, units),
                -20);
        }

        double skirt = tape.SkirtHeight.Meters;
        double column = tape.ColumnHeight.Meters;
        double under = Math.Max(skirt, 1.08 * tape.BowlDepth.Meters);
        double top = tape.ColumnTopDiameter.Meters;
        double foot = tape.ColumnBaseDiameter.Meters;
        View front = new View("From the front", length, under + column)
            .Body([new(0, 0), new(length, 0), new(length, skirt), new((length / 2) + (top / 2), under), new((length / 2) - (top / 2), under), new(0, skirt)])
            .Hidden(Shape.Arc(length / 2, 0, bowl / 2, tape.BowlDepth.Meters, 0, 180))
            .Measured(Side.Left, 0, tape.BowlDepth.Meters, length / 2, "bowl depth", tape.BowlDepth)
            .Measured(Side.Right, 0, skirt, length, "outside height", tape.SkirtHeight)
            .Zone(FixtureZoneKind.Outside, length * 0.06, skirt / 2);
        if (column > 0)
        {
            front.Body([new((length - top) / 2, under), new((length + top) / 2, under), new((length + foot) / 2, under + column), new((length - foot) / 2, under + column)])
                .Measured(Side.Right, under, under + column, (length + foot) / 2, "column height", tape.ColumnHeight)
                .Measured(Side.Bottom, (length - foot) / 2, (length + foot) / 2, under + column, "foot", tape.ColumnBaseDiameter)
                .Zone(FixtureZoneKind.Column, length / 2, under + (column / 2));
        }

        front.Point((length + top) / 2, under + (column > 0 ? column * 0.03 : 0), Words.Length("top of the column, diameter", tape.ColumnTopDiameter, units), 20);
        if (column <= 0)
        {
            front.Point((length - top) / 2, under, Words.Length("foot of the column, diameter", tape.ColumnBaseDiameter, units), 160);
        }

        List<string> further = [];
        if (tape.OverflowDiameter.Meters > 0)
        {
            further.Add(Words.Length("overflow in the bowl, diameter", tape.OverflowDiameter, units));
        }

        Corner(plan, tape.Outline, units);
        return new Blueprint([plan, front], further, [Words.PlacesAreUsual]);
    }

    public static Blueprint Of(CounterSink sink, DisplayUnits units)
    {
        CounterSinkMeasurements tape = sink.Measurements;
        double mouth = tape.MouthLength.Meters;
        double across = tape.MouthWidth.Meters;
        double depth = tape.BowlDepth.Meters;
        double wall = tape.WallThickness.Meters;
        PlanOutline? rim = tape.Mounting == SinkMounting.DropIn ? tape.Outline : null;
        double counter = tape.Mounting == SinkMounting.Undermount ? 0.06 : 0;
        double length = rim?.Length.Meters ?? mouth + (2 * (wall + counter));
        double width = rim?.Width.Meters ?? across + (2 * (wall + counter));
        string mounting = tape.Mounting switch { SinkMounting.Vessel => "standing on the counter", SinkMounting.DropIn => "let in from above", _ => "under the counter" };
        View plan = new View("From above, " + mounting, length, width);
        if (rim is not null)
        {
            plan.Body(Outline(rim)).Measured(Side.Top, 0, length, width / 2, "over all", rim.Length).Measured(Side.Right, 0, width, length / 2, "width over all", rim.Width);
            Corner(plan, rim, units);
        }
        else if (wall > 0)
        {
            plan.Body(Shape.Ellipse(length / 2, width / 2, length, width));
        }
        else if (counter > 0)
        {
            plan.Hidden([.. Shape.Rectangle(0, 0, length, width), new(0, 0)]);
        }

        plan.Hollow(Shape.Ellipse(length / 2, width / 2, mouth, across))
            .Measured(Side.Bottom, (length - mouth) / 2, (length + mouth) / 2, width / 2, "mouth", tape.MouthLength)
            .Measured(Side.Left, (width - across) / 2, (width + across) / 2, length / 2, "mouth width", tape.MouthWidth)
            .Zone(FixtureZoneKind.Bowl, length / 2, (width / 2) + (across / 4))
            .Zone(FixtureZoneKind.Rim, (length - mouth) / 4, width / 2);
        Drain(plan, length / 2, width / 2, tape.DrainDiameter, units, 180);

        double left = (length - mouth) / 2;
        double height = depth + wall;
        DataPoint[] Bowl(double half, double deep, double down) => tape.Shape == BowlShape.HalfEllipsoid
            ? Shape.Arc(length / 2, down, half, deep, 0, 180)
            : Cap(length / 2, down, half, deep);
        View section = new View("Cut along the bowl", length, height);
        if (wall > 0)
        {
            section.Body([.. Bowl((mouth / 2) + wall, depth + wall, 0), .. Reversed(Bowl(mouth / 2, depth, 0))])
                .Wall([new(0, height), new(length, height)])
                .Point(left - (wall / 2), 0.03 * depth, Words.Length("wall, thickness", tape.WallThickness, units), -120)
                .Zone(FixtureZoneKind.Outside, length - (wall * 0.5), depth * 0.7);
        }
        else
        {
            section.Edge(Bowl(mouth / 2, depth, 0));
            if (counter > 0)
            {
                section.Hidden([new(0, 0), new(left, 0)]).Hidden([new(left + mouth, 0), new(length, 0)]);
            }
            else
            {
                section.Edge([new(0, 0), new(left, 0)]).Edge([new(left + mouth, 0), new(length, 0)]);
            }
        }

        section.Measured(Side.Right, 0, depth, length / 2, "bowl depth", tape.BowlDepth)
            .Measured(Side.Bottom, (length - tape.BaseDiameter.Meters) / 2, (length + tape.BaseDiameter.Meters) / 2, height, "stands on", tape.BaseDiameter);
        List<string> further = [tape.Shape == BowlShape.HalfEllipsoid ? "bowl: half an ellipsoid" : "bowl: cap of a sphere"];
        if (tape.OverflowDiameter.Meters > 0)
        {
            further.Add(Words.Length("overflow in the bowl, diameter", tape.OverflowDiameter, units));
        }

        return new Blueprint([plan, section], further, [Words.PlacesAreUsual]);
    }

    private static DataPoint[] Outline(PlanOutline outline) => outline.IsEllipse
        ? Shape.Ellipse(outline.Length.Meters / 2, outline.Width.Meters / 2, outline.Length.Meters, outline.Width.Meters)
        : Shape.Rectangle(0, 0, outline.Length.Meters, outline.Width.Meters, outline.CornerRadius.Meters);

    private static void Corner(View plan, PlanOutline outline, DisplayUnits units)
    {
        double radius = outline.CornerRadius.Meters;
        if (!outline.IsEllipse && radius > 0)
        {
            plan.Point(outline.Length.Meters - (0.293 * radius), outline.Width.Meters - (0.293 * radius), Words.Length("corner, radius", outline.CornerRadius, units), 225);
        }
    }

    private static void Drain(View plan, double x, double y, UnitsNet.Length diameter, DisplayUnits units, double direction)
    {
        if (diameter.Meters > 0)
        {
            plan.Edge(Shape.Ellipse(x, y, diameter.Meters, diameter.Meters), closed: true).Point(x, y, Words.Length("drain, diameter", diameter, units), direction);
        }
    }

    // The arc of a circle through both ends of the mouth and the deepest point.
    private static DataPoint[] Cap(double x, double y, double half, double depth)
    {
        double radius = ((half * half) + (depth * depth)) / (2 * depth);
        double angle = Math.Asin(Math.Min(1, half / radius)) * 180 / Math.PI;
        return Shape.Arc(x, y + depth - radius, radius, radius, 90 - angle, 90 + angle);
    }

    private static DataPoint[] Reversed(DataPoint[] points)
    {
        DataPoint[] reversed = (DataPoint[])points.Clone();
        Array.Reverse(reversed);
        return reversed;
    }
}
