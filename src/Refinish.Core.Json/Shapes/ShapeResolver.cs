using System;
using System.Collections.Generic;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>
/// Tells the serialiser of the platform which types have a shape. Every type is named here or by a shape with variants, so that nothing is
/// looked up by reflection.
/// </summary>
internal sealed class ShapeResolver : IJsonTypeInfoResolver
{
    private readonly Dictionary<Type, Func<JsonSerializerOptions, JsonTypeInfo>> known = [];
    private readonly DisplayUnits units;

    public ShapeResolver(DisplayUnits units)
    {
        this.units = units;
        AddQuantities();
        AddFixtures();
        Add(CommonShapes.Source);
        Add(CommonShapes.Caution);
        AddStruct(CommonShapes.Colour);
        AddDefects();
        Add(MaterialShapes.Material);
        Add(MaterialShapes.Body);
        Add(MaterialShapes.Heat);
        Add(MaterialShapes.Keying);
        Add(SurveyShapes.Survey);
        Add(SurveyShapes.SurveyPolicy);
        Add(SurveyShapes.FillerPolicy);
        Add(SurveyShapes.FillerProduct);
        Add(CoatingShapes.Solvent);
        Add(CoatingShapes.SolventShare);
        Add(CoatingShapes.Component);
        Add(CoatingShapes.Part);
        Add(CoatingShapes.Operation);
        Add(CoatingShapes.PartVolume);
        Add(CoatingShapes.Product);
        Add(CoatingShapes.Layer);
        Add(CoatingShapes.Promoter);
        Add(SystemShapes.System);
        Add(CureShapes.Times);
        Add(CureShapes.Table);
        Add(CureShapes.SprayLimits);
        Add(CoatingShapes.Flow);
        Add(CoatingShapes.Additive);
        Add(SystemShapes.Step);
        Add(GunShapes.Gun);
        Add(GunShapes.Losses);
        Add(GunShapes.Cup);
        Add(GunShapes.Cups);
        Add(SiteShapes.Room);
        Add(SiteShapes.Exhaust);
        Add(SiteShapes.Air);
        Add(SiteShapes.Segment);
        Add(SiteShapes.History);
        Add(SiteShapes.Climate);
        Add(SiteShapes.SiteRoom);
        Add(SiteShapes.Premises);
        Add(LimitShapes.Exposure);
        Add(LimitShapes.Voc);
        Add(LimitShapes.Flammable);
        Add(LimitShapes.Slip);
        Add(LimitShapes.Noise);
        Add(LimitShapes.Set);
        Add(LimitShapes.Work);
        Add(CalendarShapes.Hours);
        Add(CalendarShapes.Clock);
        Add(CalendarShapes.Change);
        Add(CalendarShapes.Interval);
        Add(CalendarShapes.Shift);
        Add(CalendarShapes.Calendar);
        Add(TaxShapes.Rate);
        Add(TaxShapes.Exemption);
        Add(TaxShapes.HostCode);
        Add(TaxShapes.Extra);
        Add(QuoteShapes.Discount);
        Add(QuoteShapes.Stage);
        Add(QuoteShapes.Terms);
        Add(QuoteShapes.Deposit);
        Add(ShopShapes.OvertimeStep);
        Add(ShopShapes.Overtime);
        Add(PriceShapes.Material);
        Add(PriceShapes.Option);
        Add(PriceShapes.Book);
        Add(LabourShapes.Standard);
        Add(LabourShapes.Learning);
        Add(LabourShapes.Task);
        Add(PriceShapes.DefectMaterial);
        Add(PriceShapes.Life);
        Add(PriceShapes.Warranty);
        Add(PriceShapes.Part);
        Add(PriceShapes.Renewal);
        Add(PriceShapes.Replacement);
        Add(ChemicalShapes.Prep);
        Add(ShopShapes.Worker);
        Add(ShopShapes.Effort);
        Add(ShopShapes.WholeShop);
        Add(OperationShapes.Need);
        Add(OperationShapes.Evaporation);
        Add(OperationShapes.Operation);
        Add(OperationShapes.Lag);
        Add(OperationShapes.Change);
        Add(JobShapes.Efficiency);
        Add(JobShapes.Option);
        Add(JobShapes.Fixture);
        Add(JobShapes.Alternative);
        Add(JobShapes.Days);
        Add(JobShapes.Kit);
        Add(JobShapes.Job);
        Add(StoredPlanShape.Only);
        Add(new PlanOut());
    }

    public IEnumerable<Type> Types => known.Keys;

    public JsonTypeInfo? GetTypeInfo(Type type, JsonSerializerOptions options) =>
        known.TryGetValue(type, out Func<JsonSerializerOptions, JsonTypeInfo>? make) ? make(options) : null;

    private void AddQuantities()
    {
        AddStruct(Quantities.Tape);
        AddStruct(Quantities.Area);
        AddStruct(Quantities.Liquid);
        AddStruct(Quantities.Material);
        AddStruct(Quantities.Mass);
        AddStruct(Quantities.SpecificHeat);
        AddStruct(Quantities.Conductivity);
        AddStruct(Quantities.Density);
        AddStruct(Quantities.Percent);
        AddStruct(Quantities.Temperature);
        AddStruct(Quantities.TemperatureDifference);
        AddStruct(Quantities.Pressure);
        AddStruct(Quantities.Airflow);
        AddStruct(Quantities.Angle);
        AddStruct(Quantities.MolarMass);
        AddStruct(Quantities.Concentration);
        AddStruct(Quantities.Viscosity);
        AddStruct(Quantities.Speed);
        AddStruct(Quantities.SpreadingRate);
        AddStruct(Quantities.AreaDensity);
        AddStruct(Quantities.SurfaceTension);
        AddStruct(Quantities.Scattering);
    }

    private void AddFixtures()
    {
        FixtureShapes.Fixture.AddTo(this);
        Add(ZonedShapes.Part);
        Add(ZonedShapes.Mesh);
        Add(RoughShapes.Taken);
        Add(RoughShapes.Assumption);
        Add(FixtureParts.Outline);
        Add(FixtureParts.Opening);
        Add(FixtureParts.Run);
        Add(FixtureParts.Wall);
        Add(FixtureParts.Recess);
    }

    private void AddDefects()
    {
        DefectShapes.Defect.AddTo(this);
        Add(OwnDefectShapes.Hollow);
        Add(OwnDefectShapes.Work);
        Add(DefectKindShape.Kind);
        Add(RuleShapes.Change);
        Add(RuleShapes.Condition);
        Add(RuleShapes.Rule);
    }

    /// <summary>Makes a shape known.</summary>
    public void Add<T>(Shape<T> shape)
    {
        ShapeConverter<T> converter = new(shape, units);
        known.Add(typeof(T), options => JsonMetadataServices.CreateValueInfo<T>(options, converter));
    }

    private void AddStruct<T>(Shape<T> shape)
        where T : struct
    {
        Add(shape);
        known.Add(typeof(T?), options => JsonMetadataServices.CreateValueInfo<T?>(options,
            JsonMetadataServices.GetNullableConverter<T>(options)));
    }

    /// <summary>A plan follows from its job; read, it is a <see cref="StoredPlan"/>, which tells whether it still does.</summary>
    private sealed class PlanOut : Shape<JobPlan>
    {
        public override Outcome Read(JsonElement json, Reading reading, out JobPlan value) =>
            throw new NotSupportedException("A plan is read as " + nameof(StoredPlan)
                + ", which tells where its stored results differ from the job's.");

        public override void Write(Utf8JsonWriter json, JobPlan value, Writing to) =>
            PlanShapes.Plan.Write(json, PlanShapes.Of(value, to.Units), to);
    }
}
