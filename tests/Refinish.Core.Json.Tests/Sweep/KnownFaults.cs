using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Json.Tests;

/// <summary>What the sweep finds and is known. A row that is not found any more fails the sweep: strike it.</summary>
/// <param name="Input">The input, by its name.</param>
/// <param name="Says">Words of the fault.</param>
/// <param name="Finding">The number under which it is listed.</param>
internal sealed record KnownFault(string Input, string Says, string Finding)
{
    public static IReadOnlyList<KnownFault> All { get; } =
    [
        new("noiseLimit.criterionLevel", "a threshold of at most the criterion level", "A1"),
        new("noiseLimit.threshold", "a threshold of at most the criterion level", "A1"),
        new("chip.depth", "value is NaN", "A5"),
        new("wornPatch.depth", "value is NaN", "A5"),
        new("crack.depth", "value is NaN", "A5"),
        new("pitting.depth", "value is NaN", "A5"),
        new("lowSpot.thickness", "value is NaN", "A5"),
        new("hollow.depth", "value is NaN", "A5"),
        new("fillerPolicy.rustGrindingDepth", "value is NaN", "A5"),
        new("cureTimes.potLife", "potLife is", "B2"),
        new("cureTimes.recoatCloses", "maximum is", "B2"),
        new("ownDefect.count", "Duration is", "B2"),
        new("sprayLimits.minimumTemperature", "MinimumTemperature is", "B3"),
        new("sprayLimits.maximumTemperature", "MinimumTemperature is", "B3"),
        new("sprayLimits.minimumRelativeHumidity", "MinimumRelativeHumidity is", "B3"),
        new("drainTrimOption.quantity", "Duration is", "B2"),
        new("labourTask.area", "Time is", "B2"),
        new("labourTask.units", "Time is", "B2"),
        new("labourTask.times", "Time is", "B2"),
        new("labourTask.repeats", "Time is", "B2"),
        new("fillerProduct.maximumLift", "minimum is", "B2"),
        new("operation.dustFree", "Start is", "B4"),
        new("moistAir.dryBulb", "site is", "B5"),
        new("warrantyTerms.costPerClaim", "costPerClaim is", "B8"),
        new("replacementOffer.refinishLifeYears", "LifeYears is", "B9"),
        new("coatingProduct.maximumDryFilm", "maximum is", "B9"),
        new("coatingProduct.volumeSolids", "gun is", "B10"),
        new("sprayGun.fluidRate", "gun is", "B10"),
        new("fixtureJob.share", "SprayTime is", "B10"),
        new("adhesionPromoter.spreadingRate", "amount is", "B10"),
        new("job.start", "Start is", "B12"),
        new("temperatureSegment.temperature", "saturated at its start", "C10"),
        new("loggedClimate.dewPoint", "saturated at its start", "C10"),
    ];

    public static KnownFault? Of(IEnumerable<SweptInput> inputs, string fault) => All.FirstOrDefault(
        row => inputs.Any(input => input.Name == row.Input) && fault.Contains(row.Says, StringComparison.Ordinal));
}
