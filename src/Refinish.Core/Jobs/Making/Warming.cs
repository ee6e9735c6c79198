using System;
using System.Linq;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// Warms a fixture that is colder than its coating allows, where the air of the room is warm enough, and says how long it takes.
/// </summary>
internal static class Warming
{
    private const double StillAir = 9;
    private const double EnoughAbove = 0.1;

    private static readonly Source Method = Source.FromMemory("9 W/(m²·K) for free convection and radiation together; weight from area, usual wall and density unless given");

    /// <summary>
    /// The temperature of the surface when it is coated, in kelvins; adds the operation or the objection where it has to be warmed
    /// first.
    /// </summary>
    public static double SurfaceOf(Procedure procedure, SiteRoom room, RoomCourse course, WorkBuilder builder)
    {
        double surface = procedure.Fixture.SurfaceKelvins ?? course.ColdestSurface;
        if (!course.IsHeld)
        {
            return course.ColdestSurface;
        }

        double needed = procedure.System.Layers.Max(layer => Needed(room.Climate.Air, surface, layer.Product));
        double most = procedure.System.Layers.Min(layer => Most(surface, layer.Product));

        // What would have to be warmer than a product allows is not warmed: the checks of its coat say how to dry the air or to cool.
        if (surface >= needed || needed > most)
        {
            return surface;
        }

        double air = course.ColdestAir;
        if (procedure.Fixture.Survey.Material.Body is not MaterialBody body)
        {
            return surface;
        }

        if (air - needed < EnoughAbove)
        {
            double heatedTo = Math.Min(needed + 5, most);
            WarmUp heated = Of(procedure, body, surface, heatedTo, needed);
            builder.Objections.Add(new PlanObjection(
                ObjectionKind.SprayWindow, procedure.Fixture.Id, "warm",
                system => procedure.Fixture.Name + " is too cold to be coated: " + Measure.Temperature.Format(surface, system, 3) + ", " + Measure.Temperature.Format(needed, system, 3)
                    + " is needed, and the air of the room is not above that. In a room at "
                    + Measure.Temperature.Format(heatedTo, system, 3) + " it would take "
                    + (heated.Time is TimeSpan time ? Measure.Minutes.Format(time.TotalSeconds, system, 2) : "a time that cannot be given") + " to warm."));
            return surface;
        }

        WarmUp warming = Of(procedure, body, surface, air, needed);
        if (warming.Time is not TimeSpan duration)
        {
            return surface;
        }

        builder.Operations.Add(WorkOrder.Begun(
            WorkKind.Warm, procedure.Fixture.Id + "/" + WorkOrder.Key(WorkKind.Warm), room.Id,
            "let the fixture warm in the room to " + Measure.Temperature.FormatBoth(needed)
                + ", then measure its coldest place; no flame, nothing that sparks near solvent") with
        {
            Fixtures = [procedure.Fixture.Id],
            People = 0,
            Time = builder.InSight(
                CarefulTime.Up(duration), procedure.Fixture.Id, "warm", "The warming of " + procedure.Fixture.Name,
                "Look at its weight, wall and area, or warm the room further"),
            Source = Method,
        });
        return needed;
    }

    private static double Needed(MoistAir air, double surface, CoatingProduct product)
    {
        SprayWindow window = new(air, Temperature.FromKelvins(surface), product.SprayLimits);
        return Math.Max(window.NeededSurface, product.CureNear(Temperature.FromKelvins(surface)).MinimumTemperature.Kelvins);
    }

    private static double Most(double surface, CoatingProduct product) => Math.Min(
        product.SprayLimits.MaximumTemperature.Kelvins, product.CureNear(Temperature.FromKelvins(surface)).MaximumTemperature.Kelvins);

    private static WarmUp Of(Procedure procedure, MaterialBody body, double start, double room, double target)
    {
        Length wall = procedure.Fixture.WallThickness ?? body.UsualThickness;
        double density = body.Density.KilogramsPerCubicMeter;
        double mass = procedure.Fixture.Weight?.Kilograms ?? Math.Min(1000, density * wall.Meters * procedure.SquareMeters);
        return new WarmUp
        {
            Mass = Mass.FromKilograms(mass),
            Material = body.Heat,
            WallThickness = wall,
            HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(StillAir),
            Area = Area.FromSquareMeters(Math.Min(50, procedure.SquareMeters)),
            Start = Temperature.FromKelvins(start),
            Room = Temperature.FromKelvins(room),
            Target = Temperature.FromKelvins(target),
        };
    }
}
