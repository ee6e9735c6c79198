namespace Refinish.Jobs;

/// <summary>A room in a list of operations: its climate over the days, what it gave to the list, and what was reckoned for that.</summary>
internal sealed class RoomResult(RoomCourse course, RoomPart part, RoomMemo memo)
{
    public RoomCourse Course { get; } = course;

    public RoomPart Part { get; } = part;

    public RoomMemo Memo { get; } = memo;
}
