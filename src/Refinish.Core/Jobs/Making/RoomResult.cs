namespace Refinish.Jobs;

/// <summary>A room in a list of operations: its climate over the days, what it gave to the list, and what was reckoned for that.</summary>
internal sealed record RoomResult(RoomCourse Course, RoomPart Part, RoomMemo Memo);
