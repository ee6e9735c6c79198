using System;
using System.Collections.Generic;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>Which lines move together, by the ids of the lines alone.</summary>
/// <param name="Key">Identity of the change.</param>
/// <param name="Subject">What it is about.</param>
/// <param name="About">Identifier of what it is about.</param>
internal readonly record struct LineKey(string Key, ChangeSubject Subject, string About)
{
    /// <summary>The part of an id at a place; empty beyond its end.</summary>
    public static string Part(string id, int place)
    {
        string[] parts = id.Split('/');
        return place < parts.Length ? parts[place] : string.Empty;
    }

    /// <param name="line">The line.</param>
    /// <param name="movedFixtures">Fixtures that came or went: what belongs to one alone goes with it.</param>
    public static LineKey Of(LineFigures line, HashSet<string> movedFixtures)
    {
        if (line.Fixture is string fixture && movedFixtures.Contains(fixture))
        {
            return new("fixture/" + fixture, ChangeSubject.Fixture, fixture);
        }

        string second = Part(line.Id, 1);
        return line.Category switch
        {
            LineCategory.Material => new("material/" + second, ChangeSubject.Material, second),
            LineCategory.Labour => new(Part(line.Id, 0) + "/" + second + (line.Fixture is null ? string.Empty : "/" + line.Fixture), ChangeSubject.Labour, second),
            LineCategory.Travel => new("visits", ChangeSubject.Visits, string.Empty),
            LineCategory.Option => new(line.Id, ChangeSubject.Option, second),
            LineCategory.Discount => new("discount", ChangeSubject.Discount, string.Empty),
            LineCategory.Tax => new("tax/" + second, ChangeSubject.Tax, second),
            LineCategory.Overhead or LineCategory.Warranty or LineCategory.Margin or LineCategory.Rounding =>
                new("shared-costs", ChangeSubject.SharedCosts, string.Empty),
            _ => new("line/" + line.Id, ChangeSubject.OtherLine, second),
        };
    }
}
