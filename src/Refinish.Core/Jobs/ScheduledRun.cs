using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Climate;
using Refinish.Coverage;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// A run of coating at its hour: what is left over from the run before and still good, what is mixed in which cup, and the spray window
/// then.
/// </summary>
public sealed class ScheduledRun
{
    private static readonly Source Carried = Source.Derived("what the run before delivered beyond its need, within the share of its pot life that is used");

    private readonly double carried;

    internal ScheduledRun(CoatRun run, ScheduledOperation operation, ScheduledRun? before, double carried, CupPlan cups, SprayWindow window)
    {
        Run = run;
        Operation = operation;
        Before = before;
        this.carried = carried;
        Cups = cups;
        Window = window;
    }

    /// <summary>The run.</summary>
    public CoatRun Run { get; }

    /// <summary>Its operation with times and people.</summary>
    public ScheduledOperation Operation { get; }

    /// <summary>The run whose leftover is used; <see langword="null"/> when there is none.</summary>
    public ScheduledRun? Before { get; }

    /// <summary>Mixed coating left over from the run before and used in this one.</summary>
    public Volume FromBefore => Volume.FromCubicMeters(carried);

    /// <summary>The cups that are mixed for this run.</summary>
    public CupPlan Cups { get; }

    /// <summary>Mixing cards, batch by batch.</summary>
    public IReadOnlyList<PouredMix> Mixes => field ??= Run.MixesOf(Cups);

    /// <summary>Air and surface at its start against the product's limits.</summary>
    public SprayWindow Window { get; }

    /// <summary>From opening the cans.</summary>
    public DateTimeOffset Start => Operation.Start;

    /// <summary>First stroke: stand-in time and mixing come before it.</summary>
    public DateTimeOffset SprayingFrom => Operation.End - Run.SprayTime;

    /// <summary>Last stroke.</summary>
    public DateTimeOffset End => Operation.End;

    /// <summary>How the run follows, with what is carried over.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => carried == 0 ? Run.Workings() : Trace.Of(Run.Id, [Run.Workings(), Cups.Workings()], t => t.Step(
        "to mix after leftovers", "V_mix", Measure.Liquid, Carried,
        t.Given("V_need", Run.Demand.Total.CubicMeters, Measure.Liquid) - t.Given("V_left", carried, Measure.Liquid)));

    /// <summary>Identifier and quantity.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Run.ToString();
}
