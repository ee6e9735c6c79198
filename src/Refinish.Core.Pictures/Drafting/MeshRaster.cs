using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Pictures.Drafting;

/// <summary>A mesh seen from one side on a grid of cells: in each the nearest triangle, so that it is known what hides what.</summary>
internal sealed class MeshRaster
{
    private const int Cells = 240;

    private readonly double cell;
    private readonly int columns;
    private readonly int rows;
    private readonly double[] near;
    private readonly int[] nearest;

    public MeshRaster(TriangleMesh mesh, MeshSide side)
    {
        Points = [.. mesh.Vertices.Select(p => (X: side.Right(p), Y: side.Below(p), Near: side.Near(p)))];
        int[] used = [.. mesh.Triangles.SelectMany(t => (int[])[t.A, t.B, t.C]).Distinct()];
        (double left, double top) = (used.Min(i => Points[i].X), used.Min(i => Points[i].Y));
        Width = used.Max(i => Points[i].X) - left;
        Height = used.Max(i => Points[i].Y) - top;
        for (int i = 0; i < Points.Length; i++)
        {
            Points[i] = (Points[i].X - left, Points[i].Y - top, Points[i].Near);
        }

        cell = Math.Max(Width, Height) / Cells;
        columns = (int)(Width / cell) + 1;
        rows = (int)(Height / cell) + 1;
        near = new double[columns * rows];
        nearest = new int[columns * rows];
        for (int i = 0; i < near.Length; i++)
        {
            near[i] = double.NegativeInfinity;
            nearest[i] = -1;
        }

        for (int i = 0; i < mesh.Triangles.Count; i++)
        {
            Fill(mesh.Triangles[i], i);
        }
    }

    /// <summary>The corners of the mesh from the upper left of the view, and how near they are.</summary>
    public (double X, double Y, double Near)[] Points { get; }

    public double Width { get; }

    public double Height { get; }

    /// <summary>Whether there is anything to see: a flat mesh from its edge is a line.</summary>
    public bool IsFlat => Math.Min(Width, Height) < 1e-3 * Math.Max(Width, Height);

    /// <summary>Whether the coated side of a triangle is seen from here, if nothing lies before it.</summary>
    public bool Faces(MeshTriangle t) => Turn(t) < 0;

    /// <summary>In how many cells the coated side is seen.</summary>
    public int Coated(IReadOnlyList<MeshTriangle> triangles) => nearest.Count(i => i >= 0 && Faces(triangles[i]));

    /// <summary>
    /// The widest spot of a zone that shows its coated side; <see langword="null"/> when none of more than a few cells does.
    /// </summary>
    public (double X, double Y)? SpotOf(FixtureZoneKind zone, IReadOnlyList<MeshTriangle> triangles)
    {
        int[] depth = [.. nearest.Select(i => i >= 0 && triangles[i].Zone == zone && Faces(triangles[i]) ? 1 : 0)];
        if (depth.Count(one => one > 0) < 6)
        {
            return null;
        }

        // How many cells it is to the border of the zone, first from above, then from below.
        int At(int x, int y) => x < 0 || y < 0 || x >= columns || y >= rows ? 0 : depth[(y * columns) + x];
        void Sweep(int x, int y, int from)
        {
            int i = (y * columns) + x;
            int least = Math.Min(Math.Min(At(x - 1, y + from), At(x, y + from)), Math.Min(At(x + 1, y + from), At(x + from, y)));
            depth[i] = depth[i] == 0 ? 0 : from < 0 ? 1 + least : Math.Min(depth[i], 1 + least);
        }

        for (int i = 0; i < depth.Length; i++)
        {
            Sweep(i % columns, i / columns, -1);
        }

        for (int i = depth.Length - 1; i >= 0; i--)
        {
            Sweep(i % columns, i / columns, 1);
        }

        int best = Array.IndexOf(depth, depth.Max());
        return (((best % columns) + 0.5) * cell, ((best / columns) + 0.5) * cell);
    }

    /// <summary>The stretches of an edge before which nothing lies, as parts of its length.</summary>
    public IEnumerable<(double From, double To)> Shown(int from, int to)
    {
        (double X, double Y, double Near) a = Points[from];
        (double X, double Y, double Near) b = Points[to];
        int steps = 1 + (int)(Math.Max(Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y)) / cell);
        double? start = null;
        for (int i = 0; i < steps; i++)
        {
            double t = (i + 0.5) / steps;
            bool shown = IsShown(a.X + ((b.X - a.X) * t), a.Y + ((b.Y - a.Y) * t), a.Near + ((b.Near - a.Near) * t));
            if (shown)
            {
                start ??= (double)i / steps;
            }
            else if (start is double begun)
            {
                yield return (begun, (double)i / steps);
                start = null;
            }
        }

        if (start is double last)
        {
            yield return (last, 1);
        }
    }

    // A cell's width of play: an edge lies on its own triangles, which slope within the cell.
    private bool IsShown(double x, double y, double depth)
    {
        int column = (int)(x / cell);
        int row = (int)(y / cell);
        double least = double.PositiveInfinity;
        for (int r = row - 1; r <= row + 1; r++)
        {
            for (int c = column - 1; c <= column + 1; c++)
            {
                least = Math.Min(least, r < 0 || c < 0 || r >= rows || c >= columns ? double.NegativeInfinity : near[(r * columns) + c]);
            }
        }

        return depth >= least - (2 * cell);
    }

    // Twice the area in the view; negative when the triangle runs anticlockwise for the viewer, since y is downwards.
    private double Turn(MeshTriangle t) =>
        ((Points[t.B].X - Points[t.A].X) * (Points[t.C].Y - Points[t.A].Y)) - ((Points[t.C].X - Points[t.A].X) * (Points[t.B].Y - Points[t.A].Y));

    private void Fill(MeshTriangle t, int index)
    {
        double turn = Turn(t);
        if (turn == 0)
        {
            return;
        }

        (double X, double Y, double Near) a = Points[t.A];
        (double X, double Y, double Near) b = Points[t.B];
        (double X, double Y, double Near) c = Points[t.C];
        int first = (int)(Math.Min(a.X, Math.Min(b.X, c.X)) / cell);
        int last = Math.Min(columns - 1, (int)(Math.Max(a.X, Math.Max(b.X, c.X)) / cell));
        int top = (int)(Math.Min(a.Y, Math.Min(b.Y, c.Y)) / cell);
        int bottom = Math.Min(rows - 1, (int)(Math.Max(a.Y, Math.Max(b.Y, c.Y)) / cell));
        for (int row = top; row <= bottom; row++)
        {
            for (int column = first; column <= last; column++)
            {
                double x = (column + 0.5) * cell;
                double y = (row + 0.5) * cell;
                double atB = (((x - a.X) * (c.Y - a.Y)) - ((c.X - a.X) * (y - a.Y))) / turn;
                double atC = (((b.X - a.X) * (y - a.Y)) - ((x - a.X) * (b.Y - a.Y))) / turn;
                int place = (row * columns) + column;
                double depth = a.Near + (atB * (b.Near - a.Near)) + (atC * (c.Near - a.Near));
                if (atB >= 0 && atC >= 0 && atB + atC <= 1 && depth > near[place])
                {
                    near[place] = depth;
                    nearest[place] = index;
                }
            }
        }
    }
}
