using System.Collections.Generic;
using Refinish.Estimating;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Finds the shop's labour standards for the operations and repairs on one fixture, and notes what it lacks.</summary>
internal sealed class ProcedureLabour(Procedure procedure)
{
    private readonly FixtureJob fixture = procedure.Fixture;
    private readonly IReadOnlyList<LabourStandard> standards = procedure.Shop.Labour;

    public List<LabourGap> Gaps { get; } = [];

    public ValueList<LabourTask> Hours(WorkKind kind, double units) =>
        Standard(kind) is LabourStandard standard ? ValueList<LabourTask>.Owning(Task(standard, kind, units)) : ValueList<LabourTask>.Empty;

    public LabourStandard? Standard(WorkKind kind)
    {
        LabourStandard? standard = LabourStandards.For(kind, standards);
        if (standard is null)
        {
            Gaps.Add(LabourGap.NoStandard(fixture.Id, kind));
        }

        return standard;
    }

    public LabourTask Task(LabourStandard standard, WorkKind kind, double units) =>
        new(standard, procedure.CoatedArea, units, 1) { Id = Id(kind), Fixture = fixture.Id, Room = fixture.Room };

    public List<LabourTask> Of(IEnumerable<Defect> defects, WorkKind kind)
    {
        List<LabourTask> labour = [];
        foreach (Defect defect in defects)
        {
            if (LabourStandards.ForDefect(defect, standards) is not LabourStandard standard)
            {
                Gaps.Add(new LabourGap(fixture.Id, defect.Kind.ToString("G"), "There is no labour standard for a " + defect.Name + " of " + fixture.Name + ", so there is no price."));
                continue;
            }

            double area = defect switch { PeelingCoat coat => coat.Area.SquareMeters, Pitting pitting => pitting.Area.SquareMeters, _ => 0 };
            if (area == 0 && standard.PerSquareMeter.Maximum > 0)
            {
                Gaps.Add(new LabourGap(fixture.Id, standard.Code, "The labour standard " + standard.Code + " has a rate by area, and a " + defect.Name + " is counted, not measured by area; give it a rate by unit."));
            }

            labour.Add(new LabourTask(standard, Area.FromSquareMeters(area), LabourStandards.UnitsOf(defect), 1) { Id = Id(kind), Fixture = fixture.Id, Room = fixture.Room });
        }

        return labour;
    }

    private string Id(WorkKind kind) => fixture.Id + "/" + WorkOrder.Key(kind);
}
