using System;
using System.Globalization;
using Xunit;

namespace Refinish.Tests.Support;

/// <summary>Assertions on numbers that say by how much they failed.</summary>
internal static class Numbers
{
    /// <summary>Within an absolute tolerance, such as half a unit of the source's last printed digit.</summary>
    public static void Near(double expected, double actual, double tolerance) =>
        Assert.True(
            Math.Abs(actual - expected) <= tolerance,
            string.Create(CultureInfo.InvariantCulture, $"expected {expected:R} ± {tolerance:R}, got {actual:R} (off by {actual - expected:R})"));

    /// <summary>Within a relative tolerance.</summary>
    public static void Close(double expected, double actual, double relative = 1e-12) =>
        Near(expected, actual, relative * Math.Max(Math.Abs(expected), double.Epsilon));

    /// <summary>There are steps, each has a finite result, and its formula can be written with symbols and with numbers in both systems.</summary>
    public static void CanBeWritten(Workings workings)
    {
        int steps = 0;
        foreach (WorkingStep step in workings.AllSteps())
        {
            steps++;
            Assert.False(double.IsNaN(step.Value) || double.IsInfinity(step.Value), workings.Title + " / " + step.Name + " is no number");
            foreach (string written in new[]
            {
                step.Formula.Symbolic(), step.Formula.Substituted(DisplayUnits.Si), step.Formula.Substituted(DisplayUnits.UsCustomary),
            })
            {
                Assert.False(written.Length == 0 || written.Contains("NaN"), workings.Title + " / " + step.Name + " is written as '" + written + "'");
            }
        }

        Assert.True(steps > 0, workings.Title + " has no steps");
    }

    /// <summary>The refusal names the parameter, a value and a range.</summary>
    public static void Refuses(string parameter, Action call)
    {
        ArgumentOutOfRangeException error = Assert.Throws<ArgumentOutOfRangeException>(call);
        Assert.Equal(parameter, error.ParamName);
        Assert.StartsWith(parameter + " is ", error.Message, StringComparison.Ordinal);
        Assert.Contains("allowed: ", error.Message, StringComparison.Ordinal);
    }
}
