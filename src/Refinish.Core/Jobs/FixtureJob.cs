using Refinish.Colours;
using Refinish.Fixtures;
using Refinish.Substrates;

namespace Refinish.Jobs;

/// <summary>One fixture of a bathroom: its shape from the tape measure, what the survey found, and its old and new colour where they matter.</summary>
public sealed record FixtureJob
{
    /// <summary>What it is called on the job sheet, unique within the job.</summary>
    /// <exception cref="System.ArgumentException">Empty.</exception>
    public required string Name
    {
        get;
        init => field = Guard.Named(value, nameof(Name));
    }

    /// <summary>The measured fixture.</summary>
    /// <exception cref="System.ArgumentNullException">Missing.</exception>
    public required IFixture Fixture
    {
        get;
        init => field = Guard.NotNull(value, nameof(Fixture));
    }

    /// <summary>What the survey found.</summary>
    /// <exception cref="System.ArgumentNullException">Missing.</exception>
    public required Survey Survey
    {
        get;
        init => field = Guard.NotNull(value, nameof(Survey));
    }

    /// <summary>Colour before, where it was measured.</summary>
    public CieLab? OldColour { get; init; }

    /// <summary>Colour wanted, where it was measured.</summary>
    public CieLab? NewColour { get; init; }

    /// <summary>Name and material.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Survey.Material.InWords();
}
