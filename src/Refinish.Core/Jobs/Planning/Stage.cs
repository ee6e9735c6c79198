using System;
using System.Collections.Generic;

namespace Refinish.Jobs;

/// <summary>
/// Runs one stage of a plan. What a stage refuses, because a part of the job is outside what its calculation takes, becomes an
/// objection with the refusal's own words: parameter, value and allowed range. So the guards stand in one place, and a plan never
/// throws.
/// </summary>
internal static class Stage
{
    public static T? Try<T>(List<PlanObjection> objections, string about, string code, Func<T> make)
        where T : class
    {
        try
        {
            return make();
        }
        catch (Exception refusal) when (refusal is ArgumentException or OverflowException)
        {
            objections.Add(new PlanObjection(ObjectionKind.OutOfRange, about, code, "This part of the job is outside what can be computed: " + Sentences.Closed(FirstLine(refusal.Message))));
            return null;
        }
    }

    // The framework appends the parameter and the value in lines of their own.
    private static string FirstLine(string message)
    {
        int end = message.IndexOf('\n');
        string line = end < 0 ? message : message.Substring(0, end).TrimEnd('\r');
        int parameter = line.LastIndexOf(" (Parameter '", StringComparison.Ordinal);
        return parameter < 0 ? line : line.Substring(0, parameter);
    }
}
