using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

/// <summary>A number that a problem starts from: the name that it has in the code, its meaning, its value.</summary>
internal sealed record Input(string Name, string What, string Value);

/// <summary>The numbers of a problem, as the problem states them or as the reader changed them.</summary>
internal sealed class Given(IReadOnlyDictionary<string, string> changes)
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    // What people write, and what the units library writes.
    private static readonly (string Reader, string Library)[] Spellings =
    [
        ("lb/US gal", "ppg (U.S.)"), ("US gal", "gal (U.S.)"), ("mL", "ml"),
    ];

    private readonly List<Input> inputs = [];

    public IReadOnlyList<Input> Inputs => inputs;

    /// <summary>Name of an input and the number to put there, in the unit in which it is stated: how the library is asked for its own range.</summary>
    public (string Name, double Number)? Probe { get; init; }

    /// <summary>The number of <see cref="Probe"/> as a refusal may write it.</summary>
    public IReadOnlyList<string?> Probed { get; private set; } = [];

    public void Take<T>(ref T value, string what, [CallerArgumentExpression(nameof(value))] string name = "")
        where T : struct, IQuantity
    {
        T stated = value;
        value = Taken(name, what, Shown(stated), number => (T)Quantity.From(number, stated.Unit), text => (T)Quantity.Parse(Invariant, typeof(T), Spelled(text)), value);
    }

    public void Take(ref TimeSpan value, string what, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        string stated = value.TotalMinutes < 2 ? value.TotalSeconds.ToString(Invariant) + " s"
            : value.TotalHours < 2 ? value.TotalMinutes.ToString(Invariant) + " min"
            : value.TotalHours.ToString(Invariant) + " h";
        value = Taken(name, what, stated, TimeSpan.FromSeconds, text => Duration.Parse(text, Invariant).ToTimeSpan(), value);
    }

    public void Take(ref double value, string what, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value = Taken(name, what, value.ToString(Invariant), number => number, text => double.Parse(text, Invariant), value);

    public void Take(ref decimal value, string what, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value = Taken(name, what, value.ToString(Invariant), number => (decimal)number, text => decimal.Parse(text, Invariant), value);

    public void Take(ref int value, string what, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value = Taken(name, what, value.ToString(Invariant), number => (int)Math.Clamp(number, -1e9, 1e9), text => int.Parse(text, Invariant), value);

    private static string Shown(IQuantity stated) => Spellings.Aggregate(
        ((double)stated.Value).ToString(Invariant) + " " + stated.ToString("a", Invariant), (text, spelling) => text.Replace(spelling.Library, spelling.Reader, StringComparison.Ordinal));

    private static string Spelled(string text) => Spellings.Aggregate(
        text.Replace("cfm", "ft³/min", StringComparison.Ordinal).Replace("um", "µm", StringComparison.Ordinal),
        (given, spelling) => given.Replace(spelling.Reader, spelling.Library, StringComparison.Ordinal));

    private T Taken<T>(string argument, string what, string stated, Func<double, T> from, Func<string, T> parse, T value)
        where T : struct
    {
        string name = argument.Split(' ').Last();
        string text = changes.GetValueOrDefault(name, stated);
        inputs.Add(new Input(name, what, text));
        if (Probe is { } probe && probe.Name == name)
        {
            T asked = from(probe.Number);
            Probed = asked switch
            {
                IQuantity quantity => [quantity.ToString("g", Invariant)],
                TimeSpan time => [.. new[] { Measure.Seconds, Measure.Minutes, Measure.Hours }.Select(measure => measure.Format(time.TotalSeconds))],
                _ => [Convert.ToString(asked, Invariant)!, Measure.Number.Format(probe.Number), Measure.Years.Format(probe.Number)],
            };
            return asked;
        }

        if (!changes.ContainsKey(name))
        {
            return value;
        }

        try
        {
            return parse(text);
        }
        catch (Exception fault) when (fault is FormatException or OverflowException or UnitNotFoundException or AmbiguousUnitParseException or ArgumentException)
        {
            throw new InputException(name + " is given as '" + text + "', which cannot be read here; write it like '" + stated + "'.", fault);
        }
    }
}
