namespace Refinish.Pictures.Drawing;

/// <summary>A room or a person: the identifier that joins, the name that is shown. Names may repeat.</summary>
internal sealed record TimelineName(string Id, string Name);
