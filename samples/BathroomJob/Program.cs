using System;
using System.Linq;
using System.Text;
using Refinish.Jobs;

namespace Refinish.Samples.BathroomJob;

/// <summary>
/// Plans an invented guesthouse and prints what a refinisher takes along: job sheet, cautions, who does what, operations, mixing cards,
/// air, the customer's quote, costs, handover.
/// </summary>
internal static class Program
{
    private const string Usage = "Usage: BathroomJob [--units si|us] [--workings]";

    private static int Main(string[] arguments)
    {
        Console.OutputEncoding = Encoding.UTF8;
        if (arguments.Contains("--help"))
        {
            Console.WriteLine(Usage);
            return 0;
        }

        DisplayUnits system = DisplayUnits.Si;
        bool workings = false;
        for (int i = 0; i < arguments.Length; i++)
        {
            switch (arguments[i])
            {
                case "--workings":
                    workings = true;
                    break;
                case "--units" when i + 1 < arguments.Length && arguments[i + 1] is "si" or "us":
                    system = arguments[++i] == "us" ? DisplayUnits.UsCustomary : DisplayUnits.Si;
                    break;
                default:
                    Console.Error.WriteLine("Not understood: " + arguments[i]);
                    Console.Error.WriteLine(Usage);
                    return 2;
            }
        }

        JobPlan plan = Scenario.Guesthouse().Plan();
        Paper paper = new(system);
        JobSheet.Write(paper, plan);
        CautionSheet.Write(paper, plan);
        CrewSheet.Write(paper, plan);
        WorkSheet.Write(paper, plan);
        MixingCards.Write(paper, plan);
        AirSheet.Write(paper, plan);
        PriceSheet.Write(paper, plan);
        HandoverSheet.Write(paper, plan);
        Console.Write(paper.ToString());
        if (workings)
        {
            Console.WriteLine();
            Console.Write(plan.Workings().ToPlainText(system));
        }

        return 0;
    }
}
