using System;

namespace Refinish.Jobs;

/// <summary>What an operation says for one fixture: the instruction, and the grits where it abrades.</summary>
public sealed record FixtureInstruction
{
    internal FixtureInstruction(string fixture, string instruction, int? coarsestGrit, int? finestGrit)
    {
        Fixture = fixture;
        Instruction = instruction;
        CoarsestGrit = coarsestGrit;
        FinestGrit = finestGrit;
    }

    /// <summary>Identifier of the fixture.</summary>
    public string Fixture { get; }

    /// <summary>What the crew reads.</summary>
    public string Instruction { get; }

    /// <summary>Coarsest abrasive by its P grade; <see langword="null"/> when nothing is abraded.</summary>
    public int? CoarsestGrit { get; }

    /// <summary>Finest abrasive by its P grade; <see langword="null"/> when nothing is abraded.</summary>
    public int? FinestGrit { get; }

    /// <summary>Fixture and instruction.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Fixture + ": " + Instruction;
}
