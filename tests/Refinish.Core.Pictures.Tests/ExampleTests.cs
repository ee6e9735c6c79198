using System;
using System.IO;
using System.Linq;
using System.Xml.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using UnitsNet;
using Xunit;

namespace Refinish.Pictures.Tests;

/// <summary>The examples of the documentation, line by line, so that they compile and run.</summary>
public class ExampleTests
{
    [Fact]
    public void Every_example_of_the_documentation_stands_in_this_file()
    {
        string[] here = [.. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "ExampleTests.txt")).Select(line => line.Trim())];
        string[] lines = [.. XDocument.Load(Path.Combine(AppContext.BaseDirectory, "Refinish.Core.Pictures.xml")).Descendants("code").SelectMany(code => code.Value.Split('\n')).Select(line => line.Trim()).Where(line => line.Length > 0)];
        Assert.True(lines.Length > 30);
        Assert.All(lines, line => Assert.Contains(line, here));
    }

    [Fact]
    public void Style()
    {
        PictureStyle phone = new() { Width = 360, Units = DisplayUnits.UsCustomary, Theme = PictureTheme.Dark };
        Assert.Equal(PictureTheme.Dark, phone.Theme);
    }

    [Fact]
    public void Price()
    {
        PriceBook book = new() { Currency = Currency.Of("USD"), LabourRate = 30m, TravelPerTrip = 25m, DisposalPerJob = 10m, ConsumablesPerFixture = 35m, TargetMargin = new(Ratio.FromPercent(45)) };
        EstimateRequest job = new() { Labour = new([new LabourTask { Standard = LabourStandards.SetUp, Units = 1 }]), Materials = [],
            Fixtures = 1 };
        string svg = new PricePicture(new PriceEstimate(book, job)).ToSvg();
        Assert.Contains("153.51", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Changes()
    {
        Assert.Contains("the total stays", Svg(Plans.Provisional, Plans.Provisional), StringComparison.Ordinal);

        static string Svg(JobPlan before, JobPlan after) =>
            new ChangesPicture(PlanChanges.Between(before, after).For(LineReader.Customer)).ToSvg();
    }

    [Fact]
    public void Quote()
    {
        PriceBook book = new() { Currency = Currency.Of("USD"), LabourRate = 30m, TravelPerTrip = 25m, DisposalPerJob = 10m, ConsumablesPerFixture = 35m, TargetMargin = new(Ratio.FromPercent(45)) };
        PriceEstimate price = new(book, new EstimateRequest { Labour = new([new LabourTask { Standard = LabourStandards.SetUp, Units = 1 }]),
            Materials = [], Fixtures = 1 });
        string svg = new QuotePicture(new CustomerQuote(price, [new FixtureWeight("tub", "bathtub", 3)], QuoteTerms.None)).ToSvg();
        Assert.Contains("153.51 USD", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Cost()
    {
        PriceBook book = new() { Currency = Currency.Of("USD"), LabourRate = 30m, TravelPerTrip = 25m, DisposalPerJob = 10m, ConsumablesPerFixture = 35m, TargetMargin = new(Ratio.FromPercent(45)) };
        EstimateRequest job = new() { Labour = new([new LabourTask { Standard = LabourStandards.SetUp, Units = 1 }]), Materials = [],
            Fixtures = 1 };
        string svg = new CostPicture(EstimateRange.Of(new PriceEstimate(book, job))).ToSvg();
        Assert.Contains("P90", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Timeline()
    {
        SiteWork work = new()
        {
            Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)),
            Calendar = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), LocalClock.Fixed(TimeSpan.FromHours(1))),
            Steps = [new SiteStep { Id = "prepare", Duration = TimeSpan.FromHours(7), Room = "bathroom" }],
            Lags = [],
        };
        string svg = new TimelinePicture(work.Solve()).ToSvg();
        Assert.Contains("08:00–15:00", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Cure()
    {
        CureTimes times = new()
        {
            ReferenceTemperature = Temperature.FromDegreesCelsius(25), MinimumTemperature = Temperature.FromDegreesCelsius(10), MaximumTemperature = Temperature.FromDegreesCelsius(35),
            PotLife = TimeSpan.FromHours(2), TouchDry = TimeSpan.FromHours(1), RecoatOpens = TimeSpan.FromHours(4), RecoatCloses = TimeSpan.FromHours(24),
            WaterService = TimeSpan.FromHours(24), FullCure = TimeSpan.FromDays(7), Source = Source.Supplied("product data sheet"),
        };
        string svg = new CurePicture(new CureForecast(times, Temperature.FromDegreesCelsius(22)), "topcoat").ToSvg();
        Assert.Contains("recoat window", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Air()
    {
        Room bathroom = new() { Length = Length.FromFeet(8), Width = Length.FromFeet(5), Height = Length.FromFeet(8) };
        SolventEmission coat = new()
        {
            Name = "topcoat", Start = TimeSpan.Zero, SprayTime = TimeSpan.FromMinutes(6), VolatileMass = Mass.FromGrams(164),
            Solvents = [new(Solvents.ButylAcetate, Ratio.FromPercent(100))], FlashFraction = Ratio.FromPercent(40), FilmTimeConstant = TimeSpan.FromMinutes(15),
        };
        AirStudy study = new(bathroom, new Exhaust { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(250) }, [coat], TimeSpan.FromHours(8));
        string svg = new AirPicture(study).ToSvg();
        Assert.Contains("n-butyl acetate", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Film()
    {
        FilmMap map = FilmPictureTests.Map;
        string svg = new FilmPicture(map, "tub, two coats").ToSvg();     // the map of StrokePlan
        Assert.Contains("tub, two coats", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void FilmWhereItLies()
    {
        FilmMap map = FilmPictureTests.Map;
        using MemoryStream file = new();
        new FilmMapDrawing(map, "tub, two coats").WriteSvg(file, DisplayUnits.Si);     // the map of StrokePlan
        Assert.NotEqual(0, file.Length);
    }

    [Fact]
    public void Fixture()
    {
        RecessedBathtubMeasurements tape = new()
        {
            RimLength = Length.FromInches(53), RimWidth = Length.FromInches(23.5), RimCornerRadius = Length.FromInches(6),
            FloorLength = Length.FromInches(44), FloorWidth = Length.FromInches(19.5), FloorCornerRadius = Length.FromInches(5),
            Depth = Length.FromInches(13.25), HeadRun = Length.FromInches(7), FootRun = Length.FromInches(2), CoveRadius = Length.FromInches(2.5),
            OverallLength = Length.FromInches(60), OverallWidth = Length.FromInches(30), ApronHeight = Length.FromInches(14.5),
            DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
        };
        string svg = new FixturePicture(new RecessedBathtub(tape), "bathtub").ToSvg(new PictureStyle { Units = DisplayUnits.UsCustomary });
        Assert.Contains("13.25", svg, StringComparison.Ordinal);
    }
}
