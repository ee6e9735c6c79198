using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// A law for each stage of a data sheet's table of times at several temperatures, laid through all its times.
/// <see cref="CureForecast.FromFit"/> and <see cref="CureClock.FromFit"/> take it in place of times at one temperature and a rule of
/// thumb.
/// </summary>
/// <remarks>
/// <see cref="CureTable"/> joins its rows one by one and tells nothing beyond them; this smooths over all rows, shows how far each is
/// off, and reaches beyond them by a stated margin. Nothing is told below the product's least temperature, above its highest, or beyond
/// any row of the table by more than the margin.
/// </remarks>
/// <example><code>
/// static TabulatedTime At(double celsius, double hours) => new(Temperature.FromDegreesCelsius(celsius), TimeSpan.FromHours(hours));
/// CureTableFit fit = new(
///     [
///         new StageTimes(CureStage.TouchDry, [At(15, 3), At(25, 1.5)]),
///         new StageTimes(CureStage.RecoatOpens, [At(15, 6), At(25, 3)]),
///         new StageTimes(CureStage.WaterService, [At(15, 36), At(25, 16)]),
///         new StageTimes(CureStage.FullCure, [At(15, 360), At(25, 168)]),
///     ],
///     Temperature.FromDegreesCelsius(10),
///     Temperature.FromDegreesCelsius(35),
///     Source.Supplied("product data sheet"));
/// CureForecast forecast = CureForecast.FromFit(fit, Temperature.FromDegreesCelsius(20));
/// TimeSpan? water = forecast.WaterService;                        // 23.83 h
/// </code></example>
public sealed record CureTableFit
{
    private static readonly CureStage[] Needed = [CureStage.TouchDry, CureStage.RecoatOpens, CureStage.WaterService, CureStage.FullCure];

    private static readonly Source Common = Source.Derived("least squares with one slope and a level for each row");

    private readonly ValueList<StageTimes> rows;
    private readonly ValueList<CureTimeFit> fits;
    private readonly double commonSlope;

    /// <summary>Takes the table.</summary>
    /// <param name="rows">One row for a stage; touch dry, recoat opens, water service and full cure have to be among them.</param>
    /// <param name="minimum">Below this temperature the product is not to be used, −20 to 60 °C.</param>
    /// <param name="maximum">Above this temperature it is not to be used, −20 to 60 °C.</param>
    /// <param name="source">Where the table comes from.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">A needed stage is missing, or a stage has two rows.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A row has no law (see <see cref="CureTimeFit"/>), or the temperatures leave nothing between them.
    /// </exception>
    public CureTableFit(IEnumerable<StageTimes> rows, Temperature minimum, Temperature maximum, Source source)
        : this(rows, minimum, maximum, source, TemperatureLaw.Arrhenius, CureTimeFit.UsualMargin)
    {
    }

    /// <summary>Takes the table.</summary>
    /// <param name="rows">One row for a stage; touch dry, recoat opens, water service and full cure have to be among them.</param>
    /// <param name="minimum">Below this temperature the product is not to be used, −20 to 60 °C.</param>
    /// <param name="maximum">Above this temperature it is not to be used, −20 to 60 °C.</param>
    /// <param name="source">Where the table comes from.</param>
    /// <param name="law">Which law is laid through each row.</param>
    /// <param name="margin">How far beyond the table a time may be given, 0 to 15 K.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">A needed stage is missing, or a stage has two rows.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A row has no law (see <see cref="CureTimeFit"/>), or the temperatures leave nothing between them.
    /// </exception>
    public CureTableFit(
        IEnumerable<StageTimes> rows, Temperature minimum, Temperature maximum, Source source, TemperatureLaw law, TemperatureDelta margin)
    {
        this.rows = Guard.List(rows);
        foreach (CureStage stage in Needed)
        {
            if (!this.rows.Any(row => row.Stage == stage))
            {
                throw new ArgumentException(nameof(rows) + " has no row for " + stage + ".", nameof(rows));
            }
        }

        if (this.rows.Select(row => row.Stage).Distinct().Count() != this.rows.Count)
        {
            throw new ArgumentException(nameof(rows) + " has two rows for one stage.", nameof(rows));
        }

        Source = Guard.NotNull(source);
        Law = Guard.Defined(law);
        fits = new ValueList<CureTimeFit>(this.rows.Select(row => new CureTimeFit(row.Times, law, margin)));
        double least = Guard.Within(minimum, TemperatureShift.Thermometer);
        double most = Guard.Within(maximum, Bounds.Between(least, TemperatureShift.Thermometer.Maximum, Measure.Temperature));
        double beyond = fits[0].Margin.Kelvins;
        Coldest = Temperature.FromKelvins(Math.Max(least, fits.Max(fit => fit.Low) - beyond));
        Warmest = Temperature.FromKelvins(Math.Min(most, fits.Min(fit => fit.High) + beyond));
        Guard.Rule(Coldest.Kelvins <= Warmest.Kelvins, nameof(rows), Coldest.Kelvins, Measure.Temperature,
            "rows and limits that share a temperature");
        commonSlope = Slope().Value;
    }

    /// <summary>The rows.</summary>
    public IReadOnlyList<StageTimes> Rows => rows;

    /// <summary>The law laid through each row.</summary>
    public TemperatureLaw Law { get; }

    /// <summary>Where the table comes from.</summary>
    public Source Source { get; }

    /// <summary>The coldest temperature for which times are given: the product's least, or the table's with its margin.</summary>
    public Temperature Coldest { get; }

    /// <summary>The warmest temperature for which times are given.</summary>
    public Temperature Warmest { get; }

    /// <summary>One law for all rows together, each with its own level: least squares with a common slope.</summary>
    public TemperatureShift CommonShift => CureTimeFit.ShiftOf(Law, commonSlope);

    /// <summary>Lays the laws through a product's table; a stage that has no time in every row is left out.</summary>
    /// <param name="table">The table; its product limits are those of the outer rows.</param>
    /// <returns>The laws.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="table"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A stage has no law (see <see cref="CureTimeFit"/>).</exception>
    public static CureTableFit Of(CureTable table) => Of(table, TemperatureLaw.Arrhenius, CureTimeFit.UsualMargin);

    /// <summary>Lays the laws through a product's table; a stage that has no time in every row is left out.</summary>
    /// <param name="table">The table; its product limits are those of the outer rows.</param>
    /// <param name="law">Which law is laid through each stage.</param>
    /// <param name="margin">How far beyond the table a time may be given, 0 to 15 K.</param>
    /// <returns>The laws.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="table"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A stage has no law (see <see cref="CureTimeFit"/>).</exception>
    public static CureTableFit Of(CureTable table, TemperatureLaw law, TemperatureDelta margin)
    {
        IReadOnlyList<CureTimes> sheet = Guard.NotNull(table).Rows;
        List<StageTimes> stages = [];
        Add(CureStage.Induction, row => row.Induction);
        Add(CureStage.PotLife, row => row.PotLife);
        Add(CureStage.TouchDry, row => row.TouchDry);
        Add(CureStage.RecoatOpens, row => row.RecoatOpens);
        Add(CureStage.RecoatCloses, row => row.RecoatCloses);
        Add(CureStage.WaterService, row => row.WaterService);
        Add(CureStage.FullCure, row => row.FullCure);
        return new CureTableFit(stages, sheet[0].MinimumTemperature, sheet[sheet.Count - 1].MaximumTemperature, sheet[0].Source, law, margin);

        void Add(CureStage stage, Func<CureTimes, TimeSpan?> time)
        {
            if (sheet.All(row => time(row) is TimeSpan given && given > TimeSpan.Zero))
            {
                stages.Add(new StageTimes(stage, sheet.Select(row => new TabulatedTime(row.ReferenceTemperature, time(row)!.Value))));
            }
        }
    }

    /// <summary>The law of a stage.</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>The law; <see langword="null"/> when the table has no such row.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public CureTimeFit? FitOf(CureStage stage)
    {
        Guard.Defined(stage);
        for (int i = 0; i < rows.Count; i++)
        {
            if (rows[i].Stage == stage)
            {
                return fits[i];
            }
        }

        return null;
    }

    /// <summary>The times at a temperature, as if the data sheet had them there.</summary>
    /// <param name="reference">−20 to 60 °C.</param>
    /// <returns>The times; <see langword="null"/> outside <see cref="Coldest"/> to <see cref="Warmest"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside −20 to 60 °C, or a time comes out longer than 60 days.</exception>
    public CureTimes? TimesAt(Temperature reference)
    {
        double t = Guard.Within(reference, TemperatureShift.Thermometer);
        return t < Coldest.Kelvins || t > Warmest.Kelvins ? null : Times(t);
    }

    /// <summary>How each stage's law and time follow, and the common slope.</summary>
    /// <param name="temperature">−20 to 60 °C.</param>
    /// <returns>The derivation, with one part for each row.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside −20 to 60 °C.</exception>
    public Workings Workings(Temperature temperature)
    {
        IEnumerable<Workings> parts = rows.Select((row, i) => new Workings(row.Stage.ToString(), fits[i].Workings(temperature).Steps));
        return Trace.Of("Table of times", parts, Slope);
    }

    /// <summary>How many rows, the common law and the range.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        "table of " + Figures.Significant(rows.Count) + " stages, " + CommonShift + ", " + Measure.Temperature.Format(Coldest.Kelvins)
            + " to " + Measure.Temperature.Format(Warmest.Kelvins);

    /// <summary>The temperature within the range that is nearest.</summary>
    internal double Nearest(double kelvins) => Math.Min(Warmest.Kelvins, Math.Max(Coldest.Kelvins, kelvins));

    internal CureTimes Times(double t)
    {
        return new CureTimes
        {
            ReferenceTemperature = Temperature.FromKelvins(t),
            MinimumTemperature = Coldest,
            MaximumTemperature = Warmest,
            RatePerTenKelvin = CommonShift.Factor(t + 5, t - 5),
            Induction = Stage(CureStage.Induction) ?? TimeSpan.Zero,
            PotLife = Stage(CureStage.PotLife),
            TouchDry = Stage(CureStage.TouchDry)!.Value,
            RecoatOpens = Stage(CureStage.RecoatOpens)!.Value,
            RecoatCloses = Stage(CureStage.RecoatCloses),
            WaterService = Stage(CureStage.WaterService)!.Value,
            FullCure = Stage(CureStage.FullCure)!.Value,
            Source = Source,
        };

        TimeSpan? Stage(CureStage stage) => FitOf(stage) is CureTimeFit fit ? Durations.FromSeconds(fit.Seconds(t).Value) : null;
    }

    private Num Slope(Trace? t = null)
    {
        Num squares = 0;
        Num products = 0;
        foreach (StageTimes row in rows)
        {
            LineFit line = CureTimeFit.Line(row.Times, Law);
            squares += t is null ? line.Squares : t.Given("S_xx," + row.Stage, line.Squares, Measure.Number);
            products += t is null ? line.Products : t.Given("S_xy," + row.Stage, line.Products, Measure.Number);
        }

        return t.Step("common slope", "b", Measure.Number, Common, products / squares);
    }
}
