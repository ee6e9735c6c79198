using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Emissions of operations as the study of the air takes them.</summary>
internal static class RoomAir
{
    // Longer pieces are cut, since a single emission lasts a day at most.
    private static readonly TimeSpan Longest = TimeSpan.FromHours(24);

    private static readonly TimeSpan Shortest = TimeSpan.FromSeconds(1);

    /// <summary>
    /// When the first vapour of a schedule is given off. Studies of several rooms count from one instant, so that a person's day can run
    /// through them.
    /// </summary>
    public static DateTimeOffset ZeroOf(CrewSchedule schedule) => schedule.Operations
        .Where(operation => operation.Operation.Vapours.Count > 0).Select(operation => operation.Start)
        .Concat(schedule.Runs.Where(run => run.Run.GivesOff).Select(run => run.SprayingFrom)).Min();

    public static IEnumerable<SolventEmission> Of(CoatRun run, TimeSpan start, Shop shop) =>
        Pieces(run.SprayTime).Select(spray => new SolventEmission
    {
        Name = run.Id,
        Start = start + spray.At,
        SprayTime = spray.Piece,
        VolatileMass = (run.LiquidMass + run.HumidMass) * (spray.Piece.TotalSeconds / run.SprayTime.TotalSeconds),
        Solvents = Liquids(run),
        FlashFraction = SolventEmission.FlashOf(run.Demand.Gun.TransferEfficiency, shop.FlashOfLanded),
        FilmTimeConstant = shop.FilmTimeConstant,
    });

    /// <summary>
    /// What an operation gives off that is done in these pieces of time, each told by its start from the zero of the study and its
    /// length.
    /// </summary>
    public static IEnumerable<Emission> Of(Evaporation vapour, IReadOnlyList<(TimeSpan Start, TimeSpan Duration)> pieces)
    {
        double whole = pieces.Sum(piece => AtLeast(piece.Duration).TotalSeconds);
        foreach ((TimeSpan start, TimeSpan duration) in pieces)
        {
            TimeSpan worked = AtLeast(duration);
            double share = worked.TotalSeconds / whole;
            Mass mass = Mass.FromKilograms(vapour.Mass.Kilograms * share);
            foreach (Emission emission in vapour.TakenOffAfter is TimeSpan after ? Lying(vapour, mass, start, worked + after) : Left(vapour, mass, start, worked))
            {
                yield return emission;
            }
        }
    }

    // A wipe is spread evenly over the work and then dries.
    private static IEnumerable<Emission> Left(Evaporation vapour, Mass mass, TimeSpan start, TimeSpan duration)
    {
        foreach ((TimeSpan at, TimeSpan piece) in Pieces(duration))
        {
            yield return new WipeEmission
            {
                Name = vapour.Name,
                Start = start + at,
                WipeTime = piece,
                VolatileMass = Mass.FromKilograms(mass.Kilograms * piece.TotalSeconds / duration.TotalSeconds),
                Solvents = vapour.Solvents,
                EvaporationTime = vapour.TimeConstant,
            };
        }
    }

    // What lies until it is taken off gives off mass over time constant all the while, and nothing any more once all is gone.
    private static IEnumerable<Emission> Lying(Evaporation vapour, Mass mass, TimeSpan start, TimeSpan lies)
    {
        foreach ((TimeSpan at, TimeSpan piece) in Pieces(lies < vapour.TimeConstant ? lies : vapour.TimeConstant))
        {
            yield return new SolventEmission
            {
                Name = vapour.Name,
                Start = start + at,
                SprayTime = piece,
                VolatileMass = Mass.FromKilograms(mass.Kilograms * (piece.TotalSeconds / vapour.TimeConstant.TotalSeconds)),
                Solvents = vapour.Solvents,
                FlashFraction = Ratio.FromPercent(100),
                FilmTimeConstant = vapour.TimeConstant,
            };
        }
    }

    private static IEnumerable<(TimeSpan At, TimeSpan Piece)> Pieces(TimeSpan whole)
    {
        for (TimeSpan at = TimeSpan.Zero; at < whole; at += Longest)
        {
            yield return (at, whole - at < Longest ? whole - at : Longest);
        }
    }

    private static TimeSpan AtLeast(TimeSpan duration) => duration > Shortest ? duration : Shortest;

    public static Room RoomAt(SiteRoom room, RoomCourse course) =>
        room.Room.AirTemperature is null ? room.Room with { AirTemperature = Temperature.FromKelvins(course.WarmestAir) } : room.Room;

    // What evaporates of a waterborne product makes the air humid too.
    private static IReadOnlyList<SolventShare> Liquids(CoatRun run)
    {
        IReadOnlyList<SolventShare> solvents = run.Layer.Product.Solvents;
        double water = run.HumidMass / (run.LiquidMass + run.HumidMass);
        return water == 0
            ? solvents
            : [.. solvents.Select(one => new SolventShare(one.Solvent, one.MassFraction * (1 - water))),
                new(Coatings.Solvents.Water, Ratio.FromDecimalFractions(water))];
    }
}
