using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;
using Xunit;

namespace Refinish.Json.Tests;

/// <summary>The inputs of two jobs held against each other. What was changed is known, because the test changed it.</summary>
public class CompareTests
{
    private const string Tub = "$.fixtures[?@.id=='tub']";

    private static readonly Job Bathroom = Examples.Bathroom();

    [Theory]
    [InlineData("bathroom")]
    [InlineData("everything")]
    [InlineData("least")]
    public void A_job_is_the_same_as_itself_read_again(string which)
    {
        Job job = Examples.Named(which);
        Assert.Equal([], JobJson.Compare(job, JobJson.Read(JobJson.Write(job))).Select(change => change.ToString()));
    }

    [Fact]
    public void A_chip_that_is_gone_is_one_change_wherever_it_stood()
    {
        Defect[] defects = [.. Bathroom.Fixtures[0].Survey.Defects];
        Chip other = new(Length.FromMillimeters(30), Length.FromMillimeters(2));
        Job before = With(tub => tub with { Survey = tub.Survey with { Defects = [defects[0], other, .. defects[1..]] } });
        ValueChange gone = Assert.Single(JobJson.Compare(before, With(tub => tub with { Survey = tub.Survey with { Defects = [.. defects.Reverse()] } })));
        Assert.Equal((Tub + ".survey.defects[1]", ChangeKind.Removed), (gone.Path, gone.Kind));
        Assert.Contains("\"chip\"", gone.Before, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chip_that_is_measured_again_is_a_number_that_changed()
    {
        Chip deeper = new(Length.FromMillimeters(18), Length.FromMillimeters(2.5));
        ValueChange depth = Assert.Single(JobJson.Compare(Bathroom,
            With(tub => tub with { Survey = tub.Survey with { Defects = [deeper, .. tub.Survey.Defects.Skip(1)] } })));
        Assert.Equal((Tub + ".survey.defects[0].depth", 1.5, 2.5, "mm", 1.0),
            (depth.Path, depth.NumberBefore, depth.NumberAfter, depth.UnitAfter, depth.Difference!.Value));
        Assert.Equal("fixtures[?@.id=='tub'].survey.defects[0].depth: 1.5 mm became 2.5 mm", depth.ToString());
    }

    [Fact]
    public void A_quantity_is_shown_in_the_units_that_are_asked_for()
    {
        Job after = With(tub => tub with
        {
            Fixture = new RecessedBathtub(((RecessedBathtub)tub.Fixture).Measurements with { DrainDiameter = Length.FromInches(2) }),
        });

        // 51 mm / 25.4 is 2.007874015748 in, and 2 in is 50.8 mm.
        ValueChange us = Assert.Single(JobJson.Compare(Bathroom, after, DisplayUnits.UsCustomary));
        Assert.Equal((Tub + ".fixture.drainDiameter", 2.00787401575, 2.0, "in"), (us.Path, us.NumberBefore, us.NumberAfter, us.UnitBefore));
        ValueChange si = Assert.Single(JobJson.Compare(Bathroom, after));
        Assert.Equal((51.0, 50.8, -0.2), (si.NumberBefore!.Value, si.NumberAfter!.Value, Math.Round(si.Difference!.Value, 9)));
    }

    [Fact]
    public void A_price_is_named_by_item_and_size()
    {
        Job after = Bathroom with { Shop = Bathroom.Shop with { Prices = Bathroom.Shop.Prices with { Materials =
            [.. Bathroom.Shop.Prices.Materials.Select(price => price.Item == "epoxy-primer" && price.Size.In(LineUnit.Millilitre) < 1000
                ? new MaterialPrice(price.Item, price.Size, 49m) : price).Reverse()] } } };
        ValueChange price = Assert.Single(JobJson.Compare(Bathroom, after));
        Assert.Equal("$.shop.prices.materials[?@.item=='epoxy-primer' && @.size.value==750 && @.size.unit=='mL'].price", price.Path);
        Assert.Equal((44.0, 49.0, null), (price.NumberBefore!.Value, price.NumberAfter!.Value, price.UnitAfter));
    }

    [Fact]
    public void What_a_customer_changes_is_told_before_what_the_shop_sets()
    {
        Job after = With(tub => tub with { Options = [tub.Options[1]], NewColour = new CieLab(95, -0.5, 12) }) with
        {
            Start = Bathroom.Start.AddDays(1),
            Shop = Bathroom.Shop with { Guns = 2 },
        };
        IReadOnlyList<ValueChange> changes = JobJson.Compare(Bathroom, after with { Fixtures = [.. after.Fixtures.Where(fixture => fixture.Id != "sink")] });
        Assert.Equal(
            [(Tub + ".newColour.b", ChangeKind.Changed), (Tub + ".options[?@.code=='slip-floor']", ChangeKind.Removed),
                ("$.fixtures[?@.id=='sink']", ChangeKind.Removed), ("$.start", ChangeKind.Changed), ("$.shop.guns", ChangeKind.Changed)],
            changes.Where(change => !change.Path.StartsWith("$.catalogue", StringComparison.Ordinal)).Select(change => (change.Path, change.Kind)));
    }

    [Fact]
    public void Lists_in_another_order_are_the_same()
    {
        Job job = Examples.Everything();
        Job turned = job with
        {
            Fixtures = [.. job.Fixtures.Select(fixture => fixture with
            {
                Options = [.. fixture.Options.Reverse()], Survey = fixture.Survey with { Defects = [.. fixture.Survey.Defects.Reverse()] },
            }).Reverse()],
            Premises = job.Premises with { Rooms = [.. job.Premises.Rooms.Reverse()] },
            Shop = job.Shop with
            {
                Labour = [.. job.Shop.Labour.Reverse()],
                Prices = job.Shop.Prices with { Materials = [.. job.Shop.Prices.Materials.Reverse()], Options = [.. job.Shop.Prices.Options.Reverse()] },
                Limits = job.Shop.Limits with { Exposure = [.. job.Shop.Limits.Exposure.Reverse()] },
            },
        };
        Assert.NotEqual(job, turned);
        Assert.Equal([], JobJson.Compare(job, turned).Select(change => change.Path));
    }

    [Fact]
    public void The_order_of_changes_to_the_operations_is_an_input()
    {
        Job job = Examples.Everything();
        Assert.NotEmpty(JobJson.Compare(job, job with { Changes = [.. job.Changes.Reverse()] }));
    }

    [Fact]
    public void A_product_that_many_places_name_is_told_once()
    {
        CoatingSystem system = Bathroom.Shop.System;
        CoatingProduct topcoat = system.Layers[^1].Product;
        string json = JobJson.Write(Bathroom);
        string named = "\"name\": " + System.Text.Json.JsonSerializer.Serialize(topcoat.Name);
        Job other = JobJson.Read(json.Replace(named, "\"name\": \"another name\"", StringComparison.Ordinal));
        IReadOnlyList<ValueChange> changes = JobJson.Compare(Bathroom, other);
        Assert.Equal(["$.catalogue.products[?@.id=='" + topcoat.Id + "'].name"], changes.Select(change => change.Path));
    }

    [Fact]
    public void Turned_round_every_change_is_the_other_way()
    {
        Job after = With(tub => tub with { Options = [], Survey = tub.Survey with { YearBuilt = null } }) with { Shop = Examples.Everything().Shop };
        IReadOnlyList<ValueChange> there = JobJson.Compare(Bathroom, after);
        IReadOnlyList<ValueChange> back = JobJson.Compare(after, Bathroom);
        Assert.True(there.Count > 20);
        Assert.Equal(there.Select(change => (change.Before, change.After)).OrderBy(pair => pair.ToString(), StringComparer.Ordinal),
            back.Select(change => (change.After, change.Before)).OrderBy(pair => pair.ToString(), StringComparer.Ordinal));
        Assert.Equal(there.Count, there.Select(change => change.Path + change.Kind).Distinct().Count());
    }

    [Fact]
    public void Two_plans_are_compared_with_their_inputs_first()
    {
        JobPlan before = Bathroom.Plan();
        JobPlan after = With(tub => tub with { Options = [tub.Options[1]] }).Plan();
        PlanChanges changes = PlanJson.Compare(before, after, DisplayUnits.Si);
        Assert.Equal(Tub + ".options[?@.code=='slip-floor']", changes.Inputs[0].Path);
        Assert.StartsWith("fixtures[?@.id=='tub'].options[?@.code=='slip-floor']: gone", changes.Sentences(DisplayUnits.Si)[0], StringComparison.Ordinal);
        Assert.Contains(changes.Changes, change => change is { Subject: ChangeSubject.Option, Kind: ChangeKind.Removed });
        Assert.Equal(after.Price!.Total - before.Price!.Total, changes.Changes.Sum(change => change.Price));
    }

    [Fact]
    public void What_cannot_be_compared_is_refused()
    {
        Assert.Throws<ArgumentNullException>(() => JobJson.Compare(null!, Bathroom));
        Assert.Throws<ArgumentOutOfRangeException>(() => JobJson.Compare(Bathroom, Bathroom, (DisplayUnits)9));
        Assert.Throws<ArgumentNullException>(() => PlanJson.Compare(null!, Bathroom.Plan(), DisplayUnits.Si));
    }

    private static Job With(Func<FixtureJob, FixtureJob> change) => Bathroom with { Fixtures = [change(Bathroom.Fixtures[0]), .. Bathroom.Fixtures.Skip(1)] };
}
