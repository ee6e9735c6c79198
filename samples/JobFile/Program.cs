using System;
using System.Collections.Generic;
using System.IO;
using System.Text;
using Refinish;
using Refinish.Jobs;
using Refinish.Json;

// Reads a job, prints what stands in its way, its conditions, its price and its cautions, and writes its plan. Compiled ahead of time it
// starts in milliseconds.
Console.OutputEncoding = Encoding.UTF8;
if (args is not [string jobFile, string planFile])
{
    Console.Error.WriteLine("Usage: JobFile job.json plan.json");
    return 2;
}

if (!JobJson.TryRead(File.ReadAllBytes(jobFile), out Job? job, out IReadOnlyList<JsonFault> faults))
{
    foreach (JsonFault fault in faults)
    {
        Console.Error.WriteLine(fault);
    }

    return 1;
}

JobPlan plan = job.Plan();
Console.WriteLine(job.Name + (plan.IsPossible ? ": can be done" : ": provisional, because something stands in its way"));
foreach (PlanObjection objection in plan.Objections)
{
    Console.WriteLine("In the way: " + objection);
}

foreach (PlanCondition condition in plan.Conditions)
{
    Console.WriteLine("Condition: " + condition);
}

foreach (ProtectionNeed need in plan.Protection)
{
    Console.WriteLine("For the respiratory protection programme: " + need);
}

foreach (PlannedCaution caution in plan.Cautions)
{
    Console.WriteLine("Caution: " + caution);
}

Console.WriteLine("Price: " + (plan.Price?.Total is decimal total
    ? FormattableString.Invariant($"{total} {job.Shop.Prices.Currency}")
    : "none"));

using FileStream file = File.Create(planFile);
PlanJson.Write(file, plan);
return 0;
