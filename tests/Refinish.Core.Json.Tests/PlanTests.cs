using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text.Json;
using Refinish.Jobs;
using Refinish.Json.Shapes;
using Xunit;

namespace Refinish.Json.Tests;

public class PlanTests
{
    private static readonly string[] LeftOut =
    [
        "AirStudy.AdditiveIndex", "AirStudy.Emissions", "AirStudy.Exhaust", "AirStudy.Limits", "AirStudy.Room", "AirStudy.Shift", "AirStudy.ShortTermIndex",
        "AirStudy.StrictestIndex", "AirStudy.VapourPressures", "BatchPlan.Induction", "BatchPlan.PotLife", "BatchPlan.Rules", "BatchPlan.Use",
        "JobPlan.Job", "CoatPlan.Layer", "CoatQuantity.Gun", "CoatQuantity.Layer", "CoatQuantity.Residue", "ColourDifference.Cie94Textile",
        "ColourDifference.Cmc11", "ColourDifference.Cmc21", "ColourDifference.Reference", "ColourDifference.Sample", "CureForecast.RateFactor",
        "CureForecast.Shift", "CureForecast.Times", "ExposureComparison.Limit", "ExposureComparison.Solvent", "FillerEstimate.Items",
        "FillerEstimate.NotFilled", "FillerEstimate.Policy", "FixturePlan.Job", "FixturePrice.Cost", "Handover.Film", "IsocyanateScreen.AirborneFraction",
        "IsocyanateScreen.CoatingMass", "IsocyanateScreen.Exhaust", "IsocyanateScreen.IsocyanateFraction", "IsocyanateScreen.Limit",
        "IsocyanateScreen.LimitSource", "IsocyanateScreen.Room", "IsocyanateScreen.SprayTime", "IsocyanateScreen.TransferEfficiency", "JobSchedule.Calendar",
        "JobSchedule.Hours", "JobSchedule.Lags", "JobSchedule.Start", "KitCount.Kit", "KitPurchase.Prices", "LimitComparison.Measure", "PouredMix.Product",
        "PouredMix.Reducer", "Preparation.Policy", "Preparation.Survey", "PriceByFixture.Fixtures", "PriceEstimate.Book", "PriceEstimate.Request",
        "RefinishOrReplace.CostPerDayOutOfUse", "RefinishOrReplace.DiscountRate", "RefinishOrReplace.Refinish", "RefinishOrReplace.Replace",
        "ScheduledStep.Step", "SprayWindow.Air", "SprayWindow.Limits", "SprayWindow.Surface", "SubstanceAir.Solvent", "Verdict.Policy", "Verdict.Survey",
        "WarrantyReserve.ClaimProbability", "WarrantyReserve.CostPerClaim", "WarrantyReserve.DiscountRate", "WarrantyReserve.Lives", "WetFilm.Reducer",
        "WetFilm.VolumeSolids",
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
        Assert.Equal(plan.Schedule!.Steps.Count, results.GetProperty("schedule").GetProperty("steps").GetArrayLength());
        Assert.Equal(plan.Coats.Sum(coat => coat.Cups.Count), results.GetProperty("coats").EnumerateArray().Sum(coat => coat.GetProperty("cups").GetArrayLength()));
        Assert.Equal(plan.Cautions.Select(caution => caution.Sentence), results.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("sentence").GetString()));
        Assert.Equal(plan.Protection.Select(comparison => comparison.Subject), results.GetProperty("protection").EnumerateArray().Select(comparison => comparison.GetProperty("subject").GetString()));
    }

    [Fact]
    public void In_us_customary_units_the_film_is_in_mils_and_the_tub_in_square_feet()
    {
        using JsonDocument document = JsonDocument.Parse(PlanJson.Write(Examples.Bathroom().Plan(), new JsonLayout { Units = DisplayUnits.UsCustomary }));
        JsonElement results = document.RootElement.GetProperty("results");
        Assert.Equal("usCustomary", document.RootElement.GetProperty("units").GetString());
        Assert.Equal("ft²", results.GetProperty("coatedArea").GetProperty("unit").GetString());
        JsonElement film = results.GetProperty("coats")[0].GetProperty("quantity").GetProperty("wetFilm").GetProperty("dryFilm");
        Assert.Equal("mil", film.GetProperty("unit").GetString());

        // 30 µm over 25.4 µm a mil.
        Assert.Equal(30 / 25.4, film.GetProperty("value").GetDouble(), 1e-9);
    }

    [Fact]
    public void A_result_that_someone_changed_is_told_by_its_path_and_not_replaced()
    {
        JobPlan plan = Examples.Bathroom().Plan();
        string json = FaultTests.Put(PlanJson.Write(plan), "$.results.price.total", "1");
        json = FaultTests.Put(json, "$.results.coats[0].name", "\"another coat\"");
        json = FaultTests.Put(json, "$.results.note", "\"paid\"");
        StoredPlan stored = PlanJson.Read(json);
        Assert.False(stored.Agrees);
        Assert.Equal(["$.results.coats[0].name", "$.results.note", "$.results.price.total"], stored.Differences.Select(difference => difference.Path).Order(StringComparer.Ordinal));
        PlanDifference total = stored.Differences.Single(difference => difference.Path == "$.results.price.total");
        Assert.Equal("1", total.Stored);
        Assert.Equal(plan.Price!.Total, JsonSerializer.Deserialize<decimal>(total.Now!));
        Assert.Contains("\"paid\"", stored.Differences.Single(difference => difference.Now is null).ToString(), StringComparison.Ordinal);
        Assert.Equal(plan.Price.Total, stored.Plan.Price!.Total);
    }

    [Fact]
    public void A_job_that_someone_changed_shows_in_what_no_longer_agrees()
    {
        string json = FaultTests.Put(PlanJson.Write(Examples.Bathroom().Plan()), "$.job.prices.labourRate", "27");
        StoredPlan stored = PlanJson.Read(json);
        Assert.Contains(stored.Differences, difference => difference.Path == "$.results.price.total");
        Assert.DoesNotContain(stored.Differences, difference => difference.Path.StartsWith("$.results.air", StringComparison.Ordinal));
    }

    [Fact]
    public void A_list_that_lost_an_entry_is_told()
    {
        string json = PlanJson.Write(Examples.Bathroom().Plan());
        StoredPlan stored = PlanJson.Read(FaultTests.Put(json, "$.results.cautions", "[]"));
        Assert.Equal(Examples.Bathroom().Plan().Cautions.Count, stored.Differences.Count(difference => difference.Path.StartsWith("$.results.cautions[", StringComparison.Ordinal) && difference.Stored is null));
    }

    [Theory]
    [InlineData("$.job.residue.value", "80", "$.job.residue.value", JsonFaultKind.OutOfRange)]
    [InlineData("$.job.version", "9", "$.job.version", JsonFaultKind.UnknownVersion)]
    [InlineData("$.results", "[]", "$.results", JsonFaultKind.WrongType)]
    [InlineData("$.units", "\"metric\"", "$.units", JsonFaultKind.UnknownKind)]
    [InlineData("$.version", "2", "$.version", JsonFaultKind.UnknownVersion)]
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

    /// <summary>What is not among the results stands in the job, or follows from what stands beside it. A result that the library gets anew shows up here.</summary>
    [Fact]
    public void Every_result_of_a_plan_is_written_or_known_to_be_left_out()
    {
        string[] leftOut =
        [
            .. Walk.Shapes(PlanResults.Plan).OfType<IFieldsShape>()
                .Where(shape => shape.Described != typeof(Source) && shape.Described != typeof(Caution))
                .SelectMany(shape => shape.Described.GetProperties(BindingFlags.Public | BindingFlags.Instance)
                    .Where(property => !shape.Fields.Any(field => string.Equals(field.Name, property.Name, StringComparison.OrdinalIgnoreCase)))
                    .Select(property => shape.Described.Name + "." + property.Name))
                .Distinct()
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(LeftOut, leftOut);
    }
}
