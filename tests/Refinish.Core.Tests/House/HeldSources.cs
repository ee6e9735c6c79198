using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Refinish.Air;

namespace Refinish.Tests.House;

/// <summary>The sources and cautions that the library holds, asked at run time, with what of it uses them.</summary>
internal sealed class HeldSources
{
    private static readonly Assembly Library = typeof(Source).Assembly;
    private static readonly Lazy<HeldSources> Read = new(() => new HeldSources());

    private HeldSources()
    {
        Uses = new MemberUses(Library);
        (object Value, FieldInfo? Field, object? Within)[] held = [.. Held.In(Library)];
        Sources = [.. held.Where(each => each.Value is Source).GroupBy(each => (Source)each.Value)
            .Select(same => new HeldSource(
                same.Key,
                [.. same.Select(each => each.Field).OfType<FieldInfo>().Distinct()],
                [.. same.Select(each => StandingBeside(each.Within)).OfType<Standing>().Distinct()]))];
        Cautions = [.. held.Where(each => each.Value is Caution).GroupBy(each => (Caution)each.Value)
            .Select(same => new HeldCaution(same.Key, [.. same.Select(each => each.Field).OfType<FieldInfo>().Distinct()]))];
    }

    public static HeldSources OfLibrary => Read.Value;

    public MemberUses Uses { get; }

    public IReadOnlyList<HeldSource> Sources { get; }

    public IReadOnlyList<HeldCaution> Cautions { get; }

    private static Standing? StandingBeside(object? holder) => holder?.GetType().GetProperty("Standing", typeof(Standing))?.GetValue(holder) as Standing?;

    internal sealed record HeldSource(Source Source, IReadOnlyList<FieldInfo> Fields, IReadOnlyList<Standing> Beside);

    internal sealed record HeldCaution(Caution Caution, IReadOnlyList<FieldInfo> Fields);
}
