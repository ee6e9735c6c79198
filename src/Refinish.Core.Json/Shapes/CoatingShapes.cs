using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Fixtures;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>
/// Solvents, products, promoters and grains. Each stands as a whole where it is defined, and elsewhere as a whole or by its identifier.
/// </summary>
internal static class CoatingShapes
{
    public static ObjectShape<Solvent> WholeSolvent { get; } = new Fields<Solvent>("solvent")
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("casNumber", Text, it => it.CasNumber, out Slot<string> casNumber)
        .With("molarMass", Quantities.MolarMass, it => it.MolarMass, out Slot<MolarMass> molarMass)
        .With("density", Quantities.Density, it => it.Density, out Slot<Density> density)
        .With("lowerFlammableLimit", Percent.OrNull(), it => it.Flammability.Lower, out Slot<Ratio?> lowerFlammableLimit)
        .WithOr("upperFlammableLimit", Percent.OrNull(), it => it.Flammability.Upper, null, out Slot<Ratio?> upperFlammableLimit)
        .WithOr("flashPoint", Quantities.Temperature.OrNull(), it => it.Flammability.FlashPoint, null, out Slot<Temperature?> flashPoint)
        .WithOr("nonBurning", CommonShapes.Source.OrNull(), it => it.Flammability.Basis, null, out Slot<Source?> nonBurning)
        .WithOr("vapourPressure", Quantities.Pressure.OrNull(), it => it.Volatility.VapourPressure, null,
            out Slot<Pressure?> vapourPressure)
        .WithOr("boilingPoint", Quantities.Temperature.OrNull(), it => it.Volatility.BoilingPoint, null,
            out Slot<Temperature?> boilingPoint)
        .WithOr("notVolatile", CommonShapes.Source.OrNull(), it => it.Volatility.Basis, null, out Slot<Source?> notVolatile)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
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
        .With("solvent", Solvent, it => it.Solvent, out Slot<Solvent> solvent)
        .With("massFraction", Percent, it => it.MassFraction, out Slot<Ratio> massFraction)
        .Making(v => new SolventShare(solvent(v), massFraction(v)));

    public static ObjectShape<CoatingComponent> Component { get; } = new Fields<CoatingComponent>("coatingComponent")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .Readings(CoatingComponent.Inputs, out Slot<InputValues> readings)
        .Optional("solvents", List(SolventShare), it => it.Solvents, (it, solvents) => it with { Solvents = solvents })
        .Optional("shippingSizes", List(Liquid), it => it.ShippingSizes, (it, sizes) => it with { ShippingSizes = sizes })
        .Making(v => new CoatingComponent(id(v), name(v), readings(v)));

    public static ObjectShape<MixPart> Part { get; } = new Fields<MixPart>("mixPart")
        .With("component", Component, it => it.Component, out Slot<CoatingComponent> component)
        .With("parts", Number, it => it.Parts, out Slot<double> parts)
        .WithOr("statedPer100OfFirst", Number.OrNull(), it => it.StatedPer100OfFirst, null, out Slot<double?> stated)
        .Making(v => new MixPart(component(v), parts(v), stated(v)));

    public static ObjectShape<CoatOperation> Operation { get; } = new Fields<CoatOperation>("coatOperation")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("instruction", Text, it => it.Instruction, out Slot<string> instruction)
        .With("setUp", Quantities.Duration, it => it.SetUp, out Slot<TimeSpan> setUp)
        .Optional("perSquareMeter", Quantities.Duration, it => it.PerSquareMeter, (it, time) => it with { PerSquareMeter = time })
        .Optional("people", Count, it => it.People, (it, people) => it with { People = people })
        .Optional("wait", Quantities.Duration, it => it.Wait, (it, wait) => it with { Wait = wait })
        .Maybe("within", Quantities.Duration, it => it.Within, (it, within) => it with { Within = within })
        .Optional("cures", YesNo, it => it.Cures, (it, said) => it with { Cures = said })
        .Optional("tools", List(Text), it => it.Tools, (it, tools) => it with { Tools = tools })
        .Optional("cautions", List(CommonShapes.Caution), it => it.Cautions, (it, cautions) => it with { Cautions = cautions })
        .MaybeOf("conditions", CureShapes.SprayLimits, it => it.Conditions, (it, conditions) => it with { Conditions = conditions })
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new CoatOperation
        {
            Id = id(v), Name = name(v), Instruction = instruction(v), SetUp = setUp(v), Source = source(v),
        });

    public static ObjectShape<PartVolume> PartVolume { get; } = new Fields<PartVolume>("partVolume")
        .With("component", Text, it => it.Component, out Slot<string> component)
        .With("volume", Liquid, it => it.Volume, out Slot<Volume> volume)
        .Making(v => new PartVolume(component(v), volume(v)));

    public static ObjectShape<FlowFigures> Flow { get; } = new Fields<FlowFigures>("flowFigures")
        .With("fluidity", Fluidity, it => it.Fluidity, out Slot<double> fluidity)
        .With("surfaceTension", SurfaceTension, it => it.SurfaceTension, out Slot<ForcePerLength> surfaceTension)
        .Optional("sagAllowed", Tape, it => it.SagAllowed, (it, sag) => it with { SagAllowed = sag })
        .Optional("wavelength", Tape, it => it.Wavelength, (it, wavelength) => it with { Wavelength = wavelength })
        .Optional("rippleLeft", Number, it => it.RippleLeft, (it, part) => it with { RippleLeft = part })
        .Optional("yieldStress", Quantities.Pressure, it => it.YieldStress, (it, stress) => it with { YieldStress = stress })
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new FlowFigures { Fluidity = fluidity(v), SurfaceTension = surfaceTension(v), Source = source(v) });

    public static ObjectShape<CoatingProduct> WholeProduct { get; } = new Fields<CoatingProduct>("coatingProduct")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("role", new WordShape<CoatingRole>(), it => it.Role, out Slot<CoatingRole> role)
        .Optional("form", new WordShape<CoatingForm>(), it => it.Form, (it, form) => it with { Form = form })
        .With("parts", List(Part), it => it.Parts, out Slot<IReadOnlyList<MixPart>> parts)
        .With("reducer", Component.OrNull(), it => it.Reducer, out Slot<CoatingComponent?> reducer)
        .Maybe("ratioTolerance", Percent, it => it.RatioTolerance, (it, tolerance) => it with { RatioTolerance = tolerance })
        .With("volumeSolids", Percent, it => it.VolumeSolids, out Slot<Ratio> volumeSolids)
        .Optional("minimumReducer", Percent, it => it.MinimumReducer, (it, share) => it with { MinimumReducer = share })
        .With("maximumReducer", Percent, it => it.MaximumReducer, out Slot<Ratio> maximumReducer)
        .With("minimumDryFilm", Film, it => it.MinimumDryFilm, out Slot<Length> minimumDryFilm)
        .With("maximumDryFilm", Film, it => it.MaximumDryFilm, out Slot<Length> maximumDryFilm)
        .With("solvents", List(SolventShare), it => it.Solvents, out Slot<IReadOnlyList<SolventShare>> solvents)
        .With("isocyanateFraction", Percent, it => it.IsocyanateFraction, out Slot<Ratio> isocyanateFraction)
        .With("cure", CureShapes.Times, it => it.Cure, out Slot<CureTimes> cure)
        .MaybeOf("cureTable", CureShapes.Table, it => it.CureTable, (it, table) => it with { CureTable = table })
        .With("sprayLimits", CureShapes.SprayLimits, it => it.SprayLimits, out Slot<Climate.SprayLimits> sprayLimits)
        .With("materials", List(MaterialShapes.Material), it => it.Materials, out Slot<IReadOnlyList<FixtureMaterial>> materials)
        .Optional("goesOver", List(new WordShape<CoatingRole>()), it => it.GoesOver, (it, roles) => it with { GoesOver = roles })
        .Maybe("scattering", Scattering, it => it.Scattering, (it, scattering) => it with { Scattering = scattering })
        .Maybe("colour", Colour, it => it.Colour, (it, colour) => it with { Colour = colour })
        .MaybeOf("flow", Flow, it => it.Flow, (it, flow) => it with { Flow = flow })
        .Optional("cautions", List(CommonShapes.Caution), it => it.Cautions, (it, cautions) => it with { Cautions = cautions })
        .Optional("operations", List(Operation), it => it.Operations, (it, operations) => it with { Operations = operations })
        .With("kitSizes", List(Liquid), it => it.KitSizes, out Slot<IReadOnlyList<Volume>> kitSizes)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new CoatingProduct
        {
            Id = id(v), Name = name(v), Role = role(v), Parts = parts(v), Reducer = reducer(v), VolumeSolids = volumeSolids(v),
            MaximumReducer = maximumReducer(v), MinimumDryFilm = minimumDryFilm(v), MaximumDryFilm = maximumDryFilm(v),
            Solvents = solvents(v), IsocyanateFraction = isocyanateFraction(v), Cure = cure(v), SprayLimits = sprayLimits(v),
            Materials = materials(v), KitSizes = kitSizes(v), Source = source(v),
        });

    public static ReferenceShape<CoatingProduct> Product { get; } = new(WholeProduct, "a product", product => product.Id,
        GenericProducts());

    public static ObjectShape<CoatingLayer> Layer { get; } = new Fields<CoatingLayer>("coatingLayer")
        .With("product", Product, it => it.Product, out Slot<CoatingProduct> product)
        .With("dryFilmPerCoat", Film, it => it.DryFilmPerCoat, out Slot<Length> dryFilmPerCoat)
        .With("coats", Count, it => it.Coats, out Slot<int> coats)
        .WithOr("reducer", Percent, it => it.Reducer, default, out Slot<Ratio> reducer)
        .MakingTogether(() => GenericCatalogue.EpoxyUrethaneSystem.Layers[0],
            v => new CoatingLayer(product(v), dryFilmPerCoat(v), coats(v), reducer(v)));

    public static ObjectShape<AdhesionPromoter> WholePromoter { get; } = new Fields<AdhesionPromoter>("adhesionPromoter")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("spreadingRate", Quantities.SpreadingRate, it => it.SpreadingRate, out Slot<SpreadingRate> spreadingRate)
        .With("flash", Quantities.Duration, it => it.Flash, out Slot<TimeSpan> flash)
        .With("openTime", Quantities.Duration, it => it.OpenTime, out Slot<TimeSpan> openTime)
        .Maybe("mixedLife", Quantities.Duration, it => it.MixedLife, (it, life) => it with { MixedLife = life })
        .Optional("solvents", List(SolventShare), it => it.Solvents, (it, solvents) => it with { Solvents = solvents })
        .With("materials", List(MaterialShapes.Material), it => it.Materials, out Slot<IReadOnlyList<FixtureMaterial>> materials)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new AdhesionPromoter
        {
            Id = id(v), Name = name(v), SpreadingRate = spreadingRate(v), Flash = flash(v), OpenTime = openTime(v),
            Materials = materials(v), Source = source(v),
        });

    public static ReferenceShape<AdhesionPromoter> Promoter { get; } = new(
        WholePromoter, "a promoter", promoter => promoter.Id,
            ById([GenericCatalogue.SilanePromoter, GenericCatalogue.PlasticPromoter], promoter => promoter.Id));

    public static ObjectShape<SlipAdditive> WholeAdditive { get; } = new Fields<SlipAdditive>("slipAdditive")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("diameter", Film, it => it.Diameter, out Slot<Length> diameter)
        .With("density", Quantities.Density, it => it.Density, out Slot<Density> density)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
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
