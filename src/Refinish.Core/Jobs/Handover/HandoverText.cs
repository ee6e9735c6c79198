using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>The handover as a sheet for the customer.</summary>
internal static class HandoverText
{
    public static string Of(Handover handover, DisplayUnits system)
    {
        TextSheet text = new();
        foreach (FixtureHandover fixture in handover.Fixtures)
        {
            text.Line(fixture.Procedure.Fixture.Name + ": water may run from " + TextSheet.Clock(fixture.WaterFrom) + ", not before; it waits for the last of these:");
            text.Line("  coating takes water" + (fixture.Surface is { } surface ? ", at " + Measure.Temperature.Format(surface.Kelvins, system, 3) + " on the surface" : ", by the climate of the room") + ": from " + TextSheet.Clock(fixture.CoatingReady));
            text.Line("  new caulk takes water: from " + TextSheet.Clock(fixture.CaulkReady));
            if (fixture.Procedure.Operations.Any(operation => operation.Kind == WorkKind.FitTrim))
            {
                text.Line("  drain trim takes water: from " + TextSheet.Clock(fixture.DrainTrimReady));
            }

            text.Line("  nothing set down on it, no mats and no cleaning agent before " + TextSheet.Clock(fixture.FullCure) + ", when it is fully cured");
        }

        text.Line("The hour at which water may run is not the hour to come back: that is for the safety data sheets of the coatings to say, and for a physician where somebody has asthma.");
        text.Line("Keep each room at that temperature or warmer until then: colder, everything takes longer.");
        text.Section("Care", [.. Handover.CareLimitsIn(system)]);
        text.Line("Warranty until " + handover.WarrantyUntil.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        text.Section("Covered", handover.Covers);
        text.Section("Not covered, unless the contract says otherwise", handover.Exclusions);
        text.Section("Kept on record for a later claim", handover.Record);
        foreach (FixtureHandover fixture in handover.Fixtures)
        {
            text.Line("Inspection of " + fixture.Procedure.Fixture.Name + ": dry film " + Measure.Film.Format(fixture.Film.Minimum.Meters, system, 3) + " to "
                + Measure.Film.Format(fixture.Film.Maximum.Meters, system, 3) + " over what was there before, " + Figures.Fixed(fixture.Spots, 0) + " spots of three readings");
        }

        foreach (Caution caution in handover.Cautions)
        {
            text.Line("! " + caution);
        }

        return text.ToString();
    }
}
