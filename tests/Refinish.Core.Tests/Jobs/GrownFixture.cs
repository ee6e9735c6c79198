using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Tests.Jobs;

/// <summary>A fixture with every area multiplied: the same thing, larger.</summary>
internal sealed record GrownFixture(IFixture Of, double Factor) : IFixture
{
    public string Description => Of.Description;

    public IReadOnlyList<FixtureZone> Zones => [.. Of.Zones.Select(zone => new FixtureZone(zone.Kind, zone.Area * Factor,
        zone.SlopeFromHorizontal))];

    public Area CoatedArea => Of.CoatedArea * Factor;

    public Length MaskedEdge => Of.MaskedEdge;

    public Volume? WaterCapacity => Of.WaterCapacity;

    public IReadOnlyList<SurfacePatch> Patches => Of.Patches;

    public TriangleMesh Tessellate(Length chordTolerance) => Of.Tessellate(chordTolerance);

    public Workings Workings() => Of.Workings();
}
