using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using MathNet.Numerics;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Curing;

public class CureTableFitTests
{
    private static readonly DateTimeOffset Five = new(2026, 3, 3, 17, 0, 0, TimeSpan.FromHours(-5));

    private static readonly CureTableFit Sheet = Table(TemperatureLaw.Arrhenius);

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    // Every tick: TimeSpan.FromHours rounds to a millisecond on .NET Framework.
    private static TabulatedTime At(double celsius, double hours) => new(C(celsius), TimeSpan.FromTicks((long)Math.Round(hours * TimeSpan.TicksPerHour)));

    private static double Part(NormalFloat x) => Math.Abs(x.Get) % 1;

    private static CureTableFit Table(TemperatureLaw law) => new(
        [
            new StageTimes(CureStage.PotLife, [At(15, 4), At(25, 2)]),
            new StageTimes(CureStage.TouchDry, [At(15, 2.5), At(25, 1.5)]),
            new StageTimes(CureStage.RecoatOpens, [At(15, 6), At(20, 4.2), At(25, 3)]),
            new StageTimes(CureStage.RecoatCloses, [At(15, 48), At(25, 24)]),
            new StageTimes(CureStage.WaterService, [At(15, 36), At(25, 16)]),
            new StageTimes(CureStage.FullCure, [At(15, 360), At(25, 168)]),
        ],
        C(8),
        C(35),
        Source.Invented("a table for these tests"),
        law,
        TemperatureDelta.FromKelvins(5));

    [Theory]
    [InlineData(TemperatureLaw.FixedFactor, 24.0)]
    [InlineData(TemperatureLaw.Arrhenius, 23.83)]
    [Evidence(Basis.Independent, "by hand: 36 h at 15 °C and 16 h at 25 °C are 24.0 h at 20 °C straight in T, 23.83 h straight in 1/T; no published source")]
    public void Two_times_are_met_and_joined(TemperatureLaw law, double hours)
    {
        CureTimeFit fit = new([At(15, 36), At(25, 16)], law);
        Numbers.Near(hours, fit.TimeAt(C(20))!.Value.TotalHours, 0.005);
        Numbers.Near(36, fit.TimeAt(C(15))!.Value.TotalHours, 1e-9);
        Numbers.Near(16, fit.TimeAt(C(25))!.Value.TotalHours, 1e-9);
        Numbers.Near(0, fit.LargestResidual.DecimalFractions, 1e-12);
        Numbers.CanBeWritten(fit.Workings(C(20)));
    }

    [Fact]
    [Evidence(Basis.Independent, "MathNet.Numerics 5.0.0, Fit.Line through ln t of seven invented times, against 1/T and against T")]
    public void Several_times_match_another_regression()
    {
        (double Celsius, double Hours)[] table = [(5, 61), (10, 40), (15, 29), (20, 21), (25, 15.5), (30, 11), (35, 8.6)];
        double[] logs = [.. table.Select(row => Math.Log(row.Hours * 3600))];
        (double a, double b) = Fit.Line([.. table.Select(row => 1 / (row.Celsius + 273.15))], logs);
        CureTimeFit arrhenius = new(table.Select(row => At(row.Celsius, row.Hours)), TemperatureLaw.Arrhenius);
        Numbers.Close(b * 8.31446261815324, arrhenius.ActivationEnergy!.Value.JoulesPerMole, 1e-9);
        Numbers.Close(Math.Exp(a + (b / 295.15)) / 3600, arrhenius.TimeAt(C(22))!.Value.TotalHours, 1e-9);
        (double c, double d) = Fit.Line([.. table.Select(row => row.Celsius)], logs);
        CureTimeFit factor = new(table.Select(row => At(row.Celsius, row.Hours)), TemperatureLaw.FixedFactor);
        Numbers.Close(Math.Exp(-10 * d), factor.RatePerTenKelvin!.Value, 1e-9);
        for (int i = 0; i < table.Length; i++)
        {
            Numbers.Near((table[i].Hours * 3600 / Math.Exp(c + (d * table[i].Celsius))) - 1, factor.Residuals[i].DecimalFractions, 1e-9);
        }

        Numbers.Near(factor.Residuals.Max(r => Math.Abs(r.DecimalFractions)), factor.LargestResidual.DecimalFractions, 1e-15);
        Numbers.CanBeWritten(arrhenius.Workings(C(22)));
        Numbers.Close(arrhenius.TimeAt(C(22))!.Value.TotalSeconds, arrhenius.Workings(C(22)).Steps[^1].Value);
        Numbers.CanBeWritten(factor.Workings(C(22)));
    }

    [Fact]
    [Evidence(Basis.Contract, "beyond the table by more than the margin there is no time and the checks say so; within the margin it is marked")]
    public void Nothing_is_drawn_out_beyond_the_margin()
    {
        CureTimeFit fit = new([At(15, 36), At(25, 16)], TemperatureLaw.Arrhenius);
        Assert.NotNull(fit.TimeAt(C(10)));
        Assert.True(fit.IsBeyondTable(C(10)));
        Assert.False(fit.IsBeyondTable(C(15)));
        Assert.Null(fit.TimeAt(C(9.9)));
        Assert.Null(fit.TimeAt(C(30.1)));
        Assert.Equal(ComparisonOutcome.Beyond, fit.Checks(C(9.9))[0].Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, fit.Checks(C(30.1))[1].Outcome);
        Assert.NotNull(fit.Checks(C(30.1))[1].Remedy);
        Assert.Null(new CureTimeFit(fit.Times, TemperatureLaw.Arrhenius, TemperatureDelta.Zero).TimeAt(C(14.9)));
        Assert.Equal("Arrhenius, 57.926 kJ/mol, within 0 % from 15 °C to 25 °C, margin 5 K", fit.ToString());
        Numbers.CanBeWritten(fit.Workings(C(50)));
    }

    [Fact]
    [Evidence(Basis.Contract, "tables that are no law are refused: one temperature, hotter slower, more than threefold in ten kelvins, missing or double rows")]
    public void Refuses_what_is_no_law()
    {
        Numbers.Refuses("times", () => _ = new CureTimeFit([At(15, 36), At(15.5, 16)], TemperatureLaw.Arrhenius));
        Numbers.Refuses("times", () => _ = new CureTimeFit([At(15, 16), At(25, 36)], TemperatureLaw.Arrhenius));
        Numbers.Refuses("times", () => _ = new CureTimeFit([At(15, 160), At(25, 36)], TemperatureLaw.FixedFactor));
        Numbers.Refuses("margin", () => _ = new CureTimeFit([At(15, 36), At(25, 16)], TemperatureLaw.Arrhenius, TemperatureDelta.FromKelvins(16)));
        Numbers.Refuses("time", () => _ = At(15, 0));
        Numbers.Refuses("temperature", () => _ = At(61, 1));
        Assert.Throws<ArgumentException>(() => new CureTimeFit([At(15, 36)], TemperatureLaw.Arrhenius));
        Assert.Throws<ArgumentException>(() => new CureTableFit(Sheet.Rows.Skip(2), C(10), C(35), Sheet.Source));
        Assert.Throws<ArgumentException>(() => new CureTableFit(Sheet.Rows.Append(Sheet.Rows[0]), C(10), C(35), Sheet.Source));
        Numbers.Refuses("rows", () => _ = new CureTableFit(Sheet.Rows, C(31), C(35), Sheet.Source));
        Numbers.Refuses("maximum", () => _ = new CureTableFit(Sheet.Rows, C(31), C(30), Sheet.Source));
        Assert.Equal(Table(TemperatureLaw.Arrhenius), Sheet);
        Assert.Equal("WaterService: 36 h at 15 °C, 16 h at 25 °C", Sheet.Rows[4].ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "as above by hand, each stage by its own law: water 23.83 h at 20 °C; the common slope by MathNet.Numerics 5.0.0 multiple regression with a level for each row")]
    public void Forecasts_take_the_table()
    {
        CureForecast forecast = CureForecast.FromFit(Sheet, C(20));
        Assert.True(forecast.IsAvailable);
        Numbers.Near(23.83, forecast.WaterService!.Value.TotalHours, 0.005);
        Numbers.Close(Math.Sqrt(2 * 4), forecast.PotLife!.Value.TotalHours, 0.01);
        Assert.Equal(Sheet.FitOf(CureStage.RecoatOpens)!.TimeAt(C(20)), forecast.RecoatOpens);
        Assert.Null(Sheet.FitOf(CureStage.Induction));
        Numbers.CanBeWritten(forecast.Workings());
        Numbers.CanBeWritten(Sheet.Workings(C(20)));

        CureForecast cold = CureForecast.FromFit(Sheet, C(9));
        Assert.False(cold.IsAvailable);
        Assert.Null(cold.WaterService);
        Numbers.Near(10, Sheet.Coldest.DegreesCelsius, 1e-9);
        Numbers.Near(30, Sheet.Warmest.DegreesCelsius, 1e-9);
        Assert.Null(Sheet.TimesAt(C(9)));
        Numbers.Near(-1, cold.Checks[0].Margin!.Value.Si, 1e-9);

        double[][] design =
        [
            .. Sheet.Rows.SelectMany((row, i) => row.Times.Select(time => (double[])[1 / time.Temperature.Kelvins, .. Enumerable.Range(0, 6).Select(j => j == i ? 1.0 : 0)])),
        ];
        double[] logs = [.. Sheet.Rows.SelectMany(row => row.Times.Select(time => Math.Log(time.Time.TotalSeconds)))];
        double[] solution = MathNet.Numerics.LinearRegression.MultipleRegression.QR(design, logs);
        Numbers.Close(solution[0] * 8.31446261815324, Sheet.CommonShift.ActivationEnergy!.Value.JoulesPerMole, 1e-8);
    }

    [Fact]
    [Evidence(Basis.Identity, "at a constant temperature clock and forecast of a table agree; through a cold night each stage follows its own law")]
    public void Clocks_take_the_table()
    {
        foreach (double celsius in (double[])[11, 17, 20, 28])
        {
            CureClock clock = CureClock.FromFit(Sheet, TemperatureHistory.Constant(Five, C(celsius)), Five);
            CureForecast forecast = CureForecast.FromFit(Sheet, C(celsius));
            Assert.True(clock.IsComplete);
            Numbers.Near(forecast.TouchDry!.Value.TotalSeconds, (clock.TouchDry!.Value - Five).TotalSeconds, 1e-5);
            Numbers.Near(forecast.RecoatCloses!.Value.TotalSeconds, (clock.RecoatCloses!.Value - Five).TotalSeconds, 1e-5);
            Numbers.Near(forecast.WaterService!.Value.TotalSeconds, (clock.WaterService!.Value - Five).TotalSeconds, 1e-5);
            Numbers.Near(forecast.FullCure!.Value.TotalSeconds, (clock.FullCure!.Value - Five).TotalSeconds, 1e-5);
            Numbers.CanBeWritten(clock.Workings());
        }

        TemperatureHistory night = new(Five, [new(TimeSpan.FromHours(1), C(20)), new(TimeSpan.FromHours(14), C(12)), new(TimeSpan.FromHours(10), C(20))], true);
        CureClock through = CureClock.FromFit(Sheet, night, Five);
        EquivalentAge water = new(night, Sheet.FitOf(CureStage.WaterService)!.Shift, C(20));
        Numbers.Near(0, (through.WaterService!.Value - water.InstantOf(Five, Sheet.FitOf(CureStage.WaterService)!.TimeAt(C(20))!.Value)!.Value).TotalSeconds, 1e-4);
        CureClock frost = CureClock.FromFit(Sheet, TemperatureHistory.Constant(Five, C(9)), Five);
        Assert.False(frost.IsComplete);
        Assert.Null(frost.TouchDry);
        Assert.Equal(through, CureClock.FromFit(Sheet, night, Five));
    }

    [Fact]
    [Evidence(Basis.Contract, "a product's own table gives the same laws as its times stage by stage; with two rows both meet the rows and agree between them; the induction of zero is left out")]
    public void Product_tables_are_taken()
    {
        CureTimes cold = new()
        {
            ReferenceTemperature = C(15),
            MinimumTemperature = C(8),
            MaximumTemperature = C(35),
            PotLife = TimeSpan.FromHours(4),
            TouchDry = TimeSpan.FromHours(2.5),
            RecoatOpens = TimeSpan.FromHours(6),
            RecoatCloses = TimeSpan.FromHours(48),
            WaterService = TimeSpan.FromHours(36),
            FullCure = TimeSpan.FromDays(15),
            Source = Source.Invented("a table for these tests"),
        };
        CureTimes warm = cold with
        {
            ReferenceTemperature = C(25),
            PotLife = TimeSpan.FromHours(2),
            TouchDry = TimeSpan.FromHours(1.5),
            RecoatOpens = TimeSpan.FromHours(3),
            RecoatCloses = TimeSpan.FromHours(24),
            WaterService = TimeSpan.FromHours(16),
            FullCure = TimeSpan.FromDays(7),
        };
        CureTable table = new([cold, warm]);
        CureTableFit fit = CureTableFit.Of(table);
        Assert.Equal(6, fit.Rows.Count);
        Assert.Null(fit.FitOf(CureStage.Induction));
        Assert.Equal(Sheet.FitOf(CureStage.WaterService), fit.FitOf(CureStage.WaterService));
        Numbers.Near(table.At(C(20)).WaterService.TotalSeconds, fit.TimesAt(C(20))!.WaterService.TotalSeconds, 1e-6);
        Assert.NotNull(fit.TimesAt(C(12)));
        Assert.Null(fit.TimesAt(C(9)));
    }

    [Property]
    [Evidence(Basis.Identity, "a law laid through its own times is found again, and longer times by one factor leave it the same")]
    public void Fits_find_the_law(NormalFloat a, NormalFloat b, bool arrhenius)
    {
        TemperatureShift law = arrhenius
            ? TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(70 * Part(a)))
            : TemperatureShift.Doubling(1 + (1.9 * Part(a)));
        TemperatureLaw kind = arrhenius ? TemperatureLaw.Arrhenius : TemperatureLaw.FixedFactor;
        double hours = 1 + (20 * Part(b));
        TabulatedTime[] times = [.. new double[] { 8, 15, 22, 31 }.Select(t => At(t, hours / law.RateFactor(C(t), C(22))))];
        CureTimeFit fit = new(times, kind);
        foreach (double t in (double[])[5, 12, 22, 35])
        {
            Numbers.Close(hours / law.RateFactor(C(t), C(22)), fit.TimeAt(C(t))!.Value.TotalHours, 1e-8);
        }

        CureTimeFit longer = new(times.Select(time => new TabulatedTime(time.Temperature, time.Time * 3)), kind);
        Numbers.Close(fit.Shift.RateFactor(C(30), C(20)), longer.Shift.RateFactor(C(30), C(20)), 1e-9);
        Numbers.CanBeWritten(fit.Workings(C(18)));
    }
}
