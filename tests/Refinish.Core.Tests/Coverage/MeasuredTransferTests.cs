using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Films;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coverage;

public class MeasuredTransferTests
{
    [Fact]
    [Evidence(Basis.Cited, "question-and-answer archive of a painting centre (paintcenter.org, May 2004), coating coverage: 1.5 mil dry at 52 % volume solids and 35 % transfer efficiency is 194.5 ft² from a US gallon; its own figures give 194.6, which is the tolerance")]
    public void The_efficiency_of_a_coverage()
    {
        MeasuredTransfer coat = new(Area.FromSquareFeet(194.5), Length.FromMils(1.5), Ratio.FromPercent(52), Volume.FromUsGallons(1));
        Numbers.Near(35, coat.Efficiency.Percent, 0.03);
        Numbers.CanBeWritten(coat.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 2.5 m² × 30 µm × 1.1 / 0.45 = 183.3 mL of 330 mL, 55.56 %; with 10 % past the edges 183.3 / 297 = 61.73 %")]
    public void A_coat_by_hand()
    {
        MeasuredTransfer coat = Coat(0);
        Numbers.Near(183.33, coat.Film.Milliliters, 0.005);
        Numbers.Near(55.56, coat.Efficiency.Percent, 0.005);
        Numbers.Near(146.67, coat.Overspray.Milliliters, 0.005);
        Assert.Equal("55.6 %: 183 mL of 330 mL became film", coat.ToString());
        Numbers.Near(61.73, Coat(10).Efficiency.Percent, 0.005);
        Numbers.CanBeWritten(Coat(10).Workings());
        Assert.Equal(Coat(10), Coat(10));
    }

    [Property]
    [Evidence(Basis.Identity, "the efficiency of a planned coat comes back from its film, its area and what it takes through the gun")]
    public void The_plan_comes_back(byte efficiency, byte edge, byte reducer)
    {
        Ratio te = Ratio.FromPercent(5 + (efficiency % 96));
        Ratio past = Ratio.FromPercent(edge % 51);
        CoatingLayer layer = new(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(30), 1, Ratio.FromPercent(reducer % 11));
        SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(160), TransferEfficiency = te };
        CoatDemand plan = new(Area.FromSquareMeters(2.57), layer, gun, new ApplicationLosses { EdgeOverspray = past });
        MeasuredTransfer found = new(
            plan.Area, layer.DryFilmPerCoat, layer.Product.VolumeSolids, plan.Sprayed, layer.Reducer, past);
        Numbers.Close(te.DecimalFractions, found.Efficiency.DecimalFractions, 1e-11);
        Numbers.Near(plan.Overspray.Milliliters, found.Overspray.Milliliters, 1e-8);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstring; more on the area than was sprayed at it is no measurement")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("area", () => _ = Of(0, 30, 45, 330, 10, 0));
        Numbers.Refuses("dryFilm", () => _ = Of(2.5, 0, 45, 330, 10, 0));
        Numbers.Refuses("volumeSolids", () => _ = Of(2.5, 30, 0.5, 330, 10, 0));
        Numbers.Refuses("sprayed", () => _ = Of(2.5, 30, 45, 0, 10, 0));
        Numbers.Refuses("reducer", () => _ = Of(2.5, 30, 45, 330, 101, 0));
        Numbers.Refuses("edgeOverspray", () => _ = Of(2.5, 30, 45, 330, 10, 51));
        Numbers.Refuses("sprayed", () => _ = Of(2.5, 30, 45, 183, 10, 0));
        Numbers.Refuses("sprayed", () => _ = Of(2.5, 30, 45, 330, 10, 45));
    }

    private static MeasuredTransfer Coat(double edge) => Of(2.5, 30, 45, 330, 10, edge);

    private static MeasuredTransfer Of(double area, double film, double solids, double sprayed, double reducer, double edge) => new(
        Area.FromSquareMeters(area), Length.FromMicrometers(film), Ratio.FromPercent(solids), Volume.FromMilliliters(sprayed),
        Ratio.FromPercent(reducer), Ratio.FromPercent(edge));
}
