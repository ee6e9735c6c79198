using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>
/// Solvents, products, promoters and grains. Each stands as a whole where it is defined, and elsewhere as a whole or by its identifier.
/// </summary>
internal static class CoatingShapes
{
    public static ObjectShape<Solvent> WholeSolvent { get; } = new Fields<Solvent>("solvent")
        .With("name", Scalars.Text, solvent => solvent.Name, out Slot<string> name)
        .With("casNumber", Scalars.Text, solvent => solvent.CasNumber, out Slot<string> casNumber)
        .With("molarMass", Quantities.MolarMass, solvent => solvent.MolarMass, out Slot<MolarMass> molarMass)
        .With("density", Quantities.Density, solvent => solvent.Density, out Slot<Density> density)
        .With("lowerFlammableLimit", Quantities.Percent.OrNull(), solvent => solvent.Flammability.Lower,
            out Slot<Ratio?> lowerFlammableLimit)
        .WithOr("upperFlammableLimit", Quantities.Percent.OrNull(), solvent => solvent.Flammability.Upper, null,
            out Slot<Ratio?> upperFlammableLimit)
        .WithOr("flashPoint", Quantities.Temperature.OrNull(), solvent => solvent.Flammability.FlashPoint, null,
            out Slot<Temperature?> flashPoint)
        .WithOr("nonBurning", CommonShapes.Source.OrNull(), solvent => solvent.Flammability.Basis, null, out Slot<Source?> nonBurning)
        .WithOr("vapourPressure", Quantities.Pressure.OrNull(), solvent => solvent.Volatility.VapourPressure, null,
            out Slot<Pressure?> vapourPressure)
        .WithOr("boilingPoint", Quantities.Temperature.OrNull(), solvent => solvent.Volatility.BoilingPoint, null,
            out Slot<Temperature?> boilingPoint)
        .WithOr("notVolatile", CommonShapes.Source.OrNull(), solvent => solvent.Volatility.Basis, null, out Slot<Source?> notVolatile)
        .With("source", CommonShapes.Source, solvent => solvent.Source, out Slot<Source> source)
        .Making(v => new Solvent
        {
            Name = name(v),
            CasNumber = casNumber(v),
            MolarMass = molarMass(v),
            Density = density(v),
            Flammability = FlammabilityOf(lowerFlammableLimit(v), upperFlammableLimit(v), flashPoint(v), nonBurning(v)),
            Volatility = VolatilityOf(vapourPressure(v), boilingPoint(v), notVolatile(v)),
            Source = source(v),
        });

    public static ReferenceShape<Solvent> Solvent { get; } = new(
        WholeSolvent, "a solvent", solvent => solvent.CasNumber, ById(Solvents.All, solvent => solvent.CasNumber));

    public static ObjectShape<SolventShare> SolventShare { get; } = new Fields<SolventShare>("solventShare")
        .With("solvent", Solvent, share => share.Solvent, out Slot<Solvent> solvent)
        .With("massFraction", Quantities.Percent, share => share.MassFraction, out Slot<Ratio> massFraction)
        .Making(v => new SolventShare(solvent(v), massFraction(v)));

    public static ObjectShape<CoatingComponent> Component { get; } = new Fields<CoatingComponent>("coatingComponent")
        .With("id", Scalars.Text, can => can.Id, out Slot<string> id)
        .With("name", Scalars.Text, can => can.Name, out Slot<string> name)
        .Readings(CoatingComponent.Inputs, out Slot<InputValues> readings)
        .Optional("solvents", CommonShapes.List(SolventShare), can => can.Solvents, (can, solvents) => can with { Solvents = solvents })
        .Optional("shippingSizes", CommonShapes.List(Quantities.Liquid), can => can.ShippingSizes,
            (can, sizes) => can with { ShippingSizes = sizes })
        .Making(v => new CoatingComponent(id(v), name(v), readings(v)));

    public static ObjectShape<MixPart> Part { get; } = new Fields<MixPart>("mixPart")
        .With("component", Component, part => part.Component, out Slot<CoatingComponent> component)
        .With("parts", Scalars.Number, part => part.Parts, out Slot<double> parts)
        .WithOr("statedPer100OfFirst", Scalars.Number.OrNull(), part => part.StatedPer100OfFirst, null, out Slot<double?> stated)
        .Making(v => new MixPart(component(v), parts(v), stated(v)));

    public static ObjectShape<CoatOperation> Operation { get; } = new Fields<CoatOperation>("coatOperation")
        .With("id", Scalars.Text, operation => operation.Id, out Slot<string> id)
        .With("name", Scalars.Text, operation => operation.Name, out Slot<string> name)
        .With("instruction", Scalars.Text, operation => operation.Instruction, out Slot<string> instruction)
        .With("setUp", Quantities.Duration, operation => operation.SetUp, out Slot<TimeSpan> setUp)
        .Optional("perSquareMeter", Quantities.Duration, operation => operation.PerSquareMeter,
            (operation, time) => operation with { PerSquareMeter = time })
        .Optional("people", Scalars.Count, operation => operation.People, (operation, people) => operation with { People = people })
        .Optional("wait", Quantities.Duration, operation => operation.Wait, (operation, wait) => operation with { Wait = wait })
        .Maybe("within", Quantities.Duration, operation => operation.Within, (operation, within) => operation with { Within = within })
        .Optional("cures", Scalars.YesNo, operation => operation.Cures, (operation, said) => operation with { Cures = said })
        .Optional("tools", CommonShapes.List(Scalars.Text), operation => operation.Tools,
            (operation, tools) => operation with { Tools = tools })
        .Optional("cautions", CommonShapes.List(CommonShapes.Caution), operation => operation.Cautions,
            (operation, cautions) => operation with { Cautions = cautions })
        .MaybeOf("conditions", CureShapes.SprayLimits, operation => operation.Conditions,
            (operation, conditions) => operation with { Conditions = conditions })
        .With("source", CommonShapes.Source, operation => operation.Source, out Slot<Source> source)
        .Making(v => new CoatOperation
        {
            Id = id(v), Name = name(v), Instruction = instruction(v), SetUp = setUp(v), Source = source(v),
        });

    public static ObjectShape<PartVolume> PartVolume { get; } = new Fields<PartVolume>("partVolume")
        .With("component", Scalars.Text, one => one.Component, out Slot<string> component)
        .With("volume", Quantities.Liquid, one => one.Volume, out Slot<Volume> volume)
        .Making(v => new PartVolume(component(v), volume(v)));

    public static ObjectShape<FlowFigures> Flow { get; } = new Fields<FlowFigures>("flowFigures")
        .With("fluidity", Quantities.Fluidity, flow => flow.Fluidity, out Slot<double> fluidity)
        .With("surfaceTension", Quantities.SurfaceTension, flow => flow.SurfaceTension, out Slot<ForcePerLength> surfaceTension)
        .Optional("sagAllowed", Quantities.Tape, flow => flow.SagAllowed, (flow, sag) => flow with { SagAllowed = sag })
        .Optional("wavelength", Quantities.Tape, flow => flow.Wavelength, (flow, wavelength) => flow with { Wavelength = wavelength })
        .Optional("rippleLeft", Scalars.Number, flow => flow.RippleLeft, (flow, part) => flow with { RippleLeft = part })
        .Optional("yieldStress", Quantities.Pressure, flow => flow.YieldStress, (flow, stress) => flow with { YieldStress = stress })
        .With("source", CommonShapes.Source, flow => flow.Source, out Slot<Source> source)
        .Making(v => new FlowFigures { Fluidity = fluidity(v), SurfaceTension = surfaceTension(v), Source = source(v) });

    public static ObjectShape<CoatingProduct> WholeProduct { get; } = new Fields<CoatingProduct>("coatingProduct")
        .With("id", Scalars.Text, product => product.Id, out Slot<string> id)
        .With("name", Scalars.Text, product => product.Name, out Slot<string> name)
        .With("role", new WordShape<CoatingRole>(), product => product.Role, out Slot<CoatingRole> role)
        .Optional("form", new WordShape<CoatingForm>(), product => product.Form, (product, form) => product with { Form = form })
        .With("parts", CommonShapes.List(Part), product => product.Parts, out Slot<IReadOnlyList<MixPart>> parts)
        .With("reducer", Component.OrNull(), product => product.Reducer, out Slot<CoatingComponent?> reducer)
        .Maybe("ratioTolerance", Quantities.Percent, product => product.RatioTolerance,
            (product, tolerance) => product with { RatioTolerance = tolerance })
        .With("volumeSolids", Quantities.Percent, product => product.VolumeSolids, out Slot<Ratio> volumeSolids)
        .Optional("minimumReducer", Quantities.Percent, product => product.MinimumReducer,
            (product, share) => product with { MinimumReducer = share })
        .With("maximumReducer", Quantities.Percent, product => product.MaximumReducer, out Slot<Ratio> maximumReducer)
        .With("minimumDryFilm", Quantities.Film, product => product.MinimumDryFilm, out Slot<Length> minimumDryFilm)
        .With("maximumDryFilm", Quantities.Film, product => product.MaximumDryFilm, out Slot<Length> maximumDryFilm)
        .With("solvents", CommonShapes.List(SolventShare), product => product.Solvents, out Slot<IReadOnlyList<SolventShare>> solvents)
        .With("isocyanateFraction", Quantities.Percent, product => product.IsocyanateFraction, out Slot<Ratio> isocyanateFraction)
        .With("cure", CureShapes.Times, product => product.Cure, out Slot<CureTimes> cure)
        .MaybeOf("cureTable", CureShapes.Table, product => product.CureTable, (product, table) => product with { CureTable = table })
        .With("sprayLimits", CureShapes.SprayLimits, product => product.SprayLimits, out Slot<Climate.SprayLimits> sprayLimits)
        .With("materials", CommonShapes.List(MaterialShapes.Material), product => product.Materials,
            out Slot<IReadOnlyList<FixtureMaterial>> materials)
        .Optional("goesOver", CommonShapes.List(new WordShape<CoatingRole>()), product => product.GoesOver,
            (product, roles) => product with { GoesOver = roles })
        .Maybe("scattering", Quantities.Scattering, product => product.Scattering,
            (product, scattering) => product with { Scattering = scattering })
        .Maybe("colour", CommonShapes.Colour, product => product.Colour, (product, colour) => product with { Colour = colour })
        .MaybeOf("flow", Flow, product => product.Flow, (product, flow) => product with { Flow = flow })
        .Optional("cautions", CommonShapes.List(CommonShapes.Caution), product => product.Cautions,
            (product, cautions) => product with { Cautions = cautions })
        .Optional("operations", CommonShapes.List(Operation), product => product.Operations,
            (product, operations) => product with { Operations = operations })
        .With("kitSizes", CommonShapes.List(Quantities.Liquid), product => product.KitSizes, out Slot<IReadOnlyList<Volume>> kitSizes)
        .With("source", CommonShapes.Source, product => product.Source, out Slot<Source> source)
        .Making(v => new CoatingProduct
        {
            Id = id(v),
            Name = name(v),
            Role = role(v),
            Parts = parts(v),
            Reducer = reducer(v),
            VolumeSolids = volumeSolids(v),
            MaximumReducer = maximumReducer(v),
            MinimumDryFilm = minimumDryFilm(v),
            MaximumDryFilm = maximumDryFilm(v),
            Solvents = solvents(v),
            IsocyanateFraction = isocyanateFraction(v),
            Cure = cure(v),
            SprayLimits = sprayLimits(v),
            Materials = materials(v),
            KitSizes = kitSizes(v),
            Source = source(v),
        });

    public static ReferenceShape<CoatingProduct> Product { get; } = new(WholeProduct, "a product", product => product.Id,
        GenericProducts());

    public static ObjectShape<CoatingLayer> Layer { get; } = new Fields<CoatingLayer>("coatingLayer")
        .With("product", Product, layer => layer.Product, out Slot<CoatingProduct> product)
        .With("dryFilmPerCoat", Quantities.Film, layer => layer.DryFilmPerCoat, out Slot<Length> dryFilmPerCoat)
        .With("coats", Scalars.Count, layer => layer.Coats, out Slot<int> coats)
        .WithOr("reducer", Quantities.Percent, layer => layer.Reducer, default, out Slot<Ratio> reducer)
        .MakingTogether(() => GenericCatalogue.EpoxyUrethaneSystem.Layers[0],
            v => new CoatingLayer(product(v), dryFilmPerCoat(v), coats(v), reducer(v)));

    public static ObjectShape<AdhesionPromoter> WholePromoter { get; } = new Fields<AdhesionPromoter>("adhesionPromoter")
        .With("id", Scalars.Text, promoter => promoter.Id, out Slot<string> id)
        .With("name", Scalars.Text, promoter => promoter.Name, out Slot<string> name)
        .With("spreadingRate", Quantities.SpreadingRate, promoter => promoter.SpreadingRate, out Slot<SpreadingRate> spreadingRate)
        .With("flash", Quantities.Duration, promoter => promoter.Flash, out Slot<TimeSpan> flash)
        .With("openTime", Quantities.Duration, promoter => promoter.OpenTime, out Slot<TimeSpan> openTime)
        .Maybe("mixedLife", Quantities.Duration, promoter => promoter.MixedLife, (promoter, life) => promoter with { MixedLife = life })
        .Optional("solvents", CommonShapes.List(SolventShare), promoter => promoter.Solvents,
            (promoter, solvents) => promoter with { Solvents = solvents })
        .With("materials", CommonShapes.List(MaterialShapes.Material), promoter => promoter.Materials,
            out Slot<IReadOnlyList<FixtureMaterial>> materials)
        .With("source", CommonShapes.Source, promoter => promoter.Source, out Slot<Source> source)
        .Making(v => new AdhesionPromoter
        {
            Id = id(v),
            Name = name(v),
            SpreadingRate = spreadingRate(v),
            Flash = flash(v),
            OpenTime = openTime(v),
            Materials = materials(v),
            Source = source(v),
        });

    public static ReferenceShape<AdhesionPromoter> Promoter { get; } = new(
        WholePromoter, "a promoter", promoter => promoter.Id,
            ById([GenericCatalogue.SilanePromoter, GenericCatalogue.PlasticPromoter], promoter => promoter.Id));

    public static ObjectShape<SlipAdditive> WholeAdditive { get; } = new Fields<SlipAdditive>("slipAdditive")
        .With("id", Scalars.Text, additive => additive.Id, out Slot<string> id)
        .With("name", Scalars.Text, additive => additive.Name, out Slot<string> name)
        .With("diameter", Quantities.Film, additive => additive.Diameter, out Slot<Length> diameter)
        .With("density", Quantities.Density, additive => additive.Density, out Slot<Density> density)
        .With("source", CommonShapes.Source, additive => additive.Source, out Slot<Source> source)
        .Making(v => new SlipAdditive(id(v), name(v), diameter(v), density(v), source(v)));

    public static ReferenceShape<SlipAdditive> Additive { get; } = new(
        WholeAdditive, "slip-resistant grains", additive => additive.Id, ById([GenericCatalogue.PolymerBeads], additive => additive.Id));

    public static Dictionary<string, T> ById<T>(IEnumerable<T> items, Func<T, string> idOf) =>
        items.ToDictionary(idOf, StringComparer.Ordinal);

    private static Dictionary<string, CoatingProduct> GenericProducts() =>
        ById([GenericCatalogue.EpoxyPrimer, GenericCatalogue.AcrylicUrethaneTopcoat, GenericCatalogue.AcrylicUrethaneClear],
            product => product.Id);

    // The two forms of a document exclude each other, as those of the library do.
    private static Flammability FlammabilityOf(Ratio? lower, Ratio? upper, Temperature? flash, Source? nonBurning) =>
        lower is Ratio limit
            ? nonBurning is null ? Flammability.Between(limit, upper, flash)
                : throw new ArgumentException("NonBurning stands beside LowerFlammableLimit; leave out the one that is wrong.")
            : upper is not null || flash is not null
                ? throw new ArgumentException("UpperFlammableLimit or FlashPoint stands without LowerFlammableLimit.")
                : nonBurning is null ? Flammability.Unknown : Flammability.NonBurning(nonBurning);

    private static Volatility VolatilityOf(Pressure? vapourPressure, Temperature? boilingPoint, Source? notVolatile) =>
        notVolatile is not null && boilingPoint is Temperature boils && vapourPressure is null ? Volatility.NotVolatile(boils, notVolatile)
        : notVolatile is not null || boilingPoint is not null
            ? throw new ArgumentException("NotVolatile and BoilingPoint stand together, and without VapourPressure.")
        : vapourPressure is Pressure pressure ? Volatility.At20Celsius(pressure) : Volatility.Unknown;
}
