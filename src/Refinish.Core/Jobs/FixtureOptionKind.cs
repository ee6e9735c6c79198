namespace Refinish.Jobs;

/// <summary>What an option adds to the work on a fixture.</summary>
public enum FixtureOptionKind
{
    /// <summary>Grains broadcast into the last coat but one of the floor and locked in by the last.</summary>
    SlipResistantFloor,

    /// <summary>New drain and overflow trim, fitted after the coat has hardened.</summary>
    DrainTrim,

    /// <summary>An operation of the caller's own.</summary>
    Work,
}
