namespace Refinish.Fixtures;

/// <summary>A surface of a fixture that is left as it is, and why.</summary>
public sealed class UncoatedSurface
{
    internal UncoatedSurface(string name, FixtureZoneKind? zone, string reason, Source source)
    {
        Name = name;
        Zone = zone;
        Reason = reason;
        Source = source;
    }

    /// <summary>The surface in words, such as the inside of the bowl.</summary>
    public string Name { get; }

    /// <summary>
    /// The zone by which somebody would ask for it; a job that does is refused. <see langword="null"/> where no kind of zone names it.
    /// </summary>
    public FixtureZoneKind? Zone { get; }

    /// <summary>Why it is not coated.</summary>
    public string Reason { get; }

    /// <summary>What the reason rests on.</summary>
    public Source Source { get; }

    /// <summary>The surface and the reason in one sentence without a full stop.</summary>
    /// <returns>Text such as <c>inside of the bowl: not coated, because …</c>.</returns>
    public override string ToString() => Name + ": not coated, because " + Reason;
}
