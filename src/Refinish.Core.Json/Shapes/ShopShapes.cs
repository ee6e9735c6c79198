using System;
using System.Collections.Generic;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Jobs;
using Refinish.Scheduling;

namespace Refinish.Json.Shapes;

/// <summary>A shop and its people.</summary>
internal static class ShopShapes
{
    public static ObjectShape<Worker> Worker { get; } = new Fields<Worker>("worker")
        .With("id", Scalars.Text, worker => worker.Id, out Slot<string> id)
        .MaybeOf("name", Scalars.Text, worker => Said.Name(worker.Name, worker.Id, worker, one => one with { Name = one.Name }),
            (worker, name) => worker with { Name = name })
        .Maybe("wage", Scalars.Money, worker => worker.Wage, (worker, wage) => worker with { Wage = wage })
        .Making(v => new Worker { Id = id(v) });

    public static ObjectShape<SearchEffort> Effort { get; } = new Fields<SearchEffort>("searchEffort")
        .Optional("nodes", Scalars.Count, effort => effort.Nodes, (effort, nodes) => effort with { Nodes = nodes })
        .Optional("nodesPerGroup", Scalars.Count, effort => effort.NodesPerGroup, (effort, nodes) => effort with { NodesPerGroup = nodes })
        .Optional("orders", Scalars.Count, effort => effort.Orders, (effort, orders) => effort with { Orders = orders })
        .Optional("stepsForProof", Scalars.Count, effort => effort.StepsForProof, (effort, steps) => effort with { StepsForProof = steps })
        .Making(_ => new SearchEffort());

    public static ObjectShape<OvertimeStep> OvertimeStep { get; } = new Fields<OvertimeStep>("overtimeStep")
        .With("after", Quantities.Duration, step => step.After, out Slot<TimeSpan> after)
        .With("factor", Scalars.Money, step => step.Factor, out Slot<decimal> factor)
        .Making(v => new OvertimeStep(after(v), factor(v)));

    public static ObjectShape<OvertimeRule> Overtime { get; } = new Fields<OvertimeRule>("overtimeRule")
        .Optional("daily", CommonShapes.List(OvertimeStep), rule => rule.Daily, (rule, steps) => rule with { Daily = steps })
        .Optional("weekly", CommonShapes.List(OvertimeStep), rule => rule.Weekly, (rule, steps) => rule with { Weekly = steps })
        .Optional("weekStarts", new WordShape<DayOfWeek>(), rule => rule.WeekStarts, (rule, day) => rule with { WeekStarts = day })
        .With("source", CommonShapes.Source, rule => rule.Source, out Slot<Source> source)
        .Making(v => new OvertimeRule { Source = source(v) });

    public static ObjectShape<Shop> WholeShop { get; } = new Fields<Shop>("shop")
        .With("name", Scalars.Text, shop => shop.Name, out Slot<string> name)
        .With("crew", CommonShapes.List(Worker), shop => shop.Crew, out Slot<IReadOnlyList<Worker>> crew)
        .With("calendar", CalendarShapes.Calendar, shop => shop.Calendar, out Slot<WorkCalendar> calendar)
        .With("prices", PriceShapes.Book, shop => shop.Prices, out Slot<PriceBook> prices)
        .With("warranty", PriceShapes.Warranty, shop => shop.Warranty, out Slot<WarrantyTerms> warranty)
        .With("system", SystemShapes.System, shop => shop.System, out Slot<CoatingSystem> system)
        .With("gun", GunShapes.Gun, shop => shop.Gun, out Slot<SprayGun> gun)
        .Optional("losses", GunShapes.Losses, shop => shop.Losses, (shop, losses) => shop with { Losses = losses })
        .Optional("cups", GunShapes.Cups, shop => shop.Cups, (shop, cups) => shop with { Cups = cups })
        .Optional("guns", Scalars.Count, shop => shop.Guns, (shop, guns) => shop with { Guns = guns })
        .Optional("labour", CommonShapes.List(LabourShapes.WholeStandard), shop => shop.Labour,
            (shop, labour) => shop with { Labour = labour })
        .Optional("chemicals", CommonShapes.List(ChemicalShapes.Prep), shop => shop.Chemicals,
            (shop, chemicals) => shop with { Chemicals = chemicals })
        .Optional("defectMaterials", CommonShapes.List(PriceShapes.DefectMaterial), shop => shop.DefectMaterials,
            (shop, materials) => shop with { DefectMaterials = materials })
        .Optional("survey", SurveyShapes.SurveyPolicy, shop => shop.Survey, (shop, policy) => shop with { Survey = policy })
        .Optional("filler", SurveyShapes.FillerPolicy, shop => shop.Filler, (shop, policy) => shop with { Filler = policy })
        .Optional("paid", new WordShape<PaidTimeRule>(), shop => shop.Paid, (shop, rule) => shop with { Paid = rule })
        .Optional("halfDay", Quantities.Duration, shop => shop.HalfDay, (shop, length) => shop with { HalfDay = length })
        .MaybeOf("overtime", Overtime, shop => shop.Overtime, (shop, rule) => shop with { Overtime = rule })
        .Optional("standsBy", Scalars.YesNo, shop => shop.StandsBy, (shop, said) => shop with { StandsBy = said })
        .Optional("prefers", new WordShape<SchedulePreference>(), shop => shop.Prefers,
            (shop, preference) => shop with { Prefers = preference })
        .Optional("effort", Effort, shop => shop.Effort, (shop, effort) => shop with { Effort = effort })
        .Optional("groutWait", Quantities.Duration, shop => shop.GroutWait, (shop, wait) => shop with { GroutWait = wait })
        .Optional("caulkWait", Quantities.Duration, shop => shop.CaulkWait, (shop, wait) => shop with { CaulkWait = wait })
        .Optional("drainTrimWait", Quantities.Duration, shop => shop.DrainTrimWait, (shop, wait) => shop with { DrainTrimWait = wait })
        .Optional("spotPrimerWait", Quantities.Duration, shop => shop.SpotPrimerWait, (shop, wait) => shop with { SpotPrimerWait = wait })
        .Maybe("longestAfterKey", Quantities.Duration, shop => shop.LongestAfterKey,
            (shop, longest) => shop with { LongestAfterKey = longest })
        .Optional("gunCleaningWithin", Quantities.Duration, shop => shop.GunCleaningWithin,
            (shop, wait) => shop with { GunCleaningWithin = wait })
        .Optional("limits", LimitShapes.Set, shop => shop.Limits, (shop, limits) => shop with { Limits = limits })
        .Optional("noise", CommonShapes.List(LimitShapes.Work), shop => shop.Noise, (shop, noise) => shop with { Noise = noise })
        .MaybeOf("depositLimit", QuoteShapes.Deposit, shop => shop.DepositLimit, (shop, limit) => shop with { DepositLimit = limit })
        .Maybe("airborneFraction", Quantities.Percent, shop => shop.AirborneFraction,
            (shop, share) => shop with { AirborneFraction = share })
        .Optional("filmTimeConstant", Quantities.Duration, shop => shop.FilmTimeConstant,
            (shop, time) => shop with { FilmTimeConstant = time })
        .Optional("flashOfLanded", Quantities.Percent, shop => shop.FlashOfLanded, (shop, part) => shop with { FlashOfLanded = part })
        .Optional("hidingTolerance", Scalars.Number, shop => shop.HidingTolerance,
            (shop, tolerance) => shop with { HidingTolerance = tolerance })
        .Making(v => new Shop
        {
            Name = name(v),
            Crew = crew(v),
            Calendar = calendar(v),
            Prices = prices(v),
            Warranty = warranty(v),
            System = system(v),
            Gun = gun(v),
        });

    /// <summary>A shop in a job, whose labour standards later places name.</summary>
    public static Shape<Shop> Shop { get; } = new DefiningShape<Shop>(WholeShop,
        (definitions, shop) => CatalogueShapes.DefineLabour(definitions, shop.Labour));
}
