using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>Hours of a schedule three ways - worked, on site, by half-days - and which of them the shop pays. Travel is apart.</summary>
public sealed record PaidHours
{
    private static readonly Source Rule = Source.Supplied("the shop's rule of paid time");
    private static readonly Source Sum = Source.Derived("sum over people and visits");

    private readonly ValueList<PersonVisit> visits;
    private readonly PaidTimeRule rule;

    internal PaidHours(IEnumerable<PersonVisit> visits, Shop shop)
    {
        this.visits = new ValueList<PersonVisit>(visits);
        rule = shop.Paid;
        Worked = TimeSpan.FromTicks(this.visits.Sum(visit => visit.Worked.Ticks));
        OnSite = TimeSpan.FromTicks(this.visits.Sum(visit => visit.OnSite.Ticks));
        HalfDays = TimeSpan.FromTicks(this.visits.Sum(visit => visit.HalfDays.Ticks));
    }

    /// <summary>Hours of work and of standing by, over all people.</summary>
    public TimeSpan Worked { get; }

    /// <summary>Hours on site, over all people.</summary>
    public TimeSpan OnSite { get; }

    /// <summary>Hours on site rounded up to half-days for each person and visit.</summary>
    public TimeSpan HalfDays { get; }

    /// <summary>What is paid by the shop's rule.</summary>
    public TimeSpan Paid => By(rule, Worked, OnSite, HalfDays);

    /// <summary>Paid beyond the work itself.</summary>
    public TimeSpan BeyondWork => Paid - Worked;

    /// <summary>The three sums and the one that is paid.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        Num worked = Total(t, "hours worked", "t_w", visit => visit.Worked);
        Num onSite = Total(t, "hours on site", "t_s", visit => visit.OnSite);
        Num halfDays = Total(t, "hours by half-days", "t_h", visit => visit.HalfDays);
        t.Step("paid", "t_p", Measure.Hours, Rule, By(rule, worked, onSite, halfDays));
        return t.Workings("Paid hours");
    }

    /// <summary>The paid hours.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Measure.Hours.Format(Paid.TotalSeconds, DisplayUnits.Si, 4) + " paid, " + Measure.Hours.Format(Worked.TotalSeconds, DisplayUnits.Si, 4) + " worked";

    /// <summary>Which of the three a shop's rule counts.</summary>
    internal static T By<T>(PaidTimeRule rule, T worked, T onSite, T halfDays) =>
        rule switch { PaidTimeRule.Worked => worked, PaidTimeRule.OnSite => onSite, _ => halfDays };

    private Num Total(Trace t, string name, string symbol, Func<PersonVisit, TimeSpan> of) => t.Step(name, symbol, Measure.Hours, Sum,
        Num.Sum(visits.Select((visit, i) => t.Given(symbol + "," + Figures.Fixed(i + 1, 0), of(visit).TotalSeconds, Measure.Hours))));
}
