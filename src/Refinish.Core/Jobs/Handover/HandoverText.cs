using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>The handover as a sheet for the customer.</summary>
internal static class HandoverText
{
    public static string Of(Handover handover, DisplayUnits system)
    {
        StringBuilder text = new();
        foreach (FixtureHandover fixture in handover.Fixtures)
        {
            Line(text, fixture.Procedure.Fixture.Name + ": water may run from " + Clock(fixture.WaterFrom) + ", not before; it waits for the last of these:");
            Line(text, "  coating takes water" + (fixture.Surface is { } surface ? ", at " + Measure.Temperature.Format(surface.Kelvins, system, 3) + " on the surface" : ", by the climate of the room") + ": from " + Clock(fixture.CoatingReady));
            Line(text, "  new caulk takes water: from " + Clock(fixture.CaulkReady));
            if (fixture.Procedure.Operations.Any(operation => operation.Kind == WorkKind.FitTrim))
            {
                Line(text, "  drain trim takes water: from " + Clock(fixture.DrainTrimReady));
            }

            Line(text, "  nothing set down on it, no mats and no cleaning agent before " + Clock(fixture.FullCure) + ", when it is fully cured");
        }

        Line(text, "The hour at which water may run is not the hour to come back: that is for the safety data sheets of the coatings to say, and for a physician where somebody has asthma.");
        Line(text, "Keep each room at that temperature or warmer until then: colder, everything takes longer.");
        Section(text, "Care", Handover.CareLimitsIn(system));
        Line(text, "Warranty until " + handover.WarrantyUntil.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        Section(text, "Covered", handover.Covers);
        Section(text, "Not covered, unless the contract says otherwise", handover.Exclusions);
        Section(text, "Kept on record for a later claim", handover.Record);
        foreach (FixtureHandover fixture in handover.Fixtures)
        {
            Line(text, "Inspection of " + fixture.Procedure.Fixture.Name + ": dry film " + Measure.Film.Format(fixture.Film.Minimum.Meters, system, 3) + " to "
                + Measure.Film.Format(fixture.Film.Maximum.Meters, system, 3) + " over what was there before, " + Figures.Fixed(fixture.Spots, 0) + " spots of three readings");
        }

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

    public static string Clock(DateTimeOffset? time) => Shown(time, "ddd yyyy-MM-dd HH:mm");

    public static string Minute(DateTimeOffset? time) => Shown(time, "yyyy-MM-dd HH:mm");

    private static string Shown(DateTimeOffset? time, string form) =>
        time?.ToString(form, CultureInfo.InvariantCulture) ?? "an hour that cannot be said";

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
