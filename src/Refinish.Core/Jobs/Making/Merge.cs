using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Makes one operation of several of one kind on the fixtures of a room.</summary>
internal static class Merge
{
    public static Operation Of(string id, List<Operation> same)
    {
        Operation first = same[0];
        if (same.Count == 1)
        {
            return first with { Id = id, Materials = first.Materials.Count > 1 ? Materials(same) : first.Materials, Labour = [.. first.Labour.Select(task => task with { Id = id })] };
        }

        bool alike = same.TrueForAll(operation => operation.Instruction == first.Instruction);
        string name = same.TrueForAll(operation => operation.Name == first.Name) ? first.Name : WorkOrder.Label(first.Kind);
        return first with
        {
            Id = id,
            Name = name,
            Instruction = alike ? first.Instruction : name + ", as each fixture says",
            Fixtures = [.. same.SelectMany(operation => operation.Fixtures)],
            ByFixture = [.. same.SelectMany(operation => operation.ByFixture)],
            Labour = Labour(id, same),
            IsInterruptible = same.TrueForAll(operation => operation.IsInterruptible),
            RaisesDust = same.Exists(operation => operation.RaisesDust),
            IsLoud = same.Exists(operation => operation.IsLoud),
            Materials = Materials(same),
            Vapours = [.. same.SelectMany(operation => operation.Vapours)],
            Cautions = [.. same.SelectMany(operation => operation.Cautions).Distinct()],
        };
    }

    // One item is one entry, however many fixtures take some.
    private static List<MaterialNeed> Materials(List<Operation> same) =>
        MaterialNeed.Joined([.. same.SelectMany(operation => operation.Materials)]);

    // Hours of a kind of work: its fixed part once, areas and counts added up. Repairs stay one by one.
    private static List<LabourTask> Labour(string id, List<Operation> same)
    {
        List<LabourTask> labour = [];
        foreach (Operation operation in same)
        {
            foreach (LabourTask task in operation.Labour)
            {
                int at = task.Standard.Repairs is null ? labour.FindIndex(one => ReferenceEquals(one.Standard, task.Standard)) : -1;
                if (at < 0)
                {
                    labour.Add(StandardFit.After(task, labour) with { Id = id });
                }
                else
                {
                    labour[at] = new LabourTask
                    {
                        Standard = task.Standard,
                        Area = Area.FromSquareMeters(SquareMeters(labour[at]) + SquareMeters(task)),
                        Units = (labour[at].Units ?? 0) + (task.Units ?? 0),
                        Id = id,
                    };
                }
            }
        }

        return labour;
    }

    private static double SquareMeters(LabourTask task) => task.Area?.SquareMeters ?? 0;
}
