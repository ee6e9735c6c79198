using System;
using System.Collections.Generic;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>Which lines move together, by the ids of the lines alone.</summary>
/// <param name="Key">Identity of the change.</param>
/// <param name="Subject">What it is about.</param>
/// <param name="About">Identifier of what it is about.</param>
internal readonly record struct LineFamily(string Key, ChangeSubject Subject, string About)
{
    /// <summary>The part of an item at a place, <c>epoxy-primer</c> of <c>material/epoxy-primer/750</c>; empty beyond its end.</summary>
    public static string Part(string item, int place)
    {
        string[] parts = item.Split('/');
        return place < parts.Length ? parts[place] : string.Empty;
    }

    /// <param name="line">The line.</param>
    /// <param name="movedFixtures">Fixtures that came or went: what belongs to one alone goes with it.</param>
    public static LineFamily Of(LineFigures line, HashSet<string> movedFixtures)
    {
        if (line.Fixture is string fixture && movedFixtures.Contains(fixture))
        {
            return new("fixture/" + fixture, ChangeSubject.Fixture, fixture);
        }

        string second = Part(line.Item, 1);
        string place = line.Fixture is string on ? "/" + on : line.Room is string room ? "//" + room : string.Empty;
        return line.Category switch
        {
            LineCategory.Material => new("material/" + second, ChangeSubject.Material, second),
            LineCategory.Labour => new(line.Item + place, ChangeSubject.Labour, second),
            LineCategory.Travel => new("visits", ChangeSubject.Visits, string.Empty),
            LineCategory.Option => new(line.Item + place, ChangeSubject.Option, second),
            LineCategory.Discount => new("discount", ChangeSubject.Discount, string.Empty),
            LineCategory.Tax => new(line.Item, ChangeSubject.Tax, second),
            LineCategory.Overhead or LineCategory.Warranty or LineCategory.Margin or LineCategory.Rounding =>
                new("shared-costs", ChangeSubject.SharedCosts, string.Empty),
            _ => new("line/" + line.Id, ChangeSubject.OtherLine, second),
        };
    }
}
