using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>
/// Puts a fixture together from measured parts: each adds its patch, the edge that is taped, the water it holds and its place in the mesh.
/// Lengths in SI; x to the right, y away from the viewer at the front, z up.
/// </summary>
internal sealed partial class Composition
{
    private readonly ComposedKind kind;
    private readonly IReadOnlyDictionary<string, double> values;
    private readonly List<SurfacePatch> patches = [];
    private readonly List<Func<Trace, Num>> before = [];
    private readonly List<Workings> parts = [];
    private readonly List<Action<Tessellation>> drawings = [];
    private Num edge;
    private Num? water;
    private Composition? traced;

    /// <summary>Puts the parts of a kind together; with a trace every number carries its formula.</summary>
    public Composition(ComposedKind kind, IReadOnlyDictionary<string, double> values, Trace? trace = null)
    {
        this.kind = kind;
        this.values = values;
        Trace = trace;
        kind.Compose(this);
    }

    public IReadOnlyList<SurfacePatch> Patches => new ValueList<SurfacePatch>(patches);

    public double MaskedEdge => edge.Value;

    public double? Water => water?.Value;

    public Trace? Trace { get; }

    /// <summary>A reading for a formula.</summary>
    public Num this[string reading] => Trace.Given(reading, values[reading], kind.Reading(reading).Measure);

    /// <summary>A reading in SI.</summary>
    public double Of(string reading) => values[reading];

    /// <summary>Whether the kind has such a reading at all.</summary>
    public bool Has(string reading) => values.ContainsKey(reading);

    public int Count(string reading) => (int)Math.Round(values[reading]);

    /// <summary>A rule between two readings; the refusal names the one that cannot be.</summary>
    public void AtMost(string reading, double limit, string what) =>
        TapeRules.AtMost(values[reading], limit * (1 + PlaneShapes.LastDigits), reading, what, kind.Reading(reading).Measure);

    /// <summary>Two readings of one part: where one is 0, so is the other.</summary>
    public void Both(string first, string second)
    {
        if ((values[first] == 0) != (values[second] == 0))
        {
            Guard.Rule(false, second, values[second], kind.Reading(second).Measure,
                values[first] == 0 ? "0 where " + first + " is 0" : "more than 0 where " + first + " is");
        }
    }

    /// <summary>Edges that are taped.</summary>
    public void Tape(Num more) => edge += more;

    /// <summary>A surface by its formula; one of no area is not there.</summary>
    public void Surface(
        string name, FixtureZoneKind zone, Num area, Num slope, double factor = 1, Num openings = default, double error = 0,
        Source? source = null)
    {
        if (area.Value == 0)
        {
            return;
        }

        int place = patches.Count;
        if (openings.Value > 0)
        {
            before.Add(own => own.Step("openings of " + name, "A_open", Measure.Area, PlaneShapes.Elementary, openings));
        }

        patches.Add(new SurfacePatch(
            own => own is null ? area : own.Step(
                name, "A_" + Figures.Fixed(place + 1, 0), Measure.Area, source ?? PlaneShapes.Elementary,
                area.IsTraced ? area : new Num(area.Value, Traced().patches[place].Step.Formula)),
            zone, (own, _) => slope.IsTraced ? slope : own.Lying(slope.Value), error, factor, openings.Value));
    }

    /// <summary>A flat rectangle.</summary>
    public void Plate(
        string name, FixtureZoneKind zone, Num along, Num across, Plane place, double factor = 1, Num openings = default) =>
        Plates(name, zone, 1, along, across, [place], factor, openings);

    /// <summary>Flat rectangles alike, as many as the count says.</summary>
    public void Plates(
        string name, FixtureZoneKind zone, Num count, Num along, Num across, IEnumerable<Plane> places, double factor = 1,
        Num openings = default)
    {
        Num area = count.Value == 1 ? along * across : count * along * across;
        if (area.Value == 0)
        {
            return;
        }

        Plane[] drawn = [.. places.Take((int)Math.Round(count.Value))];
        Surface(name, zone, area, drawn[0].Slope, factor, openings);
        SurfaceBand[] faces = [.. drawn.Select(place => place.Face(zone, along.Value, across.Value))];
        Draw(mesh => mesh.AddFaces(faces));
    }

    public void Draw(Action<Tessellation> drawing) => drawings.Add(drawing);

    /// <summary>Water that one part holds.</summary>
    public void Holds(Num more) => water = water is Num held ? held + more : more;

    public TriangleMesh Mesh(UnitsNet.Length chordTolerance)
    {
        Tessellation mesh = new(chordTolerance);
        foreach (Action<Tessellation> drawing in drawings)
        {
            drawing(mesh);
        }

        return mesh.Mesh();
    }

    public Workings Workings()
    {
        Composition own = Traced();
        List<Func<Trace, Num>> after =
            [t => t.Edge(own.edge)];
        if (own.water is Num held)
        {
            after.Add(t => t.Step("water up to the rim", "V", Measure.Capacity, PlaneShapes.Elementary, held));
        }

        string name = kind.Name;
        return PatchLedger.Write(char.ToUpperInvariant(name[0]) + name.Substring(1), own.patches, own.before, after, own.parts);
    }

    // The same with formulas.
    private Composition Traced() => traced ??= new(kind, values, new Trace());

    /// <summary>A result with a derivation of its own, which the fixture's rests on.</summary>
    private Num Part(string name, string what, IEnumerable<Func<Trace, Num>> before, Func<Trace?, Num> result)
    {
        if (Trace is null)
        {
            return result(null);
        }

        Num found = 0;
        parts.Add(Trace.Of(name + what, [.. before, own => found = result(own)]));
        return found;
    }
}
