using System;
using System.Collections.Generic;

namespace Refinish;

/// <summary>
/// A derivation that is being made: it notes each step once, in the order in which they are first needed. Formulas take one that may be
/// missing; see <see cref="Tracing"/>.
/// </summary>
internal sealed class Trace
{
    private readonly List<WorkingStep> steps = [];
    private readonly List<Workings> parts = [];
    private readonly Dictionary<string, List<WorkingStep>> noted = new(StringComparer.Ordinal);

    /// <summary>How many steps were noted.</summary>
    public int Count => steps.Count;

    /// <summary>The derivation of some results: <c>Trace.Of("Wet film", Wet, Rate)</c>.</summary>
    public static Workings Of(string title, params Func<Trace, Num>[] results) => Of(title, [], results);

    /// <summary>The same, after the derivations of the parts that they rest on; those that are null are left out.</summary>
    public static Workings Of(string title, IEnumerable<Workings?> parts, params Func<Trace, Num>[] results)
    {
        Trace trace = new();
        foreach (Workings? part in parts)
        {
            trace.Part(part);
        }

        foreach (Func<Trace, Num> result in results)
        {
            result(trace);
        }

        return trace.Workings(title);
    }

    /// <summary>Results that only some derivations have.</summary>
    public static Func<Trace, Num>[] When(bool has, params Func<Trace, Num>[] results) => has ? results : [];

    /// <summary>Notes the derivation of a part that the steps rest on, if there is one.</summary>
    public void Part(Workings? part)
    {
        if (part is not null)
        {
            parts.Add(part);
        }
    }

    /// <summary>The derivation made so far.</summary>
    public Workings Workings(string title) => new(title, steps, parts);

    /// <summary>
    /// Notes a step, unless one of the same name, symbol and value, up to the last digits, has been noted; the formula is not compared.
    /// </summary>
    public void Note(string name, string symbol, Expression formula, Measure measure, Source source)
    {
        // Steps of one symbol are few as a rule, also where a long log has thousands of steps.
        if (!noted.TryGetValue(symbol, out List<WorkingStep>? alike))
        {
            noted.Add(symbol, alike = []);
        }

        if (!alike.Exists(step => step.Name == name && Math.Abs(step.Value - formula.Value) <= 1e-12 * Math.Abs(formula.Value)))
        {
            WorkingStep noting = new(name, symbol, formula, measure, source);
            alike.Add(noting);
            steps.Add(noting);
        }
    }
}
