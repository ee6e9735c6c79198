using System;
using System.Collections.Generic;
using System.IO;
using System.Text;
using Refinish;
using Refinish.Jobs;
using Refinish.Json;

// Reads a job, prints its price and what stands in its way, writes its plan. Compiled ahead of time it starts in milliseconds.
Console.OutputEncoding = Encoding.UTF8;
if (args is not [string jobFile, string planFile])
{
    Console.Error.WriteLine("Usage: JobFile job.json plan.json");
    return 2;
}

if (!JobJson.TryRead(File.ReadAllBytes(jobFile), out BathroomJob? job, out IReadOnlyList<JsonFault> faults))
{
    foreach (JsonFault fault in faults)
    {
        Console.Error.WriteLine(fault);
    }

    return 1;
}

BathroomPlan plan = job.Plan();
Console.WriteLine(job.Name + ": " + (plan.Price?.Total is decimal total ? FormattableString.Invariant($"{total} {job.Prices.Currency}") : "no price"));
foreach (PlanObjection objection in plan.Objections)
{
    Console.WriteLine("In the way: " + objection);
}

foreach (Caution caution in plan.Cautions)
{
    Console.WriteLine("Caution: " + caution);
}

using FileStream file = File.Create(planFile);
PlanJson.Write(file, plan);
return 0;
