using System;
using System.Linq;
using Refinish.Air;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Pictures.Tests;

/// <summary>The invented jobs of the guesthouse, and what can go wrong with them.</summary>
internal static class Plans
{
    /// <summary>One bathroom, in which nothing stands in the way.</summary>
    public static JobPlan One { get; } = Scenario.OneBathroom().Plan();

    /// <summary>Three rooms with a shower pan that has to be refused, so that the plan is provisional.</summary>
    public static JobPlan Provisional { get; } = Scenario.Guesthouse().Plan();

    /// <summary>The same without that pan: two people in three rooms.</summary>
    public static JobPlan Rooms { get; } =
        (Scenario.Guesthouse() with { Fixtures = [.. Scenario.Guesthouse().Fixtures.Where(fixture => fixture.Id != "shower-2")] }).Plan();

    /// <summary>Every fixture has a hole, so none may be refinished.</summary>
    public static JobPlan Refused { get; } = (Scenario.OneBathroom() with
    {
        Fixtures = [.. Scenario.OneBathroom().Fixtures.Select(fixture =>
            fixture with { Survey = fixture.Survey with { Defects = [new Perforation(Length.FromMillimeters(40))] } })],
    }).Plan();

    /// <summary>A day of half an hour, in which no coat fits.</summary>
    public static JobPlan Hurried { get; } = (Scenario.OneBathroom() with
    {
        Shop = Scenario.OneBathroom().Shop with
        {
            Calendar = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(8.5)),
                LocalClock.Fixed(TimeSpan.FromHours(1))),
        },
    }).Plan();

    /// <summary>A fan too weak for the vapour: the times stand, and so does the objection.</summary>
    public static JobPlan Stuffy { get; } = (Scenario.OneBathroom() with
    {
        Premises = Scenario.OneBathroom().Premises with
        {
            Rooms = [Scenario.OneBathroom().Premises.Rooms[0] with { Exhaust = new Exhaust { LabelFlow =
                VolumeFlow.FromCubicMetersPerHour(600) } }],
        },
    }).Plan();
}
