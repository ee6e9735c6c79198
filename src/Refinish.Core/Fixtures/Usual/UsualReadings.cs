using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>What the readings of each kind of fixture usually are: the table behind <see cref="TapeDoubts"/>.</summary>
/// <example><code>
/// UsualReading depth = UsualReadings.All.Single(reading =&gt; reading.Fixture == "RecessedBathtub" &amp;&amp; reading.Name == "Depth");
/// double inches = depth.Least.Inches;   // 10
/// </code></example>
public static class UsualReadings
{
    /// <summary>All bands, by kind and form.</summary>
    public static IReadOnlyList<UsualReading> All { get; } = new ValueList<UsualReading>(KnownKind.All.SelectMany(kind => kind.Usual));

    /// <summary>The bands that hold for a fixture as it was measured.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <returns>
    /// Those of its kind and form; empty for a fixture of the caller's own type, of which this library knows no readings.
    /// </returns>
    /// <exception cref="System.ArgumentNullException"><paramref name="fixture"/> is missing.</exception>
    public static IReadOnlyList<UsualReading> Of(IFixture fixture)
    {
        IFixture measured = KnownKind.Measured(Guard.NotNull(fixture, nameof(fixture)));
        return new ValueList<UsualReading>(KnownKind.Of(measured)?.UsualFor(measured) ?? []);
    }
}
