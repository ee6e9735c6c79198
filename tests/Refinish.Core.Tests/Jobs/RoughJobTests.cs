using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class RoughJobTests
{
    private static readonly RoughFixture Said = RoughFixture.RecessedBathtub(Length.FromInches(60), Length.FromInches(30));
    private static readonly SimulationOptions Trials = new() { Trials = 200, Seed = 7 };
    private static readonly JobUncertainty Sure = new() { Area = null, TransferEfficiency = null, ComesBack = Ratio.Zero };

    [Fact]
    [Evidence(Basis.Contract, "a plan from a telephone call carries the condition that its price rests on assumed readings, with the range and what to take next; a measured one carries none")]
    public void A_rough_plan_says_so()
    {
        JobPlan plan = With(Said).Plan();
        Assert.NotNull(plan.Price);
        PlanCondition condition = Assert.Single(plan.Conditions, one => one.Id == "tub/assumed-readings");
        Assert.Contains("16 of 18 readings are assumed", condition.Sentence(DisplayUnits.Si), StringComparison.Ordinal);
        NextReading next = Assert.Single(plan.NextReadings);
        Assert.Equal("tub", next.Fixture);
        Assert.Equal(Said.AreaRange.Next, next.Reading);
        Assert.Contains("take " + next.Reading.Name + " next", condition.Remedy, StringComparison.Ordinal);
        Assert.Contains("ft²", condition.Sentence(DisplayUnits.UsCustomary), StringComparison.Ordinal);

        JobPlan measured = With(new RecessedBathtub(Tapes.FiveFootTub())).Plan();
        Assert.DoesNotContain(measured.Conditions, one => one.Id.EndsWith("assumed-readings", StringComparison.Ordinal));
        Assert.Empty(measured.NextReadings);
        JobPlan unusual = With(Said.With("Depth", Length.FromInches(24))).Plan();
        Assert.Contains("Depth", Assert.Single(unusual.Conditions, one => one.Id == "tub/unusual-reading").Sentence(DisplayUnits.Si),
            StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "a reading of a zone that is not coated is not worth taking: without the apron its height is none of the next readings")]
    public void Only_coated_zones_count()
    {
        Job inside = With(Said);
        inside = inside with { Fixtures = [inside.Fixtures[0] with { Zones = [FixtureZoneKind.Rim] }] };
        NextReading next = Assert.Single(inside.Plan().NextReadings);
        Assert.Contains(next.Reading.Name, new[] { "RimLength", "RimWidth", "RimCornerRadius" });
        Assert.DoesNotContain(next.Range.Readings, reading => reading.Name == "ApronHeight" && reading.Narrowing.SquareMeters > 0);
    }

    [Fact]
    [Evidence(Basis.Identity, "a fixture of which everything was taken without error is priced as the ordinary one, and no trial moves it; ordinary jobs draw what they drew before")]
    public void A_measured_fixture_is_priced_as_the_ordinary_one()
    {
        RoughFixture taken = Measured();
        Job ordinary = Exact(With(new RecessedBathtub(Tapes.FiveFootTub())));
        JobRange range = JobRange.Of(Exact(With(taken)), Sure, Trials);
        Assert.Equal(ordinary.Plan().Price!.Total, range.Plan.Price!.Total);
        Assert.Equal((double)ordinary.Plan().Price!.Total!.Value, range.Total!.P10, 6);
        Assert.Equal(range.Total.P10, range.Total.P90, 6);
        Assert.Empty(range.Drivers);
        Assert.Null(range.NextReading);
    }

    [Fact]
    [Evidence(Basis.Identity, "every trial of a rough job has a price; taking readings one by one makes the price at margin surer until nothing is left, and the trials name readings that stand behind it")]
    public void Measuring_makes_the_price_surer()
    {
        Job rough = Exact(With(Said));
        JobRange said = JobRange.Of(rough, Sure, Trials);
        Assert.Equal(0, said.WithoutPrice);
        double before = Width(said);
        Assert.True(before > 0);
        PriceDriver next = said.NextReading!;
        Assert.Equal("tub", next.Fixture);
        Assert.True(next.IsTold);
        Assert.Equal(next.Reading + " of tub", next.Input);
        Assert.InRange(said.Drivers.Sum(driver => driver.ShareOfVariance.DecimalFractions), 0.5, 1.3);
        Assert.InRange(next.Narrowing, 0, before);

        // The area says the same as the price where nothing else is in doubt: what the trials name is among what narrows the area most.
        Assert.Contains(next.Reading, Said.AreaRange.Readings.Take(3).Select(reading => reading.Name));
        RoughFixture half = Said;
        foreach (string name in Said.AreaRange.Readings.Take(6).Select(reading => reading.Name))
        {
            half = half.With(Measured().Taken.Single(reading => reading.Name == name));
        }

        double between = Width(JobRange.Of(Exact(With(half)), Sure, Trials));
        Assert.True(between < before, between + " beside " + before);
        Assert.True(Width(JobRange.Of(Exact(With(Measured())), Sure, Trials)) < 1e-6);

        static double Width(JobRange range) => range.AtMargin!.P90 - range.AtMargin.P10;
    }

    [Fact]
    [Evidence(Basis.Contract, "a minimum charge above every price hides the width of the total and not that of the price at margin, nor what stands behind it")]
    public void A_minimum_charge_hides_nothing()
    {
        Job job = Exact(With(Said));
        job = job with { Shop = job.Shop with { Prices = job.Shop.Prices with { MinimumCharge = 9000m } } };
        JobRange range = JobRange.Of(job, Sure, Trials);
        Assert.Equal(range.Total!.P10, range.Total.P90, 6);
        Assert.True(range.AtMargin!.P90 > range.AtMargin.P10);
        Assert.NotEmpty(range.Drivers);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: a price of 3 x + 4 y over independent x and y of one spread has 9/25 of its variance from x and 16/25 from y; without x its spread is 4/5 of what it was")]
    public void Shares_of_variance_by_hand()
    {
        JobTrial trial = new(With(Said), new JobUncertainty());
        double[] x = [.. Enumerable.Range(0, 400).Select(i => (double)(i % 20))];
        double[] y = [.. Enumerable.Range(0, 400).Select(i => (double)(i / 20))];
        double[] none = new double[400];
        double[] prices = [.. x.Zip(y, (a, b) => 500 + (3 * a) + (4 * b))];
        int depth = Enumerable.Range(0, trial.Inputs.Count).Single(i => trial.Inputs[i].Name == "Depth of tub");
        IReadOnlyList<PriceDriver> drivers = PriceDriver.Of(trial, prices, input => input == 0 ? x : input == depth ? y : none);
        Assert.Equal(2, drivers.Count);
        Assert.Equal("Depth", drivers[0].Reading);
        Numbers.Close(0.64, drivers[0].ShareOfVariance.DecimalFractions);
        Numbers.Close(0.8, drivers[0].Effect);
        Numbers.Close(0.36, drivers[1].ShareOfVariance.DecimalFractions);
        Assert.Null(drivers[1].Reading);
        double[] sorted = [.. prices.OrderBy(price => price)];
        double spread = At(0.9) - At(0.1);
        Numbers.Close(spread * 0.2, drivers[1].Narrowing);
        Numbers.Close(spread * 0.4, drivers[0].Narrowing);
        Assert.Empty(PriceDriver.Of(trial, none, _ => x));

        double At(double chance) => sorted[(int)(chance * 399)] + (((chance * 399) - (int)(chance * 399)) * (sorted[(int)(chance * 399)
            + 1] - sorted[(int)(chance * 399)]));
    }

    [Fact]
    [Evidence(Basis.Contract, "what is taken off before work is told by the shape behind a rough fixture")]
    public void Clearing_knows_the_shape_behind_it()
    {
        JobPlan plan = With(Said).Plan();
        Assert.Contains(plan.Operations, operation => operation.Instruction.Contains("overflow plate", StringComparison.Ordinal));
    }

    private static Job With(IFixture fixture)
    {
        Job house = InventedJobs.OccupiedHouse();
        return house with { Replacement = null, Fixtures = [house.Fixtures[0] with { Fixture = fixture, Options = [],
            Survey = new Survey { Material = FixtureMaterial.EnamelledSteel, Defects = [], YearBuilt = 1995 } }] };
    }

    // Hours that are sure, so that only readings are in doubt.
    private static Job Exact(Job job) => job with
    {
        Shop = job.Shop with
        {
            Labour = [.. job.Shop.Labour.Select(standard => standard with
            {
                Fixed = ThreePoint.Exactly(standard.Fixed.Mean),
                PerSquareMeter = ThreePoint.Exactly(standard.PerSquareMeter.Mean),
                PerUnit = ThreePoint.Exactly(standard.PerUnit.Mean),
            })],
        },
    };

    private static RoughFixture Measured()
    {
        RecessedBathtubMeasurements tape = Tapes.FiveFootTub();
        return RoughFixture.Of(Said.Kind, Said.Kind.Readings.Select(name =>
            typeof(RecessedBathtubMeasurements).GetProperty(name)!.GetValue(tape) is Length length
            ? new TakenReading(name, length, Length.Zero)
            : new TakenReading(name, 1.0)));
    }
}
