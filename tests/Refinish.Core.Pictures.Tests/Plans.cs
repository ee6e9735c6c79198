using System;
using System.Linq;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Pictures.Tests;

/// <summary>The invented guesthouse, and what can go wrong with it.</summary>
internal static class Plans
{
    public static BathroomPlan Whole { get; } = Scenario.Guesthouse().Plan();

    /// <summary>Every fixture has a hole, so none may be refinished.</summary>
    public static BathroomPlan Refused { get; } = (Scenario.Guesthouse() with
    {
        Fixtures = [.. Scenario.Guesthouse().Fixtures.Select(fixture => fixture with { Survey = fixture.Survey with { Defects = [new Perforation(Length.FromMillimeters(40))] } })],
    }).Plan();

    /// <summary>A day of half an hour, in which no coat fits.</summary>
    public static BathroomPlan Hurried { get; } = (Scenario.Guesthouse() with { Hours = new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(8.5)) }).Plan();

    /// <summary>A fan too weak for the vapour: the times stand, and so does the objection.</summary>
    public static BathroomPlan Stuffy { get; } = (Scenario.Guesthouse() with
    {
        Site = Scenario.Guesthouse().Site with { Exhaust = new Air.Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(60) } },
    }).Plan();
}
