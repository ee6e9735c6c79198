namespace Refinish.Pictures.Drawing;

/// <summary>What a bar of a timeline stands for.</summary>
internal enum TimelineKind
{
    Work,
    Coat,
    StandBy,
    Wait,
}
