using System;
using System.Linq;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class WhatHoldsTheJobUp : Problem
{
    public override string Floor => "Scheduling";

    public override string Title => "Which steps hold the job up?";

    public override string Question =>
        "Eight steps, A to H, follow each other as drawn below. How long does the whole take, and how much may B and F slip without anybody noticing?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Heizer and Render, Operations Management, Milwaukee Paper Manufacturing (weeks there): length 15, slack 1 for B and 6 for F, critical A, C, E, G, H.";

    protected override Solution Work(Given given)
    {
        // shown
        TimeSpan b = TimeSpan.FromHours(3);
        TimeSpan e = TimeSpan.FromHours(4);
        TimeSpan f = TimeSpan.FromHours(3);
        // given
        given.Take(ref b, "duration of step B");
        given.Take(ref e, "duration of step E");
        given.Take(ref f, "duration of step F");
        // shown
        (string Name, TimeSpan Duration, string After)[] work =
        [
            ("A", TimeSpan.FromHours(2), ""), ("B", b, ""), ("C", TimeSpan.FromHours(2), "A"), ("D", TimeSpan.FromHours(4), "AB"),
            ("E", e, "C"), ("F", f, "C"), ("G", TimeSpan.FromHours(5), "DE"), ("H", TimeSpan.FromHours(2), "FG"),
        ];
        CriticalPath path = new(
            work.Select(step => new SiteStep { Id = step.Name, Duration = step.Duration }),
            work.SelectMany(step => step.After.Select(before => new StepLag(before.ToString(), step.Name, TimeSpan.Zero, null, "in this order"))));
        TimeSpan slackOfF = path.Steps[5].Slack;
        // end
        return new(path.Workings(),
        [
            new("length", Measure.Hours, path.Length.TotalSeconds, "15"),
            new("slack of B", Measure.Hours, path.Steps[1].Slack.TotalSeconds, "1"),
            new("slack of F", Measure.Hours, slackOfF.TotalSeconds, "6"),
            new("critical steps", Measure.Number, path.Critical.Count, "5"),
        ]);
    }
}
