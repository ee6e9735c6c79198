using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>The hours of a caller's own operation that states none: those of the shop's standard for its kind of work.</summary>
internal static class OwnHours
{
    /// <summary>The operation with the labour of its kind, over the coated area of its fixtures and once for each of them.</summary>
    public static Operation Of(Operation operation, Shop shop, IReadOnlyList<Procedure> procedures)
    {
        if (!IsUnstated(operation) || LabourStandards.For(operation.Kind, shop.Labour) is not LabourStandard standard)
        {
            return operation;
        }

        double area = procedures
            .Where(procedure => operation.Fixtures.Contains(procedure.Fixture.Id))
            .Sum(procedure => procedure.SquareMeters);
        int units = Math.Max(1, operation.Fixtures.Count);
        return area <= 0 && standard.PerSquareMeter.Maximum > 0
            ? operation
            : operation with
            {
                Labour = [new LabourTask { Standard = standard, Area = Area.FromSquareMeters(area), Units = units, Id = operation.Id }],
            };
    }

    /// <summary>What a fixture's options order after a kind of work.</summary>
    public static IEnumerable<Operation> Ordered(FixtureJob fixture, WorkKind after, Shop shop, IReadOnlyList<Procedure> procedures) =>
        fixture.Options.Count == 0 ? [] : fixture.Options
            .Where(option => option.Kind == FixtureOptionKind.Work && option.After == after)
            .Select(option => Of(
                option.Operation! with { Room = option.Operation!.Room ?? fixture.Room, Fixtures = [fixture.Id] }, shop, procedures));

    /// <summary>What to say of an operation that would take no minute; <see langword="null"/> when it has hours.</summary>
    public static PlanObjection? Objection(Operation operation, Shop shop)
    {
        if (!IsUnstated(operation))
        {
            return null;
        }

        string why = LabourStandards.For(operation.Kind, shop.Labour) is LabourStandard standard
            ? "the labour standard " + standard + " for its kind of work has a rate by area, and the operation names no fixture"
            : "the shop has no labour standard for the kind of work " + operation.Kind.ToString("G");
        return new PlanObjection(ObjectionKind.Input, operation.Id, "hours", "'" + operation.Name + "' has neither Time nor Labour, and " + why
            + ", so that it would take no minute and cost nothing. Give it one of them, or People 0 for a wait.");
    }

    private static bool IsUnstated(Operation operation) =>
        operation is { People: > 0, Time: null, Beside: null } && operation.Labour.Count == 0;
}
