using System.Collections.Generic;

namespace Refinish.Films;

/// <summary>What can hurt where spray is planned; the air of the room has its own cautions.</summary>
internal static class SprayCautions
{
    public static IReadOnlyList<Caution> All { get; } = new ValueList<Caution>(
    [
        new(
            "overspray-in-air",
            Hazard.SolventVapour,
            "What does not land stays in the air of the room as mist and vapour: a film map says nothing about whether it may be breathed. Two-part urethanes call for supplied air whatever the overspray.",
            "the safety data sheet, the employer's respirator programme and the local code",
            Source.CommonPractice("overspray is judged with the air of the room")),
        new(
            "mist-burns",
            Hazard.FireAndExplosion,
            "Mist burns like vapour, and spraying makes static electricity: no flame, no spark, no switch in the room, and equipment bonded and grounded as its maker asks.",
            "the local fire code and the maker of the equipment",
            Source.CommonPractice("mist of flammable coatings is treated as vapour")),
        new(
            "injection-injury",
            Hazard.SkinAndEyes,
            "Never point a gun at a person or reach before the nozzle: a jet under high pressure drives coating under the skin without much pain at first. That is an emergency for a surgeon.",
            "the maker of the equipment and emergency medicine",
            Source.CommonPractice("injection injury by airless guns")),
    ]);
}
