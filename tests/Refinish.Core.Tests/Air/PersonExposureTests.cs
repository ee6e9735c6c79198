using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class PersonExposureTests
{
    private static readonly Solvent A = Rooms.Solvent("A", 100);
    private static readonly Solvent B = Rooms.Solvent("B", 80);
    private static readonly LimitSet Limits = Rooms.Set(Rooms.Limit("A", 100), Rooms.Limit("B", 50), Rooms.Limit("B", 20, "strict"));

    [Fact]
    [Evidence(Basis.Identity, "a shift of eight hours that begins with the first coat holds the worst eight hours of a room that has cleared: the person's averages and indices are the room's")]
    public void A_stay_over_the_whole_study_is_the_rooms_average()
    {
        AirStudy study = Study(Rooms.Bathroom, Both(0, 30), Both(60, 40));
        PersonExposure person = new("sprayer", [new RoomStay(study, TimeSpan.Zero, TimeSpan.FromHours(8))], Limits);
        Assert.Equal(3, person.Exposure.Count);
        foreach (SubstanceAir air in study.Substances)
        {
            Assert.All(person.Exposure.Where(item => item.Solvent == air.Solvent), item => Numbers.Close(air.EightHourAverage.DecimalFractions, item.Comparison.Value!.Value.Si, 1e-9));
        }

        Numbers.Close(study.StrictestIndex!.Value, person.StrictestLimit.Value!.Value.Si, 1e-9);
        Assert.Equal(study.StrictestLimit.Outcome, person.StrictestLimit.Outcome);
        Numbers.CanBeWritten(person.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "29 CFR 1910.1000(d)(1)(i) by hand in a closed room: 10 g of M 100 in 10 m³ are 244.5 ppm, breathed for 2 h after it has all evaporated: 244.5 · 2/8 = 61.125 ppm")]
    public void The_average_of_a_closed_room_follows_by_hand()
    {
        AirStudy closed = Study(Rooms.Of(10), Rooms.Coat(0, 1, 10, 1, 15, Rooms.Share(A, 100)), Rooms.Fan(0, 1));
        PersonExposure person = new("helper", [new RoomStay(closed, TimeSpan.FromHours(1), TimeSpan.FromHours(3))], Limits);
        Numbers.Close(61.125e-6, Assert.Single(person.Exposure).Comparison.Value!.Value.Si, 1e-9);
        Numbers.Close(0.61125, person.StrictestLimit.Value!.Value.Si, 1e-9);
        Numbers.CanBeWritten(person.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "a dose is an integral: cut a stay anywhere, or list the stays in another order, and nothing changes")]
    public void Splitting_a_stay_changes_nothing()
    {
        AirStudy study = Study(Rooms.Bathroom, Both(10, 30), Both(60, 40));
        double whole = Index([new RoomStay(study, TimeSpan.Zero, TimeSpan.FromHours(3))]);
        Random random = new(5);
        for (int i = 0; i < 20; i++)
        {
            TimeSpan first = TimeSpan.FromMinutes(1 + (80 * random.NextDouble()));
            TimeSpan second = first + TimeSpan.FromMinutes(1 + (80 * random.NextDouble()));
            RoomStay[] parts = [new(study, second, TimeSpan.FromHours(3)), new(study, TimeSpan.Zero, first), new(study, first, second)];
            Numbers.Close(whole, Index(parts), 1e-10);
            Numbers.CanBeWritten(new PersonExposure("helper", parts, Limits).Workings());
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "two rooms one after the other add up, substance by substance")]
    public void Two_rooms_add()
    {
        AirStudy first = Study(Rooms.Bathroom, Both(0, 30));
        AirStudy second = Study(Rooms.Of(20), Rooms.Coat(30, 6, 50, 0.4, 15, Rooms.Share(B, 100)), Rooms.Fan(80, 3));
        RoomStay one = new(first, TimeSpan.Zero, TimeSpan.FromMinutes(30));
        RoomStay two = new(second, TimeSpan.FromMinutes(30), TimeSpan.FromHours(2));
        PersonExposure both = new("sprayer", [one, two], Limits);
        Numbers.Close(Index([one]) + Index([two]), both.StrictestLimit.Value!.Value.Si, 1e-12);
        Numbers.Close(Average([one], "B") + Average([two], "B"), Average([one, two], "B"), 1e-12);
        Numbers.Close(Average([one], "A"), Average([one, two], "A"), 1e-12);
        Numbers.CanBeWritten(both.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "nothing is breathed before the first emission, nor without stays: no substance, indices of 0")]
    public void Nothing_is_breathed_before_the_first_emission()
    {
        AirStudy study = Study(Rooms.Bathroom, Both(30, 40));
        foreach (PersonExposure person in new[] { new PersonExposure("x", [new RoomStay(study, TimeSpan.Zero, TimeSpan.FromMinutes(30))], Limits), new PersonExposure("x", [], Limits) })
        {
            Assert.Empty(person.Exposure);
            Assert.Equal(0, person.StrictestLimit.Value?.Si);
            Assert.Equal(ComparisonOutcome.Within, person.StrictestLimit.Outcome);
            Numbers.CanBeWritten(person.Workings());
        }

        Assert.True(Index([new RoomStay(study, TimeSpan.Zero, TimeSpan.FromMinutes(31))]) > 0);
    }

    [Fact]
    [Evidence(Basis.Identity, "long after the room has cleared a stay adds nothing, and never less than nothing, to what was breathed")]
    public void A_cleared_room_takes_nothing_away()
    {
        AirStudy study = Study(Rooms.Bathroom, Both(0, 40));
        RoomStay early = new(study, TimeSpan.Zero, TimeSpan.FromHours(1));
        for (int hour = 10; hour < 24; hour++)
        {
            RoomStay late = new(study, TimeSpan.FromHours(hour), TimeSpan.FromHours(hour + 0.5));
            Assert.True(Index([late]) >= 0);
            Assert.InRange(Index([early, late]) / Index([early]), 1, 1 + 1e-6);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "a substance without an eight-hour limit cannot be judged, unless the others alone pass 1; short-term limits are left aside")]
    public void A_missing_limit_cannot_be_judged()
    {
        AirStudy study = Study(Rooms.Bathroom, Both(0, 0.5));
        RoomStay stay = new(study, TimeSpan.Zero, TimeSpan.FromHours(8));
        LimitSet one = Rooms.Set(Rooms.Limit("A", 100), Rooms.Limit("B", 50, kind: ExposureLimitKind.Stel15min));
        PersonExposure person = new("sprayer", [stay], one);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, person.StrictestLimit.Outcome);
        Assert.Equal([ComparisonOutcome.Within, ComparisonOutcome.CannotBeJudged], person.Exposure.Select(item => item.Comparison.Outcome));
        Assert.Null(person.Exposure[1].Limit);
        Numbers.CanBeWritten(person.Workings());

        PersonExposure much = new("sprayer", [new RoomStay(Study(Rooms.Bathroom, Both(0, 5000)), TimeSpan.Zero, TimeSpan.FromHours(8))], one);
        Assert.Equal(ComparisonOutcome.Beyond, much.StrictestLimit.Outcome);
        Assert.StartsWith("sprayer: ", much.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "nobody is in two places at once; a day has 24 hours; ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        AirStudy study = Study(Rooms.Bathroom, Both(0, 40));
        AirStudy other = Study(Rooms.Of(20), Both(0, 40));
        RoomStay stay = new(study, TimeSpan.FromHours(1), TimeSpan.FromHours(2));
        Numbers.Refuses("until", () => _ = new RoomStay(study, TimeSpan.FromHours(1), TimeSpan.FromHours(1)));
        Numbers.Refuses("from", () => _ = new RoomStay(study, TimeSpan.FromHours(-1), TimeSpan.FromHours(1)));
        Numbers.Refuses("stays", () => _ = new PersonExposure("x", [stay, new RoomStay(other, TimeSpan.FromMinutes(119), TimeSpan.FromHours(3))], Limits));
        Numbers.Refuses("stays", () => _ = new PersonExposure("x", [stay, new RoomStay(other, TimeSpan.FromHours(24), TimeSpan.FromHours(25.1))], Limits));
        Assert.Throws<ArgumentException>(() => _ = new PersonExposure(" ", [stay], Limits));
        Assert.Equal(2, new PersonExposure("x", [new RoomStay(other, TimeSpan.FromHours(2), TimeSpan.FromHours(3)), stay], Limits).Stays.Count);
    }

    private static SolventEmission Both(double startMinutes, double grams) => Rooms.Coat(startMinutes, 6, grams, 0.4, 15, Rooms.Share(A, 60), Rooms.Share(B, 40));

    private static AirStudy Study(Room room, params Emission[] emissions) => new(room, Rooms.Fan(150, 2), emissions, TimeSpan.FromHours(8), Limits);

    private static AirStudy Study(Room room, Emission emission, Exhaust fan) => new(room, fan, [emission], TimeSpan.FromHours(8), Limits);

    private static double Index(IReadOnlyList<RoomStay> stays) => new PersonExposure("x", stays, Limits).StrictestLimit.Value!.Value.Si;

    private static double Average(IReadOnlyList<RoomStay> stays, string cas) =>
        new PersonExposure("x", stays, Limits).Exposure.Where(item => item.Solvent.CasNumber == cas).Select(item => item.Comparison.Value!.Value.Si).FirstOrDefault();
}
