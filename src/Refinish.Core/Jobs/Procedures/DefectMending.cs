using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// What is done about an own defect, and a liner that comes off: operations of their own in the place of their kind of work. And what
/// defects take of filler and other material.
/// </summary>
internal sealed class DefectMending(Procedure procedure, ProcedureLabour labour)
{
    private static readonly Source LinerRule =
        Source.CommonPractice("a loose liner is taken off before anything goes on the fixture below");

    private readonly FixtureJob fixture = procedure.Fixture;
    private readonly bool isNeeded = procedure.Defects.Any(defect => defect is OwnDefect or Liner);

    public static string IdOf(string fixture, Defect defect) => fixture + "/defect/" + defect.Kind.Code;

    // A hollow of one's own without work of its own is filled as a chip is.
    public static WorkKind? WorkOn(Defect defect) => defect switch
    {
        OwnDefect own => own.Work is null && own.Hollow is not null ? WorkKind.Fill : null,
        _ => LabourStandards.WorkOf(defect.Kind),
    };

    public IEnumerable<Operation> Of(WorkKind kind) => isNeeded ? Mended(kind) : [];

    public IReadOnlyList<MaterialNeed> FillerOf(IEnumerable<Defect> defects)
    {
        HashSet<Defect> these = [.. defects];
        double volume = procedure.Filler.Items.Where(item => these.Contains(item.Defect)).Sum(item => item.Mixed.CubicMeters);
        FillerProduct product = procedure.Shop.Filler.Product;
        return volume <= 0 ? []
            : [new MaterialNeed(product.Id, product.Name, Volume.FromCubicMeters(volume), product.MixedDensity)];
    }

    // What the defects themselves say, for each, and what the shop has for their kind.
    public List<MaterialNeed> OwnMaterials(OwnDefect[] defects) => MaterialNeed.Joined(
    [
        .. defects.SelectMany(defect => (defect.Work?.Materials ?? []).Select(need => need.Times(defect.Count))),
        .. DefectMaterials.For(defects, procedure.CoatedArea, procedure.Shop.DefectMaterials),
    ]);

    public IReadOnlyList<MaterialNeed> MaterialsOf(WorkKind kind, IReadOnlyList<Defect> defects) =>
        DefectMaterials.For(kind, defects, procedure.CoatedArea, procedure.Shop.DefectMaterials);

    private IEnumerable<Operation> Mended(WorkKind kind)
    {
        foreach (IGrouping<string, OwnDefect> same in procedure.Defects.OfType<OwnDefect>()
            .Where(own => own.Work?.Kind == kind).GroupBy(own => own.Code, StringComparer.Ordinal))
        {
            OwnDefect[] defects = [.. same];
            DefectWork work = defects[0].Work!;
            IReadOnlyList<MaterialNeed> filler = FillerOf(defects);
            yield return Mending(kind, defects, work.Instruction, work.Source, work.RaisesDust,
                filler.Count > 0 ? [.. defects[0].Cautions, .. procedure.Filler.Cautions, Cautions.EyeWash] : defects[0].Cautions) with
            {
                Materials = [.. filler, .. OwnMaterials(defects)],
                Vapours = work.Vapours,
            };
        }

        Liner[] liners = kind == WorkKind.Clear ? [.. procedure.Defects.OfType<Liner>().Where(liner => liner.ComesOff)] : [];
        if (liners.Length > 0)
        {
            string asbestos = AsbestosRules.IsOpen(fixture.Survey) ? "not before the old adhesive was sampled for asbestos: " : string.Empty;
            yield return Mending(kind, liners,
                asbestos + "cut the liner into strips, lift and bag it, scrape off its glue, let what is below dry, and survey the bare "
                + "fixture again before anything goes on it", LinerRule, true,
                [Cautions.WetElectricity,
                    .. SurveyCautions.Found(fixture.Survey).Where(caution => caution.Hazard is Hazard.Asbestos or Hazard.Lead)]) with
            {
                Materials = MaterialsOf(WorkKind.Clear, liners),
            };
        }
    }

    private Operation Mending(
        WorkKind kind, IReadOnlyList<Defect> defects, string instruction, Source source, bool dusty, IReadOnlyList<Caution> cautions)
    {
        string id = IdOf(fixture.Id, defects[0]);
        return new Operation
        {
            Id = id,
            Kind = kind,
            Name = defects[0].Name,
            Instruction = instruction,
            Room = fixture.Room,
            Fixtures = [fixture.Id],
            Labour = new ValueList<LabourTask>(labour.Mending(defects, id)),
            IsInterruptible = true,
            RaisesDust = dusty,
            IsLoud = dusty,
            Cautions = new ValueList<Caution>(WorkCautions.Of(kind).Concat(cautions).Distinct()),
            Source = source,
        };
    }
}
