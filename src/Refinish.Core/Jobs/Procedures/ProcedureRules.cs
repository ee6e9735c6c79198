using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Substrates;

namespace Refinish.Jobs;

/// <summary>The rules by which the operations on one fixture follow from survey, surface, system and options.</summary>
internal sealed class ProcedureRules(Procedure procedure, SurveyPolicy policy, CoatList coats, ProcedureLabour labour)
{
    private static readonly Source Practice =
        Source.CommonPractice("order and manner of work in refinishing in place; the data sheets of the products go first");

    private static readonly Source OldCoatRule = Source.CommonPractice("a kept coating is an organic surface: abraded, not etched, and "
        + "without silane for glass; the data sheet of the new system goes first");

    private static readonly Source CrackRule = Source.CommonPractice(
        "cracks in glass-fibre and acrylic sheet are opened and reinforced before they are filled; "
            + "the data sheets of resin and fabric go first");

    private readonly FixtureJob fixture = procedure.Fixture;
    private readonly ValueList<string> itself = ValueList<string>.Owning(procedure.Fixture.Id);
    private readonly Procedure[] alone = [procedure];
    private readonly DefectMending mending = new(procedure, labour);
    private readonly ILookup<WorkKind?, Defect> repairs = procedure.Defects.ToLookup(DefectMending.WorkOn);

    // The system's own preparation of what lies under it goes before the general rule.
    private readonly SystemStep? ownKey = procedure.System.Steps.FirstOrDefault(step =>
        step.Kind is SystemStepKind.Etch or SystemStepKind.Abrade && step.Serves(procedure.Surface));

    public List<Operation> Operations { get; } = [];

    public List<Operation> Mendings { get; } = [];

    public List<Operation> Common { get; } = [];

    private bool IsEtched => procedure.Surface.MayBeEtched;

    public void Make()
    {
        foreach (WorkKind kind in WorkOrder.BeforeCoats)
        {
            Place(kind);
        }

        Promote();
        Spray();
        foreach (WorkKind kind in WorkOrder.AfterCoats)
        {
            Place(kind);
        }
    }

    // The work of a kind, then what mends defects in its place, then what was ordered after it.
    private void Place(WorkKind kind)
    {
        if (Prepared(kind) is Operation operation)
        {
            Add(operation);
        }

        foreach (Operation mended in mending.Of(kind))
        {
            Operations.Add(mended);
            Mendings.Add(mended);
        }

        Operations.AddRange(OwnHours.Ordered(fixture, kind, procedure.Shop, alone));
    }

    private Operation? Prepared(WorkKind kind) => kind switch
    {
        WorkKind.Clear => Plain(kind, ClearingText.Of(fixture.Fixture)),
        WorkKind.RemoveSilicone => Repair(kind, "digest and scrape silicone from the joints, wipe, repeat the water-break test"),
        WorkKind.LayOnStripper => !procedure.OldCoat.ComesOff ? null
            : Plain(kind, "lay on a permitted stripper as its sheet says, without methylene chloride; cover it and leave the room"),
        WorkKind.Strip => Strip(PeelingCoat.GradeName(policy.MinimumAdhesion)),
        WorkKind.Descale => Plain(kind, IsEtched
            ? "clean off lime, rust stains and soap film with a descaler, rinse"
            : "clean off lime and soap film with a mild cleaner, no acid; rinse"),
        WorkKind.Degrease => Plain(kind, procedure.Surface.CrazesInSolvent
            ? "degrease with a mild wipe after a spot test, since solvents craze it where it is under stress; repeat until water no longer breaks"
            : "degrease twice with fresh cloths until water no longer breaks"),
        WorkKind.Regrout => Repair(
            kind,
            (AsbestosRules.IsOpen(fixture.Survey) ? "not before adhesive and board were sampled for asbestos: " : string.Empty)
                + "rake out and replace grout" + (procedure.Defects.Any(defect => defect is LooseTiles) ? ", fix loose tiles" : string.Empty)),
        WorkKind.Key => Key(procedure.Surface),
        // Work that is usually part of its neighbour stands alone only where the shop has a standard for it.
        WorkKind.RinseAndDry => IsApart(kind) ? Plain(kind, WorkOrder.Label(kind)) : null,
        WorkKind.SpotPrime => repairs[WorkKind.GrindRust].Any() && IsApart(kind) ? Plain(kind, WorkOrder.Label(kind)) : null,
        WorkKind.SandFiller => procedure.Filler.Items.Count > 0 && IsApart(kind) ? Plain(kind, WorkOrder.Label(kind)) : null,
        WorkKind.GrindRust => Repair(kind, "grind rust to bright metal with a margin, treat it, spot prime within the hour"),
        WorkKind.ReinforceCrack => Reinforce([.. procedure.Defects.OfType<Crack>()]),
        WorkKind.Fill => Fill([.. repairs[WorkKind.Fill]]),
        WorkKind.SealCrazing => Repair(kind, "abrade the crazed places and seal them with a further primer coat"),
        WorkKind.Tack => procedure.Filler.Items.Count == 0 || IsApart(WorkKind.SandFiller)
            ? Plain(kind, "blow out, vacuum, wipe and tack off the dust")
            : Gritted(
                Plain(kind, "sand the filler flush and feather the edge, blow out, vacuum, wipe and tack off the dust"),
                "sand the filler, tack off", 120, 220),
        WorkKind.Mask => Plain(kind, "mask edges, walls and openings on the dry surface"),
        WorkKind.Demask => Plain(kind, "take off masking and covers, vacuum, clean up"),
        WorkKind.FitTrim => fixture.Options.FirstOrDefault(option => option.Kind == FixtureOptionKind.DrainTrim) is FixtureOption trim
            ? Begun(kind, "fit new drain and overflow trim in sealant", Practice, labour.Hours(kind, (double)trim.Quantity)) : null,
        WorkKind.Caulk => Plain(kind, ClearingText.Back(fixture.Fixture)),
        WorkKind.Inspect => Plain(
            kind, "inspect under side light, measure the film where a gauge can, explain care and waits, hand over"),
        _ => null,
    };

    private bool IsApart(WorkKind kind) => LabourStandards.For(kind, procedure.Shop.Labour) is not null;

    private Operation Plain(WorkKind kind, string instruction) => Begun(kind, instruction, Practice, labour.Hours(kind, 1));

    private Operation? Repair(WorkKind kind, string instruction)
    {
        Defect[] defects = [.. repairs[kind]];
        return defects.Length == 0 ? null
            : Begun(kind, instruction, Practice, new ValueList<LabourTask>(labour.Of(defects, kind))) with
            {
                Materials = kind == WorkKind.GrindRust && !repairs[WorkKind.Fill].Any()
                    ? [.. mending.FillerOf(defects), .. mending.MaterialsOf(kind, defects)]
                    : mending.MaterialsOf(kind, defects),
            };
    }

    private Operation? Strip(string least) => procedure.OldCoat.ComesOff
        ? Repair(WorkKind.Strip, "scrape off all of the old coat, which holds less than " + least
            + "; neutralise as the stripper's sheet says, rinse twice, dry; residue into a closed can, none into the drain")
        : Repair(WorkKind.Strip, procedure.OldCoat.IsTested
            ? "take off what is loose of the old coat, feather the edges, keep the rest"
            : "tape test the old coat: keep it from " + least
                + " upwards, otherwise strip it by a permitted way; take off what is loose and feather the edges") is Operation patches
            ? patches with { Name = "take off loose old coat" } : null;

    private Operation Key(FixtureMaterial under)
    {
        string rinse = IsEtched
            ? "; rinse off all etchant and dust, dry with heat and air, joints included" : "; rinse off the dust, dry with air";
        bool abrades = ownKey?.Kind != SystemStepKind.Etch;
        Operation key = Begun(
            WorkKind.Key, (ownKey?.Name ?? under.KeyedBy.Instruction) + rinse,
            under.IsOldCoating ? OldCoatRule : ownKey?.Source ?? Practice, labour.Hours(WorkKind.Key, 1)) with
        {
            RaisesDust = abrades, IsLoud = abrades,
        };
        string name = IsEtched ? key.Name : "abrade, rinse and dry";
        return ownKey is null
            ? Gritted(key, name, under.KeyedBy.CoarsestGrit, under.KeyedBy.FinestGrit) : key with { Name = name };
    }

    // Gelcoat and acrylic are sheets that flex: filler alone opens again. Enamel, china and tile are rigid, and their cracks are only
    // filled.
    private Operation? Reinforce(Crack[] cracks) => cracks.Length == 0 || !fixture.Survey.Material.IsFlexibleSheet ? null
        : Begun(
            WorkKind.ReinforceCrack,
            "drill the ends of each crack, open it to a wide vee, and laminate glass fabric over it in resin: from behind where the "
                + "back can be reached, otherwise in a recess ground into the face; let it harden",
            CrackRule, labour.Hours(WorkKind.ReinforceCrack, cracks.Sum(crack => crack.Length.Meters))) with
        {
            Materials = mending.MaterialsOf(WorkKind.ReinforceCrack, cracks),
        };

    private Operation? Fill(Defect[] defects) => defects.Length == 0 ? null
        : Begun(
            WorkKind.Fill, "fill hollows in lifts and let them cure", Practice,
            new ValueList<LabourTask>(labour.Of(defects, WorkKind.Fill))) with
        {
            Materials =
            [
                .. mending.FillerOf(procedure.Defects.Where(defect => defect is not OwnDefect { Work: not null })),
                .. mending.MaterialsOf(WorkKind.Fill, defects), .. mending.OwnMaterials([.. defects.OfType<OwnDefect>()]),
            ],
        };

    private void Promote()
    {
        if (procedure.Promoter is AdhesionPromoter promoter && procedure.SquareMeters > 0)
        {
            Add(Begun(
                WorkKind.Promote, "wipe on " + promoter.Name + " with a lint-free cloth, one thin pass, and coat within its window",
                promoter.Source, labour.Hours(WorkKind.Promote, 1)) with
            {
                Materials = ValueList<MaterialNeed>.Owning(
                    new MaterialNeed(promoter.Id, promoter.Name, new PromoterQuantity(procedure.CoatedArea, promoter).Volume)),
            });
        }
    }

    private void Spray()
    {
        foreach (PlannedCoat coat in coats.Coats)
        {
            CoatingProduct product = coat.Layer.Product;
            Add(Begun(coat.Kind, "spray " + product.Name, product.Source, labour.Hours(coat.Kind, 1), product) with
            {
                Id = fixture.Id + "/coat/" + Figures.Fixed(coat.Number, 0),
            });
            if (coat.TakesGrains)
            {
                string grains = coats.SlipFloor is null ? "grains"
                    : Measure.Mass.FormatBoth(coats.SlipFloor.ToWeighOut.Kilograms) + " of " + coats.SlipFloor.Additive.Name;
                Add(Begun(
                    WorkKind.Broadcast, "broadcast " + grains + " evenly over the wet floor", Practice,
                    labour.Hours(WorkKind.Broadcast, coats.SlipFloor?.Floor ?? procedure.CoatedArea, 1), product));
            }
        }
    }

    private void Add(Operation operation)
    {
        operation = ChemicalUse.On(operation, procedure);
        Operations.Add(operation);
        Common.Add(operation);
    }

    private Operation Gritted(Operation operation, string name, int? coarsest, int? finest) => operation with
    {
        Name = name,
        ByFixture = ValueList<FixtureInstruction>.Owning(new FixtureInstruction(fixture.Id, operation.Instruction, coarsest, finest)),
    };

    private Operation Begun(
        WorkKind kind, string instruction, Source source, IReadOnlyList<LabourTask> hours, CoatingProduct? product = null)
    {
        bool isDusty = kind is WorkKind.Strip or WorkKind.Regrout or WorkKind.GrindRust or WorkKind.ReinforceCrack or WorkKind.Fill
            or WorkKind.SealCrazing or WorkKind.Tack;
        bool sprays = kind is WorkKind.SprayPrimer or WorkKind.SprayTopcoat;
        return new Operation
        {
            Id = fixture.Id + "/" + WorkOrder.Key(kind),
            Kind = kind,
            Name = WorkOrder.Label(kind),
            Instruction = instruction,
            Room = fixture.Room,
            Fixtures = itself,
            ByFixture = ValueList<FixtureInstruction>.Owning(new FixtureInstruction(fixture.Id, instruction, null, null)),
            Labour = hours,
            // What is wet is not left, nor metal that is bright until it is primed.
            IsInterruptible = !sprays && kind is not (WorkKind.Key or WorkKind.Promote or WorkKind.Broadcast)
                && (kind != WorkKind.GrindRust || !IsApart(WorkKind.SpotPrime)),
            Sprays = sprays,
            RaisesDust = isDusty,
            IsLoud = isDusty,
            Cautions = product is not null
                ? WorkCautions.Of(kind, product, procedure.IsOverhead)
                : WorkCautions.Of(kind, procedure, IsEtched || ownKey?.Kind == SystemStepKind.Etch),
            Source = source,
        };
    }
}
