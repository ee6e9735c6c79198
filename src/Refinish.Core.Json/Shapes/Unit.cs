using System;

namespace Refinish.Json.Shapes;

/// <summary>A unit in which a quantity may be written.</summary>
/// <param name="Symbol">The symbol that is written.</param>
/// <param name="Of">The quantity of so many of this unit, as the units library makes it.</param>
/// <param name="In">How many of this unit a quantity is.</param>
/// <param name="Spellings">Plain spellings that are read as well.</param>
internal sealed record Unit<T>(string Symbol, Func<double, T> Of, Func<T, double> In, params string[] Spellings);
