using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;

namespace Refinish.Jobs;

/// <summary>The hand-over as a sheet for the customer.</summary>
internal static class HandoverText
{
    public static string Of(Handover handover, DisplayUnits system)
    {
        StringBuilder text = new();
        Line(text, "No water before " + Clock(handover.WaterFrom) + ", whichever of these is last:");
        Line(text, "  coating, at " + Measure.Temperature.Format(handover.HeldAt.Kelvins, system, 3) + " on the surface: " + Clock(handover.CoatingReady));
        Line(text, "  new caulk: " + Clock(handover.CaulkReady));
        Line(text, "  drain trim: " + Clock(handover.DrainTrimReady));
        Line(text, "Keep the room at that temperature or warmer until then: colder, everything takes longer.");
        Line(text, "Nothing set down on it, no mats and no cleaning agent before " + Clock(handover.FullCure) + ", when it is fully cured.");
        Section(text, "Care", Handover.CareLimitsIn(system));
        Line(text, "Warranty until " + handover.WarrantyUntil.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        Section(text, "Covered", handover.Covers);
        Section(text, "Not covered, unless the contract says otherwise", handover.Exclusions);
        Section(text, "Kept on record for a later claim", handover.Record);
        Line(text, "Inspection: dry film " + Measure.Film.Format(handover.Film.Minimum.Meters, system, 3) + " to " + Measure.Film.Format(handover.Film.Maximum.Meters, system, 3)
            + " over what was there before, " + Figures.Fixed(handover.Spots, 0) + " spots of three readings");
        foreach (Caution caution in handover.Cautions)
        {
            Line(text, "! " + caution);
        }

        return text.ToString();
    }

    private static void Section(StringBuilder text, string title, IEnumerable<string> lines)
    {
        Line(text, title + ":");
        foreach (string line in lines)
        {
            Line(text, "  " + line);
        }
    }

    private static string Clock(DateTimeOffset time) => time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
