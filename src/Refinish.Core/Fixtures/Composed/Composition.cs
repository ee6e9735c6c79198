using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>
/// Puts a fixture together from measured parts: each adds its patch, the edge that is taped, the water it holds and its place in the mesh.
/// Lengths in SI; x to the right, y away from the viewer at the front, z up.
/// </summary>
internal sealed partial class Composition(ComposedKind kind, IReadOnlyDictionary<string, double> values)
{
    private readonly List<SurfacePatch> patches = [];
    private readonly List<WorkingStep> before = [];
    private readonly List<Workings> parts = [];
    private readonly List<Expression> edges = [];
    private readonly List<Expression> waters = [];
    private readonly List<Action<Tessellation>> drawings = [];

    public IReadOnlyList<SurfacePatch> Patches => new ValueList<SurfacePatch>(patches);

    public double MaskedEdge => Expression.Sum(edges).Evaluate();

    public double? Water => waters.Count == 0 ? null : Expression.Sum(waters).Evaluate();

    /// <summary>A reading as a leaf of a formula.</summary>
    public Expression this[string reading] => Expression.Quantity(reading, values[reading], kind.Reading(reading).Measure);

    /// <summary>A reading in SI.</summary>
    public double Of(string reading) => values[reading];

    /// <summary>Whether the kind has such a reading at all.</summary>
    public bool Has(string reading) => values.ContainsKey(reading);

    public int Count(string reading) => (int)Math.Round(values[reading]);

    /// <summary>A rule between two readings; the refusal names the one that cannot be.</summary>
    public void AtMost(string reading, double limit, string what)
    {
        if (values[reading] > limit * (1 + PlaneShapes.LastDigits))
        {
            Measure measure = kind.Reading(reading).Measure;
            Guard.Rule(false, reading, values[reading], measure, "at most " + measure.Format(limit) + ", " + what);
        }
    }

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
    public void Tape(Expression edge) => edges.Add(edge);

    /// <summary>A surface by its formula; one of no area is not there.</summary>
    public void Surface(
        string name, FixtureZoneKind zone, Expression area, double slope, Expression? slopeFormula = null, double? value = null,
        double error = 0, Expression? factor = null, Expression? openings = null, Source? source = null)
    {
        double plain = value ?? area.Evaluate();
        if (plain == 0)
        {
            return;
        }

        string index = (patches.Count + 1).ToString(CultureInfo.InvariantCulture);
        WorkingStep step = new(name, "A_" + index, area, plain, Measure.Area, source ?? PlaneShapes.Elementary);
        double open = openings?.Evaluate() ?? 0;
        if (openings is not null && open > 0)
        {
            before.Add(new("openings of " + name, "A_open", openings, open, Measure.Area, PlaneShapes.Elementary));
        }

        patches.Add(new SurfacePatch(step, zone, slope, slopeFormula, error, factor?.Evaluate() ?? 1, open));
    }

    /// <summary>A flat rectangle.</summary>
    public void Plate(
        string name, FixtureZoneKind zone, Expression along, Expression across, Plane place, Expression? factor = null,
        Expression? openings = null) => Plates(name, zone, 1, along, across, [place], factor, openings);

    /// <summary>Flat rectangles alike, as many as the count says.</summary>
    public void Plates(
        string name, FixtureZoneKind zone, Expression count, Expression along, Expression across, IEnumerable<Plane> places,
        Expression? factor = null, Expression? openings = null)
    {
        Expression area = count.Evaluate() == 1 ? along * across : count * along * across;
        double u = along.Evaluate();
        double v = across.Evaluate();
        if (area.Evaluate() == 0)
        {
            return;
        }

        Plane[] drawn = [.. places.Take((int)Math.Round(count.Evaluate()))];
        Surface(name, zone, area, drawn[0].Slope, drawn[0].SlopeFormula, null, 0, factor, openings);
        SurfaceBand[] faces = [.. drawn.Select(place => place.Face(zone, u, v))];
        drawings.Add(mesh => mesh.AddFaces(faces));
    }

    public void Draw(Action<Tessellation> drawing) => drawings.Add(drawing);

    public void Part(Workings workings) => parts.Add(workings);

    /// <summary>Water that one part holds, by a step of its own derivation.</summary>
    public void Holds(Workings water)
    {
        parts.Add(water);
        waters.Add(water.Steps[water.Steps.Count - 1].Result());
    }

    public void Holds(Expression water) => waters.Add(water);

    public TriangleMesh Mesh(UnitsNet.Length chordTolerance)
    {
        Tessellation mesh = new(chordTolerance);
        foreach (Action<Tessellation> drawing in drawings)
        {
            drawing(mesh);
        }

        return mesh.Mesh();
    }

    public Workings Workings(double coated)
    {
        List<WorkingStep> after = [
            new("edge to be taped", "P_mask", Expression.Sum(edges), MaskedEdge, Measure.Length, PlaneShapes.Elementary)];
        if (Water is double water)
        {
            after.Add(new("water up to the rim", "V", Expression.Sum(waters), water, Measure.Capacity, PlaneShapes.Elementary));
        }

        string name = kind.Name;
        return PatchLedger.Write(char.ToUpperInvariant(name[0]) + name.Substring(1), patches, coated, before, after, parts);
    }
}
