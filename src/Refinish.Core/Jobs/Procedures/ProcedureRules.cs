using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>The rules by which the operations on one fixture follow from survey, surface, system and options.</summary>
internal sealed class ProcedureRules(Procedure procedure, SurveyPolicy policy, CoatList coats, ProcedureLabour labour)
{
    private static readonly Source Practice = Source.CommonPractice("order and manner of work in refinishing in place; the data sheets of the products go first");
    private static readonly Source OldCoatRule = Source.CommonPractice("a kept coating is an organic surface: abraded, not etched, and without silane for glass; the data sheet of the new system goes first");

    private static readonly Source CrackRule = Source.CommonPractice(
        "cracks in glass-fibre and acrylic sheet are opened and reinforced before they are filled; "
            + "the data sheets of resin and fabric go first");

    private static readonly Source LinerRule =
        Source.CommonPractice("a loose liner is taken off before anything goes on the fixture below");

    private readonly FixtureJob fixture = procedure.Fixture;
    private readonly ValueList<string> itself = ValueList<string>.Owning(procedure.Fixture.Id);
    private readonly ILookup<WorkKind?, Defect> repairs = procedure.Defects.ToLookup(WorkOn);

    public List<Operation> Operations { get; } = [];

    public List<Operation> Mendings { get; } = [];

    private bool IsEtched => procedure.Surface.MayBeEtched;

    private bool UsesAcid => IsEtched || OwnKey?.Kind == SystemStepKind.Etch;

    private SystemStep? OwnKey => procedure.System.Steps.FirstOrDefault(step =>
        step.Kind is SystemStepKind.Etch or SystemStepKind.Abrade && step.Serves(procedure.Surface));

    public void Make()
    {
        foreach (WorkKind kind in WorkOrder.BeforeCoats)
        {
            Prepare(kind);
            Mend(kind);
            OwnWork(kind);
        }

        Promote();
        Spray();
        Add(WorkKind.Demask, "take off masking and covers, vacuum, clean up", Practice);
        Mend(WorkKind.Demask);
        OwnWork(WorkKind.Demask);
        if (fixture.Options.FirstOrDefault(option => option.Kind == FixtureOptionKind.DrainTrim) is FixtureOption trim)
        {
            Add(
                WorkKind.FitTrim, "fit new drain and overflow trim in sealant", Practice,
                new OperationTraits { Labour = labour.Hours(WorkKind.FitTrim, (double)trim.Quantity), IsInterruptible = true });
        }

        Mend(WorkKind.FitTrim);
        Add(WorkKind.Caulk, ClearingText.Back(fixture.Fixture), Practice);
        Mend(WorkKind.Caulk);
        Add(WorkKind.Inspect, "inspect under side light, measure the film where a gauge can, explain care and waits, hand over", Practice);
        Mend(WorkKind.Inspect);
        OwnWork(WorkKind.Inspect);
    }

    private void Prepare(WorkKind kind)
    {
        switch (kind)
        {
            case WorkKind.Clear:
                Add(kind, ClearingText.Of(fixture.Fixture), Practice);
                break;
            case WorkKind.RemoveSilicone:
                Repair(kind, "digest and scrape silicone from the joints, wipe, repeat the water-break test", Practice);
                break;
            case WorkKind.LayOnStripper:
                LayOnStripper();
                break;
            case WorkKind.Strip:
                Strip();
                break;
            case WorkKind.Descale:
                Add(kind, IsEtched ? "clean off lime, rust stains and soap film with a descaler, rinse" : "clean off lime and soap film with a mild cleaner, no acid; rinse", Practice);
                break;
            case WorkKind.Degrease:
                Add(kind, procedure.Surface.CrazesInSolvent
                    ? "degrease with a mild wipe after a spot test, since solvents craze it where it is under stress; repeat until water no longer breaks"
                    : "degrease twice with fresh cloths until water no longer breaks", Practice);
                break;
            case WorkKind.Regrout:
                Repair(
                    kind,
                    (AsbestosRules.IsOpen(fixture.Survey) ? "not before adhesive and board were sampled for asbestos: " : string.Empty) + "rake out and replace grout"
                        + (procedure.Defects.Any(defect => defect is LooseTiles) ? ", fix loose tiles" : string.Empty),
                    Practice,
                    dusty: true);
                break;
            case WorkKind.Key:
                Key();
                break;
            case WorkKind.RinseAndDry:
            case WorkKind.SpotPrime:
            case WorkKind.SandFiller:
                Separate(kind);
                break;
            case WorkKind.GrindRust:
                Repair(kind, "grind rust to bright metal with a margin, treat it, spot prime within the hour", Practice, dusty: true);
                break;
            case WorkKind.ReinforceCrack:
                Reinforce();
                break;
            case WorkKind.Fill:
                Fill();
                break;
            case WorkKind.SealCrazing:
                Repair(kind, "abrade the crazed places and seal them with a further primer coat", Practice, dusty: true);
                break;
            case WorkKind.Tack:
                bool sands = procedure.Filler.Items.Count > 0 && LabourStandards.For(WorkKind.SandFiller, procedure.Shop.Labour) is null;
                Add(
                    kind,
                    sands ? "sand the filler flush and feather the edge, blow out, vacuum, wipe and tack off the dust" : "blow out, vacuum, wipe and tack off the dust",
                    Practice,
                    new OperationTraits { Name = sands ? "sand the filler, tack off" : null, Labour = labour.Hours(kind, 1), IsInterruptible = true, RaisesDust = true, CoarsestGrit = sands ? 120 : null, FinestGrit = sands ? 220 : null });
                break;
            case WorkKind.Mask:
                Add(kind, "mask edges, walls and openings on the dry surface", Practice);
                break;
        }
    }

    private void LayOnStripper()
    {
        if (procedure.OldCoat.ComesOff)
        {
            Add(
                WorkKind.LayOnStripper,
                "lay on a permitted stripper as its sheet says, without methylene chloride; cover it and leave the room",
                Practice,
                new OperationTraits { Labour = labour.Hours(WorkKind.LayOnStripper, 1), IsInterruptible = true });
        }
    }

    private void Strip()
    {
        string least = PeelingCoat.GradeName(policy.MinimumAdhesion);
        bool patches = procedure.Defects.Any(defect => defect is PeelingCoat);
        if (procedure.OldCoat.ComesOff)
        {
            Repair(WorkKind.Strip, "scrape off all of the old coat, which holds less than " + least
                + "; neutralise as the stripper's sheet says, rinse twice, dry; residue into a closed can, none into the drain", Practice, dusty: true);
        }
        else if (patches)
        {
            Repair(WorkKind.Strip, procedure.OldCoat.IsTested
                ? "take off what is loose of the old coat, feather the edges, keep the rest"
                : "tape test the old coat: keep it from " + least + " upwards, otherwise strip it by a permitted way; take off what is loose and feather the edges", Practice, dusty: true, name: "take off loose old coat");
        }
    }

    // The system's own preparation of what lies under it goes before the general rule.
    private void Key()
    {
        FixtureMaterial under = procedure.Surface;
        SystemStep? own = OwnKey;
        bool etches = own?.Kind == SystemStepKind.Etch;
        string rinse = IsEtched ? "; rinse off all etchant and dust, dry with heat and air, joints included" : "; rinse off the dust, dry with air";
        Add(
            WorkKind.Key,
            (own?.Name ?? under.KeyedBy.Instruction) + rinse,
            under.IsOldCoating ? OldCoatRule : own?.Source ?? Practice,
            new OperationTraits
            {
                Name = IsEtched ? null : "abrade, rinse and dry",
                Labour = labour.Hours(WorkKind.Key, 1),
                RaisesDust = !etches,
                CoarsestGrit = own is null ? under.KeyedBy.CoarsestGrit : null,
                FinestGrit = own is null ? under.KeyedBy.FinestGrit : null,
            });
    }

    // Gelcoat and acrylic are sheets that flex: filler alone opens again. Enamel, china and tile are rigid, and their cracks are only
    // filled.
    private void Reinforce()
    {
        Crack[] cracks = [.. procedure.Defects.OfType<Crack>()];
        if (cracks.Length > 0 && fixture.Survey.Material.IsFlexibleSheet)
        {
            Add(
                WorkKind.ReinforceCrack,
                "drill the ends of each crack, open it to a wide vee, and laminate glass fabric over it in resin: from behind where the "
                    + "back can be reached, otherwise in a recess ground into the face; let it harden",
                CrackRule,
                new OperationTraits
                {
                    Labour = labour.Hours(WorkKind.ReinforceCrack, cracks.Sum(crack => crack.Length.Meters)),
                    IsInterruptible = true,
                    RaisesDust = true,
                    Materials = MaterialsOf(WorkKind.ReinforceCrack, cracks),
                });
        }
    }

    private void Fill()
    {
        Defect[] defects = [.. repairs[WorkKind.Fill]];
        if (defects.Length == 0)
        {
            return;
        }

        IEnumerable<Defect> here = procedure.Defects.Where(defect => defect is not OwnDefect { Work: not null });
        List<MaterialNeed> materials =
            [.. FillerOf(here), .. MaterialsOf(WorkKind.Fill, defects), .. OwnMaterials(defects.OfType<OwnDefect>())];

        Add(
            WorkKind.Fill,
            "fill hollows in lifts and let them cure",
            Practice,
            new OperationTraits
            {
                Labour = new ValueList<LabourTask>(labour.Of(defects, WorkKind.Fill)),
                IsInterruptible = true,
                RaisesDust = true,
                Materials = materials,
            });
    }

    private void Promote()
    {
        if (procedure.Promoter is not AdhesionPromoter promoter || procedure.SquareMeters <= 0)
        {
            return;
        }

        PromoterQuantity wipe = new(procedure.CoatedArea, promoter);
        Add(
            WorkKind.Promote,
            "wipe on " + promoter.Name + " with a lint-free cloth, one thin pass, and coat within its window",
            promoter.Source,
            new OperationTraits { Labour = labour.Hours(WorkKind.Promote, 1), Materials = ValueList<MaterialNeed>.Owning(new MaterialNeed(promoter.Id, promoter.Name, wipe.Volume)) });
    }

    private void Spray()
    {
        foreach (PlannedCoat coat in coats.Coats)
        {
            Add(
                coat.Kind,
                "spray " + coat.Layer.Product.Name,
                coat.Layer.Product.Source,
                new OperationTraits { Id = fixture.Id + "/coat/" + Figures.Fixed(coat.Number, 0), Sprays = true, Labour = labour.Hours(coat.Kind, 1), Product = coat.Layer.Product });
            if (coat.TakesGrains)
            {
                Add(
                    WorkKind.Broadcast,
                    coats.SlipFloor is null
                        ? "broadcast grains evenly over the wet floor"
                        : "broadcast " + Measure.Mass.FormatBoth(coats.SlipFloor.ToWeighOut.Kilograms) + " of " + coats.SlipFloor.Additive.Name + " evenly over the wet floor",
                    Practice,
                    new OperationTraits
                    {
                        Labour = labour.Hours(WorkKind.Broadcast, coats.SlipFloor?.Floor ?? procedure.CoatedArea, 1),
                        Product = coat.Layer.Product,
                    });
            }
        }
    }

    // Work that is usually part of its neighbour stands alone only where the shop has a standard for it.
    private void Separate(WorkKind kind)
    {
        bool wanted = kind switch
        {
            WorkKind.SpotPrime => repairs[WorkKind.GrindRust].Any(),
            WorkKind.SandFiller => procedure.Filler.Items.Count > 0,
            _ => true,
        };
        if (wanted && LabourStandards.For(kind, procedure.Shop.Labour) is not null)
        {
            Add(kind, WorkOrder.Label(kind), Practice);
        }
    }

    private void Repair(WorkKind kind, string instruction, Source source, bool dusty = false, string? name = null)
    {
        Defect[] defects = [.. repairs[kind]];
        if (defects.Length > 0)
        {
            Add(
                kind,
                instruction,
                source,
                new OperationTraits
                {
                    Name = name,
                    Labour = new ValueList<LabourTask>(labour.Of(defects, kind)),
                    IsInterruptible = true,
                    RaisesDust = dusty,
                    Materials = kind == WorkKind.GrindRust && !repairs[WorkKind.Fill].Any()
                        ? [.. FillerOf(defects), .. MaterialsOf(kind, defects)]
                        : MaterialsOf(kind, defects),
                });
        }
    }

    // What is done about an own defect, and a liner that comes off, are operations of their own in the place of their kind of work.
    private void Mend(WorkKind kind)
    {
        foreach (IGrouping<string, OwnDefect> same in procedure.Defects.OfType<OwnDefect>()
            .Where(own => own.Work?.Kind == kind).GroupBy(own => own.Code, StringComparer.Ordinal))
        {
            OwnDefect[] defects = [.. same];
            DefectWork work = defects[0].Work!;
            IReadOnlyList<MaterialNeed> filler = FillerOf(defects);
            Mending(kind, defects, work.Instruction, work.Source, work.RaisesDust, [.. filler, .. OwnMaterials(defects)], work.Vapours,
                filler.Count > 0 ? [.. defects[0].Cautions, .. procedure.Filler.Cautions, Cautions.EyeWash] : defects[0].Cautions);
        }

        Liner[] liners = kind == WorkKind.Clear ? [.. procedure.Defects.OfType<Liner>().Where(liner => liner.ComesOff)] : [];
        if (liners.Length > 0)
        {
            string asbestos = AsbestosRules.IsOpen(fixture.Survey)
                ? "not before the old adhesive was sampled for asbestos: " : string.Empty;
            Mending(kind, liners,
                asbestos + "cut the liner into strips, lift and bag it, scrape off its glue, let what is below dry, and survey the bare "
                + "fixture again before anything goes on it", LinerRule, true, MaterialsOf(WorkKind.Clear, liners), [],
                [Cautions.WetElectricity,
                    .. SurveyCautions.Found(fixture.Survey).Where(caution => caution.Hazard is Hazard.Asbestos or Hazard.Lead)]);
        }
    }

    private void Mending(
        WorkKind kind,
        IReadOnlyList<Defect> defects,
        string instruction,
        Source source,
        bool dusty,
        IReadOnlyList<MaterialNeed> materials,
        IReadOnlyList<Evaporation> vapours,
        IReadOnlyList<Caution> cautions)
    {
        string id = MendingId(fixture.Id, defects[0]);
        Operation mending = new()
        {
            Id = id,
            Kind = kind,
            Name = defects[0].Name,
            Instruction = instruction,
            Room = fixture.Room,
            Fixtures = itself,
            Labour = new ValueList<LabourTask>(labour.Mending(defects, id)),
            IsInterruptible = true,
            RaisesDust = dusty,
            IsLoud = dusty,
            Materials = new ValueList<MaterialNeed>(materials),
            Vapours = vapours,
            Cautions = new ValueList<Caution>(WorkCautions.Of(kind).Concat(cautions).Distinct()),
            Source = source,
        };
        Operations.Add(mending);
        Mendings.Add(mending);
    }

    public static string MendingId(string fixture, Defect defect) => fixture + "/defect/" + defect.Kind.Code;

    private IReadOnlyList<MaterialNeed> FillerOf(IEnumerable<Defect> defects)
    {
        HashSet<Defect> these = [.. defects];
        double volume = procedure.Filler.Items.Where(item => these.Contains(item.Defect)).Sum(item => item.Mixed.CubicMeters);
        FillerProduct product = procedure.Shop.Filler.Product;
        return volume <= 0 ? []
            : [new MaterialNeed(product.Id, product.Name, Volume.FromCubicMeters(volume), product.MixedDensity)];
    }

    // What the defects themselves say, for each, and what the shop has for their kind.
    private List<MaterialNeed> OwnMaterials(IEnumerable<OwnDefect> defects)
    {
        OwnDefect[] own = [.. defects];
        return MaterialNeed.Joined(
        [
            .. own.SelectMany(defect => (defect.Work?.Materials ?? []).Select(need => need.Times(defect.Count))),
            .. DefectMaterials.For(own, procedure.CoatedArea, procedure.Shop.DefectMaterials),
        ]);
    }

    // A hollow of one's own without work of its own is filled as a chip is.
    private static WorkKind? WorkOn(Defect defect) => defect switch
    {
        OwnDefect own => own.Work is null && own.Hollow is not null ? WorkKind.Fill : null,
        _ => LabourStandards.WorkOf(defect.Kind),
    };

    private void OwnWork(WorkKind after)
    {
        foreach (FixtureOption option in fixture.Options.Where(option => option.Kind == FixtureOptionKind.Work && option.After == after))
        {
            Operation own = option.Operation! with { Room = option.Operation!.Room ?? fixture.Room, Fixtures = [fixture.Id] };
            Operations.Add(OwnHours.Of(own, procedure.Shop, [procedure]));
        }
    }

    private void Add(WorkKind kind, string instruction, Source source) => Add(kind, instruction, source, new OperationTraits { Labour = labour.Hours(kind, 1), IsInterruptible = true });

    private void Add(WorkKind kind, string instruction, Source source, in OperationTraits traits)
    {
        Operation operation = new()
        {
            Id = traits.Id ?? Id(kind),
            Kind = kind,
            Name = traits.Name ?? WorkOrder.Label(kind),
            Instruction = instruction,
            Room = fixture.Room,
            Fixtures = itself,
            ByFixture = ValueList<FixtureInstruction>.Owning(new FixtureInstruction(fixture.Id, instruction, traits.CoarsestGrit, traits.FinestGrit)),
            Labour = traits.Labour ?? ValueList<LabourTask>.Empty,
            IsInterruptible = traits.IsInterruptible,
            Sprays = traits.Sprays,
            RaisesDust = traits.RaisesDust,
            IsLoud = traits.RaisesDust,
            Materials = traits.Materials ?? ValueList<MaterialNeed>.Empty,
            Cautions = traits.Product is CoatingProduct product
                ? WorkCautions.Of(kind, product, procedure.IsOverhead)
                : WorkCautions.Of(kind, procedure, UsesAcid),
            Source = source,
        };
        Operations.Add(ChemicalUse.On(operation, procedure));
    }

    private string Id(WorkKind kind) => fixture.Id + "/" + WorkOrder.Key(kind);

    private IReadOnlyList<MaterialNeed> MaterialsOf(WorkKind kind, IReadOnlyList<Defect> defects) =>
        DefectMaterials.For(kind, defects, procedure.CoatedArea, procedure.Shop.DefectMaterials);
}
