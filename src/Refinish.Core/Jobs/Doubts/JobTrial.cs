using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// A job with other readings of rough fixtures, other areas, another gun, other hours and a further visit, as one trial draws them.
/// </summary>
internal sealed class JobTrial
{
    private const string ComesBack = "touch-up";

    // A standard has some hours.
    private const double Shortest = 1e-6;

    private readonly Job job;
    private readonly JobUncertainty doubts;
    private readonly LabourStandard[] standards;
    private readonly List<(string Fixture, string Reading)> asked = [];
    private readonly int readings;

    public JobTrial(Job job, JobUncertainty doubts)
    {
        this.job = job;
        this.doubts = doubts;
        standards = [.. job.Shop.Labour];
        List<UncertainInput> inputs = [];
        void Add(string name, Distribution spread, string? group) =>
            inputs.Add(new UncertainInput { Name = name, Distribution = spread, Group = group });
        foreach (FixtureJob fixture in doubts.Area is null ? [] : job.Fixtures)
        {
            Add("area of " + fixture.Id, doubts.Area!, null);
        }

        if (doubts.TransferEfficiency is not null)
        {
            Add("transfer efficiency", doubts.TransferEfficiency, null);
        }

        foreach (LabourStandard standard in standards)
        {
            Add("hours of " + standard.Code, Relative(standard).As(doubts.Hours), "labour");
        }

        Add("comes back", new UniformDistribution(0, 1), null);
        readings = inputs.Count;
        foreach (FixtureJob fixture in job.Fixtures)
        {
            foreach ((string reading, double least, double likely, double greatest) in (fixture.Fixture as RoughFixture)?.Spreads() ?? [])
            {
                Add(reading + " of " + fixture.Id, new TriangularDistribution(least, likely, greatest), null);
                asked.Add((fixture.Id, reading));
            }
        }

        Inputs = inputs;
    }

    public IReadOnlyList<UncertainInput> Inputs { get; }

    /// <summary>Of which fixture an input is a reading, and which; null for the others.</summary>
    public (string Fixture, string Reading)? ReadingOf(int input) => input < readings ? null : asked[input - readings];

    public Job With(double[] drawn)
    {
        int at = 0;
        FixtureJob[] fixtures = [.. job.Fixtures];
        int from = readings;
        for (int i = 0; i < fixtures.Length; i++)
        {
            if (fixtures[i].Fixture is RoughFixture rough)
            {
                fixtures[i] = fixtures[i] with { Fixture = rough.Drawn(drawn, from) };
                from += rough.Spreads().Count();
            }
        }

        if (doubts.Area is not null)
        {
            fixtures = [.. fixtures.Select(fixture => fixture with { AreaFactor = Math.Max(0.01, drawn[at++]) })];
        }

        Shop shop = job.Shop;
        if (doubts.TransferEfficiency is not null)
        {
            double factor = drawn[at++];
            shop = shop with { Gun = Aimed(shop.Gun, factor) };
            fixtures = [.. fixtures.Select(fixture => fixture.Gun is null ? fixture : fixture with { Gun = Aimed(fixture.Gun, factor) })];
        }

        LabourStandard[] labour = [.. standards.Select(standard => Worked(standard, Math.Max(Shortest, drawn[at++])))];
        shop = shop with { Labour = labour };
        Job trial = job with { Shop = shop, Fixtures = fixtures };
        return drawn[at] < doubts.ComesBack.DecimalFractions ? Again(trial) : trial;
    }

    // Somebody comes back a day after the inspection of the room that is inspected last in the list.
    private Job Again(Job trial)
    {
        HashSet<string> rooms = new(trial.Fixtures.Where(fixture => new Refinish.Substrates.Verdict(fixture.Survey, trial.Shop.Survey).MayBePlanned).Select(fixture => fixture.Room), StringComparer.Ordinal);
        if (trial.Premises.Rooms.LastOrDefault(room => rooms.Contains(room.Id)) is not SiteRoom room)
        {
            return trial;
        }

        string inspected = room.Id + "/" + WorkOrder.Key(WorkKind.Inspect);
        Operation touchUp = new() { Id = ComesBack, Kind = WorkKind.Other, Room = room.Id, Instruction = "come back and touch up", Time = doubts.TouchUp };
        OperationChange change = OperationChange.Add(touchUp, inspected) with { Lags = [new StepLag(inspected, ComesBack, TimeSpan.FromHours(24), null, "called back after the handover")] };
        return trial with { Changes = [.. trial.Changes, change] };
    }

    // The three points as parts of their mean, by whichever rate the standard has.
    private static ThreePoint Relative(LabourStandard standard)
    {
        ThreePoint hours = standard.PerUnit.Mean > 0 ? standard.PerUnit : standard.PerSquareMeter.Mean > 0 ? standard.PerSquareMeter : standard.Fixed;
        return hours.Mean > 0 ? new ThreePoint(hours.Minimum / hours.Mean, hours.Mode / hours.Mean, hours.Maximum / hours.Mean) : ThreePoint.Exactly(1);
    }

    private static LabourStandard Worked(LabourStandard standard, double factor) => standard with
    {
        Fixed = ThreePoint.Exactly(standard.Fixed.Mean * factor),
        PerSquareMeter = ThreePoint.Exactly(standard.PerSquareMeter.Mean * factor),
        PerUnit = ThreePoint.Exactly(standard.PerUnit.Mean * factor),
    };

    private static SprayGun Aimed(SprayGun gun, double factor) =>
        gun with { TransferEfficiency = Ratio.FromDecimalFractions(Math.Max(0.05, Math.Min(1, gun.TransferEfficiency.DecimalFractions * factor))) };
}
