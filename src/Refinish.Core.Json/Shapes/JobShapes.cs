using System;
using System.Collections.Generic;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>A whole job.</summary>
internal static class JobShapes
{
    public static ObjectShape<CieLab> Colour { get; } = new Fields<CieLab>("cieLab")
        .With("lightness", Scalars.Number, colour => colour.L, out Slot<double> lightness)
        .With("a", Scalars.Number, colour => colour.A, out Slot<double> a)
        .With("b", Scalars.Number, colour => colour.B, out Slot<double> b)
        .Making(v => new CieLab(lightness(v), a(v), b(v)));

    public static ObjectShape<FixtureJob> Fixture { get; } = new Fields<FixtureJob>("fixtureJob")
        .With("name", Scalars.Text, fixture => fixture.Name, out Slot<string> name)
        .With("fixture", FixtureShapes.Fixture, fixture => fixture.Fixture, out Slot<IFixture> measured)
        .With("survey", SurveyShapes.Survey, fixture => fixture.Survey, out Slot<Survey> survey)
        .Maybe("oldColour", Colour, fixture => fixture.OldColour, (fixture, colour) => fixture with { OldColour = colour })
        .Maybe("newColour", Colour, fixture => fixture.NewColour, (fixture, colour) => fixture with { NewColour = colour })
        .Making(v => new FixtureJob { Name = name(v), Fixture = measured(v), Survey = survey(v) });

    public static ObjectShape<BathroomJob> Fields { get; } = new Fields<BathroomJob>("bathroomJob")
        .With("name", Scalars.Text, job => job.Name, out Slot<string> name)
        .With("start", Times.Instant, job => job.Start, out Slot<DateTimeOffset> start)
        .With("hours", CalendarShapes.Hours, job => job.Hours, out Slot<WorkingHours> hours)
        .MaybeOf("calendar", CalendarShapes.Calendar, job => job.Calendar, (job, calendar) => job with { Calendar = calendar })
        .With("fixtures", CommonShapes.List(Fixture), job => job.Fixtures, out Slot<IReadOnlyList<FixtureJob>> fixtures)
        .With("system", CoatingShapes.System, job => job.System, out Slot<CoatingSystem> system)
        .With("gun", SiteShapes.Gun, job => job.Gun, out Slot<SprayGun> gun)
        .With("residue", Quantities.Percent, job => job.Residue, out Slot<Ratio> residue)
        .With("batches", SiteShapes.Batches, job => job.Batches, out Slot<BatchRules> batches)
        .With("site", SiteShapes.Site, job => job.Site, out Slot<SiteConditions> site)
        .With("prices", PriceShapes.Book, job => job.Prices, out Slot<PriceBook> prices)
        .Optional("options", CommonShapes.List(PriceShapes.Order), job => job.Options, (job, options) => job with { Options = options })
        .With("warranty", PriceShapes.Warranty, job => job.Warranty, out Slot<WarrantyTerms> warranty)
        .MaybeOf("replacement", PriceShapes.Replacement, job => job.Replacement, (job, offer) => job with { Replacement = offer })
        .Optional("difficulty", Scalars.Number, job => job.Difficulty, (job, factor) => job with { Difficulty = factor })
        .Optional("surveyPolicy", SurveyShapes.SurveyPolicy, job => job.SurveyPolicy, (job, policy) => job with { SurveyPolicy = policy })
        .Optional("filler", SurveyShapes.FillerPolicy, job => job.Filler, (job, policy) => job with { Filler = policy })
        .Optional("groutWait", Quantities.Duration, job => job.GroutWait, (job, wait) => job with { GroutWait = wait })
        .Optional("caulkWait", Quantities.Duration, job => job.CaulkWait, (job, wait) => job with { CaulkWait = wait })
        .Maybe("drainTrimWait", Quantities.Duration, job => job.DrainTrimWait, (job, wait) => job with { DrainTrimWait = wait })
        .Optional("defectMaterials", CommonShapes.List(PriceShapes.DefectMaterial), job => job.DefectMaterials, (job, materials) => job with { DefectMaterials = materials })
        .Optional("labour", CommonShapes.List(PriceShapes.Labour), job => job.Labour, (job, labour) => job with { Labour = labour })
        .Making(v => new BathroomJob
        {
            Name = name(v),
            Start = start(v),
            Hours = hours(v),
            Fixtures = fixtures(v),
            System = system(v),
            Gun = gun(v),
            Residue = residue(v),
            Batches = batches(v),
            Site = site(v),
            Prices = prices(v),
            Warranty = warranty(v),
        });

    /// <summary>A job as a document of its own, with its format and version.</summary>
    public static DocumentShape<BathroomJob> Job { get; } = new("job", 1, Fields);
}
