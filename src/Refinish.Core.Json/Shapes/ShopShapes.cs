using System;
using System.Collections.Generic;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Jobs;
using Refinish.Scheduling;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>A shop and its people.</summary>
internal static class ShopShapes
{
    public static ObjectShape<Worker> Worker { get; } = new Fields<Worker>("worker")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .MaybeOf("name", Text, it => Said.Name(it.Name, it.Id, it, one => one with { Name = one.Name }),
            (it, name) => it with { Name = name })
        .Maybe("wage", Scalars.Money, it => it.Wage, (it, wage) => it with { Wage = wage })
        .Making(v => new Worker { Id = id(v) });

    public static ObjectShape<SearchEffort> Effort { get; } = new Fields<SearchEffort>("searchEffort")
        .Optional("nodes", Count, it => it.Nodes, (it, nodes) => it with { Nodes = nodes })
        .Optional("nodesPerGroup", Count, it => it.NodesPerGroup, (it, nodes) => it with { NodesPerGroup = nodes })
        .Optional("orders", Count, it => it.Orders, (it, orders) => it with { Orders = orders })
        .Optional("stepsForProof", Count, it => it.StepsForProof, (it, steps) => it with { StepsForProof = steps })
        .Making(_ => new SearchEffort());

    public static ObjectShape<OvertimeStep> OvertimeStep { get; } = new Fields<OvertimeStep>("overtimeStep")
        .With("after", Quantities.Duration, it => it.After, out Slot<TimeSpan> after)
        .With("factor", Scalars.Money, it => it.Factor, out Slot<decimal> factor)
        .Making(v => new OvertimeStep(after(v), factor(v)));

    public static ObjectShape<OvertimeRule> Overtime { get; } = new Fields<OvertimeRule>("overtimeRule")
        .Optional("daily", List(OvertimeStep), it => it.Daily, (it, steps) => it with { Daily = steps })
        .Optional("weekly", List(OvertimeStep), it => it.Weekly, (it, steps) => it with { Weekly = steps })
        .Optional("weekStarts", new WordShape<DayOfWeek>(), it => it.WeekStarts, (it, day) => it with { WeekStarts = day })
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new OvertimeRule { Source = source(v) });

    public static ObjectShape<Shop> WholeShop { get; } = new Fields<Shop>("shop")
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("crew", List(Worker), it => it.Crew, out Slot<IReadOnlyList<Worker>> crew)
        .With("calendar", CalendarShapes.Calendar, it => it.Calendar, out Slot<WorkCalendar> calendar)
        .With("prices", PriceShapes.Book, it => it.Prices, out Slot<PriceBook> prices)
        .With("warranty", PriceShapes.Warranty, it => it.Warranty, out Slot<WarrantyTerms> warranty)
        .With("system", SystemShapes.System, it => it.System, out Slot<CoatingSystem> system)
        .With("gun", GunShapes.Gun, it => it.Gun, out Slot<SprayGun> gun)
        .Optional("losses", GunShapes.Losses, it => it.Losses, (it, losses) => it with { Losses = losses })
        .Optional("cups", GunShapes.Cups, it => it.Cups, (it, cups) => it with { Cups = cups })
        .Optional("guns", Count, it => it.Guns, (it, guns) => it with { Guns = guns })
        .Optional("labour", List(LabourShapes.WholeStandard), it => it.Labour, (it, labour) => it with { Labour = labour })
        .Optional("chemicals", List(ChemicalShapes.Prep), it => it.Chemicals, (it, chemicals) => it with { Chemicals = chemicals })
        .Optional("defectMaterials", List(PriceShapes.DefectMaterial), it => it.DefectMaterials,
            (it, materials) => it with { DefectMaterials = materials })
        .Optional("survey", SurveyShapes.SurveyPolicy, it => it.Survey, (it, policy) => it with { Survey = policy })
        .Optional("filler", SurveyShapes.FillerPolicy, it => it.Filler, (it, policy) => it with { Filler = policy })
        .Optional("paid", new WordShape<PaidTimeRule>(), it => it.Paid, (it, rule) => it with { Paid = rule })
        .Optional("halfDay", Quantities.Duration, it => it.HalfDay, (it, length) => it with { HalfDay = length })
        .MaybeOf("overtime", Overtime, it => it.Overtime, (it, rule) => it with { Overtime = rule })
        .Optional("standsBy", YesNo, it => it.StandsBy, (it, said) => it with { StandsBy = said })
        .Optional("prefers", new WordShape<SchedulePreference>(), it => it.Prefers, (it, preference) => it with { Prefers = preference })
        .Optional("effort", Effort, it => it.Effort, (it, effort) => it with { Effort = effort })
        .Optional("groutWait", Quantities.Duration, it => it.GroutWait, (it, wait) => it with { GroutWait = wait })
        .Optional("caulkWait", Quantities.Duration, it => it.CaulkWait, (it, wait) => it with { CaulkWait = wait })
        .Optional("drainTrimWait", Quantities.Duration, it => it.DrainTrimWait, (it, wait) => it with { DrainTrimWait = wait })
        .Optional("spotPrimerWait", Quantities.Duration, it => it.SpotPrimerWait, (it, wait) => it with { SpotPrimerWait = wait })
        .Maybe("longestAfterKey", Quantities.Duration, it => it.LongestAfterKey, (it, longest) => it with { LongestAfterKey = longest })
        .Optional("gunCleaningWithin", Quantities.Duration, it => it.GunCleaningWithin, (it, wait) => it with { GunCleaningWithin = wait })
        .Optional("limits", LimitShapes.Set, it => it.Limits, (it, limits) => it with { Limits = limits })
        .Optional("noise", List(LimitShapes.Work), it => it.Noise, (it, noise) => it with { Noise = noise })
        .MaybeOf("depositLimit", QuoteShapes.Deposit, it => it.DepositLimit, (it, limit) => it with { DepositLimit = limit })
        .Maybe("airborneFraction", Percent, it => it.AirborneFraction, (it, share) => it with { AirborneFraction = share })
        .Optional("filmTimeConstant", Quantities.Duration, it => it.FilmTimeConstant, (it, time) => it with { FilmTimeConstant = time })
        .Optional("flashOfLanded", Percent, it => it.FlashOfLanded, (it, part) => it with { FlashOfLanded = part })
        .Optional("hidingTolerance", Number, it => it.HidingTolerance, (it, tolerance) => it with { HidingTolerance = tolerance })
        .Making(v => new Shop
        {
            Name = name(v), Crew = crew(v), Calendar = calendar(v), Prices = prices(v), Warranty = warranty(v), System = system(v),
            Gun = gun(v),
        });

    /// <summary>A shop in a job, whose labour standards later places name.</summary>
    public static Shape<Shop> Shop { get; } = new DefiningShape<Shop>(WholeShop,
        (definitions, shop) => CatalogueShapes.DefineLabour(definitions, shop.Labour));
}
