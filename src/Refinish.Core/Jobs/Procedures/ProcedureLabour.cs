using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Finds the shop's labour standards for the operations and repairs on one fixture, and notes what it lacks.</summary>
internal sealed class ProcedureLabour(Procedure procedure)
{
    private readonly FixtureJob fixture = procedure.Fixture;
    private readonly IReadOnlyList<LabourStandard> standards = procedure.Shop.Labour;

    public List<PlanObjection> Gaps { get; } = [];

    public static PlanObjection NoStandard(string about, WorkKind kind) => new(
        ObjectionKind.Labour, about, WorkOrder.Key(kind), "There is no labour standard for the kind of work " + kind.ToString("G") + " ("
            + WorkOrder.Label(kind) + "), so there is no price.");

    public ValueList<LabourTask> Hours(WorkKind kind, double units) => Hours(kind, procedure.CoatedArea, units);

    public ValueList<LabourTask> Hours(WorkKind kind, Area area, double units) =>
        Standard(kind) is LabourStandard standard
            ? ValueList<LabourTask>.Owning(Task(standard, kind, area, units))
            : ValueList<LabourTask>.Empty;

    public LabourStandard? Standard(WorkKind kind)
    {
        LabourStandard? standard = LabourStandards.For(kind, standards);
        if (standard is null)
        {
            Gaps.Add(NoStandard(fixture.Id, kind));
        }

        return standard;
    }

    /// <summary>
    /// The repairs of one kind: what the shop sets aside for the kind of work on a fixture, where it does, and each defect.
    /// </summary>
    public List<LabourTask> Of(IReadOnlyList<Defect> defects, WorkKind kind)
    {
        List<LabourTask> labour = [];
        if (LabourStandards.For(kind, standards) is LabourStandard setUp)
        {
            double stripped = defects.OfType<PeelingCoat>().Sum(coat => coat.Area.SquareMeters);
            labour.Add(Task(setUp, kind, kind == WorkKind.Strip ? Area.FromSquareMeters(stripped) : procedure.CoatedArea, 1));
        }

        foreach (Defect defect in defects)
        {
            Add(labour, LabourStandards.ForDefect(defect, standards), defect, Id(kind), "no labour standard");
        }

        return labour;
    }

    /// <summary>The hours of mending defects in an operation of their own: the defects' own, or by a standard of the shop.</summary>
    public List<LabourTask> Mending(IReadOnlyList<Defect> same, string id)
    {
        List<LabourTask> labour = [];
        foreach (Defect defect in same)
        {
            DefectWork? work = (defect as OwnDefect)?.Work;
            LabourStandard? standard = work?.Hours is ThreePoint hours ? Stated(defect, work, hours)
                : work?.LabourCode is string code ? standards.FirstOrDefault(one => one.Code == code && one.PerSquareMeter.Maximum <= 0)
                : LabourStandards.ForDefect(defect, standards);
            Add(labour, standard, defect, id, work?.LabourCode is string named
                ? "no labour standard " + named + " without a rate by area" : "no labour standard");
        }

        return labour;
    }

    private void Add(List<LabourTask> labour, LabourStandard? standard, Defect defect, string id, string none)
    {
        if (standard is null)
        {
            Gaps.Add(new PlanObjection(ObjectionKind.Labour, fixture.Id, defect.Kind.Code,
                "There is " + none + " for a " + defect.Name + " of " + fixture.Name + ", so there is no price."));
            return;
        }

        labour.Add(StandardFit.Task(standard, defect, labour) with { Id = id, Fixture = fixture.Id, Room = fixture.Room });
    }

    // Its code is formed from the defect's, as that of a line of hours of its own.
    private static LabourStandard Stated(Defect defect, DefectWork work, ThreePoint hours) => new()
    {
        Code = "defect-" + defect.Kind.Code,
        Description = defect.Name,
        PerUnit = hours,
        Repairs = defect.Kind,
        Source = work.Source,
    };

    private LabourTask Task(LabourStandard standard, WorkKind kind, Area area, double units) =>
        new() { Standard = standard, Area = area, Units = units, Id = Id(kind), Fixture = fixture.Id, Room = fixture.Room };

    private string Id(WorkKind kind) => fixture.Id + "/" + WorkOrder.Key(kind);
}
