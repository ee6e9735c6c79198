using System;
using System.Globalization;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;

namespace Refinish.Samples.OldHost;

/// <summary>An estimating program that lives on .NET Framework plans the invented bathroom through the netstandard2.0 build.</summary>
internal static class Program
{
    private static void Main(string[] arguments)
    {
        JobPlan plan = Scenario.OneBathroom().Plan();
        if (arguments.Length == 1 && arguments[0] == "--numbers")
        {
            Numbers(plan.Workings(), string.Empty);
            return;
        }

        Console.WriteLine(plan);
        foreach (PlanCondition condition in plan.Conditions)
        {
            Console.WriteLine("first " + condition);
        }

        Console.WriteLine("coated area " + Measure.Area.Format(plan.CoatedArea.SquareMeters) + ", price " + plan.Price);
        foreach (PlannedCaution caution in plan.Cautions)
        {
            Console.WriteLine("! " + caution);
        }
    }

    /// <summary>Every number of the plan with its place, to be compared with what another runtime computes.</summary>
    private static void Numbers(Workings workings, string place)
    {
        place += "/" + workings.Title;
        foreach (WorkingStep step in workings.Steps)
        {
            Console.WriteLine(place + "/" + step.Name + "\t" + step.Value.ToString("R", CultureInfo.InvariantCulture));
        }

        foreach (Workings part in workings.Parts)
        {
            Numbers(part, place);
        }
    }
}
