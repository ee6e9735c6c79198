using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Json.Shapes;
using UnitsNet;
using Xunit;

namespace Refinish.Json.Tests;

public class PlanTests
{
    private static readonly string[] LeftOut =
    [
        "AirStudy.Emissions", "AirStudy.Exhaust", "AirStudy.Limits", "AirStudy.Merged", "AirStudy.Room",
        "AirStudy.ShortTermIndex", "AirStudy.StrictestIndex", "AirStudy.VapourPressures", "AreaRange.Next", "AreaRange.Readings", "CoatDemand.Gun", "CoatDemand.Layer",
        "CoatDemand.Losses", "CoatDemand.TotalOfAllCoats", "CoatRun.Air", "CoatRun.Layer", "ColourDifference.Cie94Textile", "ColourDifference.Cmc11",
        "ColourDifference.Cmc21", "ColourDifference.Reference", "ColourDifference.Sample", "ColourJudgement.Plan", "CrewSchedule.Days",
        "CrewSchedule.Found", "CrewSchedule.Objections", "CrewSchedule.Operations", "CrewSchedule.Runs", "CrewSchedule.Site",
        "CrewSchedule.Work", "CrewTurn.Piece", "CrewTurn.Step", "CupPlan.InCup", "CupPlan.Induction", "CupPlan.PotLife",
        "CupPlan.Rules", "CupPlan.Use", "CureForecast.RateFactor", "CureForecast.Shift", "CureForecast.Times", "CustomerQuote.Handover",
        "CustomerQuote.Items", "CustomerQuote.Name", "CustomerQuote.Premises", "CustomerQuote.Shop", "CustomerQuote.Terms", "CustomerQuote.VisitDays", "CustomerQuote.Warranty", "Doubt.Measure",
        "EstimateLine.Currency", "EstimateLine.IsTaxable",
        "ExposureComparison.Limit", "ExposureComparison.Solvent", "FillerEstimate.Cautions", "FillerEstimate.Items", "FillerEstimate.NotFilled",
        "FillerEstimate.Policy", "FixtureHandover.Film", "FixtureHandover.Procedure", "FixtureHandover.SlipCriteria", "FixtureInstruction.Fixture",
        "HidingCoat.Colour", "HidingCoat.LightnessDifference", "HidingCoat.Ratio", "HidingCoat.Reflectance",
        "IsocyanateScreen.AirborneFraction", "IsocyanateScreen.Checks", "IsocyanateScreen.CoatingMass", "IsocyanateScreen.Exhaust",
        "IsocyanateScreen.IsocyanateFraction", "IsocyanateScreen.Limit", "IsocyanateScreen.LimitSource", "IsocyanateScreen.Room",
        "IsocyanateScreen.SprayTime", "IsocyanateScreen.TransferEfficiency", "IsocyanateScreen.Whose", "JobPlan.Costs", "JobPlan.Job", "JobPlan.Planned",
        "JobPlan.Provenance", "JobPlan.Voc", "JobPlan.Work", "KitPurchase.Item", "KitPurchase.Prices", "KitPurchase.Unused", "LabourTask.Fixture",
        "LabourTask.Id", "LabourTask.Learning", "LabourTask.Repeats", "LabourTask.Room", "LabourTask.Wage", "LabourTask.Worker",
        "LimitComparison.Digits", "LimitComparison.GoodToFactor", "LimitComparison.Measure", "LimitComparison.OfLimit", "NoiseDose.Limit", "NoiseDose.Person", "NoiseDose.Spans", "OpenReading.Greatest", "OpenReading.Least",
        "OpenReading.Likely", "OpenReading.Measure", "PersonExposure.Limits",
        "PersonExposure.Person", "PersonExposure.Stays", "PlannedCaution.Caution", "PlannedCoat.Layer", "PouredMix.Product", "PouredMix.Reducer",
        "PriceEstimate.Book", "PriceEstimate.Request", "Procedure.Cautions",
        "Procedure.Conditions", "Procedure.Defects", "Procedure.Fixture", "Procedure.Gun", "Procedure.LabourGaps", "Procedure.Losses",
        "Procedure.Operations", "Procedure.Shop", "PurchaseLine.Price", "QuoteItem.Label", "QuotePayment.Stage",
        "RefinishOrReplace.CostPerDayOutOfUse", "RefinishOrReplace.DiscountRate", "RefinishOrReplace.Refinish",
        "RefinishOrReplace.Replace", "RespiratorCheck.Exposure", "RespiratorCheck.HazardRatio",
        "RoomAirPlan.Hardest", "RoomAirPlan.Room", "RoomAirPlan.Schedule", "ScheduledOperation.Operation", "ScheduledRun.Operation", "ScheduledRun.Run",
        "SlipResistantFloor.Cautions", "SlipResistantFloor.Loss", "SlipResistantFloor.Rate", "SprayWindow.Air", "SprayWindow.Limits", "StepLag.Clock",
        "StockDraw.Product", "StockUse.Kit", "SubstanceAir.Solvent", "TaxAmount.Exemption", "TimeInterval.Length",
        "Verdict.Cautions", "Verdict.Policy", "Verdict.Survey", "VerdictReason.Concerns",
        "WarrantyReserve.ClaimProbability", "WarrantyReserve.CostPerClaim", "WarrantyReserve.Currency", "WarrantyReserve.DiscountRate", "WarrantyReserve.Lives",
        "WetFilm.Reducer", "WetFilm.VolumeSolids",
    ];

    [Theory]
    [InlineData("bathroom", DisplayUnits.Si)]
    [InlineData("bathroom", DisplayUnits.UsCustomary)]
    [InlineData("everything", DisplayUnits.Si)]
    [InlineData("least", DisplayUnits.Si)]
    public void A_plan_that_is_read_again_agrees_with_what_is_stored(string which, DisplayUnits units)
    {
        JobPlan plan = Examples.Named(which).Plan();
        StoredPlan stored = PlanJson.Read(PlanJson.Write(plan, new JsonLayout { Units = units }));
        Assert.Equal(plan.Job, stored.Plan.Job);
        Assert.Empty(stored.Differences);
        Assert.True(stored.Agrees);
        Assert.Equal(typeof(JobPlan).Assembly.GetName().Version!.ToString(3), stored.Library);
    }

    [Fact]
    public void The_results_are_those_of_the_plan_with_their_units()
    {
        JobPlan plan = Examples.Bathroom().Plan();
        using JsonDocument document = JsonDocument.Parse(PlanJson.Write(plan));
        JsonElement results = document.RootElement.GetProperty("results");
        Assert.Equal(plan.CoatedArea.SquareMeters, results.GetProperty("coatedArea").GetProperty("value").GetDouble(), 1e-9);
        Assert.Equal("m²", results.GetProperty("coatedArea").GetProperty("unit").GetString());
        Assert.Equal(plan.Price!.Total, results.GetProperty("price").GetProperty("total").GetDecimal());
        Assert.Equal(plan.Handover!.WaterFrom, results.GetProperty("handover").GetProperty("waterFrom").GetDateTimeOffset());
        JsonElement[] operations = [.. results.GetProperty("operations").EnumerateArray()];
        Assert.Equal(plan.Operations.Select(operation => operation.Id), operations.Select(Id));
        Assert.Equal(
            plan.Operations.Select(operation => plan.Schedule!.TryFind(operation.Id)!.Start),
            operations.Select(operation => operation.GetProperty("scheduled").GetProperty("start").GetDateTimeOffset()));
        Assert.Equal(
            plan.Runs.Sum(run => run.Mixes.Count),
            results.GetProperty("runs").EnumerateArray().Sum(run => run.GetProperty("scheduled").GetProperty("mixes").GetArrayLength()));
        Assert.Equal(plan.Protection.Select(need => need.About),
            results.GetProperty("protection").EnumerateArray().Select(need => need.GetProperty("about").GetString()));
        Assert.Equal(plan.Schedule!.Paid.Paid.TotalHours,
            results.GetProperty("schedule").GetProperty("paid").GetProperty("paid").GetProperty("value").GetDouble(), 1e-9);
        Assert.Equal(plan.Price.Lines.Select(line => line.Id),
            results.GetProperty("price").GetProperty("lines").EnumerateArray().Select(Id));
        Assert.Equal(plan.Quote!.Fixtures.Select(fixture => fixture.Id),
            results.GetProperty("quote").GetProperty("fixtures").EnumerateArray().Select(Id));

        static string? Id(JsonElement item) => item.GetProperty("id").GetString();
    }

    [Fact]
    public void Doubts_stand_among_the_results_with_their_numbers()
    {
        Job job = Examples.Bathroom();
        FixtureJob panel = job.Fixtures[0] with
        {
            Fixture = new FlatPanel(new FlatPanelMeasurements
            {
                Length = Length.FromInches(96), Width = Length.FromInches(52.5), ExposedEdge = Length.FromInches(96), EdgeHeight = Length.FromInches(1.5),
                BacksplashLength = Length.Zero, BacksplashHeight = Length.Zero, BacksplashThickness = Length.Zero, CutOuts = [],
            }),
        };
        JobPlan plan = (job with { Fixtures = [panel] }).Plan();
        JsonNode results = JsonNode.Parse(PlanJson.Write(plan, new JsonLayout { Units = DisplayUnits.UsCustomary }))!["results"]!;
        JsonNode doubt = results["doubts"]!.AsArray().Single(one => (string)one!["id"]! == panel.Id + "/reading/Width")!;
        Assert.Equal(52.5, (double)doubt["value"]!["value"]!, 1e-9);
        Assert.Equal("in", (string)doubt["value"]!["unit"]!);
        Assert.Equal(31, (double)doubt["greatest"]!["value"]!, 1e-9);
        Assert.Equal(["centimetresAsInches", "digitsSwapped"], doubt["slips"]!.AsArray().Select(slip => (string)slip!["slip"]!));
        Assert.Equal(25.5, (double)doubt["slips"]![1]!["meant"]!["value"]!, 1e-9);
        Assert.StartsWith("width is 52.5 in; usual is 12 in to 31 in", (string)doubt["sentence"]!, StringComparison.Ordinal);
        Assert.Contains(results["conditions"]!.AsArray(), condition => (string)condition!["id"]! == panel.Id + "/measure-again");
    }

    /// <summary>Cautions stand in full once; everywhere else their codes do, and each code leads to one that is there.</summary>
    [Theory]
    [InlineData("bathroom")]
    [InlineData("everything")]
    [InlineData("least")]
    public void Every_caution_that_is_named_by_code_stands_among_the_cautions(string which)
    {
        JobPlan plan = Examples.Named(which).Plan();
        JsonNode results = JsonNode.Parse(PlanJson.Write(plan))!["results"]!;
        JsonArray full = results["cautions"]!.AsArray();
        HashSet<string> codes = [.. full.Select(caution => (string)caution!["code"]!)];
        Assert.Equal(plan.Cautions.Select(planned => planned.Caution.Code), full.Select(caution => (string)caution!["code"]!));
        Assert.All(full, caution => Assert.NotEmpty((string)caution!["sentence"]!));
        string[] named = [.. Named(results)];
        Assert.Equal(plan.Operations.Count > 0, named.Length > 0);
        Assert.Subset(codes, named.ToHashSet());

        static IEnumerable<string> Named(JsonNode? node) => node switch
        {
            JsonObject owner => owner.SelectMany(field => field.Key == "cautions" && field.Value is JsonArray list
                && list.Any(item => item is JsonValue)
                ? list.Select(item => (string)item!)
                : Named(field.Value)),
            JsonArray list => list.SelectMany(Named),
            _ => [],
        };
    }

    [Fact]
    public void In_us_customary_units_the_film_is_in_mils_and_the_tub_in_square_feet()
    {
        using JsonDocument document = JsonDocument.Parse(PlanJson.Write(Examples.Bathroom().Plan(),
            new JsonLayout { Units = DisplayUnits.UsCustomary }));
        JsonElement results = document.RootElement.GetProperty("results");
        Assert.Equal("usCustomary", document.RootElement.GetProperty("units").GetString());
        Assert.Equal("ft²", results.GetProperty("coatedArea").GetProperty("unit").GetString());
        JsonElement film = results.GetProperty("runs")[0].GetProperty("demand").GetProperty("wetFilm").GetProperty("dryFilm");
        Assert.Equal("mil", film.GetProperty("unit").GetString());

        // 30 µm over 25.4 µm a mil.
        Assert.Equal(30 / 25.4, film.GetProperty("value").GetDouble(), 1e-9);
    }

    [Fact]
    public void A_result_that_someone_changed_is_told_by_its_path_and_not_replaced()
    {
        JobPlan plan = Examples.Bathroom().Plan();
        string json = FaultTests.Put(PlanJson.Write(plan), "$.results.price.total", "1");
        json = FaultTests.Put(json, "$.results.runs[1].duration.value", "1");
        json = FaultTests.Put(json, "$.results.waits[0].reason", "\"because\"");
        json = FaultTests.Put(json, "$.results.note", "\"paid\"");
        StoredPlan stored = PlanJson.Read(json);
        Assert.False(stored.Agrees);
        Assert.Equal(
            ["$.results.note", "$.results.price.total", "$.results.runs[?@.id=='" + plan.Work!.Runs[1].Id + "'].duration",
                "$.results.waits[?@.before=='" + plan.Work.Lags[0].Before + "' && @.after=='" + plan.Work.Lags[0].After + "'].reason"],
            stored.Differences.Select(difference => difference.Path).Order(StringComparer.Ordinal));
        ValueChange total = stored.Differences.Single(difference => difference.Path == "$.results.price.total");
        Assert.Equal(total, stored.Differences[0]);
        Assert.Equal("1", total.Before);
        Assert.Equal(plan.Price!.Total, JsonSerializer.Deserialize<decimal>(total.After!));
        Assert.Contains("\"paid\"", stored.Differences.Single(difference => difference.After is null).ToString(), StringComparison.Ordinal);
        Assert.Equal(plan.Price.Total, stored.Plan.Price!.Total);
    }

    [Fact]
    public void A_job_that_someone_changed_shows_in_what_no_longer_agrees()
    {
        string json = FaultTests.Put(PlanJson.Write(Examples.Bathroom().Plan()), "$.job.shop.prices.labourRate", "27");
        StoredPlan stored = PlanJson.Read(json);
        Assert.Contains(stored.Differences, difference => difference.Path == "$.results.price.total");
        Assert.DoesNotContain(stored.Differences, difference => difference.Path.StartsWith("$.results.air", StringComparison.Ordinal));
    }

    [Fact]
    public void A_list_that_lost_its_entries_is_told_by_their_codes()
    {
        string json = PlanJson.Write(Examples.Bathroom().Plan());
        int all = JsonNode.Parse(json)!["results"]!["cautions"]!.AsArray().Count;
        StoredPlan stored = PlanJson.Read(FaultTests.Put(json, "$.results.cautions", "[]"));
        Assert.Equal(all, stored.Differences.Count);
        Assert.All(stored.Differences,
            difference => Assert.StartsWith("$.results.cautions[?@.code=='", difference.Path, StringComparison.Ordinal));
        Assert.All(stored.Differences, difference => Assert.Null(difference.Before));
    }

    /// <summary>
    /// What stands first or last makes no difference where entries have identifiers: one that is missing is the one that is told.
    /// </summary>
    [Fact]
    public void Entries_are_held_against_the_entry_of_their_identifier()
    {
        JsonNode root = JsonNode.Parse(PlanJson.Write(Examples.Bathroom().Plan()))!;
        JsonArray operations = root["results"]!["operations"]!.AsArray();
        string first = (string)operations[0]!["id"]!;
        operations.RemoveAt(0);
        JsonNode second = operations[0]!;
        operations.RemoveAt(0);
        operations.Add(second);
        JsonNode extra = second.DeepClone();
        extra["id"] = "bath-3/it's new";
        operations.Add(extra);
        ValueChange[] differences = [.. PlanJson.Read(root.ToJsonString()).Differences];
        Assert.Equal(["$.results.operations[?@.id=='" + first + "']", "$.results.operations[?@.id=='bath-3/it\\'s new']"],
            differences.Select(difference => difference.Path));
        Assert.Null(differences[0].Before);
        Assert.Null(differences[1].After);
    }

    [Theory]
    [InlineData("$.job.shop.losses.residue.value", "80", "$.job.shop.losses.residue.value", JsonFaultKind.OutOfRange)]
    [InlineData("$.job.version", "9", "$.job.version", JsonFaultKind.UnknownVersion)]
    [InlineData("$.results", "[]", "$.results", JsonFaultKind.WrongType)]
    [InlineData("$.units", "\"metric\"", "$.units", JsonFaultKind.UnknownKind)]
    [InlineData("$.version", "1", "$.version", JsonFaultKind.UnknownVersion)]
    public void What_is_wrong_with_a_plan_is_told_by_its_path(string at, string put, string path, JsonFaultKind kind)
    {
        string json = FaultTests.Put(PlanJson.Write(Examples.Bathroom().Plan()), at, put);
        Assert.False(PlanJson.TryRead(json, out StoredPlan? plan, out IReadOnlyList<JsonFault> faults));
        Assert.Null(plan);
        Assert.Equal((path, kind), (Assert.Single(faults).Path, faults[0].Kind));
        Assert.Equal(path, Assert.Throws<RefinishJsonException>(() => PlanJson.Read(json)).Path);
    }

    [Fact]
    public void Text_streams_and_bytes_say_the_same()
    {
        JobPlan plan = Examples.Bathroom().Plan();
        using MemoryStream stream = new();
        PlanJson.Write(stream, plan);
        stream.Position = 0;
        Assert.True(PlanJson.Read(stream).Agrees);
        Assert.True(PlanJson.Read(stream.ToArray().AsMemory()).Agrees);
        Assert.Equal(PlanJson.Write(plan), System.Text.Encoding.UTF8.GetString(stream.ToArray()));
    }

    /// <summary>
    /// What is not among the results stands in the job, or follows from what stands beside it. A result that the library gets anew shows up
    /// here.
    /// </summary>
    [Fact]
    public void Every_result_of_a_plan_is_written_or_known_to_be_left_out()
    {
        string[] leftOut =
        [
            .. Walk.Shapes(PlanResults.Plan).OfType<IFieldsShape>()
                .Where(shape => shape.Described != typeof(Source) && shape.Described != typeof(Caution))
                .SelectMany(shape => shape.Described.GetProperties(BindingFlags.Public | BindingFlags.Instance)
                    .Where(property => !shape.Fields.Any(field => string.Equals(field.Name, property.Name,
                        StringComparison.OrdinalIgnoreCase)))
                    .Select(property => shape.Described.Name + "." + property.Name))
                .Distinct()
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(LeftOut, leftOut);
    }
}
