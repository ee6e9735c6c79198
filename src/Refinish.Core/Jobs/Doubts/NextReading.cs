using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Jobs;

/// <summary>Which reading of a rough fixture is worth taking next, and between which areas the fixture may lie until then.</summary>
public sealed record NextReading
{
    private NextReading(string fixture, AreaRange range, OpenReading reading)
    {
        Fixture = fixture;
        Range = range;
        Reading = reading;
    }

    /// <summary>Identifier of the fixture.</summary>
    public string Fixture { get; }

    /// <summary>Between which areas it may lie, over the zones that are coated.</summary>
    public AreaRange Range { get; }

    /// <summary>The reading that narrows that range most.</summary>
    public OpenReading Reading { get; }

    /// <summary>Fixture and reading in one line, in metric units.</summary>
    /// <returns>Text such as <c>tub: Depth 280 mm to 460 mm: 0.36 m² narrower</c>.</returns>
    public override string ToString() => Fixture + ": " + Reading;

    internal static IEnumerable<NextReading> Of(JobPlan plan) => plan.Planned
        .Select(procedure => (procedure.Fixture, Range: (procedure.Fixture.Fixture as RoughFixture)?.AreaRangeOf(procedure.Fixture.Zones)))
        .Where(pair => pair.Range?.Next is not null)
        .Select(pair => new NextReading(pair.Fixture.Id, pair.Range!, pair.Range!.Next!))
        .OrderByDescending(next => next.Reading.Narrowing.SquareMeters)
        .ThenBy(next => next.Fixture, System.StringComparer.Ordinal);
}
