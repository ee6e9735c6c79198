using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class LabourTests
{
    [Fact]
    [Evidence(Basis.Cited, "Heizer and Render, Hill Construction case (solution set); Taylor, network of seven tasks, triples read and moments recomputed by hand; two printed decimals")]
    public void Pert_means_and_classic_variances_match_the_texts()
    {
        foreach (Table.Row row in Table.Read("pert_three_point.csv").Rows)
        {
            ThreePoint triple = new(row.Number("minimum"), row.Number("mode"), row.Number("maximum"));
            Numbers.Near(row.Number("mean"), triple.Mean, 0.005);
            Numbers.Near(row.Number("variance"), triple.ClassicVariance, 0.005);
            Numbers.CanBeWritten(triple.Workings());
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "triangular 2, 4, 9: mean 5, standard deviation 1.471960 (closed form, recomputed outside); no published source")]
    public void Triangular_moments()
    {
        ThreePoint triple = new(2, 4, 9);
        Numbers.Near(5, triple.TriangularMean, 1e-12);
        Numbers.Near(1.471960, Math.Sqrt(triple.TriangularVariance), 5e-7);
    }

    [Property]
    [Evidence(Basis.Independent, "moments of the beta density with the PERT shapes by summation over 20 000 cells")]
    public void The_beta_variance_is_that_of_the_beta_density(PositiveInt low, PositiveInt high)
    {
        double a = 1;
        double m = a + (low.Get % 50 / 10.0) + 1;
        double b = m + (high.Get % 50 / 10.0) + 1;
        ThreePoint triple = new(a, m, b);
        double p = 1 + (4 * (m - a) / (b - a));
        double q = 1 + (4 * (b - m) / (b - a));
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        for (int i = 0; i < 20_000; i++)
        {
            double x = (i + 0.5) / 20_000;
            double w = Math.Pow(x, p - 1) * Math.Pow(1 - x, q - 1);
            s0 += w;
            s1 += w * x;
            s2 += w * x * x;
        }

        double mean = s1 / s0;
        Numbers.Close(a + ((b - a) * mean), triple.Mean, 1e-6);
        Numbers.Close((b - a) * (b - a) * ((s2 / s0) - (mean * mean)), triple.BetaPertVariance, 1e-5);
    }

    [Fact]
    [Evidence(Basis.Identity, "for a symmetric triple the beta variance is (b − a)²/28, larger than the classic (b − a)²/36")]
    public void The_classic_variance_understates_a_symmetric_triple()
    {
        ThreePoint triple = new(2, 5, 8);
        Numbers.Close(36.0 / 28, triple.BetaPertVariance);
        Numbers.Close(1, triple.ClassicVariance);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: set-up (20 + 4·27 + 45)/360 = 0.480556 h; three topcoats of 2.6 m² 3·(4 + 4·5 + 7)/360 = 0.258333 h; chips 4·(0.06 + 4·0.08 + 0.15)/6 = 0.35333 h; all × 1.2")]
    public void Hours_add_up()
    {
        LabourEstimate labour = new(
            [
                new LabourTask { Standard = LabourStandards.SetUp, Units = 1 },
                new LabourTask { Standard = LabourStandards.SprayTopcoat, Area = Area.FromSquareMeters(2.6), Units = 0, Times = 3 },
                new LabourTask { Standard = LabourStandards.Generic.Single(standard => standard.Code == "L-31"), Units = 4 },
            ],
            difficulty: 1.2,
            crew: 2);
        Numbers.Near(1.2 * (0.480555556 + 0.258333333 + 0.353333333), labour.Hours.TotalHours, 1e-6);
        Numbers.Near(labour.Hours.TotalHours / 2, labour.CrewHours.TotalHours, 1e-6);
        Assert.Equal(["L-10", "L-51", "L-31"], labour.Lines.Select(line => line.Code));
        Numbers.CanBeWritten(labour.Workings());
        Numbers.Near(labour.Lines.Sum(line => line.Hours.TotalHours), labour.Hours.TotalHours, 1e-6);
    }

    [Fact]
    [Evidence(Basis.Cited, "Heizer and Render, Hill Construction (solution set): length 260, variance 319.43, standard deviation 17.87. Which tasks make the path was inferred here: A, C, D, G, H, I, L give both published numbers")]
    public void Spread_of_a_path()
    {
        string[] path = ["hill_A", "hill_C", "hill_D", "hill_G", "hill_H", "hill_I", "hill_L"];
        LabourTask[] tasks = [.. Table.Read("pert_three_point.csv").Rows
            .Where(row => path.Contains(row["set"]))
            .Select(row => new LabourTask { Standard = new LabourStandard
            {
                Code = row["set"],
                Description = "task",
                Fixed = new ThreePoint(row.Number("minimum"), row.Number("mode"), row.Number("maximum")),
                Source = Source.Supplied("text book"),
            } })];
        LabourEstimate labour = new(tasks);
        Numbers.Near(260, labour.Hours.TotalHours, 1e-6);
        Numbers.Near(17.87, labour.ClassicDeviation.TotalHours, 0.005);
    }

    [Fact]
    [Evidence(Basis.Contract, "every kind of defect has a generic standard or is named as having none; the standards say that they are invented")]
    public void Defects_have_standards_or_are_named()
    {
        Defect[] found =
        [
            new Chip(Length.FromMillimeters(20), Length.FromMillimeters(2)), new Perforation(Length.FromMillimeters(8)), new FlexingFloor(Length.FromMillimeters(4)),
            new SiliconeResidue(Length.FromMeters(3)), new LooseTiles(4), new Crack(Length.FromMeters(2), Length.FromMillimeters(2), Length.FromMillimeters(2), false),
            new PeelingCoat(Area.FromSquareMeters(2.5), null), new GroutFailure(Length.FromMeters(7)), new RustSpot(Length.FromMillimeters(8)),
        ];
        Assert.Equal(7, LabourStandards.ForDefects(found).Count);
        Assert.Equal([DefectKind.Perforation, DefectKind.FlexingFloor], LabourStandards.WithoutStandard(found).Select(defect => defect.Kind));
        Assert.Equal([1, 3, 4, 2, 2.5, 7, 1], LabourStandards.ForDefects(found).Select(task => task.Units));
        Assert.All(LabourStandards.Generic, standard => Assert.Equal(SourceKind.Invented, standard.Source.Kind));
        Assert.Equal(LabourStandards.Generic.Count, LabourStandards.Generic.Select(standard => standard.Code).Distinct().Count());
        Assert.Equal(9, LabourStandards.WithoutStandard(found, []).Count);
    }

    [Fact]
    [Evidence(Basis.Independent, "added up by hand for one tub of 2.6 m²: set-up and masking 32, 45, 75 min; descaling and degreasing 24, 30, 47 min; caulking and inspecting 21, 30, 45 min")]
    public void Generic_standards_of_one_tub()
    {
        (WorkKind, WorkKind, double[] Minutes)[] sums =
        [
            (WorkKind.SetUp, WorkKind.Mask, [32, 45, 75]),
            (WorkKind.Descale, WorkKind.Degrease, [24, 30, 47]),
            (WorkKind.Caulk, WorkKind.Inspect, [21, 30, 45]),
        ];
        foreach ((WorkKind one, WorkKind other, double[] minutes) in sums)
        {
            ThreePoint a = Tub(one);
            ThreePoint b = Tub(other);
            Numbers.Close(minutes[0] / 60, a.Minimum + b.Minimum, 1e-12);
            Numbers.Close(minutes[1] / 60, a.Mode + b.Mode, 1e-12);
            Numbers.Close(minutes[2] / 60, a.Maximum + b.Maximum, 1e-12);
        }

        static ThreePoint Tub(WorkKind kind) =>
            new LabourTask { Standard = LabourStandards.For(kind, LabourStandards.Generic)!, Area = Area.FromSquareMeters(2.6), Units = 1 }.Hours;
    }

    [Fact]
    [Evidence(Basis.Contract, "a standard is found by its kind of work or by the defect it mends; two for one kind are refused; one code, one standard")]
    public void Standards_are_found()
    {
        Assert.Equal("L-51", LabourStandards.For(WorkKind.SprayTopcoat, LabourStandards.Generic)!.Code);
        Assert.Null(LabourStandards.For(WorkKind.Notice, LabourStandards.Generic));
        LabourStandard own = LabourStandards.SprayTopcoat with { Code = "own" };
        Assert.Same(own, LabourStandards.For(WorkKind.SprayTopcoat, [LabourStandards.Key, own]));
        Assert.Contains("own and L-51", Assert.Throws<ArgumentException>(() => LabourStandards.For(WorkKind.SprayTopcoat, [own, .. LabourStandards.Generic])).Message, StringComparison.Ordinal);
        Assert.All(LabourStandards.Generic, standard => Assert.True(standard.Work is null != standard.Repairs is null));
        Assert.Null(LabourStandards.ForDefect(new Perforation(Length.FromMillimeters(8)), LabourStandards.Generic));
        Assert.Equal("L-44", LabourStandards.ForDefect(new Chip(Length.FromMillimeters(25), Length.FromMillimeters(1)), LabourStandards.Generic)!.Code);
        Assert.Equal(3, LabourStandards.UnitsOf(new SiliconeResidue(Length.FromMeters(3))));
        Assert.Equal(1, LabourStandards.UnitsOf(new Chip(Length.FromMillimeters(25), Length.FromMillimeters(1))));
        Assert.Contains("code L-51", Assert.Throws<ArgumentException>(() => LabourStandards.ForDefects([], [LabourStandards.SprayTopcoat, LabourStandards.SprayTopcoat])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => LabourStandards.WithoutStandard([], [own with { Repairs = DefectKind.Chip }]));
        Assert.Throws<ArgumentException>(() => own with { Code = "a/b" });
        Numbers.Refuses("Work", () => _ = own with { Work = (WorkKind)99 });
    }

    [Fact]
    [Evidence(Basis.Contract, "the work that mends each kind of defect; what carries the fixture is mended by another trade")]
    public void Work_of_defects()
    {
        Dictionary<DefectKind, WorkKind?> expected = new()
        {
            [DefectKind.SiliconeResidue] = WorkKind.RemoveSilicone,
            [DefectKind.PeelingCoat] = WorkKind.Strip,
            [DefectKind.GroutFailure] = WorkKind.Regrout,
            [DefectKind.LooseTiles] = WorkKind.Regrout,
            [DefectKind.RustSpot] = WorkKind.GrindRust,
            [DefectKind.Crazing] = WorkKind.SealCrazing,
            [DefectKind.Liner] = WorkKind.Clear,
            [DefectKind.Perforation] = null,
            [DefectKind.FlexingFloor] = null,
        };
        Assert.All(DefectKind.All, kind => Assert.Equal(expected.TryGetValue(kind, out WorkKind? work) ? work : WorkKind.Fill, LabourStandards.WorkOf(kind)));
    }

    [Property]
    [Evidence(Basis.Identity, "worse defects never take fewer hours; more area, units or difficulty never takes less")]
    public void More_work_takes_longer(PositiveInt a, PositiveInt b)
    {
        double x = 0.1 + (a.Get % 50);
        int n = 1 + (b.Get % 20);
        double Hours(double area, int units, double difficulty) => new LabourEstimate(
            [new LabourTask { Standard = LabourStandards.Key, Area = Area.FromSquareMeters(area), Units = 1 }, .. LabourStandards.ForDefects([new LooseTiles(units), new SiliconeResidue(Length.FromMeters(area))])],
            difficulty,
            1).Hours.TotalHours;
        Assert.True(Hours(x * 1.1, n, 1) > Hours(x, n, 1));
        Assert.True(Hours(x, n + 1, 1) > Hours(x, n, 1));
        Assert.True(Hours(x, n, 1.1) > Hours(x, n, 1));
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("mode", () => _ = new ThreePoint(2, 1, 3));
        Numbers.Refuses("maximum", () => _ = new ThreePoint(1, 2, 1.5));
        Numbers.Refuses("minimum", () => _ = new ThreePoint(double.NaN, 2, 3));
        Numbers.Refuses("PerUnit", () => _ = LabourStandards.SetUp with { PerUnit = new ThreePoint(-1, 0, 1) });
        Numbers.Refuses("difficulty", () => _ = new LabourEstimate([], 4, 1));
        Numbers.Refuses("Times", () => _ = new LabourTask { Standard = LabourStandards.SetUp, Area = Area.Zero, Units = 0, Times = 0 });
        Numbers.Refuses("Area", () => _ = new LabourTask { Standard = LabourStandards.SetUp, Area = Area.FromSquareMeters(-1) });
        Assert.Equal("2 – 4 – 9", new ThreePoint(2, 4, 9).ToString());
        Assert.Equal(0, default(ThreePoint).Mean);
    }
}
