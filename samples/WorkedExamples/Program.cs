// Worked problems of the trade: pick one, get its workings, change a number.
//   dotnet run --project samples/WorkedExamples                          lists the problems
//   dotnet run --project samples/WorkedExamples -- 7                     question, code, workings, answer, source
//   dotnet run --project samples/WorkedExamples -- 7 depth="15 in"       the same with another number; --units si|us in other units
//   dotnet run --project samples/WorkedExamples -- --markdown FILE       all of them as a page
// Exit code 0, or 2 with a sentence on what was mistyped.
using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using Refinish;
using Refinish.Samples.WorkedExamples;

const string Usage = "Usage: WorkedExamples [--markdown FILE] | [NUMBER [NAME=\"VALUE UNIT\" …] [--units si|us]]";
Console.OutputEncoding = Encoding.UTF8;
try
{
    return Run(args);
}
catch (Exception fault) when (fault is InputException or ArgumentException or OverflowException)
{
    // The library's refusals name parameter, value and range; what .NET adds on a second line is not for the reader.
    Console.Error.WriteLine(fault.Message.Split('\n')[0].Split(" (Parameter")[0]);
    return 2;
}

static int Run(string[] args)
{
    if (args.Length == 0)
    {
        Console.Write(Sheet.List());
        return 0;
    }

    if (args is ["--markdown", string file])
    {
        File.WriteAllText(file, Page.Markdown());
        return 0;
    }

    if (!int.TryParse(args[0], CultureInfo.InvariantCulture, out int number) || number < 1 || number > ProblemSet.All.Count)
    {
        throw new InputException("There is no problem '" + args[0] + "'; they are numbered 1 to " + ProblemSet.All.Count.ToString(CultureInfo.InvariantCulture) + ". " + Usage);
    }

    DisplayUnits? units = null;
    Dictionary<string, string> changes = [];
    foreach (string[] pair in args.Skip(1).Where(word => word != "--units").Select(word => word.Split('=', 2, StringSplitOptions.TrimEntries)))
    {
        switch (pair)
        {
            case ["si"]:
                units = DisplayUnits.Si;
                break;
            case ["us"]:
                units = DisplayUnits.UsCustomary;
                break;
            case [string name, string value]:
                changes[name] = value;
                break;
            default:
                throw new InputException("Not understood: " + pair[0] + ". " + Usage);
        }
    }

    Console.Write(Sheet.Of(number, changes, units));
    return 0;
}
